/**
 * Wind cases and their notes in sentences, for hovers, reports and the finding that a note becomes.
 */
import type { Say } from "../checks/say.ts";
import type { WindCase, WindDirection, WindNote } from "./wind-cases.ts";

const DIRECTION: Readonly<Record<WindDirection, string>> = {
  "+x": "along the walls, from the first bent",
  "-x": "along the walls, toward the first bent",
  "+y": "across the bents, from the first wall",
  "-y": "across the bents, toward the first wall",
};

/** `Wind across the bents, from the first wall: presses on slope A with 22.1 psf, …; in all 840 lb sideways, 120 lb up.` */
export function windWords(wind: WindCase, say: Say): string {
  const planes = [...new Set(wind.roof.map((strip) => strip.plane))];
  const parts = planes.map((plane) => {
    const own = wind.roof.filter((strip) => strip.plane === plane).map((strip) => strip.psf);
    const [least, most] = [Math.min(...own), Math.max(...own)];
    if (least >= 0) {
      return say.text("presses on slope {plane} with up to {most}", { plane, most: say.pressure(most) });
    }
    const lift = say.text("lifts slope {plane} with up to {most}", { plane, most: say.pressure(-least) });
    return most <= 0
      ? lift
      : say.text("{lift} and presses with up to {most}", { lift, most: say.pressure(most) });
  });
  const { y, up } = wind.resultant;
  return say.text(
    "Wind {direction}: {parts}; in all {sideways} sideways across the bents and {amount} {way}.",
    {
      direction: DIRECTION[wind.toward],
      parts: say.list(parts),
      sideways: say.force(Math.abs(y)),
      amount: say.force(Math.abs(up)),
      way: up > 0 ? "up" : "down",
    },
  );
}

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
