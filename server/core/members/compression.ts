/**
 * Compression along and at an angle to the grain, NDS 3.6, 3.7 and 3.10.
 */
import type { Factor } from "../sourced.ts";

/** c of sawn lumber, NDS 3.7.1 */
const SAWN = 0.8;
/** NDS 3.7.1.4; 75 while building */
export const MOST_COLUMN_SLENDERNESS = 50;

/**
 * l_e/d about one axis, NDS 3.7.1.3; the larger of a column's two governs.
 * @param effective K_e times the unbraced length, in (NDS Appendix G)
 * @param side in: the section's side in the direction in which it would buckle
 */
export function columnSlenderness(effective: number, side: number): number {
  return effective / side;
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
 * F_θ′, Hankinson's formula, NDS 3.10-1.
 * @param Fc F_c* in psi, with C_D; @param FcPerp F_c⊥′ in psi, without
 * @param angle degrees between load and grain
 */
export function hankinson(Fc: number, FcPerp: number, angle: number): number {
  const radians = (angle * Math.PI) / 180;
  return (Fc * FcPerp) / (Fc * Math.sin(radians) ** 2 + FcPerp * Math.cos(radians) ** 2);
}
