/**
 * Forces at fixed places along every element of a solved case, as one flat table: checks of members run over it without
 * building an object for each place.
 */
import { PER_SECTION, SHARES, sectionRow } from "../analysis/sections.ts";
import type { SolvedCase } from "./solve-frame.ts";

/** Places along each element, as shares of its length: both ends and three between. */
export const PLACES = SHARES;

/** What stands at each place, in this order: N tension positive, shears, torque, moments, in the element's local axes. */
export const FORCES = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;

/** Where in the table the forces of an element at a place begin. */
export const rowOf = sectionRow;

/** @returns lb and lb·in, local axes; undefined when the case has no solution */
export function forceTable(solved: SolvedCase): Float64Array | undefined {
  return solved.combined.sections.length > 0 ? solved.combined.sections : undefined;
}

/** Forces that act on an element at one of its ends, local axes: the section there, seen from outside. */
export function endForces(table: Float64Array, element: number, end: "i" | "j"): readonly number[] {
  const row = rowOf(element, end === "i" ? 0 : PLACES.length - 1);
  const sign = end === "i" ? -1 : 1;
  return Array.from({ length: PER_SECTION }, (_, k) => sign * (table[row + k] ?? 0));
}
