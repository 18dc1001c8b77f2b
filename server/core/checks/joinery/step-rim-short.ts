import { rise } from "../../joinery/seat.ts";
import { halfExtent } from "../../model/box.ts";
import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type StepThrust, stepThrusts } from "../../statics/step-thrusts.ts";
import { defineCheck } from "../check.ts";
import { madeStress, steps } from "../formula-words.ts";
import { judgedJoints } from "./judged.ts";

interface Data extends StepThrust {
  readonly solution: FrameResults["solution"];
  /** in, of a seat whose rim would be long enough; undefined where there is no room for one, or the timbers' places decide */
  readonly longer: number | undefined;
}

/** What the tail keeps of the rafter's depth beyond the step (common practice, no source). */
const TAIL = 1 / 2;

/** The rim is the same share of every seat. */
function longer({ joint, stress, limit, rim }: StepThrust, metric: boolean): number | undefined {
  const { seat } = joint.sizes;
  if (!seat || joint.entry || !(rim > 0)) return undefined;
  const step = metric ? 5 / 25.4 : 1 / 4;
  const length = Math.ceil((seat.level.value * stress) / limit / step - 1e-9) * step;
  const notch = length * Math.sin((seat.angle * Math.PI) / 180);
  const fits = length <= 2 * halfExtent(joint.into, rise(joint.of).uphill) && notch <= TAIL * joint.of.depth;
  return fits ? length : undefined;
}

/** Steps that push less say nothing, lb (common practice, no source). */
const LITTLE = 50;

export const stepRimShort = defineCheck<"results", Data>({
  meta: {
    id: "step-rim-short",
    title: "Too little of a plate beyond a rafter’s step",
    level: "error",
    area: "joinery",
    source: {
      text: "shear parallel to grain F_v′, NDS 4.3 and Supplement; rolling shear a third of it, ANSI/APA PRG 320; the sheared plane by statics",
      status: "memory",
    },
    explanation: {
      what: "A rafter in a step-lap seat pushes out against its step, and the rim of the plate between the step and the outside face is too short to take the push.",
      why: "The rim rolls off across the grain, at once and without warning, and the rafter slides off its plate.",
      formula:
        "level push on the step ÷ (rim × width of the rafter) ≤ F_v′ ÷ 3 of the plate with C_D of the combination; rim from the step’s bottom to the outside face; the grain that runs on at both sides of the rafter is not counted",
      remedy:
        "Make the seat longer, so that more of the plate stands beyond the step; take a wider rafter; or keep the thrust out of the seat with a ridge that carries or a tie.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    if (!frame) return;
    const known = new Set(judgedJoints(frame.model).map(({ id }) => id));
    for (const push of stepThrusts(frame)) {
      const { joint, stress, limit, thrust, rim } = push;
      if (!known.has(joint.id) || thrust < LITTLE || stress <= limit) continue;
      yield {
        path: joint.path,
        onKey: true,
        place: joint.id,
        data: { ...push, solution: frame.solution, longer: longer(push, frame.model.frame.units === "mm") },
        value: stress,
        limit,
        unit: "psi",
        // equal thrusts at mirrored places differ in the last digits
        severity: Math.round((1000 * thrust) / Math.max(1e-3, rim)),
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{joint} pushes out of {plate} with {thrust} under {combination}, which shears the {rim} of wood beyond its step across the grain with {stress}, more than {limit} (F_v′ ÷ 3, C_D {duration}): the rim breaks off and the rafter slides. {help}",
      {
        joint: d.joint.id,
        plate: d.joint.into.id,
        thrust: say.force(d.thrust),
        combination: caseWords(d.solution, d.caseId, say),
        rim: say.length(d.rim),
        stress: say.stress(d.stress),
        limit: say.stress(d.limit),
        duration: say.number(d.duration.value, 2),
        help:
          d.longer === undefined
            ? say.text(
                "No longer seat has room there: take wider rafters, or let a ridge that carries or a tie take the thrust.",
              )
            : say.text("A seat {length} long has a rim that holds.", { length: say.length(d.longer) }),
      },
    ),
  worked: (d, say) =>
    steps(
      madeStress("F_v", d.shear, say),
      say.text("{thrust} ÷ ({rim} × {width}) = {stress} > {value} ÷ 3 = {limit}", {
        thrust: say.force(d.thrust),
        rim: say.length(d.rim),
        width: say.length(d.width),
        stress: say.stress(d.stress),
        value: say.stress(d.shear.value),
        limit: say.stress(d.limit),
      }),
    ),
  fixes: ({ joint, longer: length }, say) => {
    if (length === undefined) return [];
    const text = say.length(length);
    return [
      {
        title: say.text("Seat {length}", { length: text }),
        edits: [
          joint.sizes.seat?.level.from === "file"
            ? { kind: "replace", path: `${joint.path}/length`, text }
            : { kind: "add", path: joint.path, key: "length", text },
        ],
      },
    ];
  },
});
