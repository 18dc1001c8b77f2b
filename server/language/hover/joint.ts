/** A joint under the cursor: how to cut it, wherever it holds. */
import type { Say } from "../../core/checks/say.ts";
import { groupBy } from "../../core/collect.ts";
import type { CutRow, Joint } from "../../core/joinery/joint.ts";
import { jointKindOf } from "../../core/joinery/kinds/index.ts";
import { escapeMarkdown, table } from "./table.ts";

/** More tables than this are no longer read. */
const MOST_TABLES = 8;

/**
 * The cut sizes of a joint, one table for all places where they are equal.
 * @param joints all places of one entry; not empty
 */
export function jointHover(name: string, joints: readonly Joint[], say: Say): string {
  const [first] = joints;
  if (!first) return "";
  const kinds = [...new Set(joints.map((joint) => jointKindOf(joint.kind).title))];
  const assumed = first.assumed ? say.text(", assumed: the file names no joint here") : "";
  const count = say.text(joints.length === 1 ? "1 place" : "{count} places", { count: joints.length });
  const title = `**${escapeMarkdown(name)}** · ${say.list(kinds)}, ${count}${assumed}`;
  const sheets = groupBy(
    joints.map((joint) => ({ joint, sheet: sheetOf(joint, say) })),
    ({ sheet }) => sheet,
  );
  const shown = [...sheets].slice(0, MOST_TABLES);
  const parts = shown.flatMap(([sheet, places]) => [
    sheets.size === 1 ? sameAt(places, say) : at(places, say),
    sheet,
  ]);
  const left = sheets.size - shown.length;
  const more = left > 0 ? [say.text("… and {count} more that differ.", { count: left })] : [];
  return [title, ...parts, ...more].join("\n\n");
}

function sheetOf(joint: Joint, say: Say): string {
  const rows = jointKindOf(joint.kind)
    .cutSheet(joint)
    .map((row) => [partOf(joint, row, say), say.text(row.label), sizeText(row, say), say.text(row.how)]);
  return table([say.text("on"), say.text("size"), say.text("cut"), say.text("how")], rows);
}

function partOf(joint: Joint, row: CutRow, say: Say): string {
  switch (row.on) {
    case "joined":
      return joint.of.member;
    case "receiving":
      return joint.into.member;
    case "peg":
      return say.text("pegs");
    case "wedge":
      return say.text("wedge");
  }
}

function sizeText(row: CutRow, say: Say): string {
  switch (row.unit) {
    case "in":
      return say.length(row.value);
    case "deg":
      return say.angle(row.value);
    case "count":
      return say.number(row.value, 0);
  }
}

interface Placed {
  readonly joint: Joint;
}

function sameAt(places: readonly Placed[], say: Say): string {
  const [only] = places;
  if (only && places.length === 1) return at(places, say);
  return say.text("The same at {places}:", { places: placesOf(places, say) });
}

function at(places: readonly Placed[], say: Say): string {
  return say.text("At {places}:", { places: placesOf(places, say) });
}

/** `A1` of `post-head@A1`. */
function placesOf(places: readonly Placed[], say: Say): string {
  return escapeMarkdown(say.list(places.map(({ joint }) => joint.id.slice(joint.id.indexOf("@") + 1))));
}
