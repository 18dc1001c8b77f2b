/**
 * Motions that nothing resists, found on the stiffness matrix scaled to unit diagonal.
 *
 * A pivot near nought marks such a motion and gives it (L⁻ᵀ of the unit vector). Rounding can hide one behind a pivot
 * that is merely small, or feign one where stiffnesses lie far apart. Both are told apart by the strain of the motion,
 * summed over the parts: for a true one it is of the order of the rounding squared. Inverse iteration finds hidden ones.
 */
import { assemble, type Matrix } from "./assemble.ts";
import type { Mode } from "./faults.ts";
import { type Factor, factorise } from "./ldlt.ts";
import { at, bump, dotOf, int, largest } from "./numbers.ts";
import { looseMotion } from "./releases.ts";
import type { Dropped } from "./residual.ts";
import { backward, solve } from "./solve.ts";
import type { Vec3 } from "./structure.ts";
import { toGlobal } from "./supports.ts";
import { endMotions, type Stick, type System, strainOf } from "./system.ts";
import { minus, norm, plus, three, times, ZERO } from "./vec3.ts";

export interface Stability {
  readonly matrix: Matrix;
  readonly factor: Factor;
  /** Motions of all nodes (in the nodes' axes) that nothing resists: those that shift something … */
  readonly mechanisms: readonly Float64Array[];
  /** … and those that only turn joints, or spin a stick about itself. */
  readonly idle: readonly Float64Array[];
  /** Sticks that are loose between their own joints, with the motion that does it; spinning ones apart. */
  readonly loose: readonly { readonly stick: Stick; readonly motion: number; readonly spins: boolean }[];
  /** Size of the frame. */
  readonly reach: number;
}

/** Strain energy of a motion, as a share of that of its parts moved one by one, below which it is nought. */
const NO_STRAIN = 1e-15;
/** Hidden motions are looked for when the matrix shrinks something more than this. */
const SUSPECT = 1e-8;
const MOST_ROUNDS = 40;

export function stabilise(system: System): Stability {
  const matrix = assemble(system);
  const keep = new Set<number>();
  // Unknowns held for a motion that rounding hid behind a pivot not so small, with that motion.
  const hold = new Map<number, Float64Array>();
  let factor = factorise(matrix, keep, hold);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const feigned = factor.held.filter(
      (k) => !keep.has(k) && !hold.has(k) && !isFree(system, matrix, motionOf(matrix, factor, k)),
    );
    for (const k of feigned) keep.add(k);
    if (feigned.length > 0) {
      factor = factorise(matrix, keep, hold);
      continue;
    }
    const hidden = hiddenMotion(system, matrix, factor);
    if (hidden === undefined) break;
    keep.delete(hidden.unknown);
    hold.set(hidden.unknown, hidden.motion);
    factor = factorise(matrix, keep, hold);
  }
  const reach = reachOf(system);
  const found = [
    ...matrix.unresisted.map((k) => unit(system.size, k)),
    ...factor.held
      .map((k) => hold.get(k) ?? motionOf(matrix, factor, k))
      .filter((motion) => isFree(system, matrix, motion)),
  ];
  return { matrix, factor, reach, ...sortOut(system, found, reach), loose: looseSticks(system) };
}

function unit(size: number, k: number): Float64Array {
  const v = new Float64Array(size);
  v[k] = 1;
  return v;
}

/** The motion of all nodes when held unknown `k` moves and all else follows without force. */
function motionOf(matrix: Matrix, factor: Factor, k: number): Float64Array {
  const x = unit(matrix.n, k);
  backward(factor, x);
  return spread(matrix, x);
}

/** From scaled unknowns to the motions of all nodes; held ones stay at rest. @param u all nought; where they are written */
function spread(
  matrix: Matrix,
  x: Float64Array,
  u: Float64Array = new Float64Array(matrix.unknown.length),
): Float64Array {
  for (let k = 0; k < matrix.n; k++) u[int(matrix.motion, k)] = at(x, k) * at(matrix.scale, k);
  return u;
}

/** K⁻¹ f on all motions. @param u all nought; where they are written */
export function flex(matrix: Matrix, factor: Factor, f: Float64Array, u?: Float64Array): Float64Array {
  const x = matrix.scratch;
  for (let k = 0; k < matrix.n; k++) x[k] = at(f, int(matrix.motion, k)) * at(matrix.scale, k);
  solve(factor, x);
  return spread(matrix, x, u);
}

