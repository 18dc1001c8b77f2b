/** Half-lap scarf: two timbers end to end, each halved over the length of the lap. */
import { scale } from "../../model/vec.ts";
import { inchRow, pegRows } from "../cut-rows.ts";
import { rectangle } from "../face.ts";
import { inLine } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { sized, toStep } from "../proportions.ts";
import {
  lapLength,
  lapPlace,
  lapSizes,
  pegsDown,
  scarfEnds,
  scarfNote,
  scarfPegs,
  throughWidth,
} from "../scarf.ts";

/** Lap: four times the depth (common practice, no source). */
const LAP_IN_DEPTHS = 4;

function shape(place: JointPlace): ShapedJoint {
  const { of, end, into, metric, spec } = place;
  const { middle: nominal, out } = lapPlace(of, end, into);
  const length = lapLength(sized(spec?.lap, toStep(LAP_IN_DEPTHS * of.depth, metric, 1)), place);
  const half = length.value / 2;
  const lap = (lower: boolean): Prism =>
    throughWidth(of, nominal, out, rectangle([-half, half], lower ? [-of.depth / 2, 0] : [0, of.depth / 2]));
  const pegs = scarfPegs(place, { length: length.value, width: of.width }, 2);
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      lap: lapSizes(length, of.depth / 2, place),
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [],
      mortises: [lap(false)],
      housings: [],
      wedges: [],
      notches: [lap(true)],
      pegs: pegs ? pegsDown(of, nominal, pegs, half) : [],
    },
    ...scarfEnds(nominal, out, half),
  };
}

export const halfLapScarf: JointKind = {
  kind: "half-lap-scarf",
  title: "Half-lap scarf",
  unfit: inLine,
  cut: "lap",
  shape,
  assembly: ({ of }) => ({ direction: scale(of.depthDir, -1) }),
  cutSheet(joint: Joint) {
    const { lap, pegs } = joint.sizes;
    if (!lap) return [];
    return [
      inchRow("joined", "lap length", lap.length.value, scarfNote(lap.length, "four times the depth")),
      inchRow("joined", "cut away below", lap.depth, "half the depth"),
      inchRow("receiving", "lap length", lap.length.value, "the same on both timbers"),
      inchRow("receiving", "cut away above", lap.depth, "half the depth"),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
    ];
  },
};
