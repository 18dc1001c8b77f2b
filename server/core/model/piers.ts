/** Piers: one under each post or place of their entry, from the tube's top down to the footing's underside. */
import type { GridPlace, PierEntry } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { middleOf } from "./box.ts";
import { type Line, placeLines, spanAcross } from "./grid.ts";
import type { GroundPlan } from "./ground.ts";
import type { Pier, Timber } from "./model.ts";
import { standOffOf } from "./place-upright.ts";
import type { Placer } from "./placer.ts";
import { solidOf } from "./solid.ts";

/** Heights within this are the same, inches. */
const SAME = 1 / 16;

function placesOf(p: Placer, entry: PierEntry): readonly GridPlace[] {
  if (entry.at) return entry.at;
  if (!entry.under) return [];
  const { text } = entry.under;
  const [name = ""] = text.split("@");
  return p.entriesNamed(name).flatMap((member) => {
    // a lying timber has no places of its own to set piers under
    if (!member.at) return p.missing(entry.path, entry.name, ["at"]) ?? [];
    return member.at.filter((a) =>
      text.includes("@")
        ? text === `${name}@${a.text}`
        : member.name === name || !hasOwnPier(p, member.name, a),
    );
  });
}

/** A post that an entry names needs none of the entry for its kind. */
function hasOwnPier(p: Placer, member: string, place: GridPlace): boolean {
  return p.frame.piers.some(
    ({ under, at }) =>
      (under?.text === member || under?.text === `${member}@${place.text}`) &&
      (at === undefined || at.some((a) => a.text === place.text)),
  );
}

/** The timber of the entry that stands or lies over a place. */
function over(sticks: readonly Timber[], place: GridPlace, x: number, y: number): Timber | undefined {
  const byPlace = sticks.find(
    (s) => s.kind === "post" && s.id.endsWith(`@${place.text.replace(/\s+/g, "-")}`),
  );
  return (
    byPlace ??
    sticks.find((s) => {
      const { low, high } = solidOf(s);
      return x > low[0] - 1 && x < high[0] + 1 && y > low[1] - 1 && y < high[1] + 1;
    })
  );
}

/** Lowest and highest ground around a round or square pier: at its center and at four points of its edge. */
function groundAround(
  plan: GroundPlan,
  place: string,
  x: number,
  y: number,
  half: number,
): readonly [number, number] | undefined {
  const center = plan.ground(x, y);
  const own = plan.atPlace(place);
  const offset = own !== undefined && center !== undefined ? own - center : 0;
  const heights = [
    [0, 0],
    [half, 0],
    [-half, 0],
    [0, half],
    [0, -half],
  ].flatMap(([dx = 0, dy = 0]) => {
    const z = plan.ground(x + dx, y + dy);
    return z === undefined ? [] : [z + offset];
  });
  if (heights.length === 0) return own === undefined ? undefined : [own, own];
  return [Math.min(...heights), Math.max(...heights)];
}

/** The timber whose underside lies on a pier that names none, at its typed top and the anchor's stand-off, both met. */
function onTop(
  p: Placer,
  entry: PierEntry,
  place: GridPlace,
  x: number,
  y: number,
  timbers: readonly Timber[],
): Timber | undefined {
  const top = p.height(entry.top);
  if (top === undefined) return undefined;
  const off = standOffOf(entry);
  const near = timbers.filter((t) => Math.abs(solidOf(t).low[2] - top - off) <= off + SAME);
  return over(near, place, x, y);
}

/**
 * The typed top under a lying timber that no anchor holds at a distance: it may lie on the concrete itself, or up to the
 * usual stand-off over it.
 */
function lainOn(
  entry: PierEntry,
  underside: number,
  typed: number | undefined,
  upright: boolean,
): number | undefined {
  if (upright || typed === undefined || entry.anchor?.standOff !== undefined) return undefined;
  const gap = underside - typed;
  return gap >= -SAME && gap <= standOffOf(entry) + SAME ? typed : undefined;
}

