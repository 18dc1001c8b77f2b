/** The joints whose sizes can be judged. */
import type { Joint } from "../../joinery/joint.ts";
import type { Model } from "../../model/model.ts";

/** Without those that are assumed while a part of the file is lost: it may be the part that names them. */
export function judgedJoints({ joints, frame }: Model): readonly Joint[] {
  // two lines at one place: sizes follow from where the lines stand
  if (frame.lost.has("/grid/walls") || frame.lost.has("/grid/bents")) return [];
  return frame.joinsWhole ? joints : joints.filter((joint) => !joint.assumed);
}
