/** Gives timbers their true ends: shoulders from the joints, and the length of the stick with its tenons. */
import { groupBy } from "../collect.ts";
import type { Joint, Prism, ShapedJoint } from "../joinery/joint.ts";
import { leftLong } from "../joinery/scribe.ts";
import type { EndPlane, Timber } from "./model.ts";
import { cornersOf } from "./solid.ts";
import { along, dot, sub, type Vec3 } from "./vec.ts";

/** A joint together with what its kind said of shoulders. */
export type Shaped = Joint & { readonly shaped: ShapedJoint };

/** Axial position at which the center line crosses a plane. */
function axialAt(timber: Timber, plane: EndPlane): number {
  const slant = dot(timber.axis, plane.normal);
  return Math.abs(slant) < 1e-9 ? 0 : dot(sub(plane.point, timber.origin), plane.normal) / slant;
}

/** The timber with its full section ending at the given planes. */
function withEnds(timber: Timber, foot: EndPlane, head: EndPlane): Timber {
  const start = axialAt(timber, foot);
  const origin = along(timber.origin, timber.axis, start);
  return { ...timber, origin, foot, head, span: axialAt(timber, head) - start };
}

/** Corners of prisms. */
function* pointsOf(prisms: readonly Prism[]): Generator<Vec3> {
  for (const { base, u, v, w, outline, from, to } of prisms)
    for (const [x, y] of outline) {
      const flat = along(along(base, u, x), v, y);
      yield along(flat, w, from);
      yield along(flat, w, to);
    }
}

/**
 * From the longest point at the foot to the longest at the head, tenons included, along the grain.
 * @param own the joints that the timber joins into others with
 * @param received the joints that others join into it with: of a rafter pair its own part stands out too
 * @returns inches from the timber's origin
 */
export function stickExtent(
  timber: Timber,
  own: readonly Joint[],
  received: readonly Joint[],
): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  const reach = (points: Iterable<Vec3>): void => {
    for (const p of points) {
      const at = dot(sub(p, timber.origin), timber.axis);
      if (at < low) low = at;
      if (at > high) high = at;
    }
  };
  reach(cornersOf(timber));
  for (const { solids } of own) reach(pointsOf(solids.tenons));
  for (const { solids } of received) if (solids.tines) reach(pointsOf(solids.tines));
  return [low, high];
}

/** New end planes for each timber that a joint shortens or lengthens. */
export function trueEnds(timbers: readonly Timber[], joints: readonly Shaped[]): Map<string, Timber> {
  const feet = new Map<string, EndPlane>();
  const heads = new Map<string, EndPlane>();
  // where one end has two joints, the one that the file names decides, then the one with more contact
  const order = [...joints].sort(
    (a, b) => Number(b.assumed) - Number(a.assumed) || a.meeting.area - b.meeting.area,
  );
  for (const { of, end, into, shaped } of order) {
    if (shaped.shoulder && end !== "side") (end === "foot" ? feet : heads).set(of.id, shaped.shoulder);
    if (shaped.receivingEnd) {
      const atHead = dot(shaped.receivingEnd.normal, into.axis) > 0;
      (atHead ? heads : feet).set(into.id, shaped.receivingEnd);
    }
  }
  const own = groupBy(joints, (j) => j.of.id);
  const received = groupBy(joints, (j) => j.into.id);
  return new Map(
    timbers.map((t) => {
      const ended = withEnds(t, feet.get(t.id) ?? t.foot, heads.get(t.id) ?? t.head);
      const mine = own.get(t.id) ?? [];
      const [foot, head] = stickExtent(ended, mine, received.get(t.id) ?? []);
      const over = leftLong(mine);
      return [t.id, { ...ended, length: head - foot + over.foot + over.head }];
    }),
  );
}
