import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "missing-separator" }>;

const REASONS: Readonly<Record<Fact["reason"], string>> = {
  space: "a space is missing after the colon, so there is no value here",
  brackets: "several values stand here without brackets, so only the first belongs to its key",
  "comma-number": "a comma ends the value here, so the number is cut in two",
  hash: "everything after # is a comment, so there is no value here",
  "no-value": "a key stands here without a value",
};

export const missingSeparator = defineCheck<"source", Fact>({
  meta: {
    id: "missing-separator",
    title: "A space, bracket or quote is missing in an inline map",
    level: "error",
    area: "file",
    source: { text: "YAML 1.2.2, chapters 6.6 and 7.4", status: "published" },
    explanation: {
      what: "In { } a colon needs a space after it, a list needs [ ], a number has no commas, and # begins a comment.",
      why: "YAML reads {2:-4 in} as a key without a value: the height would silently be missing.",
      remedy: "Add the space, the brackets or the quotes that the message proposes.",
    },
  },
  input: "source",
  find: (source) =>
    factsOf(source, "missing-separator").map((data) => ({
      path: data.path,
      span: { start: data.start, end: data.end },
      data,
    })),
  words: (d, say) => {
    const proposals = d.proposals.map((p) => `“${p}”`).join(" or ");
    return say.text("In “{written}” {reason}. Write {proposals}.", {
      written: d.written,
      reason: REASONS[d.reason],
      proposals: proposals === "" ? "a value" : proposals,
    });
  },
  fixes: (d, say) =>
    d.proposals.map((text) => ({
      title: say.text("Write “{text}”", { text }),
      edits: [{ kind: "characters" as const, start: d.start, end: d.end, text }],
    })),
});
