import type { Pointer } from "../../frame/frame.ts";
import type { Model } from "../../model/model.ts";
import { MOST_IN_SERIES } from "../../model/series.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly name: string;
  readonly spacing: number;
}

/** Every entry that makes a series by its spacing. */
function* spaced(
  model: Model,
): Generator<{ path: Pointer; name: string; spacing: number; ids: readonly string[] }> {
  for (const m of model.frame.members)
    if (m.spacing !== undefined && m.count === undefined)
      yield {
        path: m.path,
        name: m.name,
        spacing: inches(m.spacing),
        ids: (model.sticks.get(m.name) ?? []).map(({ id }) => id),
      };
  const rafters = model.frame.roof?.rafters;
  if (rafters?.spacing !== undefined && rafters.count === undefined)
    for (const slope of model.roof?.slopes ?? [])
      yield {
        path: rafters.path,
        name: "rafter",
        spacing: inches(rafters.spacing),
        ids: slope.rafters.map(({ id }) => id),
      };
}

/** The sticks of the longest of an entry's series, which end in `.1`, `.2` and so on. */
function longest(ids: readonly string[]): number {
  const counts = new Map<string, number>();
  for (const id of ids) {
    const series = id.slice(0, Math.max(0, id.lastIndexOf(".")));
    counts.set(series, (counts.get(series) ?? 0) + 1);
  }
  return Math.max(0, ...counts.values());
}

export const seriesCrowded = defineCheck<"model", Data>({
  meta: {
    id: "series-crowded",
    title: "A spacing that makes hundreds of sticks",
    level: "error",
    area: "geometry",
    source: {
      text: `the frame language of this program: at most ${MOST_IN_SERIES} bays in a series`,
      status: "file-format",
    },
    explanation: {
      what: "A series is spaced so closely that it would have more sticks than are placed.",
      why: "It is most likely a slip of the pen or a missing unit, and what is placed is not what the file says.",
      remedy: "Give the spacing from center to center, with its unit.",
    },
  },
  input: "model",
  *find(model) {
    for (const { path, name, spacing, ids } of spaced(model)) {
      const count = longest(ids);
      if (count > MOST_IN_SERIES)
        yield {
          path: `${path}/spacing`,
          data: { name, spacing },
          value: count,
          limit: MOST_IN_SERIES,
          unit: "count",
        };
    }
  },
  words: (d, say) =>
    say.text(
      "At this spacing {name} would have more than {most} sticks in a row, so only that many are placed. Correct the number or its unit.",
      { name: d.name, most: MOST_IN_SERIES },
    ),
});
