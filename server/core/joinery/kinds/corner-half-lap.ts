/** Half-lap at a corner: each timber gives half its depth where they cross. */
import { halfExtent } from "../../model/box.ts";
import { along, dot, scale, sub, type Vec3 } from "../../model/vec.ts";
import { inchRow, pegRows } from "../cut-rows.ts";
import { rectangle } from "../face.ts";
import { halvedLevel } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { BORED_TOGETHER, pegSizes, usual } from "../proportions.ts";

function shape(place: JointPlace): ShapedJoint {
  const { of, into, metric, spec } = place;
  const up = of.depthDir;
  const low = Math.max(dot(of.origin, up) - halfExtent(of, up), dot(into.origin, up) - halfExtent(into, up));
  const high = Math.min(dot(of.origin, up) + halfExtent(of, up), dot(into.origin, up) + halfExtent(into, up));
  const height = Math.max(0, high - low);
  const middle = (low + high) / 2;
  const overOf = halfExtent(into, of.axis);
  const overInto = halfExtent(of, into.axis);
  // the joined timber keeps what is above the middle of their common height, the receiving one what is below
  const corner = (timber: typeof of, other: typeof of, reach: number, lower: boolean): Prism => {
    const halfWide = halfExtent(timber, timber.widthDir);
    return {
      base: along(timber.origin, timber.axis, dot(sub(other.origin, timber.origin), timber.axis)),
      u: timber.axis,
      v: timber.widthDir,
      w: up,
      outline: rectangle([-reach, reach], [-halfWide, halfWide]),
      from: lower ? -halfExtent(timber, up) : middle - dot(timber.origin, up),
      to: lower ? middle - dot(timber.origin, up) : halfExtent(timber, up),
    };
  };
  const pegs = pegSizes(
    place,
    spec?.pegs,
    { count: 1, diameter: usual(metric, 0.75, 19), draw: BORED_TOGETHER },
    { length: 2 * overOf, width: 2 * overInto, housing: 0 },
  );
  // pegs stand in one line across the joined timber, over the other's middle
  const line = along(of.origin, of.axis, dot(sub(into.origin, of.origin), of.axis));
  const pegAt = (across: number, k: number): Vec3 =>
    along(along(line, up, middle + (k * height) / 2 - dot(line, up)), of.widthDir, across);
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      lap: { length: { value: 2 * overOf, from: "default" }, depth: height / 2 },
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [],
      mortises: [corner(into, of, overInto, false)],
      housings: [],
      wedges: [],
      notches: [corner(of, into, overOf, true)],
      pegs: pegs
        ? pegs.alongWidth.map((across) => ({
            from: pegAt(across, 1),
            to: pegAt(across, -1),
            diameter: pegs.diameter.value,
          }))
        : [],
    },
    extension: 0,
    shoulder: undefined,
  };
}

export const cornerHalfLap: JointKind = {
  kind: "corner-half-lap",
  title: "Corner half-lap",
  unfit: halvedLevel,
  cut: "lap",
  shape,
  assembly: ({ of }) => ({ direction: scale(of.depthDir, -1) }),
  cutSheet(joint: Joint) {
    const { lap, pegs } = joint.sizes;
    if (!lap) return [];
    const thick = (prism: Prism | undefined): number => (prism ? prism.to - prism.from : 0);
    const how = "to the middle of the height that both have in common";
    return [
      inchRow("joined", "lap length", lap.length.value, "the width of the other timber"),
      inchRow("joined", "cut away below", thick(joint.solids.notches[0]), how),
      inchRow("receiving", "cut away above", thick(joint.solids.mortises[0]), how),
      ...pegRows(pegs, 0).filter((r) => r.on === "peg"),
    ];
  },
};
