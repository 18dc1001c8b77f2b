/**
 * The factors of roof snow, ASCE 7-16 and 7-22 chapter 7. Loads in psf of the level projection, angles in degrees.
 */
import type { Thermal } from "../frame/site.ts";
import type { Factor, Sourced, ValueStatus } from "../sourced.ts";

export type Edition = "asce-7-16" | "asce-7-22";
export type RiskCategory = "i" | "ii" | "iii" | "iv";
export type Terrain = "B" | "C" | "D";
export type SnowExposure = "fully-exposed" | "partially-exposed" | "sheltered";

/** Rise over run as written: limits on a pitch are compared as pitches, never as rounded degrees. */
export interface Pitch {
  readonly rise: number;
  readonly run: number;
}

const EXPOSURE: Readonly<Record<Terrain, Readonly<Record<SnowExposure, number>>>> = {
  B: { "fully-exposed": 0.9, "partially-exposed": 1.0, sheltered: 1.2 },
  C: { "fully-exposed": 0.9, "partially-exposed": 1.0, sheltered: 1.1 },
  D: { "fully-exposed": 0.8, "partially-exposed": 0.9, sheltered: 1.0 },
};

type Known = readonly [value: number, status: ValueStatus, note?: string];

const THERMAL: Readonly<Record<Edition, Readonly<Record<Thermal, Known>>>> = {
  "asce-7-16": {
    heated: [1.0, "published"],
    "cold-ventilated": [1.1, "published"],
    open: [1.2, "published"],
    unheated: [1.2, "published"],
    freezer: [1.3, "published"],
    greenhouse: [0.85, "published"],
  },
  "asce-7-22": {
    heated: [
      1.2,
      "uncertain",
      "the table goes by the R-value of the roof; its largest value for heated roofs is taken",
    ],
    "cold-ventilated": [1.2, "published"],
    open: [1.2, "memory"],
    unheated: [1.2, "memory"],
    freezer: [1.3, "memory"],
    greenhouse: [0.85, "memory"],
  },
};

const IMPORTANCE: Readonly<Record<RiskCategory, number>> = { i: 0.8, ii: 1.0, iii: 1.1, iv: 1.2 };
const LARGEST_MINIMUM_22: Readonly<Record<RiskCategory, number>> = { i: 25, ii: 30, iii: 35, iv: 40 };

/** C_e, Table 7.3-1 of both editions. */
export function exposureFactor(terrain: Terrain, exposure: SnowExposure): Factor {
  return {
    symbol: "C_e",
    value: EXPOSURE[terrain][exposure],
    status: "memory",
    source: "ASCE 7 Table 7.3-1",
  };
}

/** C_t, Table 7.3-2 (7-16) or 7.3-2 and 7.3-3 (7-22). */
export function thermalFactor(edition: Edition, thermal: Thermal): Factor {
  const [value, status, note] = THERMAL[edition][thermal];
  const factor: Factor = { symbol: "C_t", value, status, source: `${editionName(edition)} Table 7.3-2` };
  return note === undefined ? factor : { ...factor, note };
}

/** I_s, Table 1.5-2. ASCE 7-22 has none: its ground snow map is made for each risk category. */
export function importanceFactor(edition: Edition, risk: RiskCategory): Factor | undefined {
  if (edition === "asce-7-22") return undefined;
  return { symbol: "I_s", value: IMPORTANCE[risk], status: "published", source: "ASCE 7-16 Table 1.5-2" };
}

/** p_f = 0.7 C_e C_t I_s p_g (7-16 Eq. 7.3-1), 0.7 C_e C_t p_g (7-22 Eq. 7.3-1). */
export function flatRoofSnow(ground: number, Ce: number, Ct: number, Is = 1): number {
  return 0.7 * Ce * Ct * Is * ground;
}

/** Full below this slope, zero at 70°: Figure 7.4-1 and its commentary lines. */
function fullTo(
  edition: Edition,
  Ct: number,
  slippery: boolean,
): readonly [degrees: number, status: ValueStatus] {
  const warm = edition === "asce-7-16" ? Ct <= 1 : Ct < 1.1;
  if (warm) return [slippery ? 5 : 30, "memory"];
  if (Ct < 1.2) return slippery ? [10, "published"] : [37.5, "memory"];
  return [slippery ? 15 : 45, "memory"];
}

