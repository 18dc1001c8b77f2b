import { leastFootingDepth } from "../../ground/frost.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly pier: string;
  readonly path: string;
  /** of the place, inches; undefined where the file does not give it */
  readonly frost: number | undefined;
}

/** A usual depth for the example where the file knows no frost, inches. */
const EXAMPLE = 48;

export const pierDepthMissing = defineCheck<"frame", Data>({
  meta: {
    id: "pier-depth-missing",
    title: "A pier without a depth",
    level: "error",
    area: "ground",
    source: { text: "the frame language of this program", status: "file-format" },
    explanation: {
      what: "An entry of piers does not say how deep its piers go.",
      why: "There is no pier to place: frost, side cover and what the ground carries are not checked for it, which must not be taken for a pass.",
      remedy:
        "Give the depth from the lowest ground beside the pier to the tube’s bottom; at least the frost depth, never less than 12 in.",
    },
  },
  input: "frame",
  *find({ piers, site }) {
    const frost = site.frostDepth === undefined ? undefined : inches(site.frostDepth);
    for (const { name, path, depth } of piers)
      if (depth === undefined) yield { path, onKey: true, place: name, data: { pier: name, path, frost } };
  },
  words: (d, say) => {
    const depth = say.length(suggested(d, say.metric));
    return d.frost === undefined
      ? say.text(
          "{pier} has no depth, so there is no pier to check: neither frost, nor side cover, nor what the ground carries. Write “depth: {depth}”, below the frost of the place.",
          { pier: d.pier, depth },
        )
      : say.text(
          "{pier} has no depth, so there is no pier to check: neither frost, nor side cover, nor what the ground carries. Frost goes down {frost} here: write “depth: {depth}” or more.",
          { pier: d.pier, depth, frost: say.length(d.frost) },
        );
  },
  fixes: (d, say) => {
    if (d.frost === undefined) return [];
    const depth = say.length(suggested(d, say.metric));
    return [
      {
        title: say.text("Give the pier a depth of {depth}", { depth }),
        edits: [{ kind: "add", path: d.path, key: "depth", text: depth }],
      },
    ];
  },
});

/** Down to the frost, in whole inches or centimetres. */
function suggested({ frost }: Data, metric: boolean): number {
  const step = metric ? 10 / 25.4 : 1;
  const depth = frost === undefined ? EXAMPLE : leastFootingDepth(frost);
  return Math.ceil(depth / step - 1e-6) * step;
}
