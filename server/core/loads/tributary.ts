/** Which share of a row of supports each carries, by half the distance to the next one. */

/**
 * Width that each of a row of supports carries: half of each bay beside it, and the whole overhang at the ends.
 * @param supports in order, at least one
 */
export function tributaryWidths(
  supports: readonly number[],
  overhang: { readonly first: number; readonly last: number } = { first: 0, last: 0 },
): readonly number[] {
  return supports.map((at, i) => {
    const before = supports[i - 1];
    const after = supports[i + 1];
    return (
      (before === undefined ? overhang.first : (at - before) / 2) +
      (after === undefined ? overhang.last : (after - at) / 2)
    );
  });
}
