import { pegClearance } from "../../joinery/peg-clearance.ts";
import { defineCheck } from "../check.ts";
import { judgedJoints } from "./judged.ts";
import { pegsPath } from "./size-path.ts";

interface Data {
  readonly joint: string;
  readonly of: string;
  readonly count: number;
  readonly peg: number;
  readonly what: "spacing" | "edge";
  readonly distance: number;
  readonly limit: number;
  readonly cannot: boolean;
}

/** Peg diameters, center to center of two holes and from a hole's center to the edge of its tenon. */
const SPACING = 2;
const EDGE = 1;
/** With this share of it the holes run into one another, or break out. */
const CANNOT = 1 / 2;

export const pegsCrowded = defineCheck<"model", Data>({
  meta: {
    id: "pegs-crowded",
    title: "Pegs that do not fit in their tenon",
    level: "warning",
    area: "joinery",
    source: {
      text: "common practice, no source: two diameters from hole to hole, one from a hole to the edge of the tenon, its tip and its shoulder; what a peg carries asks for more",
      status: "common-practice",
    },
    explanation: {
      what: "Peg holes stand so close to each other, or to the edge, the tip or the shoulder of their tenon, that hardly any wood is between; where they run into one another or break out it is an error.",
      why: "The tenon splits along the holes when the pegs are driven.",
      formula:
        "hole to hole ≥ 2 diameters, an error at 1; hole to the edge of the tenon ≥ 1 diameter, an error at 1/2; centers count",
      remedy: "Take fewer or thinner pegs, or a wider and longer tenon.",
    },
  },
  input: "model",
  *find(model) {
    for (const j of judgedJoints(model)) {
      const { pegs, wedge, tenon } = j.sizes;
      // a drop that takes half the timber is the cause, its pegs the consequence
      if (!pegs || (wedge && tenon && wedge.drop.value >= tenon.width.value)) continue;
      const peg = pegs.diameter.value;
      const { spacing, edge } = pegClearance(j);
      const short = (
        [
          ["spacing", spacing, SPACING],
          ["edge", edge, EDGE],
        ] as const
      ).flatMap(([what, distance, least]) =>
        distance === undefined || distance >= least * peg - 1 / 32
          ? []
          : [{ what, distance: Math.max(0, distance), limit: least * peg, share: distance / (least * peg) }],
      );
      const worst = short.reduce<(typeof short)[number] | undefined>(
        (low, next) => (!low || next.share < low.share ? next : low),
        undefined,
      );
      if (!worst) continue;
      const { what, distance, limit, share } = worst;
      const cannot = share <= CANNOT + 1e-6;
      yield {
        ...pegsPath(j),
        place: j.id,
        ...(cannot ? { level: "error" as const } : {}),
        data: { joint: j.id, of: j.of.id, count: pegs.count, peg, what, distance, limit, cannot },
        value: distance,
        limit,
        unit: "in",
        severity: 1 - share,
      };
    }
  },
  words: (d, say) => {
    const values = {
      joint: d.joint,
      of: d.of,
      count: d.count,
      peg: say.length(d.peg),
      distance: say.length(d.distance),
      limit: say.length(d.limit),
    };
    if (d.what === "spacing")
      return d.cannot
        ? say.text(
            "At {joint} {count} pegs of {peg} stand {distance} apart: their holes run into one another. Take fewer pegs; {limit} between their centers is the least.",
            values,
          )
        : say.text(
            "At {joint} {count} pegs of {peg} stand {distance} apart, less than {limit}: the tenon splits from hole to hole. Take fewer pegs or a wider tenon.",
            values,
          );
    return d.cannot
      ? say.text(
          "The pegs of {peg} at {joint} do not fit: a hole’s center lies {distance} from the edge of the tenon of {of}, so it breaks out. Take fewer or thinner pegs, or a larger tenon; {limit} is the least.",
          values,
        )
      : say.text(
          "The pegs of {peg} at {joint} have a hole whose center lies {distance} from the edge of the tenon of {of}, less than {limit}: it splits out. Take fewer or thinner pegs, or a larger tenon.",
          values,
        );
  },
  worked: (d, say) =>
    say.text("{distance} < {diameters} × {peg} = {limit}", {
      distance: say.length(d.distance),
      diameters: d.what === "spacing" ? SPACING : EDGE,
      peg: say.length(d.peg),
      limit: say.length(d.limit),
    }),
});
