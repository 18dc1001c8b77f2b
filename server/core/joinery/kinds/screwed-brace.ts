/**
 * Screwed brace: the end of a brace, cut to the face of its timber, butted or housed, and held by structural screws. They
 * are driven from the long edge of the brace, the one away from the corner, square to the face of the other timber.
 */

import { halfExtent } from "../../model/box.ts";
import { isBracing } from "../../model/joint-usual.ts";
import { dot, type Vec2 } from "../../model/vec.ts";
import { squareIn } from "../assembly.ts";
import { because, housingRows, inchRow } from "../cut-rows.ts";
import { cheekPrism, facePoint, rectangle } from "../face.ts";
import { aslant } from "../fit.ts";
import type { CutRow, Joint, JointKind, JointPlace, Peg, ShapedJoint } from "../joint.ts";
import type { ScrewSizes } from "../joint-sizes.ts";
import { sized, usual } from "../proportions.ts";
import { braceRows } from "./brace-tenon.ts";

/** Two screws of 5/16 in, or 8 mm, at each end (common practice, no source). */
const USUAL_COUNT = 2;
/** Lengths on sale: in, and mm. */
const LENGTHS: readonly number[] = [6, 8, 10, 12, 14, 16];
const LENGTHS_METRIC: readonly number[] = [160, 200, 240, 280, 320, 400].map((mm) => mm / 25.4);

/** @returns lengths of structural screws that are on sale, in (common practice, no source) */
export const SCREW_LENGTHS = (metric: boolean): readonly number[] => (metric ? LENGTHS_METRIC : LENGTHS);

/** Diameters of shank and tip in the other timber for the full lateral value (NDS Table 12J notes; memory). */
const FULL_REACH = 8;
/** Wood that stays behind the point, in (common practice, no source). */
export const WOOD_BEHIND = 1 / 2;

/** The shortest on sale that reaches deep enough, else the longest that does not come out on the far side. */
function usualLength(metric: boolean, wood: number, thickness: number, diameter: number): number {
  const onSale = SCREW_LENGTHS(metric);
  const most = wood + thickness - WOOD_BEHIND;
  const fits = onSale.filter((length) => length <= most);
  return fits.find((length) => length >= wood + FULL_REACH * diameter) ?? fits.at(-1) ?? onSale[0] ?? most;
}

/** How a brace meets a face, from the face's origin along its grain. */
function bearingOf({ of, end, face }: Pick<JointPlace, "of" | "end" | "face">, housing: number) {
  const going = end === "head" ? 1 : -1;
  const slantIn = Math.abs(dot(of.axis, face.inward));
  const lean = (going * dot(of.axis, face.grain)) / slantIn;
  const toe = Math.sign(lean || 1);
  const long = of.depth / slantIn;
  const middle = lean * housing;
  return { lean, long, middle, toeAt: middle + (toe * long) / 2, heelAt: middle - (toe * long) / 2 };
}

/** A brace that stands square to its timber has no long edge to screw from: its angle has a finding of its own. */
const LEAST_LEAN = 0.2;

export interface ScrewPlace {
  /** along the grain from the middle of the bearing, and across the brace's thickness, in */
  readonly at: Vec2;
  readonly wood: number;
  /** along the face to the brace’s short edge, in */
  readonly toHeel: number;
}

/** One in the middle, two side by side, more in pairs along the bearing. */
function places(count: number, width: number, bearing: ReturnType<typeof bearingOf>): ScrewPlace[] {
  const rows = Math.ceil(count / 2);
  const lean = Math.max(LEAST_LEAN, Math.abs(bearing.lean));
  return Array.from({ length: count }, (_, i): ScrewPlace => {
    const row = Math.floor(i / 2);
    const along = ((row + 0.5) / rows - 0.5) * bearing.long;
    const alone = i === count - 1 && count % 2 === 1;
    const across = alone ? 0 : ((i % 2) - 0.5) * (width / 2);
    // back from the face, square to it, the line leaves the brace through its long edge
    const toToe = Math.abs(bearing.toeAt - bearing.middle - along);
    return { at: [along, across], wood: toToe / lean, toHeel: bearing.long - toToe };
  });
}

/** Where so many screws would stand at the end of a brace that is joined already. */
export function placesOfScrews(joint: Joint, count: number): ScrewPlace[] {
  return places(
    count,
    2 * halfExtent(joint.of, joint.face.across),
    bearingOf(joint, joint.sizes.housing.value),
  );
}

