/** Stability factors as factors of a design value, each with the modulus that it is worked from. */
import type { Factor } from "../sourced.ts";
import { type Adjusted, withFactor } from "./adjust.ts";
import type { LateralStability } from "./bending.ts";
import type { ColumnStability } from "./compression.ts";

/** E_min′ has factors of its own (NDS Table 4.3.1): without them nobody can work the stability factor again. */
function byModulus(factor: Factor, { reference, factors, value }: Adjusted): Factor {
  return factor.value === 1 ? factor : { ...factor, from: { symbol: "E_min", reference, factors, value } };
}

/** @param Emin by which the column's stability was worked; @returns F_c′ from F_c* */
export function withColumnStability(Fc: Adjusted, column: ColumnStability, Emin: Adjusted): Adjusted {
  return withFactor(Fc, byModulus(column.factor, Emin));
}

/** @param Emin by which the lateral stability was worked; @returns F_b′ from F_b*; nought where R_B is over 50, which is not allowed */
export function withLateralStability(Fb: Adjusted, lateral: LateralStability, Emin: Adjusted): Adjusted {
  const { factor, allowed, slenderness } = lateral;
  const forbidden = (): Factor => ({
    ...factor,
    value: 0,
    note: {
      text: "R_B = {slenderness}, over 50",
      parts: { slenderness: { value: slenderness, unit: "ratio" } },
    },
  });
  return withFactor(Fb, byModulus(allowed ? factor : forbidden(), Emin));
}
