/**
 * Rafter pair: two rafters head to head at the ridge, without a ridge timber. Each runs on past the plumb line of the ridge
 * up to the other's upper edge, so that their sides overlap in a rhombus. In a bridle the middle third of its thickness is
 * the one's tongue and the outer thirds are the tines of the other's fork (common practice, no source); in a lap each has
 * half. Pegs stand on the plumb line, where every part has most wood around them.
 *
 * Plane geometry, from the ridge's plumb line: with plumb height H = d ÷ cos θ and slopes t₁, t₂ the rhombus reaches
 * H ÷ (t₁ + t₂) to either side, level.
 */
import { halfExtent } from "../../model/box.ts";
import type { Timber } from "../../model/model.ts";
import { along, cross, dot, scale, sub, unit, type Vec2, type Vec3 } from "../../model/vec.ts";
import { squareIn } from "../assembly.ts";
import { inchRow } from "../cut-rows.ts";
import { cheekPrism, facePoint } from "../face.ts";
import { peak } from "../fit.ts";
import type {
  Assembly,
  CutRow,
  Joint,
  JointEnd,
  JointKind,
  JointPlace,
  Peg,
  Prism,
  ReceivingFace,
  ShapedJoint,
} from "../joint.ts";
import type { PairSizes, PegSizes } from "../joint-sizes.ts";
import { BORED_TOGETHER, pegDiameter, pegSizes, toStep } from "../proportions.ts";

/** Level direction in which a rafter's end points, and its slope there, radians. */
function rise(of: Timber, end: JointEnd): { readonly level: Vec3; readonly slope: number } {
  const out = end === "foot" ? scale(of.axis, -1) : of.axis;
  const flat = Math.hypot(out[0], out[1]);
  const level: Vec3 = flat > 1e-9 ? [out[0] / flat, out[1] / flat, 0] : [0, 1, 0];
  return { level, slope: Math.asin(Math.max(-1, Math.min(1, out[2]))) };
}

const UP: Vec3 = [0, 0, 1];

/** Height of a timber's center line over the plumb line through a point. */
function heightAt(timber: Timber, point: Vec3, level: Vec3): number {
  const run = dot(timber.axis, level);
  const at = Math.abs(run) > 1e-9 ? dot(sub(point, timber.origin), level) / run : 0;
  return timber.origin[2] + timber.axis[2] * at;
}

/** The plumb plane of the ridge: inward to the other rafter, the grain's place taken by the plumb line. */
function plumbFace(of: Timber, end: JointEnd, into: Timber, point: Vec3): ReceivingFace {
  const { level, slope } = rise(of, end);
  const across = unit(cross(level, UP));
  const half = halfExtent(into, across);
  const onLine = along(point, UP, heightAt(of, point, level) - point[2]);
  const origin = along(onLine, across, dot(sub(of.origin, onLine), across));
  const offset = dot(sub(into.origin, origin), across);
  const plumb = of.depth / Math.cos(slope);
  return {
    origin,
    inward: level,
    grain: UP,
    across,
    thickness: plumb,
    edges: [offset - half, offset + half],
    ends: [-plumb / 2, plumb / 2],
    reference: 0,
  };
}

interface Rhombus {
  /** plumb heights, from the face's origin: where both upper and both lower edges cross the plumb line */
  readonly top: number;
  readonly bottom: number;
  /** level, how far the joined rafter runs on past the plumb line, and the receiving one to the other side */
  readonly reach: readonly [number, number];
  readonly slopes: readonly [number, number];
  /** heights at which these two end */
  readonly tips: readonly [number, number];
}

function rhombus({ of, end, into, face }: JointPlace): Rhombus {
  const own = rise(of, end).slope;
  // the other rafter rises toward this one
  const other = Math.asin(Math.min(1, Math.abs(into.axis[2])));
  const [t1, t2] = [Math.tan(own), Math.tan(other)];
  const [h1, h2] = [of.depth / Math.cos(own), into.depth / Math.cos(other)];
  const lift = heightAt(into, face.origin, face.inward) - face.origin[2];
  const steep = Math.max(1e-3, t1 + t2);
  const joined = Math.max(0, lift + h2 / 2 + h1 / 2) / steep;
  const received = Math.max(0, h1 / 2 - lift + h2 / 2) / steep;
  return {
    top: Math.min(h1 / 2, lift + h2 / 2),
    bottom: Math.max(-h1 / 2, lift - h2 / 2),
    reach: [joined, received],
    slopes: [own, other],
    tips: [t1 * joined - h1 / 2, lift + t2 * received - h2 / 2],
  };
}

/** From where to where across each part lies, from the middle of the joined rafter. */
interface Parts {
  readonly tongue: readonly [number, number];
  readonly tines: readonly (readonly [number, number])[];
}

function partsOf(form: PairSizes["form"], face: ReceivingFace, ownHalf: number, metric: boolean): Parts {
  const [low, high] = [Math.max(-ownHalf, face.edges[0]), Math.min(ownHalf, face.edges[1])];
  // the tongue is marked to a step, its tines have the rest
  const third = (high - low - toStep((high - low) / 3, metric)) / 2;
  if (form === "lapped") {
    const middle = (low + high) / 2;
    return { tongue: [low, middle], tines: [[middle, high]] };
  }
  return {
    tongue: [low + third, high - third],
    tines: [
      [low, low + third],
      [high - third, high],
    ],
  };
}

