import type { DovetailHold } from "../../joinery/dovetail-tension.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { FRICTION, type JointPull } from "../../statics/joint-pulls.ts";
import { defineCheck } from "../check.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { dovetailFormula } from "./dovetail-formula.ts";
import { IN_ROWS, judgedPulls, pullFound } from "./judged-pulls.ts";

interface Data {
  readonly pull: JointPull;
  readonly ratio: number;
  readonly hold: DovetailHold;
  readonly solution: FrameResults["solution"];
}

/** What gives first. */
function whyWords({ hold, pull: { joint } }: Data, say: Say): string {
  const values = { of: joint.of.id, into: joint.into.id };
  switch (hold.governs) {
    case "bearing":
      return say.text(
        hold.terms.weaker.on === "tail"
          ? "the flanks of its tail are crushed"
          : "the flanks of its socket are crushed",
      );
    case "tail-shear":
      return say.text("the flared sides of the tail shear off along the grain of {of}", values);
    case "neck-tension":
      return say.text("its neck tears");
    case "socket-split":
      return say.text("{into} splits along its grain behind the flanks", values);
    case "socket-end":
      return say.text("the wood between the socket and the end of {into} shears off", values);
  }
}

/** Less than that is read as 0, lb. */
const NOTHING = 1;

export const dovetailOverloaded = defineCheck<"shared", Data>({
  meta: {
    id: "dovetail-overloaded",
    title: "A dovetail pulled with more than it holds",
    level: "error",
    area: "joinery",
    source: {
      text: "statics of the flanks, friction taken as zero (derived); bearing at an angle to the grain, NDS 3.10.3; splitting of the receiving timber, NDS 3.4.3.3, and half the strength on the narrowing shear planes of the tail, NDS appendix E taken over (memory); wood to the end of the receiving timber counts up to 8 depths of the socket, German practice as remembered",
      status: "memory",
    },
    explanation: {
      what: "The timber is pulled out of the other with more than the flared tail of its dovetail, or the wood round its socket, can hold. A peg through it is not added, for tail and peg give by different amounts; where the peg alone holds more, the peg is judged. A warning for joists and purlins: where one lets go, other timbers may take over.",
      why: "A flat flare spreads the socket with several times the pull. Its flanks crush, the tail shears off or the receiving timber splits, and the joint draws out.",
      formula:
        "The pull is held against the least of five. Flanks: 2 (L − s) t F sin/cos α. Tail: (L − s) t F_v′. Neck: width × t × F_t′. Splitting: NDS 3.4.3.3 with b = t and d_e = housing + L − s. Wood to the end: 2 tan α F_v′ e (L − s + t), e at most 8 t. s is what the tail draws out as it dries, tan α = flare ÷ L. F is by Hankinson, F_c* F_c⊥′/(F_c* sin²θ + F_c⊥′ cos²θ), the weaker of the tail at 90° − α and the socket at α. C_D is that of the governing combination. Pulls below 50 lb are left to friction (common practice, no source).",
      remedy:
        "Make the tail deeper or longer, cut it from dry timber, keep it away from the end of the other timber, tie it over with a steel strap, or take a pegged through tenon.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find(shared) {
    const { frame } = shared;
    if (!frame) return;
    for (const pull of judgedPulls(shared, ({ sizes }) => sizes.dovetail !== undefined)) {
      const { hold, joint, ratio } = pull;
      if (hold.kind !== "dovetail" || ratio === undefined || ratio <= 1 || pull.most < FRICTION) continue;
      const written = joint.entry?.dovetail?.path;
      yield {
        ...pullFound(pull),
        ...(written === undefined ? { path: joint.path, onKey: true as const } : { path: written }),
        ...(IN_ROWS.has(joint.of.kind) ? { level: "warning" as const } : {}),
        data: { pull, ratio, hold: hold.dovetail, solution: frame.solution },
        limit: hold.dovetail.tension.value,
        // equal pulls at mirrored places differ in the last digits
        severity: Math.round(Math.min(1e6, 1000 * ratio)),
      };
    }
  },
  words: (d, say) => {
    const { joint, most, caseId, duration } = d.pull;
    const values = {
      joint: joint.id,
      of: joint.of.id,
      force: say.force(most),
      combination: caseWords(d.solution, caseId, say),
      limit: say.force(d.hold.tension.value),
      ratio: overPercent(d.ratio, say),
      duration: say.number(duration.value, 2),
      why: whyWords(d, say),
      drawn: say.length(d.hold.terms.drawn),
    };
    if (d.hold.terms.bears <= 0)
      return say.text(
        "{joint} is pulled apart with {force} under {combination}, and its dovetail holds nothing once {of} is dry: the tail is then no wider than the mouth of its socket. Give it more flare, cut it from dry timber, or tie it over with a steel strap.",
        values,
      );
    if (d.hold.tension.value < NOTHING)
      return say.text(
        "{joint} is pulled apart with {force} under {combination}, and its dovetail holds nothing: {why}. Make the tail deeper or longer, cut it from dry timber, or tie it over with a steel strap.",
        values,
      );
    return d.hold.terms.drawn > 0
      ? say.text(
          "{joint} is pulled apart with {force} under {combination}, more than the {limit} that its dovetail holds without friction after it has dried and drawn out by {drawn} ({ratio}, C_D {duration}): {why}. Make the tail deeper or longer, cut it from dry timber, or tie it over with a steel strap.",
          values,
        )
      : say.text(
          "{joint} is pulled apart with {force} under {combination}, more than the {limit} that its dovetail holds without friction ({ratio}, C_D {duration}): {why}. Make the tail deeper or longer, or tie it over with a steel strap.",
          values,
        );
  },
  worked: ({ hold, pull }, say) => dovetailFormula(hold, pull.most, say),
});
