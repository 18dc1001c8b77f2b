/** Weight of the timber of a class. */
import type { TimberClass } from "../frame/frame.ts";
import { given, type Sourced } from "../sourced.ts";
import { leastWeight, weight } from "./weight.ts";

/** lb/ft³: as the file says, else as recorded for the wood and its seasoning; undefined when nothing is. */
export function timberDensity(timberClass: TimberClass | undefined): Sourced | undefined {
  if (timberClass?.weight !== undefined) return given(timberClass.weight);
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : weight(species, timberClass?.seasoning ?? "green");
}

/**
 * lb/ft³ that are left to hold the frame down against the wind: dry, of a group the lightest species. A weight that the
 * file states holds where the timber is dry already; of green timber it is the green weight, which does not last.
 */
export function leastTimberDensity(timberClass: TimberClass | undefined): Sourced | undefined {
  const known = timberDensity(timberClass);
  const species = timberClass?.species?.text;
  if (!known || species === undefined) return known;
  if (timberClass?.weight !== undefined && timberClass.seasoning === "dry") return known;
  const least = leastWeight(species);
  return least && least.value < known.value ? least : known;
}

/** The number alone of `timberDensity`. */
export function densityOf(timberClass: TimberClass | undefined): number | undefined {
  return timberDensity(timberClass)?.value;
}
