import type { Joint } from "../../joinery/joint.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly into: string;
  readonly housing: number;
  readonly wood: number;
  readonly usual: number;
  readonly cut: "through" | "half" | "deep";
}

/** Of the wood behind the face: what a housing usually takes at most, and from where on too little is left. */
const USUAL = 1 / 4;
/** A whole end that rests in its housing needs more of it. */
const USUAL_SEAT = 1 / 3;
const MOST = 1 / 2;

/** What a joint's housing takes at most by common practice, in. */
export function usualHousing({ kind, face }: Joint): number {
  return face.thickness * (kind === "housed" || kind === "pocket" ? USUAL_SEAT : USUAL);
}

export const housingDeep = defineCheck<"model", Data>({
  meta: {
    id: "housing-deep",
    title: "A housing too deep",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: housings of 1/2 to 1 in, at most a quarter of the timber, seats of whole ends a third",
      status: "common-practice",
    },
    explanation: {
      what: "A housing or pocket takes more of the timber it is cut into than is usual; from half of it on it is an error.",
      why: "What is left breaks there, and a tenon, a peg or a housing from the other side finds no wood.",
      formula:
        "housing ≤ thickness of the receiving timber ÷ 4 (housed ends and pockets: ÷ 3); half and more is an error",
      remedy: "Make the housing 1/2 to 1 in deep; let the tenon and its pegs do the rest.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const housing = j.sizes.housing.value;
      const wood = j.face.thickness;
      const usual = usualHousing(j);
      // sizes are marked out to a sixteenth
      if (housing <= usual + 1 / 32) continue;
      const cut = housing >= wood - 1e-6 ? "through" : housing >= wood * MOST - 1e-6 ? "half" : "deep";
      yield {
        ...sizePath(j, "housing", j.sizes.housing),
        place: j.id,
        ...(cut === "deep" ? {} : { level: "error" as const }),
        data: { joint: j.id, into: j.into.id, housing, wood, usual, cut },
        value: housing,
        limit: cut === "deep" ? usual : wood * MOST,
        unit: "in",
        severity: housing / wood,
      };
    }
  },
  words: (d, say) => {
    const step = say.metric ? 5 / 25.4 : 1 / 4;
    const values = {
      joint: d.joint,
      into: d.into,
      housing: say.length(d.housing),
      wood: say.length(d.wood),
      usual: say.length(Math.max(step, Math.floor(d.usual / step + 1e-9) * step)),
    };
    switch (d.cut) {
      case "through":
        return say.text(
          "The housing at {joint} is {housing} deep, and {into} is {wood} thick there: it would cut the timber through. Make it {usual} or less.",
          values,
        );
      case "half":
        return say.text(
          "The housing at {joint} is {housing} deep and takes half or more of {into}, which is {wood} thick there: what is left breaks. Make it {usual} or less.",
          values,
        );
      case "deep":
        return say.text(
          "The housing at {joint} is {housing} deep, more than usual for {into}, which is {wood} thick there: it is weakened more than the bearing gains. Make it {usual} or less.",
          values,
        );
    }
  },
  worked: (d, say) => {
    const values = {
      housing: say.length(d.housing),
      wood: say.length(d.wood),
      usual: say.length(d.usual),
      half: say.length(d.wood * MOST),
      part: Math.round(d.wood / d.usual),
    };
    return d.cut === "deep"
      ? say.text("{housing} > {wood} ÷ {part} = {usual}", values)
      : say.text("{housing} ≥ {wood} ÷ 2 = {half}", values);
  },
});
