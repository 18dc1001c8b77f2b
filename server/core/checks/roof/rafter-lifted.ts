import type { Joint } from "../../joinery/joint.ts";
import { hasRoom } from "../../roof/fastener-room.ts";
import { fastenings, isRafterSeat } from "../../roof/fastening.ts";
import { seatHold, type UpliftHold } from "../../roof/seat-fasteners.ts";
import { type SizedFasteners, screwsFor, sizedFasteners } from "../../roof/sized-fasteners.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { seatPull } from "../../statics/joint-holds.ts";
import { defineCheck } from "../check.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import type { Say } from "../say.ts";
import { fastenFix, screwsWords, upliftFormula } from "./fasten-words.ts";
import { type Lifted, liftedFound, liftedWords, pullWords } from "./lifted.ts";

interface Data extends Lifted {
  readonly joint: Joint;
  readonly solution: FrameResults["solution"];
}

/** Uplift below this is none, lb: less than a foot of rafter weighs. */
const NOTHING = 5;

const screws = ({ joint, pull }: Data, say: Say): SizedFasteners | undefined =>
  screwsFor(
    (each) => hasRoom(each, joint) && (seatHold(joint, each, pull.duration)?.uplift.value ?? 0) >= pull.most,
    say.metric,
  );

/** How what is there is counted. */
function countedWords({ fasteners, held, toeNailed, wood }: UpliftHold, say: Say): string {
  if (held <= 0)
    return say.text("they end in the rafter, which stands {wood} over the plate", { wood: say.length(wood) });
  const values = { held: say.length(held), wood: say.length(wood) };
  if (fasteners.kind === "screws")
    return say.text("with {held} of thread in the plate below {wood} of rafter", values);
  return toeNailed
    ? say.text("driven on the slant, with {held} in the plate", values)
    : say.text("with {held} in the plate below {wood} of rafter", values);
}

export const rafterLifted = defineCheck<"results", Data>({
  meta: {
    id: "rafter-lifted",
    title: "Rafters that are lifted off",
    level: "error",
    area: "roof",
    source: {
      text: "NDS 12.2 withdrawal with C_D 1.6 of wind; screws as lag screws of their size, whose maker’s report governs",
      status: "memory",
    },
    explanation: {
      what: "Wind, or snow on the far side of it, lifts a rafter off its plate with more than its screws or nails hold, or nothing is named that holds it.",
      why: "An open roof is lifted from below and above at once; its own weight is not enough. Nails in green wood lose three quarters of their hold as it dries. The wind reckoned with is that on the frame as a whole: near the edges and corners of a roof it pulls harder at single parts (components and cladding, ASCE 7 chapter 30), which is not checked.",
      formula:
        "uplift of the seat ≤ n × W × C_D × C_M × C_tn; W = 1,800 G^1.5 D^0.75 lb per inch of thread in the plate (screws of 1/4 in and more), 1,380 G^2.5 D per inch of nail; thread as a lag screw of that length has it",
      remedy:
        "Name what holds each rafter: `fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}`; take longer or more screws, so that more thread stands in the plate.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    const fasteningOf = fastenings(frame.model);
    for (const joint of frame.model.joints) {
      const pull = isRafterSeat(joint) ? seatPull(frame, joint) : undefined;
      if (!pull || pull.most < NOTHING) continue;
      const fastening = fasteningOf(joint);
      if (fastening.written === "unread") continue;
      const sized = sizedFasteners(fastening.written);
      const hold = sized && seatHold(joint, sized, pull.duration);
      // wood without values has a finding of its own
      if (sized && (!hold || hold.uplift.value >= pull.most)) continue;
      const data: Data = { joint, pull, solution: frame.solution, fastening, hold };
      yield liftedFound(data, joint.id, data);
    }
  },
  words: (d, say) =>
    liftedWords(
      d,
      say.text("{joint} is lifted with {force} under {combination}", {
        joint: d.joint.id,
        ...pullWords(d, d.solution, say),
      }),
      (hold) => countedWords(hold, say),
      screwsWords(screws(d, say), say) ?? say.text("Strap each rafter to the plate with steel rated for it."),
      say,
    ),
  worked: ({ pull, hold }, say) => upliftFormula(pull.most, hold, say),
  fixes: (d, say) => fastenFix(screws(d, say), say, d.fastening),
});
