/**
 * How deep a pier or post must stand in the ground to hold a sideways load: IBC section 1807.3.2. The figures 2.34,
 * 4.36 and 4.25 are remembered and reproduce a published footing sheet; the doubling is IBC 1806.3.4 (memory).
 */

export interface SidewaysLoad {
  /** sideways load, lb */
  readonly load: number;
  /** height of the load above the ground, feet */
  readonly height: number;
  /** diameter of a round pole or footing, or diagonal of a square one, feet */
  readonly breadth: number;
  /** allowable lateral bearing for each foot below grade, psf/ft */
  readonly lateral: number;
  /** 2 for an isolated pole where half an inch of movement at the ground is harmless (IBC 1806.3.4), else 1 */
  readonly factor: 1 | 2;
}

/** Lateral bearing grows with depth down to here, feet (IBC 1807.3.2.1; memory). */
export const DEEPEST_LATERAL = 12;

/** Figures of equation 18-1: 2.34 P, and 4.36 h, of which a quarter is left when it is turned round. */
export const LOAD_SHARE = 2.34;
const HEIGHT_FACTOR = 4.36;
export const HEIGHT_SHARE = HEIGHT_FACTOR / 4;

/**
 * Allowable lateral bearing at a third of the depth, psf: S₁ = lateral × factor × d/3, with d no more than 12 ft.
 * @param depth feet
 */
export function lateralAtThird(
  { lateral, factor }: Pick<SidewaysLoad, "lateral" | "factor">,
  depth: number,
): number {
  return (lateral * factor * Math.min(depth, DEEPEST_LATERAL)) / 3;
}

/** Allowable lateral bearing at the bottom, psf: S₃ = lateral × factor × d, with d no more than 12 ft. */
export function lateralAtBottom(
  { lateral, factor }: Pick<SidewaysLoad, "lateral" | "factor">,
  depth: number,
): number {
  return lateral * factor * Math.min(depth, DEEPEST_LATERAL);
}

/**
 * A = 2.34 P/(S₁ b), feet (IBC 1807.3.2.1).
 * @param s1 lateral bearing at a third of the depth, psf
 */
export function poleFactor({ load, breadth }: Pick<SidewaysLoad, "load" | "breadth">, s1: number): number {
  return (LOAD_SHARE * load) / (s1 * breadth);
}

/**
 * Depth of a pole that nothing holds at the ground: d = 0.5 A (1 + √(1 + 4.36 h/A)), where A depends on d again
 * (IBC 1807.3.2.1, equation 18-1).
 * @returns feet; NaN where a value is negative or not a number, or nothing bears on the soil
 */
export function freeDepth(pole: SidewaysLoad): number {
  return solve(pole, (depth) => {
    const a = poleFactor(pole, lateralAtThird(pole, depth));
    return 0.5 * a * (1 + Math.sqrt(1 + (HEIGHT_FACTOR * pole.height) / a));
  });
}

/**
 * The sideways load that a pole of some depth holds, lb: equation 18-1 the other way round, A = d²/(d + 1.09 h) and
 * P = A S₁ b/2.34 (derived from IBC 1807.3.2.1).
 * @param depth feet
 */
export function freeCapacity(pole: Omit<SidewaysLoad, "load">, depth: number): number {
  const a = depth ** 2 / (depth + HEIGHT_SHARE * pole.height);
  return (a * lateralAtThird(pole, depth) * pole.breadth) / LOAD_SHARE;
}

/**
 * Depth of a pole that a slab or pavement holds at the ground: d = √(4.25 P h/(S₃ b)) (IBC 1807.3.2.2, equation 18-2).
 * @returns feet; NaN as above
 */
export function heldDepth(pole: SidewaysLoad): number {
  return solve(pole, (depth) =>
    Math.sqrt((4.25 * pole.load * pole.height) / (lateralAtBottom(pole, depth) * pole.breadth)),
  );
}

/** The depth that is as deep as it must be. What is needed falls with depth, so halving the interval finds it. */
function solve({ load, height, breadth, lateral }: SidewaysLoad, needed: (depth: number) => number): number {
  const senseless = !(load >= 0 && height >= 0 && breadth > 0 && lateral > 0);
  if (senseless || ![load, height, breadth, lateral].every(Number.isFinite)) return Number.NaN;
  if (load === 0) return 0;
  let [low, high] = [0, 1];
  while (needed(high) > high) high *= 2;
  while (high - low > 1e-9 * high) {
    const middle = (low + high) / 2;
    if (needed(middle) > middle) low = middle;
    else high = middle;
  }
  return high;
}
