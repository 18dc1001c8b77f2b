import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "missing-separator" }>;

const SENTENCES: Readonly<Record<Fact["reason"], string>> = {
  space: "In “{written}” a space is missing after the colon, so there is no value here. Write {proposals}.",
  brackets:
    "In “{written}” several values stand here without brackets, so only the first belongs to its key. Write {proposals}.",
  colon: "A colon is missing after “{key}”. Write {proposals}.",
  comma: "A comma is missing before “{key}”. Write {proposals}.",
  "comma-number":
    "In “{written}” a comma ends the value here, so the number is cut in two. Write {proposals}.",
  hash: "In “{written}” everything after # is a comment, so there is no value here. Write {proposals}.",
  "no-value": "In “{written}” a key stands here without a value. Write {proposals}.",
};

export const missingSeparator = defineCheck<"source", Fact>({
  meta: {
    id: "missing-separator",
    title: "A colon, comma, space, bracket or quote is missing",
    level: "error",
    area: "file",
    source: { text: "YAML 1.2.2, chapters 6.6 and 7.4", status: "published" },
    explanation: {
      what: "A key needs a colon and a space after it; in { } a comma stands between entries, a list needs [ ], a number has no commas, and # begins a comment.",
      why: "YAML reads {2:-4 in} as a key without a value: the height would silently be missing.",
      remedy: "Add the colon, the comma, the space, the brackets or the quotes that the message proposes.",
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
    const proposals = d.proposals.map((text) => say.text("“{text}”", { text })).join(" or ");
    return say.text(SENTENCES[d.reason], {
      written: d.written,
      key: d.key ?? "",
      proposals: proposals === "" ? "a colon and a value behind it" : proposals,
    });
  },
  fixes: (d, say) =>
    d.proposals.map((text) => ({
      title: say.text("Write “{text}”", { text }),
      edits: [{ kind: "characters" as const, start: d.start, end: d.end, text }],
    })),
});
