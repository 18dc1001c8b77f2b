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

/** Whether the case has a solution. */
export const isSolved = ({ combined }: SolvedCase): boolean => combined.status !== "failed";

/** @returns lb and lb·in, local axes; undefined when the case has no solution */
export function forceTable(solved: SolvedCase): Float64Array | undefined {
  return isSolved(solved) ? solved.combined.sections() : undefined;
}

/** Where in a combination's forces at the ends of elements those of one begin. */
export function tipOf(element: number, end: "i" | "j"): number {
  return (2 * element + (end === "i" ? 0 : 1)) * PER_SECTION;
}

/** Forces that act on an element at one of its ends, local axes: the section there, seen from outside. */
export function endForces(tips: Float64Array, element: number, end: "i" | "j"): readonly number[] {
  const from = tipOf(element, end);
  const sign = end === "i" ? -1 : 1;
  return Array.from({ length: PER_SECTION }, (_, k) => sign * (tips[from + k] ?? 0));
}
