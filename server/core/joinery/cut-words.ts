/** A cut size as the reader reads it. */
import type { Say } from "../checks/say.ts";
import type { CutRow } from "./joint.ts";

/** @returns the size of a line of a cut sheet, in the units of the file */
export function cutWords(row: CutRow, say: Say): string {
  switch (row.unit) {
    case "in":
      return say.length(row.value);
    case "deg":
      return say.angle(row.value);
    case "count":
      return say.number(row.value, 0);
  }
}
