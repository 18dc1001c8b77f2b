import type { PegJoint } from "../../fasteners/pegs/peg-joint.ts";
import type { Frame } from "../../frame/frame.ts";
import { strongerPegs } from "../../joinery/stronger-pegs.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type JointPull, onlyBears } from "../../statics/joint-pulls.ts";
import { defineCheck, type Edit } from "../check.ts";
import { overPercent } from "../members/use-words.ts";
import type { Say } from "../say.ts";
import { judgedPulls, pullFound } from "./judged-pulls.ts";
import { pegFormula } from "./peg-formula.ts";

interface Data {
  readonly pull: JointPull;
  readonly ratio: number;
  readonly pegs: PegJoint;
  readonly solution: FrameResults["solution"];
  readonly frame: Frame;
}

/** What gives first, and so what helps. */
function limitWords(governs: PegJoint["governs"], joint: JointPull["joint"], say: Say): string {
  if (governs === "V" && joint.sizes.blade) return say.text("the pegs shear off at the faces of the blade");
  return isLap(joint) ? lapLimitWords(governs, say) : tenonLimitWords(governs, say);
}

function lapLimitWords(governs: PegJoint["governs"], say: Say): string {
  switch (governs) {
    case "relish":
      return say.text("the lap shears out behind its pegs");
    case "group-tear-out":
      return say.text("the lap tears out round its pegs");
    case "net-section":
      return say.text("the lap tears off beside its pegs");
    case "V":
      return say.text("the pegs shear off between its two halves");
    default:
      return say.text("the pegs bend and crush the wood of the lap");
  }
}

function tenonLimitWords(governs: PegJoint["governs"], say: Say): string {
  switch (governs) {
    case "relish":
      return say.text("the tenon shears out behind its pegs");
    case "group-tear-out":
      return say.text("the tenon tears out round its pegs");
    case "net-section":
      return say.text("the tenon tears off beside its pegs");
    case "V":
      return say.text("the pegs shear off at the faces of the tenon");
    case "IIIs":
    case "II":
    case "IIIm":
    case "IV":
      return say.text("the pegs bend and crush the cheeks");
    default:
      return say.text("the wood is crushed under the pegs");
  }
}

/** Less than that is read as 0, lb. */
const NOTHING = 1;

const stronger = ({ pull, frame }: Data) => strongerPegs(pull.joint, frame, pull.most, pull.duration);

/** Two halves, one upon the other, or a blade in its slot: neither a tenon nor a rafter pair. */
const isLap = ({ sizes: { tenon, pair } }: JointPull["joint"]): boolean => !tenon && !pair;

function helpWords(d: Data, say: Say): string {
  const pegs = stronger(d);
  if (!pegs && d.pull.joint.sizes.pair)
    return say.text(
      "No pegs that fit it hold that: tie the two rafters together with a steel strap or a collar beam.",
    );
  if (!pegs && isLap(d.pull.joint))
    return say.text(
      "No pegs that fit it hold that: take a longer lap, or tie it over with steel straps or bolts.",
    );
  if (!pegs)
    return say.text(
      "No pegs that fit its tenon hold that: take a longer and wider tenon, or tie it over with a steel strap.",
    );
  return say.text(pegs.count === 1 ? "One of {diameter} holds it." : "{count} of {diameter} hold it.", {
    count: pegs.count,
    diameter: say.length(pegs.diameter),
  });
}

