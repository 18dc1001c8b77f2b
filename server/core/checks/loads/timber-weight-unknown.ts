import { isWhole } from "../../frame/frame.ts";
import { findSpecies } from "../../wood/species.ts";
import { densityOf } from "../../wood/timber-weight.ts";
import { defineCheck } from "../check.ts";

interface Data {
  readonly species: string | undefined;
  readonly sticks: number;
}

export const timberWeightUnknown = defineCheck<"model", Data>({
  meta: {
    id: "timber-weight-unknown",
    title: "A timber whose weight is not known",
    level: "warning",
    area: "loads",
    source: { text: "ASCE 7 section 3.1: dead load is the weight of all that is built in", status: "memory" },
    explanation: {
      what: "No weight is recorded for the wood of some timbers, so their own weight is in no load.",
      why: "Green timber is heavy; without its own weight a timber, what carries it and its pier are judged too lightly.",
      remedy:
        "State the weight under timber (weight: 45 lb/ft³), or name a species whose weight is recorded.",
    },
  },
  input: "model",
  ofTheWhole: true,
  *find({ timbers, frame }) {
    // a species on a line that is lost is not missing
    if (!isWhole(frame)) return;
    const lacking = timbers.filter((t) => densityOf(t.class) === undefined);
    const paths = new Map(lacking.map((t) => [t.class?.path ?? t.path, t.class]));
    for (const [path, timberClass] of paths) {
      const species = timberClass?.species?.text;
      // an unknown species has a finding of its own
      if (species !== undefined && !findSpecies(species)) continue;
      const sticks = lacking.filter((t) => (t.class?.path ?? t.path) === path).length;
      yield { path, onKey: true, data: { species, sticks } };
    }
  },
  words: (d, say) =>
    say.text(
      "The weight of {wood} is not known, so {count} of it load nothing by themselves. Write “weight: 45 lb/ft³” with what yours weighs, or name a species under timber.",
      {
        wood: d.species ?? say.text("a species that is not named"),
        count: d.sticks === 1 ? say.text("one timber") : say.text("{n} timbers", { n: d.sticks }),
      },
    ),
});
