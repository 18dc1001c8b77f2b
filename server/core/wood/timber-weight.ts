/** Weight of the timber of a class. */
import type { TimberClass } from "../frame/frame.ts";
import { given, type Sourced } from "../sourced.ts";
import { weight } from "./weight.ts";

/** lb/ft³: as the file says, else as recorded for the wood and its seasoning; undefined when nothing is. */
export function timberDensity(timberClass: TimberClass | undefined): Sourced | undefined {
  if (timberClass?.weight !== undefined) return given(timberClass.weight);
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : weight(species, timberClass?.seasoning ?? "green");
}

/** The number alone of `timberDensity`. */
export function densityOf(timberClass: TimberClass | undefined): number | undefined {
  return timberDensity(timberClass)?.value;
}
