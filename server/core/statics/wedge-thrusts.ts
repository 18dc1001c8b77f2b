/**
 * How hard the tail of a pulled half-dovetail lifts its wedge, and the wood of the post above that takes it. A tail of
 * slope s that slides on its lower edge and under its wedge, with friction μ on both, turns a pull P into the upright
 * thrust P ÷ ((s + μ) ÷ (1 − s μ) + μ) (statics of an inclined plane); what pegs take of it is not counted. The block
 * between the mortise's roof and the end of the post is held by the two planes beside the mortise, sheared along the grain
 * (plane geometry).
 */
import { tailSlope } from "../joinery/dovetail-drying.ts";
import { endBreadth } from "../joinery/end-breadth.ts";
import type { Joint } from "../joinery/joint.ts";
import { FAR } from "../joinery/relish.ts";
import type { Adjusted } from "../members/adjust.ts";
import type { JointPull } from "./joint-pulls.ts";
import { adjustedFor, woodOf } from "./timber-wood.ts";

/** The least of smooth, dry wood on a hard smooth face, 0.3 to 0.5; green wood rubs more (Wood Handbook chapter 5; memory). */
export const WOOD_FRICTION = 0.3;

export interface WedgeRelish {
  /** in, from the middle of the mortise's roof to the post's end, and as much of it as counts */
  readonly length: number;
  readonly counted: number;
  /** in, of the mortise through the post */
  readonly deep: number;
  /** in, what the tail rises over its length, and that length; one ÷ the other */
  readonly rise: number;
  readonly tail: number;
  readonly slope: number;
  /** lb, upright */
  readonly thrust: number;
  /** psi, infinite without relish, and F_v′ of the post */
  readonly stress: number;
  readonly shear: Adjusted;
}

/** Wood above a mortise’s roof to the end of its timber, at the middle of the roof, in. */
function relishAbove(joint: Joint): number {
  const { face, sizes } = joint;
  const { wedge } = sizes;
  if (!wedge) return 0;
  const up = face.grain[2] >= 0;
  const roof = endBreadth(joint, face.grain) / 2 + (wedge.heightInner + wedge.heightOuter) / 2;
  return (up ? face.ends[1] : -face.ends[0]) - roof;
}

/**
 * Each plane is loaded by half the wedge's width, which is its step: 8 times that counts at most, as before a rafter's foot.
 * @returns undefined for a joint without a wedge above a sloped tail, or where the post's wood is unknown
 */
export function wedgeRelish({ joint, most, duration }: JointPull): WedgeRelish | undefined {
  const { wedge, tenon } = joint.sizes;
  const slope = tailSlope(joint.sizes);
  const wood = woodOf(joint.into);
  if (!wedge || !tenon || slope <= 0 || slope * WOOD_FRICTION >= 1 || !wood) return undefined;
  const length = relishAbove(joint);
  const counted = Math.max(0, Math.min(length, (FAR * wedge.width) / 2));
  const deep = wedge.length;
  const thrust = most / ((slope + WOOD_FRICTION) / (1 - slope * WOOD_FRICTION) + WOOD_FRICTION);
  const area = 2 * counted * deep;
  return {
    length,
    counted,
    deep,
    rise: slope * tenon.length.value,
    tail: tenon.length.value,
    slope,
    thrust,
    stress: area > 0 ? thrust / area : Number.POSITIVE_INFINITY,
    shear: adjustedFor(joint.into, wood, duration).Fv,
  };
}
