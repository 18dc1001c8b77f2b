import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { FRICTION, type JointPull } from "../../statics/joint-pulls.ts";
import { type WedgeRelish, WOOD_FRICTION, wedgeRelish } from "../../statics/wedge-thrusts.ts";
import { defineCheck } from "../check.ts";
import { fineLength, madeStress, steps } from "../formula-words.ts";
import { judgedPulls } from "./judged-pulls.ts";

interface Data {
  readonly pull: JointPull;
  readonly relish: WedgeRelish;
  readonly solution: FrameResults["solution"];
}

export const wedgeRelishShort = defineCheck<"shared", Data>({
  meta: {
    id: "wedge-relish-short",
    title: "Too little of the post above a wedge",
    level: "warning",
    area: "joinery",
    source: {
      text: "shear parallel to grain F_v′, NDS 4.3 and Supplement; the thrust by statics of the sloped tail, the sheared planes by plane geometry (derived); friction 0.3, the least of the Wood Handbook’s range for dry wood, as remembered; no more than 8 times half the wedge’s width counts, German practice for steps as remembered",
      status: "memory",
    },
    explanation: {
      what: "A tie on a wedged half-dovetail is pulled out of its post; its sloped tail lifts the wedge, the wedge lifts the wood of the post above the mortise, and there is too little of that up to the post’s end. What lies on the post is not counted on to hold it down. The wood of the tenon behind its pegs is judged by `peg-overloaded`.",
      why: "The tail lifts its wedge with as much as the pull, or more. The block above the mortise shears off along the grain, the wedge loses its hold, and the pegs are left alone.",
      formula:
        "pull ÷ ((s + μ) ÷ (1 − s × μ) + μ) ÷ (2 × relish × depth of the mortise) ≤ F_v′ of the post with C_D of the combination; s = rise ÷ length of the tail, μ = 0.3; pegs take none of it; relish at the middle of the mortise’s roof, at most 4 times the wedge’s width; pulls below 50 lb are left to friction (common practice, no source)",
      remedy:
        "Set the tie lower or let the post stand higher above it, give the tail more drop, or take a thicker tenon and wedge.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find(shared) {
    const { frame } = shared;
    if (!frame) return;
    for (const pull of judgedPulls(shared, ({ sizes }) => sizes.wedge !== undefined)) {
      const relish = wedgeRelish(pull);
      if (!relish || pull.most < FRICTION || relish.stress <= relish.shear.value) continue;
      yield {
        path: pull.joint.path,
        onKey: true,
        place: pull.joint.id,
        data: { pull, relish, solution: frame.solution },
        value: relish.stress,
        limit: relish.shear.value,
        unit: "psi",
        // equal pulls at mirrored places differ in the last digits
        severity: Math.round(relish.thrust / Math.max(1, relish.counted)),
      };
    }
  },
  words: ({ pull, relish, solution }, say) => {
    const values = {
      joint: pull.joint.id,
      post: pull.joint.into.id,
      force: say.force(pull.most),
      combination: caseWords(solution, pull.caseId, say),
      thrust: say.force(relish.thrust),
      relish: say.length(relish.counted),
      stress: say.stress(relish.stress),
      limit: say.stress(relish.shear.value),
      duration: say.number(pull.duration.value, 2),
    };
    return relish.counted > 0
      ? say.text(
          "{joint} is pulled with {force} under {combination}, so that its tail lifts the wedge with {thrust}; that shears the {relish} of {post} above the mortise with {stress}, more than {limit} (F_v′, C_D {duration}): the block splits off and the wedge comes loose. Set the tie lower, or give its tail more drop.",
          values,
        )
      : say.text(
          "{joint} is pulled with {force} under {combination}, so that its tail lifts the wedge with {thrust}, and {post} has no wood above the mortise to hold it. Set the tie lower, or let the post stand higher.",
          values,
        );
  },
  worked: ({ pull, relish }, say) =>
    relish.counted > 0
      ? steps(
          say.text("s: {rise} ÷ {tail} = {slope}", {
            rise: fineLength(relish.rise, say),
            tail: say.length(relish.tail),
            slope: say.number(relish.slope, 4),
          }),
          say.text(
            "{force} ÷ (({slope} + {friction}) ÷ (1 − {slope} × {friction}) + {friction}) = {thrust}",
            {
              force: say.force(pull.most),
              slope: say.number(relish.slope, 4),
              friction: say.number(WOOD_FRICTION, 1),
              thrust: say.force(relish.thrust),
            },
          ),
          say.text("{thrust} ÷ (2 × {relish} × {deep}) = {stress} > {limit}", {
            thrust: say.force(relish.thrust),
            relish: fineLength(relish.counted, say),
            deep: say.length(relish.deep),
            stress: say.stress(relish.stress),
            limit: madeStress("F_v", relish.shear, say),
          }),
        )
      : undefined,
});
