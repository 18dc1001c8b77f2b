/**
 * Forces at fixed places along every element of a solved case, as one flat table: checks of members run over it without
 * building an object for each place.
 */
import type { SolvedCase } from "./solve-frame.ts";

/** Places along each element, as shares of its length: both ends and three between. */
export const PLACES = [0, 0.25, 0.5, 0.75, 1] as const;

/** What stands at each place, in this order: N tension positive, shears, torque, moments, in the element's local axes. */
export const FORCES = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;

const WIDTH = FORCES.length;

/** Where in the table the forces of an element at a place begin. */
export function rowOf(element: number, place: number): number {
  return (element * PLACES.length + place) * WIDTH;
}

/** @returns lb and lb·in, local axes; undefined when the case has no solution */
export function forceTable(solved: SolvedCase): Float64Array | undefined {
  const { solution, frame } = solved;
  if (!solution) return undefined;
  const table = new Float64Array(frame.pieces.length * PLACES.length * WIDTH);
  frame.pieces.forEach((_, element) => {
    const curves = solution.along(element);
    if (!curves) return;
    PLACES.forEach((share, place) => {
      const row = rowOf(element, place);
      const x = share * curves.length;
      const side = share === 1 ? "before" : "after";
      FORCES.forEach((quantity, k) => {
        table[row + k] = curves.valueAt(quantity, x, side);
      });
    });
  });
  return table;
}
