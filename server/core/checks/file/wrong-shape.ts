import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "wrong-shape" }>;

const GOT: Readonly<Record<Fact["got"], string>> = {
  map: "a map of keys",
  list: "a list",
  text: "a single value",
  nothing: "nothing",
};

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
  words: (d, say) =>
    say.text("Here stands {got} where {expected} is expected, so it is left out.", {
      got: GOT[d.got],
      expected: d.expected,
    }),
});
