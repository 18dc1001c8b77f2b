import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";
import type { SourceFacts } from "../source-facts.ts";

type Data = Extract<ModelProblem, { kind: "placement-missing" | "placement-circular" }>;

export const placementMissing = defineCheck<"whole", Data>({
  meta: {
    id: "placement-missing",
    title: "A timber that cannot be placed",
    level: "error",
    area: "geometry",
    source: { text: "placement rules of this program", status: "file-format" },
    explanation: {
      what: "An entry does not say where its timbers stand, or two entries each take their place from the other.",
      why: "Its timbers are not in the model, so nothing about them is checked.",
      remedy: "Give the key that the message names.",
    },
  },
  input: "whole",
  *find({ source, model }) {
    for (const p of model.problems)
      if (p.kind === "placement-circular" || (p.kind === "placement-missing" && !toldAlready(source, p)))
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
          needs: d.needs
            .map((need) =>
              need.endsWith(HERE)
                ? say.text("{timber} above or below it", { timber: need.slice(0, -HERE.length) })
                : `“${need}”`,
            )
            .join(" or "),
        }),
});

/** Ends the name of a timber that does not pass where it is needed. */
const HERE = " here";

/** The key is there and has its own finding, or its absence has. */
function toldAlready(source: SourceFacts, p: Extract<Data, { kind: "placement-missing" }>): boolean {
  return source.facts.some(
    (fact) =>
      "path" in fact &&
      p.needs.some((need) =>
        fact.kind === "missing-key"
          ? fact.path === p.path && fact.key === need
          : `${fact.path}/`.startsWith(`${p.path}/${need}/`),
      ),
  );
}
