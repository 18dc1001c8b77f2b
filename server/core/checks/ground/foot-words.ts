/** What the checks of a post's foot share: where they point, the formula, and what helps. */
import { type FootWay, LIMIT_WORDS, type LimitKind, type WayHold } from "../../joinery/foot/foot-hold.ts";
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
  if (first.value.value <= 0)
    return say.text(
      "and its anchor holds nothing that way: its fasteners stand too near an end, an edge or each other, or reach too little wood, to count",
    );
  return say.text("more than the {held} that its anchor holds that way, limited by {limit}", {
    held,
    limit: say.text(LIMIT_WORDS[first.kind]),
  });
}

/** @returns what to do about what holds least */
export function limitRemedy(kind: LimitKind, say: Say): string {
  switch (kind) {
    case "stated":
      return say.text("Take an anchor that is rated for more.");
    case "end-grain":
      return say.text("Take a larger plate, or a larger post.");
    case "bolts":
    case "screws":
      return say.text(
        "Take more or thicker ones, with their full distances, or an anchor whose maker rates it for that.",
      );
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
