import type { Model } from "../../model/model.ts";
import type { IdSort } from "../../model/problems.ts";
import { nearest } from "../../text/nearest.ts";
import { gradeIds } from "../../wood/design-values.ts";
import { findSpecies, speciesIds } from "../../wood/species.ts";
import { defineCheck, type Found } from "../check.ts";

interface Data {
  readonly text: string;
  readonly sort: IdSort;
  readonly known: readonly string[];
  readonly nearest: string | undefined;
}

const SORTS: Readonly<Record<IdSort, string>> = {
  wall: "a wall",
  bent: "a bent",
  place: "a grid place",
  level: "a level",
  member: "a member",
  stick: "a stick",
  "timber-class": "a timber class",
  species: "a species",
  grade: "a grade of this species",
  joint: "a joint",
  check: "a check",
  reference: "a level, grid line or timber",
};

const LISTED = 8;

function found(path: string, text: string, sort: IdSort, known: readonly string[]): Found<Data> {
  return { path, data: { text, sort, known, nearest: nearest(text, known) } };
}

function* woods(model: Model): Generator<Found<Data>> {
  for (const c of model.frame.classes) {
    if (!c.species) continue;
    if (!findSpecies(c.species.text)) {
      yield found(c.species.path, c.species.text, "species", speciesIds());
      continue;
    }
    const grades = gradeIds(c.species.text);
    if (c.grade && grades.length > 0 && !grades.some((g) => g === c.grade?.text))
      yield found(c.grade.path, c.grade.text, "grade", grades);
  }
  for (const log of model.frame.mill.logs)
    if (log.species && !findSpecies(log.species.text))
      yield found(log.species.path, log.species.text, "species", speciesIds());
}

export const unknownId = defineCheck<"model", Data>({
  meta: {
    id: "unknown-id",
    title: "A name that nothing in the file answers to",
    level: "error",
    area: "file",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "A wall, bent, level, member, stick, timber class, species or grade is named that does not exist.",
      why: "What refers to it cannot be placed or checked.",
      remedy: "Correct the spelling, or define the name. The message names the nearest one.",
    },
  },
  input: "model",
  *find(model) {
    for (const p of model.problems) if (p.kind === "unknown-id") yield found(p.path, p.text, p.sort, p.known);
    yield* woods(model);
  },
  words: (d, say) =>
    d.nearest === undefined
      ? say.text("“{text}” is not {sort} of this file, so what refers to it is left out. Known: {known}.", {
          text: d.text,
          sort: SORTS[d.sort],
          known:
            d.known.length === 0
              ? "none"
              : d.known.slice(0, LISTED).join(", ") + (d.known.length > LISTED ? " …" : ""),
        })
      : say.text(
          "“{text}” is not {sort} of this file, so what refers to it is left out. Did you mean “{nearest}”?",
          {
            text: d.text,
            sort: SORTS[d.sort],
            nearest: d.nearest,
          },
        ),
  fixes: (d, say, model) => {
    const at = [...model.problems].find((p) => p.kind === "unknown-id" && p.text === d.text);
    const path = at?.path ?? pathOfWood(model, d.text);
    return d.nearest === undefined || path === undefined
      ? []
      : [
          {
            title: say.text("Change to “{nearest}”", { nearest: d.nearest }),
            edits: [{ kind: "replace", path, text: d.nearest }],
          },
        ];
  },
});

function pathOfWood(model: Model, text: string): string | undefined {
  const refs = [
    ...model.frame.classes.flatMap((c) => [c.species, c.grade]),
    ...model.frame.mill.logs.map((l) => l.species),
  ];
  return refs.find((r) => r?.text === text)?.path;
}
