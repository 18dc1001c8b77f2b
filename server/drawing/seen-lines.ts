/** Which edges of cut wood can be seen from where one looks, and which are hidden behind wood. */
import { along, cross, dot, sub, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { type Edge, pieces } from "./cut-edges.ts";
import { type CutSolid, woodAhead } from "./cut-solid.ts";
import { hull } from "./outline.ts";

/** A paper laid in space: `right` and `up` on it, `toward` the eye; unit vectors, right × up = toward. */
export interface Eye {
  readonly right: Vec3;
  readonly up: Vec3;
  readonly toward: Vec3;
  /** the point of space that lies at 0, 0 on the paper */
  readonly origin: Vec3;
}

export type FlatLine = readonly [Vec2, Vec2];

export interface SeenLines {
  readonly seen: readonly FlatLine[];
  readonly hidden: readonly FlatLine[];
}

export const eyeFrom = (toward: Vec3, up: Vec3, origin: Vec3): Eye => ({
  toward,
  up,
  right: cross(up, toward),
  origin,
});

/** @returns where a point of space lies on the paper */
export const onPaper = ({ right, up, origin }: Eye, p: Vec3): Vec2 => {
  const from = sub(p, origin);
  return [dot(from, right), dot(from, up)];
};

/** To a hundred-thousandth of an inch: points that lie on one line are told apart by nothing else. */
const settled = (value: number): number => Math.round(value * 1e5) / 1e5;

/** @returns the convex outline of points on the paper */
export const shapeOf = (eye: Eye, points: readonly Vec3[]): Vec2[] =>
  hull(
    points.map((p): Vec2 => {
      const [x, y] = onPaper(eye, p);
      return [settled(x), settled(y)];
    }),
  );

/** A line of sight passes this far beside an edge, on each side of it, inches. */
const BESIDE = 0.002;
/** Less wood than this does not hide, inches: surfaces that touch. */
const THIN = 0.003;
const SAME = 0.005;

/** Where a flat line is crossed by others, as shares of its length. */
function crossed([a, b]: FlatLine, others: readonly FlatLine[]): number[] {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const side = (p: Vec2): number => dx * (p[1] - a[1]) - dy * (p[0] - a[0]);
  const size = dx * dx + dy * dy;
  if (size < 1e-9) return [];
  const share = (p: Vec2): number => ((p[0] - a[0]) * dx + (p[1] - a[1]) * dy) / size;
  return others.flatMap(([p, q]) => {
    const [sp, sq] = [side(p), side(q)];
    if ((sp > 0 && sq > 0) || (sp < 0 && sq < 0)) return [];
    if (Math.abs(sp - sq) < 1e-9) return [share(p), share(q)];
    const t = sp / (sp - sq);
    return [share([p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1])])];
  });
}

/** Whether at least one of the places beside a point of an edge is not behind wood. */
function isSeen(eye: Eye, solids: readonly CutSolid[], p: Vec3): boolean {
  const sides: readonly (readonly [number, number])[] = [
    [1, 0.6],
    [-0.6, 1],
    [-1, -0.6],
    [0.6, -1],
  ];
  return sides.some(([a, b]) => {
    const start = along(along(along(p, eye.right, a * BESIDE), eye.up, b * BESIDE), eye.toward, THIN);
    return solids.every((solid) => woodAhead(solid, start, eye.toward, THIN) < THIN);
  });
}

/**
 * Draws edges as they are seen.
 * @param solids everything that may hide them
 */
