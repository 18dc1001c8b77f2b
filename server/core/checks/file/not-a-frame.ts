import { defineCheck } from "../check.ts";
import type { SourceFact } from "../source-facts.ts";
import { factsOf } from "./facts.ts";

type Fact = Extract<SourceFact, { kind: "empty" | "not-a-frame" | "too-large" }>;

export const notAFrame = defineCheck<"source", Fact>({
  meta: {
    id: "not-a-frame",
    title: "The file holds no frame",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "The file is empty, or is not a map of keys, or is too large to be a frame.",
      why: "There is nothing that could be placed or checked.",
      formula: "characters ≤ 1,000,000; entries ≤ 60,000; levels of nesting ≤ 64",
      remedy: "Begin with “frame: the name of the frame” and the keys grid, timber and members.",
    },
  },
  input: "source",
  find: (source) =>
    [...factsOf(source, "empty"), ...factsOf(source, "not-a-frame"), ...factsOf(source, "too-large")].map(
      (data) => ({
        path: "",
        data,
        ...(data.kind === "too-large" ? { value: data.size, limit: data.limit, unit: "count" as const } : {}),
      }),
    ),
  words: (d, say) => {
    if (d.kind === "empty")
      return say.text(
        "This file is empty, so there is nothing to check. Begin with “frame:” and the frame’s name.",
      );
    if (d.kind === "not-a-frame")
      return say.text(
        "This file is {got}, not a map of keys, so nothing in it can be placed. Begin with “frame:” and the frame’s name.",
        {
          got: d.got === "list" ? "a list" : "plain text",
        },
      );
    return say.text(
      "This file has {size} {what}, more than the {limit} that a frame may have, so it is not read. Divide it into several files.",
      {
        size: say.number(d.size, 0),
        limit: say.number(d.limit, 0),
        what: d.what === "depth" ? "levels of nesting" : d.what,
      },
    );
  },
  worked: (d, say) =>
    d.kind === "too-large"
      ? say.text("{size} > {limit}", { size: say.number(d.size, 0), limit: say.number(d.limit, 0) })
      : undefined,
});
