/**
 * What is cut out of a timber, as it is marked: on which face, from where to where along the arris and across the face,
 * how deep. Read off the solids that a joint takes away, so that every kind of joint is laid out the same way.
 */
import type { OwnCut, Prism } from "../../joinery/joint.ts";
import { clip } from "../../model/solid.ts";
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

/** A corner of an outline as it is marked on a face, inches. */
export interface Corner {
  readonly along: number;
  readonly across: number;
}

export interface Cut {
  readonly part: CutPart;
  /** the face it is marked on and cut from */
  readonly face: FaceNumber;
  readonly opening: Outline;
  /** of an outline that goes straight down and is no rectangle on its face, in turning order: a dovetail, a slanted lap */
  readonly corners: readonly Corner[] | undefined;
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

const within = (value: number, most: number): number => Math.min(most, Math.max(0, value));

/** The outline around some corners of a cut on a face; what lies past the stick is left out. */
export function outlineOf(
  spots: readonly Spot[],
  face: FaceNumber,
  frame: ReferenceFrame,
  length: number,
): Outline {
  const at = spots.map((s) => within(s.along, length));
  const across = spots.map((s) => within(acrossFace(face, s), breadthOf(face, frame)));
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
  const entry = inward && entryFace(inward, frame);
  const face = faceOf(spots, entry, floor, frame);
  const cut = cutBySpots(spots, part, face, frame, length, face === entry ? floor : 0);
  return Math.abs(dot(prism.w, normalOf(face, frame))) > 1 - SQUARE
    ? { ...cut, corners: cornersOn(spots, face, frame, length) }
    : cut;
}

/** Of a cosine: nearer to 1 than this, a prism goes square into a face. */
const SQUARE = 1e-6;

/** The outline of a prism that goes square into a face, as far as it lies on the stick; undefined for a rectangle. */
function cornersOn(
  spots: readonly Spot[],
  face: FaceNumber,
  frame: ReferenceFrame,
  length: number,
): readonly Corner[] | undefined {
  const least = Math.min(...spots.map((s) => depthBelow(face, s, frame)));
  const whole = spots
    .filter((s) => Math.abs(depthBelow(face, s, frame) - least) < SAME)
    .map((s): Vec3 => [s.along, acrossFace(face, s), 0]);
  const onStick = clip(clip(whole, [1, 0, 0], length), [-1, 0, 0], 0);
  const onWood = clip(clip(onStick, [0, 1, 0], breadthOf(face, frame)), [0, -1, 0], 0);
  const corners = onWood
    .map(([at, across]) => ({ along: at, across }))
    .filter((corner, i, all) => !meet(corner, all[(i + 1) % all.length]));
  const straight = corners.every((corner, i) => {
    const next = corners[(i + 1) % corners.length] ?? corner;
    return Math.abs(corner.along - next.along) < SAME || Math.abs(corner.across - next.across) < SAME;
  });
  return straight ? undefined : corners;
}

const meet = (a: Corner, b: Corner | undefined): boolean =>
  b !== undefined && Math.abs(a.along - b.along) < SAME && Math.abs(a.across - b.across) < SAME;

/**
 * A cut by its corners, marked on a given face.
 * @param floor depth of the joint's own housing in that face, inches: its mouth lies there, on the slant where the floor is
 */
export function cutBySpots(
  spots: readonly Spot[],
  part: CutPart,
  face: FaceNumber,
  frame: ReferenceFrame,
  length: number,
  floor = 0,
): Cut {
  const depths = spots.map((s) => depthBelow(face, s, frame));
  const wood = woodBelow(face, frame);
  const [least, most] = [Math.min(...depths), Math.max(...depths)];
  const between = (from: number, to: number): Outline =>
    outlineOf(
      spots.filter((_, i) => (depths[i] ?? 0) > from - SAME && (depths[i] ?? 0) < to + SAME),
      face,
      frame,
      length,
    );
  const [opening, bottom] = [between(least, Math.max(least, floor)), between(most, most)];
  return {
    part,
    face,
    opening,
    corners: undefined,
    bottom: alike(opening, bottom) ? undefined : bottom,
    from: within(least, wood),
    depth: within(most, wood),
    floor: wood - within(most, wood),
    through: most > wood - OPEN,
  };
}
