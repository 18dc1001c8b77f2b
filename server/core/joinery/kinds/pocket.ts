/** Drop-in pocket: the whole end of a joist or purlin let into the top of its carrier. */
import { halfExtent } from "../../model/box.ts";
import { lengthNote } from "../../note.ts";
import { dropsIn } from "../assembly.ts";
import { because, inchRow } from "../cut-rows.ts";
import { facePoint, rectangle } from "../face.ts";
import { droppedIn } from "../fit.ts";
import type { Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import { downToStep, sized, usual } from "../proportions.ts";
import { openFromTop } from "./housed.ts";

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  // 2 in of bearing, never more than a third of the carrier (common practice, no source)
  const bearing = sized(
    spec?.housing,
    downToStep(Math.min(usual(metric, 2, 50), face.thickness / 3), metric),
  );
  const half = halfExtent(of, face.grain);
  const { prism, height } = openFromTop(face, of, rectangle([0, bearing.value], [-half, half]));
  return {
    sizes: { housing: bearing, pocket: { bearing, depth: height, width: 2 * half } },
    solids: { tenons: [], mortises: [prism], housings: [], wedges: [], notches: [], pegs: [] },
    extension: 0,
    shoulder: { point: facePoint(face, bearing.value, 0, 0), normal: face.inward },
  };
}

export const pocket: JointKind = {
  kind: "pocket",
  title: "Drop-in pocket",
  unfit: droppedIn,
  cut: "pocket",
  shape,
  assembly: dropsIn,
  cutSheet(joint: Joint) {
    const size = joint.sizes.pocket;
    if (!size) return [];
    return [
      inchRow(
        "receiving",
        "bearing",
        size.bearing.value,
        because(size.bearing, lengthNote("the usual {length}, at most a third of the carrier", 2)),
      ),
      inchRow("receiving", "pocket width", size.width, "the timber’s width"),
      inchRow(
        "receiving",
        "pocket depth from the carrier’s top",
        size.depth,
        "down to the underside of the timber",
      ),
      inchRow("joined", "end past the carrier’s face", size.bearing.value, "as far as it bears"),
    ];
  },
};
