/** Positions of a series: evenly divided with `spacing` as the most allowed, a fixed layout with the rest in the last bay, or a count. */

/** More sticks than any frame of this kind has; a slip of the pen must not fill the memory. */
export const MOST_IN_SERIES = 500;

/**
 * @param first center of the first stick, inches
 * @param last center of the last stick
 * @param spacing most allowed, center to center
 * @param count number of sticks; goes before spacing
 * @returns centers from first to last
 */
export function positions(
  first: number,
  last: number,
  spacing: number | undefined,
  count: number | undefined,
  layout: "even" | "fixed",
): number[] {
  const run = last - first;
  if (run < 1e-6) return [(first + last) / 2];
  if (count === undefined && layout === "fixed" && spacing !== undefined && spacing > 0) {
    const whole = Math.min(MOST_IN_SERIES, Math.floor(run / spacing - 1e-6));
    return [...Array.from({ length: whole + 1 }, (_, i) => first + i * spacing), last];
  }
  const bays =
    count !== undefined
      ? Math.max(1, count - 1)
      : spacing !== undefined && spacing > 0
        ? Math.ceil(run / spacing - 1e-6)
        : 1;
  const limited = Math.min(MOST_IN_SERIES, bays);
  if (count === 1) return [(first + last) / 2];
  return Array.from({ length: limited + 1 }, (_, i) => first + (run * i) / limited);
}
