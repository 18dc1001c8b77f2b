import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "value-out-of-range" | "inch-section-in-mm" }>;

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
        "“{text}” means millimetres in this file, which no timber is. Write “{suggestion}” if inches are meant.",
        { text: d.text, suggestion: d.suggestion },
      );
    const { least, most } = d;
    const range =
      least !== undefined && most !== undefined
        ? say.text("between {least} and {most}", { least, most })
        : least !== undefined
          ? say.text("above {least}", { least })
          : say.text("below {most}", { most: most ?? 0 });
    return say.text(
      "“{text}” is outside what makes sense here ({range}), so it is left out. Correct the number or its unit.",
      {
        text: d.text,
        range,
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
