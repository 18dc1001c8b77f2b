/**
 * Roof live load: people and materials during building and repair. ASCE 7-16 section 4.8.2, 7-22 section 4.8.1.
 */
import type { Factor, Sourced } from "../sourced.ts";
import type { Pitch } from "./snow-factors.ts";

export interface RoofLive extends Sourced {
  /** L_o, psf */
  readonly basic: number;
  /** R_1 by tributary area, R_2 by pitch */
  readonly factors: readonly Factor[];
}

const SOURCE = "ASCE 7 section 4.8 (L_r = L_o R_1 R_2)";
/** psf */
const BASIC = 20;
/** psf */
const LEAST = 12;

/**
 * L_r = L_o R_1 R_2, between 12 and 20 psf of the level projection, L_o = 20 psf for an ordinary roof.
 * @param area tributary area of the member, ft² of level projection
 */
export function roofLive(area: number, pitch: Pitch): RoofLive {
  const R1 = area <= 200 ? 1 : area >= 600 ? 0.6 : 1.2 - 0.001 * area;
  const inches = (12 * pitch.rise) / pitch.run;
  const R2 = inches <= 4 ? 1 : inches >= 12 ? 0.6 : 1.2 - 0.05 * inches;
  return {
    basic: BASIC,
    value: Math.min(BASIC, Math.max(LEAST, BASIC * R1 * R2)),
    status: "published",
    source: SOURCE,
    factors: [
      { symbol: "R_1", value: R1, status: "published", source: SOURCE, note: "tributary area" },
      { symbol: "R_2", value: R2, status: "published", source: SOURCE, note: "pitch" },
    ],
  };
}