export const pegOverloaded = defineCheck<"shared", Data>({
  meta: {
    id: "peg-overloaded",
    title: "Pegs pulled with more than they hold",
    level: "error",
    area: "joinery",
    source: {
      text: "TFEC 1 3.4, as remembered (yield modes in double shear and shear of the peg); in laps the modes of NDS 12.3 in single shear with the strengths of wood pegs; NDS appendix E for the tenon or lap behind and beside the pegs",
      status: "memory",
    },
    explanation: {
      what: "The timber is pulled out of its mortise or lap with more than the pegs, or the wood round them, can hold.",
      why: "Pegs shear or bend, the tenon splits out behind them, and the joint comes apart.",
      formula:
        "pull ≤ min(n × Z × C_D × C_M, tear-out of the rows, tear-out of the group, net section of the tenon); Z = the least of the modes I_m, I_s, III_s of a dowel in double shear and shear of the peg, π D² F_vy/(2 × 3.5); in a lap, which shears each peg once, the modes I_m, I_s, II, III_m, III_s in single shear and half of that shear; C_D of the governing combination",
      remedy:
        "Take thicker or more pegs, a longer tenon, or denser wood. A wedge counts for nothing here, since nothing states what it holds.",
    },
  },
  input: "shared",
  ofTheWhole: true,
  *find(shared) {
    const { frame } = shared;
    if (!frame) return;
    for (const pull of judgedPulls(shared, (joint) => !onlyBears(joint))) {
      if (pull.hold.kind !== "pegs" || pull.ratio === undefined || pull.ratio <= 1) continue;
      const { pegs } = pull.hold;
      yield {
        ...pullFound(pull),
        data: { pull, ratio: pull.ratio, pegs, solution: frame.solution, frame: frame.model.frame },
        limit: pegs.tension.value,
        // equal pulls at mirrored places differ in the last digits
        severity: Math.round(1000 * pull.ratio),
      };
    }
  },
  words: (d, say) => {
    const { joint, most, caseId, duration } = d.pull;
    const { count = 0, diameter } = joint.sizes.pegs ?? {};
    const values = {
      joint: joint.id,
      force: say.force(most),
      combination: caseWords(d.solution, caseId, say),
      limit: say.force(d.pegs.tension.value),
      count,
      diameter: say.length(diameter?.value ?? 0),
      ratio: overPercent(d.ratio, say),
      duration: say.number(duration.value, 2),
      why: limitWords(d.pegs.governs, joint, say),
      help: helpWords(d, say),
    };
    if (d.pegs.tension.value < NOTHING)
      return say.text(
        count === 1
          ? "{joint} is pulled apart with {force} under {combination}, and its peg of {diameter} holds nothing there: {why}. {help}"
          : "{joint} is pulled apart with {force} under {combination}, and its {count} pegs of {diameter} hold nothing there: {why}. {help}",
        values,
      );
    return say.text(
      count === 1
        ? "{joint} is pulled apart with {force} under {combination}, more than the {limit} that its peg of {diameter} holds there ({ratio}, C_D {duration}): {why}. {help}"
        : "{joint} is pulled apart with {force} under {combination}, more than the {limit} that its {count} pegs of {diameter} hold there ({ratio}, C_D {duration}): {why}. {help}",
      values,
    );
  },
  worked: ({ pegs, pull }, say) => pegFormula(pegs, pull.joint.sizes.pegs?.count ?? 0, pull.most, say),
  fixes: (d, say) => {
    const { entry, sizes, assumed, path, pegsPath: written } = d.pull.joint;
    const pegs = stronger(d);
    // joints of the roof's own rafters stand with the roof
    const holder = entry?.path ?? (sizes.pair && !assumed ? path : undefined);
    if (holder === undefined || !pegs || !sizes.pegs) return [];
    const diameter = say.length(pegs.diameter);
    const { count } = pegs;
    const edits: Edit[] =
      written === undefined
        ? [{ kind: "add", path: holder, key: "pegs", text: `{count: ${count}, diameter: ${diameter}}` }]
        : [
            ...(count === sizes.pegs.count
              ? []
              : [{ kind: "replace", path: `${written}/count`, text: String(count) } as const]),
            ...(pegs.diameter === sizes.pegs.diameter.value
              ? []
              : [{ kind: "replace", path: `${written}/diameter`, text: diameter } as const]),
          ];
    return [
      {
        title: say.text(count === 1 ? "Take one peg of {diameter}" : "Take {count} pegs of {diameter}", {
          count,
          diameter,
        }),
        edits,
      },
    ];
  },
});
