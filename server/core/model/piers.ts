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

function placePier(
  p: Placer,
  plan: GroundPlan,
  entry: PierEntry,
  place: GridPlace,
  sticks: readonly Timber[],
): Pier | undefined {
  const lines = placeLines(p.grid, place);
  const diameter = entry.diameter === undefined ? undefined : inches(entry.diameter);
  if (!lines) return p.unknown({ text: place.text, path: place.path }, "place", []);
  if (diameter === undefined || entry.depth === undefined) return undefined;
  const middle = (line: Line, breadth: number): number => middleOf(spanAcross(line, breadth));
  const xOf = (breadth: number): number => lines.x ?? (lines.bent ? middle(lines.bent, breadth) : 0);
  const timber = over(sticks, place, xOf(diameter), middle(lines.wall, 0));
  const solid = timber && solidOf(timber);
  const upright = timber !== undefined && Math.abs(timber.axis[2]) > 0.5;
  // under a lying timber the pier stands where a post of the timber's own breadth would
  const x = solid && upright ? (solid.low[0] + solid.high[0]) / 2 : xOf(timber?.width ?? diameter);
  const y = solid ? (solid.low[1] + solid.high[1]) / 2 : middle(lines.wall, diameter);
  const typed = p.height(entry.top);
  const top = solid ? solid.low[2] - standOffOf(entry) : typed;
  if (top === undefined) return undefined;
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

/** All piers. Ground without heights counts as level at the datum. */
export function placePiers(p: Placer, plan: GroundPlan): Pier[] {
  return p.frame.piers.flatMap((entry) => {
    const sticks = entry.under ? p.sticksNamed(entry.under) : [];
    return placesOf(p, entry).flatMap((place) => {
      // an entry for all posts leaves a place to the entry that names it
      const special = entry.at
        ? undefined
        : p.frame.piers.find(
            (e) =>
              e !== entry && e.under?.text === entry.under?.text && e.at?.some((a) => a.text === place.text),
          );
      const pier = special ? undefined : placePier(p, plan, entry, place, sticks);
      return pier ? [pier] : [];
    });
  });
}
