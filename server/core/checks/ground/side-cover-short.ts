import { faceCover, LEAST_SIDE_COVER, tubeFor, USUAL_SIDE_COVER } from "../../ground/cover.ts";
import type { Pier } from "../../model/model.ts";
import { defineCheck } from "../check.ts";
import { padFix, tubeFix } from "./pier-sizes.ts";

interface Data {
  readonly pier: Pier;
  readonly timber: number;
  readonly cover: number;
}

export const sideCoverShort = defineCheck<"model", Data>({
  meta: {
    id: "side-cover-short",
    title: "Too little concrete beside the anchor",
    level: "warning",
    area: "ground",
    source: {
      text: "habit of connector makers, 2 to 3 in beside a cast-in strap (figures uncertain); the maker’s own sheet governs",
      status: "common-practice",
    },
    explanation: {
      what: "The pier is so slim that less than 3 in of concrete stand beside the anchor’s straps.",
      why: "A strap near the edge breaks the concrete out long before it reaches its rated uplift.",
      formula: "cover = diameter ÷ 2 − width of the real timber ÷ 2",
      remedy: "Take a wider tube. The real timber counts, not its nominal size.",
    },
  },
  input: "model",
  *find(model) {
    for (const pier of model.piers) {
      const { timber, entry } = pier;
      if (entry.anchor?.kind !== "embedded-strap" || !timber) continue;
      const upright = Math.abs(timber.axis[2]) > 0.5;
      const broad = upright ? Math.max(timber.width, timber.depth) : timber.width;
      const cover = faceCover(pier.diameter, broad);
      if (cover >= USUAL_SIDE_COVER - 1e-6) continue;
      yield {
        path: `${entry.path}/${entry.kind === "pad" ? "width" : "diameter"}`,
        place: pier.id,
        ...(cover < LEAST_SIDE_COVER - 1e-6 ? { level: "error" as const } : {}),
        data: { pier, timber: broad, cover },
        value: cover,
        limit: USUAL_SIDE_COVER,
        unit: "in",
        severity: USUAL_SIDE_COVER - cover,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{pier} is {tube} across, which leaves {cover} of concrete beside the straps of a timber {timber} wide, less than {wanted}: the concrete breaks out under uplift. Take {better} or more.",
      {
        pier: d.pier.id,
        tube: say.length(d.pier.diameter),
        cover: say.length(Math.max(0, d.cover)),
        timber: say.length(d.timber),
        wanted: say.length(USUAL_SIDE_COVER),
        better: say.length(tubeFor(d.timber, say.metric)),
      },
    ),
  worked: (d, say) =>
    say.text("{tube} ÷ 2 − {timber} ÷ 2 = {cover} < {wanted}", {
      tube: say.length(d.pier.diameter),
      timber: say.length(d.timber),
      cover: say.length(d.cover),
      wanted: say.length(USUAL_SIDE_COVER),
    }),
  fixes: ({ pier, timber }, say) =>
    (pier.entry.kind === "pad" ? padFix : tubeFix)(pier, tubeFor(timber, say.metric), say),
});
