/**
 * How much of a wood shingle may lie open to the weather: IRC Table R905.7.5 as a state code prints it (published).
 */

import type { Pitch } from "../loads/snow-factors.ts";
import type { Sourced } from "../sourced.ts";
import { flatterThan } from "./coverings.ts";

export type ShingleGrade = 1 | 2 | 3;

/** in: on 3:12 up to 4:12, and from 4:12 up. The print of 16 in shingles was seen for grade 2 only. */
const EXPOSURE: Readonly<Record<string, readonly [flat: number, steep: number]>> = {
  "16/2": [3.5, 4],
  "18/1": [4.25, 5.5],
  "18/2": [4, 4.5],
  "18/3": [3.5, 4],
  "24/1": [5.75, 7.5],
  "24/2": [5.5, 6.5],
  "24/3": [5, 5.5],
};

/**
 * @param length of the shingle, in: 16, 18 or 24
 * @returns in; undefined below 3:12, where they do not belong, and for a length and grade that were not seen
 */
export function shingleExposure(length: number, grade: ShingleGrade, pitch: Pitch): Sourced | undefined {
  const found = EXPOSURE[`${length}/${grade}`];
  if (!found || flatterThan(pitch, 3)) return undefined;
  return {
    value: flatterThan(pitch, 4) ? found[0] : found[1],
    status: "published",
    source: "IRC Table R905.7.5",
  };
}
