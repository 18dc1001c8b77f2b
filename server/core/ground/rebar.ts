/** Deformed bars, the concrete they need around them, and the cage that fits into a pier. */
import type { Sourced } from "../sourced.ts";

export type BarNumber = 3 | 4 | 5 | 6 | 7 | 8 | 9 | 10 | 11 | 14 | 18;

export interface Bar {
  /** nominal, inches */
  readonly diameter: number;
  /** in² */
  readonly area: number;
  /** lb/ft */
  readonly weight: number;
}

/** Nominal sizes (published: ASTM A615 bar sizes and weights, as printed by the concrete trade; No.4, 6 and 11 from memory). */
export const BARS: Readonly<Record<BarNumber, Bar>> = {
  3: { diameter: 0.375, area: 0.11, weight: 0.376 },
  4: { diameter: 0.5, area: 0.2, weight: 0.668 },
  5: { diameter: 0.625, area: 0.31, weight: 1.043 },
  6: { diameter: 0.75, area: 0.44, weight: 1.502 },
  7: { diameter: 0.875, area: 0.6, weight: 2.044 },
  8: { diameter: 1, area: 0.79, weight: 2.67 },
  9: { diameter: 1.128, area: 1, weight: 3.4 },
  10: { diameter: 1.27, area: 1.27, weight: 4.303 },
  11: { diameter: 1.41, area: 1.56, weight: 5.313 },
  14: { diameter: 1.693, area: 2.25, weight: 7.65 },
  18: { diameter: 2.257, area: 4, weight: 13.6 },
};

/**
 * @param length of each bar, feet
 * @returns lb
 */
export function barWeight(bar: BarNumber, count: number, length: number): number {
  return BARS[bar].weight * count * length;
}

/**
 * Where the concrete lies. A pier cast in a tube is formed, so its sides are `exposed`; a base poured on earth, and a
 * hole filled without a form, are `against-earth`.
 */
export type CoverCase = "against-earth" | "exposed" | "sheltered-beam" | "sheltered-slab";

const cover = (value: number, status: Sourced["status"] = "published"): Sourced => ({
  value,
  status,
  source: "ACI 318-19 Table 20.5.1.3.1, cast in place, not prestressed",
});

/**
 * Least concrete over a bar, inches (published: ACI 318-19 Table 20.5.1.3.1 as reprinted by the concrete trade; No.14
 * and No.18 in a sheltered slab from memory).
 * @param bar only in exposed concrete does its size matter: No.6 and larger need more
 */
export function concreteCover(where: CoverCase, bar: BarNumber): Sourced {
  switch (where) {
    case "against-earth":
      return cover(3);
    case "exposed":
      return cover(bar >= 6 ? 2 : 1.5);
    case "sheltered-beam":
      return cover(1.5);
    case "sheltered-slab":
      return bar >= 14 ? cover(1.5, "memory") : cover(0.75);
  }
}

/**
 * The largest cage that a round pier holds: diameter − 2 × cover (derived).
 * @param diameter of the pier, inches
 * @returns outside diameter of the cage, inches
 */
export function largestCage(diameter: number, where: CoverCase, bar: BarNumber): number {
  return diameter - 2 * concreteCover(where, bar).value;
}
