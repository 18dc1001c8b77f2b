import type { Joint } from "../../joinery/joint.ts";
import { downToStep } from "../../joinery/proportions.ts";
import type { Model } from "../../model/model.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";

interface Data {
  readonly joint: Joint;
  readonly written: number;
  readonly deepest: number;
  readonly path: string;
}

/** What a size may be off, in: sizes are marked out to a sixteenth. */
const SLACK = 1 / 32;

/** Plumb depth of its step as the file says it, in. */
function written({ entry }: Joint, { frame }: Model): number | undefined {
  const length = entry ? entry.housing : frame.roof?.rafters?.seat.housing;
  return length && inches(length);
}

export const stepDeep = defineCheck<"model", Data>({
  meta: {
    id: "step-deep",
    title: "A step deeper than its rafter",
    level: "warning",
    area: "joinery",
    source: { text: "plane geometry of the joint", status: "derived" },
    explanation: {
      what: "The step of a step-lap seat is written deeper than the rafter reaches into the plate there.",
      why: "Below the rafter’s underside there is nothing that could push against it: the step is cut, drawn and reckoned only as deep as the rafter is.",
      formula:
        "plumb step ≤ length ÷ 2 × tan θ; step square to the rafter ≤ length × sin θ × cos θ; θ = the roof’s slope, length = from the plate’s outside face to where the rafter’s underside meets its top",
      remedy: "Make the step shallower, or the seat longer.",
    },
  },
  input: "model",
  *find(model) {
    for (const joint of judgedJoints(model)) {
      const { step } = joint.sizes;
      const asked = step && written(joint, model);
      if (!step || asked === undefined || asked <= step.deepest + SLACK) continue;
      const path = `${joint.path}/housing`;
      yield {
        path,
        place: joint.id,
        data: { joint, written: asked, deepest: step.deepest, path },
        value: asked,
        limit: step.deepest,
        unit: "in",
        severity: asked - step.deepest,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "The step of {joint} is written {written} deep, and {rafter} reaches only {deepest} into {plate} there: nothing of it would push against the rest. Make the step shallower, or the seat longer.",
      {
        joint: d.joint.id,
        rafter: d.joint.of.id,
        plate: d.joint.into.id,
        written: say.length(d.written),
        deepest: say.length(d.deepest),
      },
    ),
  worked: ({ joint: { sizes }, written: asked, deepest }, say) => {
    const { seat, step } = sizes;
    if (!seat || !step) return undefined;
    const angle = (seat.angle * Math.PI) / 180;
    const values = {
      asked: say.length(asked),
      length: say.length(seat.level.value),
      deepest: say.length(deepest),
    };
    return step.form === "plumb"
      ? say.text("{asked} > {length} ÷ 2 × {tan} = {deepest}", {
          ...values,
          tan: say.number(Math.tan(angle), 3),
        })
      : say.text("{asked} > {length} × {sine} × {cosine} = {deepest}", {
          ...values,
          sine: say.number(Math.sin(angle), 3),
          cosine: say.number(Math.cos(angle), 3),
        });
  },
  fixes: ({ deepest, path }, say) => {
    const depth = downToStep(deepest, say.metric);
    if (depth <= 0) return [];
    const text = say.length(depth);
    return [
      { title: say.text("Step {depth} deep", { depth: text }), edits: [{ kind: "replace", path, text }] },
    ];
  },
});
