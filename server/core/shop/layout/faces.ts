/**
 * The two reference faces of a timber and the arris between them, from which everything on it is laid out: outward in
 * outer walls and end bents, toward bent 1 and wall A in inner ones, the top of lying timbers (design of the language).
 *
 * A carpenter marks four numbers on the end of a stick. Face 1 is the first reference face: the one that looks out of
 * the wall in a post, the upright side in everything that lies or slopes. Face 2 is the second: the one that looks out of
 * the bent in a post, the top of a lying timber and of a rafter, the long edge of a brace (as sawn straight: a hollow is
 * cut after the layout). 3 lies opposite 1, and 4 opposite 2 (common practice, no source).
 */
import type { Timber } from "../../model/model.ts";
import { along, cross, dot, scale, sub, type Vec3 } from "../../model/vec.ts";

/** 1 and 2 are the reference faces, 3 lies opposite 1, 4 opposite 2. */
export type FaceNumber = 1 | 2 | 3 | 4;

export const FACES: readonly FaceNumber[] = [1, 2, 3, 4];

export const opposite = (face: FaceNumber): FaceNumber => ([3, 4, 1, 2] as const)[face - 1] ?? 1;

/** Sloping by less than this, a direction counts as level. */
const LEVEL = 0.02;

/** A post, a king-post, an upright strut: it has a face to its wall and a face to its bent, and no top. */
export function stands(timber: Timber): boolean {
  return timber.kind !== "brace" && Math.abs(timber.axis[2]) > 0.9;
}

/**
 * The rule where a timber has no side that looks outward (common rafters, joists, braces between timbers that are
 * centered): toward bent 1, else toward wall A; a purlin's is the lower one, toward its eave, so that both slopes mirror.
 */
function usualSide(direction: Vec3): -1 | 1 {
  const [x, y, z] = direction;
  if (Math.abs(z) > LEVEL) return z > 0 ? -1 : 1;
  return (Math.abs(x) >= Math.abs(y) ? x : y) > 0 ? -1 : 1;
}

/** Where a timber's marks are measured from. */
export interface ReferenceFrame {
  /** outward normals of faces 1 and 2 */
  readonly normals: readonly [Vec3, Vec3];
  /** which size of the section lies square to face 1, and which to face 2 */
  readonly ways: readonly ["width" | "depth", "width" | "depth"];
  /** inches from face 1 to face 3, and from face 2 to face 4, of the perfect timber: the section of the file */
  readonly sizes: readonly [number, number];
  /** which way 1, 2, 3, 4 follow one another, seen from the foot toward the head; mirrored timbers differ in it */
  readonly turn: "clockwise" | "counterclockwise";
}

/** The reference faces of a timber; every timber has two. */
export function referenceFrame(timber: Timber): ReferenceFrame {
  const { widthDir, depthDir, reference } = timber;
  const side = scale(widthDir, reference.width || usualSide(widthDir));
  const top = scale(depthDir, reference.depth || usualSide(depthDir));
  const upright = stands(timber);
  const normals: readonly [Vec3, Vec3] = upright ? [top, side] : [side, top];
  return {
    normals,
    ways: upright ? ["depth", "width"] : ["width", "depth"],
    sizes: upright ? [timber.depth, timber.width] : [timber.width, timber.depth],
    turn: dot(cross(...normals), timber.axis) > 0 ? "clockwise" : "counterclockwise",
  };
}

/** A point of a timber as it is marked out, inches. */
export interface Spot {
  /** along the arris, from the foot's outermost point */
  readonly along: number;
  /** square below face 1 and below face 2 */
  readonly below: readonly [number, number];
}

/**
 * Turns points in space into marks on a timber.
 * @param start axial position of the foot's outermost point, inches from the timber's origin
 */
export function spotOn(timber: Timber, frame: ReferenceFrame, start: number): (point: Vec3) => Spot {
  const { normals, sizes } = frame;
  const faces = normals.map((n, i) => along(timber.origin, n, (sizes[i] ?? 0) / 2));
  return (point) => {
    const below = (i: 0 | 1): number => dot(sub(faces[i] ?? timber.origin, point), normals[i]);
    return { along: dot(sub(point, timber.origin), timber.axis) - start, below: [below(0), below(1)] };
  };
}

/** How deep a spot lies below a face of the perfect timber, inches. */
export function depthBelow(face: FaceNumber, spot: Spot, { sizes }: ReferenceFrame): number {
  const i = face % 2 === 1 ? 0 : 1;
  return face < 3 ? spot.below[i] : sizes[i] - spot.below[i];
}

/**
 * How far a spot lies across a face from the edge that it is marked from: from the arris on faces 1 and 2, from the edge
 * with face 2 on face 3, from the edge with face 1 on face 4; always square off a reference face.
 */
export function acrossFace(face: FaceNumber, spot: Spot): number {
  return spot.below[face % 2 === 1 ? 1 : 0];
}

/** Inches across a face of the perfect timber. */
export function breadthOf(face: FaceNumber, { sizes }: ReferenceFrame): number {
  return sizes[face % 2 === 1 ? 1 : 0];
}

/** Inches of wood below a face of the perfect timber. */
export function woodBelow(face: FaceNumber, { sizes }: ReferenceFrame): number {
  return sizes[face % 2 === 1 ? 0 : 1];
}

/** The outward normal of a face. */
export function normalOf(face: FaceNumber, { normals }: ReferenceFrame): Vec3 {
  const own = normals[face % 2 === 1 ? 0 : 1];
  return face < 3 ? own : scale(own, -1);
}
