/** Wood torn out round pegs: the tenon’s relish, the cheeks of the mortise. */
import type { Sourced } from "../sourced.ts";

export interface Relish {
  /** in², two planes along the grain behind the peg */
  readonly area: number;
  /** lb, stress taken as even over the planes */
  readonly even: number;
  /** lb, stress as a parabola: two thirds of it */
  readonly parabolic: number;
  /** lb, row tear-out of NDS Appendix E: F_v t s, half the strength on each plane; the one to design by */
  readonly rowTearOut: Sourced;
  /** in, wood between the edge of the hole and the tip */
  readonly clear: number;
}

/**
 * Shear-out of the tenon behind one peg: two planes from the peg’s center to the tip. NDS Appendix E.3 allows
 * F_v′ t s for them together.
 * @param end peg center to the tenon’s tip along the grain, in; @param thickness in; @param Fv F_v′, psi, with factors
 * @param diameter of the peg, in
 */
export function relish(end: number, thickness: number, Fv: number, diameter: number): Relish {
  const area = 2 * Math.max(0, end) * Math.max(0, thickness);
  return {
    area,
    even: area * Fv,
    parabolic: (2 / 3) * area * Fv,
    rowTearOut: rowTearOut(end, Number.POSITIVE_INFINITY, 1, thickness, Fv),
    clear: Math.max(0, end - diameter / 2),
  };
}

/**
 * A row of pegs along the load torn out: n F_v′ t s, s the lesser of end distance and spacing (NDS E.3-2).
 * @param end last peg to the tip, in; @param spacing peg to peg along the load, in; @param pegs in the row
 */
export function rowTearOut(
  end: number,
  spacing: number,
  pegs: number,
  thickness: number,
  Fv: number,
): Sourced {
  const critical = Math.max(0, pegs > 1 ? Math.min(end, spacing) : end);
  return {
    value: pegs * Fv * Math.max(0, thickness) * critical,
    status: "memory",
    source: "row tear-out n F_v′ t s, NDS E.3",
  };
}

/**
 * Rows torn out together: half the row tear-out of each outer row, and tension across the wood between them (NDS E.4-1).
 * @param rows Z_RT′ of the two outer rows, lb; @param between their lines of pegs, in
 * @param inLine pegs across, from outer row to outer row; @param Ft F_t′, psi
 */
export function groupTearOut(
  rows: readonly [number, number],
  between: number,
  inLine: number,
  diameter: number,
  thickness: number,
  Ft: number,
): Sourced {
  const net = Math.max(0, between - (inLine - 1) * diameter) * Math.max(0, thickness);
  return { value: (rows[0] + rows[1]) / 2 + net * Ft, status: "memory", source: "group tear-out, NDS E.4" };
}

/**
 * Tension the tenon carries past its peg holes: F_t′ times the net section (NDS 3.1.2).
 * @param width in; @param inLine pegs side by side across it; @param Ft F_t′, psi
 */
export function tenonNetTension(
  width: number,
  thickness: number,
  diameter: number,
  inLine: number,
  Ft: number,
): Sourced {
  const net = Math.max(0, width - inLine * diameter) * Math.max(0, thickness);
  return { value: net * Ft, status: "derived", source: "F_t′ on the net section, NDS 3.1.2" };
}

export interface CheekSplit {
  /** d_e, in: loaded edge to the farthest row of pegs */
  readonly effective: number;
  /** V_r′ on one side of the joint, lb */
  readonly shear: Sourced;
  /** the pull across the grain that makes it, lb: twice V_r′ away from the ends, once near one */
  readonly pull: number;
  /** within five depths of the end */
  readonly near: boolean;
}

/**
 * Cheeks split along the grain by a pull square to it: design shear of a member loaded by fasteners, NDS 3.4.3.3:
 * V_r′ = 2/3 F_v′ b d_e (d_e/d)² within 5 d of the end, 2/3 F_v′ b d_e farther in.
 * @param edge pegs to the loaded edge, in: the nearest row; @param row in, between the first and the last row of pegs
 * @param depth d of the mortised timber along the pull, in; @param cheeks in, both
 * @param Fv F_v′, psi; @param fromEnd peg to the nearest end of the mortised timber, in
 */
export function cheekSplit(
  edge: number,
  row: number,
  depth: number,
  cheeks: readonly [number, number],
  Fv: number,
  fromEnd: number,
): CheekSplit {
  const b = Math.max(0, cheeks[0]) + Math.max(0, cheeks[1]);
  // depth less the wood between the unloaded edge and the nearest peg: what lies behind the pegs does not help
  const effective = Math.max(0, Math.min(depth, edge + row));
  const near = fromEnd < 5 * depth;
  const whole = (2 / 3) * Fv * b * effective;
  const shear = near && depth > 0 ? whole * (effective / depth) ** 2 : whole;
  return {
    effective,
    shear: {
      value: shear,
      status: "memory",
      source: near ? "2/3 F_v′ b d_e (d_e/d)², NDS 3.4-6" : "2/3 F_v′ b d_e, NDS 3.4-7",
    },
    pull: near ? shear : 2 * shear,
    near,
  };
}
