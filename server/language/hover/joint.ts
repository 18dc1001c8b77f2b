/** A joint under the cursor: how to cut it, wherever it holds. */
import { noteWords, sizeWords } from "../../core/checks/amount-words.ts";
import type { Say } from "../../core/checks/say.ts";
import { groupBy } from "../../core/collect.ts";
import { cutWords } from "../../core/joinery/cut-words.ts";
import type { CutRow, Joint } from "../../core/joinery/joint.ts";
import { jointKindOf } from "../../core/joinery/kinds/index.ts";
import type { Timber } from "../../core/model/model.ts";
import { goesIn } from "./goes-in.ts";
import { escapeMarkdown, table } from "./table.ts";

/** More tables than this are no longer read. */
const MOST_TABLES = 8;

/**
 * The cut sizes of a joint, one table for all places where they are equal.
 * @param joints all places of one entry; not empty
 * @param picture Markdown that stands under the title, where the editor shows pictures
 */
export function jointHover(name: string, joints: readonly Joint[], say: Say, picture?: string): string {
  const [first] = joints;
  if (!first) return "";
  const kinds = [...new Set(joints.map((joint) => say.text(jointKindOf(joint.kind).title)))];
  const assumed = first.assumed ? say.text(", assumed: the file names no joint here") : "";
  const count = say.text(joints.length === 1 ? "1 place" : "{count} places", { count: joints.length });
  const title = `**${escapeMarkdown(name)}** · ${say.list(kinds)}, ${count}${assumed}`;
  const sheets = [...groupBy(joints, (joint) => sizesOf(joint, say)).values()];
  const shown = sheets.slice(0, MOST_TABLES);
  const parts = shown.flatMap((places) => [where(places, sheets.length === 1, say), sheetOf(places, say)]);
  const left = sheets.length - shown.length;
  const more = left > 0 ? [say.text("… and {count} more that differ.", { count: left })] : [];
  return [title, ...(picture === undefined ? [] : [picture]), ...parts, ...more].join("\n\n");
}

/** Equal for places that are cut alike, whatever their timbers are called. */
function sizesOf(joint: Joint, say: Say): string {
  const rows = jointKindOf(joint.kind).cutSheet(joint);
  return [
    joint.kind,
    goesIn(joint, say),
    ...rows.map((row) =>
      [row.on, sizeWords(row, say), cutWords(row, say), noteWords(row.how, say)].join("|"),
    ),
  ].join("\n");
}

function sheetOf(places: readonly Joint[], say: Say): string {
  const [first] = places;
  if (!first) return "";
  const rows = jointKindOf(first.kind)
    .cutSheet(first)
    .map((row) => [
      partOf(places, row, say),
      sizeWords(row, say),
      cutWords(row, say),
      noteWords(row.how, say),
    ]);
  const sheet = table([say.text("on"), say.text("size"), say.text("cut"), say.text("how")], rows);
  const way = say.text("{timber} goes in {way}.", {
    timber: escapeMarkdown(partOf(places, { on: "joined" }, say)),
    way: goesIn(first, say),
  });
  return `${sheet}\n\n${way}`;
}

function partOf(places: readonly Joint[], row: Pick<CutRow, "on">, say: Say): string {
  const members = (timberOf: (joint: Joint) => Timber): string =>
    [...new Set(places.map((joint) => timberOf(joint).member))].join(", ");
  switch (row.on) {
    case "joined":
      return members((joint) => joint.of);
    case "receiving":
      return members((joint) => joint.into);
    case "peg":
      return say.text("pegs");
    case "wedge":
      return say.text("wedge");
    case "screw":
      return say.text("screws");
    case "bolt":
      return say.text("bolts");
  }
}

/** More places than this are counted instead of named. */
const MOST_PLACES = 12;

function where(places: readonly Joint[], all: boolean, say: Say): string {
  if (all && places.length > MOST_PLACES)
    return say.text("The same at all {count} places:", { count: places.length });
  const pattern = all && places.length > 1 ? "The same at {places}:" : "At {places}:";
  return say.text(pattern, { places: escapeMarkdown(placesOf(places, say)) });
}

/** `A1` of `post-head@A1`. */
function placesOf(places: readonly Joint[], say: Say): string {
  const names = places.map((joint) => joint.id.slice(joint.id.indexOf("@") + 1));
  if (names.length <= MOST_PLACES) return say.list(names);
  return say.text("{places} and {count} more", {
    places: names.slice(0, MOST_PLACES - 2).join(", "),
    count: names.length - MOST_PLACES + 2,
  });
}
