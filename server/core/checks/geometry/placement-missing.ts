import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "placement-missing" | "placement-circular" }>;

export const placementMissing = defineCheck<"model", Data>({
  meta: {
    id: "placement-missing",
    title: "A timber that cannot be placed",
    level: "error",
    area: "geometry",
    source: { text: "placement rules of this program", status: "file-format" },
    explanation: {
      what: "An entry lacks what its place in space follows from, or waits for an entry that waits for it.",
      why: "Its timbers are not in the model, so nothing about them is checked.",
      remedy: "Give the key that the message names.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "placement-missing" || p.kind === "placement-circular")
        yield { path: p.path, onKey: true, data: p };
  },
  words: (d, say) =>
    d.kind === "placement-circular"
      ? say.text(
          "{chain}: each waits for the next to know where it stands, so none is placed. Give one of them a level.",
          {
            chain: d.chain.join(" → "),
          },
        )
      : say.text("{member} cannot be placed, so nothing about it is checked: it needs {needs}.", {
          member: d.member,
          needs: d.needs.map((n) => `“${n}”`).join(" or "),
        }),
});
