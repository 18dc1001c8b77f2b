import type { WayHold } from "../../joinery/foot/foot-hold.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FootUse } from "../../statics/foot-uses.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { defineCheck } from "../check.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import type { Say } from "../say.ts";
import { footPath, heldWords, limitFormula, limitRemedy } from "./foot-words.ts";

interface Data {
  readonly use: FootUse & { readonly hold: WayHold };
  readonly solution: FrameResults["solution"];
}

function askedWords({ way, force }: FootUse, say: Say): string {
  const values = { force: say.force(force) };
  switch (way) {
    case "down":
      return say.text("is pressed down with {force}", values);
    case "uplift":
      return say.text("is lifted with {force}", values);
    case "sideways":
      return say.text("is pushed sideways with {force}", values);
    case "along-bolts":
      return say.text("is pushed sideways along its bolts with {force}", values);
    case "across-bolts":
      return say.text("is pushed sideways square to its bolts with {force}", values);
  }
}

export const postFootOverloaded = defineCheck<"shared", Data>({
  meta: {
    id: "post-foot-overloaded",
    title: "A post’s foot loaded with more than its anchor holds",
    level: "warning",
    area: "ground",
    source: {
      text: "NDS 3.10.1 (end grain), 12.3 and 12.5 (bolts across the grain), 3.4.3.3 (splitting); AISC 360 E3 and F11 for the straps, as flat bars held in the concrete; NDS 12.2.1 for the thread of screws (all memory); a capacity in the file goes before them",
      status: "memory",
    },
    explanation: {
      what: "The end grain is pressed harder on its plate than it bears, or on its straps than they carry as columns over the stand-off; a post over a plate in a kerf without “plate” hangs on its bolts; or the foot is pushed sideways with more than its bolts, the wood round them or its straps hold. Uplift is a matter of “A pier that the wind lifts”. Sideways is judged where the file gives straps and bolts, or a capacity, which is held against the whole push; an error where it is the end grain or a stated capacity.",
      why: "The foot slides off its pier, or the straps bend until the post stands askew.",
      formula:
        "Down: ≤ F_c* × area. Without a plate also ≤ F_cr A ÷ 1.67 of straps on both faces (K 1.2 over the stand-off), and of a plate in a kerf ≤ n Z∥. Square to the bolts: ≤ n Z⊥ with its factors, ≤ V_r′, and ≤ what the moments of all bolts about the concrete hold, the lowest filled first, until the straps on edge have M. Along the bolts: ≤ M of a flat strap ÷ stand-off + M ÷ (stand-off + height of the lowest bolt). One strap or a plate in a kerf has the latter alone, screws no more than their thread holds. What is safe in balance is a lower bound. Each way alone. Where the file states a capacity for sideways: √(push along² + push square²) ≤ capacity.",
      remedy:
        "Take thicker steel or a smaller stand-off, or say what the maker’s sheet allows: “capacity: {sideways: …, because: …}”.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find({ frame, footUses }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    for (const use of footUses()) {
      const { hold, ratio, foot, way } = use;
      if (!hold || way === "uplift" || !((ratio ?? 0) > 1)) continue;
      const [first] = hold.limits;
      const certain = first.kind === "stated" || first.kind === "end-grain";
      yield {
        ...footPath(foot, hold, way),
        apart: way,
        place: foot.pier.id,
        ...(certain ? { level: "error" as const } : {}),
        data: { use: { ...use, hold }, solution: frame.solution },
        value: use.force,
        limit: first.value.value,
        unit: "lb",
        // equal reactions at mirrored places differ in the last digits
        severity: Math.round(use.force),
      };
    }
  },
  words: ({ use, solution }, say) =>
    say.text("{foot} {asked} under {combination}, {held}. {help}", {
      foot: use.foot.id,
      asked: askedWords(use, say),
      combination: caseWords(solution, use.caseId, say),
      held: heldWords(use.hold, say),
      help: limitRemedy(use.hold, use.way, say),
    }),
  worked: ({ use }, say) => limitFormula(use.force, use.hold, say),
});
