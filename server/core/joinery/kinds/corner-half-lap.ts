/** Half-lap at a corner: each timber gives half its depth where they cross. */
import { halfExtent } from "../../model/box.ts";
import { dot } from "../../model/vec.ts";
import { inchRow, pegRows } from "../cut-rows.ts";
import { rectangle } from "../face.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { pegSizes, usual } from "../proportions.ts";

function shape(place: JointPlace): ShapedJoint {
  const { of, into, metric, spec, meeting } = place;
  const up = of.depthDir;
  const low = Math.max(dot(of.origin, up) - halfExtent(of, up), dot(into.origin, up) - halfExtent(into, up));
  const high = Math.min(dot(of.origin, up) + halfExtent(of, up), dot(into.origin, up) + halfExtent(into, up));
  const height = Math.max(0, high - low);
  const middle = (low + high) / 2;
  const overOf = halfExtent(into, of.axis);
  const overInto = halfExtent(of, into.axis);
  const center = meeting.point;
  // the joined timber keeps what is above the middle of their common height, the receiving one what is below
  const corner = (timber: typeof of, other: typeof of, along: number, lower: boolean): Prism => {
    const crossingAt = dot(other.origin, timber.axis) - dot(timber.origin, timber.axis);
    const halfWide = halfExtent(timber, timber.widthDir);
    return {
      base: [
        timber.origin[0] + timber.axis[0] * crossingAt,
        timber.origin[1] + timber.axis[1] * crossingAt,
        timber.origin[2] + timber.axis[2] * crossingAt,
      ],
      u: timber.axis,
      v: timber.widthDir,
      w: up,
      outline: rectangle([-along, along], [-halfWide, halfWide]),
      from: lower ? -halfExtent(timber, up) : middle - dot(timber.origin, up),
      to: lower ? middle - dot(timber.origin, up) : halfExtent(timber, up),
    };
  };
  const pegs = pegSizes(
    place,
    spec?.pegs,
    { count: 1, diameter: usual(metric, 0.75, 19) },
    { length: 2 * overOf, width: 2 * overInto, housing: 0 },
  );
  const pegHeight = (k: number): [number, number, number] => [
    center[0],
    center[1],
    middle + (k * height) / 2,
  ];
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
      pegs: pegs ? [{ from: pegHeight(1), to: pegHeight(-1), diameter: pegs.diameter.value }] : [],
    },
    extension: 0,
    shoulder: undefined,
  };
}

export const cornerHalfLap: JointKind = {
  kind: "corner-half-lap",
  title: "Corner half-lap",
  shape,
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
