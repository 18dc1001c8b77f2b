/**
 * Snow on a roof plane, ASCE 7-16 and 7-22 chapter 7: every factor with its source, and the load cases of the plane.
 * All loads are psf of the level projection. 7-22 loads are at strength level: allowable stress combinations take 0.7 of
 * them (`asdFactor`), which is another 0.7 than the one in the flat roof load.
 */
import type { Thermal } from "../frame/site.ts";
import { type Factor, leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import {
  type Edition,
  editionName,
  exposureFactor,
  flatRoofSnow,
  importanceFactor,
  minimumSnow,
  type Pitch,
  type RiskCategory,
  rainOnSnow,
  type SnowExposure,
  slopeFactor,
  slopeOf,
  type Terrain,
  thermalFactor,
} from "./snow-factors.ts";
import { type UnbalancedSnow, unbalancedSnow } from "./unbalanced-snow.ts";

export interface SnowInput {
  readonly edition: Edition;
  readonly riskCategory: RiskCategory;
  /** p_g, psf: service level in 7-16, strength level in 7-22 */
  readonly ground: number;
  readonly terrain: Terrain;
  readonly exposure: SnowExposure;
  readonly thermal: Thermal;
  /** the covering is slippery, sheds its snow, and nothing at the eaves stops it */
  readonly slides: boolean;
  readonly roof: "gable" | "shed";
  readonly pitch: Pitch;
  /** W, ft: level distance from the eave's edge to the ridge (or the high edge) */
  readonly eaveToRidge: number;
  /** W of the other side of a gable, ft; undefined = the same */
  readonly fetch?: number;
  /** rafters span freely from plate to ridge and carry the roof alone (no purlins, no trusses) */
  readonly simpleRafters: boolean;
  /** W_2 of 7-22; undefined = the largest on the map */
  readonly winterWind?: number;
}

export type SnowCaseId = "balanced" | "minimum" | "unbalanced-leeward" | "unbalanced-windward" | "eave-ice";

/** Snow on one roof plane in one load case, psf of the level projection. */
export interface SnowCase {
  readonly id: SnowCaseId;
  /** between plate and ridge */
  readonly span: number;
  /** on the eave overhang */
  readonly overhang: number;
  /** on top of `span`, from the ridge down over `width` ft */
  readonly drift?: { readonly psf: number; readonly width: number };
  readonly status: ValueStatus;
  readonly source: string;
}

export interface Snow {
  /** what it was computed from */
  readonly input: SnowInput;
  readonly edition: Edition;
  readonly level: "service" | "strength";
  /** what the allowable stress combinations multiply snow by */
  readonly asdFactor: Sourced;
  /** C_e, C_t, I_s, C_s as they apply */
  readonly factors: readonly Factor[];
  /** degrees */
  readonly slope: number;
  /** p_f, psf */
  readonly flat: number;
  /** p_s = C_s p_f, psf */
  readonly sloped: number;
  /** p_m, psf; undefined from 15° up */
  readonly minimum: Sourced | undefined;
  /** psf, added to the balanced load; 0 where the rule does not apply */
  readonly rainOnSnow: Sourced;
  readonly unbalanced: UnbalancedSnow | undefined;
  /** every load case of a plane, the balanced one first */
  readonly cases: readonly SnowCase[];
}

/** @returns the snow on a roof; all zero for a ground snow of zero */
export function roofSnow(input: SnowInput): Snow {
  const { edition, ground, riskCategory, pitch, eaveToRidge } = input;
  const slope = slopeOf(pitch);
  const Ce = exposureFactor(input.terrain, input.exposure);
  const Ct = thermalFactor(edition, input.thermal);
  const Is = importanceFactor(edition, riskCategory);
  const Cs = slopeFactor(edition, Ct.value, sheds(input), slope);
  const importance = Is?.value ?? 1;
  const flat = flatRoofSnow(ground, Ce.value, Ct.value, importance);
  const sloped = Cs.value * flat;
  const minimum = minimumSnow(edition, ground, riskCategory, slope);
  const rain = rainOnSnow(edition, ground, eaveToRidge, slope, input.riskCategory);
  const unbalanced =
    input.roof === "gable"
      ? unbalancedSnow({
          edition,
          ground,
          sloped,
          importance,
          pitch,
          eaveToRidge,
          ...(input.fetch === undefined ? {} : { fetch: input.fetch }),
          simpleRafters: input.simpleRafters,
          winterWind: input.winterWind,
        })
      : undefined;
  const status = leastCertain([Ce.status, Ct.status, Cs.status]);
  return {
    input,
    edition,
    level: edition === "asce-7-16" ? "service" : "strength",
    asdFactor: {
      value: edition === "asce-7-16" ? 1 : 0.7,
      status: "published",
      source: `${editionName(edition)} section 2.4.1`,
    },
    factors: [Ce, Ct, ...(Is ? [Is] : []), Cs],
    slope,
    flat,
    sloped,
    minimum,
    rainOnSnow: rain,
    unbalanced,
    cases: [
      ...uniform("balanced", sloped + rain.value, status, `${editionName(edition)} sections 7.3, 7.4`),
      ...(minimum ? uniform("minimum", minimum.value, minimum.status, minimum.source) : []),
      ...(unbalanced ? unbalancedCases(unbalanced, status) : []),
      ...eaveIce(input, flat, status),
    ],
  };
}

/** On a warm roof the slippery line asks for insulation that the file does not state: the other line counts there. */
function sheds(input: SnowInput): boolean {
  return input.slides && input.thermal !== "heated" && input.thermal !== "greenhouse";
}

function uniform(id: SnowCaseId, psf: number, status: ValueStatus, source: string): readonly SnowCase[] {
  return [{ id, span: psf, overhang: psf, status, source }];
}

function unbalancedCases(unbalanced: UnbalancedSnow, status: ValueStatus): readonly SnowCase[] {
  const { leeward, windward, drift, rule } = unbalanced;
  const lee: SnowCase = {
    id: "unbalanced-leeward",
    span: leeward.value,
    overhang: leeward.value,
    status: leastCertain([leeward.status, ...(drift ? [drift.status, status] : [])]),
    source: leeward.source,
  };
  return [
    drift ? { ...lee, drift: { psf: drift.surcharge, width: drift.width } } : lee,
    // A bare windward side is less than dead load alone, which is a combination of its own.
    ...(rule === "drift" ? uniform("unbalanced-windward", windward.value, status, windward.source) : []),
  ];
}

/** Ice dams: 2 p_f on the overhang of a heated roof, nothing else but dead load on the roof (section 7.4.5, memory). */
function eaveIce(input: SnowInput, flat: number, status: ValueStatus): readonly SnowCase[] {
  if (input.thermal !== "heated") return [];
  const source = `${editionName(input.edition)} section 7.4.5`;
  return [{ id: "eave-ice", span: 0, overhang: 2 * flat, status: leastCertain([status, "memory"]), source }];
}
