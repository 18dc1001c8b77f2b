import type { Joint } from "../../joinery/joint.ts";
import { hasRoom, woodThrough } from "../../roof/fastener-room.ts";
import { type Fastening, fastenings, isHousedHead } from "../../roof/fastening.ts";
import { headHold, headUse, onFasteners } from "../../roof/head-fasteners.ts";
import { type SizedFasteners, screwsFor, sizedFasteners } from "../../roof/sized-fasteners.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import {
  type HeadPull,
  headForceOf,
  headPulls,
  type JudgedHead,
  judgeHead,
} from "../../statics/head-pulls.ts";
import { FRICTION } from "../../statics/joint-pulls.ts";
import { defineCheck } from "../check.ts";
import { bothWays } from "../fastener-words.ts";
import { fineLength, perLength, steps, times } from "../formula-words.ts";
import { lacksWeight } from "../loads/lacks-weight.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { fastenFix, screwsWords } from "./fasten-words.ts";

interface Data {
  readonly joint: Joint;
  readonly judged: JudgedHead;
  /** every force on this head, which whatever is proposed has to hold */
  readonly pulls: readonly HeadPull[];
  readonly solution: FrameResults["solution"];
  readonly fastening: Fastening;
  /** pointer of the roof's rafters, whose heads they are; undefined = of a rafter with an entry of its own */
  readonly rafters: string | undefined;
}

function screws({ joint, pulls }: Data, say: Say): SizedFasteners | undefined {
  return screwsFor(
    (each) =>
      hasRoom(each, joint) &&
      pulls.every((pull) => {
        const hold = headHold(joint, each, pull.duration);
        return hold !== undefined && headUse(hold, pull).ratio <= 1;
      }),
    say.metric,
  );
}

/** The force, by its two parts. */
function forceWords({ pull, lift }: HeadPull, say: Say): string {
  if (lift < 1) return say.text("drawn out of the ridge with {pull}", { pull: say.force(pull) });
  if (pull < 1) return say.text("lifted out of the ridge with {lift}", { lift: say.force(lift) });
  return say.text("drawn out of the ridge with {pull} and lifted with {lift}", {
    pull: say.force(pull),
    lift: say.force(lift),
  });
}

