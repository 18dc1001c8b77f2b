import { inches } from "../../quantity/length.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly pier: string;
  readonly depth: number;
  readonly frost: number;
  readonly footing: boolean;
}

/** Least depth of any footing below undisturbed ground, inches (IRC R403.1.4, seen). */
const LEAST = 12;

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
        "Dig deeper; local code may know exceptions for small buildings, which this check does not apply.",
    },
  },
  input: "model",
  *find(model) {
    const { frostDepth } = model.frame.site;
    if (frostDepth === undefined) return;
    const frost = Math.max(LEAST, inches(frostDepth));
    for (const pier of model.piers) {
      const depth = pier.groundLow - pier.bottom;
      if (depth >= frost - 1e-6) continue;
      yield {
        path: `${pier.entry.path}/depth`,
        place: pier.id,
        data: { pier: pier.id, depth, frost, footing: pier.footing !== undefined },
        value: depth,
        limit: frost,
        unit: "in",
        severity: frost - depth,
        related: [
          { path: `${model.frame.site.path}/frost-depth`, message: (say) => say.text("frost depth") },
        ],
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{pier} ends {depth} below the lowest ground beside it, and frost goes to {frost}: freezing ground would lift it. Go {more} deeper.",
      {
        pier: d.pier,
        depth: say.length(d.depth),
        frost: say.length(d.frost),
        more: say.length(d.frost - d.depth),
      },
    ),
});
