import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { defineCheck } from "../check.ts";
import { loadRelated } from "./load-related.ts";
import { sectionPath } from "./member-path.ts";
import { type Exceeded, limitWords, overPercent, placeWords, worstOver } from "./use-words.ts";

interface Data extends Exceeded {
  readonly solution: FrameResults["solution"];
}

/** Past this the crushing is no longer a matter of a dent (common practice). */
const DENT = 1.5;

export const bearingCrushed = defineCheck<"results", Data>({
  meta: {
    id: "bearing-crushed",
    title: "Wood crushed across its grain",
    level: "warning",
    area: "members",
    source: {
      text: "NDS 2018 3.10: F_c⊥′ with C_b, at an angle by Hankinson's formula",
      status: "memory",
    },
    explanation: {
      what: "Where a timber stands or lies on another, the wood is pressed harder across its grain than it takes.",
      why: "It crushes: the frame settles there, joints open, and green wood crushes by a third sooner. Up to half as much again it is a deep dent, beyond that a failure of the joint.",
      formula:
        "f_c⊥ = P/A ≤ F_c⊥ × C_M C_b, A = the shoulder without the tenon, the seat, or the pier's top under the timber",
      remedy: "Widen the bearing: a larger post, a longer seat, a bolster, or a denser wood.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame, model }) {
    if (!frame) return;
    const related = loadRelated(frame);
    for (const result of frame.members.values()) {
      const use = worstOver(result, (what) => what === "bearing");
      if (!use) continue;
      yield {
        path: sectionPath(model, result.timber),
        ...(use.ratio > DENT ? { level: "error" as const } : {}),
        place: result.timber.id,
        data: { result, use, solution: frame.solution },
        value: use.value,
        limit: use.limit,
        unit: "psi",
        severity: use.ratio,
        // only the worst of a path is told: the others need not be traced
        get related() {
          return related(result.timber, use);
        },
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{stick} is pressed with {value} {place}, more than the {limit} its wood takes there ({ratio}), under {combination}. Allowed: {made}. Widen the bearing: it needs {grow} times the area.",
      {
        stick: d.result.timber.id,
        value: say.stress(d.use.value),
        place: placeWords(d.use, say),
        limit: say.stress(d.use.limit),
        ratio: overPercent(d.use.ratio, say),
        combination: caseWords(d.solution, d.use.caseId, say),
        made: limitWords(d.use, say),
        grow: say.number(Math.ceil(d.use.ratio * 10 - 1e-9) / 10, 1),
      },
    ),
});
