/** What the soil under a pier carries, and how large a pad must be (derived: area × pressure). */
import { CONCRETE_WEIGHT, roundArea } from "./concrete.ts";

export interface PierBearing {
  /** ft² */
  readonly area: number;
  /** all that may press on the soil, lb: A q */
  readonly gross: number;
  /** what is left for the post when the pier carries its own weight too, lb: A q − w A h */
  readonly net: number;
}

/**
 * Load that a round pier may bring to the soil.
 * @param diameter at the bottom, inches
 * @param height of the concrete, feet
 * @param allowed soil pressure, psf
 * @param weight of the concrete, lb/ft³
 */
export function pierBearing(
  diameter: number,
  height: number,
  allowed: number,
  weight = CONCRETE_WEIGHT.value,
): PierBearing {
  const area = roundArea(diameter);
  const gross = area * allowed;
  return { area, gross, net: gross - weight * area * height };
}

export interface PadSize {
  /** ft² */
  readonly area: number;
  /** side of a square pad, inches */
  readonly square: number;
  /** diameter of a round one, inches */
  readonly round: number;
}

/**
 * The pad that a load needs: A = P/q.
 * @param load lb, with the weight of what stands on the soil
 * @param allowed soil pressure, psf, above zero
 */
export function padFor(load: number, allowed: number): PadSize {
  const area = load / allowed;
  return { area, square: 12 * Math.sqrt(area), round: 12 * Math.sqrt((4 * area) / Math.PI) };
}
