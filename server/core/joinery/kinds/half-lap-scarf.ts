/** Half-lap scarf: two timbers end to end, each halved over the length of the lap. */
import type { Timber } from "../../model/model.ts";
import { along, dot, scale, sub, type Vec3 } from "../../model/vec.ts";
import { because, inchRow, pegRows } from "../cut-rows.ts";
import { rectangle } from "../face.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { pegSizes, sized, toStep, usual } from "../proportions.ts";

/** Lap: four times the depth (common practice, no source). */
const LAP_IN_DEPTHS = 4;

/** Halfway between the two ends, along the grain: the same before and after both were lengthened by half the lap. */
function middleOfLap(own: Vec3, out: Vec3, into: Timber): Vec3 {
  const past = [into.foot.point, into.head.point].map((p) => dot(sub(p, own), out));
  const other = past.reduce((near, d) => (Math.abs(d) < Math.abs(near) ? d : near));
  return along(own, out, other / 2);
}

function shape(place: JointPlace): ShapedJoint {
  const { of, end, into, metric, spec } = place;
  const out = end === "head" ? of.axis : scale(of.axis, -1);
  const nominal = middleOfLap(end === "head" ? of.head.point : of.foot.point, out, into);
  const length = sized(spec?.lap, toStep(LAP_IN_DEPTHS * of.depth, metric, 1));
  const half = length.value / 2;
  const lap = (lower: boolean): Prism => ({
    base: nominal,
    u: of.axis,
    v: of.widthDir,
    w: of.depthDir,
    outline: rectangle([-half, half], [-of.width / 2, of.width / 2]),
    from: lower ? -of.depth / 2 : 0,
    to: lower ? 0 : of.depth / 2,
  });
  const pegs = pegSizes(
    place,
    spec?.pegs,
    { count: 4, diameter: usual(metric, 0.75, 19) },
    { length: length.value, width: of.width, housing: 0 },
    2,
  );
  const pegAt = (a: number, side: number): Prism["base"] =>
    along(along(nominal, of.axis, a), of.depthDir, (side * of.depth) / 2);
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      lap: { length, depth: of.depth / 2 },
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [],
      mortises: [lap(false)],
      housings: [],
      wedges: [],
      notches: [lap(true)],
      pegs: pegs
        ? pegs.setbacks
            .flatMap((s) =>
              pegs.alongWidth.map((across) => ({
                from: along(pegAt(s - half, 1), of.widthDir, across),
                to: along(pegAt(s - half, -1), of.widthDir, across),
                diameter: pegs.diameter.value,
              })),
            )
            .slice(0, pegs.count)
        : [],
    },
    extension: 0,
    shoulder: { point: along(nominal, out, half), normal: out },
    receivingEnd: { point: along(nominal, out, -half), normal: scale(out, -1) },
  };
}

export const halfLapScarf: JointKind = {
  kind: "half-lap-scarf",
  title: "Half-lap scarf",
  shape,
  assembly: ({ of }) => ({ direction: scale(of.depthDir, -1) }),
  cutSheet(joint: Joint) {
    const { lap, pegs } = joint.sizes;
    if (!lap) return [];
    return [
      inchRow("joined", "lap length", lap.length.value, because(lap.length, "four times the depth")),
      inchRow("joined", "cut away below", lap.depth, "half the depth"),
      inchRow("receiving", "lap length", lap.length.value, "the same on both timbers"),
      inchRow("receiving", "cut away above", lap.depth, "half the depth"),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
    ];
  },
};
