/** Moments and areas in the units of the file. */
import type { Say } from "../../core/checks/say.ts";

/** 1 lb·in = 0.1129848290276167 N·m (NIST SP 811 (2008), appendix B; memory) */
const NEWTON_METRES = 0.1129848290276167;
/** 1 ft = 0.3048 m, exact */
const SQUARE_METRES = 0.3048 ** 2;
const INCHES_PER_FOOT = 12;

/** @param poundInches lb·in */
export function momentText(poundInches: number, say: Say): string {
  return say.metric
    ? `${say.number((poundInches * NEWTON_METRES) / 1000, 2)} kN·m`
    : `${say.number(poundInches / INCHES_PER_FOOT, 0)} lb·ft`;
}

/** @param squareFeet ft² */
export function areaText(squareFeet: number, say: Say): string {
  return say.metric
    ? `${say.number(squareFeet * SQUARE_METRES, 1)} m²`
    : `${say.number(squareFeet, squareFeet < 10 ? 1 : 0)} ft²`;
}
