import { drawboreRange } from "../../fasteners/pegs/drawbore.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly draw: number;
  readonly peg: number;
  readonly limit: number;
  readonly blocked: boolean;
}

export const drawboreOutOfRange = defineCheck<"model", Data>({
  meta: {
    id: "drawbore-out-of-range",
    title: "A drawbore offset that is too large",
    level: "warning",
    area: "joinery",
    source: {
      text: "a builder’s account: 1/16 to 1/8 in with 1 in pegs in hardwood; softwood takes half as much again, in proportion to the peg",
      status: "derived",
    },
    explanation: {
      what: "The hole through the tenon is set nearer the shoulder by more than a peg can bend around; from half the peg’s diameter on it is an error.",
      why: "The peg breaks or crushes the tenon’s end in driving, or does not find its way through at all.",
      formula:
        "draw ≤ 3/16 of the peg’s diameter, 9/64 in for a 3/4 in peg; half the diameter and more is an error",
      remedy: "Take 1/16 to 1/8 in, or leave it out: 3/32 in is usual.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { pegs } = j.sizes;
      // the usual draw is nobody’s choice: where it is too much for a thin peg, the peg is the finding
      if (pegs?.draw.from !== "file") continue;
      const draw = pegs.draw.value;
      const peg = pegs.diameter.value;
      const { most } = drawboreRange(peg, "softwood");
      if (draw <= most + 1e-6) continue;
      const blocked = draw >= peg / 2 - 1e-6;
      const limit = blocked ? peg / 2 : most;
      yield {
        ...sizeFound(j, sizePath(j, "pegs/draw", pegs.draw), draw, limit, {
          joint: j.id,
          draw,
          peg,
          limit,
          blocked,
        }),
        ...(blocked ? { level: "error" as const } : {}),
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      draw: say.length(d.draw),
      peg: say.length(d.peg),
      limit: say.length(Math.round(d.limit * 64) / 64),
      usual: say.metric ? "2 to 3 mm" : "1/16 to 1/8 in",
    };
    return d.blocked
      ? say.text(
          "The holes at {joint} are drawn by {draw}, half the {peg} peg or more: it does not find the hole in the tenon. Take {usual}.",
          values,
        )
      : say.text(
          "The holes at {joint} are drawn by {draw}, more than the {limit} that a {peg} peg bends around: it breaks, or tears the end of the tenon. Take {usual}.",
          values,
        );
  },
  worked: (d, say) => {
    const values = { draw: say.length(d.draw), peg: say.length(d.peg), limit: say.length(d.limit) };
    return d.blocked
      ? say.text("{draw} ≥ {peg} ÷ 2 = {limit}", values)
      : say.text("{draw} > 3/16 × {peg} = {limit}", values);
  },
});
