/** What the soil under a pier carries, and how large a pad must be (derived: area × pressure). */
import type { Pier } from "../model/model.ts";
import type { Sourced } from "../sourced.ts";
import type { PierCase } from "../statics/frame-results.ts";
import { baseArea, footingWeight, shaftWeight } from "./pier-concrete.ts";
import { SOILS, type SoilValues } from "./soil.ts";

export interface SoilBearing {
  /** all that may press on the soil, lb: A q */
  readonly gross: number;
  /** what is left for the post when the pier carries its own weight too, lb: A q − W */
  readonly net: number;
}

/**
 * Load that a pier may bring to the soil.
 * @param area that stands on it, ft²
 * @param weight of the pier and its footing, lb; the soil that they displace is not taken off
 * @param allowed soil pressure, psf
 */
export function soilBearing(area: number, weight: number, allowed: number): SoilBearing {
  const gross = area * allowed;
  return { gross, net: gross - weight };
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

/**
 * Most pressure under a square pad whose load stands off its middle, psf (derived: a plane of pressure that cannot pull;
 * 1 + 6 e/B while the whole pad presses, e ≤ B/6, then 2 N over three times what is left to the edge).
 * @param load N, lb
 * @param side B, inches
 * @param off e, how far the load stands off the middle, inches
 * @returns Infinity where the load stands over the edge: the pad tips
 */
export function edgePressure(load: number, side: number, off: number): number {
  if (load <= 0 || off >= side / 2) return Number.POSITIVE_INFINITY;
  const even = load / (side / 12) ** 2;
  return off <= side / 6 ? even * (1 + (6 * off) / side) : (even * 2 * side) / (3 * (side / 2 - off));
}

export interface BearingUse {
  readonly pier: Pier;
  readonly soil: SoilValues;
  /** of the post under the combination, lb */
  readonly down: number;
  /** what pushes the top sideways with it, lb; only a pad's base takes the moment of it */
  readonly push: number;
  readonly caseId: string;
  /** of the pier and its footing in that combination, lb */
  readonly weight: number;
  /** ft² */
  readonly area: number;
  /** how far the load stands off the middle of a pad, inches; 0 for a tube, which the soil beside it holds upright */
  readonly off: number;
  /** psf; Infinity for a pad that tips */
  readonly pressure: number;
  readonly allowed: Sourced;
  /** pressure ÷ allowed */
  readonly ratio: number;
}

function useUnder(pier: Pier, soil: SoilValues, { caseId, force, dead }: PierCase): BearingUse {
  const [x, y, down] = force;
  const area = baseArea(pier);
  const weight = (shaftWeight(pier) + footingWeight(pier)) * dead;
  const load = down + weight;
  const pad = pier.entry.kind === "pad";
  // a push over a corner presses as much as both of its parts together
  const push = pad ? Math.abs(x) + Math.abs(y) : 0;
  const off = load > 0 ? (push * (pier.top[2] - pier.bottom)) / load : 0;
  const pressure = pad && load > 0 ? edgePressure(load, pier.diameter, off) : Math.max(0, load) / area;
  return {
    pier,
    soil,
    down,
    push,
    caseId,
    weight,
    area,
    off,
    pressure,
    allowed: soil.bearing,
    ratio: pressure / soil.bearing.value,
  };
}

/**
 * A pier against what the soil under it carries, under the combination that presses most.
 * @param pier as it is, or as it might be
 * @returns undefined where the file does not say the soil, or nothing has an answer
 */
export function bearingUse(
  pier: Pier,
  cases: readonly PierCase[],
  soil: keyof typeof SOILS | undefined,
): BearingUse | undefined {
  if (soil === undefined) return undefined;
  const values = SOILS[soil];
  return cases
    .map((each) => useUnder(pier, values, each))
    .reduce<BearingUse | undefined>(
      (worst, use) => (worst && worst.ratio >= use.ratio ? worst : use),
      undefined,
    );
}
