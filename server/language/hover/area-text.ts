/** Areas in the units of the file. */
import type { Say } from "../../core/checks/say.ts";

/** 1 ft = 0.3048 m, exact */
const SQUARE_METRES = 0.3048 ** 2;

/** @param squareFeet ft² */
export function areaText(squareFeet: number, say: Say): string {
  return say.metric
    ? `${say.number(squareFeet * SQUARE_METRES, 1)} m²`
    : `${say.number(squareFeet, squareFeet < 10 ? 1 : 0)} ft²`;
}
