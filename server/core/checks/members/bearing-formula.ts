/** The formula of wood pressed by other wood (NDS 3.10) with the numbers that its check put into it. */
import type { MemberUse } from "../../statics/frame-results.ts";
import { madeStress, square, steps } from "../formula-words.ts";
import type { Say } from "../say.ts";
import { productWords } from "./use-words.ts";

export function bearingFormula(use: MemberUse, say: Say): string | undefined {
  const { pressed, area } = use;
  if (!pressed || !area) return undefined;
  const stress = `${say.force(pressed.force)} ÷ ${square(area.value, say)}`;
  const { angled } = pressed;
  if (!angled) {
    const product = productWords(use, say);
    return product && `${stress} = ${product}`;
  }
  const { along, across, angle } = angled;
  return steps(
    say.text("F_c*: {made}", { made: madeStress("F_c", along, say) }),
    say.text("F_c⊥′: {made}", { made: madeStress("F_c⊥", across, say) }),
    say.text("{stress} = {value} > {Fc} × {Fp} ÷ ({Fc} × sin² {angle} + {Fp} × cos² {angle}) = {limit}", {
      stress,
      value: say.stress(use.value),
      Fc: say.stress(along.value),
      Fp: say.stress(across.value),
      angle: say.angle(angle),
      limit: say.stress(use.limit),
    }),
  );
}
