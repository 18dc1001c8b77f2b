import { usual } from "../../joinery/proportions.ts";
import { defineCheck } from "../check.ts";
import { fineLength, steps } from "../formula-words.ts";
import { sizeFound } from "./size-path.ts";
import { type WrittenWedge, wedgeFix, writtenWedges } from "./wedge-lengths.ts";

interface Data extends WrittenWedge {
  readonly inside: boolean;
}

export const wedgeShort = defineCheck<"model", Data>({
  meta: {
    id: "wedge-short",
    title: "A wedge too short for its mortise, or to be driven again",
    level: "warning",
    area: "joinery",
    source: {
      text: "plane geometry (derived); what drying asks for as in `dovetail-draws-out`",
      status: "derived",
    },
    explanation: {
      what: "The wedge of a half-dovetail is shorter than its mortise is deep; as a note, it reaches through the mortise and has too little left to be driven on while the timber dries.",
      why: "A short wedge bears on part of the tenon only and cants it; one without reserve is all inside when the tail has shrunk away from it, and cannot be driven again.",
      formula: "length ≥ mortise (warning); length ≥ mortise + S × tip ÷ slope (note)",
      remedy: "Make it longer, or leave its length out: the rule adds what drying asks for.",
    },
  },
  input: "model",
  *find(model) {
    const metric = model.frame.units === "mm";
    for (const wedge of writtenWedges(model)) {
      const { joint, path, length, mortise, reserve } = wedge;
      const inside = length < mortise - 1 / 32;
      const limit = inside ? mortise : mortise + reserve;
      if (length >= limit - usual(metric, 1 / 32, 1)) continue;
      yield {
        ...sizeFound(joint, { path }, length, limit, { ...wedge, inside }),
        ...(inside ? {} : { level: "note" as const }),
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint.id,
      of: d.joint.of.id,
      length: say.length(d.length),
      mortise: say.length(d.mortise),
      reserve: say.length(d.reserve),
      usual: say.length(d.usual),
    };
    return d.inside
      ? say.text(
          "The wedge at {joint} is {length} long, and its mortise is {mortise} deep: it bears on part of the tenon only, and there is nothing left to drive. Make it {usual}.",
          values,
        )
      : say.text(
          "The wedge at {joint} is {length} long in a mortise of {mortise}, and {of} asks for {reserve} more as it dries: then it is all inside and cannot be driven again. Make it {usual}.",
          values,
        );
  },
  worked: (d, say) => {
    const values = {
      length: say.length(d.length),
      mortise: say.length(d.mortise),
      reserve: fineLength(d.reserve, say),
      sum: fineLength(d.mortise + d.reserve, say),
    };
    return d.inside
      ? say.text("{length} < {mortise}", values)
      : steps(say.text("{length} < {mortise} + {reserve} = {sum}", values));
  },
  fixes: wedgeFix,
});
