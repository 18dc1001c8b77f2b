import { rowWidth } from "../../fasteners/screw-room.ts";
import { defineCheck } from "../check.ts";
import type { Say } from "../say.ts";
import type { ScrewSet } from "./screw-sets.ts";

/** How wide the wood is in which they stand, and what asks for more. */
function whyWords(set: ScrewSet, say: Say): string {
  const { of, into, run, short, at, diameter, count } = set;
  if (short) {
    const values = {
      of: of.id,
      into: into.id,
      have: say.length(Math.max(0, short.have)),
      need: say.length(short.need),
    };
    switch (short.what) {
      case "spacing":
        return say.text("they stand {have} from center to center, less than {need}", values);
      case "brace-edge":
        return say.text("they stand {have} from the edge of {of}, less than {need}", values);
      case "brace-end":
        return say.text(
          "they stand {have} from the slanting end of {of} along its grain, less than {need}",
          values,
        );
      case "timber-edge":
        return say.text("they stand {have} from the edge of {into}, less than {need}", values);
      case "timber-end":
        return say.text("they stand {have} from the end of {into}, less than {need}", values);
    }
  }
  const values = {
    of: of.id,
    width: say.length(of.width),
    into: into.id,
    seat: say.length(run),
    need: say.length(rowWidth(count, diameter)),
  };
  return at === "seat"
    ? say.text("{of} is {width} wide and its seat {seat} long; in one row they need {need}", values)
    : at === "purlin"
      ? say.text("{of} is {width} wide and lies {seat} on {into}; in one row they need {need}", values)
      : say.text("{of} is {width} wide, and in their row they need {need}", values);
}

export const fastenersCrowded = defineCheck<"shared", ScrewSet>({
  meta: {
    id: "fasteners-crowded",
    title: "Screws that stand too close to each other or to an edge",
    level: "warning",
    area: "joinery",
    source: {
      text: "NDS Table 12.5.1E, lag screws of 1/4 in and more in withdrawal",
      status: "memory",
    },
    explanation: {
      what: "More screws are written than stand with their distances at the end of a brace, across a rafter over its seat, across its head, or across a purlin over what carries it. Nails have a check of their own.",
      why: "The wood splits from screw to screw or out to the edge, and then none of them holds what is counted on.",
      formula:
        "center to center ≥ 4 D; to the edge of either timber ≥ 1.5 D; to the end of the timber that a brace meets ≥ 4 D; along the grain of the brace to its slanting end ≥ 4 D, from the middle of the wood that a screw passes, wood ÷ (2 sin α); a row of n needs (4 (n − 1) + 3) D; D = the screw's diameter; NDS gives no numbers below 1/4 in, where the same is kept (common practice, no source)",
      remedy: "Take fewer screws, longer in place of more, or thinner ones; or a wider timber.",
    },
  },
  input: "shared",
  *find({ screwSets }) {
    for (const set of screwSets()) {
      const { path, short, count, most, written } = set;
      if (count <= most) continue;
      yield {
        ...(written === undefined ? { path, onKey: true as const } : { path: written }),
        place: set.place,
        apart: "crowded",
        data: set,
        ...(short
          ? { value: Math.max(0, short.have), limit: short.need, unit: "in" as const }
          : { value: count, limit: most, unit: "count" as const }),
        severity: count - most,
      };
    }
  },
  words: (set, say) => {
    const values = {
      count: set.count,
      diameter: say.length(set.diameter),
      joint: set.place,
      why: whyWords(set, say),
      most: set.most,
    };
    return set.most > 0
      ? say.text(
          "{count} screws of {diameter} are too many at {joint}: {why}, and the wood splits. No more than {most} fit: take longer ones in place of more, or a wider timber.",
          values,
        )
      : say.text(
          "{count} screws of {diameter} have no room at {joint}: {why}, and the wood splits. Take thinner ones, or a wider timber.",
          values,
        );
  },
  worked: ({ short, count, most }, say) =>
    short
      ? say.text("{have} < {need}", {
          have: say.length(Math.max(0, short.have)),
          need: say.length(short.need),
        })
      : say.text("{count} > {most}", { count, most }),
  fixes: ({ most, written, gives }, say) =>
    most > 0 && written !== undefined && gives.count
      ? [
          {
            title: say.text("Take {count} of them", { count: most }),
            edits: [{ kind: "replace", path: `${written}/count`, text: `${most}` }],
          },
        ]
      : [],
});
