/** Setting out piers and posts on the ground: string lines, diagonals, falls (derived: plane and solid geometry). */

export interface PierLayout {
  /** distances of the pier centers from the first corner along each way, inches */
  readonly x: readonly number[];
  readonly y: readonly number[];
  /** corner to corner over all bays, inches */
  readonly overallDiagonal: number;
  /** corner to corner of one bay, inches */
  readonly bayDiagonal: number;
  readonly piers: number;
}

/**
 * String-line layout of equal bays.
 * @param bays how many each way, whole numbers
 * @param spacing of the pier centers each way, inches
 */
export function pierLayout(
  bays: { readonly x: number; readonly y: number },
  spacing: { readonly x: number; readonly y: number },
): PierLayout {
  const at = (count: number, step: number): number[] => Array.from({ length: count + 1 }, (_, i) => i * step);
  return {
    x: at(bays.x, spacing.x),
    y: at(bays.y, spacing.y),
    overallDiagonal: Math.hypot(bays.x * spacing.x, bays.y * spacing.y),
    bayDiagonal: Math.hypot(spacing.x, spacing.y),
    piers: (bays.x + 1) * (bays.y + 1),
  };
}

/**
 * What a tape reads between two post tops, and what it would read were they level: the plan diagonal leaves the
 * difference in height out.
 * @param x along the walls, y across them, z in height: inches
 */
export function tapeBetween(
  x: number,
  y: number,
  z: number,
): { readonly tape: number; readonly plan: number } {
  return { tape: Math.hypot(x, y, z), plan: Math.hypot(x, y) };
}

/**
 * Lengths of posts from stepped pier tops to one level soffit, inches.
 * @param soffit level of the beam's underside @param tops levels of the pier tops, inches
 */
export function steppedPosts(
  soffit: number,
  tops: readonly number[],
): { readonly lengths: readonly number[]; readonly fall: number } {
  return {
    lengths: tops.map((top) => soffit - top),
    fall: tops.length === 0 ? 0 : Math.max(...tops) - Math.min(...tops),
  };
}

export interface Slope {
  /** inches */
  readonly fall: number;
  /** degrees */
  readonly angle: number;
  /** along the ground, feet: what a tape that is not held level reads */
  readonly along: number;
}

/**
 * @param run level, feet @param percent fall for each hundred of run
 */
export function slopeOver(run: number, percent: number): Slope {
  const ratio = percent / 100;
  return {
    fall: 12 * run * ratio,
    angle: (Math.atan(ratio) * 180) / Math.PI,
    along: run * Math.hypot(1, ratio),
  };
}
