/**
 * Compression along and at an angle to the grain, NDS 3.6, 3.7 and 3.10.
 */
import type { Factor } from "../sourced.ts";

/** c of sawn lumber, NDS 3.7.1 */
const SAWN = 0.8;
/** NDS 3.7.1.4; 75 while building */
export const MOST_COLUMN_SLENDERNESS = 50;

/** A column held apart about its two axes; in. `length` is unbraced, `effective` K_e (NDS Appendix G). */
export interface ColumnAxis {
  /** side of the section in the direction in which it would buckle */
  readonly side: number;
  readonly length: number;
  readonly effective: number;
}

/** l_e/d, the larger of the axes. NDS 3.7.1.3 */
export function columnSlenderness(axes: readonly ColumnAxis[]): number {
  return Math.max(0, ...axes.map((axis) => (axis.effective * axis.length) / axis.side));
}

export interface ColumnStability {
  readonly slenderness: number;
  /** F_cE = 0.822 E_min′/(l_e/d)², psi */
  readonly criticalStress: number;
  readonly factor: Factor;
  readonly allowed: boolean;
}

/** F_cE = 0.822 E_min′/(l_e/d)² (NDS 3.7.1.5). @returns psi; Infinity at no slenderness */
export function eulerStress(Emin: number, slenderness: number): number {
  return slenderness > 0 ? (0.822 * Emin) / slenderness ** 2 : Number.POSITIVE_INFINITY;
}

/**
 * C_P, NDS 3.7-1.
 * @param Fc F_c* in psi: with every factor but C_P; @param Emin E_min′ in psi
 */
export function columnStability(Fc: number, Emin: number, slenderness: number): ColumnStability {
  const criticalStress = eulerStress(Emin, slenderness);
  const a = criticalStress / Fc;
  const half = (1 + a) / (2 * SAWN);
  const value = Number.isFinite(a) ? half - Math.sqrt(half ** 2 - a / SAWN) : 1;
  return {
    slenderness,
    criticalStress,
    factor: {
      symbol: "C_P",
      value,
      status: "derived",
      source: "NDS 3.7-1",
      note: { text: "l_e/d = {slenderness}", parts: { slenderness: { value: slenderness, unit: "ratio" } } },
    },
    allowed: slenderness <= MOST_COLUMN_SLENDERNESS,
  };
}

/**
 * The slenderness at which a column is just used up: NDS 3.7-1 solved for F_cE/F_c* = C_P (1 − c C_P)/(1 − C_P).
 * @param stress P/A, psi
 * @returns l_e/d; 0 where the stress exceeds F_c*
 */
export function longestColumn(stress: number, Fc: number, Emin: number): number {
  const CP = stress / Fc;
  if (CP >= 1) return 0;
  const a = (CP * (1 - SAWN * CP)) / (1 - CP);
  return Math.sqrt((0.822 * Emin) / (a * Fc));
}

/**
 * F_θ′, Hankinson's formula, NDS 3.10-1.
 * @param Fc F_c* in psi, with C_D; @param FcPerp F_c⊥′ in psi, without
 * @param angle degrees between load and grain
 */
export function hankinson(Fc: number, FcPerp: number, angle: number): number {
  const radians = (angle * Math.PI) / 180;
  return (Fc * FcPerp) / (Fc * Math.sin(radians) ** 2 + FcPerp * Math.cos(radians) ** 2);
}
