/** Housed dovetail: the end of a lying timber dropped from above into the side of another, flared so that it cannot draw out. */
import { halfExtent } from "../../model/box.ts";
import type { Vec2 } from "../../model/vec.ts";
import { lengthNote } from "../../note.ts";
import { fromUpperEdge } from "../assembly.ts";
import { because, housingRows, inchRow, socketWidthRows } from "../cut-rows.ts";
import { dryingRows } from "../dovetail-drying.ts";
import { facePoint, rectangle } from "../face.ts";
import { levelDroppedIn } from "../fit.ts";
import type { Joint, JointKind, JointPlace, Prism, ShapedJoint } from "../joint.ts";
import { sized, toStep, usual } from "../proportions.ts";
import { openFromTop } from "./housed.ts";

/** Flare of each side: 1 in 6 of the length (common practice, no source). */
const FLARE = 1 / 6;

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const given = spec?.dovetail;
  const housing = sized(spec?.housing, usual(metric, 0.5, 12));
  const h = housing.value;
  const half = halfExtent(of, face.grain);
  const length = sized(
    given?.length,
    toStep(Math.max(1, Math.min(usual(metric, 3, 75), (face.thickness - h) / 2)), metric, 1 / 4),
  );
  const depth = sized(given?.depth, toStep(of.depth / 2, metric, 1 / 4));
  const flare = sized(given?.flare, toStep(length.value * FLARE, metric));
  const tip = 2 * half;
  const neck = Math.max(0, tip - 2 * flare.value);
  const outline: Vec2[] = [
    [h, -neck / 2],
    [h + length.value, -tip / 2],
    [h + length.value, tip / 2],
    [h, neck / 2],
  ];
  const socket = openFromTop(face, of, outline, depth.value).prism;
  // the socket is open to the carrier's top, the tail ends at the joist's own
  const up = face.across[2] >= 0 ? 1 : -1;
  const top = (up * of.depth) / 2;
  const bottom = top - up * depth.value;
  const tail: Prism = { ...socket, from: Math.min(top, bottom), to: Math.max(top, bottom) };
  return {
    sizes: { housing, dovetail: { length, depth, flare, neck, tip } },
    solids: {
      tenons: [tail],
      mortises: [socket],
      housings: h > 0 ? [openFromTop(face, of, rectangle([0, h], [-half, half])).prism] : [],
      wedges: [],
      notches: [],
      pegs: [],
    },
    extension: length.value,
    shoulder: { point: facePoint(face, h, 0, 0), normal: face.inward },
  };
}

export const housedDovetail: JointKind = {
  kind: "housed-dovetail",
  title: "Housed dovetail",
  unfit: levelDroppedIn,
  cut: "socket",
  shape,
  assembly: fromUpperEdge,
  cutSheet(joint: Joint) {
    const { dovetail } = joint.sizes;
    if (!dovetail) return [];
    return [
      inchRow(
        "joined",
        "dovetail length",
        dovetail.length.value,
        because(dovetail.length, lengthNote("half the wood behind the housing, at most {length}", 3)),
      ),
      inchRow(
        "joined",
        "dovetail depth from the top",
        dovetail.depth.value,
        because(dovetail.depth, "half the timber’s depth"),
      ),
      inchRow("joined", "width at the neck", dovetail.neck, "full width less the flare on both sides"),
      inchRow("joined", "width at the tip", dovetail.tip, "the timber’s full width"),
      inchRow(
        "joined",
        "flare on each side",
        dovetail.flare.value,
        because(dovetail.flare, "one in six of the length"),
      ),
      inchRow("receiving", "socket length", dovetail.length.value, "as the dovetail, from the housed face"),
      ...socketWidthRows(dovetail),
      inchRow(
        "receiving",
        "socket depth from the top of the joined timber",
        dovetail.depth.value,
        lengthNote("as the dovetail; {length} deeper lets it seat", 1 / 16),
      ),
      ...dryingRows(joint),
      ...housingRows(joint),
    ];
  },
};
