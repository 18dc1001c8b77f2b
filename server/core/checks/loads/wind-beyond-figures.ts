import type { Wind, WindNote } from "../../loads/wind-cases.ts";
import { windNoteWords } from "../../loads/wind-words.ts";
import { defineCheck, type Level } from "../check.ts";

interface Data {
  readonly note: WindNote;
}

/** What the figures do not cover at all; the rest is their own rule, or a small building’s usual shape. */
const LEVEL: Readonly<Record<WindNote["kind"], Level>> = {
  "too-steep": "warning",
  "unequal-slopes": "note",
  "height-to-length": "note",
  "both-rows": "note",
};

/** One for each kind: the worst, where there are several. */
function worst({ notes }: Wind): readonly WindNote[] {
  const off = (note: WindNote): number => {
    if (note.kind === "too-steep") return note.slope;
    return note.kind === "height-to-length" ? Math.abs(Math.log(note.ratio / 0.5)) : 0;
  };
  const kinds = new Map<WindNote["kind"], WindNote>();
  for (const note of notes) {
    const known = kinds.get(note.kind);
    if (!known || off(note) > off(known)) kinds.set(note.kind, note);
  }
  return [...kinds.values()];
}

export const windBeyondFigures = defineCheck<"results", Data>({
  meta: {
    id: "wind-beyond-figures",
    title: "Wind where the standard's figures end",
    level: "note",
    area: "loads",
    source: {
      text: "ASCE 7-16 and 7-22 Figures 27.3-4 to 27.3-7: 0.25 ≤ h/L ≤ 1, slopes up to 45°, like signs only between rows",
      status: "memory",
    },
    explanation: {
      what: "The roof is steeper, lower, taller or less even than the load standard's figures of open roofs know, or lies between two rows of them that must not be mixed.",
      why: "Wind from there is an estimate: the nearest values stand for it, and both rows where two are possible.",
      remedy:
        "Keep to a shape that the figures cover, or have the wind judged by an engineer. A note about two rows asks for nothing: both are checked.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame, model }) {
    const wind = frame?.solution.loads.wind;
    if (!wind) return;
    const { roof, site } = model.frame;
    for (const note of worst(wind))
      yield {
        path: roof?.path ?? site.path,
        onKey: true,
        apart: note.kind,
        level: LEVEL[note.kind],
        data: { note },
      };
  },
  words: (d, say) => windNoteWords(d.note, say),
});
