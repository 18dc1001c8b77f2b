import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "yaml" | "directive" | "alias-limit" }>;

/** What to do, by the closed set of codes of the YAML reader; others get the general advice. */
const ADVICE: Readonly<Record<string, string>> = {
  TAB_AS_INDENT: "Indent with spaces, not with tabs.",
  BAD_INDENT: "Indent it like its neighbors.",
  BLOCK_IN_FLOW: "Inside brackets write the values on one line.",
  BLOCK_AS_IMPLICIT_KEY: "Start a new line for the next key, indented like its neighbors.",
  MULTILINE_IMPLICIT_KEY: "A key and its colon stand on one line; a colon may be missing.",
  MISSING_CHAR: "A colon, comma or bracket is missing.",
  UNEXPECTED_TOKEN: "A character stands here that does not belong; quote the value if it is meant.",
  KEY_OVER_1024_CHARS: "This key is far too long; a colon or a line break may be missing.",
  BAD_SCALAR_START: "Values that begin with this character need quotes.",
  BAD_ALIAS:
    "The * begins a reference to a name that is not defined; quote the value if it is meant as text.",
  MULTIPLE_DOCS: "A file holds one frame; remove the line of dashes.",
  MULTIPLE_ANCHORS: "One value can have one anchor.",
  TAG_RESOLVE_FAILED: "Tags (!) have no meaning here.",
};

export const lineUnreadable = defineCheck<"source", Fact>({
  meta: {
    id: "line-unreadable",
    title: "A line that cannot be read",
    level: "error",
    area: "file",
    source: { text: "YAML 1.2.2", status: "published" },
    explanation: {
      what: "The way a line is written breaks the rules of the file format: indentation, colons, brackets, tabs, directives or references.",
      why: "The line is left out; the rest of the file is read and checked.",
      remedy:
        "Indent with spaces, one key and its colon on a line, brackets closed on the line, and no % directives.",
    },
  },
  input: "source",
  find: (source) =>
    [...factsOf(source, "yaml"), ...factsOf(source, "directive"), ...factsOf(source, "alias-limit")].map(
      (data) => ({
        path: "",
        span: { start: data.start, end: data.end },
        data,
      }),
    ),
  words: (d, say) => {
    if (d.kind === "directive")
      return say.text("Lines that begin with % have no meaning in a frame file. Remove this one.");
    if (d.kind === "alias-limit")
      return say.text(
        "References (*) are used so often here that they would swell the file beyond measure; the rest is left out. Write the values out.",
      );
    return say.text("This line cannot be read, so it is left out. {advice}", {
      advice: ADVICE[d.code] ?? "Look at its indentation, colons and brackets.",
    });
  },
});
