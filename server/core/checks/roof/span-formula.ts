/** The formula of a check of a single span, with the numbers that it put in: rafters, boards and purlins of a deck. */
import type { UseTerms, Utilisation } from "../../members/utilisation.ts";
import { creepSum, cube, fineLength, madeStress, moment } from "../formula-words.ts";
import type { Say } from "../say.ts";

/** In all, or of the simple span and what the moment over an inner support adds to it. */
function shearForce({ shear, inner = 0 }: Extract<UseTerms, { kind: "shear" }>, say: Say): string {
  return inner > 0 ? `(${say.force(shear - inner)} + ${say.force(inner)})` : say.force(shear);
}

/** @returns undefined where the check kept no numbers of its own */
export function spanFormula(use: Utilisation, say: Say): string | undefined {
  const { terms } = use;
  if (!terms) return undefined;
  if (terms.kind === "deflection") {
    const creep = use.factors.find(({ symbol }) => symbol === "K_cr");
    const { permanent, variable, length, divisor } = terms;
    const sum = creep ? `${creepSum(creep, permanent, variable, say)} = ` : "";
    return say.text("{sum}{value} > {length} ÷ {divisor} = {limit}", {
      sum,
      value: fineLength(use.value, say),
      length: fineLength(length, say),
      divisor: say.number(divisor, 0),
      limit: fineLength(use.limit, say),
    });
  }
  const { reference, factors, limit } = use;
  return say.text("{made} = {value} > {allowed}", {
    made:
      terms.kind === "bending"
        ? `${moment(terms.moment, say)} ÷ ${cube(terms.modulus, say)}`
        : `1.5 × ${shearForce(terms, say)} ÷ (${say.length(terms.breadth)} × ${say.length(terms.depth)})`,
    value: say.stress(use.value),
    allowed: reference
      ? madeStress(terms.kind === "bending" ? "F_b" : "F_v", { reference, factors, value: limit }, say)
      : say.stress(limit),
  });
}
