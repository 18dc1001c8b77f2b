/**
 * Joints between a stick's ends and its nodes: motions set free or held by a spring, condensed out of the stick.
 *
 * One motion r at a time. With k_r the column of K and s the spring (0 = free), the condensed matrix is
 *   K' = (K − k_r k_rᵀ / K_rr)  +  s / (K_rr + s) · k_r k_rᵀ / K_rr
 * (static condensation; the same as −k_r k_rᵀ/(K_rr + s) but without loss of figures when the spring is soft).
 */
import { ENDS } from "./element-stiffness.ts";
import { at, bump } from "./numbers.ts";
import { type FrameElement, MOTIONS, type Motion, type PerMotion } from "./structure.ts";

interface Step {
  readonly motion: number;
  readonly spring: number;
  /** Column r of the matrix before this step. */
  readonly column: Float64Array;
}

export interface Jointed {
  /** Stiffness between the nodes' sides of the joints, 12 × 12 by rows. */
  readonly k: Float64Array;
  readonly steps: readonly Step[];
  /** End motions that nothing in the stick resists once the others are free: it is loose between its joints. */
  readonly loose: readonly number[];
}

/** What is left of a stiffness after condensation is nought below this share of what it was. */
const NOUGHT = 1e-13;

/** @param stiffness 12 × 12, ends fast */
export function joinEnds(e: FrameElement, stiffness: Float64Array): Jointed {
  const freed = [
    ...softEnds(e.releaseI, e.endSpringI, 0, e.axialOnly),
    ...softEnds(e.releaseJ, e.endSpringJ, 6, e.axialOnly),
  ];
  if (freed.length === 0) return { k: stiffness, steps: [], loose: [] };
  const k = stiffness.slice();
  const steps: Step[] = [];
  const loose: number[] = [];
  for (const { motion, spring } of freed) {
    // The matrix is symmetric: row and column are the same.
    const column = k.slice(motion * ENDS, (motion + 1) * ENDS);
    const own = at(column, motion);
    if (own <= NOUGHT * at(stiffness, motion * ENDS + motion)) {
      // Only a free motion makes the stick loose; a spring on a stick that is slack already just goes along.
      if (spring === 0) loose.push(motion);
      for (let m = 0; m < ENDS; m++) {
        k[m * ENDS + motion] = 0;
        k[motion * ENDS + m] = 0;
      }
      continue;
    }
    steps.push({ motion, spring, column });
    const kept = spring / (own + spring) / own;
    for (let r = 0; r < ENDS; r++) {
      const share = at(column, r);
      if (share === 0) continue;
      for (let c = 0; c < ENDS; c++) {
        const product = share * at(column, c);
        const outer = r === motion || c === motion;
        const rest = outer ? 0 : at(k, r * ENDS + c) - product / own;
        k[r * ENDS + c] = rest + kept * product;
      }
    }
    sweep(k, stiffness);
  }
  return { k, steps, loose };
}

function softEnds(
  release: readonly Motion[] | undefined,
  springs: PerMotion | undefined,
  shift: number,
  axialOnly: boolean | undefined,
): { motion: number; spring: number }[] {
  const found: { motion: number; spring: number }[] = [];
  MOTIONS.forEach((motion, m) => {
    // A bar has no more than its length force to release.
    if (axialOnly && m > 0) return;
    if (release?.includes(motion)) found.push({ motion: m + shift, spring: 0 });
    else if (springs?.[motion] !== undefined) found.push({ motion: m + shift, spring: springs[motion] });
  });
  return found;
}

/** Rounding left where nothing should be would look like a stiffness to the mechanism search: take it out. */
function sweep(k: Float64Array, before: Float64Array): void {
  for (let m = 0; m < ENDS; m++) {
    if (at(k, m * ENDS + m) > NOUGHT * at(before, m * ENDS + m)) continue;
    for (let c = 0; c < ENDS; c++) {
      k[m * ENDS + c] = 0;
      k[c * ENDS + m] = 0;
    }
  }
}

/** Condenses forces at fast ends (`f0`, 12) onto the nodes' side of the joints. Also returns the forces before each step. */
export function joinForces(
  joint: Jointed,
  f0: Float64Array,
): { readonly f: Float64Array; readonly atStep: readonly number[] } {
  const f = f0.slice();
  const atStep: number[] = [];
  for (const { motion, spring, column } of joint.steps) {
    const own = at(column, motion);
    const load = at(f, motion);
    atStep.push(load);
    for (let m = 0; m < ENDS; m++) if (m !== motion) bump(f, m, (-at(column, m) * load) / (own + spring));
    f[motion] = (spring * load) / (own + spring);
  }
  return { f, atStep };
}

/**
 * Motions of the stick's own ends from those on the nodes' side of the joints.
 * @param atStep from {@link joinForces}; all nought without load
 */
export function innerMotions(joint: Jointed, outer: Float64Array, atStep: readonly number[]): Float64Array {
  const v = outer.slice();
  for (let n = joint.steps.length - 1; n >= 0; n--) {
    const step = joint.steps[n];
    if (!step) continue;
    const { motion, spring, column } = step;
    let force = spring * at(outer, motion) - (atStep[n] ?? 0);
    for (let m = 0; m < ENDS; m++) if (m !== motion) force -= at(column, m) * at(v, m);
    v[motion] = force / (at(column, motion) + spring);
  }
  return v;
}

/** Motion of the stick's own ends, its nodes at rest, when it moves along loose motion `r` by 1. */
export function looseMotion(joint: Jointed, r: number): Float64Array {
  const v = new Float64Array(ENDS);
  v[r] = 1;
  for (let n = joint.steps.length - 1; n >= 0; n--) {
    const step = joint.steps[n];
    if (!step) continue;
    let force = 0;
    for (let m = 0; m < ENDS; m++) if (m !== step.motion) force -= at(step.column, m) * at(v, m);
    v[step.motion] = force / (at(step.column, step.motion) + step.spring);
  }
  return v;
}

/**
 * Factor B (12 × r by columns) with B Bᵀ = k for a stiffness of rank r ≤ 6: what the stick resists, as independent
 * deformations. Bᵀu is nought to rounding for a motion without strain, which k u alone would not show so sharply.
 * Cholesky with the largest pivot first, on the matrix scaled to unit diagonal.
 */
export function deformations(k: Float64Array, size = ENDS): Float64Array[] {
  const scale = Array.from({ length: size }, (_, m) => Math.sqrt(Math.max(0, at(k, m * size + m))));
  const a = k.map((v, n) => {
    const s = (scale[Math.floor(n / size)] ?? 0) * (scale[n % size] ?? 0);
    return s > 0 ? v / s : 0;
  });
  const columns: Float64Array[] = [];
  while (columns.length < size) {
    let best = 0;
    for (let m = 1; m < size; m++) if (at(a, m * size + m) > at(a, best * size + best)) best = m;
    const pivot = at(a, best * size + best);
    if (!(pivot > RANK)) break;
    const root = Math.sqrt(pivot);
    const column = new Float64Array(size).map((_, m) => at(a, m * size + best) / root);
    for (let r = 0; r < size; r++)
      for (let c = 0; c < size; c++) bump(a, r * size + c, -at(column, r) * at(column, c));
    columns.push(column.map((v, m) => v * (scale[m] ?? 0)));
  }
  return columns;
}

const RANK = 1e-10;
