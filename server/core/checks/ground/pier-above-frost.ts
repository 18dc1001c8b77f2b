import { leastFootingDepth } from "../../ground/frost.ts";
import type { Pier } from "../../model/model.ts";
import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";
import { depthFix } from "./pier-sizes.ts";

interface Data {
  readonly pier: Pier;
  readonly depth: number;
  readonly frost: number;
  readonly least: number;
  /** what the file gives as depth of the tube, inches */
  readonly tube: number;
}

export const pierAboveFrost = defineCheck<"model", Data>({
  meta: {
    id: "pier-above-frost",
    title: "A pier that ends above the frost",
    level: "error",
    area: "ground",
    source: {
      text: "IRC 2021 R403.1.4: below the frost line, at least 12 in below undisturbed ground",
      status: "published",
    },
    explanation: {
      what: "The underside of a pier or of its footing is not as deep as the frost goes.",
      why: "Ground that freezes under it lifts the post, every winter a little, and racks the frame.",
      formula:
        "depth of the tube + footing, below the lowest ground that touches it ≥ max(frost depth, 12 in)",
      remedy:
        "Dig deeper; local code may know exceptions for small buildings, which this check does not apply. Piers on bedrock are left out: rock does not heave.",
    },
  },
  input: "model",
  *find(model) {
    const { frostDepth, soil } = model.frame.site;
    if (frostDepth === undefined || soil === "bedrock") return;
    const frost = inches(frostDepth);
    const least = leastFootingDepth(frost);
    for (const pier of model.piers) {
      const depth = pier.groundLow - pier.bottom;
      if (depth >= least - 1e-6) continue;
      yield {
        path: `${pier.entry.path}/depth`,
        place: pier.id,
        data: { pier, depth, frost, least, tube: pier.groundLow - pier.tubeBottom },
        value: depth,
        limit: least,
        unit: "in",
        severity: least - depth,
        related: [
          { path: `${model.frame.site.path}/frost-depth`, message: (say) => say.text("frost depth") },
        ],
      };
    }
  },
  words: (d, say) =>
    say.text("{pier} ends {depth} below the lowest ground beside it. {why} Go {more} deeper.", {
      pier: d.pier.id,
      depth: say.length(d.depth),
      why:
        d.least > d.frost
          ? say.text("A footing goes at least {least} into undisturbed ground.", {
              least: say.length(d.least),
            })
          : say.text("Frost goes down {frost}, and freezing ground lifts what stands in it.", {
              frost: say.length(d.frost),
            }),
      more: say.length(Math.ceil((d.least - d.depth) * 16 - 1e-6) / 16),
    }),
  worked: (d, say) =>
    say.text("{tube} + {footing} = {depth} < max({frost}, {usual}) = {least}", {
      tube: say.length(d.tube),
      footing: say.length(d.depth - d.tube),
      depth: say.length(d.depth),
      frost: say.length(d.frost),
      usual: say.length(leastFootingDepth(0)),
      least: say.length(d.least),
    }),
  fixes: (d, say) => depthFix(d.pier, enough(d.tube + d.least - d.depth, say.metric), say),
});

/** The next whole inch, or centimetre. */
function enough(depth: number, metric: boolean): number {
  const step = metric ? 10 / 25.4 : 1;
  return Math.ceil(depth / step - 1e-6) * step;
}
