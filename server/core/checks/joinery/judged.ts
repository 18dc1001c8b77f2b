/** The joints whose sizes can be judged. */
import type { Joint } from "../../joinery/joint.ts";
import type { Model } from "../../model/model.ts";

/**
 * Without those that are assumed while a part of the file is lost: it may be the part that names them; and without what is
 * taken where the kind that the file names cannot be cut.
 */
export function judgedJoints({ joints: all, frame }: Model): readonly Joint[] {
  const joints = all.filter(({ standsFor }) => !standsFor);
  // two lines at one place: sizes follow from where the lines stand
  if (frame.lost.has("/grid/walls") || frame.lost.has("/grid/bents")) return [];
  return frame.joinsWhole ? joints : joints.filter((joint) => !joint.assumed);
}
