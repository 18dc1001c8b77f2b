/** One peg in double shear through a tenon and the two cheeks of its mortise, TFEC 1 section 3.4 as remembered. */
import { leastCertain, type Sourced } from "../../sourced.ts";
import { doubleShear, reductionTerm, singleShear, withMode, withoutMode, type Yield } from "../yield.ts";
import { type PegBearing, pegBearing, pegBendingYield, pegShear } from "./strength.ts";

/** R_d of the peg shear mode. */
export const PEG_SHEAR_REDUCTION: Sourced = {
  value: 3.5,
  status: "uncertain",
  source: "TFEC 1 3.4, mode V",
};

export interface PegShearInput {
  /** D, in */
  readonly diameter: number;
  /** in */
  readonly tenon: number;
  /** in, the thinner of the two */
  readonly cheek: number;
  /** F_e, psi, of the tenon (main member) and of the cheeks (side members) */
  readonly tenonBearing: number;
  readonly cheekBearing: number;
  /** F_yb, psi */
  readonly bendingYield: number;
  /** F_vy, psi */
  readonly shear: number;
  /** largest angle between load and grain in either timber, degrees */
  readonly angle: number;
  /** faces at which the peg is sheared: 1 through a lap of two halves; undefined = 2 */
  readonly planes?: 1 | 2;
}

/**
 * Modes I_m, I_s, III_s of NDS 12.3 with 4 K_θ, 4 K_θ, 3.2 K_θ, and V: two sections of the peg sheared,
 * Z = π D² F_vy/(2 R_d). Mode IV does not occur with wood pegs. With one face the modes of NDS 12.3 in single shear and
 * half the peg's shear take their place (derived: the standard speaks of double shear only).
 * @returns lb for each mode
 */
export function pegModes(input: PegShearInput): Yield {
  const reduction = reductionTerm(
    Math.max(0.25, input.diameter),
    Math.max(0.25, input.diameter),
    input.angle,
  );
  const planes = input.planes ?? 2;
  const yields = (planes === 1 ? singleShear : doubleShear)({
    diameter: input.diameter,
    main: { length: input.tenon, bearing: input.tenonBearing },
    side: { length: input.cheek, bearing: input.cheekBearing },
    bendingYield: input.bendingYield,
    reduction,
  });
  const { value: Rd } = PEG_SHEAR_REDUCTION;
  const sound = input.diameter > 0 && input.shear > 0;
  return withMode(withoutMode(yields, "IV"), {
    mode: "V",
    Z: sound ? (planes * Math.PI * input.diameter ** 2 * input.shear) / (4 * Rd) : 0,
    reduction: Rd,
  });
}

export interface PegTimber {
  /** assigned specific gravity */
  readonly G: number;
  /** degrees between the load and its grain */
  readonly angle: number;
}

export interface PegValue {
  /** Z of one peg, lb, before any factor */
  readonly reference: Sourced;
  readonly yields: Yield;
  readonly bendingYield: Sourced;
  readonly shear: Sourced;
  readonly bearing: { readonly tenon: PegBearing; readonly cheek: PegBearing };
  /** in: the peg's diameter, and its length in the tenon and in the thinner cheek; faces that shear it */
  readonly sizes: {
    readonly diameter: number;
    readonly tenon: number;
    readonly cheek: number;
    readonly planes: 1 | 2;
  };
}

/**
 * Z of one peg from the specific gravities; the lighter timber decides the peg’s shear.
 * @param peg specific gravity of the peg; @param diameter in
 * @param thickness in, of the tenon; @param cheeks in, both: the thinner counts; @param planes faces that shear it
 */
export function pegValue(
  peg: number,
  diameter: number,
  thickness: number,
  cheeks: readonly [number, number],
  tenon: PegTimber,
  mortised: PegTimber,
  planes: 1 | 2 = 2,
): PegValue {
  const bendingYield = pegBendingYield(peg);
  const shear = pegShear(peg, Math.min(tenon.G, mortised.G));
  const bearing = {
    tenon: pegBearing(peg, tenon.G, tenon.angle),
    cheek: pegBearing(peg, mortised.G, mortised.angle),
  };
  const yields = pegModes({
    diameter,
    tenon: thickness,
    cheek: Math.min(...cheeks),
    tenonBearing: bearing.tenon.value,
    cheekBearing: bearing.cheek.value,
    bendingYield: bendingYield.value,
    shear: shear.value,
    angle: Math.max(tenon.angle, mortised.angle),
    planes,
  });
  return {
    reference: {
      value: yields.governs.Z,
      status: leastCertain([
        bendingYield.status,
        shear.status,
        bearing.tenon.status,
        PEG_SHEAR_REDUCTION.status,
      ]),
      source: `TFEC 1 3.4 as remembered, mode ${yields.governs.mode}`,
    },
    yields,
    bendingYield,
    shear,
    bearing,
    sizes: { diameter, tenon: thickness, cheek: Math.min(...cheeks), planes },
  };
}
