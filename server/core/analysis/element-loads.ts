/** Loads on a stick, turned into its local axes, and the forces with which its ends must hold it. */
import type { Flexibility } from "./curves.ts";
import { ENDS, type LocalAxes } from "./element-stiffness.ts";
import type { InputFault } from "./faults.ts";
import { at, bump } from "./numbers.ts";
import type { PointLoad, SpreadLoad, Vec3 } from "./structure.ts";
import { cross, dot, isFinite3, norm, times, ZERO } from "./vec3.ts";

/** Force and moment at a point, local axes. */
export interface PointAction {
  readonly at: number;
  readonly force: Vec3;
  readonly moment: Vec3;
}

/** Force per length of the stick, local axes, straight between its ends. */
export interface SpreadAction {
  readonly from: number;
  readonly to: number;
  readonly start: Vec3;
  readonly end: Vec3;
}

/** All that acts on one stick in one case. */
export interface StickLoads {
  readonly points: PointAction[];
  readonly spreads: SpreadAction[];
  /** Free elongation, spread evenly along the stick. */
  readonly elongation: number;
}

/** Beyond the end by less than this share of the length counts as at the end. */
const AT_END = 1e-9;

/** Reads one load into `into`. @returns what is wrong with it, if anything */
export function readLoad(
  load: PointLoad | SpreadLoad,
  axes: LocalAxes,
  axialOnly: boolean | undefined,
  into: StickLoads,
): Pick<InputFault, "kind" | "detail"> | undefined {
  const L = axes.length;
  if (load.kind === "point") {
    const [force, moment] = [load.force ?? ZERO, load.moment ?? ZERO];
    if (!Number.isFinite(load.at) || !isFinite3(force) || !isFinite3(moment))
      return { kind: "bad-number", detail: "point load" };
    if (isOutside(load.at, L)) return { kind: "load-outside", detail: String(load.at) };
    const turned = inLocal(moment, load, axes);
    if (axialOnly && Math.abs(turned[0]) > AT_END * norm(turned))
      return { kind: "torque-on-bar", detail: String(turned[0]) };
    into.points.push({ at: clamped(load.at, L), force: inLocal(force, load, axes), moment: turned });
    return undefined;
  }
  const from = load.from ?? 0;
  const to = load.to ?? L;
  const { start } = load;
  const end = load.end ?? start;
  if (!Number.isFinite(from) || !Number.isFinite(to) || !isFinite3(start) || !isFinite3(end))
    return { kind: "bad-number", detail: "spread load" };
  if (isOutside(from, L) || isOutside(to, L) || from > to)
    return { kind: "load-outside", detail: `${from} to ${to}` };
  if (from === to) return undefined;
  const first = inLocal(seen(start, load, axes), load, axes);
  into.spreads.push({
    from: clamped(from, L),
    to: clamped(to, L),
    start: first,
    end: end === start ? first : inLocal(seen(end, load, axes), load, axes),
  });
  return undefined;
}

const inLocal = (v: Vec3, load: PointLoad | SpreadLoad, axes: LocalAxes): Vec3 =>
  load.axes === "local" ? v : v === ZERO ? ZERO : [dot(axes.x, v), dot(axes.y, v), dot(axes.z, v)];

/** A distance that misses the end by rounding is the end: a force there belongs to the joint, not to the stick's inside. */
const clamped = (x: number, L: number): number => (x < AT_END * L ? 0 : x > L * (1 - AT_END) ? L : x);

const isOutside = (x: number, L: number): boolean => x < -AT_END * L || x > L * (1 + AT_END);

/** Force per length of the stick itself. */
const seen = (v: Vec3, load: SpreadLoad, axes: LocalAxes): Vec3 =>
  load.per === "projection" ? times(v, squareTo(v, load, axes)) : v;

/** Length of a unit of the stick as seen along the load: the sine of the angle between the two. */
function squareTo(v: Vec3, load: SpreadLoad, axes: LocalAxes): number {
  const size = norm(v);
  if (size === 0) return 0;
  const along: Vec3 = load.axes === "local" ? [1, 0, 0] : axes.x;
  return norm(cross(times(v, 1 / size), along));
}

/** Three points of Gauss: exact for polynomials up to the fifth degree, so for a straight load on a beam of any support. */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.5 - Math.sqrt(0.15), 5 / 18],
  [0.5, 8 / 18],
  [0.5 + Math.sqrt(0.15), 5 / 18],
];

/** Numbers of one load: place, force, moment. */
const PER_ACT = 7;

