/** Squaring a layout by its diagonals: plane geometry (derived); any one unit of length. */

/** Diagonal of a rectangle: √(a² + b²). */
export function diagonal(a: number, b: number): number {
  return Math.hypot(a, b);
}

export interface OutOfSquare {
  readonly longDiagonal: number;
  readonly shortDiagonal: number;
  /** how far the end of side b lies to one side of where it would stand square to a */
  readonly offset: number;
  /** the sharper angle between the sides, degrees */
  readonly angle: number;
}

/**
 * What a difference of the diagonals means, where opposite sides are equal (a parallelogram): p² + q² = 2 (a² + b²), and
 * b cos γ = (p² - q²) / (4 a).
 * @param difference of the two diagonals, either sign
 * @returns undefined when no parallelogram of these sides has such a difference
 */
export function outOfSquare(a: number, b: number, difference: number): OutOfSquare | undefined {
  const d = Math.abs(difference);
  // p = q + d in p² + q² = 2 (a² + b²): q = (√(4 (a² + b²) - d²) - d) / 2
  const sum = 4 * (a * a + b * b) - d * d;
  if (!(a > 0 && b > 0) || sum < 0) return undefined;
  const shortDiagonal = (Math.sqrt(sum) - d) / 2;
  const longDiagonal = shortDiagonal + d;
  const offset = (longDiagonal ** 2 - shortDiagonal ** 2) / (4 * a);
  if (shortDiagonal < 0 || offset > b) return undefined;
  return { longDiagonal, shortDiagonal, offset, angle: (Math.acos(offset / b) * 180) / Math.PI };
}
