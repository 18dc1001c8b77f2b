/** Whether a joint goes together as it says: points of the joined timber's wood, moved out step by step, against the other's. */
import type { Assembly, Joint, Prism } from "../../../server/core/joinery/joint.ts";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { type Solid, solidOf } from "../../../server/core/model/solid.ts";
import { along, dot, length, sub, type Vec2, type Vec3 } from "../../../server/core/model/vec.ts";

/** Wood nearer to a cut than this counts as cut, and points this near a surface are left out, inches. */
const NEAR = 0.01;

/** Crossing number; the outline need not be convex. */
function inOutline(outline: readonly Vec2[], x: number, y: number): boolean {
  let inside = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length]!;
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
  });
  return inside;
}

/** @param by a point within this of the prism counts too; negative: it must lie so far inside */
export function inPrism(prism: Prism, p: Vec3, by: number): boolean {
  const d = sub(p, prism.base);
  const [x, y, w] = [dot(d, prism.u), dot(d, prism.v), dot(d, prism.w)];
  if (w < prism.from - by || w > prism.to + by) return false;
  const around = [0, 1, 2, 3, 4, 5, 6, 7].map((k) => (k * Math.PI) / 4);
  const reach = Math.abs(by);
  const hits = [
    [x, y] as const,
    ...around.map((a) => [x + reach * Math.cos(a), y + reach * Math.sin(a)] as const),
  ].map(([a, b]) => inOutline(prism.outline, a, b));
  return by >= 0 ? hits.some(Boolean) : hits.every(Boolean);
}

function inSolid(solid: Solid, p: Vec3, by: number): boolean {
  return solid.faces.every(({ normal, level }) => dot(normal, p) <= level + by);
}

function* grid(from: readonly number[], to: readonly number[], steps: number): Generator<Vec3> {
  const at = (k: number, i: number): number => from[k]! + ((i + 0.5) / steps) * (to[k]! - from[k]!);
  for (let i = 0; i < steps; i++)
    for (let j = 0; j < steps; j++) for (let k = 0; k < steps; k++) yield [at(0, i), at(1, j), at(2, k)];
}

function pointsOfPrism(prism: Prism, steps: number): Vec3[] {
  const us = prism.outline.map(([u]) => u);
  const vs = prism.outline.map(([, v]) => v);
  return [
    ...grid(
      [Math.min(...us), Math.min(...vs), prism.from],
      [Math.max(...us), Math.max(...vs), prism.to],
      steps,
    ),
  ]
    .map(([u, v, w]) => along(along(along(prism.base, prism.u, u), prism.v, v), prism.w, w))
    .filter((p) => inPrism(prism, p, -NEAR));
}

/** Points close round the edges of a prism, where wood would catch first. */
function* roundEdges({ base, u, v, w, outline, from, to }: Prism): Generator<Vec3> {
  const beside = 0.06;
  for (const [a, b] of outline)
    for (const [da, db] of [
      [beside, 0],
      [-beside, 0],
      [0, beside],
      [0, -beside],
      [beside, beside],
      [-beside, beside],
      [beside, -beside],
      [-beside, -beside],
    ] as const)
      for (const at of [from + beside, (from + to) / 2, to - beside])
        yield along(along(along(base, u, a + da), v, b + db), w, at);
}

/** Points all through the tenons of a joint. */
export const tenonWood = (joint: Joint, steps = 7): Vec3[] =>
  joint.solids.tenons.flatMap((t) => pointsOfPrism(t, steps));

/** Wood of the joined timber near the joint: its tenons, and its body without what is notched out of it. */
function joinedWood(joint: Joint, steps = 7): Vec3[] {
  const { of, meeting, solids } = joint;
  const at = dot(sub(meeting.point, of.origin), of.axis);
  const reach = 1.5 * Math.max(of.depth, of.width) + (joint.sizes.lap?.length.value ?? 0);
  const solid = solidOf(of);
  const body = [
    ...grid([at - reach, -of.width / 2, -of.depth / 2], [at + reach, of.width / 2, of.depth / 2], 2 * steps),
  ]
    .map(([a, w, d]) => along(along(along(of.origin, of.axis, a), of.widthDir, w), of.depthDir, d))
    .concat([...solids.notches, ...solids.mortises].flatMap((prism) => [...roundEdges(prism)]))
    .filter((p) => inSolid(solid, p, -NEAR) && !solids.notches.some((n) => inPrism(n, p, NEAR)));
  return [...tenonWood(joint, steps), ...body];
}

/** The positions of the joined timber on its way out, seated first, as shifts. */
function wayOut({ direction, last }: Assembly, far: number): Vec3[] {
  const steps = 24;
  const shift = (start: Vec3, way: Vec3, distance: number): Vec3[] =>
    Array.from({ length: steps }, (_, i) => along(start, way, (-distance * (i + 1)) / steps));
  const lifted = last ? shift([0, 0, 0], last.direction, last.distance) : [];
  return [[0, 0, 0], ...lifted, ...shift(lifted.at(-1) ?? [0, 0, 0], direction, far)];
}

/** Whether a point lies in wood that the receiving timber keeps: its body and its tines, without what is cut out of it. */
export function receivingWood({ into, solids }: Joint): (p: Vec3) => boolean {
  const solid = solidOf(into);
  const cuts = [...solids.mortises, ...solids.housings];
  return (p) =>
    (inSolid(solid, p, -NEAR) || (solids.tines ?? []).some((t) => inPrism(t, p, -NEAR))) &&
    !cuts.some((c) => inPrism(c, p, NEAR));
}

/** @param assembly how it goes together, as its kind says; @returns how many points of the joined wood meet uncut wood of the other on the way out, and the first of them */
export function collisions(
  joint: Joint,
  assembly: Assembly = jointKindOf(joint.kind).assembly(joint),
): { readonly points: number; readonly hits: readonly string[] } {
  const kept = receivingWood(joint);
  if (Math.abs(length(assembly.direction) - 1) > 1e-9) throw new Error(`${joint.id}: not a unit vector`);
  const points = joinedWood(joint);
  const hits: string[] = [];
  for (const shift of wayOut(assembly, 1.5 * (joint.face.thickness + joint.of.depth)))
    for (const p of points) {
      const moved = along(p, shift, 1);
      if (kept(moved))
        hits.push(`${joint.id} at ${p.map((v) => v.toFixed(2))} moved ${shift.map((v) => v.toFixed(2))}`);
    }
  return { points: points.length, hits };
}
