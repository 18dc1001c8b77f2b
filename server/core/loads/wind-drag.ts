/**
 * Wind on posts, braces and other members that stand free in it, ASCE 7-16 section 29.4 and 7-22 section 29.4, and the
 * least wind of section 27.1.5.
 */
import { type Factor, leastCertain, type Sourced } from "../sourced.ts";
import { type Edition, editionName } from "./snow-factors.ts";
import { gustFactor, type VelocityPressure } from "./wind-pressure.ts";

/** C_f of flat-sided members of low solidity. */
const FLAT_SIDED: Factor = {
  symbol: "C_f",
  value: 2.0,
  status: "memory",
  source: "ASCE 7 Figure 29.4-2",
  note: "flat-sided members",
};

/** The least wind, psf of the area that the wind sees; strength level. */
export interface LeastWind {
  /** open buildings: on A_f, all that the wind sees of roof and frame */
  readonly open: Sourced;
  /** enclosed ones: on their walls, */
  readonly walls: Sourced;
  /** and on the upright projection of their roof */
  readonly roof: Sourced;
}

/** Section 27.1.5: a load case of its own, instead of the pressures. */
export function leastWind(edition: Edition): LeastWind {
  const value = (psf: number): Sourced => ({
    value: psf,
    status: "memory",
    source: `${editionName(edition)} section 27.1.5`,
  });
  return { open: value(16), walls: value(16), roof: value(8) };
}

/** C_p of the windward and of the leeward face of a wall, both of which a wall that stands alone has. */
const BOTH_FACES = 0.8 + 0.5;

/**
 * Wind on a wall of an open building or of a bare frame: q_h K_d G (0.8 + 0.5), the windward and leeward coefficients of
 * Figure 27.3-1 on one wall, at least 16 psf. The standard gives free-standing walls (Figure 29.3-1) 1.3 to 1.6 by their
 * shape; the coefficients are remembered, their sum is common practice.
 * @returns psf, strength level
 */
export function loneWall(edition: Edition, q: VelocityPressure): Sourced {
  const value = q.value * q.direction * gustFactor(edition).value * BOTH_FACES;
  const floor = leastWind(edition).walls;
  if (value < floor.value) return floor;
  return { value, status: "memory", source: "ASCE 7 Figure 27.3-1, both faces of one wall" };
}

export interface Drag extends Sourced {
  readonly factors: readonly Factor[];
  /** the least wind governs */
  readonly least: boolean;
}

/**
 * F/A_f = q_z G C_f (7-16 Eq. 29.4-1), q_z K_d G C_f (7-22), at least 16 psf: multiply by the area of the member that the
 * wind sees, width times length.
 * @param q at the member's height; that of the mean roof height is never too little below the eaves
 * @returns psf of A_f, strength level
 */
export function memberDrag(edition: Edition, q: VelocityPressure): Drag {
  const G = gustFactor(edition);
  const floor = leastWind(edition).open;
  const value = q.value * q.direction * G.value * FLAT_SIDED.value;
  const least = value < floor.value;
  return {
    value: Math.max(value, floor.value),
    status: least ? floor.status : leastCertain([q.status, G.status, FLAT_SIDED.status]),
    source: least ? floor.source : `${editionName(edition)} Eq. 29.4-1`,
    factors: [...q.factors, G, FLAT_SIDED],
    least,
  };
}
