import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "wrong-shape" }>;

const GOT: Readonly<Record<Fact["got"], string>> = {
  map: "a map of keys",
  list: "a list",
  text: "a single value",
  nothing: "nothing",
};

const NOUNS: Readonly<Record<Fact["got"], string>> = { ...GOT, map: "a map" };

export const wrongShape = defineCheck<"source", Fact>({
  meta: {
    id: "wrong-shape",
    title: "A list, map or value where another is expected",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A key has a list where it takes a single value, or a value where it takes a map, or nothing at all.",
      why: "What it means cannot be told, so it is left out.",
      remedy: "Write what the message expects. Inline maps stand in { }, lists in [ ].",
    },
  },
  input: "source",
  find: (source) => factsOf(source, "wrong-shape").map((data) => ({ path: data.path, onKey: true, data })),
  words(d, say) {
    const expected = oneOf(d.expected, say);
    if (d.got === "nothing")
      return say.text("Nothing stands here, and {expected} is expected. {advice}", {
        expected,
        advice: advice(d.expected, say),
      });
    // "a list" where "a list with at least 2 entries" is expected: its length is wrong, not its shape
    if (d.expected.startsWith(`${NOUNS[d.got]} with`))
      return say.text("This {noun} does not fit, so it is left out: {expected} is expected here.", {
        noun: d.got,
        expected,
      });
    return say.text("Here stands {got}, and {expected} is expected, so it is left out. {advice}", {
      got: GOT[d.got],
      expected,
      advice: advice(d.expected, say),
    });
  },
});

function oneOf(expected: string, say: Say): string {
  return expected.includes(", ") && !/^an? /.test(expected)
    ? say.text("one of {words}", { words: expected })
    : expected;
}

/** How what is expected is written. */
function advice(expected: string, say: Say): string {
  if (expected.startsWith("a list")) return say.text("Write it in brackets: [first, second].");
  if (expected.startsWith("a map"))
    return say.text("Write it in braces: {pattern}.", { pattern: "{key: value}" });
  return say.text("Write it behind the colon.");
}
