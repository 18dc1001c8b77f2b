/** How joints go together: the moves that several kinds share. */
import { scale } from "../model/vec.ts";
import type { Assembly, Joint, ReceivingFace } from "./joint.ts";

/** Square into the face: tenons. */
export function squareIn({ face }: Pick<Joint, "face">): Assembly {
  return { direction: face.inward };
}

/** Whether a cut in this face can be open on top: in the side of an upright timber there is no top. */
export function opensOnTop(face: ReceivingFace): boolean {
  return Math.abs(face.across[2]) > 0.5;
}

/** From the edge of the face that is the upper one, along it. */
export function fromUpperEdge({ face }: Pick<Joint, "face">): Assembly {
  return { direction: scale(face.across, face.across[2] >= 0 ? -1 : 1) };
}

/** Down into a cut that is open on top, else square in. */
export function dropsIn(joint: Pick<Joint, "face">): Assembly {
  return opensOnTop(joint.face) ? fromUpperEdge(joint) : squareIn(joint);
}
