import { endBreadth } from "../../joinery/end-breadth.ts";
import { usual } from "../../joinery/proportions.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly of: string;
  readonly drop: number;
  readonly depth: number;
  readonly limit: number;
  readonly wrong: "nothing-left" | "half" | "deep" | "shallow";
}

/** Of the joined timber's depth: what the drop usually takes at most, and from where on too little is left. */
const USUAL = 1 / 4;
const MOST = 1 / 2;

export const dovetailDrop = defineCheck<"model", Data>({
  meta: {
    id: "dovetail-drop",
    title: "A half-dovetail that drops too much or too little",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: an eighth of the timber’s depth, at least 1/2 in, at most a quarter",
      status: "common-practice",
    },
    explanation: {
      what: "The drop of a wedged half-dovetail is less than 1/2 in or more than a quarter of its timber’s depth; half the depth and more is an error.",
      why: "The drop is cut away from below: a deep one leaves a thin neck that breaks at the shoulder, a shallow one leaves the wedge nothing to hold.",
      formula: "neck = depth − drop; 1/2 in ≤ drop ≤ depth ÷ 4",
      remedy:
        "Let it drop by an eighth of the timber’s depth, 1 in for a depth of 8 in. Where the file gives no drop, that is taken.",
    },
  },
  input: "model",
  *find(model) {
    const least = usual(model.frame.units === "mm", 1 / 2, 12);
    for (const j of judgedJoints(model)) {
      const drop = j.sizes.wedge?.drop;
      if (!drop) continue;
      const depth = endBreadth(j, j.face.grain);
      const d = drop.value;
      const shallow = d < least - 1e-6;
      if (!shallow && d <= depth * USUAL + 1 / 32) continue;
      const wrong = shallow
        ? "shallow"
        : d >= depth - 1e-6
          ? "nothing-left"
          : d >= depth * MOST - 1e-6
            ? "half"
            : "deep";
      const limit = shallow ? least : depth * (wrong === "deep" ? USUAL : MOST);
      yield {
        ...sizeFound(j, sizePath(j, "drop", drop), d, limit, {
          joint: j.id,
          of: j.of.id,
          drop: d,
          depth,
          limit,
          wrong,
        }),
        ...(wrong === "half" || wrong === "nothing-left" ? { level: "error" as const } : {}),
      };
    }
  },
  words: (d, say) => {
    const step = say.metric ? 5 / 25.4 : 1 / 4;
    const values = {
      joint: d.joint,
      of: d.of,
      drop: say.length(d.drop),
      depth: say.length(d.depth),
      neck: say.length(Math.max(0, d.depth - d.drop)),
      least: say.length(d.limit),
      better: say.length(Math.max(step, Math.round(d.depth / 8 / step) * step)),
    };
    switch (d.wrong) {
      case "nothing-left":
        return say.text(
          "The drop at {joint} is {drop}, and {of} is {depth} deep: no tenon is left. Take about {better}.",
          values,
        );
      case "half":
        return say.text(
          "The drop at {joint} is {drop}, half or more of the {depth} of {of}: the neck of {neck} that is left breaks at the shoulder. Take about {better}.",
          values,
        );
      case "deep":
        return say.text(
          "The drop at {joint} is {drop}, more than a quarter of the {depth} of {of}: it leaves a neck of {neck} at the shoulder. Take about {better}.",
          values,
        );
      case "shallow":
        return say.text(
          "The drop at {joint} is {drop}, less than {least}: the wedge has next to nothing to hold, and the tenon draws out. Take about {better}.",
          values,
        );
    }
  },
  worked: (d, say) => {
    const values = { drop: say.length(d.drop), depth: say.length(d.depth), limit: say.length(d.limit) };
    switch (d.wrong) {
      case "shallow":
        return say.text("{drop} < {limit}", values);
      case "deep":
        return say.text("{drop} > {depth} ÷ 4 = {limit}", values);
      case "half":
      case "nothing-left":
        return say.text("{drop} ≥ {depth} ÷ 2 = {limit}", values);
    }
  },
});