/** All loads as forces and moments at points, side by side: spread ones at the points of Gauss. */
function asPoints({ points, spreads }: StickLoads): Float64Array {
  const acts = new Float64Array(PER_ACT * (points.length + GAUSS.length * spreads.length));
  let n = 0;
  for (const { at: place, force, moment } of points) {
    acts[n] = place;
    for (let c = 0; c < 3; c++) {
      acts[n + 1 + c] = force[c] as number;
      acts[n + 4 + c] = moment[c] as number;
    }
    n += PER_ACT;
  }
  for (const { from, to, start, end } of spreads)
    for (const [share, weight] of GAUSS) {
      acts[n] = from + share * (to - from);
      const by = weight * (to - from);
      for (let c = 0; c < 3; c++)
        acts[n + 1 + c] = by * ((start[c] as number) + share * ((end[c] as number) - (start[c] as number)));
      n += PER_ACT;
    }
  return acts;
}

/**
 * Forces of both ends on the stick (12, local) when they are held fast. End i is held and end j left free, its motion d
 * summed from the cantilever's closed forms (a force P at a: P a² (3L − a)/6EI and P a²/2EI; a moment M: M a (L − a/2)/EI
 * and M a/EI; Young and Budynas, Roark's Formulas for Stress and Strain, Table 8.1, from memory), then end j is pushed
 * back by −d.
 * @param k stiffness with both ends fast
 */
export function fixedEndForces(
  loads: StickLoads,
  length: number,
  flexibility: Flexibility,
  k: Float64Array,
  axialOnly: boolean | undefined,
): Float64Array {
  const f = new Float64Array(ENDS);
  const d = new Float64Array(6);
  d[0] = loads.elongation;
  const { axial, twist, bendY, bendZ, shearY, shearZ } = flexibility;
  const acts = asPoints(loads);
  for (let n = 0; n < acts.length; n += PER_ACT) {
    const [a, x, y, z] = [at(acts, n), at(acts, n + 1), at(acts, n + 2), at(acts, n + 3)];
    const [mx, my, mz] = [at(acts, n + 4), at(acts, n + 5), at(acts, n + 6)];
    bump(f, 0, -x);
    bump(f, 1, -y);
    bump(f, 2, -z);
    bump(f, 3, -mx);
    bump(f, 4, a * z - my);
    bump(f, 5, -a * y - mz);
    const far = (a * a * (3 * length - a)) / 6;
    const half = (a * a) / 2;
    const arm = a * (length - a / 2);
    bump(d, 0, x * a * axial);
    bump(d, 1, y * (far * bendZ + a * shearY) + mz * arm * bendZ);
    bump(d, 2, z * (far * bendY + a * shearZ) - my * arm * bendY);
    bump(d, 3, mx * a * twist);
    bump(d, 4, (my * a - z * half) * bendY);
    bump(d, 5, (mz * a + y * half) * bendZ);
  }
  for (let r = 0; r < ENDS; r++) for (let m = 0; m < 6; m++) bump(f, r, -at(k, r * ENDS + m + 6) * at(d, m));
  if (!axialOnly) return f;
  // A bar's ends take no moment: across its length it is a simple beam, and the length force stays as found.
  const lever = leverForces(loads, length);
  for (const m of [0, 6]) lever[m] = at(f, m);
  return lever;
}

/**
 * Forces of both ends on the stick (12, local) by the lever rule: no moments at the ends but the torque, which is shared
 * in proportion to the distances. Used for bars, and for a one-way stick that has let go and only hangs in its joints.
 *
 * Force along the stick goes to both ends alike, so that the mean length force of a stick that has let go is nought: it
 * lets go where that mean passes nought, and any other share would make the forces jump there, so that with some loads
 * neither state would agree with itself.
 */
export function leverForces(loads: StickLoads, length: number): Float64Array {
  const f = new Float64Array(ENDS);
  const add = (x: number, p: Vec3, m: Vec3) => {
    const share = x / length;
    bump(f, 0, -p[0] / 2);
    bump(f, 6, -p[0] / 2);
    for (let c = 1; c < 3; c++) {
      bump(f, c, -(p[c] ?? 0) * (1 - share));
      bump(f, c + 6, -(p[c] ?? 0) * share);
    }
    bump(f, 3, -m[0] * (1 - share));
    bump(f, 9, -m[0] * share);
    // A moment is held by a couple of end forces.
    bump(f, 1, m[2] / length);
    bump(f, 7, -m[2] / length);
    bump(f, 2, -m[1] / length);
    bump(f, 8, m[1] / length);
  };
  for (const p of loads.points) add(p.at, p.force, p.moment);
  for (const s of loads.spreads) {
    const span = s.to - s.from;
    // A trapezoid is two triangles, each acting at a third of the span from its tall end.
    add(s.from + span / 3, times(s.start, span / 2), ZERO);
    add(s.to - span / 3, times(s.end, span / 2), ZERO);
  }
  return f;
}
