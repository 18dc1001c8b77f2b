import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "no-length" }>;

/** What is shorter is no timber, inches. */
const LEAST = 1 / 16;

export const timberNoLength = defineCheck<"model", Data>({
  meta: {
    id: "timber-no-length",
    title: "A timber has no length",
    level: "error",
    area: "geometry",
    source: { text: "placement rules of this program", status: "file-format" },
    explanation: {
      what: "The two ends of a timber are at, or past, each other.",
      why: "There is no such timber, and what rests on it has no support.",
      formula: "length between its ends > 1/16 in",
      remedy: "Check the levels or lines it runs between.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "no-length")
        yield {
          path: p.path,
          onKey: true,
          place: p.stick,
          data: p,
          value: p.length,
          limit: LEAST,
          unit: "in",
        };
  },
  words: (d, say) =>
    say.text(
      "{stick} would be {length} long: its ends are at or past each other. Check the levels or lines it runs between.",
      {
        stick: d.stick,
        length: say.length(d.length),
      },
    ),
  worked: (d, say) =>
    say.text("{length} ≤ {least}", { length: say.length(d.length), least: say.length(LEAST) }),
});
