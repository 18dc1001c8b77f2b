import type { Joint } from "../../joinery/joint.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  /** where the file gives it */
  readonly path: string | undefined;
  readonly joint: string;
  /** rise for each unit of length */
  readonly slope: number;
  readonly limit: number;
  readonly wrong: "steep" | "flat";
  /** two that slide on each other, as in a scarf */
  readonly folding: boolean;
}

/** Slopes between which wedges are cut; compared as rise and run. */
const STEEPEST = 1 / 6;
const FLATTEST = 1 / 20;

const USUAL = "1:10";

const slopeOf = ({ sizes: { wedge, splay } }: Joint): number | undefined => wedge?.slope ?? splay?.wedgeSlope;

export const wedgeSlope = defineCheck<"model", Data>({
  meta: {
    id: "wedge-slope",
    title: "A wedge too steep to stay or too flat to tighten",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: wedges are cut at 1 in 8 to 1 in 12, none steeper than 1 in 6 or flatter than 1 in 20",
      status: "common-practice",
    },
    explanation: {
      what: "The slope of a wedge is steeper than 1 in 6, or, as a note, flatter than 1 in 20.",
      why: "Friction alone keeps a wedge where it was driven. A steep one springs out again as the timber dries and the frame works; a flat one must be driven far before it tightens anything, and stands out by as much while it waits for the timber to dry.",
      formula: "1/20 ≤ slope ≤ 1/6",
      remedy: "Cut it 1 in 10, or leave the slope out: that is what it is then.",
    },
  },
  input: "model",
  *find(model) {
    for (const joint of judgedJoints(model)) {
      const slope = slopeOf(joint);
      if (slope === undefined || (slope <= STEEPEST + 1e-6 && slope >= FLATTEST - 1e-6)) continue;
      const wrong = slope > STEEPEST ? "steep" : "flat";
      const limit = wrong === "steep" ? STEEPEST : FLATTEST;
      const wedge = joint.entry?.wedge?.path;
      const written = wedge === undefined ? undefined : `${wedge}/slope`;
      yield {
        ...(written === undefined ? { path: joint.path, onKey: true as const } : { path: written }),
        place: joint.id,
        ...(wrong === "flat" ? { level: "note" as const } : {}),
        data: {
          path: written,
          joint: joint.id,
          slope,
          limit,
          wrong,
          folding: joint.sizes.splay !== undefined,
        },
        value: slope,
        limit,
        severity: Math.abs(Math.log(slope / limit)),
      };
    }
  },
  words: ({ joint, slope, wrong, folding }, say) => {
    const run = say.number(1 / slope, 1);
    if (folding)
      return wrong === "steep"
        ? say.text(
            "The folding wedges of {joint} rise 1 in {run}, steeper than 1 in 6: they slide back on each other as the timber dries, and the butts open. Cut both 1 in 10.",
            { joint, run },
          )
        : say.text(
            "The folding wedges of {joint} rise 1 in {run}, flatter than 1 in 20: they must be driven far before they push the butts tight, and stand out long. 1 in 10 is usual.",
            { joint, run },
          );
    return wrong === "steep"
      ? say.text(
          "The wedge at {joint} rises 1 in {run}, steeper than 1 in 6: it springs out again as the timber dries. Cut it, and the roof of its mortise, 1 in 10.",
          { joint, run },
        )
      : say.text(
          "The wedge at {joint} rises 1 in {run}, flatter than 1 in 20: it must be driven far before it tightens, and stands out long. 1 in 10 is usual.",
          { joint, run },
        );
  },
  worked: ({ slope, wrong }, say) =>
    say.text(wrong === "steep" ? "{slope} > 1/6" : "{slope} < 1/20", { slope: say.number(slope, 4) }),
  fixes: ({ path }, say) =>
    path === undefined
      ? []
      : [{ title: say.text("Slope it 1 in 10"), edits: [{ kind: "replace", path, text: USUAL }] }],
});
