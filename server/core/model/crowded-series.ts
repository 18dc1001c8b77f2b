/** Series whose sticks take each other's space, or of which not all are placed: nothing can be reckoned of such a frame. */
import { groupBy } from "../collect.ts";
import type { Pointer } from "../frame/frame.ts";
import type { Model, Timber } from "./model.ts";
import { MOST_IN_SERIES } from "./series.ts";
import { dot, length, sub, unit, type Vec3 } from "./vec.ts";

export type CrowdedSeries = {
  /** of the value that sets them apart */
  readonly path: Pointer;
  /** of the entry */
  readonly name: string;
} & (
  | { readonly kind: "many"; readonly count: number }
  /** neighbors, center to center, and how wide each is that way, inches */
  | { readonly kind: "touching"; readonly apart: number; readonly wide: number }
);

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

/** @returns one for each entry, and for each slope of the roof's own rafters, in the order of the file */
export function crowdedSeries(model: Model): CrowdedSeries[] {
  return [...rows(model)].flatMap(({ path, name, sticks }): CrowdedSeries[] => {
    const all = seriesOf(sticks);
    const count = Math.max(0, ...all.map((series) => series.length));
    if (count > MOST_IN_SERIES) return [{ path, name, kind: "many", count }];
    const [close] = all.flatMap((series) => touching(series) ?? []);
    return close ? [{ path, name, kind: "touching", ...close }] : [];
  });
}
