import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "unreadable-quantity" }>;

/** `3,5 in` */
const DECIMAL_COMMA = /^(\s*\d+),(\d{1,2})(?!\d)/;

const NAMES: Readonly<Record<string, string>> = {
  length: "a length",
  section: "a section",
  pitch: "a pitch",
  pressure: "a load per area",
  stress: "a stress",
  density: "a weight per volume",
  force: "a weight or force",
  speed: "a wind speed",
  angle: "an angle",
};

export const unreadableQuantity = defineCheck<"source", Fact>({
  meta: {
    id: "unreadable-quantity",
    title: "A size or load that cannot be read",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A value that should be a length, section, load or other quantity is not written in a form that can be read.",
      why: "Nothing that depends on it can be placed or checked, so silence elsewhere would mean nothing.",
      remedy:
        "Write a number and its unit, as the trade says it: 8 ft 6 1/2 in, 5-1/2, 140 mm, 8x9, 7:12, 45 psf. Use no comma inside a number.",
    },
  },
  input: "source",
  find: (source) =>
    factsOf(source, "unreadable-quantity").map((data) => ({ path: data.path, data, severity: 0 })),
  words: (d, say) =>
    DECIMAL_COMMA.test(d.text)
      ? say.text(
          "“{text}” cannot be read: a comma divides no number here. Write it with a point, “{point}”, or as a fraction like 3 1/2.",
          {
            text: d.text,
            point: d.text.replace(DECIMAL_COMMA, "$1.$2"),
          },
        )
      : say.text(
          "“{text}” cannot be read as {what}, so what depends on it is not checked. Write it like {examples}.",
          {
            text: d.text,
            what: NAMES[d.dimension] ?? "a quantity",
            examples: say.either(d.examples.slice(0, 3)),
          },
        ),
  fixes(d, say) {
    if (!DECIMAL_COMMA.test(d.text)) return [];
    const text = d.text.replace(DECIMAL_COMMA, "$1.$2");
    return [
      { title: say.text("Write “{text}”", { text }), edits: [{ kind: "replace", path: d.path, text }] },
    ];
  },
});
