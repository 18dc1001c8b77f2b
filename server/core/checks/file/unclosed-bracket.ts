import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

/** What closes them, the innermost first. */
function partnersOf(brackets: string): string {
  return [...brackets]
    .reverse()
    .map((bracket) => (bracket === "[" ? "]" : "}"))
    .join("");
}

type Fact = Extract<SourceFact, { kind: "unclosed-bracket" }>;

export const unclosedBracket = defineCheck<"source", Fact>({
  meta: {
    id: "unclosed-bracket",
    title: "A bracket is opened and not closed",
    level: "error",
    area: "file",
    source: { text: "YAML 1.2.2, chapter 7.4", status: "published" },
    explanation: {
      what: "A { or [ has no partner.",
      why: "It is read as if it ended with its line, or before the next key that cannot be part of it; if more was meant to belong to it, that is not there.",
      remedy: "Put } or ] behind the last thing that belongs inside.",
    },
  },
  input: "source",
  find: (source) =>
    factsOf(source, "unclosed-bracket").map((data) => ({
      path: "",
      span: { start: data.start, end: data.end },
      data,
    })),
  words: (d, say) =>
    say.text(
      d.bracket.length > 1
        ? "The brackets {bracket} of this line are never closed; they are read as if they ended with it. Add {partner}."
        : d.before === undefined
          ? "This {bracket} is never closed; it is read as if it ended with its line. Add {partner}."
          : "This {bracket} is never closed; it is read as if it ended before “{before}”. Add {partner} there.",
      { bracket: [...d.bracket].join(" "), partner: partnersOf(d.bracket), before: d.before ?? "" },
    ),
  fixes: (d, say) => [
    {
      title: say.text("Add {partner}", { partner: partnersOf(d.bracket) }),
      edits: d.closings.map(({ at, end, text }) => ({ kind: "characters" as const, start: at, end, text })),
    },
  ],
});