function placePier(
  p: Placer,
  plan: GroundPlan,
  entry: PierEntry,
  place: GridPlace,
  sticks: readonly Timber[],
  timbers: readonly Timber[],
): Pier | undefined {
  const lines = placeLines(p.grid, place);
  const diameter = entry.diameter === undefined ? undefined : inches(entry.diameter);
  if (!lines) return p.unknownPlace(place);
  if (diameter === undefined || entry.depth === undefined) return undefined;
  const middle = (line: Line, breadth: number): number => middleOf(spanAcross(line, breadth));
  const xOf = (breadth: number): number => lines.x ?? (lines.bent ? middle(lines.bent, breadth) : 0);
  const [plumbX, plumbY] = [xOf(diameter), middle(lines.wall, 0)];
  const timber = entry.under
    ? over(sticks, place, plumbX, plumbY)
    : onTop(p, entry, place, plumbX, plumbY, timbers);
  const solid = timber && solidOf(timber);
  const upright = timber !== undefined && Math.abs(timber.axis[2]) > 0.5;
  // under a lying timber the pier stands where a post of the timber's own breadth would
  const x = solid && upright ? (solid.low[0] + solid.high[0]) / 2 : xOf(timber?.width ?? diameter);
  const y = solid ? (solid.low[1] + solid.high[1]) / 2 : middle(lines.wall, diameter);
  const typed = p.height(entry.top);
  const top = solid
    ? (lainOn(entry, solid.low[2], typed, upright) ?? solid.low[2] - standOffOf(entry))
    : typed;
  if (top === undefined) return undefined;
  // under an upright its foot is held against the typed top
  if (solid && !upright && typed !== undefined && Math.abs(typed - top) > SAME)
    p.report({ kind: "derived-differs", path: `${entry.path}/top`, what: "pier-top", typed, derived: top });
  const [groundLow, groundHigh] = groundAround(plan, place.text, x, y, diameter / 2) ?? [0, 0];
  const tubeBottom = groundLow - inches(entry.depth);
  const footing =
    entry.footing?.diameter !== undefined && entry.footing.thickness !== undefined
      ? { diameter: inches(entry.footing.diameter), thickness: inches(entry.footing.thickness) }
      : undefined;
  return {
    id: `${entry.name}@${place.text.replace(/\s+/g, "-")}`,
    entry,
    place,
    timber,
    top: [x, y, top],
    diameter,
    groundLow,
    groundHigh,
    tubeBottom,
    bottom: tubeBottom - (footing?.thickness ?? 0),
    footing,
  };
}

/**
 * A place of an entry where no timber is that it could carry, so that the pier would stand for nothing, or not at all. An
 * entry under several timbers is one for each of them: one over the place is enough.
 */
function reportBare(p: Placer, places: readonly Placed[]): void {
  const key = ({ entry, place }: Placed): string => `${entry.path} ${place.text}`;
  const carrying = new Set(places.filter(({ pier }) => pier?.timber).map(key));
  const told = new Set<string>();
  for (const one of places) {
    const { entry, place, sticks, pier } = one;
    if (carrying.has(key(one)) || told.has(key(one))) continue;
    if (entry.diameter === undefined || entry.depth === undefined || !placeLines(p.grid, place)) continue;
    told.add(key(one));
    const name = `${entry.name}@${place.text.replace(/\s+/g, "-")}`;
    if (!entry.under && !pier) p.missing(entry.path, name, ["under", "top"]);
    // what could not be placed has a finding of its own
    else if (entry.under && sticks.length > 0) p.missing(entry.path, name, [`${entry.under.text} here`]);
  }
}

interface Placed {
  readonly entry: PierEntry;
  readonly place: GridPlace;
  readonly sticks: readonly Timber[];
  readonly pier: Pier | undefined;
}

/**
 * All piers. Ground without heights counts as level at the datum.
 * @param timbers every timber of the frame, of which one may lie on a pier that names none
 */
export function placePiers(p: Placer, plan: GroundPlan, timbers: readonly Timber[]): Pier[] {
  const places = p.frame.piers.flatMap((entry): Placed[] => {
    const sticks = entry.under ? p.sticksNamed(entry.under) : [];
    return placesOf(p, entry).flatMap((place) => {
      // an entry for all posts leaves a place to the entry that names it
      const special = entry.at
        ? undefined
        : p.frame.piers.find(
            (e) =>
              e !== entry && e.under?.text === entry.under?.text && e.at?.some((a) => a.text === place.text),
          );
      return special
        ? []
        : [{ entry, place, sticks, pier: placePier(p, plan, entry, place, sticks, timbers) }];
    });
  });
  reportBare(p, places);
  return places.flatMap(({ pier }) => pier ?? []);
}
