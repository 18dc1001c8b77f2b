import type { ModelProblem } from "../../model/problems.ts";
import { defineCheck } from "../check.ts";

type Data = Extract<ModelProblem, { kind: "joint-twice" }>;

export const jointTwice = defineCheck<"model", Data>({
  meta: {
    id: "joint-twice",
    title: "Two joints claim the same place",
    level: "error",
    area: "joinery",
    source: {
      text: "placement rule of this program: place before stick before entry before kind",
      status: "file-format",
    },
    explanation: {
      what: "Two joint entries hold at the same place with equal right.",
      why: "Only one can be cut; which one is not clear from the file.",
      remedy: "Make one of them name the place or the stick (post@A1), or remove it.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems)
      if (p.kind === "joint-twice")
        yield {
          path: p.path,
          onKey: true,
          place: p.place,
          data: p,
          related: [{ path: p.other, message: (say) => say.text("the other entry") }],
        };
  },
  words: (d, say) =>
    say.text(
      "{first} and {second} both hold at {place} with equal right, and only one can be cut; {first} is drawn. Name the stick (post@A1) in one of them.",
      {
        first: d.names[0],
        second: d.names[1],
        place: d.place,
      },
    ),
});
