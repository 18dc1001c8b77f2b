import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "wrong-value" }>;

export const wrongValue = defineCheck<"source", Fact>({
  meta: {
    id: "wrong-value",
    title: "A value that this key does not take",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A key that takes one of a few words has another one, or a list names the same place twice.",
      why: "Nothing is guessed: the value is left out, and what depends on it is not checked.",
      remedy: "Use one of the words that the message lists.",
    },
  },
  input: "source",
  find: (source) => factsOf(source, "wrong-value").map((data) => ({ path: data.path, data })),
  words: (d, say) =>
    d.twice
      ? say.text(
          "“{text}” stands in this list twice; each place is named once. Remove it, or name the place that was meant.",
          { text: d.text },
        )
      : say.text("“{text}” is not a value of this key, so it is left out. {hint}", {
          text: d.text,
          hint:
            d.nearest === undefined
              ? d.allowed.length === 0
                ? say.text("Correct or remove it.")
                : say.text("Use {allowed}.", { allowed: d.allowed.join(", ") })
              : say.text("Did you mean “{nearest}”? Allowed: {allowed}.", {
                  nearest: d.nearest,
                  allowed: d.allowed.join(", "),
                }),
        }),
  fixes: (d, say) =>
    replaceFix(d.path, d.nearest, (nearest) => say.text("Change to “{nearest}”", { nearest })),
});
