/**
 * Velocity pressure of the wind, ASCE 7-16 and 7-22 chapter 26: speeds in mph, heights in ft, pressures in psf. Wind of
 * both editions is at strength level: allowable stress combinations take 0.6 of it (`combinations.ts` does).
 */
import { type Factor, leastCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import { type Edition, editionName, type Terrain } from "./snow-factors.ts";

/** Power law of the wind's profile. */
interface Profile {
  /** α */
  readonly power: number;
  /** z_g, ft: above it the wind is the same */
  readonly gradient: number;
}

/** 7-16: published (constants as in 7-05 and 7-10). 7-22: memory. */
const PROFILE: Readonly<Record<Edition, Readonly<Record<Terrain, Profile>>>> = {
  "asce-7-16": {
    B: { power: 7, gradient: 1200 },
    C: { power: 9.5, gradient: 900 },
    D: { power: 11.5, gradient: 700 },
  },
  "asce-7-22": {
    B: { power: 7.5, gradient: 3280 },
    C: { power: 9.8, gradient: 2460 },
    D: { power: 11.5, gradient: 1935 },
  },
};
const COEFFICIENT: Readonly<Record<Edition, number>> = { "asce-7-16": 2.01, "asce-7-22": 2.41 };
/** ft; lower down the value of this height is taken (memory) */
const LOWEST = 15;
/** half the density of air at 59 °F and sea level, psf per mph² (published) */
const AIR = 0.00256;

/**
 * K_z = 2.01 (z/z_g)^(2/α) in 7-16, 2.41 (z/z_g)^(2/α) in 7-22 (notes of Table 26.10-1), z at least 15 ft. The printed
 * two-figure table differs by up to 0.007.
 * @param height z above the ground, ft
 */
export function exposureCoefficient(edition: Edition, exposure: Terrain, height: number): Factor {
  const { power, gradient } = PROFILE[edition][exposure];
  const z = Math.min(Math.max(height, LOWEST), gradient);
  const seen: ValueStatus = edition === "asce-7-16" && height >= LOWEST ? "published" : "memory";
  return {
    symbol: "K_z",
    value: COEFFICIENT[edition] * (z / gradient) ** (2 / power),
    status: seen,
    source: `${editionName(edition)} Table 26.10-1, by its formula`,
    note: `exposure ${exposure}`,
  };
}

/** K_d of a building's main frame, its roof, and open members (Table 26.6-1). */
export function directionalityFactor(edition: Edition): Factor {
  return {
    symbol: "K_d",
    value: 0.85,
    status: "memory",
    source: `${editionName(edition)} Table 26.6-1`,
    note: "buildings",
  };
}

/** G of a rigid frame (section 26.11.1). */
export function gustFactor(edition: Edition): Factor {
  return {
    symbol: "G",
    value: 0.85,
    status: "memory",
    source: `${editionName(edition)} section 26.11.1`,
    note: "rigid frame",
  };
}

export interface VelocityPressureInput {
  readonly edition: Edition;
  /** V, mph: three-second gust of the map of the risk category */
  readonly speed: number;
  readonly Kz: Factor;
  /** K_zt; undefined = 1, no hill or ridge that speeds the wind up */
  readonly topography?: number;
  /** K_e; undefined = 1, sea level, never too little */
  readonly elevation?: number;
}

export interface VelocityPressure extends Sourced {
  /** K_z, K_zt, K_e, and in 7-16 K_d */
  readonly factors: readonly Factor[];
  /** what the pressure equations take besides: 1 in 7-16, whose q holds K_d already; K_d in 7-22 */
  readonly direction: number;
}

/**
 * q_z = 0.00256 K_z K_zt K_d K_e V² (7-16 Eq. 26.10-1); q_z = 0.00256 K_z K_zt K_e V² (7-22), which keeps K_d for the
 * pressure equations.
 * @returns psf, strength level
 */
export function velocityPressure(input: VelocityPressureInput): VelocityPressure {
  const { edition, speed, Kz } = input;
  const source = `${editionName(edition)} Eq. 26.10-1`;
  const Kd = directionalityFactor(edition);
  const own = (symbol: string, value: number | undefined): Factor => ({
    symbol,
    value: value ?? 1,
    status: value === undefined ? "common-practice" : "given",
    source: `${editionName(edition)} sections 26.8 and 26.9`,
  });
  const factors = [
    Kz,
    own("K_zt", input.topography),
    // by the file's height, but by a remembered formula
    {
      ...own("K_e", input.elevation),
      ...(input.elevation === undefined ? {} : { status: "memory" as const }),
    },
    ...(edition === "asce-7-16" ? [Kd] : []),
  ];
  return {
    value: factors.reduce((product, factor) => product * factor.value, AIR * speed ** 2),
    // The equation itself is remembered in both editions.
    status: leastCertain([...factors.map((factor) => factor.status), "memory"]),
    source,
    factors,
    direction: edition === "asce-7-16" ? 1 : Kd.value,
  };
}
