import { groupBy } from "../../collect.ts";
import type { Pointer } from "../../frame/frame.ts";
import type { Model, Timber } from "../../model/model.ts";
import { MOST_IN_SERIES } from "../../model/series.ts";
import { dot, length, sub, unit, type Vec3 } from "../../model/vec.ts";
import { defineCheck } from "../check.ts";

type Data =
  | { readonly kind: "many"; readonly name: string; readonly count: number }
  /** neighbors, center to center, and how wide each is that way, inches */
  | { readonly kind: "touching"; readonly name: string; readonly apart: number; readonly wide: number };

interface Row {
  readonly path: Pointer;
  readonly name: string;
  readonly sticks: readonly Timber[];
}

/** Every entry that makes a series, by its spacing or its count. */
function* rows(model: Model): Generator<Row> {
  for (const m of model.frame.members) {
    const key = m.count === undefined ? "spacing" : "count";
    if (m[key] !== undefined)
      yield { path: `${m.path}/${key}`, name: m.name, sticks: model.sticks.get(m.name) ?? [] };
  }
  const rafters = model.frame.roof?.rafters;
  const key = rafters?.count === undefined ? "spacing" : "count";
  if (rafters?.[key] !== undefined)
    for (const slope of model.roof?.slopes ?? [])
      yield { path: `${rafters.path}/${key}`, name: "rafter", sticks: slope.rafters };
}

/** The series of an entry: sticks whose ids end in `.1`, `.2` and so on. */
function seriesOf(sticks: readonly Timber[]): readonly (readonly Timber[])[] {
  return [...groupBy(sticks, ({ id }) => id.slice(0, Math.max(0, id.lastIndexOf("."))) || id).values()];
}

/** How wide a stick is in a direction square to its length, inches. */
function widthToward(t: Timber, way: Vec3): number {
  return Math.abs(dot(t.widthDir, way)) * t.width + Math.abs(dot(t.depthDir, way)) * t.depth;
}

/** Two neighbors of a series that take the same space. */
function touching(series: readonly Timber[]): { readonly apart: number; readonly wide: number } | undefined {
  const [a, b] = series;
  if (!a || !b) return undefined;
  const way = sub(b.origin, a.origin);
  const apart = length(way);
  const wide = widthToward(a, unit(way));
  return apart < wide - 1 / 16 ? { apart, wide } : undefined;
}

export const seriesCrowded = defineCheck<"model", Data>({
  meta: {
    id: "series-crowded",
    title: "A series whose sticks crowd each other",
    level: "error",
    area: "geometry",
    source: {
      text: `two sticks cannot take the same space; the frame language of this program places at most ${MOST_IN_SERIES} bays in a series`,
      status: "file-format",
    },
    explanation: {
      what: "A series is spaced more closely than its sticks are wide, or so closely that it would have more sticks than are placed.",
      why: "Its sticks take each other's space, or what is placed is not what the file says: most likely a slip of the pen or a missing unit.",
      formula: "center to center ≥ width of a stick that way, less 1/16 in",
      remedy: "Give the spacing from center to center, with its unit.",
    },
  },
  input: "model",
  *find(model) {
    for (const { path, name, sticks } of rows(model)) {
      const all = seriesOf(sticks);
      const count = Math.max(0, ...all.map((series) => series.length));
      if (count > MOST_IN_SERIES) {
        yield {
          path,
          data: { kind: "many", name, count },
          value: count,
          limit: MOST_IN_SERIES,
          unit: "count",
        };
        continue;
      }
      const [close] = all.flatMap((series) => touching(series) ?? []);
      if (close)
        yield {
          path,
          data: { kind: "touching", name, ...close },
          value: close.apart,
          limit: close.wide,
          unit: "in",
        };
    }
  },
  words: (d, say) =>
    d.kind === "many"
      ? say.text(
          "At this spacing {name} would have more than {most} sticks in a row, so only that many are placed. Correct the number or its unit.",
          { name: d.name, most: MOST_IN_SERIES },
        )
      : say.text(
          "The sticks of {name} stand {apart} from center to center and are {wide} wide that way, so they take each other’s space. Set them farther apart, or take fewer.",
          { name: d.name, apart: say.length(d.apart), wide: say.length(d.wide) },
        ),
  worked: (d, say) =>
    d.kind === "many"
      ? say.text("{count} > {most}", { count: d.count, most: MOST_IN_SERIES })
      : say.text("{apart} < {wide}", { apart: say.length(d.apart), wide: say.length(d.wide) }),
});
