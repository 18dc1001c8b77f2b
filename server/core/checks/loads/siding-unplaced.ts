import { gridLines } from "../../model/grid.ts";
import type { Model } from "../../model/model.ts";
import { wallFaces } from "../../statics/wall-faces.ts";
import { areaWords } from "../amount-words.ts";
import { defineCheck } from "../check.ts";

type Why =
  | { readonly kind: "unknown"; readonly outer: readonly string[] }
  | { readonly kind: "inner"; readonly outer: readonly string[] }
  | { readonly kind: "bare"; readonly area: number | undefined };

interface Data {
  readonly line: string;
  readonly why: Why;
}

/** The lines of the grid that are read for certain; a lost one may be the one that is named. */
function certain({ frame }: Model, line: string): boolean {
  const { lost, unread } = frame;
  if (lost.has("/grid") || lost.has("/grid/walls") || lost.has("/grid/bents")) return false;
  return !lost.has("/members") && !unread.has(line);
}

function* unplaced(model: Model): Generator<{ readonly path: string; readonly data: Data }> {
  const { walls, bents } = gridLines(model.frame);
  const outer = [...new Set([walls[0], walls.at(-1), bents[0], bents.at(-1)].flatMap((l) => l?.id ?? []))];
  const faces = wallFaces(model);
  // an entry without a stick has a finding of its own, and may be what stands in a side
  const allPlaced = [...model.members.keys()].every((name) => (model.sticks.get(name)?.length ?? 0) > 0);
  for (const { line, path } of model.frame.siding) {
    if (!certain(model, line)) continue;
    const known = [...walls, ...bents].some((l) => l.id === line);
    const face = faces.find((f) => f.line === line);
    if (!known) yield { path, data: { line, why: { kind: "unknown", outer } } };
    else if (!outer.includes(line)) yield { path, data: { line, why: { kind: "inner", outer } } };
    else if (allPlaced && (!face || face.uncarried > 0))
      yield { path, data: { line, why: { kind: "bare", area: face?.uncarried } } };
  }
}

export const sidingUnplaced = defineCheck<"model", Data>({
  meta: {
    id: "siding-unplaced",
    title: "Siding that loads no timber",
    level: "warning",
    area: "loads",
    source: { text: "statics: a load needs a timber that carries it", status: "derived" },
    explanation: {
      what: "Siding is named on a line that is no outer side of the frame, or on a side where nothing can carry it.",
      why: "Its wind and weight are then in no timber's check: silence about them is no pass.",
      remedy:
        "Name an outer wall or an end bent, and give the side posts or girts. Wind on walls inside the building is not computed.",
    },
  },
  input: "model",
  *find(model) {
    if (model.frame.siding.length === 0) return;
    for (const found of unplaced(model)) yield { ...found, onKey: true };
  },
  words: ({ line, why }, say) => {
    if (why.kind === "bare")
      return why.area === undefined
        ? say.text(
            "No post and no girt stands in side {line}, so the wind on its siding and its weight are in no check. Give it posts or girts.",
            { line },
          )
        : say.text(
            "No timber carries {area} of side {line}, so the wind on that siding and its weight are in no check. Give it posts, girts or end rafters.",
            { line, area: areaWords(why.area, say) },
          );
    const pattern =
      why.kind === "unknown"
        ? "There is no wall or bent {line}, so its siding is in no check. Outer sides: {outer}."
        : "{line} is no outer side of the frame, and the wind on walls inside is not computed: this siding is in no check. Outer sides: {outer}.";
    return say.text(pattern, { line, outer: say.list(why.outer) });
  },
});
