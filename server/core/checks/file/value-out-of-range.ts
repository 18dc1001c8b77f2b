import { formatQuantity } from "../../quantity/quantity.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "value-out-of-range" | "inch-section-in-mm" }>;
type OutOfRange = Extract<Fact, { kind: "value-out-of-range" }>;

/** A bound as the file would write it. */
function said(bound: number, dimension: OutOfRange["dimension"], say: Say): string {
  if (dimension === "length" || dimension === "section") return say.length(bound);
  if (dimension === "pitch") return `${say.number(bound * 12)}:12`;
  return formatQuantity(bound, dimension, say.metric ? "mm" : "inch");
}

function range({ least, most, dimension }: OutOfRange, say: Say): string {
  if (most === undefined) return say.text("it cannot be negative");
  const highest = said(most, dimension, say);
  if (least === undefined) return say.text("it can be at most {most}", { most: highest });
  if (least === 0) return say.text("it must be above zero and at most {most}", { most: highest });
  return say.text("it must lie between {least} and {most}", {
    least: said(least, dimension, say),
    most: highest,
  });
}

export const valueOutOfRange = defineCheck<"source", Fact>({
  meta: {
    id: "value-out-of-range",
    title: "A value outside sense",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A size or load can be read, but is zero, negative, far too large, or given in the wrong system of units.",
      why: "It is most likely a slip of the pen; computing with it would give numbers without meaning.",
      remedy: "Correct the number or add its unit. In a file of millimetres write an inch section as 8x9 in.",
    },
  },
  input: "source",
  find: (source) =>
    [...factsOf(source, "value-out-of-range"), ...factsOf(source, "inch-section-in-mm")].map((data) => ({
      path: data.path,
      data,
    })),
  words: (d, say) => {
    if (d.kind === "inch-section-in-mm")
      return say.text(
        "“{text}” counts as millimetres in this file, thinner than any timber, so it is left out. Write “{suggestion}” if inches are meant.",
        { text: d.text, suggestion: d.suggestion },
      );
    return say.text(
      "“{text}” makes no sense here, so it is left out: {range}. Correct the number or its unit.",
      {
        text: d.text,
        range: range(d, say),
      },
    );
  },
  fixes: (d, say) =>
    d.kind === "inch-section-in-mm"
      ? [
          {
            title: say.text("Write “{text}”", { text: d.suggestion }),
            edits: [{ kind: "replace", path: d.path, text: d.suggestion }],
          },
        ]
      : [],
});
