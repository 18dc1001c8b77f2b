import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";
import { less } from "../formula-words.ts";

type Data = Extract<ModelProblem, { kind: "derived-differs" }>;

export const derivedDiffers = defineCheck<"model", Data>({
  meta: {
    id: "derived-differs",
    title: "A typed value differs from what follows from the rest",
    level: "error",
    area: "geometry",
    source: { text: "geometry of the frame itself", status: "derived" },
    explanation: {
      what: "The file gives a value that also follows from sizes beside it, such as the pitch of a shed roof from the heights of its two plates, and the two are not the same.",
      why: "The frame cannot be both; one of them would be cut wrong.",
      formula: "pitch of a shed roof = (high plate top − low plate top) ÷ run between their seats",
      remedy: "Correct one of them, or leave the value out: it is then derived.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "derived-differs")
        yield {
          path: p.path,
          data: p,
          value: p.typed,
          limit: p.derived,
          unit: p.what === "pitch" ? "ratio" : "in",
        };
  },
  words: (d, say) =>
    d.what === "pitch"
      ? say.text(
          "The pitch is typed as {typed}:12, but the plates make it {derived}:12, and that is what is drawn. Correct one, or leave the pitch out.",
          {
            typed: say.number(d.typed * 12, 2),
            derived: say.number(d.derived * 12, 2),
          },
        )
      : say.text(
          "The pier’s top is typed as {typed}, but what it carries wants it at {derived}. Correct one, or leave the top out.",
          {
            typed: say.length(d.typed),
            derived: say.length(d.derived),
          },
        ),
  worked: (d, say) =>
    d.from
      ? say.text("({rise}) ÷ {run} = {derived} ≠ {typed}", {
          rise: less(d.from.high, d.from.low, say),
          run: say.length(d.from.run),
          derived: say.number(d.derived, 3),
          typed: say.number(d.typed, 3),
        })
      : say.text("{typed} ≠ {derived}", { typed: say.length(d.typed), derived: say.length(d.derived) }),
});
