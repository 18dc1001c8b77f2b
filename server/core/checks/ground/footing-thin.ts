import type { Pier } from "../../model/model.ts";
import { defineCheck } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import { pierStep } from "./pier-sizes.ts";

interface Data {
  readonly pier: string;
  /** inches */
  readonly footing: number;
  readonly tube: number;
  readonly thickness: number;
  readonly least: number;
  readonly path: string;
}

/** Least thickness of a spread footing, inches (IRC R403.1.1; published). */
const LEAST = 6;

/** What a footing is short by and still counts as it is meant, inches: less than a form is true to. */
const SLACK = 1 / 8;

const projection = ({ footing, diameter }: Pier): number => ((footing?.diameter ?? 0) - diameter) / 2;

export const footingThin = defineCheck<"model", Data>({
  meta: {
    id: "footing-thin",
    title: "A footing thinner than it reaches past its tube",
    level: "error",
    area: "ground",
    source: {
      text: "IRC R403.1.1: spread footings at least 6 in thick, their projection no more than their thickness",
      status: "published",
    },
    explanation: {
      what: "The footing under a tube is thinner than it reaches past the tube, or thinner than 6 in.",
      why: "Plain concrete that reaches far and thin breaks off at the tube’s edge, and the pier stands on the tube’s own area. Bearing, uplift and depth are reckoned with the whole footing.",
      formula: "thickness ≥ 6 in and ≥ (diameter of the footing − diameter of the tube) ÷ 2",
      remedy:
        "Cast it thicker, or no wider than it is thick beside the tube; steel in it is an engineer’s work.",
    },
  },
  input: "model",
  *find({ piers }) {
    for (const pier of piers) {
      const { footing, entry } = pier;
      if (!footing || entry.kind === "pad") continue;
      const least = Math.max(LEAST, projection(pier));
      if (footing.thickness >= least - SLACK) continue;
      yield {
        path: `${entry.path}/footing/thickness`,
        place: pier.id,
        data: {
          pier: pier.id,
          footing: footing.diameter,
          tube: pier.diameter,
          thickness: footing.thickness,
          least,
          path: `${entry.path}/footing/thickness`,
        },
        value: footing.thickness,
        limit: least,
        unit: "in",
        severity: least - footing.thickness,
      };
    }
  },
  words: (d, say) =>
    say.text(
      "The footing of {pier} is {thickness} thick and reaches {reach} past its tube: thinner than {least} it breaks off at the tube’s edge, and only the tube stands on the soil. Cast it {least} thick, or narrower.",
      {
        pier: d.pier,
        thickness: say.length(d.thickness),
        reach: say.length((d.footing - d.tube) / 2),
        least: say.length(d.least),
      },
    ),
  worked: (d, say) => {
    const compared = `${say.length(d.thickness)} < ${say.length(d.least)}`;
    return d.least === LEAST
      ? compared
      : `${say.length(d.thickness)} < (${say.length(d.footing)} − ${say.length(d.tube)}) ÷ 2 = ${say.length(d.least)}`;
  },
  fixes: (d, say) => {
    const step = pierStep(say);
    return replaceFix(d.path, say.length(step * Math.ceil(d.least / step - 1e-6)), (thickness) =>
      say.text("Cast the footing {thickness} thick", { thickness }),
    );
  },
});
