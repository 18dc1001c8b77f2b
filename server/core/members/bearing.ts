/**
 * Bearing of wood along and across its grain, NDS 3.10.
 */
import { lengthNote } from "../note.ts";
import type { Factor } from "../sourced.ts";

/**
 * C_b = (l_b + 3/8)/l_b for bearing shorter than 6 in along the grain and 3 in or more from the end (NDS 3.10.4); a round
 * washer counts with its diameter.
 * @param length l_b, in; @param fromEnd in, from the bearing's edge to the end of the member
 */
export function bearingAreaFactor(length: number, fromEnd: number): Factor {
  const applies = length > 0 && length < 6 && fromEnd >= 3 - 1e-6;
  return {
    symbol: "C_b",
    value: applies ? (length + 0.375) / length : 1,
    status: "published",
    source: "NDS 3.10.4",
    note: applies
      ? "short bearing away from the end"
      : length < 6
        ? lengthNote("nearer than {length} to the end", 3)
        : lengthNote("{length} or longer", 6),
  };
}

/**
 * Wood that bears along its grain on wood takes 0.75 F_c*: what presses harder must bear on a metal plate or the like, so
 * that the hard rings of the one end do not split those of the other (NDS 3.10.1.3).
 */
export const END_GRAIN: Factor = {
  symbol: "f_c/F_c*",
  value: 0.75,
  status: "memory",
  source: "NDS 3.10.1.3",
  note: "end grain without a metal plate",
};
