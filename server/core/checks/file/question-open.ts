import { defineCheck } from "../check.ts";

interface Data {
  readonly what: string;
  readonly whom: string;
}

export const questionOpen = defineCheck<"frame", Data>({
  meta: {
    id: "question-open",
    title: "Something that is still to be asked",
    level: "warning",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "The file keeps a question under ask: something was assumed in its place, and the frame was checked with that.",
      why: "The frame stands or falls by the true answer, not by what was assumed.",
      remedy: "Ask the one who is named, correct what was assumed, and remove the entry.",
    },
  },
  input: "frame",
  *find({ questions }) {
    for (const { path, what, whom } of questions) yield { path, onKey: true, data: { what, whom } };
  },
  words: (d, say) =>
    say.text(
      "Not known yet: {what}. What stands in its place is assumed, and all checks go by it. Ask {whom}, correct it, and remove this entry.",
      { ...d },
    ),
});
