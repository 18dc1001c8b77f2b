import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "unclosed-quote" }>;

export const unclosedQuote = defineCheck<"source", Fact>({
  meta: {
    id: "unclosed-quote",
    title: "A quote is opened and not closed",
    level: "error",
    area: "file",
    source: { text: "YAML 1.2.2, chapter 7.3", status: "published" },
    explanation: {
      what: "A value begins with a quote that is never closed.",
      why: "Everything after it would belong to the quoted text. The value is left out and the rest of the file is read.",
      remedy: "Close the quote, or write lengths without quotes and use ft and in; quote only sentences.",
    },
  },
  input: "source",
  find: (source) =>
    factsOf(source, "unclosed-quote").map((data) => ({
      path: "",
      data,
      span: { start: data.start, end: data.end },
    })),
  words: (d, say) =>
    say.text(
      "This {quote} opens a text that is never closed, so its value is left out. Close it; lengths need no quotes (8 ft 6 in).",
      { quote: d.quote },
    ),
});
