/** How far two timbers stand in each other: the separating axis test over the wood between their true ends. */
import type { EndPlane, Timber } from "./model.ts";
import { type Solid, solidOf } from "./solid.ts";
import { along, cross, dot, length, scale, sub, unit, type Vec3 } from "./vec.ts";

/** What saw and chisel leave is no overlap: inches. */
export const LEAST_OVERLAP = 1 / 4;

/** Timbers that run this nearly alike cannot be let into each other (cosine of some 18°). */
const ALIKE = 0.95;

export const runAlike = (a: Timber, b: Timber): boolean => Math.abs(dot(a.axis, b.axis)) > ALIKE;

/** A curved timber is looked at in this many straight pieces, each as shallow as its hollow is deep. */
const PIECES = 8;

/** Directions of a solid’s edges: along the grain, and along the rims of both ends. */
function edgesOf({ corners }: Solid): Vec3[] {
  const pairs = [
    [0, 4],
    [0, 1],
    [1, 2],
    [4, 5],
    [5, 6],
  ] as const;
  return pairs.map(([i, j]) => unit(sub(corners[j] as Vec3, corners[i] as Vec3)));
}

function extent(solid: Solid, direction: Vec3): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const corner of solid.corners) {
    const at = dot(corner, direction);
    if (at < low) low = at;
    if (at > high) high = at;
  }
  return [low, high];
}

/**
 * The least way by which one of two convex solids must move to be clear of the other (separating axis theorem: two
 * convex bodies are apart exactly if they are apart along a face normal of either or along the cross of an edge of each).
 * @returns inches; 0 where they touch or are apart
 */
export function solidOverlap(a: Solid, b: Solid): number {
  let least = Number.POSITIVE_INFINITY;
  for (const k of [0, 1, 2] as const) {
    least = Math.min(least, a.high[k] - b.low[k], b.high[k] - a.low[k]);
    if (least <= 0) return 0;
  }
  const across = (direction: Vec3): boolean => {
    const [lowA, highA] = extent(a, direction);
    const [lowB, highB] = extent(b, direction);
    least = Math.min(least, highA - lowB, highB - lowA);
    return least > 0;
  };
  for (const { normal } of [...a.faces, ...b.faces]) if (!across(normal)) return 0;
  const edges = edgesOf(b);
  for (const own of edgesOf(a))
    for (const other of edges) {
      const direction = cross(own, other);
      // edges that run alike separate nothing that the faces do not
      if (length(direction) > 1e-6 && !across(unit(direction))) return 0;
    }
  return least;
}

/** Depth of a hollow at a distance from the middle of its chord. */
function hollowAt({ radius, rise }: NonNullable<Timber["curve"]>, fromMiddle: number): number {
  const inside = radius * radius - fromMiddle * fromMiddle;
  return inside <= 0 ? 0 : Math.max(0, rise - (radius - Math.sqrt(inside)));
}

/**
 * A timber's wood as convex solids: one for a straight timber; a curved one in pieces that lie wholly inside its wood,
 * so that what passes through its hollow is clear of it.
 */
export function woodOf(timber: Timber): Solid[] {
  const whole = solidOf(timber);
  const { curve, axis, origin, depthDir } = timber;
  if (!curve) return [whole];
  const axial = (p: Vec3): number => dot(sub(p, origin), axis);
  // corners of the hollowed edge: the second half of a ring lies on the depth's positive side
  const onEdge = curve.side > 0 ? [2, 3, 6, 7] : [0, 1, 4, 5];
  const middle = onEdge.reduce((sum, i) => sum + axial(whole.corners[i] as Vec3), 0) / onEdge.length;
  const at = whole.corners.map(axial);
  const [low, high] = [Math.min(...at), Math.max(...at)];
  // between the slanted cuts of its ends, which the first and the last piece keep
  const first = Math.max(...at.slice(0, 4));
  const last = Math.min(...at.slice(4));
  const count = last > first ? PIECES : 1;
  const cut = (i: number): number => first + (i / count) * (last - first);
  const plane = (at: number, sign: 1 | -1): EndPlane => ({
    point: along(origin, axis, at),
    normal: scale(axis, sign),
  });
  return Array.from({ length: count }, (_, i) => i).flatMap((i) => {
    const from = i === 0 ? low : cut(i);
    const to = i === count - 1 ? high : cut(i + 1);
    const depth = timber.depth - hollowAt(curve, Math.max(0, from - middle, middle - to));
    if (depth <= 0) return [];
    const piece = {
      ...timber,
      depth,
      origin: along(origin, depthDir, (curve.side * (depth - timber.depth)) / 2),
    };
    const foot = i === 0 ? timber.foot : plane(from, -1);
    const head = i === count - 1 ? timber.head : plane(to, 1);
    return [solidOf({ ...piece, foot, head })];
  });
}

/**
 * How far two timbers stand in each other.
 * @returns inches one of them must move to be clear; 0 where they touch or are apart
 */
export function timberOverlap(a: Timber, b: Timber): number {
  const others = woodOf(b);
  return Math.max(0, ...woodOf(a).flatMap((own) => others.map((other) => solidOverlap(own, other))));
}
