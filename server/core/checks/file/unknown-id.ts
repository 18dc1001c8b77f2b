import { type Frame, isWhole, type Ref, type TimberClass } from "../../frame/frame.ts";
import type { Model } from "../../model/model.ts";
import type { IdSort } from "../../model/problems.ts";
import { nearest } from "../../text/nearest.ts";
import { gradeIds } from "../../wood/design-values.ts";
import { findSpecies, speciesIds } from "../../wood/species.ts";
import { defineCheck, type Found } from "../check.ts";
import type { Say } from "../say.ts";

interface Data {
  readonly path: string;
  readonly text: string;
  readonly sort: IdSort;
  readonly known: readonly string[];
  readonly nearest: string | undefined;
  /** of a species or grade: how many timbers have no strength without it, and the first of them */
  readonly timbers: readonly string[];
  /** of a species: its class states values of its own */
  readonly own: boolean;
  /** of the row under a floor: the floor */
  readonly floor: string | undefined;
}

/** What it should have been, with where it would have to be known. */
const SORTS: Readonly<Record<IdSort, string>> = {
  wall: "a wall of this frame",
  bent: "a bent of this frame",
  place: "a grid place of this frame",
  level: "a level of this file",
  member: "a member of this file",
  stick: "a stick of this frame",
  "timber-class": "a timber class of this file",
  species: "a species that Bentwright knows",
  grade: "a grade of this species",
  joint: "a joint of this file",
  check: "a check",
  reference: "a level, grid line or timber of this file",
};

const LISTED = 8;
/** How many timbers a message names. */
const NAMED = 4;

function found(
  path: string,
  text: string,
  sort: IdSort,
  known: readonly string[],
  { timbers = [], own = false, floor }: Partial<Pick<Data, "timbers" | "own" | "floor">> = {},
): Found<Data> {
  return { path, data: { path, text, sort, known, nearest: nearest(text, known), timbers, own, floor } };
}

/** What is left out: whatever refers to the name, a floor's load, or the strength of timbers of a wood that is not known. */
function consequence({ timbers, floor }: Data, say: Say): string {
  if (floor !== undefined)
    return say.text("so the load of floor {floor} is on no timber and in no check", { floor });
  if (timbers.length === 0) return say.text("so what refers to it is left out");
  const named = timbers.slice(0, NAMED).join(", ");
  return timbers.length <= NAMED
    ? say.text("so the strength of {named} is not checked", { named: say.list(timbers) })
    : say.text("so the strength of {count} timbers ({named} and others) is not checked", {
        count: timbers.length,
        named,
      });
}

function* woods(model: Model): Generator<Found<Data>> {
  for (const c of model.frame.classes) {
    if (!c.species) continue;
    // values that the file states itself make up for the tables
    const own = c.values.size > 0;
    const timbers = own ? [] : model.timbers.filter((t) => t.class === c).map((t) => t.id);
    if (!findSpecies(c.species.text)) {
      yield found(c.species.path, c.species.text, "species", speciesIds(), { timbers, own });
      continue;
    }
    const grades = gradeIds(c.species.text);
    if (c.grade && grades.length > 0 && !grades.some((g) => g === c.grade?.text))
      yield found(c.grade.path, c.grade.text, "grade", grades, { timbers });
  }
  for (const { path, text } of woodsBeside(model.frame))
    if (!findSpecies(text)) yield found(path, text, "species", speciesIds());
}

/** Woods that no timber class names. */
function woodsBeside({ mill, joints }: Frame): readonly Ref[] {
  return [...mill.logs, ...joints.map(({ wedge }) => wedge)].flatMap((one) => one?.species ?? []);
}

/**
 * Names that nothing in space waits for: the frame stands without them, and its forces are told, so they are no problem of
 * its placement.
 */
function* besideTheFrame(model: Model): Generator<Found<Data>> {
  const { frame, members, sticks, byId } = model;
  for (const { name, on } of frame.floors)
    if (on && !members.has(on.text) && !sticks.has(on.text) && mayNot(frame, on.text))
      yield found(on.path, on.text, "member", [...members.keys()], { floor: name });
  for (const { hungOn } of frame.members) {
    if (!hungOn || byId.has(hungOn.text) || !isWhole(frame)) continue;
    const name = hungOn.text.split("@")[0] ?? "";
    // an entry that is not placed has its own finding
    if (!members.has(name) || sticks.has(name))
      yield found(hungOn.path, hungOn.text, "stick", [...byId.keys()]);
  }
}

/** Whether no line that is lost may define a member of that name. */
function mayNot({ lost, unread }: Frame, name: string): boolean {
  return !lost.has("/members") && !unread.has(name);
}

/** Whether a timber class names a wood or a grade that no table has: that has its own finding. */
export function isUnknownWood({ species, grade }: TimberClass): boolean {
  if (!species) return false;
  if (!findSpecies(species.text)) return true;
  const grades = gradeIds(species.text);
  return grade !== undefined && grades.length > 0 && !grades.some((g) => g === grade.text);
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
    yield* besideTheFrame(model);
    yield* woods(model);
  },
  words: (d, say) =>
    d.own
      ? say.text(
          "“{text}” is not {sort}, {consequence}: the values stated here need a species beside them, for its weight and for how it holds fasteners. Name the one of about the same weight; the stated values take the place of its own. Known: {known}.",
          {
            text: d.text,
            consequence: consequence(d, say),
            sort: say.text(SORTS[d.sort]),
            known: `${d.known.slice(0, LISTED).join(", ")} …`,
          },
        )
      : d.nearest === undefined
        ? say.text("“{text}” is not {sort}, {consequence}. Known: {known}.", {
            text: d.text,
            consequence: consequence(d, say),
            sort: say.text(SORTS[d.sort]),
            known:
              d.known.length === 0
                ? "none"
                : d.known.slice(0, LISTED).join(", ") + (d.known.length > LISTED ? " …" : ""),
          })
        : say.text("“{text}” is not {sort}, {consequence}. Did you mean “{nearest}”?", {
            text: d.text,
            consequence: consequence(d, say),
            sort: say.text(SORTS[d.sort]),
            nearest: d.nearest,
          }),
  fixes: (d, say) =>
    d.nearest === undefined
      ? []
      : [
          {
            title: say.text("Change to “{nearest}”", { nearest: d.nearest }),
            edits: [{ kind: isKey(d) ? "rename-key" : "replace", path: d.path, text: d.nearest }],
          },
        ],
});

/** A stick that is named by a key (`measured: {post@A1: …}`): what stands under it is kept. */
function isKey({ path, text, sort }: Data): boolean {
  return sort === "stick" && path.endsWith(`/${text.replaceAll("~", "~0").replaceAll("/", "~1")}`);
}
