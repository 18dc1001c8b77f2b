import { caseWords } from "../../statics/case-words.ts";
import type { FrameResults } from "../../statics/frame-results.ts";
import { type PocketLoad, pocketLoads } from "../../statics/pocket-loads.ts";
import { defineCheck } from "../check.ts";
import { madeStress, steps } from "../formula-words.ts";
import { overPercent } from "../members/use-words.ts";
import { judgedJoints } from "./judged.ts";

interface Data extends PocketLoad {
  readonly solution: FrameResults["solution"];
}

/** Loads below this say nothing, lb (common practice, no source). */
const LITTLE = 50;

export const pocketFloorThin = defineCheck<"results", Data>({
  meta: {
    id: "pocket-floor-thin",
    title: "Too little wood under a pocket",
    level: "error",
    area: "joinery",
    source: {
      text: "NDS 3.4.3.3, as remembered, for fasteners; taken over to the floor of a pocket (derived)",
      status: "memory",
    },
    explanation: {
      what: "A joist or purlin rests in a pocket so deep that the wood left under it in the carrying timber is too thin for the load, or there is none.",
      why: "The carrier splits along the grain at the pocket’s floor, and its lower part comes down with the joist.",
      formula:
        "load ≤ 2 × 2/3 F_v′ b d_e; within 5 depths of the carrier’s end 2/3 F_v′ b d_e (d_e/d)²; d_e = wood under the pocket, b = breadth of the carrier, half of it with a pocket from the other side as well",
      remedy:
        "Set the joist higher or take a shallower one, a deeper carrier, or a joint that hangs higher: a housed dovetail.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame }) {
    if (!frame) return;
    const judged = new Set(judgedJoints(frame.model).map(({ id }) => id));
    for (const pocket of pocketLoads(frame)) {
      const { joint, load, capacity } = pocket;
      if (!judged.has(joint.id) || load < LITTLE || load <= capacity) continue;
      yield {
        path: joint.path,
        onKey: true,
        place: joint.id,
        data: { ...pocket, solution: frame.solution },
        value: load,
        limit: capacity,
        unit: "lb",
        // equal loads at mirrored places differ in the last digits
        severity: Math.round((1000 * load) / Math.max(1, capacity)),
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint.id,
      carrier: d.joint.into.id,
      load: say.force(d.load),
      combination: caseWords(d.solution, d.caseId, say),
      under: say.length(d.under),
      limit: say.force(d.capacity),
      duration: say.number(d.duration.value, 2),
    };
    return d.capacity > 0
      ? say.text(
          "{joint} lays {load} on the floor of its pocket under {combination}, and the {under} of wood under it in {carrier} carries {limit} ({ratio}, C_D {duration}): the carrier splits along the grain there. Set the timber higher, take a deeper carrier, or a housed dovetail, which hangs higher.",
          { ...values, ratio: overPercent(d.load / d.capacity, say) },
        )
      : say.text(
          "{joint} lays {load} on the floor of its pocket under {combination}, and there is no wood under it in {carrier}: the pocket is as deep as its carrier, and the timber falls through. Set it higher or take a deeper carrier.",
          values,
        );
  },
  worked: (d, say) => {
    const values = {
      load: say.force(d.load),
      shear: say.stress(d.shear.value),
      breadth: say.length(d.breadth),
      under: say.length(d.under),
      depth: say.length(d.depth),
      limit: say.force(d.capacity),
    };
    return steps(
      madeStress("F_v", d.shear, say),
      d.nearEnd
        ? say.text("{load} > 2/3 × {shear} × {breadth} × {under} × ({under} ÷ {depth})² = {limit}", values)
        : say.text("{load} > 2 × 2/3 × {shear} × {breadth} × {under} = {limit}", values),
    );
  },
});
