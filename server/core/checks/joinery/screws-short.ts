import { lagPenetration } from "../../fasteners/lag-screw.ts";
import { penetration } from "../../fasteners/lateral.ts";
import { SCREW_LENGTHS, WOOD_BEHIND } from "../../joinery/kinds/screwed-brace.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";
import type { ScrewSet } from "./screw-sets.ts";

interface Data extends ScrewSet {
  /** in, of the screw in the timber that it shall hold in, without its tip */
  readonly reach: number;
  /** in; below it a screw counts for nothing sideways */
  readonly least: number;
}

/** From this diameter on a screw is judged as a lag screw, in. */
const LAG = 1 / 4 - 1e-9;

/** How far a screw of that length goes in, in. */
const reachOf = ({ diameter, wood }: ScrewSet, length: number): number =>
  diameter >= LAG ? lagPenetration(diameter, length, wood) : Math.max(0, length - wood);

/** The shortest on sale that reaches and keeps wood behind its point, in. */
const longer = (d: Data, say: Say): number | undefined =>
  SCREW_LENGTHS(say.metric).find(
    (length) => reachOf(d, length) >= d.least && length <= d.through - WOOD_BEHIND,
  );

export const screwsShort = defineCheck<"shared", Data>({
  meta: {
    id: "screws-short",
    title: "Screws that do not reach the timber that they shall hold in",
    level: "warning",
    area: "joinery",
    source: { text: "NDS Table 12J notes for lag screws, NDS 12.1.5.6 for thinner ones", status: "memory" },
    explanation: {
      what: "The screws of a brace, of a rafter’s seat or head, or of a purlin, end in the timber that they pass, or enter the other one by less than four diameters (six of screws below 1/4 in), the tapered tip left out.",
      why: "A screw that ends in the brace fastens it to nothing, one that is barely in works loose: whatever forces were found, the joint is not held.",
      formula:
        "4 D ≤ length − wood under the head − tip; below 1/4 in 6 D ≤ length − wood under the head; at a rafter’s head along the slant",
      remedy: "Take longer screws that still leave 1/2 in of wood behind their point.",
    },
  },
  input: "shared",
  *find({ screwSets }) {
    for (const set of screwSets()) {
      const { path, place, diameter, length, written, gives } = set;
      // where so many stand decides the wood under their heads: crowding has a finding of its own
      if (set.count > set.most) continue;
      const reach = reachOf(set, length);
      const { least, ok } = penetration(reach, diameter, diameter >= LAG ? "lag" : "screw-or-nail");
      if (ok) continue;
      yield {
        ...(written !== undefined && gives.length
          ? { path: `${written}/length` }
          : { path, onKey: true as const }),
        place,
        data: { ...set, reach, least },
        value: reach,
        limit: least,
        unit: "in",
        severity: set.wood - length,
      };
    }
  },
  words: (d, say) => {
    const { place, of, into, length, wood, reach, least } = d;
    const better = longer(d, say);
    const values = {
      joint: place,
      of: of.id,
      into: into.id,
      length: say.length(length),
      wood: say.length(wood),
      reach: say.length(reach),
      least: say.length(least),
      help:
        better === undefined
          ? say.text("No screws on sale reach that deep and end in the wood: take another joint there.")
          : say.text("{better} reaches.", { better: say.length(better) }),
    };
    return reach <= 0
      ? say.text(
          "At {joint} screws of {length} have {wood} of {of} to pass and end before they hold in {into}: they fasten it to nothing. {help}",
          values,
        )
      : say.text(
          "At {joint} screws of {length} pass {wood} of {of} and hold with {reach} in {into}, their tips left out, less than the {least} from which they count: they work loose. {help}",
          values,
        );
  },
  worked: (d, say) =>
    say.text("{reach} < {least}", { reach: say.length(d.reach), least: say.length(d.least) }),
  fixes: (d, say) => {
    const better = longer(d, say);
    if (better === undefined || d.written === undefined || !d.gives.length) return [];
    return replaceFix(`${d.written}/length`, say.length(better), (length) =>
      say.text("Take screws of {length}", { length }),
    );
  },
});
