/** What is measured on the drawing of a joint, read from its solids: each size once, in the view that shows it square. */
import type { Joint, Peg, Prism, ReceivingFace } from "../core/joinery/joint.ts";
import { dot, sub, unit, type Vec3 } from "../core/model/vec.ts";
import type { FaceAxis, JointView } from "./joint-eyes.ts";
import { prismCorners } from "./joint-parts.ts";

/** From one place to another along an axis of the receiving face, inches from the face's origin. */
export interface Measure {
  readonly view: JointView["id"];
  readonly axis: FaceAxis;
  readonly from: number;
  readonly to: number;
}

type Span = readonly [number, number];

/** Most measures of one axis in one view: more are no longer read. */
const MOST = 3;
/** Less than this is no size to mark out, inches. */
const LEAST = 1 / 64;
const AXES: readonly FaceAxis[] = ["inward", "grain", "across"];

/** The view whose paper an axis pierces. */
const LOOKING_ALONG: Readonly<Record<FaceAxis, JointView["id"]>> = {
  across: "front",
  grain: "side",
  inward: "face",
};
/** The view that shows an axis when it is not square to the paper of the profile. */
const SHOWING: Readonly<Record<FaceAxis, JointView["id"]>> = {
  across: "side",
  grain: "front",
  inward: "front",
};

function spanOf(face: ReceivingFace, points: readonly Vec3[], axis: FaceAxis): Span {
  const at = points.map((p) => dot(sub(p, face.origin), face[axis]));
  return [Math.min(...at), Math.max(...at)];
}

/** The axis of the face nearest to a direction; undefined for one that lies across two of them. */
function nearestAxis(face: ReceivingFace, direction: Vec3): FaceAxis | undefined {
  return AXES.find((axis) => Math.abs(dot(face[axis], direction)) > 0.98);
}

function ofPrism(face: ReceivingFace, prism: Prism): Measure[] {
  const through = nearestAxis(face, prism.w);
  if (!through) return [];
  const points = prismCorners(prism);
  return AXES.map((axis) => {
    const [from, to] = spanOf(face, points, axis);
    return { view: axis === through ? SHOWING[axis] : LOOKING_ALONG[through], axis, from, to };
  });
}

/** From the edge that is measured from to the near cheek of the tenon. */
function setIn({ face, solids }: Joint): Measure[] {
  const [tenon] = solids.tenons;
  if (!tenon || face.reference === 0 || nearestAxis(face, tenon.w) !== "across") return [];
  const [low, high] = spanOf(face, prismCorners(tenon), "across");
  return face.reference > 0
    ? [{ view: "side", axis: "across", from: high, to: face.edges[1] }]
    : [{ view: "side", axis: "across", from: face.edges[0], to: low }];
}

/** From the face to the first row of pegs, and from one peg of it to the next. */
function ofPegs({ face, solids, sizes }: Joint): Measure[] {
  const way = ({ from, to }: Peg): Vec3 => unit(sub(to, from));
  const [first] = solids.pegs;
  if (!first || !sizes.tenon || nearestAxis(face, way(first)) !== "across") return [];
  const places = solids.pegs.map(({ from }) => ({
    inward: dot(sub(from, face.origin), face.inward),
    grain: dot(sub(from, face.origin), face.grain),
  }));
  const row = Math.min(...places.map((p) => p.inward));
  const inRow = places
    .filter((p) => Math.abs(p.inward - row) < LEAST)
    .map((p) => p.grain)
    .sort((a, b) => a - b);
  const [one, two] = inRow;
  return [
    { view: "front", axis: "inward", from: 0, to: row },
    ...(one !== undefined && two !== undefined
      ? [{ view: "front", axis: "grain", from: one, to: two } as const]
      : []),
  ];
}

/** The whole of the receiving timber: its section is known and not cut. */
const isWhole = ({ face }: Joint, { axis, from, to }: Measure): boolean => {
  const all: Span | undefined =
    axis === "inward" ? [0, face.thickness] : axis === "across" ? face.edges : undefined;
  return all !== undefined && Math.abs(from - all[0]) < LEAST && Math.abs(to - all[1]) < LEAST;
};

/** @returns at most three measures of an axis in a view, tenon and set-in before pegs and housing */
export function measuresOf(joint: Joint): Measure[] {
  const { face, solids } = joint;
  const { tenons, mortises, housings, notches, wedges } = solids;
  const prisms = (list: readonly Prism[]): Measure[] => list.flatMap((prism) => ofPrism(face, prism));
  const placing = setIn(joint);
  const wanted = [
    ...prisms(tenons),
    ...placing,
    ...(tenons.length === 0 ? prisms(mortises) : []),
    ...ofPegs(joint),
    ...prisms(housings),
    ...prisms(notches),
    ...prisms(wedges),
  ];
  const found: Measure[] = [];
  for (const one of wanted) {
    const same = (other: Measure): boolean =>
      other.axis === one.axis &&
      Math.abs(other.from - one.from) < LEAST &&
      Math.abs(other.to - one.to) < LEAST;
    // a housing as wide as the tenon would say its number once more beside it
    const beside = found.filter((other) => other.view === one.view && other.axis === one.axis);
    const told =
      !placing.includes(one) &&
      beside.some((other) => Math.abs(other.to - other.from - (one.to - one.from)) < LEAST);
    if (!(one.to - one.from > LEAST) || found.some(same) || told || isWhole(joint, one)) continue;
    if (beside.length < MOST) found.push(one);
  }
  return found;
}
