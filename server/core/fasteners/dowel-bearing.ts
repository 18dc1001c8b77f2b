/**
 * Dowel bearing strength F_e of wood and other materials under a steel dowel, NDS 12.3.3 and Table 12.3.3. Pegs have
 * their own: `pegs/strength.ts`.
 */
import { hankinson } from "../members/compression.ts";
import type { Sourced } from "../sourced.ts";

/** in; below this diameter the direction of the grain does not count */
const SMALL_DOWEL = 0.25;

export interface DowelBearing extends Sourced {
  /** psi, load along the grain */
  readonly along: number;
  /** psi, load across the grain */
  readonly across: number;
  /** degrees between load and grain */
  readonly angle: number;
}

/**
 * F_e of wood: 11,200 G along and 6,100 G^1.45/√D across the grain, Hankinson's formula between; 16,600 G^1.84 in every
 * direction under 1/4 in.
 * @param G assigned specific gravity; @param diameter nominal, in; @param angle degrees between load and grain
 * @param rounded to 50 psi before the angle is taken, as the tables of the NDS are worked
 * @returns psi; 0 for sizes without sense
 */
export function dowelBearing(G: number, diameter: number, angle: number, rounded = true): DowelBearing {
  const round = (psi: number): number => (rounded ? 50 * Math.round(psi / 50) : psi);
  if (!(G > 0 && diameter > 0)) return { ...bearing(0, 0, angle), source: "NDS 12.3.3", status: "derived" };
  if (diameter < SMALL_DOWEL) {
    const any = round(16600 * G ** 1.84);
    return {
      ...bearing(any, any, angle),
      source: "16,600 G^1.84, NDS Table 12.3.3 footnote 2",
      status: "memory",
    };
  }
  return {
    ...bearing(round(11200 * G), round((6100 * G ** 1.45) / Math.sqrt(diameter)), angle),
    source: "11,200 G and 6,100 G^1.45/√D, NDS Table 12.3.3; Hankinson, NDS 12.3-10",
    status: "published",
  };
}

function bearing(along: number, across: number, angle: number): Omit<DowelBearing, "status" | "source"> {
  const value = along > 0 && across > 0 ? hankinson(along, across, angle) : 0;
  return { value, along, across, angle };
}

/**
 * F_e of a steel plate: 1.5 F_u hot rolled, 1.375 F_u cold formed under 1/4 in.
 * @param ultimate F_u, psi: 58,000 hot rolled A36, 45,000 thin sheet
 */
export function steelBearing(ultimate: number, rolled: "hot" | "cold"): Sourced {
  return {
    value: (rolled === "hot" ? 1.5 : 1.375) * ultimate,
    status: "published",
    source: `${rolled === "hot" ? "1.5 F_u, hot rolled" : "1.375 F_u, cold formed"} steel, NDS Appendix I`,
  };
}
