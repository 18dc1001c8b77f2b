/** How much wood the end of a timber has where it meets the face it enters, and the tenon that such an end can have. */
import type { Timber } from "../model/model.ts";
import { dot, type Vec2, type Vec3 } from "../model/vec.ts";
import type { Joint, JointPlace } from "./joint.ts";

/** Ends that run along the face rather than into it (sine of the angle between them) have no breadth on it. */
const ALONG = 1e-6;

/**
 * Half of what a timber's section covers along an axis of a face that cuts it, maybe at a slant: a point of the section is
 * carried along the grain onto the face, so that a depth in the plane of the lean counts divided by the sine of the angle
 * between grain and face (plane geometry).
 * @param inward normal of the face; @param axis unit vector in the face; @returns inches
 */
export function halfOnFace(of: Timber, inward: Vec3, axis: Vec3): number {
  const slant = dot(of.axis, inward);
  const lean = Math.abs(slant) < ALONG ? 0 : dot(of.axis, axis) / slant;
  const on = (d: Vec3): number => dot(d, axis) - dot(d, inward) * lean;
  return (Math.abs(on(of.widthDir)) * of.width + Math.abs(on(of.depthDir)) * of.depth) / 2;
}

/**
 * The section at the shoulder, measured along one of the face's axes.
 * @param direction unit vector in the receiving face; @returns inches
 */
export function endBreadth({ of, face }: Joint, direction: Vec3): number {
  return 2 * halfOnFace(of, face.inward, direction);
}

/** How an end leans along the grain of the timber it enters. */
export interface Lean {
  /** in along the grain for each inch inward: the cotangent of the angle between the two grains, 0 = square */
  readonly rate: number;
  /** sine of that angle: inches inward for each inch along the leaning timber */
  readonly sine: number;
  /** the side it leans to, where its toe is: 1 or −1; 1 for a square end */
  readonly toe: 1 | -1;
}

/** Leans of less than this rate are square: one in a thousand is what nobody cuts. */
const SQUARE = 1e-3;

export function leanOf({ of, end, face }: Pick<JointPlace, "of" | "end" | "face">): Lean {
  const sine = Math.max(ALONG, Math.abs(dot(of.axis, face.inward)));
  const along = ((end === "head" ? 1 : -1) * dot(of.axis, face.grain)) / sine;
  const rate = end === "side" || Math.abs(along) < SQUARE ? 0 : along;
  return { rate, sine, toe: rate < 0 ? -1 : 1 };
}

/**
 * Outline (inward, grain) of a tenon on an end that may lean: its toe goes in square, its other edge follows the grain of
 * its timber, since past that edge there is no wood to cut it from. On a square end that is a rectangle.
 * @param from depth of the shoulder; @param edges of the tenon at the shoulder, lower and higher along the grain
 * @param length square to the face; @param slope length to which the other edge follows the grain
 */
export function tenonOutline(
  { rate, toe }: Lean,
  from: number,
  edges: readonly [number, number],
  length: number,
  slope = length,
): Vec2[] {
  const [toeAt, heelAt] = toe > 0 ? [edges[1], edges[0]] : edges;
  const drawn = heelAt + rate * slope;
  const tip = toe > 0 ? Math.min(toeAt, drawn) : Math.max(toeAt, drawn);
  return [
    [from, heelAt],
    [from, toeAt],
    [from + length, toeAt],
    [from + length, tip],
  ];
}

/**
 * What a housing takes of the face for an end that may lean, along the grain: from its toe on the housing's floor to its
 * other edge on the face, so that the end can go in.
 * @param half of the end's breadth along the grain; @param deep the housing's depth
 */
export function housingEdges({ rate }: Lean, half: number, deep: number): readonly [number, number] {
  const shift = rate * deep;
  return [Math.min(-half, shift - half), Math.max(half, shift + half)];
}
