/**
 * Brace tenon: the brace bears in a housing; the toe of its tenon, away from the corner, goes in square to the timber
 * and carries the force along it; the other edge follows the brace.
 */
import { halfExtent } from "../../model/box.ts";
import { isBracing, usualBraceHousing } from "../../model/joint-usual.ts";
import { dot } from "../../model/vec.ts";
import { lengthNote } from "../../note.ts";
import { squareIn } from "../assembly.ts";
import { because, housingRows, inchRow, pegRows, tenonRows } from "../cut-rows.ts";
import { leanOf, tenonOutline } from "../end-breadth.ts";
import { cheekPrism, facePoint, pegsThrough, rectangle } from "../face.ts";
import { aslant } from "../fit.ts";
import type { CutRow, Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import type { TenonSizes } from "../joint-sizes.ts";
import {
  downToStep,
  KEEP_BEHIND,
  MORTISE_CLEARANCE,
  pegSizes,
  pegsFromToe,
  sized,
  usual,
  usualSetIn,
} from "../proportions.ts";
import { centeredSetIn, cheeks } from "./mortise-and-tenon.ts";

/** Length (design): 3 in, at most half the wood between housings less 1/2 in where two braces share the timber. */
function usualLength(place: JointPlace, housing: number): number {
  const wood = place.face.thickness - housing;
  const shared = (place.face.thickness - 2 * housing) / 2 - 1 / 2;
  return Math.max(
    1,
    downToStep(
      Math.min(usual(place.metric, 3, 75), place.opposed ? shared : wood - KEEP_BEHIND),
      place.metric,
      1 / 4,
    ),
  );
}

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const housing = sized(spec?.housing, usualBraceHousing(metric));
  const h = housing.value;
  const lean = leanOf(place);
  const { rate, toe } = lean;
  const bearing = of.depth / lean.sine;
  const given = spec?.tenon;
  const thickness = sized(given?.thickness, usual(metric, 1.5, 40));
  const breadth = face.edges[1] - face.edges[0];
  const ownHalf = halfExtent(of, face.across);
  // the usual set-in, as far as the brace is thick enough, holds for a brace flush with the reference face; any other
  // brace has its tenon in its middle
  const edge = face.reference === 1 ? face.edges[1] : -face.edges[0];
  const centered = face.reference === 0 || Math.abs(edge - ownHalf) > 1 / 16;
  const flush = Math.min(usualSetIn(true, breadth, thickness.value, metric), 2 * ownHalf - thickness.value);
  const setIn = sized(given?.setIn, centered ? centeredSetIn(face, thickness.value) : Math.max(0, flush));
  const { low, walls } = cheeks(face, thickness.value, setIn.value);
  const length = sized(given?.length, usualLength(place, h));
  // middle of the bearing on the housed face; the toe is its end away from the corner, the side the brace leans to
  const middle = rate * h;
  const width = sized(given?.width, bearing);
  const toeAt = middle + (toe * bearing) / 2;
  const heelAt = toeAt - toe * width.value;
  // the toe goes in square; at the unhoused face the other edge stands nearer the corner by the brace's lean
  const heelAtFace = heelAt - rate * h;
  const edges = toe > 0 ? ([heelAt, toeAt] as const) : ([toeAt, heelAt] as const);
  const depth = Math.min(face.thickness - h, length.value + MORTISE_CLEARANCE);
  const w: [number, number] = [low, low + thickness.value];
  const tenon: TenonSizes = {
    thickness,
    width,
    length,
    setIn,
    through: false,
    walls,
    room: place.opposed ? (face.thickness - 2 * h) / 2 : face.thickness - h - KEEP_BEHIND,
    mortiseDepth: depth,
    center: [(toeAt + heelAt) / 2, low + thickness.value / 2],
    relishCut: 0,
  };
  const rows = pegSizes(
    place,
    spec?.pegs,
    { count: 1, diameter: usual(metric, 0.75, 19) },
    { length: length.value, width: width.value, housing: h },
  );
  const pegAlong = (s: number): number => (toeAt + heelAt + rate * (s - h)) / 2;
  const pegs = pegsFromToe(rows, pegAlong, toeAt);
  return {
    sizes: { housing, tenon, ...(pegs ? { pegs } : {}) },
    solids: {
      tenons: [cheekPrism(face, tenonOutline(lean, h, edges, length.value), ...w)],
      mortises: [cheekPrism(face, tenonOutline(lean, h, edges, depth, length.value), ...w)],
      housings:
        h > 0
          ? [
              cheekPrism(
                face,
                rectangle([0, h], [Math.min(heelAtFace, toeAt), Math.max(heelAtFace, toeAt)]),
                -ownHalf,
                ownHalf,
              ),
            ]
          : [],
      wedges: [],
      notches: [],
      pegs: pegsThrough(face, pegs, pegAlong),
    },
    extension: length.value * lean.sine,
    shoulder: { point: facePoint(face, h, middle, 0), normal: face.inward },
  };
}

/** The angle to which the end of a brace is cut, and its hollow. */
export function braceRows({ of, into }: Joint): CutRow[] {
  const angle = (Math.acos(Math.min(1, Math.abs(dot(of.axis, into.axis)))) * 180) / Math.PI;
  return [
    {
      on: "joined",
      label: "angle to the timber",
      value: angle,
      unit: "deg",
      how: "from the legs; the shoulder is cut to it",
    },
    ...(of.curve
      ? [
          inchRow(
            "joined",
            "hollow at the middle",
            of.curve.rise,
            "radius and shoulder-to-shoulder chord of the long edge",
          ),
          inchRow("joined", "depth left at the middle", of.depth - of.curve.rise, "section less the hollow"),
        ]
      : []),
  ];
}

export const braceTenon: JointKind = {
  kind: "brace-tenon",
  title: "Brace tenon",
  unfit: (meet) => aslant(meet, isBracing(meet.of.kind)),
  shape,
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { tenon, pegs, housing } = joint.sizes;
    const rows = tenon
      ? tenonRows(tenon, lengthNote("{length}, or what the timber and a brace opposite leave", 3)).map((r) =>
          r.label === "tenon width"
            ? inchRow(
                "joined",
                "bearing along the timber",
                tenon.width.value,
                because(tenon.width, "brace depth ÷ sine of its angle to the timber"),
              )
            : r,
        )
      : [];
    return [...rows, ...braceRows(joint), ...housingRows(joint), ...pegRows(pegs, housing.value, "toe")];
  },
};
