import { SCREW_SLACK } from "../../fasteners/screw-room.ts";
import { SCREW_LENGTHS, WOOD_BEHIND } from "../../joinery/kinds/screwed-brace.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";
import type { ScrewSet } from "./screw-sets.ts";

/** The longest on sale that keeps wood behind its point and still enters the timber, in. */
const fitting = ({ through, wood }: ScrewSet, say: Say): number | undefined =>
  SCREW_LENGTHS(say.metric)
    .filter((length) => length > wood && length <= through - WOOD_BEHIND)
    .at(-1);

export const screwComesOut = defineCheck<"shared", ScrewSet>({
  meta: {
    id: "screw-comes-out",
    title: "Screws that come out of the other side",
    level: "warning",
    area: "joinery",
    source: { text: "plane geometry of the joint", status: "derived" },
    explanation: {
      what: "A screw is longer than the wood that it passes: its point comes out of the far face of the timber that it holds in. A screw of a rafter’s head slants down at 45°, and comes out of a shallow ridge’s underside.",
      why: "The thread past the face holds nothing, the wood breaks out around it, and the point stands where someone reaches.",
      formula:
        "length ≤ wood under the head + thickness of the timber along the screw, less its housing; at a rafter’s head on the slant: √2 × the ridge’s thickness, or √2 × its height from half the rafter’s plumb depth down to the underside, whichever is less",
      remedy: "Take a screw that leaves 1/2 in of wood behind its point (common practice, no source).",
    },
  },
  input: "shared",
  *find({ screwSets }) {
    for (const set of screwSets()) {
      const { path, length, through, written, gives } = set;
      const past = length - through;
      if (past <= SCREW_SLACK) continue;
      yield {
        ...(written !== undefined && gives.length
          ? { path: `${written}/length` }
          : { path, onKey: true as const }),
        place: set.place,
        data: set,
        value: length,
        limit: through,
        unit: "in",
        severity: past,
      };
    }
  },
  words: (set, say) => {
    const { place, into, length, through, exit } = set;
    const values = {
      joint: place,
      where:
        exit === "underside"
          ? say.text("the underside of {into}", { into: into.id })
          : say.text("the far face of {into}", { into: into.id }),
      length: say.length(length),
      through: say.length(through),
      past: say.length(length - through),
      behind: say.length(WOOD_BEHIND),
    };
    const better = fitting(set, say);
    return better === undefined
      ? say.text(
          "At {joint} screws of {length} pass {through} of wood and come out of {where} by {past}: that thread holds nothing, and the point stands free. Take shorter ones, with {behind} of wood behind the point.",
          values,
        )
      : say.text(
          "At {joint} screws of {length} pass {through} of wood and come out of {where} by {past}: that thread holds nothing, and the point stands free. {better} is long enough.",
          { ...values, better: say.length(better) },
        );
  },
  worked: (set, say) =>
    say.text("{length} > {through}", { length: say.length(set.length), through: say.length(set.through) }),
  fixes: (set, say) => {
    const better = fitting(set, say);
    if (better === undefined || set.written === undefined || !set.gives.length) return [];
    return replaceFix(`${set.written}/length`, say.length(better), (length) =>
      say.text("Take screws of {length}", { length }),
    );
  },
});
