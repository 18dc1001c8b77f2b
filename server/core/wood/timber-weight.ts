/** Weight of the timber of a class. */
import type { TimberClass } from "../frame/frame.ts";
import { weight } from "./weight.ts";

/** lb/ft³: as the file says, else as recorded for the wood and its seasoning; undefined when nothing is. */
export function densityOf(timberClass: TimberClass | undefined): number | undefined {
  if (timberClass?.weight !== undefined) return timberClass.weight;
  const species = timberClass?.species?.text;
  return species === undefined ? undefined : weight(species, timberClass?.seasoning ?? "green")?.value;
}
