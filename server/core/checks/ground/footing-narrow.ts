import { defineCheck } from "../check.ts";
import { castSize, FORM_SLACK, LEAST_PROJECTION, LEAST_THICKNESS } from "./pier-sizes.ts";

interface Data {
  readonly pier: string;
  /** inches */
  readonly footing: number;
  readonly tube: number;
  readonly thickness: number;
  readonly least: number;
  /** of the entry's footing */
  readonly path: string;
}

export const footingNarrow = defineCheck<"model", Data>({
  meta: {
    id: "footing-narrow",
    title: "A footing that does not reach past its tube",
    level: "warning",
    area: "ground",
    source: {
      text: "IRC R403.1.1: the projection of a spread footing is not less than 2 in",
      status: "published",
    },
    explanation: {
      what: "The footing under a tube is narrower than the tube, which is an error, or reaches less than 2 in past it all round.",
      why: "A tube that is set over a footing never stands in its very middle, and one that is wider than its footing hangs over it. Bearing is reckoned with the area of the footing.",
      formula: "diameter of the footing ≥ diameter of the tube + 2 × 2 in",
      remedy: "Cast it wider, or leave the footing out where the tube alone carries.",
    },
  },
  input: "model",
  *find({ piers }) {
    for (const { footing, entry, diameter, id } of piers) {
      if (!footing || entry.kind === "pad") continue;
      const least = diameter + 2 * LEAST_PROJECTION;
      if (footing.diameter >= least - FORM_SLACK) continue;
      yield {
        path: `${entry.path}/footing/diameter`,
        place: id,
        ...(footing.diameter < diameter - FORM_SLACK ? { level: "error" as const } : {}),
        data: {
          pier: id,
          footing: footing.diameter,
          tube: diameter,
          thickness: footing.thickness,
          least,
          path: `${entry.path}/footing`,
        },
        value: footing.diameter,
        limit: least,
        unit: "in",
        severity: least - footing.diameter,
      };
    }
  },
  words: (d, say) => {
    const values = {
      pier: d.pier,
      footing: say.length(d.footing),
      tube: say.length(d.tube),
      reach: say.length((d.footing - d.tube) / 2),
      least: say.length(LEAST_PROJECTION),
      cast: say.length(castSize(d.least, say)),
    };
    if (d.footing < d.tube - FORM_SLACK)
      return say.text(
        "The footing of {pier} is {footing} across, narrower than its tube of {tube}, which hangs over it all round. Cast it {cast} across, so that it reaches {least} past the tube, or leave it out.",
        values,
      );
    return say.text(
      d.footing <= d.tube
        ? "The footing of {pier} is {footing} across, no wider than its tube: a tube never stands in the very middle, and hangs over it. The code asks for {least} past the tube. Cast it {cast} across."
        : "The footing of {pier} is {footing} across and reaches {reach} past its tube of {tube}: a tube never stands in the very middle, and hangs over it. The code asks for {least}. Cast it {cast} across.",
      values,
    );
  },
  worked: (d, say) =>
    `${say.length(d.footing)} < ${say.length(d.tube)} + 2 × ${say.length(LEAST_PROJECTION)} = ${say.length(d.least)}`,
  fixes: (d, say) => {
    const diameter = castSize(d.least, say);
    // a wider one may have to be thicker, as far as it reaches then
    const reach = Math.max(LEAST_THICKNESS, (diameter - d.tube) / 2);
    const thickness = castSize(reach, say);
    const text = say.length(diameter);
    return [
      {
        title: say.text("Cast the footing {diameter} across", { diameter: text }),
        edits: [
          { kind: "replace", path: `${d.path}/diameter`, text },
          ...(d.thickness < reach - FORM_SLACK
            ? [{ kind: "replace" as const, path: `${d.path}/thickness`, text: say.length(thickness) }]
            : []),
        ],
      },
    ];
  },
});
