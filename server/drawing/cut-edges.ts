/** The edges of wood as it is cut: where two of its surfaces meet, found among the edges of all that it is made of. */
import { along, cross, dot, length, sub, unit, type Vec3 } from "../core/model/vec.ts";
import { type Block, type CutSolid, isWood, type Side } from "./cut-solid.ts";

export interface Edge {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** How far from an edge its surroundings are looked at, inches: far less than a scribe line. */
const NEAR = 0.004;
/** Shorter pieces than this are not drawn, inches. */
const SHORT = 0.01;
/** Surfaces that bend by less than this at an edge are one surface, radians. */
const FLAT = 0.02;
const LOOKS = 16;

/** A line cut at parameters between 0 and 1: its pieces. */
export function pieces({ from, to }: Edge, cuts: readonly number[]): Edge[] {
  const way = sub(to, from);
  const long = length(way);
  const stops = [0, ...cuts.filter((t) => t > 0 && t < 1).sort((a, b) => a - b), 1];
  const found: Edge[] = [];
  let last = 0;
  for (const t of stops) {
    if ((t - last) * long < SHORT) continue;
    found.push({ from: along(from, way, last), to: along(from, way, t) });
    last = t;
  }
  return found;
}

const middleOf = ({ from, to }: Edge): Vec3 => along(from, sub(to, from), 0.5);

/** Where an edge crosses the planes of sides. */
function crossings(edge: Edge, sides: readonly Side[]): number[] {
  return sides.flatMap(({ normal, level }) => {
    const [a, b] = [dot(normal, edge.from) - level, dot(normal, edge.to) - level];
    return Math.abs(a - b) > 1e-9 ? [a / (a - b)] : [];
  });
}

/**
 * Whether two surfaces meet there at an angle: wood and air share the surroundings otherwise than half and half.
 * @param p on the edge; @param direction unit vector along it
 */
function bends(solid: CutSolid, p: Vec3, direction: Vec3): boolean {
  const other: Vec3 = Math.abs(direction[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0];
  const a = unit(cross(direction, other));
  const b = cross(direction, a);
  const woodAt = (angle: number): boolean =>
    isWood(solid, along(along(p, a, NEAR * Math.cos(angle)), b, NEAR * Math.sin(angle)));
  const step = (2 * Math.PI) / LOOKS;
  // turned a little, so that no look falls on a surface square to the axes
  const looks = Array.from({ length: LOOKS }, (_, i) => 0.123 + i * step);
  const seen = looks.map(woodAt);
  const changes = looks.flatMap((angle, i) => {
    const next = seen[(i + 1) % LOOKS];
    return seen[i] === next ? [] : [{ angle, before: seen[i] === true }];
  });
  if (changes.length !== 2) return changes.length > 2;
  const [one, two] = changes.map(({ angle, before }) => {
    let [low, high] = [angle, angle + step];
    for (let i = 0; i < 7; i++) {
      const middle = (low + high) / 2;
      if (woodAt(middle) === before) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  });
  return Math.abs((two ?? 0) - (one ?? 0) - Math.PI) > FLAT;
}

/** Each edge once, whichever of its ends comes first. */
function once(edges: readonly Edge[]): Edge[] {
  const found = new Map<string, Edge>();
  for (const edge of edges) {
    const name = [edge.from, edge.to].map((p) =>
      p.map((c) => (Math.round(c * 1000) || 0).toString()).join(" "),
    );
    if (name[0] !== name[1]) found.set(name.sort().join("|"), edge);
  }
  return [...found.values()];
}

/** The edges round a block's sides. */
const ownEdges = ({ sides }: Block): Edge[] =>
  once(
    sides.flatMap(({ polygon }) =>
      polygon.map((from, i) => ({ from, to: polygon[(i + 1) % polygon.length] ?? from })),
    ),
  );

/** The stretches of a line that lie in a flat side. */
function onSide({ polygon, normal }: Side, p: Vec3, d: Vec3): number[] {
  const across = cross(normal, d);
  const at: number[] = [];
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length] ?? a;
    const [sa, sb] = [dot(sub(a, p), across), dot(sub(b, p), across)];
    if (sa > 0 !== sb > 0) at.push(dot(sub(along(a, sub(b, a), sa / (sa - sb)), p), d));
  });
  return at.sort((x, y) => x - y);
}

/** Where a side of one block crosses a side of another. */
function meets(one: Side, two: Side): Edge[] {
  const way = cross(one.normal, two.normal);
  const size = dot(way, way);
  if (size < 1e-6) return [];
  // the point on both planes that is nearest to the origin
  const p = along(
    along([0, 0, 0], cross(two.normal, way), one.level / size),
    cross(way, one.normal),
    two.level / size,
  );
  const d = unit(way);
  const [a, b] = [onSide(one, p, d), onSide(two, p, d)];
  const [from, to] = [Math.max(a[0] ?? 0, b[0] ?? 0), Math.min(a.at(-1) ?? 0, b.at(-1) ?? 0)];
  return a.length > 1 && b.length > 1 && to - from > SHORT
    ? [{ from: along(p, d, from), to: along(p, d, to) }]
    : [];
}

/**
 * All edges of a piece of wood, in pieces that none of its surfaces crosses.
 * @param others sides of what it touches, where an edge may begin to be hidden
 */
export function edgesOf(solid: CutSolid, others: readonly Side[] = []): Edge[] {
  const blocks = [...solid.wood, ...solid.cut];
  const sides = [...blocks.flatMap((block) => block.sides), ...others];
  const crossed = blocks.flatMap((one, i) =>
    blocks.slice(i + 1).flatMap((two) => one.sides.flatMap((s) => two.sides.flatMap((t) => meets(s, t)))),
  );
  const candidates = [...blocks.flatMap(ownEdges), ...crossed];
  return once(candidates.flatMap((edge) => pieces(edge, crossings(edge, sides)))).filter((edge) =>
    bends(solid, middleOf(edge), unit(sub(edge.to, edge.from))),
  );
}
