/**
 * The size class of a section. It follows the dimensions, not the use (NDS Supplement 4.1, grading rules): 2 to 4 in
 * thick is dimension lumber; 5 in and thicker is beams and stringers where the larger side exceeds the smaller by more
 * than 2 in, else posts and timbers.
 */
import type { SizeClass } from "./types.ts";

/** in; nominal 2 in dressed is 1 1/2 in thick: thinner stock is boards, which these tables do not grade */
const THINNEST = 1.5;
/** in; full-sawn 4 in is the thickest dimension lumber */
const THICKEST_DIMENSION = 4;
/** in; sizes come from whole nanometres, so a hair of slack is enough */
const SLACK = 1e-6;

/**
 * Sections over 4 in and under 5 in thick count as timbers: 4 1/2 in is the dressed size of nominal 5 in, and Table 4D
 * does not give them the size factors of dimension lumber, so that the choice errs on the safe side.
 * @param width in, actual size
 * @param depth in, actual size; the order of the two does not matter
 */
export function sizeClass(width: number, depth: number): SizeClass | "too-thin" {
  const thin = Math.min(width, depth);
  const wide = Math.max(width, depth);
  if (!(thin >= THINNEST - SLACK)) return "too-thin";
  if (thin <= THICKEST_DIMENSION + SLACK) return "dimension-lumber";
  return wide - thin > 2 + SLACK ? "beams-and-stringers" : "posts-and-timbers";
}
