/** The joints whose sizes can be judged. */
import type { Joint } from "../../joinery/joint.ts";
import type { Model } from "../../model/model.ts";
import { type PurlinCrossing, purlinCrossings } from "../../roof/purlin-crossings.ts";

/** Where purlins lie: without those whose joint may be named in a part of the file that is lost. */
export function judgedCrossings(model: Model): readonly PurlinCrossing[] {
  const { frame } = model;
  if (frame.lost.has("/grid/walls") || frame.lost.has("/grid/bents")) return [];
  const crossings = purlinCrossings(model);
  return frame.joinsWhole ? crossings : crossings.filter(({ joint }) => joint && !joint.assumed);
}

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
