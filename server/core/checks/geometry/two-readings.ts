import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "two-readings" }>;

export const twoReadings = defineCheck<"model", Data>({
  meta: {
    id: "two-readings",
    title: "Two readings are possible",
    level: "warning",
    area: "geometry",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "What the file says can be read in two ways.",
      why: "Nothing is guessed without a word: the message names the readings and which one is used, if any.",
      remedy:
        "Give the ground by bent or by wall, and single places by their own key (A3); name a class of timber “frame”, or give each member its “timber:”.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "two-readings") yield { path: p.path, onKey: true, data: p };
  },
  words: (d, say) =>
    d.what === "timber-class"
      ? say.text(
          "A member without “timber:” could be of any of {classes}, so it has no class and its strength is not checked. Name one of them “frame”, or give each member its “timber:”.",
          { classes: d.readings.join(", ") },
        )
      : say.text(
          "The ground is given along {first} and along {second}, which may disagree between them; the bents are used. Keep one, and give single places by their own key (A3).",
          {
            first: d.readings[0] ?? "bents",
            second: d.readings[1] ?? "walls",
          },
        ),
});
