/** A timber under the cursor: how long, how heavy, how much wood, and why it stands where it does. */
import type { Say } from "../../core/checks/say.ts";
import { groupBy } from "../../core/collect.ts";
import type { Section, TimberClass } from "../../core/frame/frame.ts";
import type { Joint } from "../../core/joinery/joint.ts";
import { jointKindOf } from "../../core/joinery/kinds/index.ts";
import type { Model, PlacementRule, Timber } from "../../core/model/model.ts";
import { inches } from "../../core/quantity/length.ts";
import { boardFeet, nominalOf } from "../../core/shop/board-feet.ts";
import type { ValueStatus } from "../../core/sourced.ts";
import { findSpecies } from "../../core/wood/species.ts";
import { weight } from "../../core/wood/weight.ts";
import { referenceFaces } from "./reference-faces.ts";
import { densityText } from "./species.ts";
import { STATUS_WORDS } from "./status.ts";
import { escapeMarkdown, table } from "./table.ts";

/** The placement rules of the manual, in words. */
const RULES: Readonly<Record<PlacementRule, string>> = {
  "post-on-grid":
    "Stands at its grid places. Outer grid lines are the outside faces of the posts, inner ones their centers.",
  "along-wall":
    "Runs along its walls. In an outer wall its outside face lies on the grid line, in an inner one its center.",
  "along-bent":
    "Lies in its bents, from the one timber or wall to the other. In an end bent its outside face lies on the grid line, in an inner one its center.",
  "between-timbers": "Runs from the near face of the one timber to the near face of the other.",
  series: "Stands in a row between two timbers, divided evenly; the spacing is the most allowed.",
  "brace-in-corner":
    "Stands in every corner of its two timbers where it fits. Each leg is measured from the inner corner of the housed faces to the far end of the brace’s bearing.",
  "king-post-under-ridge": "Stands centered under the ridge, on the timber that it comes from.",
  "ridge-midway":
    "Lies midway between the plates’ outside faces; its top edges touch the tops of the rafters.",
  "purlins-up-slope":
    "Lies on the rafters, square to the slope. Its row is divided evenly from the plate’s outside face up to the ridge; the spacing is the most allowed.",
  "roof-rafter":
    "Follows the roof plane, which rises from the plate’s outside face; the overhang is level from there to the tip.",
  "free-ends": "Runs between the two points that its ends name.",
};

const SLOPING: ReadonlySet<Timber["kind"]> = new Set(["rafter", "brace", "strut"]);

const POUNDS_PER_CUBIC_FOOT = 12 ** 3;

/**
 * Length to cut, wood and weight of the sticks of an entry, equal ones together, with the rule that placed them.
 * @param sticks not empty
 */
export function timberHover(name: string, sticks: readonly Timber[], model: Model, say: Say): string {
  const [first] = sticks;
  if (!first) return "";
  const measured = sticks.map((stick) => ({ stick, size: measure(stick, model) }));
  const rows = [...groupBy(measured, ({ size }) => keyOf(size, say)).values()].flatMap((group) => {
    const [one] = group;
    return one ? [rowOf(group, one.size, sticks.length, say)] : [];
  });
  const columns = [
    say.text("sticks"),
    say.text("length to cut"),
    // a sloping timber has no shoulders square to it: what is measured is its center line
    say.text(SLOPING.has(first.kind) ? "along the center line" : "without tenons"),
    say.text(say.metric ? "cubic metres" : "board feet"),
    ...weightNames(first.class, say),
  ];
  const parts = [
    title(name, sticks, say),
    table(columns, rows),
    ...totals(measured, say),
    `${say.text(scribed(sticks, model) ? "Length to cut runs from tip to tip, with tenons and what is left long to scribe." : "Length to cut runs from tip to tip, tenons included.")} ${weightWords(first.class, say)}`.trim(),
    say.text(RULES[first.rule]),
    referenceFaces(sticks, model, say),
    ...jointWords(sticks, model, say),
  ];
  return parts.join("\n\n");
}