/** Where the middle of the bearing lies, along the grain from the face's origin, in. */
export const middleOfBearing = (joint: Joint): number => bearingOf(joint, joint.sizes.housing.value).middle;

function shape(place: JointPlace): ShapedJoint {
  const { of, into, face, spec, metric } = place;
  const housing = sized(spec?.housing, 0);
  const h = housing.value;
  const bearing = bearingOf(place, h);
  const given = spec?.screws === "unread" ? undefined : spec?.screws;
  const count = given?.count ?? USUAL_COUNT;
  const diameter = sized(given?.diameter, usual(metric, 5 / 16, 8));
  const own = 2 * halfExtent(of, face.across);
  const set = places(count, own, bearing);
  const wood = set.map((s) => s.wood);
  const least = Math.min(...wood);
  const length = sized(
    given?.length,
    usualLength(metric, Math.max(...wood), face.thickness - h - (Math.max(...wood) - least), diameter.value),
  );
  const screws: ScrewSizes = {
    count,
    diameter,
    length,
    wood,
    columns: Math.min(2, count),
    breadth: own,
    angle: (Math.acos(Math.min(1, Math.abs(dot(of.axis, into.axis)))) * 180) / Math.PI,
  };
  const solid = ({ at, wood: passes }: ScrewPlace): Peg => ({
    from: facePoint(face, h - passes, bearing.middle + at[0], at[1]),
    to: facePoint(face, h - passes + length.value, bearing.middle + at[0], at[1]),
    diameter: diameter.value,
  });
  const heelAtFace = bearing.heelAt - bearing.lean * h;
  const span: Vec2 = [Math.min(heelAtFace, bearing.toeAt), Math.max(heelAtFace, bearing.toeAt)];
  return {
    sizes: { housing, screws },
    solids: {
      tenons: [],
      mortises: [],
      housings: h > 0 ? [cheekPrism(face, rectangle([0, h], span), -own / 2, own / 2)] : [],
      wedges: [],
      notches: [],
      pegs: [],
      screws: set.map(solid),
    },
    extension: 0,
    shoulder: { point: facePoint(face, h, bearing.middle, 0), normal: face.inward },
  };
}

function screwRows({ sizes: { screws, housing }, face, of }: Joint): CutRow[] {
  if (!screws) return [];
  const { count, diameter, length, wood } = screws;
  const [least, most] = [Math.min(...wood), Math.max(...wood)];
  const spread = most - least > 1 / 32;
  return [
    {
      on: "screw",
      label: "screws",
      value: count,
      unit: "count",
      how: "as the file says, or the usual number",
    },
    inchRow("screw", "screw diameter", diameter.value, because(diameter, "usual for a brace")),
    inchRow(
      "screw",
      "screw length",
      length.value,
      because(length, "the shortest on sale that reaches eight diameters into the other timber"),
    ),
    inchRow(
      "joined",
      spread ? "wood under the head, most" : "wood under the head",
      most,
      "square from the face to the long edge of the brace",
    ),
    ...(spread
      ? [inchRow("joined", "wood under the head, least", least, "at the pair nearest the toe")]
      : []),
    inchRow(
      "receiving",
      spread ? "screw in the timber, least" : "screw in the timber",
      Math.max(0, length.value - most),
      "its length less the wood under the head",
    ),
    ...(count > 1
      ? [
          inchRow(
            "joined",
            "screw to screw across the brace",
            halfExtent(of, face.across),
            "half its thickness",
          ),
        ]
      : []),
    ...(housing.value > 0
      ? []
      : [
          inchRow(
            "joined",
            "bearing along the timber",
            bearingLength(of, face),
            "brace depth ÷ sine of its angle",
          ),
        ]),
  ];
}

const bearingLength = (of: Joint["of"], face: Joint["face"]): number =>
  of.depth / Math.max(1e-3, Math.abs(dot(of.axis, face.inward)));

export const screwedBrace: JointKind = {
  kind: "screwed-brace",
  title: "Screwed brace",
  unfit: (meet) => aslant(meet, isBracing(meet.of.kind)),
  shape,
  assembly: squareIn,
  cutSheet(joint: Joint) {
    return [...braceRows(joint), ...housingRows(joint), ...screwRows(joint)];
  },
};
