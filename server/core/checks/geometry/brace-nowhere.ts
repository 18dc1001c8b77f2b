import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "brace-nowhere" }>;

export const braceNowhere = defineCheck<"model", Data>({
  meta: {
    id: "brace-nowhere",
    title: "A brace that fits in no corner",
    level: "error",
    area: "geometry",
    source: {
      text: "placement rule of this program: a brace stands wherever its legs fit",
      status: "file-format",
    },
    explanation: {
      what: "An entry of braces fits in no corner of its two timbers.",
      why: "There is no such brace in the frame, although the file speaks of it.",
      formula: "leg ≤ the longest that fits in a corner of its two timbers",
      remedy: "Shorten the leg, or name timbers that cross each other.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "brace-nowhere")
        yield {
          path: p.path,
          onKey: true,
          data: p,
          value: p.leg,
          ...(p.longest === undefined ? {} : { limit: p.longest }),
          unit: "in",
        };
  },
  words: (d, say) =>
    d.longest === undefined || d.longest <= 0
      ? say.text(
          "{member} fits in no corner, so the frame has no such brace: its two timbers do not cross. Check “between”; a stick that runs otherwise is a strut with “ends”.",
          { member: d.member },
        )
      : say.text(
          "{member} fits in no corner, so the frame has no such brace: a leg of {leg} needs more timber than there is. The longest that fits is {longest}.",
          {
            member: d.member,
            leg: say.length(d.leg),
            longest: say.length(d.longest),
          },
        ),
  worked: (d, say) =>
    d.longest === undefined
      ? undefined
      : say.text("{leg} > {longest}", {
          leg: say.length(d.leg),
          longest: say.length(d.longest),
        }),
});
