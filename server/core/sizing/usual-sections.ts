/**
 * The usual cross-sections that a framer chooses from. Which sides are cut is common practice, no source; what a nominal
 * size measures is that of the lumber standard (`quantity/section.ts`).
 */
import type { Sourced } from "../sourced.ts";

/**
 * full-inch: rough from the mill, in an inch file; nominal: planed lumber and timbers by their trade names;
 * sawn-metric: rough, in a millimetre file; planed-metric: planed, in a millimetre file.
 */
export type SeriesName = "full-inch" | "nominal" | "sawn-metric" | "planed-metric";

const steps = (from: number, to: number, by: number): readonly number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, i) => from + i * by);

/** Sides in the unit of the series: inches, nominal inches, millimetres. Common practice, no source. */
const SIDES: Readonly<Record<Exclude<SeriesName, "nominal">, readonly number[]>> = {
  "full-inch": steps(2, 16, 1),
  // sawn softwood is cut in steps of 25 mm, planed timber for framing in steps of 20 mm
  "sawn-metric": steps(50, 400, 25),
  "planed-metric": steps(40, 400, 20),
};

/** Widths that lumber of 2 to 4 in comes in, and sides of timbers of 6 in and more: nominal inches; memory of PS 20. */
const LUMBER_THICKNESSES = [2, 3, 4];
const LUMBER_WIDTHS = [4, 6, 8, 10, 12, 14, 16];
const TIMBER_SIDES = [6, 8, 10, 12, 14, 16];

/**
 * Depth over width, nominal where the size is nominal: past it a timber must be bridged or held along both edges
 * (NDS 4.4.1.2; memory), which this program cannot see.
 */
export const MOST_SLENDER: Sourced = { value: 6, status: "memory", source: "NDS 4.4.1.2" };

/** Both sides of a section, smaller side first where it is nominal, in the unit of its series. */
export type Sides = readonly [number, number];

/** @returns the sides of metric and full-inch series, which go with one another freely */
export function sidesOf(series: Exclude<SeriesName, "nominal">): readonly number[] {
  return SIDES[series];
}

/** @returns every nominal size, thickness before width */
export function nominalSizes(): readonly Sides[] {
  const lumber = LUMBER_THICKNESSES.flatMap((t) =>
    LUMBER_WIDTHS.filter((w) => w >= t).map((w): Sides => [t, w]),
  );
  const timbers = TIMBER_SIDES.flatMap((a) => TIMBER_SIDES.filter((b) => b >= a).map((b): Sides => [a, b]));
  return [...lumber, ...timbers];
}
