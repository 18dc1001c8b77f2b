import { BUCKLING_WORDS } from "../../statics/member-uses.ts";
import { defineCheck } from "../check.ts";
import { fineLength } from "../formula-words.ts";
import { sectionPath } from "./member-path.ts";
import { type Exceeded, worstOver } from "./use-words.ts";

export const timberSlender = defineCheck<"results", Exceeded>({
  meta: {
    id: "timber-slender",
    title: "A timber too slender for the load along it",
    level: "error",
    area: "members",
    source: { text: "NDS 2018 3.7.1.4 and appendix G", status: "memory" },
    explanation: {
      what: "A timber that is pressed along its length is longer between what holds it than fifty times its thickness.",
      why: "Such a timber bows out and buckles under a load that is small for its section, and no rule of the code covers it.",
      formula:
        "l_e/d ≤ 50 in both directions; l_e = 2.4 × foot to knee where only knees hold the frame upright, 1.0 × between places that are themselves held",
      remedy: "Take a thicker timber, set its knees lower, or hold it to something that stands by itself.",
    },
  },
  input: "results",
  ofTheWhole: true,
  *find({ frame, model }) {
    if (!frame) return;
    for (const result of frame.members.values()) {
      const use = worstOver(result, (what) => what === "slenderness");
      if (!use) continue;
      yield {
        path: sectionPath(model, result.timber),
        place: result.timber.id,
        data: { result, use },
        value: use.value,
        limit: use.limit,
        unit: "ratio",
        severity: use.ratio,
      };
    }
  },
  words(d, say) {
    const { buckling } = d.use;
    return say.text(
      "{stick} ({section}) is {value} times as long as thick between what holds it, more than {limit}: it buckles (length counted {factor} times: {why}, {length}). Take a thicker timber, set its knees lower, or hold it to something that stands by itself.",
      {
        stick: d.result.timber.id,
        section: `${say.length(d.result.timber.width)} × ${say.length(d.result.timber.depth)}`,
        // rounded up, so that what is over never reads as what is allowed
        value: say.number(Math.ceil(d.use.value - 1e-9), 0),
        limit: say.number(d.use.limit, 0),
        factor: say.number(buckling?.factor ?? 1, 1),
        why: buckling ? say.text(BUCKLING_WORDS[buckling.why]) : "",
        length: say.length(Math.round((buckling?.length ?? 0) * 16) / 16),
      },
    );
  },
  worked: ({ use: { buckling, value, limit } }, say) =>
    buckling &&
    say.text("{factor} × {length} ÷ {side} = {value} > {limit}", {
      factor: say.number(buckling.factor, 3),
      length: fineLength(buckling.length, say),
      // what the effective length was divided by
      side: fineLength(buckling.effective / value, say),
      value: say.number(value, 3),
      limit: say.number(limit, 0),
    }),
});