export const rafterHeadLoose = defineCheck<"results", Data>({
  meta: {
    id: "rafter-head-loose",
    title: "Rafter heads that nothing holds in the ridge",
    level: "error",
    area: "roof",
    source: {
      text: "NDS 12.2, 12.3 and 12.4 with C_D of the combination; screws as lag screws of their size, whose maker’s report governs",
      status: "memory",
    },
    explanation: {
      what: "A rafter’s head stands in a housing that is open on top. Wind draws it out or lifts it, and nothing is named that holds it in the ridge, or what is named is too weak. Forces below 50 lb are left to friction and to the deck’s nails (common practice, no source).",
      why: "A housing bears only what presses into it. Without a hold at the ridge the path of the uplift ends there, and the seats alone do not keep the rafter on the frame. The wind reckoned with is that on the frame as a whole: near the edges and corners of a roof it pulls harder at single parts (components and cladding, ASCE 7 chapter 30), which is not checked.",
      formula:
        "screws slant at 45° from the rafter’s top edge into the ridge: along them (pull + lift) ÷ √2, across (pull − lift) ÷ √2; toe-nails: the pull along, the lift across. Force ≤ W′Z′ ÷ (W′ cos² α + Z′ sin² α) for screws, W′Z′ ÷ (W′ cos α + Z′ sin α) for nails",
      remedy:
        "Name what holds each head: `head: {kind: housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}`.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    // without the weight of a timber nothing tells how much of the wind is left
    if (!frame || lacksWeight(frame)) return;
    const { model, solution } = frame;
    const own = new Set(model.roof?.slopes.flatMap(({ rafters }) => rafters.map(({ id }) => id)));
    const fasteningOf = fastenings(model);
    const pullsOf = headPulls(frame);
    for (const joint of model.joints.filter(isHousedHead)) {
      const fastening = fasteningOf(joint);
      const { written, path } = fastening;
      if (written === "unread") continue;
      const sized = sizedFasteners(written);
      const pulls = (pullsOf.get(joint.id) ?? []).filter((p) => headForceOf(p) >= FRICTION);
      const judged = judgeHead(joint, pulls, sized);
      if (!judged || (judged.held?.use.ratio ?? 2) <= 1) continue;
      // wood without values has a finding of its own
      if (sized && !judged.held) continue;
      const force = headForceOf(judged.pull);
      const rafters = own.has(joint.of.id) ? model.frame.roof?.rafters?.path : undefined;
      yield {
        path,
        onKey: true,
        place: joint.id,
        data: { joint, judged, pulls, solution, fastening, rafters },
        value: force,
        limit: judged.held?.use.allowed.value ?? 0,
        unit: "lb",
        // equal forces at mirrored places differ in the last digits
        severity: Math.round(force),
      };
    }
  },
  words: (d, say) => {
    const { pull, held } = d.judged;
    const values = {
      joint: d.joint.id,
      forces: forceWords(pull, say),
      combination: caseWords(d.solution, pull.caseId, say),
      help:
        screwsWords(screws(d, say), say) ??
        say.text("Tie each pair over the ridge with a steel strap rated for it."),
    };
    if (!held)
      return d.fastening.written === undefined
        ? say.text(
            "{joint} is {forces} under {combination}, and nothing is named that holds it. {help}",
            values,
          )
        : say.text(
            "{joint} is {forces} under {combination}; what holds it is named without a diameter and a length, and counts for nothing. {help}",
            values,
          );
    const { fasteners, held: reach } = held.hold;
    const how = {
      ...values,
      count: fasteners.count,
      diameter: say.length(fasteners.diameter),
      held: say.length(Math.max(0, reach)),
      limit: say.force(held.use.allowed.value),
      ratio: overPercent(held.use.ratio, say),
    };
    if (held.use.allowed.value <= 0 && fasteners.length > woodThrough(d.joint))
      return say.text(
        "{joint} is {forces} under {combination}, and its screws hold nothing: {count} of {diameter}, slanting, have their thread past the ridge. {help}",
        how,
      );
    if (held.use.allowed.value <= 0)
      return say.text(
        fasteners.kind === "screws"
          ? "{joint} is {forces} under {combination}, and its screws hold nothing: {count} of {diameter}, slanting, end before they hold in the ridge. {help}"
          : "{joint} is {forces} under {combination}, and its nails hold nothing: {count} of {diameter}, driven on the slant, end before they hold in the ridge. {help}",
        how,
      );
    return say.text(
      fasteners.kind === "screws"
        ? "{joint} is {forces} under {combination}, more than the {limit} that its screws hold that way ({ratio}): {count} of {diameter}, slanting, with {held} of thread in the ridge. {help}"
        : "{joint} is {forces} under {combination}, more than the {limit} that its nails hold that way ({ratio}): {count} of {diameter}, driven on the slant, with {held} in the ridge. {help}",
      how,
    );
  },
  worked: ({ judged: { pull, held } }, say) => {
    if (!held)
      return say.text("√(({pull})² + ({lift})²) = {force} > {none}", {
        pull: say.force(pull.pull),
        lift: say.force(pull.lift),
        force: say.force(headForceOf(pull)),
        none: say.force(0),
      });
    const { use, hold } = held;
    const { fasteners, withdrawal, lateral } = hold;
    const { outward, sideways } = onFasteners(fasteners.kind, pull);
    const screwed = fasteners.kind === "screws";
    const values = {
      pull: say.force(pull.pull),
      lift: say.force(pull.lift),
      outward: say.force(outward),
      sideways: say.force(Math.abs(sideways)),
    };
    return steps(
      say.text("W′: {made} = {value}", {
        made: `${fasteners.count} × ${perLength(hold.perInch, say)} × ${fineLength(hold.held, say)}${times(withdrawal.factors, say)}`,
        value: say.force(withdrawal.value),
      }),
      say.text("Z′: {made} = {value}", {
        made: `${fasteners.count} × ${say.force(lateral.reference.value / fasteners.count)}${times(lateral.factors, say)}`,
        value: say.force(lateral.value),
      }),
      screwed ? say.text("along the screws: ({pull} + {lift}) ÷ √(2) = {outward}", values) : undefined,
      screwed
        ? sideways < 0
          ? say.text("across them: ({lift} − {pull}) ÷ √(2) = {sideways}", values)
          : say.text("across them: ({pull} − {lift}) ÷ √(2) = {sideways}", values)
        : undefined,
      bothWays(screwed ? "screw" : "nail", use, sideways, outward, lateral.value, withdrawal.value, say),
    );
  },
  fixes: (d, say) => {
    const { joint, rafters, fastening } = d;
    const whole =
      rafters === undefined
        ? undefined
        : { path: rafters, key: "head", start: `kind: housed, into: ${joint.into.member}` };
    return fastenFix(screws(d, say), say, fastening, whole);
  },
});
