import { defineCheck } from "../check.ts";
import type { NailSet } from "./nail-sets.ts";

interface Data extends NailSet {
  /** they come out of the far face; else they reach too little */
  readonly past: boolean;
}

/** What a size may fall short, in. */
const SLACK = 1 / 32;

export const nailsReach = defineCheck<"shared", Data>({
  meta: {
    id: "nails-reach",
    title: "Nails that reach too little wood, or come out of it",
    level: "warning",
    area: "joinery",
    source: { text: "NDS 12.1.6.5, and 12.1.6.3 for toe-nails", status: "memory" },
    explanation: {
      what: "The nails of a rafter’s seat or head, or of a purlin on what carries it, enter the timber that they hold in by less than six diameters, or come out of its far face. Nails too short to pass the rafter or purlin are toe-nails from both sides.",
      why: "A nail that is barely in counts for nothing sideways and works loose; a point past the face holds nothing and stands where someone reaches.",
      formula:
        "6 D ≤ length in the timber ≤ its thickness; of a toe-nail that starts a third of its length above it at 30°: L × cos 30° − L ÷ 3",
      remedy: "Take longer nails where they reach too little, shorter ones where they come out.",
    },
  },
  input: "shared",
  *find({ nailSets }) {
    for (const set of nailSets()) {
      const { places, written } = set;
      const past = places.reach > places.thickness + SLACK;
      if (!past && places.reach >= places.least - 1e-6) continue;
      const limit = past ? places.thickness : places.least;
      yield {
        path: `${written}/length`,
        place: set.place,
        data: { ...set, past },
        value: places.reach,
        limit,
        unit: "in",
        severity: Math.abs(places.reach - limit),
      };
    }
  },
  words: ({ place, into, fasteners, places, past }, say) => {
    const values = {
      joint: place,
      into: into.id,
      length: say.length(fasteners.length),
      reach: say.length(Math.max(0, places.reach)),
      least: say.length(places.least),
      thickness: say.length(places.thickness),
    };
    return past
      ? say.text(
          "At {joint} nails of {length} reach {reach} into {into}, which is {thickness} thick there, and come out of its far face: what is past it holds nothing, and the point stands free. Take shorter ones.",
          values,
        )
      : say.text(
          "At {joint} nails of {length} reach {reach} into {into}, less than the {least} of six diameters from which they count: they work loose. Take longer ones.",
          values,
        );
  },
  worked: ({ places, past }, say) => {
    const reach = say.length(places.reach);
    return past
      ? say.text("{reach} > {most}", { reach, most: say.length(places.thickness) })
      : say.text("{reach} < {least}", { reach, least: say.length(places.least) });
  },
});
