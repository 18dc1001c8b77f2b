/**
 * Flat steel of anchors, allowable strength design (AISC 360; memory). The file names no grade: thin steel counts as
 * galvanised sheet of grade 33, from 1/4 in on as A36, as the NDS has them in its tables of steel side plates.
 */
import type { Sourced } from "../sourced.ts";

export interface FlatSteel {
  /** in */
  readonly thickness: number;
  readonly width: number;
}

interface Grade {
  /** psi */
  readonly yield: number;
  readonly ultimate: number;
}

const SHEET: Grade = { yield: 33_000, ultimate: 45_000 };
const PLATE: Grade = { yield: 36_000, ultimate: 58_000 };
/** psi */
export const STEEL_MODULUS = 29_000_000;
const OMEGA_YIELD = 1.67;
const OMEGA_RUPTURE = 2;

/** @returns F_y and F_u, psi, of steel so thick, in (NDS notes to Tables 12B and 12N; memory) */
export const gradeOf = (thickness: number): Grade => (thickness < 0.25 - 1e-9 ? SHEET : PLATE);

const known = (value: number, source: string): Sourced => ({
  value: Number.isFinite(value) ? Math.max(0, value) : 0,
  status: "memory",
  source,
});

/** Tension in the whole section, lb: F_y A_g ÷ 1.67 (AISC 360 D2-1). */
export function strapYield({ thickness, width }: FlatSteel): Sourced {
  return known((gradeOf(thickness).yield * thickness * width) / OMEGA_YIELD, "F_y A_g ÷ 1.67, AISC 360 D2");
}

/** Tension past a hole, lb: F_u A_n ÷ 2 with the hole 1/16 in wider (AISC 360 D2-2, B4.3). @param hole in */
export function strapRupture({ thickness, width }: FlatSteel, hole: number): Sourced {
  const net = Math.max(0, width - hole - 1 / 16) * thickness;
  return known((gradeOf(thickness).ultimate * net) / OMEGA_RUPTURE, "F_u A_n ÷ 2, AISC 360 D2");
}

/**
 * Moment about an axis in the flat, lb·in: F_y t² b ÷ 4 ÷ 1.67 (AISC 360 F11-1; the limit of 1.6 M_y is never reached by
 * a rectangle, whose Z is 1.5 S).
 */
export function strapFlatMoment({ thickness, width }: FlatSteel): Sourced {
  return known(
    (gradeOf(thickness).yield * width * thickness ** 2) / 4 / OMEGA_YIELD,
    "F_y b t² ÷ 4 ÷ 1.67, AISC 360 F11",
  );
}

/**
 * Moment on edge, lb·in: plastic, or less where a long flat bar rolls over (AISC 360 F11-1 to F11-4 with C_b 1).
 * @param lever in, from where it is held to where it is pushed
 */
export function strapEdgeMoment({ thickness, width }: FlatSteel, lever: number): Sourced {
  const Fy = gradeOf(thickness).yield;
  const S = (thickness * width ** 2) / 6;
  const slender = thickness > 0 ? (lever * width) / thickness ** 2 : Number.POSITIVE_INFINITY;
  const plastic = 1.5 * Fy * S;
  const rolls =
    slender <= (0.08 * STEEL_MODULUS) / Fy
      ? plastic
      : slender <= (1.9 * STEEL_MODULUS) / Fy
        ? (1.52 - (0.274 * slender * Fy) / STEEL_MODULUS) * Fy * S
        : ((1.9 * STEEL_MODULUS) / slender) * S;
  return known(Math.min(plastic, rolls) / OMEGA_YIELD, "M_n ÷ 1.67, AISC 360 F11");
}

/**
 * Compression over a free length, lb: F_cr A_g ÷ 1.67 (AISC 360 E3-1 to E3-4), flat bar that is held in the concrete and
 * whose head may sway but not turn: K 1.2 (AISC 360 Table C-A-7.1).
 * @param free in
 */
export function strapColumn({ thickness, width }: FlatSteel, free: number): Sourced {
  const Fy = gradeOf(thickness).yield;
  const slender = (1.2 * Math.max(0, free) * Math.sqrt(12)) / Math.min(thickness, width);
  const euler = (Math.PI ** 2 * STEEL_MODULUS) / slender ** 2;
  const critical =
    slender <= 4.71 * Math.sqrt(STEEL_MODULUS / Fy) ? Fy * 0.658 ** (Fy / euler) : 0.877 * euler;
  return known((critical * thickness * width) / OMEGA_YIELD, "F_cr A ÷ 1.67, AISC 360 E3, K 1.2");
}

/** Shear across the section, lb: 0.6 F_y A ÷ 1.5 (AISC 360 J4-3). */
export function strapShear({ thickness, width }: FlatSteel): Sourced {
  return known((0.6 * gradeOf(thickness).yield * thickness * width) / 1.5, "0.6 F_y A ÷ 1.5, AISC 360 J4");
}
