import { defineCheck } from "../check.ts";
import { factsOf } from "./facts.ts";

interface Data {
  readonly name: string;
  readonly sort: "key" | "name";
}

export const duplicateId = defineCheck<"whole", Data>({
  meta: {
    id: "duplicate-id",
    title: "A name is defined twice",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: 'Two keys of one map are the same, or a level, a member and a joint share a name. 1 and "1" are the same key.',
      why: "Only one of the two could count, and nobody could tell which one the rest of the file means.",
      remedy: "Give the second one a name of its own.",
    },
  },
  input: "whole",
  *find({ source, model }) {
    for (const fact of factsOf(source, "duplicate-key"))
      yield {
        path: fact.path,
        onKey: true,
        span: { start: fact.start, end: fact.end },
        data: { name: fact.key, sort: "key" as const },
        related: [{ path: fact.first, message: (say) => say.text("first written here") }],
      };
    for (const p of model.problems)
      if (p.kind === "duplicate-id")
        yield {
          path: p.path,
          onKey: true,
          data: { name: p.name, sort: "name" as const },
          related: [{ path: p.first, message: (say) => say.text("first defined here") }],
        };
  },
  words: (d, say) =>
    d.sort === "key"
      ? say.text("“{name}” is written twice in this map, and only the first counts. Rename or remove one.", {
          name: d.name,
        })
      : say.text(
          "“{name}” already names a level, a member or a joint, so references to it could mean either. Give this one another name.",
          { name: d.name },
        ),
});
