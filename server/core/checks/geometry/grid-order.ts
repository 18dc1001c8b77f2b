import type { GridLine } from "../../frame/frame.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly line: string;
  readonly before: string;
  readonly at: number;
  readonly beforeAt: number;
}

export const gridOrder = defineCheck<"frame", Data>({
  meta: {
    id: "grid-order",
    title: "Grid lines out of order",
    level: "warning",
    area: "geometry",
    source: {
      text: "common practice, no source: bents and walls are named in order",
      status: "common-practice",
    },
    explanation: {
      what: "A bent or wall stands at or before the one that is named before it.",
      why: "Which line is an outer one follows from the distances; names that run otherwise invite a timber cut for the wrong place.",
      formula: "place of a line > place of the one that is named before it",
      remedy: "Give the lines rising distances in the order of their names.",
    },
  },
  input: "frame",
  *find(frame) {
    for (const lines of [frame.grid.walls, frame.grid.bents]) {
      const named = [...lines].sort((a, b) => a.id.localeCompare(b.id, "en", { numeric: true }));
      for (let i = 1; i < named.length; i++) {
        const [before, line] = [named[i - 1], named[i]] as [GridLine, GridLine];
        if (line.at > before.at) continue;
        yield {
          path: line.path,
          ...(line.at === before.at ? { level: "error" as const } : {}),
          data: { line: line.id, before: before.id, at: inches(line.at), beforeAt: inches(before.at) },
          value: inches(line.at),
          limit: inches(before.at),
          unit: "in",
        };
      }
    }
  },
  words: (d, say) =>
    say.text(
      "Line {line} stands at {at}, not beyond line {before} at {beforeAt}: names and places run against each other. Give rising distances.",
      {
        line: d.line,
        before: d.before,
        at: say.length(d.at),
        beforeAt: say.length(d.beforeAt),
      },
    ),
  worked: (d, say) =>
    say.text("{at} ≤ {beforeAt}", { at: say.length(d.at), beforeAt: say.length(d.beforeAt) }),
});
