/**
 * Heel of a principal rafter in a tie: the toe of its foot is stepped into the tie, where an abutment takes the thrust, and
 * a pegged tenon keeps it in its place. The abutment halves the blunt angle between the rafter's upper edge and the tie, so
 * that it stands alike to both grains, or is square to the rafter (common practice, no source for either).
 *
 * Plane geometry, with α between the two grains and the step s square to the tie's face: from where the rafter's upper edge
 * meets that face the abutment falls back by s tan(α/2), or s tan α where it is square to the rafter. From its bottom the
 * foot rises to where the rafter's underside meets the face.
 */
import type { Vec2 } from "../../model/vec.ts";
import { lengthNote } from "../../note.ts";
import { squareIn } from "../assembly.ts";
import { because, inchRow, pegRows, tenonRows } from "../cut-rows.ts";
import { halfOnFace, type Lean, leanOf } from "../end-breadth.ts";
import { cheekPrism, facePoint, pegsThrough } from "../face.ts";
import { footOnTie } from "../fit.ts";
import type { Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import type { HeelSizes, TenonSizes } from "../joint-sizes.ts";
import {
  blindTenonLength,
  downToStep,
  KEEP_BEHIND,
  MORTISE_CLEARANCE,
  pegDiameter,
  pegSizes,
  pegsFromToe,
  sized,
  tenonThickness,
  usual,
  usualSetIn,
} from "../proportions.ts";
import { centeredSetIn, cheeks, inLine } from "./mortise-and-tenon.ts";

/** Step where the file names none: a sixth of the tie, at least 1 in (common practice, no source). */
function usualStep(tie: number, metric: boolean): number {
  return Math.max(usual(metric, 1, 25), downToStep(tie / 6, metric));
}

/** Where the foot lies on the face along the grain, positive toward its toe, and how its abutment stands. */
interface Foot {
  readonly lean: Lean;
  readonly half: number;
  readonly step: number;
  /** the abutment's bottom */
  readonly bottom: number;
  /** inches back for each inch of step */
  readonly back: number;
  readonly angle: number;
}

function footOf(place: JointPlace, step: number): Foot {
  const lean = leanOf(place);
  const angle = Math.asin(Math.min(1, lean.sine));
  const back = place.spec?.form === "square" ? Math.tan(angle) : Math.tan(angle / 2);
  const half = halfOnFace(place.of, place.face.inward, place.face.grain);
  return { lean, half, step, back, angle, bottom: half - step * back };
}

function heelSizes(place: JointPlace, foot: Foot): HeelSizes {
  const { face, of, spec } = place;
  const { lean, step, bottom, half, back, angle } = foot;
  return {
    form: spec?.form === "square" ? "square" : "bisecting",
    angle,
    abutment: step * Math.hypot(1, back),
    sole: Math.hypot(step, bottom + half),
    bottom: lean.toe * bottom,
    relish: (lean.toe > 0 ? face.ends[1] : -face.ends[0]) - bottom,
    width: Math.min(of.width, face.edges[1] - face.edges[0]),
  };
}

function tenonSizes(place: JointPlace, { lean, half, bottom }: Foot): TenonSizes {
  const { face, spec, of, metric } = place;
  const breadth = face.edges[1] - face.edges[0];
  const ownBreadth = 2 * halfOnFace(of, face.inward, face.across);
  const given = spec?.tenon;
  const thickness = sized(given?.thickness, tenonThickness(Math.min(breadth, ownBreadth), metric));
  const setIn = sized(
    given?.setIn,
    inLine(face, ownBreadth)
      ? usualSetIn(false, breadth, thickness.value, metric)
      : centeredSetIn(face, thickness.value),
  );
  const length = sized(given?.length, blindTenonLength(face.thickness, metric));
  const width = sized(given?.width, half + bottom);
  const { low, walls } = cheeks(face, thickness.value, setIn.value);
  return {
    thickness,
    width,
    length,
    setIn,
    through: false,
    walls,
    room: face.thickness - KEEP_BEHIND,
    mortiseDepth: Math.min(face.thickness, length.value + MORTISE_CLEARANCE),
    center: [lean.toe * (bottom - width.value / 2), low + thickness.value / 2],
    relishCut: 0,
  };
}

/** Outline (inward, grain) of the tenon or its mortise: from the foot's own edge down to `deep`. */
function tenonSide({ lean, step, bottom, half }: Foot, tenon: TenonSizes, deep: number): Vec2[] {
  const heel = bottom - tenon.width.value;
  // how deep the foot itself reaches over the tenon's back edge
  const sole = half + bottom > 0 ? (step * (heel + half)) / (half + bottom) : 0;
  const tip = Math.min(bottom, heel + Math.abs(lean.rate) * Math.max(0, tenon.length.value - sole));
  return [
    [sole, lean.toe * heel],
    [step, lean.toe * bottom],
    [deep, lean.toe * bottom],
    [deep, lean.toe * tip],
  ];
}

function pegsOf(place: JointPlace, { lean, step, bottom }: Foot, tenon: TenonSizes) {
  const { of, spec, metric } = place;
  const rows = pegSizes(
    place,
    spec?.pegs,
    { count: tenon.width.value >= 6.5 ? 2 : 1, diameter: pegDiameter(Math.min(of.width, of.depth), metric) },
    { length: tenon.length.value - step, width: tenon.width.value, housing: step },
  );
  // halfway between the square front and the back edge, which follows the grain
  const at = (setback: number): number =>
    lean.toe * (bottom - tenon.width.value / 2 + (Math.abs(lean.rate) * setback) / 2);
  return { pegs: pegsFromToe(rows, at, lean.toe * bottom), at };
}

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const step = sized(spec?.housing, usualStep(face.thickness, metric));
  const foot = footOf(place, step.value);
  const { lean, half, bottom } = foot;
  const tenon = tenonSizes(place, foot);
  const { pegs, at } = pegsOf(place, foot, tenon);
  const ownHalf = halfOnFace(of, face.inward, face.across);
  const across = tenon.center[1];
  const w: [number, number] = [across - tenon.thickness.value / 2, across + tenon.thickness.value / 2];
  const stepped = cheekPrism(
    face,
    [
      [0, lean.toe * half],
      [step.value, lean.toe * bottom],
      [0, -lean.toe * half],
    ],
    -ownHalf,
    ownHalf,
  );
  return {
    sizes: { housing: step, tenon, heel: heelSizes(place, foot), ...(pegs ? { pegs } : {}) },
    solids: {
      tenons: [cheekPrism(face, tenonSide(foot, tenon, tenon.length.value), ...w), stepped],
      mortises: [cheekPrism(face, tenonSide(foot, tenon, tenon.mortiseDepth), ...w)],
      housings: [stepped],
      wedges: [],
      notches: [],
      pegs: pegsThrough(face, pegs, at),
    },
    extension: tenon.length.value * lean.sine,
    shoulder: { point: facePoint(face, 0, 0, 0), normal: face.inward },
  };
}

export const rafterHeel: JointKind = {
  kind: "rafter-heel",
  title: "Rafter heel",
  unfit: footOnTie,
  shape,
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { heel, tenon, pegs, housing } = joint.sizes;
    if (!heel || !tenon) return [];
    const square = heel.form === "square";
    return [
      {
        on: "joined",
        label: "angle to the timber",
        value: (heel.angle * 180) / Math.PI,
        unit: "deg",
        how: "between the two grains",
      },
      inchRow(
        "receiving",
        "step, square to the face",
        housing.value,
        because(housing, lengthNote("a sixth of the tie, at least {length}", 1)),
      ),
      inchRow(
        "receiving",
        "abutment",
        heel.abutment,
        square
          ? "square to the rafter"
          : "halves the blunt angle between the rafter’s upper edge and the tie",
      ),
      inchRow("receiving", "sole, from the abutment’s bottom to the heel", heel.sole, "on the slant"),
      inchRow(
        "receiving",
        "relish beyond the step",
        heel.relish,
        "from the abutment’s bottom to the tie’s end",
      ),
      ...tenonRows(tenon),
      ...pegRows(pegs, housing.value, "tenon front"),
    ];
  },
};
