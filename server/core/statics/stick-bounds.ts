/**
 * How much can act along one element under one combination, from the forces at its ends alone: what stays below the worst
 * so far needs no closer look, place by place.
 */
import type { Combined } from "../analysis/combined.ts";
import { at } from "../analysis/numbers.ts";
import { PLACES, tipOf } from "./force-table.ts";
import type { Limits } from "./member-values.ts";
import type { StickTable } from "./station-table.ts";

/** Most tension and compression, shears, moments about y and z; lb and lb·in, none negative. */
const [PULL, PUSH, VY, VZ, MY, MZ] = [0, 1, 2, 3, 4, 5] as const;
export const BOUNDS = 6;

/** Most shear in the plane of the depth, lb. */
export const deepShear = (bounds: Float64Array): number => at(bounds, VY);

const SECTION = { Vy: 1, Vz: 2, My: 4, Mz: 5 } as const;
/** Of the length: from place to place. */
const STEP = 1 / (PLACES.length - 1);

/**
 * Bounds that hold wherever the forces are read between the places, moments also where they peak between two of them: there
 * they pass the nearer place by at most half of what the shear changes between the two, times their distance.
 * @param inner scratch of six numbers; @param out of `BOUNDS` numbers
 */
export function boundStick(
  combined: Combined,
  element: number,
  length: number,
  inner: Float64Array,
  out: Float64Array,
): void {
  combined.boundInner(element, inner);
  const { tips } = combined;
  const i = tipOf(element, "i");
  const j = tipOf(element, "j");
  const first = at(tips, i);
  const second = at(tips, j);
  const more = at(inner, 0);
  out[PULL] = Math.max(0, Math.max(first, second) + more);
  out[PUSH] = Math.max(0, more - Math.min(first, second));
  const between = (STEP * length) / 2;
  const y = SECTION.Vy;
  const z = SECTION.Vz;
  const y1 = at(tips, i + y);
  const y2 = at(tips, j + y);
  const moreY = at(inner, y);
  const z1 = at(tips, i + z);
  const z2 = at(tips, j + z);
  const moreZ = at(inner, z);
  out[VY] = Math.max(Math.abs(y1), Math.abs(y2)) + moreY;
  out[VZ] = Math.max(Math.abs(z1), Math.abs(z2)) + moreZ;
  out[MY] =
    Math.max(Math.abs(at(tips, i + SECTION.My)), Math.abs(at(tips, j + SECTION.My))) +
    at(inner, SECTION.My) +
    (Math.abs(z2 - z1) * STEP + 2 * moreZ) * between;
  out[MZ] =
    Math.max(Math.abs(at(tips, i + SECTION.Mz)), Math.abs(at(tips, j + SECTION.Mz))) +
    at(inner, SECTION.Mz) +
    (Math.abs(y2 - y1) * STEP + 2 * moreY) * between;
}

/** Bounds and what they bound are rounded apart by less than this share. */
const ROUNDED = 1e-9;

/** Whether nothing comes near the worst: what may equal it is looked at, and where nothing acts there is nothing to see. */
export const isBelow = (most: number, worst: number): boolean => most < worst * (1 - ROUNDED) || most === 0;

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
  most.bending = bent ? f1 / F1 + f2 / (F2 * (1 - lateral * lateral)) : Number.POSITIVE_INFINITY;
  most.shear = (1.5 * Math.sqrt(Vy * Vy + Vz * Vz)) / at(t.A, k) / F.Fv;
  most.tension = ft / F.Ft;
  most.tensionAndBending = ft > 0 ? Math.max(ft / F.Ft + f1 / F.Fb1 + f2 / F.Fb2, f1 / F1 + f2 / F2) : 0;
  most.compression = axial;
  most.compressionAndBending =
    fc === 0
      ? 0
      : bent && left1 > 0 && left2 > 0
        ? axial * axial + f1 / (F1 * left1) + f2 / (F2 * left2)
        : Number.POSITIVE_INFINITY;
}
