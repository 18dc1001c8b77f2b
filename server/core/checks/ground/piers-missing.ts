import { bearingTimbers, isComplete } from "../../model/grounded.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly posts: readonly string[];
}

export const piersMissing = defineCheck<"model", Data>({
  meta: {
    id: "piers-missing",
    title: "Posts without piers",
    level: "note",
    area: "ground",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "The file has no piers, and posts of the frame end on a level. They are taken to stand there.",
      why: "Frost, side cover, bearing of the ground, uplift: nothing about it is checked, and silence must not be taken for a pass.",
      remedy:
        "Add piers under the posts, or leave it where the frame stands on a slab or a wall that others answer for.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find(model) {
    if (model.frame.piers.length > 0 || !isComplete(model)) return;
    const posts = bearingTimbers(model).filter((t) => t.kind === "post");
    const [first] = posts;
    if (!first) return;
    const from = model.members.get(first.member)?.from;
    yield {
      ...(from ? { path: from.path } : { path: first.path, onKey: true as const }),
      place: first.id,
      counted: true,
      data: { posts: posts.map((t) => t.id) },
    };
  },
  words: (d, say) => {
    const [first = ""] = d.posts;
    return say.text(
      d.posts.length === 1
        ? "The file has no piers, so nothing about the ground under {first} is checked: no frost, no bearing, no uplift. Write “piers: {all: {under: post, kind: tube, diameter: {diameter}, depth: {depth}}}”."
        : "The file has no piers, so nothing about the ground under {first} and {others} more is checked: no frost, no bearing, no uplift. Write “piers: {all: {under: post, kind: tube, diameter: {diameter}, depth: {depth}}}”.",
      {
        first,
        others: d.posts.length - 1,
        diameter: say.length(say.metric ? 400 / 25.4 : 16),
        depth: say.length(say.metric ? 1200 / 25.4 : 48),
      },
    );
  },
});
