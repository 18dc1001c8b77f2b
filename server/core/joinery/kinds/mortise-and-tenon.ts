/** Mortise and tenon, blind or through, with or without a housing: the end of one timber in the face of another. */
import { halfExtent } from "../../model/box.ts";
import { inches } from "../../quantity/length.ts";
import { squareIn } from "../assembly.ts";
import { housingRows, pegRows, tenonRows } from "../cut-rows.ts";
import { cheekPrism, facePoint, pegThrough, rectangle } from "../face.ts";
import type { Joint, JointKind, JointPlace, ReceivingFace, ShapedJoint, TenonSizes } from "../joint.ts";
import {
  blindTenonLength,
  KEEP_BEHIND,
  MORTISE_CLEARANCE,
  pegDiameter,
  pegSizes,
  sized,
  tenonThickness,
  usualSetIn,
} from "../proportions.ts";

/** Relish kept at a free end of the mortised timber (design: the tenon is held back 1 in). */
const RELISH = 1;

/** Set-in and walls, measured on the mortised timber from its reference face. */
export function cheeks(
  face: ReceivingFace,
  thickness: number,
  setIn: number,
): { readonly low: number; readonly walls: readonly [number, number] } {
  const width = face.edges[1] - face.edges[0];
  const low = face.reference === 1 ? face.edges[1] - setIn - thickness : face.edges[0] + setIn;
  return { low, walls: [setIn, width - setIn - thickness] };
}

/** Whether the joined timber is as broad as the one it enters and flush with it, so that one set-in fits both. */
export function inLine(face: ReceivingFace, ownBreadth: number): boolean {
  const half = ownBreadth / 2;
  return (
    face.reference !== 0 && Math.abs(face.edges[0] + half) < 1 / 16 && Math.abs(face.edges[1] - half) < 1 / 16
  );
}

/** Set-in of a tenon on the center of the joined timber. */
export function centeredSetIn(face: ReceivingFace, thickness: number): number {
  return face.reference === 1 ? face.edges[1] - thickness / 2 : -thickness / 2 - face.edges[0];
}

/** How much of the tenon's width a free end of the mortised timber takes: on the lower and on the higher side. */
function relish(face: ReceivingFace, half: number): readonly [number, number] {
  const held = (distance: number): number => Math.max(0, Math.min(half, half + RELISH - distance));
  return [held(-face.ends[0]), held(face.ends[1])];
}

/** @param usualLength of a blind tenon that the file gives no length, in; undefined = half the timber it enters */
function tenonSizes(place: JointPlace, usualLength: number | undefined): TenonSizes {
  const { face, spec, of, metric } = place;
  const breadth = face.edges[1] - face.edges[0];
  const ownBreadth = 2 * halfExtent(of, face.across);
  const half = halfExtent(of, face.grain);
  const housing = spec?.housing === undefined ? 0 : inches(spec.housing);
  const given = spec?.tenon;
  const thickness = sized(given?.thickness, tenonThickness(Math.min(breadth, ownBreadth), metric));
  const same = inLine(face, ownBreadth);
  const setIn = sized(
    given?.setIn,
    same ? usualSetIn(false, breadth, thickness.value, metric) : centeredSetIn(face, thickness.value),
  );
  const wood = face.thickness - housing;
  // a tenon from the other side takes its half of what lies between the housings
  const room = place.opposed ? (face.thickness - 2 * housing) / 2 : wood - KEEP_BEHIND;
  const tail = spec?.tail === undefined ? 0 : inches(spec.tail);
  const through = given?.through ?? false;
  // both mortises together leave some wood between them
  const most = place.opposed ? room - MORTISE_CLEARANCE : undefined;
  const blind = usualLength ?? blindTenonLength(wood, metric, most);
  const length = sized(given?.length, through ? wood + tail : blind);
  const [heldLow, heldHigh] = relish(face, half);
  const width = sized(given?.width, Math.max(0, 2 * half - heldLow - heldHigh));
  const { low, walls } = cheeks(face, thickness.value, setIn.value);
  return {
    thickness,
    width,
    length,
    setIn,
    through,
    walls,
    room,
    mortiseDepth: through ? wood : Math.min(wood, length.value + MORTISE_CLEARANCE),
    center: [given?.width === undefined ? (heldLow - heldHigh) / 2 : 0, low + thickness.value / 2],
    relishCut: given?.width === undefined ? heldLow + heldHigh : 0,
  };
}

/** The shape of a straight tenon, its mortise, its housing and its pegs. @param usualLength in, see `tenonSizes` */
export function tenonShape(place: JointPlace, usualLength?: number): ShapedJoint {
  const { face, spec, of } = place;
  const tenon = tenonSizes(place, usualLength);
  const housing = sized(spec?.housing, 0);
  const h = housing.value;
  const [along, across] = tenon.center;
  const v: [number, number] = [along - tenon.width.value / 2, along + tenon.width.value / 2];
  const w: [number, number] = [across - tenon.thickness.value / 2, across + tenon.thickness.value / 2];
  const half = halfExtent(of, face.grain);
  const ownHalf = halfExtent(of, face.across);
  const pegs = pegSizes(
    place,
    spec?.pegs,
    {
      count: tenon.width.value >= 6.5 ? 2 : 1,
      diameter: pegDiameter(Math.min(2 * half, 2 * ownHalf), place.metric),
    },
    { length: Math.min(tenon.length.value, face.thickness - h), width: tenon.width.value, housing: h },
  );
  return {
    sizes: { housing, tenon, ...(pegs ? { pegs } : {}) },
    solids: {
      tenons: [cheekPrism(face, rectangle([h, h + tenon.length.value], v), w[0], w[1])],
      mortises: [cheekPrism(face, rectangle([h, h + tenon.mortiseDepth], v), w[0], w[1])],
      housings: h > 0 ? [cheekPrism(face, rectangle([0, h], [-half, half]), -ownHalf, ownHalf)] : [],
      wedges: [],
      notches: [],
      pegs: pegs
        ? pegs.setbacks.flatMap((s) =>
            pegs.alongWidth.map((a) => pegThrough(face, s, along + a, pegs.diameter.value)),
          )
        : [],
    },
    extension: tenon.length.value,
    shoulder: { point: facePoint(face, h, 0, 0), normal: face.inward },
  };
}

export const mortiseAndTenon: JointKind = {
  kind: "mortise-and-tenon",
  title: "Mortise and tenon",
  shape: (place) => tenonShape(place),
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { tenon, pegs, housing } = joint.sizes;
    return [...(tenon ? tenonRows(tenon) : []), ...housingRows(joint), ...pegRows(pegs, housing.value)];
  },
};
