/** How much a pegged joint gives along its tenon; what a frame model needs of it. */
import type { Sourced } from "../../sourced.ts";

export interface PegStiffness extends Sourced {
  /** lb/in; tests scatter this far: a result that depends on the value must hold at both */
  readonly range: readonly [number, number];
}

/** specific gravity of the lighter timber up to, lb/in of one 1 in hardwood peg in double shear: low, usual, high */
const BY_GRAVITY: readonly (readonly [number, number, number, number])[] = [
  [0.4, 8000, 15000, 30000],
  [0.6, 12000, 25000, 45000],
  [Number.POSITIVE_INFINITY, 15000, 30000, 55000],
];

/**
 * Stiffness of pegs in double shear, first loading, lb/in. The order of size of published tension tests of full-size
 * joints with 1 in oak pegs (and of tests of green oak with 20 mm pegs, 4 to 10 kN/mm), remembered, no figure seen; taken
 * in proportion to the diameter, as for a dowel on an elastic bed. A drawbored joint starts stiffer, a dried one looser.
 * @param timber lower specific gravity of the two timbers; @param diameter in
 */
export function pegStiffness(timber: number, diameter: number, count: number): PegStiffness {
  const [, low, usual, high] = BY_GRAVITY.find(([most]) => timber < most) ?? [0, 0, 0, 0];
  const scale = Math.max(0, diameter) * Math.max(0, count);
  return {
    value: usual * scale,
    range: [low * scale, high * scale],
    status: "uncertain",
    source: "order of size of published tests of pegged joints, as remembered; proportional to the diameter",
  };
}
