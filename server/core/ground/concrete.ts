/** Concrete of a pier: its volume, its bags, its weight. */
import type { Sourced } from "../sourced.ts";

/** lb/ft³; normal concrete (published: foundation figures of general use) */
export const CONCRETE_WEIGHT: Sourced = {
  value: 150,
  status: "published",
  source: "normal concrete, about 150 lb/ft³",
};

const CUBIC_FEET_PER_CUBIC_YARD = 27;

/** Premixed concrete by the weight of its bag, lb. */
export type BagSize = 40 | 50 | 60 | 80 | 90;

const SEEN = "yields printed by makers of premixed concrete";
/** ft³ of concrete that one bag yields */
const YIELDS: Readonly<Record<BagSize, Sourced>> = {
  40: { value: 0.3, status: "published", source: SEEN },
  50: { value: 0.375, status: "memory", source: "by proportion between the bags of 40 and 60 lb" },
  60: { value: 0.45, status: "published", source: SEEN },
  80: { value: 0.6, status: "published", source: SEEN },
  90: { value: 0.68, status: "published", source: SEEN },
};

/**
 * Plan area of a round pier, π d²/4 (derived: plane geometry).
 * @param diameter inches
 * @returns ft²
 */
export function roundArea(diameter: number): number {
  return (Math.PI * diameter ** 2) / 4 / 144;
}

/**
 * Concrete in a round tube (derived: plane geometry).
 * @param diameter inches
 * @param height feet
 * @returns ft³
 */
export function tubeVolume(diameter: number, height: number): number {
  return roundArea(diameter) * height;
}

/**
 * @param volume ft³
 * @returns lb
 */
export function concreteWeight(volume: number): number {
  return volume * CONCRETE_WEIGHT.value;
}

/** ft³ of concrete from one bag, with where the figure is from. */
export function bagYield(bag: BagSize): Sourced {
  return YIELDS[bag];
}

/** How many bags make a cubic yard, not rounded (27 ft³ ÷ yield). */
export function bagsPerCubicYard(bag: BagSize): number {
  return CUBIC_FEET_PER_CUBIC_YARD / YIELDS[bag].value;
}

/**
 * Whole bags to buy: volume, waste added, ÷ yield, rounded up.
 * @param volume ft³
 * @param waste share that is lost or fills a rough base: 0.1 for 10 %
 */
export function bagsFor(volume: number, bag: BagSize, waste = 0): number {
  return Math.ceil((volume * (1 + waste)) / YIELDS[bag].value - 1e-9);
}
