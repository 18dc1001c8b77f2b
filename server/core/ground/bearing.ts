/** What the soil under a pier carries, and how large a pad must be (derived: area × pressure). */
import type { Pier } from "../model/model.ts";
import type { Vec2 } from "../model/vec.ts";
import type { Sourced } from "../sourced.ts";
import type { PierCase } from "../statics/frame-results.ts";
import { type PadContact, padPressure } from "./pad-pressure.ts";
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

export interface BearingUse {
  readonly pier: Pier;
  readonly soil: SoilValues;
  /** of the post under the combination, lb */
  readonly down: number;
  /** what pushes the top along x and y with it, and in all, lb; only a pad's base takes the moment of it */
  readonly force: Vec2;
  readonly push: number;
  readonly caseId: string;
  /** of the pier and its footing in that combination, lb */
  readonly weight: number;
  /** ft² */
  readonly area: number;
  /**
   * How far the load stands off the middle of a pad along x and y, inches; 0 for a tube, which the soil beside it holds
   * upright. A pad's sides lie along the grid.
   */
  readonly off: Vec2;
  /** where a pad presses; undefined for a tube, and where a pad tips */
  readonly contact: PadContact | undefined;
  /** psf, at the edge or corner that presses most; Infinity for a pad that tips */
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
  const height = pier.top[2] - pier.bottom;
  const isPad = pier.entry.kind === "pad";
  const off: Vec2 =
    isPad && load > 0 ? [(Math.abs(x) * height) / load, (Math.abs(y) * height) / load] : [0, 0];
  const pad = isPad ? padPressure(load, pier.diameter, off) : undefined;
  const pressure = isPad && load > 0 ? (pad?.most ?? Number.POSITIVE_INFINITY) : Math.max(0, load) / area;
  return {
    pier,
    soil,
    down,
    force: [x, y],
    push: Math.hypot(x, y),
    caseId,
    weight,
    area,
    off,
    contact: pad?.contact,
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
