import { usual } from "../../joinery/proportions.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { sizeFound, sizePath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly length: number;
  readonly least: number;
}

export const tenonShort = defineCheck<"model", Data>({
  meta: {
    id: "tenon-short",
    title: "A tenon too short",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: a stub tenon that only keeps its timber in place is 1 in long or more",
      status: "common-practice",
    },
    explanation: {
      what: "A tenon is shorter than 1 in.",
      why: "It slips out of its mortise as the timbers shrink or are jarred in raising, and no peg finds wood in it.",
      formula: "length ≥ 1 in (25 mm)",
      remedy:
        "Make a stub tenon 1 to 2 in long, a pegged one half as long as the timber it enters is thick; or leave the length out.",
    },
  },
  input: "model",
  *find(model) {
    const least = usual(model.frame.units === "mm", 1, 25);
    for (const j of judgedJoints(model)) {
      const { tenon } = j.sizes;
      if (!tenon || tenon.length.value >= least - 1e-6) continue;
      yield sizeFound(j, sizePath(j, "tenon/length", tenon.length), tenon.length.value, least, {
        joint: j.id,
        length: tenon.length.value,
        least,
      });
    }
  },
  words: (d, say) =>
    say.text(
      "The tenon at {joint} is {length} long, less than {least}: it slips out as the timbers shrink or are jarred, and no peg holds in it. Make a stub tenon {least} or longer, a pegged one half the timber it enters.",
      { joint: d.joint, length: say.length(d.length), least: say.length(d.least) },
    ),
  worked: (d, say) =>
    say.text("{length} < {least}", { length: say.length(d.length), least: say.length(d.least) }),
});
