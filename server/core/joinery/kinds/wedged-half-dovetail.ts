/**
 * Wedged half-dovetail: a through tenon, level on top, its lower edge cut up by the drop at the shoulder and falling to
 * the timber's full depth at the tip. It goes in above its seat, drops, and a wedge on top holds it down. The mortise and
 * the housing stand the drop above the seated top at the inner face; the mortise's roof rises outward at the wedge's slope.
 * Where the file gives a tenon that ends inside the timber the mortise is as blind as it is, and `wedge-blind` says so.
 */
import { halfExtent } from "../../model/box.ts";
import { scale, type Vec2 } from "../../model/vec.ts";
import { because, housingRows, inchRow, pegRows, tenonRows } from "../cut-rows.ts";
import { wedgeReserve } from "../dovetail-drying.ts";
import { cheekPrism, facePoint, pegsThrough, rectangle } from "../face.ts";
import { wedgedThrough } from "../fit.ts";
import type { CutRow, Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import type { TenonSizes } from "../joint-sizes.ts";
import {
  MORTISE_CLEARANCE,
  pegDiameter,
  pegSizes,
  sized,
  tenonThickness,
  usual,
  usualSetIn,
  WEDGE_SLOPE,
  wedgeLength,
} from "../proportions.ts";
import { centeredSetIn, cheeks, inLine } from "./mortise-and-tenon.ts";

/** Drop where the file names none: an eighth of the depth, at least 1 in (common practice, no source). */
function usualDrop(depth: number): number {
  return Math.max(1, Math.round((depth / 8) * 4) / 4);
}

function shape(place: JointPlace): ShapedJoint {
  const { face, spec, of, metric } = place;
  const up = face.grain[2] >= 0 ? 1 : -1;
  const half = halfExtent(of, face.grain);
  const depth = 2 * half;
  const breadth = face.edges[1] - face.edges[0];
  const ownHalf = halfExtent(of, face.across);
  const housing = sized(spec?.housing, usual(metric, 0.75, 20));
  const h = housing.value;
  const given = spec?.tenon;
  const thickness = sized(given?.thickness, tenonThickness(Math.min(breadth, 2 * ownHalf), metric));
  const same = inLine(face, 2 * ownHalf);
  const setIn = sized(
    given?.setIn,
    same ? usualSetIn(false, breadth, thickness.value, metric) : centeredSetIn(face, thickness.value),
  );
  const { low, walls } = cheeks(face, thickness.value, setIn.value);
  const tail = sized(spec?.tail, 0);
  const wood = face.thickness - h;
  const length = sized(given?.length, wood + tail.value);
  const drop = sized(spec?.drop, usualDrop(depth));
  const slope = spec?.wedge?.slope ?? WEDGE_SLOPE;
  const inPost = Math.min(length.value, wood);
  const inMortise = Math.min(length.value + MORTISE_CLEARANCE, wood);
  const through = inMortise >= wood - 1e-9;
  // v runs along the post's grain; heights are taken from the seated top, upward
  const at = (u: number, height: number): Vec2 => [u, up * (half + height)];
  const neck = depth - drop.value;
  // a housing as deep as the post leaves no wood for a tenon; it has a finding of its own
  const tipDrop = wood > 0 ? drop.value * (1 - length.value / wood) : 0;
  const tip = depth - Math.max(0, tipDrop);
  const lower = (u: number): number =>
    -(neck + (length.value > 0 ? (u - h) / length.value : 0) * (tip - neck));
  const roof = (u: number): number => drop.value + slope * (u - h);
  const w: [number, number] = [low, low + thickness.value];
  const end = h + inMortise;
  const tenonSolid = cheekPrism(
    face,
    [at(h, 0), at(h, lower(h)), at(h + length.value, lower(h + length.value)), at(h + length.value, 0)],
    ...w,
  );
  const mortise = cheekPrism(
    face,
    [at(h, roof(h)), at(h, lower(h)), at(end, lower(end)), at(end, roof(end))],
    ...w,
  );
  const wedge = cheekPrism(face, [at(h, 0), at(end, 0), at(end, roof(end)), at(h, roof(h))], ...w);
  const mid = -(neck + tip) / 4;
  const tenon: TenonSizes = {
    thickness,
    width: { value: neck, from: drop.from },
    length,
    setIn,
    through,
    walls,
    room: wood,
    mortiseDepth: inMortise,
    center: [up * (half + mid), low + thickness.value / 2],
    relishCut: 0,
  };
  const count = neck >= 6.5 ? 4 : 2;
  const reserve = wedgeReserve(of, tip, slope);
  const rows = pegSizes(
    place,
    spec?.pegs,
    { count, diameter: pegDiameter(Math.min(breadth, 2 * ownHalf), metric) },
    { length: inPost, width: neck, housing: h },
    (spec?.pegs?.count ?? count) > 1 ? 2 : 1,
  );
  // the rows lie about the middle of the depth that the tenon has on average
  const pegs = rows && {
    ...rows,
    fromEdge: -mid - Math.max(...rows.alongWidth),
    nearest: up > 0 ? rows.alongWidth.length - 1 : 0,
  };
  return {
    sizes: {
      housing,
      tenon,
      wedge: {
        slope,
        drop,
        tip,
        depthOuter: -lower(end),
        heightInner: roof(h),
        heightOuter: roof(end),
        length: inMortise,
        reserve,
        whole: sized(spec?.wedge?.length, wedgeLength(inMortise, reserve, metric)),
        width: thickness.value,
      },
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      tenons: [tenonSolid],
      mortises: [mortise],
      housings:
        h > 0
          ? [
              cheekPrism(
                face,
                rectangle([0, h], [up > 0 ? -half : -half - drop.value, up > 0 ? half + drop.value : half]),
                -ownHalf,
                ownHalf,
              ),
            ]
          : [],
      wedges: [wedge],
      notches: [],
      pegs: pegsThrough(face, pegs, () => up * (half + mid)),
    },
    extension: length.value,
    shoulder: { point: facePoint(face, h, 0, 0), normal: face.inward },
  };
}

function wedgeRows(joint: Joint): CutRow[] {
  const { wedge, tenon } = joint.sizes;
  if (!wedge || !tenon) return [];
  return [
    inchRow(
      "joined",
      "tenon depth at the shoulder",
      tenon.width.value,
      "full depth less the drop, cut from below",
    ),
    inchRow(
      "joined",
      "tenon depth at the tip",
      wedge.tip,
      wedge.tip < tenon.width.value + wedge.drop.value - 1e-6
        ? "full depth would lie at the far face"
        : "the timber’s full depth",
    ),
    inchRow("joined", "drop", wedge.drop.value, because(wedge.drop, "an eighth of the depth")),
    inchRow(
      "receiving",
      "mortise height at the inner face",
      tenon.width.value + wedge.heightInner,
      "neck and drop: the tip must pass",
    ),
    inchRow(
      "receiving",
      tenon.through ? "mortise height at the outer face" : "mortise height at its bottom",
      wedge.depthOuter + wedge.heightOuter,
      "depth of the tenon there, drop and the wedge’s rise",
    ),
    inchRow(
      "receiving",
      "room above the seated top, housing too",
      wedge.drop.value,
      "the timber goes in, then down",
    ),
    inchRow(
      "wedge",
      "wedge length",
      wedge.whole.value,
      because(wedge.whole, "through the mortise, and what it is driven on by later, at least an inch"),
    ),
    inchRow("wedge", "length in the mortise", wedge.length, "as deep as the mortise"),
    ...(wedge.reserve > 0
      ? [
          inchRow(
            "wedge",
            "driven on as the timber dries, at most",
            wedge.reserve,
            "shrinkage across the tip ÷ the wedge’s slope",
          ),
        ]
      : []),
    {
      on: "wedge",
      label: "wedge slope",
      value: (Math.atan(wedge.slope) * 180) / Math.PI,
      unit: "deg",
      how: "that of the mortise’s roof, a tenth where nothing else is given",
    },
    inchRow("wedge", "wedge width", wedge.width, "the tenon’s thickness"),
    inchRow("wedge", "wedge height, thin end", wedge.heightInner, "the drop"),
    inchRow(
      "wedge",
      "wedge height, thick end",
      wedge.heightInner + wedge.slope * wedge.whole.value,
      "thin end and the slope over its length",
    ),
  ];
}

export const wedgedHalfDovetail: JointKind = {
  kind: "wedged-half-dovetail",
  title: "Wedged half-dovetail",
  unfit: wedgedThrough,
  shape,
  // above its seat, with its tip through the mouth, then down by the drop
  assembly({ face, sizes }) {
    const up = face.grain[2] >= 0 ? 1 : -1;
    return {
      direction: face.inward,
      last: { direction: scale(face.grain, -up), distance: sizes.wedge?.drop.value ?? 0 },
    };
  },
  cutSheet(joint: Joint) {
    const { tenon, pegs, housing } = joint.sizes;
    const rows = tenon
      ? tenonRows(tenon).filter(
          (r) => r.label !== "tenon width" && r.label !== "mortise length along the grain",
        )
      : [];
    return [
      ...rows,
      ...wedgeRows(joint),
      ...housingRows(joint),
      ...pegRows(pegs, housing.value, "tenon top"),
    ];
  },
};
