/**
 * How much can act along one element under one combination, from the forces at its ends alone: what stays below the worst
 * so far needs no closer look, place by place.
 */
import type { Combined } from "../analysis/combined.ts";
import { at } from "../analysis/numbers.ts";
import { PER_SECTION } from "../analysis/sections.ts";
import { tipOf } from "./force-table.ts";
import type { ShearSpot } from "./member-plan.ts";
import type { Limits } from "./member-values.ts";
import type { StickTable } from "./station-table.ts";

/** Most tension and compression, shears, moments about y and z; lb and lb·in, none negative. */
const [PULL, PUSH, VY, VZ, MY, MZ] = [0, 1, 2, 3, 4, 5] as const;
export const BOUNDS = 6;

const SECTION = { N: 0, Vy: 1, Vz: 2, My: 4, Mz: 5 } as const;

/**
 * Bounds that hold wherever the forces are read between the places, moments also where they peak between two of them: the
 * straight line between the ends, and how far the loads lead off it to either side.
 * @param inner scratch of twelve numbers; @param out of `BOUNDS` numbers
 */
export function boundStick(
  combined: Combined,
  element: number,
  inner: Float64Array,
  out: Float64Array,
): void {
  combined.boundInner(element, inner);
  const { tips } = combined;
  const i = tipOf(element, "i");
  const j = tipOf(element, "j");
  const first = at(tips, i);
  const second = at(tips, j);
  const middle = at(inner, SECTION.N);
  const half = at(inner, SECTION.N + PER_SECTION);
  out[PULL] = Math.max(0, Math.max(first, second) + middle + half);
  out[PUSH] = Math.max(0, half - middle - Math.min(first, second));
  out[VY] = most(tips, i + SECTION.Vy, j + SECTION.Vy, inner, SECTION.Vy);
  out[VZ] = most(tips, i + SECTION.Vz, j + SECTION.Vz, inner, SECTION.Vz);
  out[MY] = most(tips, i + SECTION.My, j + SECTION.My, inner, SECTION.My);
  out[MZ] = most(tips, i + SECTION.Mz, j + SECTION.Mz, inner, SECTION.Mz);
}

/** Largest size between two ends. @param i, @param j where a number stands at the ends; @param k within a section */
function most(tips: Float64Array, i: number, j: number, inner: Float64Array, k: number): number {
  const first = at(tips, i);
  const second = at(tips, j);
  const middle = at(inner, k);
  return (
    Math.max(Math.max(first, second) + middle, -Math.min(first, second) - middle) + at(inner, k + PER_SECTION)
  );
}

/**
 * Largest shear beside a support that counts there, lb.
 * @param off by element, how far its shear lies off the straight line between its ends: the middle, and half of what is between
 */
export function mostBeside({ ends }: ShearSpot, tips: Float64Array, off: Float64Array): number {
  let V = at(off, 2 * ends.off);
  for (let k = 0; k < ends.index.length; k++)
    V += (ends.share[k] as number) * at(tips, ends.index[k] as number);
  return Math.abs(V) + at(off, 2 * ends.off + 1);
}

/** Bounds and what they bound are rounded apart by less than this share. */
const ROUNDED = 1e-9;

/** Whether nothing comes near the worst: what may equal it is looked at, and where nothing acts there is nothing to see. */
export const isBelow = (most: number, worst: number): boolean => most < worst * (1 - ROUNDED) || most === 0;

/** Stresses below this count as none, psi. */
export const NONE = 0.5;
const SURELY_NONE = NONE * (1 - ROUNDED);

/** What ratios of stress can be at most somewhere along an element. */
export interface Most {
  bending: number;
  shear: number;
  tension: number;
  tensionAndBending: number;
  compression: number;
  compressionAndBending: number;
}

export const noMost = (): Most => ({
  bending: 0,
  shear: 0,
  tension: 0,
  tensionAndBending: 0,
  compression: 0,
  compressionAndBending: 0,
});

/**
 * The same formulas as in member-stresses.ts, with the least that is left of the section anywhere along the element, the
 * farthest centroid, and the lesser limit of the two senses of bending.
 * @param k which of the plan's elements; @param whole section for buckling, in²; @param most what is written to
 */
export function mostStress(
  bounds: Float64Array,
  t: StickTable,
  k: number,
  F: Limits,
  whole: number,
  strongZ: boolean,
  most: Most,
): void {
  const pull = at(bounds, PULL);
  const push = at(bounds, PUSH);
  const N = Math.max(pull, push);
  const sz = (at(bounds, MZ) + N * at(t.yc, k)) / at(t.Sz, k);
  const sy = (at(bounds, MY) + N * at(t.zc, k)) / at(t.Sy, k);
  const f1 = strongZ ? sz : sy;
  const f2 = strongZ ? sy : sz;
  const F1 = Math.min(F.plus1, F.minus1);
  const F2 = Math.min(F.plus2, F.minus2);
  const lateral = f1 / Math.min(F.criticalPlus, F.criticalMinus);
  const Vy = at(t.shear, k) * at(bounds, VY);
  const Vz = at(bounds, VZ);
  const ft = pull / at(t.At, k);
  const fc = push / whole;
  const axial = Math.max(fc / F.Fc, push / at(t.A, k) / F.FcStar);
  const left1 = 1 - fc / F.FcE1;
  const left2 = 1 - fc / F.FcE2 - lateral * lateral;
  const bent = lateral < 1;
  most.bending =
    f1 + f2 < SURELY_NONE
      ? 0
      : bent
        ? f1 / F1 + f2 / (F2 * (1 - lateral * lateral))
        : Number.POSITIVE_INFINITY;
  most.shear = (1.5 * Math.sqrt(Vy * Vy + Vz * Vz)) / at(t.A, k) / F.Fv;
  const pulled = !(ft < SURELY_NONE);
  most.tension = pulled ? ft / F.Ft : 0;
  most.tensionAndBending = pulled ? Math.max(ft / F.Ft + f1 / F.Fb1 + f2 / F.Fb2, f1 / F1 + f2 / F2) : 0;
  const pushed = !(fc < SURELY_NONE);
  most.compression = pushed ? axial : 0;
  most.compressionAndBending = !pushed
    ? 0
    : bent && left1 > 0 && left2 > 0
      ? axial * axial + f1 / (F1 * left1) + f2 / (F2 * left2)
      : Number.POSITIVE_INFINITY;
}
