import { mostScrewsOver } from "../../roof/fastener-room.ts";
import { crossingName } from "../../roof/purlin-crossings.ts";
import { type UpliftHold, upliftHold } from "../../roof/seat-fasteners.ts";
import { type SizedFasteners, screwsFor, sizedFasteners } from "../../roof/sized-fasteners.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type PurlinLift, purlinLifts } from "../../statics/purlin-lifts.ts";
import { defineCheck } from "../check.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import type { Say } from "../say.ts";
import { fastenFix, screwsWords, upliftFormula } from "./fasten-words.ts";
import { liftedFound, liftedWords, pullWords } from "./lifted.ts";

interface Data {
  readonly lift: PurlinLift;
  readonly solution: FrameResults["solution"];
}

/** In rows across the purlin, over the width of what carries it, and with their points inside that. */
function screws({ lift }: Data, say: Say): SizedFasteners | undefined {
  const { wood, under, pull } = lift;
  return screwsFor(
    (each) =>
      each.count <= mostScrewsOver(lift, each.diameter) &&
      each.length <= wood + under &&
      (upliftHold(lift, each, pull.duration)?.uplift.value ?? 0) >= pull.most,
    say.metric,
  );
}

/** How what is there is counted: two sentences' middles, for screws and for nails. */
function countedWords(lower: string, { fasteners, held, toeNailed, wood }: UpliftHold, say: Say): string {
  const values = { held: say.length(Math.max(0, held)), wood: say.length(wood), lower };
  if (held <= 0) return say.text("they end in the purlin, {wood} deep", values);
  if (fasteners.kind === "screws")
    return say.text("with {held} of thread in {lower} below {wood} of purlin", values);
  return toeNailed
    ? say.text("driven on the slant, with {held} in {lower}", values)
    : say.text("with {held} in {lower} below {wood} of purlin", values);
}

export const purlinLifted = defineCheck<"results", Data>({
  meta: {
    id: "purlin-lifted",
    title: "Purlins that are lifted off",
    level: "error",
    area: "roof",
    source: {
      text: "NDS 12.2 withdrawal with C_D of the combination; screws as lag screws of their size, whose maker’s report governs",
      status: "memory",
    },
    explanation: {
      what: "Wind, or snow on the spans beside, lifts a purlin off a rafter or another timber that carries it, with more than its screws or nails hold there, or nothing is named that holds it. So it is for purlins that lie across rafters, in seats, and with their ends in pockets or housings open on top.",
      why: "The deck hangs on the purlins when wind lifts it, and the purlins on what holds them down on the rafters. Wood that only bears holds nothing that way, however well the rafters themselves are fastened.",
      formula:
        "uplift square to the carrier ≤ n × W × C_D × C_M × C_tn; W = 1,800 G^1.5 D^0.75 lb per inch of thread in the carrier (screws of 1/4 in and more), 1,380 G^2.5 D per inch of nail; thread as a lag screw of that length has it",
      remedy:
        "Name what holds each purlin on each of its carriers, in its own entry: `purlin: {kind: purlin, section: 5x7, spacing: 36 in, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 12 in}}`; take longer or more screws.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    for (const lift of purlinLifts(frame)) {
      const { fastening, hold, pull } = lift;
      if (fastening.written === "unread") continue;
      // wood without values has a finding of its own
      if (!hold && sizedFasteners(fastening.written)) continue;
      if (hold && hold.uplift.value >= pull.most) continue;
      yield liftedFound(lift, crossingName(lift), { lift, solution: frame.solution });
    }
  },
  words: (d, say) => {
    const { lift } = d;
    const { upper, lower } = lift;
    return liftedWords(
      lift,
      say.text("{purlin} is lifted off {lower} with {force} under {combination}", {
        purlin: upper.id,
        lower: lower.id,
        ...pullWords(lift, d.solution, say),
      }),
      (hold) => countedWords(lower.id, hold, say),
      screwsWords(screws(d, say), say) ??
        say.text("Strap each purlin to what carries it with steel rated for it."),
      say,
    );
  },
  worked: ({ lift: { pull, hold } }, say) => upliftFormula(pull.most, hold, say),
  fixes: (d, say) => fastenFix(screws(d, say), say, d.lift.fastening),
});