/** One above the other on the plumb line, evenly over its height. */
function pegsOf(face: ReceivingFace, { alongWidth, diameter }: PegSizes): Peg[] {
  return alongWidth.map((height) => ({
    from: facePoint(face, 0, height, face.edges[0]),
    to: facePoint(face, 0, height, face.edges[1]),
    diameter: diameter.value,
  }));
}

function shape(place: JointPlace): ShapedJoint {
  const { of, face, spec, metric } = place;
  const form = spec?.form === "lapped" ? "lapped" : "bridle";
  const { top, bottom, reach, slopes, tips } = rhombus(place);
  const parts = partsOf(form, face, halfExtent(of, face.across), metric);
  const plumb = Math.max(0, top - bottom);
  const middle = (top + bottom) / 2;
  const right: Vec2[] = [
    [0, bottom],
    [reach[0], tips[0]],
    [0, top],
  ];
  const left: Vec2[] = [
    [0, top],
    [-reach[1], tips[1]],
    [0, bottom],
  ];
  const prism = (outline: readonly Vec2[], [from, to]: readonly [number, number]): Prism =>
    cheekPrism(face, outline, from, to);
  const tines = parts.tines.map((part) => prism(left, part));
  const rows = pegSizes(
    place,
    spec?.pegs,
    {
      count: 1,
      diameter: pegDiameter(of.depth, metric),
      ...(form === "lapped" ? { draw: BORED_TOGETHER } : {}),
    },
    { length: plumb, width: plumb, housing: 0 },
  );
  const pegs = rows && { ...rows, setbacks: [0], alongWidth: rows.alongWidth.map((a) => middle + a) };
  const tine = Math.min(...parts.tines.map(([a, b]) => b - a));
  const past = ([0, 1] as const).map((k) => reach[k] / Math.cos(slopes[k])) as [number, number];
  return {
    sizes: {
      housing: { value: 0, from: "default" },
      pair: { form, tongue: parts.tongue[1] - parts.tongue[0], tine, plumb, slopes, past },
      ...(pegs ? { pegs } : {}),
    },
    solids: {
      // the tongue stands free of its cheeks on both sides of the plumb line
      tenons: [prism([...right, left[1] ?? [0, top]], parts.tongue)],
      mortises: [prism(right, parts.tongue)],
      tines,
      housings: [],
      wedges: [],
      notches: tines,
      pegs: pegs ? pegsOf(face, pegs) : [],
    },
    extension: past[0],
    shoulder: undefined,
  };
}

const degrees = (radians: number): number => (radians * 180) / Math.PI;

function pegRows(joint: Joint): CutRow[] {
  const { pegs, pair } = joint.sizes;
  if (!pegs || !pair) return [];
  const { count, diameter, alongWidth, draw } = pegs;
  const [first = 0] = alongWidth;
  const top = pair.plumb / 2 + (alongWidth.reduce((sum, a) => sum + a, 0) / alongWidth.length || 0);
  return [
    { on: "peg", label: "pegs", value: count, unit: "count", how: "as the file says, or the usual number" },
    inchRow(
      "peg",
      "peg hole diameter",
      diameter.value,
      diameter.from === "file" ? "as the file says" : "usual for a timber of this size",
    ),
    inchRow(
      "peg",
      count > 1 ? "ridge down to the lowest peg hole, plumb" : "ridge down to the peg hole, plumb",
      top - first,
      "on the plumb line of the ridge, evenly",
    ),
    ...(count > 1
      ? [inchRow("peg", "peg hole to peg hole", (alongWidth[1] ?? first) - first, "plumb, evenly")]
      : []),
    ...(draw.value > 0
      ? [
          inchRow(
            "peg",
            "drawbore offset",
            draw.value,
            "toward the other rafter, so that the pair draws tight",
          ),
        ]
      : []),
  ];
}

/** A tongue goes level into its fork; a lapped half is laid on the other from its own side. */
function assembly(joint: Joint): Assembly {
  const { of, sizes, solids } = joint;
  const [half] = solids.tenons;
  if (sizes.pair?.form !== "lapped" || !half) return squareIn(joint);
  const middle = dot(sub(half.base, of.origin), half.w) + (half.from + half.to) / 2;
  return { direction: scale(half.w, middle > 0 ? -1 : 1) };
}

export const rafterPair: JointKind = {
  kind: "rafter-pair",
  title: "Rafter pair",
  unfit: peak,
  face: plumbFace,
  shape,
  assembly,
  cutSheet(joint: Joint) {
    const { pair } = joint.sizes;
    if (!pair) return [];
    const lapped = pair.form === "lapped";
    const share = lapped ? "half the thickness" : "a third of the thickness, the tongue to the eighth";
    const [own, other] = pair.slopes;
    const past = "to the other rafter’s upper edge";
    return [
      inchRow("joined", lapped ? "thickness left" : "tongue thickness", pair.tongue, share),
      inchRow("joined", "past the plumb line, along the underside", pair.past[0], past),
      {
        on: "joined",
        label: "end cut to the grain",
        value: degrees(own + other),
        unit: "deg",
        how: "both slopes: along the other’s upper edge",
      },
      inchRow("receiving", lapped ? "thickness left" : "tine thickness, each", pair.tine, share),
      ...(lapped ? [] : [inchRow("receiving", "slot width", pair.tongue, "the tongue’s thickness")]),
      inchRow("receiving", "past the plumb line, along the underside", pair.past[1], past),
      inchRow("receiving", "plumb height at the ridge", pair.plumb, "depth ÷ cos of the slope"),
      ...pegRows(joint),
    ];
  },
};
