/**
 * What is cut out of a timber, as it is marked: on which face, from where to where along the arris and across the face,
 * how deep. Read off the solids that a joint takes away, so that every kind of joint is laid out the same way.
 */
import type { OwnCut, Prism } from "../../joinery/joint.ts";
import { along, dot, type Vec3 } from "../../model/vec.ts";
import {
  acrossFace,
  breadthOf,
  depthBelow,
  FACES,
  type FaceNumber,
  normalOf,
  opposite,
  type ReferenceFrame,
  type Spot,
  woodBelow,
} from "./faces.ts";

/** From the nearer to the farther edge, inches. */
export type Range = readonly [number, number];

/** What a carpenter calls it. */
export type CutPart = "mortise" | "notch" | "housing" | "reduction" | OwnCut;

/** The outline of a cut at one depth. */
export interface Outline {
  /** from the foot's outermost point, along the arris */
  readonly along: Range;
  /** across the face, see `acrossFace` */
  readonly across: Range;
}

export interface Cut {
  readonly part: CutPart;
  /** the face it is marked on and cut from */
  readonly face: FaceNumber;
  readonly opening: Outline;
  /** the outline at its deepest, where that differs */
  readonly bottom: Outline | undefined;
  /** square below the face of the perfect timber: where the opening lies (the floor of a housing), and the deepest */
  readonly from: number;
  readonly depth: number;
  /** wood from the opposite face to the floor of the cut: what a reference face opposite keeps, whatever the stick measures */
  readonly floor: number;
  /** it comes out of the opposite face */
  readonly through: boolean;
}

/** Nearer to a face than this, a cut is open there: less than anyone marks. */
const OPEN = 1 / 32;

/** The corners of a prism, in space. */
export function cornersOf({ base, u, v, w, outline, from, to }: Prism): readonly Vec3[] {
  return outline.flatMap(([x, y]) => {
    const flat = along(along(base, u, x), v, y);
    return [along(flat, w, from), along(flat, w, to)];
  });
}

/** The face through which another timber comes in that way, if it comes in square to one. */
export function entryFace(inward: Vec3, frame: ReferenceFrame): FaceNumber | undefined {
  return FACES.find((face) => dot(normalOf(face, frame), inward) < -0.99);
}

/**
 * The face a cut is marked on: the one by which the joint goes in, where the cut is open there or begins at the floor of
 * the joint's own housing; else one that it is open on while the opposite one is whole.
 */
function faceOf(
  spots: readonly Spot[],
  entry: FaceNumber | undefined,
  floor: number,
  frame: ReferenceFrame,
): FaceNumber {
  const least = (face: FaceNumber): number => Math.min(...spots.map((s) => depthBelow(face, s, frame)));
  const open = FACES.filter((face) => least(face) < OPEN);
  const blind = open.filter((face) => !open.includes(opposite(face)));
  if (entry !== undefined && blind.includes(entry)) return entry;
  // a lap runs from side to side and is marked on the face that it halves
  if (blind[0] !== undefined && (entry === undefined || open.includes(entry))) return blind[0];
  if (entry !== undefined && least(entry) < floor + OPEN) return entry;
  return blind[0] ?? open[0] ?? entry ?? 1;
}

const between = (value: number, most: number): number => Math.min(most, Math.max(0, value));

/** The outline around some corners of a cut on a face; what lies past the stick is left out. */
export function outlineOf(
  spots: readonly Spot[],
  face: FaceNumber,
  frame: ReferenceFrame,
  length: number,
): Outline {
  const at = spots.map((s) => between(s.along, length));
  const across = spots.map((s) => between(acrossFace(face, s), breadthOf(face, frame)));
  return {
    along: [Math.min(...at), Math.max(...at)],
    across: [Math.min(...across), Math.max(...across)],
  };
}

const SAME = 1e-4;

function alike(a: Outline, b: Outline): boolean {
  return (["along", "across"] as const).every((way) =>
    ([0, 1] as const).every((i) => Math.abs(a[way][i] - b[way][i]) < SAME),
  );
}

/** Where a cut is marked, and on which timber. */
export interface Marked {
  readonly frame: ReferenceFrame;
  readonly spot: (point: Vec3) => Spot;
  /** of the stick, inches */
  readonly length: number;
}

/**
 * One solid that a joint takes out of a timber, as it is marked there.
 * @param inward the way the other timber comes in; undefined for a cut in the joined timber itself
 * @param floor depth of the joint's own housing, inches
 */
export function cutOf(
  prism: Prism,
  part: CutPart,
  inward: Vec3 | undefined,
  floor: number,
  { frame, spot, length }: Marked,
): Cut {
  const spots = cornersOf(prism).map(spot);
  const face = faceOf(spots, inward && entryFace(inward, frame), floor, frame);
  return cutBySpots(spots, part, face, frame, length);
}

/** A cut by its corners, marked on a given face. */
export function cutBySpots(
  spots: readonly Spot[],
  part: CutPart,
  face: FaceNumber,
  frame: ReferenceFrame,
  length: number,
): Cut {
  const depths = spots.map((s) => depthBelow(face, s, frame));
  const wood = woodBelow(face, frame);
  const [least, most] = [Math.min(...depths), Math.max(...depths)];
  const at = (depth: number): Outline =>
    outlineOf(
      spots.filter((_, i) => Math.abs((depths[i] ?? 0) - depth) < SAME),
      face,
      frame,
      length,
    );
  const [opening, bottom] = [at(least), at(most)];
  return {
    part,
    face,
    opening,
    bottom: alike(opening, bottom) ? undefined : bottom,
    from: between(least, wood),
    depth: between(most, wood),
    floor: wood - between(most, wood),
    through: most > wood - OPEN,
  };
}