/** Whether a motion strains nothing (but parts that are dropped). */
export function isFree(system: System, matrix: Matrix, u: Float64Array, dropped: Dropped = NONE): boolean {
  let [energy, size] = [0, 0];
  system.parts.forEach((part, n) => {
    if (dropped.has(n)) return;
    for (const b of part.modes()) energy += strainOf(b, part, u) ** 2;
  });
  for (let k = 0; k < system.size; k++) {
    energy += at(system.ground.springs, k) * at(u, k) ** 2;
    size += at(matrix.diagonal, k) * at(u, k) ** 2;
  }
  return energy <= NO_STRAIN * size;
}

const NONE: Dropped = new Set();

/** Inverse iteration for the weakest motion. @returns one that strains nothing, and the unknown that moves most in it */
function hiddenMotion(
  system: System,
  matrix: Matrix,
  factor: Factor,
): { readonly unknown: number; readonly motion: Float64Array } | undefined {
  if (matrix.n === 0) return undefined;
  // Any start will do that is not square to the weakest motion; these numbers repeat from run to run.
  let x = Float64Array.from({ length: matrix.n }, (_, k) => Math.sin(12.9898 * (k + 1)));
  for (let round = 0; round < 3; round++) {
    const before = Math.sqrt(dotOf(x, x));
    solve(factor, x);
    const after = Math.sqrt(dotOf(x, x));
    if (!(after > 0) || !Number.isFinite(after)) return undefined;
    if (round > 0 && before / after > SUSPECT) return undefined;
    x = x.map((v) => v / after);
  }
  const motion = spread(matrix, x);
  if (!isFree(system, matrix, motion)) return undefined;
  let most = 0;
  x.forEach((v, k) => {
    if (Math.abs(v) > Math.abs(at(x, most))) most = k;
  });
  return { unknown: most, motion };
}

/** Largest distance of a node from the middle of all. */
function reachOf(system: System): number {
  const { nodes } = system.structure;
  const middle = times(
    nodes.reduce<Vec3>((sum, n) => plus(sum, n.at), ZERO),
    1 / Math.max(1, nodes.length),
  );
  return nodes.reduce((most, n) => Math.max(most, norm(minus(n.at, middle))), 0);
}

/** Shifts of all nodes, and of stick ends on rigid arms; turns apart. */
function shiftsOf(system: System, u: Float64Array): Float64Array {
  const shifts: number[] = [];
  for (let k = 0; k < system.size; k++) if (k % 6 < 3) shifts.push(at(u, k));
  for (const stick of system.sticks) {
    if (!stick.element.offsetI && !stick.element.offsetJ) continue;
    const v = endMotions(stick, u);
    shifts.push(at(v, 0), at(v, 1), at(v, 2), at(v, 6), at(v, 7), at(v, 8));
  }
  return Float64Array.from(shifts);
}

/** A shift smaller than this share of the turn times the size of the frame is rounding. */
const NO_SHIFT = 1e-7;

/** Whether a motion only turns joints or spins sticks. */
export function isIdle(system: System, u: Float64Array, reach: number): boolean {
  return largest(shiftsOf(system, u)) <= NO_SHIFT * reach * largest(u);
}

/** Tells idle motions from mechanisms, also where the ones found are mixtures of both. */
function sortOut(
  system: System,
  found: readonly Float64Array[],
  reach: number,
): { mechanisms: Float64Array[]; idle: Float64Array[] } {
  const mechanisms: Float64Array[] = [];
  const idle: Float64Array[] = [];
  const basis: { motion: Float64Array; shifts: Float64Array }[] = [];
  for (const motion of found) {
    let shifts = shiftsOf(system, motion);
    const size = Math.sqrt(dotOf(shifts, shifts));
    let rest = motion;
    let where = placesOf(shifts);
    for (const b of basis) {
      const share = dotAt(where, shifts, b.shifts);
      // most move parts that have nothing to do with each other
      if (share === 0) continue;
      shifts = shifts.map((v, k) => v - share * at(b.shifts, k));
      rest = rest.map((v, k) => v - share * at(b.motion, k));
      where = placesOf(shifts);
    }
    const left = Math.sqrt(dotOf(shifts, shifts));
    if (left <= NO_SHIFT * Math.max(size, reach * largest(rest))) {
      idle.push(rest);
      continue;
    }
    mechanisms.push(motion);
    basis.push({ motion: rest.map((v) => v / left), shifts: shifts.map((v) => v / left) });
  }
  return { mechanisms, idle };
}

