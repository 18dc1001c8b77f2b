/**
 * Mortise and tenon, blind or through, with or without a housing: the end of one timber in the face of another. The tenon of
 * a leaning end is as wide as the slanted cut, its depth ÷ the sine of its angle; its toe goes in square.
 */
import { inches } from "../../quantity/length.ts";
import { squareIn } from "../assembly.ts";
import { housingRows, pegRows, tenonRows } from "../cut-rows.ts";
import { halfOnFace, housingEdges, type Lean, leanOf, tenonOutline } from "../end-breadth.ts";
import { cheekPrism, facePoint, pegsThrough, rectangle } from "../face.ts";
import { endInSide } from "../fit.ts";
import type { CutRow, Joint, JointKind, JointPlace, ReceivingFace, ShapedJoint } from "../joint.ts";
import type { TenonSizes } from "../joint-sizes.ts";
import {
  blindTenonLength,
  KEEP_BEHIND,
  MORTISE_CLEARANCE,
  pegDiameter,
  pegSizes,
  pegsFromToe,
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

/**
 * How much of the tenon's width a free end of the mortised timber takes: on the lower and on the higher side.
 * @param middle of the shoulder along the grain; @param half of its breadth
 */
function relish(face: ReceivingFace, middle: number, half: number): readonly [number, number] {
  const held = (distance: number): number => Math.max(0, Math.min(half, half + RELISH - distance));
  return [held(middle - face.ends[0]), held(face.ends[1] - middle)];
}

/**
 * @param usualLength of a blind tenon that the file gives no length, in; undefined = half the timber it enters
 * @param lean of the end; @param half of its breadth along the grain
 */
function tenonSizes(
  place: JointPlace,
  usualLength: number | undefined,
  lean: Lean,
  half: number,
): TenonSizes {
  const { face, spec, of, metric } = place;
  const breadth = face.edges[1] - face.edges[0];
  const ownBreadth = 2 * halfOnFace(of, face.inward, face.across);
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
  // a leaning end's middle has moved along the grain where it stands on the housing's floor
  const middle = lean.rate * housing;
  const [heldLow, heldHigh] = relish(face, middle, half);
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
    center: [middle + (given?.width === undefined ? (heldLow - heldHigh) / 2 : 0), low + thickness.value / 2],
    relishCut: given?.width === undefined ? heldLow + heldHigh : 0,
  };
}

/** The shape of a straight tenon, its mortise, its housing and its pegs. @param usualLength in, see `tenonSizes` */
export function tenonShape(place: JointPlace, usualLength?: number): ShapedJoint {
  const { face, spec, of } = place;
  const lean = leanOf(place);
  const half = halfOnFace(of, face.inward, face.grain);
  const ownHalf = halfOnFace(of, face.inward, face.across);
  const tenon = tenonSizes(place, usualLength, lean, half);
  const housing = sized(spec?.housing, 0);
  const h = housing.value;
  const [along, across] = tenon.center;
  const v: [number, number] = [along - tenon.width.value / 2, along + tenon.width.value / 2];
  const w: [number, number] = [across - tenon.thickness.value / 2, across + tenon.thickness.value / 2];
  const rows = pegSizes(
    place,
    spec?.pegs,
    {
      count: tenon.width.value >= 6.5 ? 2 : 1,
      diameter: pegDiameter(Math.min(of.width, of.depth), place.metric),
    },
    { length: Math.min(tenon.length.value, face.thickness - h), width: tenon.width.value, housing: h },
  );
  // halfway between the square toe and the other edge, which follows the grain
  const pegAlong = (setback: number): number => along + (lean.rate * (setback - h)) / 2;
  const toeAt = lean.toe > 0 ? v[1] : v[0];
  const pegs = pegsFromToe(rows, pegAlong, toeAt);
  return {
    sizes: { housing, tenon, ...(pegs ? { pegs } : {}) },
    solids: {
      tenons: [cheekPrism(face, tenonOutline(lean, h, v, tenon.length.value), ...w)],
      mortises: [cheekPrism(face, tenonOutline(lean, h, v, tenon.mortiseDepth, tenon.length.value), ...w)],
      housings:
        h > 0 ? [cheekPrism(face, rectangle([0, h], housingEdges(lean, half, h)), -ownHalf, ownHalf)] : [],
      wedges: [],
      notches: [],
      pegs: pegsThrough(face, pegs, pegAlong),
    },
    extension: tenon.length.value * lean.sine,
    shoulder: { point: facePoint(face, h, lean.rate * h, 0), normal: face.inward },
  };
}

export const mortiseAndTenon: JointKind = {
  kind: "mortise-and-tenon",
  title: "Mortise and tenon",
  unfit: endInSide,
  shape: (place) => tenonShape(place),
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { tenon, pegs, housing } = joint.sizes;
    const { rate, sine } = leanOf(joint);
    const rows = tenon ? tenonRows(tenon) : [];
    if (rate === 0) return [...rows, ...housingRows(joint), ...pegRows(pegs, housing.value)];
    const angle: CutRow = {
      on: "joined",
      label: "angle to the timber",
      value: (Math.asin(Math.min(1, sine)) * 180) / Math.PI,
      unit: "deg",
      how: "between the two grains; the shoulder is cut to it, the toe of the tenon square to the timber",
    };
    return [...rows, angle, ...housingRows(joint), ...pegRows(pegs, housing.value, "toe")];
  },
};
