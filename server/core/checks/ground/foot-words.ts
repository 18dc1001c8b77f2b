/** What the checks of a post's foot share: where they point, the formula, and what helps. */
import type { FootWay, WayHold } from "../../joinery/foot/foot-hold.ts";
import { LIMIT_WORDS } from "../../joinery/foot/foot-limits.ts";
import type { PostFoot } from "../../joinery/foot/post-foot.ts";
import { square, times } from "../formula-words.ts";
import type { Say } from "../say.ts";

/** The value of the anchor that decides what it holds. */
export function footPath(
  { anchor, row }: PostFoot,
  { limits: [first] }: WayHold,
  way: FootWay,
): { readonly path: string; readonly onKey?: true } {
  const { capacity, strap } = anchor;
  if (first.kind === "stated" && capacity && capacity !== "unread") {
    const key = way === "down" || way === "uplift" ? way : "sideways";
    return { path: `${capacity.path}/${key}` };
  }
  if (first.kind === "end-grain")
    return anchor.plate === undefined ? { path: anchor.path, onKey: true } : { path: `${anchor.path}/plate` };
  if (first.kind.startsWith("strap") && strap && strap !== "unread")
    return { path: `${strap.path}/thickness` };
  return row ? { path: `${row.path}/diameter` } : { path: anchor.path, onKey: true };
}

/** @returns the end of a sentence that tells of a force: `more than the 400 lb that …` */
export function heldWords({ limits: [first] }: WayHold, say: Say): string {
  const held = say.force(first.value.value);
  if (first.kind === "stated")
    return say.text("more than the {held} that the file states for its anchor", { held });
  if (first.value.value <= 0) return nothingWords(first, say);
  return say.text("more than the {held} that its anchor holds that way, limited by {limit}", {
    held,
    limit: say.text(LIMIT_WORDS[first.kind]),
  });
}

function nothingWords({ kind, none }: WayHold["limits"][0], say: Say): string {
  if (kind === "strap-rupture")
    return say.text("and its anchor holds nothing that way: no steel is left beside the holes of its straps");
  if (kind === "withdrawal" || none === "reach")
    return say.text("and its anchor holds nothing that way: its fasteners reach too little wood to count");
  if (none === "place")
    return say.text(
      "and its anchor holds nothing that way: its fasteners stand too near an end, an edge or each other to count",
    );
  if (kind.startsWith("strap"))
    return say.text("and its anchor holds nothing that way: its straps are too thin or too long to count");
  return say.text("and its anchor holds nothing that way: no wood is left for it");
}

/** @returns what to do about what holds least */
export function limitRemedy({ limits: [{ kind, none }] }: WayHold, way: FootWay, say: Say): string {
  if (none === "wood")
    return say.text("Let straps in less deep, take a thinner plate in a kerf, or a larger post.");
  if (none === "place") return say.text("Give them their full distances.");
  if (none === "reach") return say.text("Take longer ones, or bolts through the post.");
  switch (kind) {
    case "stated":
      return say.text("Take an anchor that is rated for more.");
    case "end-grain":
      return say.text("Take a larger plate, or a larger post.");
    case "bolts":
    case "screws":
      if (way === "down")
        return say.text(
          "The file gives its end grain nothing to stand on, so that its bolts carry it: where there is a plate, say so, as “plate: 6 in”.",
        );
      return say.text(
        "Take more or thicker ones, with their full distances, or an anchor whose maker rates it for that.",
      );
    case "withdrawal":
      return say.text("Take longer or more screws, or bolts through the post.");
    case "row-tear-out":
    case "net-section":
      return say.text("Set the bolts higher, or take a larger post.");
    case "split":
      return say.text("Take a larger post, or a base that holds the foot of the post between its sides.");
    case "strap-yield":
    case "strap-rupture":
    case "strap-bending":
    case "strap-shear":
      return say.text("Take thicker or wider steel, or an anchor whose maker rates it for that.");
    case "strap-column":
      return say.text(
        "Take thicker or wider steel or a smaller stand-off, or an anchor whose maker rates it for that.",
      );
  }
}

/** @returns the force against what holds it, with the factors of bolts and end grain */
export function limitFormula(force: number, { limits: [first] }: WayHold, say: Say): string {
  const values = { force: say.force(force), held: say.force(first.value.value) };
  const { each, times: count } = first;
  if (!each || count === undefined || !(first.value.value > 0)) return say.text("{force} > {held}", values);
  const factors = times(each.factors, say);
  return first.kind === "end-grain"
    ? say.text("{force} > {stress}{factors} × {area} = {held}", {
        ...values,
        stress: say.stress(each.reference.value),
        factors,
        area: square(count, say),
      })
    : say.text("{force} > {count} × {each}{factors} = {held}", {
        ...values,
        count,
        each: say.force(each.reference.value),
        factors,
      });
}
