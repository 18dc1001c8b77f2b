/** Notes of the wind in sentences, for the finding that a note becomes. */
import type { Say } from "../checks/say.ts";
import type { WindNote } from "./wind-cases.ts";

/** What a note means for the reader. */
export function windNoteWords(note: WindNote, say: Say): string {
  switch (note.kind) {
    case "height-to-length":
      return say.text(
        "The roof’s mean height is {ratio} of its length along {along}; the figures for open roofs hold from 0.25 to 1. Wind from there is an estimate.",
        { ratio: say.number(note.ratio, 2), along: note.along === "x" ? "the walls" : "the bents" },
      );
    case "too-steep":
      return say.text(
        "Slope {plane} is at {slope}; the figures for open roofs end at {limit}, whose values stand here. The wind on it is an estimate.",
        { plane: note.plane, slope: say.angle(note.slope), limit: say.angle(note.limit) },
      );
    case "unequal-slopes":
      return say.text(
        "The two slopes differ, which the figures do not cover: each takes the coefficients of its own slope.",
      );
    case "both-rows":
      return say.text(
        "Between the rows of the figure a coefficient changes from lift to pressure, where it must not be interpolated: both rows are checked.",
      );
  }
}
