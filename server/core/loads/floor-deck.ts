/** What of a floor lies on its timbers. */
import type { Floor } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { USUAL_THICKNESS } from "./dead.ts";

/**
 * The boards or panels of a floor, thickness in in. A floor that names neither deck nor weight lies on usual boards; one
 * that names a weight alone may lie on anything.
 * @returns undefined where nothing tells what it lies on
 */
export function floorDeck({
  deck,
  dead,
}: Pick<Floor, "deck" | "dead">):
  | { readonly kind: "boards" | "panels"; readonly thickness: number }
  | undefined {
  const kind = deck ? deck.kind : dead === undefined ? "boards" : undefined;
  if (kind === undefined) return undefined;
  return { kind, thickness: deck?.thickness === undefined ? USUAL_THICKNESS[kind] : inches(deck.thickness) };
}
