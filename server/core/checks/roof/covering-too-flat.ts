import type { CoveringKind } from "../../frame/roof.ts";
import type { Pitch } from "../../loads/snow-factors.ts";
import type { Model } from "../../model/model.ts";
import { COVERINGS, type FlatterWith, flatterThan } from "../../roof/coverings.ts";
import type { Sourced } from "../../sourced.ts";
import { defineCheck } from "../check.ts";
import { COVERING_NAMES } from "./covering-names.ts";

interface Data {
  readonly covering: CoveringKind;
  readonly pitch: Pitch;
  readonly limit: Sourced;
  /** it may lie this flat with that */
  readonly flatterWith: FlatterWith | undefined;
}

const WITH: Readonly<Record<FlatterWith, string>> = {
  "double-underlayment": "two layers of underlayment",
  "lap-sealant": "sealant in every lap",
};

/** The typed pitch as it is written; that of the slopes where it follows from the plates. */
function pitchesOf(model: Model): readonly Pitch[] {
  const typed = model.frame.roof?.pitch;
  if (typed) return [typed];
  return (model.roof?.slopes ?? []).map((slope) => ({ rise: slope.slope, run: 1 }));
}

export const coveringTooFlat = defineCheck<"model", Data>({
  meta: {
    id: "covering-too-flat",
    title: "A pitch below the covering’s least",
    level: "warning",
    area: "roof",
    source: {
      text: "IRC chapter 9 (R905), IBC 1507: least slope of each covering; some of the slopes were seen in print, those of slate, shakes and roll roofing are remembered",
      status: "memory",
    },
    explanation: {
      what: "The roof is flatter than its covering may lie, or so flat that the covering needs more below it (then it is a note).",
      why: "Water stands in the laps, wind drives it under them, and the deck rots from above.",
      formula:
        "least rise in 12: standing seam 1/4; lapped steel 3, with sealed laps 1/2; asphalt shingles 4, with two layers of underlayment 2; wood shingles and shakes 3; slate 4; tile 4, with two layers of underlayment 2 1/2; roll roofing 1",
      remedy:
        "Make the roof steeper or take a covering for flat roofs. The maker may ask for more than the code.",
    },
  },
  input: "model",
  *find(model) {
    const { roof } = model.frame;
    const covering = roof?.covering;
    if (!roof || !covering) return;
    const { leastSlope, plainFrom } = COVERINGS[covering.kind];
    for (const pitch of pitchesOf(model)) {
      // a shed that falls toward its high wall has its own finding
      if (pitch.rise < 0) continue;
      const below = flatterThan(pitch, leastSlope.value);
      const limit = below ? leastSlope : plainFrom;
      if (!limit || (!below && !flatterThan(pitch, limit.value))) continue;
      yield {
        path: roof.pitch ? `${roof.path}/pitch` : `${covering.path}/kind`,
        level: below ? "warning" : "note",
        data: {
          covering: covering.kind,
          pitch,
          limit,
          flatterWith: below ? undefined : plainFrom?.flatterWith,
        },
        value: pitch.rise / pitch.run,
        limit: limit.value / 12,
        unit: "ratio",
        severity: limit.value / 12 - pitch.rise / pitch.run,
      };
    }
  },
  words: (d, say) => {
    const values = {
      covering: COVERING_NAMES[d.covering],
      pitch: say.number((d.pitch.rise * 12) / d.pitch.run, 2),
      limit: say.number(d.limit.value, 2),
      source: d.limit.source,
    };
    return d.flatterWith === undefined
      ? say.text(
          "{covering} lies no flatter than {limit}:12 ({source}), and this roof is at {pitch}:12: water stands in the laps and comes through. Make it steeper or take another covering.",
          values,
        )
      : say.text(
          "{covering} at {pitch}:12, below {limit}:12, needs {with} ({source}). Without it water comes through.",
          { ...values, with: WITH[d.flatterWith] },
        );
  },
  worked: (d, say) =>
    say.text("{rise} ÷ {run} = {slope} < {limit} ÷ 12 = {least}", {
      rise: say.number(d.pitch.rise, 3),
      run: say.number(d.pitch.run, 3),
      slope: say.number(d.pitch.rise / d.pitch.run, 3),
      limit: say.number(d.limit.value, 2),
      least: say.number(d.limit.value / 12, 3),
    }),
});