/** Where a vector is not nought: motions of a few parts of a large frame are nought almost everywhere. */
export function placesOf(v: Float64Array): readonly number[] {
  const places: number[] = [];
  for (let k = 0; k < v.length; k++) if (at(v, k) !== 0) places.push(k);
  return places;
}

/** a · b, where a is nought but at some places. */
function dotAt(places: readonly number[], a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (const k of places) sum += at(a, k) * at(b, k);
  return sum;
}

function looseSticks(system: System): Stability["loose"] {
  return system.sticks.flatMap((stick) =>
    stick.joint.loose.map((r) => {
      const v = looseMotion(stick.joint, r);
      const spins = v.every((value, m) => m % 6 === 3 || value === 0);
      return { stick, motion: r, spins };
    }),
  );
}

/** Work of forces along a motion, and whether it is more than rounding. @param where the motion is not nought */
export function drives(
  forces: Float64Array,
  u: Float64Array,
  tolerance: number,
  where: readonly number[] = placesOf(u),
): boolean {
  let [work, size] = [0, 0];
  for (const k of where) {
    const w = at(forces, k) * at(u, k);
    work += w;
    size += Math.abs(w);
  }
  return Math.abs(work) > tolerance * size && size > 0;
}

/** A motion as it is reported: global axes, the largest shift 1 (or the largest turn, when nothing shifts). */
export function describe(system: System, u: Float64Array, driven: boolean, reach: number): Mode {
  const { nodes } = system.structure;
  const all = nodes.map((_, node) => toGlobal(system.ground, u, node));
  let largestShift = 0;
  let largestTurn = 0;
  for (const v of all)
    v.forEach((value, m) => {
      if (m < 3) {
        if (Math.abs(value) > Math.abs(largestShift) * (1 + 1e-9)) largestShift = value;
      } else if (Math.abs(value) > Math.abs(largestTurn) * (1 + 1e-9)) largestTurn = value;
    });
  const shifting = Math.abs(largestShift) > NO_SHIFT * reach * Math.abs(largestTurn);
  const size = (shifting ? largestShift : largestTurn) || 1;
  const scaled = all.map((v) => v.map((value) => value / size));
  const least = (m: number) => (m < 3 || !shifting ? 1e-9 : 1e-9 / Math.max(reach, 1e-300));
  const moving = scaled.flatMap((motion, node) =>
    motion.some((v, m) => Math.abs(v) > least(m)) ? [{ node, id: nodes[node]?.id ?? "", motion }] : [],
  );
  const still = (node: number): boolean => u.subarray(6 * node, 6 * node + 6).every((v) => v === 0);
  const elements = system.sticks.filter((stick) => {
    if (still(stick.i) && still(stick.j)) return false;
    const v = endMotions(stick, u);
    return [0, 1, 2, 6, 7, 8].some((m) => Math.abs(at(v, m) / size) > 1e-6);
  });
  const direction = shifting ? mainDirection(scaled.map((v) => three(v))) : ZERO;
  return { nodes: moving, elements: shifting ? elements.map((s) => s.id) : [], direction, driven };
}

/** Where most goes: the sum of the shifts, or where they cancel the largest of them. */
function mainDirection(shifts: readonly Vec3[]): Vec3 {
  const sum = shifts.reduce<Vec3>((s, v) => plus(s, v), ZERO);
  const total = shifts.reduce((s, v) => s + norm(v), 0);
  const most = shifts.reduce<Vec3>((a, b) => (norm(b) > norm(a) ? b : a), ZERO);
  const main = norm(sum) > 0.1 * total ? sum : most;
  return norm(main) > 0 ? times(main, 1 / norm(main)) : ZERO;
}

/** A stick that is loose between its joints, as a mode: it moves, no node does. */
export function describeLoose(stick: Stick, r: number, driven: boolean): Mode {
  const v = looseMotion(stick.joint, r);
  const { x, y, z } = stick.axes;
  const ends = [0, 6].map((end) =>
    [x, y, z].reduce<Vec3>((sum, unit, c) => plus(sum, times(unit, at(v, end + c))), ZERO),
  );
  return { nodes: [], elements: [stick.id], direction: mainDirection(ends), driven };
}

export function addScaled(into: Float64Array, by: number, v: Float64Array): void {
  for (let k = 0; k < into.length; k++) bump(into, k, by * at(v, k));
}
