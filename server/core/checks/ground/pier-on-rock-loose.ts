import { leastFootingDepth } from "../../ground/frost.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly pier: string;
  readonly path: string;
  readonly depth: number;
  readonly least: number;
}

/** What the fix writes: the bars of a usual pier. Common practice, no source. */
const USUAL_BARS = "{count: 3, size: 4}";

export const pierOnRockLoose = defineCheck<"model", Data>({
  meta: {
    id: "pier-on-rock-loose",
    title: "A pier on rock that nothing pins",
    level: "warning",
    area: "ground",
    source: {
      text: "common practice, no source: bars grouted into holes that are drilled in the rock",
      status: "common-practice",
    },
    explanation: {
      what: "A pier stands on bedrock, less deep than one in earth would have to be, and no bars reach from it into the rock.",
      why: "Earth does not hold it, and concrete does not grip bare rock: a push slides it off, frost that finds water in the joint lifts it.",
      formula: "depth + footing ≥ max(frost depth, 12 in), or bars",
      remedy:
        "Drill holes into the rock, grout bars into them that reach up into the pier, and name them as its rebar.",
    },
  },
  input: "model",
  *find({ frame, piers }) {
    const { soil, frostDepth } = frame.site;
    if (soil !== "bedrock") return;
    const least = leastFootingDepth(frostDepth === undefined ? 0 : inches(frostDepth));
    for (const { id, entry, groundLow, bottom } of piers) {
      const depth = groundLow - bottom;
      if (entry.rebar || depth >= least - 1e-6) continue;
      yield {
        path: entry.path,
        onKey: true,
        place: id,
        data: { pier: id, path: entry.path, depth, least },
        value: depth,
        limit: least,
        unit: "in",
        severity: least - depth,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{pier} stands on rock {depth} below the ground, and nothing pins it there: a push slides it off. Drill bars into the rock, grout them in, and write them as “rebar: {bars}”; {least} deep it would need none.",
      { pier: d.pier, depth: say.length(Math.max(0, d.depth)), least: say.length(d.least), bars: USUAL_BARS },
    ),
  worked: (d, say) => `${say.length(d.depth)} < ${say.length(d.least)}`,
  fixes: (d, say) => [
    {
      title: say.text("Pin the pier to the rock with bars"),
      edits: [{ kind: "add", path: d.path, key: "rebar", text: USUAL_BARS }],
    },
  ],
});
