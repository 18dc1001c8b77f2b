/** Housed end: a timber's whole end let into the face of another, open on top where it can be dropped in. */
import { halfExtent } from "../../model/box.ts";
import { dot } from "../../model/vec.ts";
import { dropsIn, opensOnTop } from "../assembly.ts";
import { because, inchRow } from "../cut-rows.ts";
import { facePoint, rectangle } from "../face.ts";
import { endInSide } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ReceivingFace, ShapedJoint } from "../joint.ts";
import { sized, usual } from "../proportions.ts";

/**
 * A cut from the receiving timber's top down to the joined timber's underside, in an upright as wide as the joined timber:
 * outline along inward and grain.
 * @returns the prism and its height
 */
export function openFromTop(
  face: ReceivingFace,
  of: JointPlace["of"],
  outline: Prism["outline"],
  depthFromTop?: number,
): { readonly prism: Prism; readonly height: number } {
  const base = { base: face.origin, u: face.inward, v: face.grain, w: face.across, outline };
  if (depthFromTop === undefined && !opensOnTop(face)) {
    const half = halfExtent(of, face.across);
    return { prism: { ...base, from: -half, to: half }, height: of.depth };
  }
  const up = face.across[2] >= 0 ? 1 : -1;
  const topEdge = up > 0 ? face.edges[1] : face.edges[0];
  // plumb height of a sloping timber's end is d / cos of its slope
  const plumb = of.depth / Math.max(0.1, Math.abs(dot(of.depthDir, face.across)));
  const ownTop = (up * plumb) / 2;
  const bottom = depthFromTop === undefined ? -ownTop : ownTop - up * depthFromTop;
  const from = Math.min(topEdge, bottom);
  const to = Math.max(topEdge, bottom);
  return {
    prism: { ...base, from, to },
    height: to - from,
  };
}

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const housing = sized(spec?.housing, usual(metric, 0.5, 12));
  const half = halfExtent(of, face.grain);
  const { prism } = openFromTop(face, of, rectangle([0, housing.value], [-half, half]));
  return {
    sizes: { housing },
    solids: { tenons: [], mortises: [], housings: [prism], wedges: [], notches: [], pegs: [] },
    extension: 0,
    shoulder: { point: facePoint(face, housing.value, 0, 0), normal: face.inward },
  };
}

export const housed: JointKind = {
  kind: "housed",
  title: "Housed end",
  unfit: endInSide,
  shape,
  assembly: dropsIn,
  cutSheet(joint: Joint) {
    const { housing } = joint.sizes;
    const prism = joint.solids.housings[0];
    const height = prism ? prism.to - prism.from : 0;
    const slope = (Math.asin(Math.min(1, Math.abs(joint.of.axis[2]))) * 180) / Math.PI;
    return [
      inchRow("receiving", "housing depth", housing.value, because(housing, "usual for a rafter at a ridge")),
      inchRow("receiving", "housing width", joint.of.width, "the timber’s width"),
      opensOnTop(joint.face)
        ? inchRow(
            "receiving",
            "housing height, open on top",
            height,
            "from the underside of the end to the top of the timber",
          )
        : inchRow("receiving", "housing height", height, "the timber’s depth"),
      { on: "joined", label: "plumb cut", value: slope, unit: "deg", how: "the slope, off square" },
    ];
  },
};