interface Size {
  readonly length: number;
  readonly span: number;
  readonly boardFeet: number;
  /** pounds, by the seasonings that `seasoningsOf` lists */
  readonly weights: readonly (number | undefined)[];
}

function measure(stick: Timber, model: Model): Size {
  const { rafters } = model.frame.roof ?? {};
  const { section } = (stick.path === rafters?.path ? rafters : model.members.get(stick.member)) ?? {};
  const [wide, deep] = nominalSection(stick, section);
  const cubicFeet = (stick.width * stick.depth * stick.length) / POUNDS_PER_CUBIC_FOOT;
  return {
    length: stick.length,
    span: stick.span,
    boardFeet: boardFeet(wide, deep, stick.length),
    weights: seasoningsOf(stick.class).map((seasoning) => {
      const found = densityOf(stick.class, seasoning);
      return found && found.value * cubicFeet;
    }),
  };
}

/** Wood is sold by nominal size: as written for planed timber, the next whole inch of a dressed size. */
function nominalSection(stick: Timber, section: Section | undefined): readonly [number, number] {
  if (section?.nominal) return [nominalOf(stick.width), nominalOf(stick.depth)];
  if (section && stick.class?.surface === "planed") return [inches(section.width), inches(section.depth)];
  return [stick.width, stick.depth];
}

type Seasoning = TimberClass["seasoning"];

/** 144 in³ in m³, exact (1 in = 25.4 mm) */
const CUBIC_METRES_PER_BOARD_FOOT = 0.002359737216;

function woodText(feet: number, say: Say): string {
  return say.metric ? say.number(feet * CUBIC_METRES_PER_BOARD_FOOT, 3) : say.number(feet, 1);
}

/** A green timber is lifted green and carried dry. */
function seasoningsOf(timberClass: TimberClass | undefined): readonly Seasoning[] {
  if (!timberClass) return [];
  if (timberClass.weight !== undefined) return [timberClass.seasoning];
  return timberClass.seasoning === "green" ? ["green", "dry"] : ["dry"];
}

interface Density {
  readonly value: number;
  readonly status: ValueStatus;
  readonly source: string;
}

function densityOf(timberClass: TimberClass | undefined, seasoning: Seasoning): Density | undefined {
  if (timberClass?.weight !== undefined)
    return {
      value: timberClass.weight,
      status: "given",
      source: timberClass.because ?? "stated in the file",
    };
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : weight(species, seasoning);
}

function weightNames(timberClass: TimberClass | undefined, say: Say): string[] {
  return seasoningsOf(timberClass).map((seasoning) =>
    say.text(seasoning === "green" ? "weight green" : "weight dry"),
  );
}

/** How well the weight is known. */
function weightWords(timberClass: TimberClass | undefined, say: Say): string {
  const known = seasoningsOf(timberClass).flatMap((seasoning) => {
    const density = densityOf(timberClass, seasoning);
    if (!density) return [];
    const values = {
      density: densityText(density.value, say),
      status: say.text(STATUS_WORDS[density.status]),
    };
    return [
      say.text(seasoning === "green" ? "{density} green ({status})" : "{density} dry ({status})", values),
    ];
  });
  if (known.length === 0) return say.text("No weight is recorded for this wood.");
  return say.text("Weights are before joints are cut, from {densities}.", { densities: say.list(known) });
}

function keyOf(size: Size, say: Say): string {
  return [
    say.length(size.length),
    say.length(size.span),
    ...size.weights.map((pounds) => (pounds === undefined ? "" : say.weight(pounds))),
  ].join("|");
}