/**
 * C_s = 1 − (θ − θ₀)/(70 − θ₀), between 0 and 1 (Figure 7.4-1, commentary C7.4).
 * @param slippery unobstructed slippery surface: smooth metal, glass, membrane, and nothing at the eaves that holds snow.
 * On a warm roof that also asks for R-30 unventilated or R-20 ventilated.
 * @param slope degrees
 */
export function slopeFactor(edition: Edition, Ct: number, slippery: boolean, slope: number): Factor {
  const [from, status] = fullTo(edition, Ct, slippery);
  const value = Math.min(1, Math.max(0, 1 - (slope - from) / (70 - from)));
  return {
    symbol: "C_s",
    value,
    status,
    source: "ASCE 7 Figure 7.4-1",
    note: slippery ? "unobstructed slippery surface" : "all other surfaces",
  };
}

/**
 * The least snow of a low-slope roof, a load case of its own: 7-16 section 7.3.4, 7-22 section 7.3.3.
 * @param slope degrees; gable, hip and single-slope roofs under 15°
 * @returns p_m in psf, or undefined where the rule does not apply
 */
export function minimumSnow(
  edition: Edition,
  ground: number,
  risk: RiskCategory,
  slope: number,
): Sourced | undefined {
  if (slope >= 15) return undefined;
  if (edition === "asce-7-16") {
    const value = IMPORTANCE[risk] * Math.min(ground, 20);
    return { value, status: "memory", source: "ASCE 7-16 section 7.3.4" };
  }
  return {
    value: Math.min(ground, LARGEST_MINIMUM_22[risk]),
    status: "memory",
    source: "ASCE 7-22 section 7.3.3",
  };
}

/**
 * Rain-on-snow surcharge, section 7.10: where the slope in degrees is under W/50 and p_g is at most 20 psf (7-16), or at
 * most the p_m,max of the risk category (7-22).
 * @param eaveToRidge W, ft; @returns psf, 0 where it does not apply
 */
export function rainOnSnow(
  edition: Edition,
  ground: number,
  eaveToRidge: number,
  slope: number,
  risk: RiskCategory,
): Sourced {
  const [value, most] = edition === "asce-7-16" ? [5, 20] : [8, LARGEST_MINIMUM_22[risk]];
  const applies = ground > 0 && ground <= most && slope < eaveToRidge / 50;
  return { value: applies ? value : 0, status: "memory", source: `${editionName(edition)} section 7.10` };
}

/** γ = 0.13 p_g + 14, at most 30 lb/ft³ (Eq. 7.7-1). */
export function snowDensity(ground: number): number {
  return Math.min(0.13 * ground + 14, 30);
}

/**
 * Height of the ridge drift, 7-16 Eq. 7.6-1 and Figure 7.6-1: h_d = (0.43 l_u^⅓ (p_g + 10)^¼ − 1.5) √I_s, at least 0.
 * (7-10 has no √I_s: pass 1.)
 * @param fetch l_u, ft; at least 20 ft is taken
 * @returns ft
 */
export function driftHeight16(ground: number, fetch: number, importance: number): number {
  const height = 0.43 * Math.cbrt(Math.max(fetch, 20)) * (ground + 10) ** 0.25 - 1.5;
  return Math.max(0, height) * Math.sqrt(importance);
}

/**
 * Height of the ridge drift, 7-22 Eq. 7.6-1: h_d = 1.5 √(p_g^0.74 l_u^0.70 W_2^1.7 / γ).
 * @param winterWind W_2, the share of winter with wind over 10 mph, 0.25 to 0.65 by the map
 * @returns ft
 */
export function driftHeight22(ground: number, fetch: number, winterWind: number): number {
  return (
    1.5 * Math.sqrt((ground ** 0.74 * Math.max(fetch, 20) ** 0.7 * winterWind ** 1.7) / snowDensity(ground))
  );
}

/** From 1/2 on 12 to 7 on 12, both included; compared as pitches because 7 on 12 is the limit, not 30.26°. */
export function unbalancedPitch(pitch: Pitch): boolean {
  const rise = pitch.rise * 12;
  const slack = 1e-9 * pitch.run;
  return rise >= 0.5 * pitch.run - slack && rise <= 7 * pitch.run + slack;
}

/** @returns degrees */
export function slopeOf(pitch: Pitch): number {
  return (Math.atan2(pitch.rise, pitch.run) * 180) / Math.PI;
}

/** `ASCE 7-16` */
export function editionName(edition: Edition): string {
  return edition === "asce-7-16" ? "ASCE 7-16" : "ASCE 7-22";
}
