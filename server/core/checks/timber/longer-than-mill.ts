import { leftLong } from "../../joinery/scribe.ts";
import type { Model, Timber } from "../../model/model.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";
import { ownSawn } from "./own-sawn.ts";

interface Data {
  readonly stick: string;
  readonly length: number;
  readonly longest: number;
  /** inches that it keeps over until it is scribed */
  readonly left: number;
}

export const longerThanMill = defineCheck<"model", Data>({
  meta: {
    id: "longer-than-mill",
    title: "A timber longer than the mill can cut",
    level: "error",
    area: "timber",
    source: { text: "the file’s own mill: longest-cut", status: "file-format" },
    explanation: {
      what: "A timber with its tenons is longer than the longest cut of the mill.",
      why: "It cannot be sawn in one piece.",
      formula: "true length (longest point to longest point, tenons included) ≤ longest-cut",
      remedy:
        "Splice it over a support, bring the bents closer, or have it sawn elsewhere and name another timber class.",
    },
  },
  input: "model",
  *find(model) {
    const { longestCut } = model.frame.mill;
    // logs that are lost may be those it is sawn from
    if (longestCut === undefined || model.frame.lost.has("/mill")) return;
    const longest = inches(longestCut);
    for (const t of model.timbers)
      if (t.length > longest + 1e-6 && ownSawn(model, t))
        yield {
          path: t.path,
          onKey: true,
          place: t.id,
          data: { stick: t.id, length: t.length, longest, left: leftOver(model, t) },
          value: t.length,
          limit: longest,
          unit: "in",
          severity: t.length,
          related: [
            {
              path: `${model.frame.mill.path}/longest-cut`,
              message: (say) => say.text("the mill’s longest cut"),
            },
          ],
        };
  },
  words: (d, say) =>
    say.text(
      d.left > 0
        ? "{stick} is {length} long with its tenons and {left} left over to scribe, and the mill cuts at most {longest}, so it cannot be sawn in one piece. Splice it over a support, shorten it, or cut it by the square rule."
        : "{stick} is {length} long with its tenons, and the mill cuts at most {longest}, so it cannot be sawn in one piece. Splice it over a support or shorten it.",
      {
        stick: d.stick,
        length: say.length(d.length),
        longest: say.length(d.longest),
        left: say.length(d.left),
      },
    ),
  worked: (d, say) =>
    say.text("{length} > {longest}", { length: say.length(d.length), longest: say.length(d.longest) }),
});

function leftOver(model: Model, timber: Timber): number {
  const { foot, head } = leftLong(model.joints.filter((joint) => joint.of.id === timber.id));
  return foot + head;
}
