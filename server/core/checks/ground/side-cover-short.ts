import { defineCheck } from "../check.ts";

interface Data {
  readonly pier: string;
  readonly tube: number;
  readonly timber: number;
  readonly cover: number;
}

/** Concrete beside a strap cast in, inches: the upper figure of the makers' usual 2 to 3 in, and the lower. */
const WANTED = 3;
const LEAST = 2;

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
      const cover = pier.diameter / 2 - broad / 2;
      if (cover >= WANTED - 1e-6) continue;
      yield {
        path: `${entry.path}/diameter`,
        place: pier.id,
        ...(cover < LEAST ? { level: "error" as const } : {}),
        data: { pier: pier.id, tube: pier.diameter, timber: broad, cover },
        value: cover,
        limit: WANTED,
        unit: "in",
        severity: WANTED - cover,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "{pier}: {tube} across leaves {cover} of concrete beside the straps of a timber {timber} wide, less than {wanted}: the concrete breaks out under uplift. Take {better} or more.",
      {
        pier: d.pier,
        tube: say.length(d.tube),
        cover: say.length(Math.max(0, d.cover)),
        timber: say.length(d.timber),
        wanted: say.length(WANTED),
        better: say.length(nextTube(d.timber + 2 * WANTED)),
      },
    ),
});

/** Tubes are sold in steps of 2 in. */
function nextTube(least: number): number {
  return Math.ceil(least / 2 - 1e-9) * 2;
}
