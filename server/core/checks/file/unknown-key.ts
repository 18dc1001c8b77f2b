import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "unknown-key" }>;

/** How many keys a message lists before it stops. */
const LISTED = 8;

export const unknownKey = defineCheck<"source", Fact>({
  meta: {
    id: "unknown-key",
    title: "A key that this place does not know",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A key stands where the frame language has none of that name.",
      why: "What it says would be left out without a word: a depth that is spelt wrong is no depth.",
      remedy: "Use one of the keys that the place knows; the message names the nearest one.",
    },
  },
  input: "source",
  find: (source) => factsOf(source, "unknown-key").map((data) => ({ path: data.path, onKey: true, data })),
  words: (d, say) =>
    d.nearest === undefined
      ? say.text("“{key}” is not a key here, so it would be ignored. Known here: {allowed}.", {
          key: d.key,
          allowed: d.allowed.slice(0, LISTED).join(", ") + (d.allowed.length > LISTED ? " …" : ""),
        })
      : say.text("“{key}” is not a key here, so it would be ignored. Did you mean “{nearest}”?", {
          key: d.key,
          nearest: d.nearest,
        }),
  fixes: (d, say) =>
    d.nearest === undefined
      ? []
      : [
          {
            title: say.text("Change to “{nearest}”", { nearest: d.nearest }),
            edits: [{ kind: "rename-key", path: d.path, text: d.nearest }],
          },
        ],
});
