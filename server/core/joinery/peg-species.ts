/** The wood of a frame's pegs. */
import type { Frame } from "../frame/frame.ts";

/** Wood of the pegs where a file names none: white oak (common practice, no source). */
const USUAL_PEG = "white-oak";

/** Species of the frame's pegs: the class `pegs`, else white oak. */
export function pegSpecies(frame: Frame): string {
  return frame.classes.find((c) => c.name === "pegs")?.species?.text ?? USUAL_PEG;
}
