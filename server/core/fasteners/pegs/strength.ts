/**
 * Strength of wood pegs and of the wood round them, TFEC 1-2007 and 1-2010, section 3.4, as remembered: the print was not
 * seen, and the 2019 edition may have other rules. Every value says so.
 */
import { hankinson } from "../../members/compression.ts";
import type { Sourced } from "../../sourced.ts";
import { sourceText } from "../../wood/data/sources.ts";
import { findSpecies } from "../../wood/species.ts";

export interface PegBearing extends Sourced {
  /** psi, load along and across the grain of the timber */
  readonly along: number;
  readonly across: number;
  /** degrees between load and grain */
  readonly angle: number;
}

/**
 * Specific gravity of a peg’s wood: assigned by the NDS to a group of that name, else of the Wood Handbook at 12 percent
 * moisture, which is the lower basis; of several species the lightest.
 * @returns undefined for an unknown wood
 */
export function pegGravity(species: string): Sourced | undefined {
  const wood = findSpecies(species);
  const [first, ...others] = wood?.group
    ? [wood.group.G]
    : (wood?.species ?? []).map((row) => row.gravity.dry);
  if (first === undefined) return undefined;
  const [value, status, seen] = others.reduce((low, one) => (one[0] < low[0] ? one : low), first);
  const print = wood?.group ? "NDS Table 12.3.3A" : "Wood Handbook, 12 percent moisture";
  return { value, status, source: seen === undefined ? print : `${print} (${sourceText(seen)})` };
}

/** F_yb = 24,850 G_p^1.13, psi. @param peg specific gravity of the peg */
export function pegBendingYield(peg: number): Sourced {
  return { value: power(24850, peg, 1.13), status: "memory", source: "24,850 G_p^1.13, TFEC 1 3.4" };
}

/**
 * F_e of a timber under a peg: 4,770 G_p^1.32 along the grain, 4,900 G_p √G_t across, Hankinson’s formula between.
 * @param peg specific gravity of the peg; @param timber of the timber; @param angle degrees between load and grain
 */
export function pegBearing(peg: number, timber: number, angle: number): PegBearing {
  const along = power(4770, peg, 1.32);
  const across = peg > 0 ? peg * power(4900, timber, 0.5) : 0;
  return {
    value: along > 0 && across > 0 ? hankinson(along, across, angle) : 0,
    along,
    across,
    angle,
    status: "uncertain",
    source: "4,770 G_p^1.32 and 4,900 G_p √G_t, TFEC 1 3.4; Hankinson between",
  };
}

/** F_vy = 4,850 G_p G_t^0.75, psi: shear of the peg at the face of the tenon. */
export function pegShear(peg: number, timber: number): Sourced {
  const value = peg > 0 ? peg * power(4850, timber, 0.75) : 0;
  return { value, status: "memory", source: "4,850 G_p G_t^0.75, TFEC 1 3.4" };
}

function power(a: number, gravity: number, n: number): number {
  return gravity > 0 ? a * gravity ** n : 0;
}
