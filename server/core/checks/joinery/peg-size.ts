import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly peg: number;
  readonly limit: number;
  readonly wrong: "tenon" | "thick" | "thin";
}

/** Inches: pegs of 3/4 to 1 1/4 in are what TFEC 1 has rules for; smaller braces are pegged with 5/8 and 1/2 in too. */
const THICKEST = 1.25;
const THINNEST = 0.5;
const USUAL = 0.75;

export const pegSize = defineCheck<"model", Data>({
  meta: {
    id: "peg-size",
    title: "A peg too thick or too thin",
    level: "warning",
    area: "joinery",
    source: {
      text: "TFEC 1 3.4, as remembered: pegs of 3/4 to 1 1/4 in; from practice: none below 1/2 in, none as thick as the tenon",
      status: "memory",
    },
    explanation: {
      what: "A peg is thicker than 1 1/4 in or thinner than 1/2 in; as thick as its tenon or thicker it is an error.",
      why: "The hole of a thick peg takes the wood that should hold it, a thin peg breaks in driving. Outside this range no rule tells what a peg carries.",
      formula: "1/2 in ≤ diameter ≤ 1 1/4 in; diameter < thickness of the tenon",
      remedy: "Take 3/4 in pegs; in timbers thicker than 10 in take pegs of 1 in.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { pegs, tenon } = j.sizes;
      if (!pegs) continue;
      const peg = pegs.diameter.value;
      const thickness = tenon?.thickness.value ?? Number.POSITIVE_INFINITY;
      const wrong =
        // a tenon thinner than any usual peg is itself the fault
        peg >= thickness - 1e-6 && peg > USUAL + 1e-6
          ? "tenon"
          : peg > THICKEST + 1e-6
            ? "thick"
            : // 12 mm is the metric size of 1/2 in
              peg < THINNEST - 1 / 32
              ? "thin"
              : undefined;
      if (!wrong) continue;
      const limit = { tenon: thickness, thick: THICKEST, thin: THINNEST }[wrong];
      yield {
        ...sizeFound(j, sizePath(j, "pegs/diameter", pegs.diameter), peg, limit, {
          joint: j.id,
          peg,
          limit,
          wrong,
        }),
        ...(wrong === "tenon" ? { level: "error" as const } : {}),
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      peg: say.length(d.peg),
      limit: say.length(d.limit),
      usual: say.length(say.metric ? 19 / 25.4 : USUAL),
    };
    switch (d.wrong) {
      case "tenon":
        return say.text(
          "The pegs at {joint} are {peg} thick, and the tenon is {limit}: their holes cut it off. Take pegs of {usual}.",
          values,
        );
      case "thick":
        return say.text(
          "The pegs at {joint} are {peg} thick, more than {limit}: the holes take the wood that should hold them, and no rule tells what such a peg carries. Take pegs of {usual}.",
          values,
        );
      case "thin":
        return say.text(
          "The pegs at {joint} are {peg} thick, less than {limit}: they break in driving and carry next to nothing. Take pegs of {usual}.",
          values,
        );
    }
  },
  worked: (d, say) => {
    const values = { peg: say.length(d.peg), limit: say.length(d.limit) };
    switch (d.wrong) {
      case "tenon":
        return say.text("{peg} ≥ {limit}", values);
      case "thick":
        return say.text("{peg} > {limit}", values);
      case "thin":
        return say.text("{peg} < {limit}", values);
    }
  },
});