function rowOf(group: readonly { readonly stick: Timber }[], size: Size, of: number, say: Say): string[] {
  const places = group.map(({ stick }) => stick.id.slice(stick.id.indexOf("@") + 1));
  const all = group.length === of && of > 6 ? say.text("all {count}", { count: of }) : shortened(places, say);
  return [
    all,
    say.lengthBoth(size.length),
    say.length(size.span),
    woodText(size.boardFeet, say),
    ...size.weights.map((pounds) => (pounds === undefined ? "?" : say.weight(pounds))),
  ];
}

/** More places than this in one cell are counted instead. */
const MOST_PLACES = 8;

function shortened(places: readonly string[], say: Say): string {
  if (places.length <= MOST_PLACES) return places.join(", ");
  const shown = places.slice(0, MOST_PLACES - 1).join(", ");
  return say.text("{places} and {count} more", { places: shown, count: places.length - MOST_PLACES + 1 });
}

function title(name: string, sticks: readonly Timber[], say: Say): string {
  const [first] = sticks;
  if (!first) return "";
  const sections = [...new Set(sticks.map((stick) => sectionText(stick, say)))];
  const count = sticks.length === 1 ? "" : say.text(", {count} sticks", { count: sticks.length });
  const wood = first.class ? `, ${classText(first.class, say)}` : "";
  return `**${escapeMarkdown(name)}** · ${first.kind}${count}, ${sections.join(", ")}${wood}`;
}

function sectionText(stick: Timber, say: Say): string {
  return say.text("{width} × {depth}", { width: say.length(stick.width), depth: say.length(stick.depth) });
}

function classText(timberClass: TimberClass, say: Say): string {
  const species = timberClass.species?.text;
  const wood = species === undefined ? undefined : (findSpecies(species)?.name ?? species);
  const words = [wood, timberClass.grade?.text, say.text(timberClass.seasoning)];
  return escapeMarkdown(words.filter((word) => word !== undefined).join(", "));
}

function totals(measured: readonly { readonly stick: Timber; readonly size: Size }[], say: Say): string[] {
  const [first] = measured;
  if (!first || measured.length < 2) return [];
  const [seasoning] = seasoningsOf(first.stick.class);
  const feet = measured.reduce((sum, { size }) => sum + size.boardFeet, 0);
  const heaviest = measured.reduce((sum, { size }) => sum + (size.weights[0] ?? Number.NaN), 0);
  const wood = say.text(say.metric ? "{wood} m³" : "{wood} board feet", { wood: woodText(feet, say) });
  return [
    Number.isNaN(heaviest)
      ? say.text("Together {wood}.", { wood })
      : say.text(
          seasoning === "green" ? "Together {wood}, {weight} green." : "Together {wood}, {weight} dry.",
          {
            wood,
            weight: say.weight(heaviest),
          },
        ),
  ];
}

/** Whether an end is left long, to be marked in its place. */
function scribed(sticks: readonly Timber[], model: Model): boolean {
  const ids = new Set(sticks.map(({ id }) => id));
  return model.joints.some((joint) => joint.scribe > 0 && ids.has(joint.of.id));
}

/** Which joints these sticks are cut into; what the file does not name is said to be assumed. */
function jointWords(sticks: readonly Timber[], model: Model, say: Say): string[] {
  const ids = new Set(sticks.map(({ id }) => id));
  const own = model.joints.filter((joint) => ids.has(joint.of.id) || ids.has(joint.into.id));
  const names = groupBy(own, (joint) => joint.id.slice(0, joint.id.indexOf("@")));
  const words = [...names].flatMap(([name, [joint]]) => (joint ? [jointText(name, joint, say)] : []));
  return words.length === 0 ? [] : [say.text("Joints: {joints}.", { joints: say.list(words) })];
}

function jointText(name: string, joint: Joint, say: Say): string {
  const kind = say.text(jointKindOf(joint.kind).title).toLowerCase();
  const pattern = joint.assumed ? "{name} ({kind}, assumed)" : "{name} ({kind})";
  return say.text(pattern, { name: escapeMarkdown(name), kind });
}
