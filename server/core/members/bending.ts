/**
 * Bending of a rectangular section and its lateral stability, NDS 3.3.
 */
import type { Note } from "../note.ts";
import type { Factor } from "../sourced.ts";
import { sectionModulus } from "./section.ts";

/** How the load of an unsupported length is placed (NDS Table 3.3.3). */
export type Loading = "uniform" | "point-at-midspan" | "cantilever-uniform" | "other";

/** f_b = M/S (NDS 3.3-1). @param moment in-lb; @returns psi */
export function bendingStress(moment: number, breadth: number, depth: number): number {
  return Math.abs(moment) / sectionModulus(breadth, depth);
}

/**
 * l_e of a beam, NDS Table 3.3.3; the line for cantilevers from memory.
 * @param unbraced l_u, in: between points where the edge in compression is held
 * @returns in
 */
export function effectiveLength(loading: Loading, unbraced: number, depth: number): number {
  const ratio = unbraced / depth;
  switch (loading) {
    case "uniform":
      return ratio < 7 ? 2.06 * unbraced : 1.63 * unbraced + 3 * depth;
    case "point-at-midspan":
      return ratio < 7 ? 1.8 * unbraced : 1.37 * unbraced + 3 * depth;
    case "cantilever-uniform":
      return ratio < 7 ? 1.33 * unbraced : 0.9 * unbraced + 3 * depth;
    case "other":
      return ratio < 7 ? 2.06 * unbraced : ratio <= 14.3 ? 1.63 * unbraced + 3 * depth : 1.84 * unbraced;
  }
}

export interface LateralStability {
  /** in */
  readonly effectiveLength: number;
  /** R_B = √(l_e d/b²) (NDS 3.3-5); over 50 is not allowed */
  readonly slenderness: number;
  /** F_bE = 1.20 E_min′/R_B² (NDS 3.3.3.8), psi; Infinity where nothing can buckle */
  readonly criticalStress: number;
  readonly factor: Factor;
  readonly allowed: boolean;
}

/** NDS 3.3.3.7 */
const MOST_BEAM_SLENDERNESS = 50;

/**
 * C_L, NDS 3.3-6; 1 where the depth does not exceed the breadth or the edge in compression is held (NDS 3.3.3.1 to .3).
 * @param Fb F_b* in psi: with every factor but C_L, C_fu and C_V
 * @param Emin E_min′ in psi
 * @param unbraced l_u, in; 0 = held throughout
 */
export function lateralStability(
  Fb: number,
  Emin: number,
  breadth: number,
  depth: number,
  unbraced: number,
  loading: Loading,
): LateralStability {
  const factor = (value: number, note: Note): Factor => ({
    symbol: "C_L",
    value,
    status: "derived",
    source: "NDS 3.3.3",
    note,
  });
  if (depth <= breadth || unbraced <= 0) {
    const note = unbraced <= 0 ? "held along its edge in compression" : "not deeper than wide";
    return {
      effectiveLength: 0,
      slenderness: 0,
      criticalStress: Number.POSITIVE_INFINITY,
      factor: factor(1, note),
      allowed: true,
    };
  }
  const length = effectiveLength(loading, unbraced, depth);
  const slenderness = Math.sqrt((length * depth) / breadth ** 2);
  const criticalStress = (1.2 * Emin) / slenderness ** 2;
  const a = criticalStress / Fb;
  const half = (1 + a) / 1.9;
  return {
    effectiveLength: length,
    slenderness,
    criticalStress,
    factor: factor(half - Math.sqrt(half ** 2 - a / 0.95), {
      text: "unbraced over {length}, R_B = {slenderness}",
      parts: { length: { value: unbraced, unit: "in" }, slenderness: { value: slenderness, unit: "ratio" } },
    }),
    allowed: slenderness <= MOST_BEAM_SLENDERNESS,
  };
}
