/**
 * Unbalanced snow of a gable, ASCE 7-16 and 7-22 section 7.6.1: wind clears one side and piles the other.
 */
import type { Sourced, ValueStatus } from "../sourced.ts";
import {
  driftHeight16,
  driftHeight22,
  type Edition,
  editionName,
  type Pitch,
  snowDensity,
  unbalancedPitch,
} from "./snow-factors.ts";

export interface UnbalancedInput {
  readonly edition: Edition;
  /** p_g, psf */
  readonly ground: number;
  /** p_s, psf */
  readonly sloped: number;
  /** I_s; 1 in 7-22 */
  readonly importance: number;
  readonly pitch: Pitch;
  /** W, ft: level distance from eave to ridge */
  readonly eaveToRidge: number;
  /** W of the windward side, ft, which feeds the drift; undefined = the same */
  readonly fetch?: number;
  /** straight rafters that span freely from the eave to the ridge */
  readonly simpleRafters: boolean;
  /** W_2 of 7-22; undefined = 0.65, the largest on the map, marked as uncertain */
  readonly winterWind: number | undefined;
}

export interface UnbalancedSnow {
  readonly rule: "short-roof" | "drift";
  /** psf over the windward side */
  readonly windward: Sourced;
  /** psf over the leeward side, without the drift */
  readonly leeward: Sourced;
  readonly drift: Drift | undefined;
}

/** A block on the leeward side, from the ridge down. */
interface Drift {
  /** psf, on top of `leeward` */
  readonly surcharge: number;
  /** ft, level */
  readonly width: number;
  /** h_d, ft */
  readonly height: number;
  /** γ, lb/ft³ */
  readonly density: number;
  readonly status: ValueStatus;
  readonly source: string;
}

/** ft; up to here the short-roof rule holds (published) */
const SHORT_ROOF = 20;
/** the largest winter wind parameter of the 7-22 map, from memory */
const LARGEST_WINTER_WIND = 0.65;

/** Whether the rule of short roofs holds: even rafters that span freely from eave to ridge, W up to 20 ft. */
function isShort({
  simpleRafters,
  eaveToRidge,
}: Pick<UnbalancedInput, "simpleRafters" | "eaveToRidge">): boolean {
  return simpleRafters && eaveToRidge <= SHORT_ROOF;
}

/** Whether the unbalanced snow needs W_2, which only the map of ASCE 7-22 gives for the site. */
export function asksWinterWind(
  input: Pick<UnbalancedInput, "edition" | "pitch" | "simpleRafters" | "eaveToRidge">,
): boolean {
  return input.edition === "asce-7-22" && unbalancedPitch(input.pitch) && !isShort(input);
}

/** @returns undefined where the pitch asks for none */
export function unbalancedSnow(input: UnbalancedInput): UnbalancedSnow | undefined {
  if (!unbalancedPitch(input.pitch)) return undefined;
  const source = `${editionName(input.edition)} section 7.6.1`;
  if (isShort(input)) {
    return {
      rule: "short-roof",
      windward: { value: 0, status: "published", source },
      leeward: { value: input.importance * input.ground, status: "memory", source },
      drift: undefined,
    };
  }
  return {
    rule: "drift",
    windward: { value: 0.3 * input.sloped, status: "published", source },
    leeward: { value: input.sloped, status: "published", source },
    drift: drift(input, source),
  };
}

/** Surcharge h_d γ/√S over 8/3 h_d √S from the ridge, S = level run for a rise of one. */
function drift(input: UnbalancedInput, source: string): Drift {
  const { edition, ground, importance } = input;
  const fetch = input.fetch ?? input.eaveToRidge;
  const height =
    edition === "asce-7-16"
      ? driftHeight16(ground, fetch, importance)
      : driftHeight22(ground, fetch, input.winterWind ?? LARGEST_WINTER_WIND);
  const density = snowDensity(ground);
  const root = Math.sqrt(input.pitch.run / input.pitch.rise);
  return {
    surcharge: (height * density) / root,
    width: (8 / 3) * height * root,
    height,
    density,
    status: asksWinterWind(input) && input.winterWind === undefined ? "uncertain" : "memory",
    source,
  };
}
