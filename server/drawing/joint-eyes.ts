/** From where a joint is looked at: square to the receiving timber, along its grain, and onto the face that receives. */
import type { Joint } from "../core/joinery/joint.ts";
import { cross, dot, scale, type Vec3 } from "../core/model/vec.ts";
import { type Eye, eyeFrom } from "./seen-lines.ts";

/** The face's three axes, by which cut sizes are measured. */
export type FaceAxis = "inward" | "grain" | "across";

export interface JointView {
  readonly id: "front" | "side" | "face";
  readonly eye: Eye;
  /** the axis of the face that runs level on paper, and the one that stands, each with its sense */
  readonly level: FaceAxis;
  readonly upright: FaceAxis;
  /** beside the front view, in its direction on paper: 1 to the right or up; the front itself has 0, 0 */
  readonly column: -1 | 0 | 1;
  readonly row: -1 | 0 | 1;
}

const signOf = (value: number): 1 | -1 => (value < 0 ? -1 : 1);

/**
 * A joint of timbers that lie level has its plan for a front: the face lies below it, and right of the face the side
 * view, upright as in the frame.
 */
function besideFace(front: Eye, { face }: Joint): JointView {
  const up: Vec3 = scale(face.across, signOf(face.across[2]));
  return {
    id: "side",
    eye: eyeFrom(front.right, up, face.origin),
    level: "inward",
    upright: "across",
    column: 1,
    row: -1,
  };
}

/**
 * Third-angle projection: each view lies on the side of the front from which it is seen. What stands upright in the
 * frame stands upright on paper where the front view shows it; of two timbers that lie level the receiving one runs level on paper.
 */
export function jointEyes(joint: Joint): readonly [JointView, JointView, JointView] {
  const { inward, grain, across, origin } = joint.face;
  const { reference } = joint.face;
  const stands = Math.abs(inward[2]) > Math.abs(grain[2]) - 1e-6;
  const upAxis = stands ? inward : grain;
  const up = scale(upAxis, signOf(upAxis[2]));
  const isPlan = Math.abs(across[2]) > 0.7;
  // the front shows the reference face where there is one; a face that lies level is looked at from above
  const facing = isPlan ? signOf(across[2]) : reference === 0 ? 1 : reference;
  const front = eyeFrom(scale(across, facing), up, origin);
  const out = scale(inward, -1);
  const along: Vec3 = stands ? front.right : up;
  const sideUp = stands ? up : cross(along, front.right);
  const faceUp = stands ? cross(out, front.right) : up;
  return [
    {
      id: "front",
      eye: front,
      level: stands ? "grain" : "inward",
      upright: stands ? "inward" : "grain",
      column: 0,
      row: 0,
    },
    stands && isPlan
      ? besideFace(front, joint)
      : {
          id: "side",
          eye: eyeFrom(along, sideUp, origin),
          level: stands ? "across" : "inward",
          upright: stands ? "inward" : "across",
          column: stands ? 1 : 0,
          row: stands ? 0 : 1,
        },
    {
      id: "face",
      eye: eyeFrom(out, faceUp, origin),
      level: stands ? "grain" : "across",
      upright: stands ? "across" : "grain",
      column: stands ? 0 : signOf(dot(out, front.right)),
      row: stands ? signOf(dot(out, up)) : 0,
    },
  ];
}