export function seenLines(eye: Eye, edges: readonly Edge[], solids: readonly CutSolid[]): SeenLines {
  const flat = edges.map(({ from, to }): FlatLine => [onPaper(eye, from), onPaper(eye, to)]);
  const seen: FlatLine[] = [];
  const hidden: FlatLine[] = [];
  edges.forEach((edge, i) => {
    const line = flat[i];
    if (!line || Math.hypot(line[1][0] - line[0][0], line[1][1] - line[0][1]) < SAME) return;
    for (const piece of pieces(edge, crossed(line, flat))) {
      const middle = along(piece.from, sub(piece.to, piece.from), 0.5);
      const own: FlatLine = [onPaper(eye, piece.from), onPaper(eye, piece.to)];
      (isSeen(eye, solids, middle) ? seen : hidden).push(own);
    }
  });
  const whole = joined(seen, []);
  return { seen: whole, hidden: joined(hidden, whole) };
}

/** A straight line without ends: its direction, its distance from 0, 0, and where along it lies what it carries. */
interface Carrier {
  readonly way: Vec2;
  readonly off: number;
  readonly parts: [number, number][];
}

function carry(
  carriers: Carrier[],
  [a, b]: FlatLine,
  make: boolean,
): { carrier: Carrier; from: number; to: number } | undefined {
  const size = Math.hypot(b[0] - a[0], b[1] - a[1]);
  let way: Vec2 = [(b[0] - a[0]) / size, (b[1] - a[1]) / size];
  if (way[0] < -1e-6 || (Math.abs(way[0]) <= 1e-6 && way[1] < 0)) way = [-way[0], -way[1]];
  const off = way[0] * a[1] - way[1] * a[0];
  let carrier = carriers.find(
    (one) =>
      Math.abs(one.way[0] * way[1] - one.way[1] * way[0]) < 2e-3 &&
      Math.abs(one.way[0] * a[1] - one.way[1] * a[0] - one.off) < SAME &&
      Math.abs(one.way[0] * b[1] - one.way[1] * b[0] - one.off) < SAME,
  );
  if (!carrier) {
    if (!make) return undefined;
    carrier = { way, off, parts: [] };
    carriers.push(carrier);
  }
  const at = (p: Vec2): number => p[0] * way[0] + p[1] * way[1];
  return { carrier, from: Math.min(at(a), at(b)), to: Math.max(at(a), at(b)) };
}

/** Puts pieces of one straight line together, without what other lines cover already. */
function joined(lines: readonly FlatLine[], over: readonly FlatLine[]): FlatLine[] {
  const carriers: Carrier[] = [];
  for (const line of lines) {
    const place = carry(carriers, line, true);
    place?.carrier.parts.push([place.from, place.to]);
  }
  const covers = new Map<Carrier, [number, number][]>();
  for (const line of over) {
    const place = carry(carriers, line, false);
    if (!place) continue;
    covers.set(place.carrier, [...(covers.get(place.carrier) ?? []), [place.from, place.to]]);
  }
  return carriers.flatMap((carrier) => {
    const { way, off, parts } = carrier;
    const left = without(united(parts), united(covers.get(carrier) ?? []));
    const point = (t: number): Vec2 => [way[0] * t - way[1] * off, way[1] * t + way[0] * off];
    return left.map(([from, to]): FlatLine => [point(from), point(to)]);
  });
}

/** Stretches that touch or overlap as one. */
function united(parts: readonly (readonly [number, number])[]): [number, number][] {
  const found: [number, number][] = [];
  for (const [from, to] of [...parts].sort((a, b) => a[0] - b[0])) {
    const last = found.at(-1);
    if (last && from <= last[1] + SAME) last[1] = Math.max(last[1], to);
    else found.push([from, to]);
  }
  return found;
}

/** What is left of stretches, both in order. */
function without(parts: readonly [number, number][], gone: readonly [number, number][]): [number, number][] {
  return parts
    .flatMap(([from, to]) => {
      const left: [number, number][] = [];
      let start = from;
      for (const [a, b] of gone) {
        if (b <= start || a >= to) continue;
        if (a > start) left.push([start, a]);
        start = Math.max(start, b);
      }
      if (start < to) left.push([start, to]);
      return left;
    })
    .filter(([from, to]) => to - from > SAME);
}
