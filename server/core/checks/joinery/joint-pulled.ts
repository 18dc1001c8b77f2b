import type { JointKindName } from "../../frame/frame.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { FRICTION, type JointPull, onlyBears } from "../../statics/joint-pulls.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";
import { IN_ROWS, judgedPulls, pullFound } from "./judged-pulls.ts";

interface Data {
  readonly pull: JointPull;
  readonly solution: FrameResults["solution"];
}

/** Kinds that may have pegs, and have none here. */
const PEGGED: ReadonlySet<JointKindName> = new Set([
  "mortise-and-tenon",
  "wedged-half-dovetail",
  "brace-tenon",
  "corner-half-lap",
  "corner-bridle",
  "half-lap-scarf",
  "bladed-scarf",
  "stop-splayed-scarf",
  "rafter-heel",
  "rafter-pair",
]);

/** Pegs of a tenon, as of one whose file says nothing of them. */
const USUAL = 2;

function whyWords({ kind }: JointPull["joint"], say: Say): string {
  switch (kind) {
    case "mortise-and-tenon":
    case "rafter-heel":
    case "brace-tenon":
      return say.text("its tenon has no pegs and slides out");
    case "wedged-half-dovetail":
      return say.text("it has no pegs, and a wedge counts for nothing without a stated capacity");
    case "stub-tenon":
      return say.text("a stub tenon has no pegs and slides out");
    case "corner-bridle":
      return say.text("its tongue has no pegs and slides out");
    case "stop-splayed-scarf":
      return say.text("it has no pegs, and what its wedges hold is not stated");
    case "corner-half-lap":
    case "half-lap-scarf":
    case "bladed-scarf":
    case "rafter-pair":
      return say.text("its lap has no pegs and slides apart");
    case "pocket":
      return say.text("an end that lies in a pocket only rests there");
    default:
      return say.text("an end that stands in a housing only bears there");
  }
}

export const jointPulled = defineCheck<"shared", Data>({
  meta: {
    id: "joint-pulled",
    title: "A joint pulled that cannot hold",
    level: "error",
    area: "joinery",
    source: {
      text: "statics: the frame's forces in the joint; common practice, no source: pulls below 50 lb are left to friction",
      status: "common-practice",
    },
    explanation: {
      what: "Under some combination of loads the timber is pulled out of the other, and the joint is of a kind that only bears: a tenon without pegs, a stub tenon, a housing, a pocket, a lap without pegs. A warning for joists and purlins: where one lets go, other timbers may take over. Joists in pockets are not counted on to tie anything, and are not named.",
      why: "It opens, and what the joint tied together comes apart. The analysis counts on it being closed, so the other forces are not right either.",
      formula:
        "net pull along the timber, the worst of all combinations, wind that lifts with 0.6 of the dead load among them",
      remedy:
        "Peg it, tie it over with a steel strap or with screws along the timber, or take a joint that holds: a pegged through tenon, a dovetail.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find(shared) {
    const { frame } = shared;
    if (!frame) return;
    for (const pull of judgedPulls(shared, onlyBears)) {
      if (pull.most < FRICTION) continue;
      yield {
        ...pullFound(pull),
        ...(IN_ROWS.has(pull.joint.of.kind) ? { level: "warning" as const } : {}),
        data: { pull, solution: frame.solution },
        limit: FRICTION,
        // equal pulls at mirrored places differ in the last digits
        severity: Math.round(pull.most),
      };
    }
  },
  words: ({ pull, solution }, say) =>
    say.text(
      "{joint} is pulled apart with {force} under {combination}, and nothing holds it: {why}. {help}",
      {
        joint: pull.joint.id,
        force: say.force(pull.most),
        combination: caseWords(solution, pull.caseId, say),
        why: whyWords(pull.joint, say),
        help: PEGGED.has(pull.joint.kind)
          ? say.text("Peg it, or tie it over with a steel strap.")
          : say.text(
              "Take a pegged tenon or a dovetail, or tie it over with a steel strap or screws along the timber.",
            ),
      },
    ),
  worked: ({ pull }, say) =>
    say.text("{force} ≥ {friction}", { force: say.force(pull.most), friction: say.force(FRICTION) }),
  fixes: ({ pull: { joint } }, say) => {
    const pegs = joint.entry?.pegs;
    if (joint.kind !== "mortise-and-tenon" || pegs?.count !== 0) return [];
    return [
      {
        title: say.text("Peg it with {count} pegs", { count: USUAL }),
        edits: [{ kind: "replace", path: `${pegs.path}/count`, text: String(USUAL) }],
      },
    ];
  },
});
