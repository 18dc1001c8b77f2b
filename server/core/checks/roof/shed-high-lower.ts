import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";

interface Data {
  readonly high: string;
  readonly higher: string;
  /** inches */
  readonly by: number;
  readonly path: string;
}

export const shedHighLower = defineCheck<"model", Data>({
  meta: {
    id: "shed-high-lower",
    title: "A shed roof whose high wall is the lower one",
    level: "error",
    area: "roof",
    source: {
      text: "the placement rule of this program: a shed roof names its high wall",
      status: "file-format",
    },
    explanation: {
      what: "The wall that a shed roof names as its high one has the lower plate.",
      why: "The rafters are placed from the low wall up to the high one, so here they rest on nothing.",
      remedy: "Name the other wall in “high”, or change the heights of the plates.",
    },
  },
  input: "model",
  *find(model) {
    const { roof } = model.frame;
    if (roof?.kind !== "shed" || !roof.high) return;
    for (const { slope, wall, run, seat } of model.roof?.slopes ?? [])
      if (slope < 0)
        yield {
          path: roof.high.path,
          data: { high: roof.high.text, higher: wall, by: -slope * (run - seat), path: roof.high.path },
        };
  },
  words: (d, say) =>
    say.text(
      "The roof names wall {high} as its high one, and the plate of wall {higher} is {by} higher: the rafters would rest on nothing. Write “high: {higher}”, or raise the plate of wall {high}.",
      { high: d.high, higher: d.higher, by: say.length(d.by) },
    ),
  fixes: (d, say) =>
    replaceFix(d.path, d.higher, (wall) => say.text("Name wall {wall} the high one", { wall })),
});
