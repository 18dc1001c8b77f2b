import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "missing-key" }>;

export const missingKey = defineCheck<"source", Fact>({
  meta: {
    id: "missing-key",
    title: "A key that is needed is missing",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "An entry lacks a key that it cannot do without.",
      why: "Without it the entry cannot be placed or checked, and is left out.",
      remedy: "Add the key; the message gives an example.",
    },
  },
  input: "source",
  find: (source) => factsOf(source, "missing-key").map((data) => ({ path: data.path, onKey: true, data })),
  words: (d, say) =>
    d.example === undefined
      ? say.text("“{key}” is missing here, and this entry cannot do without it. Add it.", { key: d.key })
      : say.text(
          "“{key}” is missing here, and this entry cannot do without it. Add it, for example “{key}: {example}”.",
          {
            key: d.key,
            example: d.example,
          },
        ),
});
