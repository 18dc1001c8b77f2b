import { inches } from "../../quantity/length.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type HeelThrust, heelThrusts } from "../../statics/heel-thrusts.ts";
import { defineCheck } from "../check.ts";
import { madeStress } from "../formula-words.ts";
import { judgedJoints } from "./judged.ts";

interface Data extends HeelThrust {
  readonly solution: FrameResults["solution"];
  /** in, that the tie must run on farther; undefined where no relish that counts is long enough */
  readonly longer: number | undefined;
}

/** Feet that push less say nothing, lb (common practice, no source). */
const LITTLE = 50;

/** Length in, rounded up to what is marked out. */
const upToStep = (value: number, metric: boolean): number => {
  const step = metric ? 10 / 25.4 : 1 / 2;
  return Math.ceil(value / step - 1e-9) * step;
};

function longer({ relish, thrust, limit }: HeelThrust): number | undefined {
  const needed = thrust / (limit * relish.breadth);
  return needed <= relish.most && needed > relish.length ? needed - relish.length : undefined;
}

export const relishShort = defineCheck<"results", Data>({
  meta: {
    id: "relish-short",
    title: "Too little relish beyond a rafter’s foot",
    level: "error",
    area: "joinery",
    source: {
      text: "shear parallel to grain F_v′, NDS 4.3 and Supplement; the sheared plane by statics; no more than 8 times the step counts, German practice as remembered",
      status: "memory",
    },
    explanation: {
      what: "A rafter’s foot pushes along its tie toward the tie’s end, and the wood between its toe and that end is too short to take the push.",
      why: "The block before the toe shears off along the grain, at once and without warning, and the rafters spread.",
      formula:
        "thrust ÷ (relish × width) ≤ F_v′ of the tie with C_D of the combination; relish from the bottom of the step, at most 8 steps; before a tenon alone: width = thickness + 2 × depth of the tenon",
      remedy: "Let the tie run on farther past the foot, step the foot deeper, or take a wider rafter.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    if (!frame) return;
    const judged = new Set(judgedJoints(frame.model).map(({ id }) => id));
    for (const heel of heelThrusts(frame)) {
      const { joint, stress, limit, thrust } = heel;
      if (!judged.has(joint.id) || thrust < LITTLE || stress <= limit) continue;
      yield {
        path: joint.path,
        onKey: true,
        place: joint.id,
        data: { ...heel, solution: frame.solution, longer: longer(heel) },
        value: stress,
        limit,
        unit: "psi",
        // equal thrusts at mirrored places differ in the last digits
        severity: Math.round((1000 * thrust) / Math.max(1, heel.relish.counted)),
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint.id,
      tie: d.joint.into.id,
      thrust: say.force(d.thrust),
      combination: caseWords(d.solution, d.caseId, say),
      relish: say.length(Math.max(0, d.relish.counted)),
      stress: say.stress(d.stress),
      limit: say.stress(d.limit),
      duration: say.number(d.duration.value, 2),
      help:
        d.longer === undefined
          ? say.text("Step the foot deeper into the tie, or take a wider rafter.")
          : say.text("Let the tie run on {length} farther.", {
              length: say.length(upToStep(d.longer, say.metric)),
            }),
    };
    return d.relish.counted > 0
      ? say.text(
          "{joint} pushes toward the end of {tie} with {thrust} under {combination}, which shears the {relish} of wood beyond its toe with {stress}, more than {limit} (F_v′, C_D {duration}): that block splits off and the rafters spread. {help}",
          values,
        )
      : say.text(
          "{joint} pushes toward the end of {tie} with {thrust} under {combination}, and there is no wood beyond its toe to take it: the rafters spread. {help}",
          values,
        );
  },
  worked: (d, say) =>
    d.relish.counted > 0
      ? say.text("{thrust} ÷ ({relish} × {breadth}) = {stress} > {limit}", {
          thrust: say.force(d.thrust),
          relish: say.length(d.relish.counted),
          breadth: say.length(d.relish.breadth),
          stress: say.stress(d.stress),
          limit: madeStress("F_v", d.shear, say),
        })
      : undefined,
  fixes: (d, say, { frame }) => {
    const member = frame?.model.members.get(d.joint.into.member);
    if (d.longer === undefined || member?.kind !== "tie") return [];
    const { overhang } = member;
    const now = overhang ? Math.max(inches(overhang.from), inches(overhang.to)) : 0;
    const text = say.length(upToStep(now + d.longer, say.metric));
    return [
      {
        title: say.text("Let the tie run {length} past its walls", { length: text }),
        edits: [
          overhang
            ? { kind: "replace", path: `${member.path}/overhang`, text }
            : { kind: "add", path: member.path, key: "overhang", text },
        ],
      },
    ];
  },
});
