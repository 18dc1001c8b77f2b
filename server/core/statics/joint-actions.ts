/** Which joints pull and how stiff they are: decided by their pegs. */

import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { pegTension } from "../joinery/peg-tension.ts";
import type { Model, Timber } from "../model/model.ts";
import { axialOnly } from "./connection.ts";
import type { JointActions } from "./prepared-frame.ts";

/**
 * A brace pulls when the pegs at both its ends keep their distances; otherwise it only pushes (design, section 6). An end
 * that hangs on its pegs alone is as stiff as they are; what bears wood on wood counts as stiff.
 */
export function jointActions(model: Model): JointActions {
  const pegged = new Map<Joint, number>();
  for (const joint of model.joints) {
    const lies = Math.abs(joint.of.axis[2]) < 0.5 && joint.kind !== "rafter-pair";
    const hangs = axialOnly(joint.of) || lies;
    const found = hangs && joint.end !== "side" ? pegTension(joint, model.frame) : undefined;
    if (found?.holds) pegged.set(joint, found.stiffness.value);
  }
  const byTimber = groupBy(model.joints, (j) => j.of.id);
  const pulls = (timber: Timber): boolean => {
    const ends = (byTimber.get(timber.id) ?? []).filter((j) => j.end !== "side");
    return ends.length === 2 && ends.every((j) => pegged.has(j));
  };
  return {
    pulls,
    endSpring: (joint) => (axialOnly(joint.of) && !pulls(joint.of) ? undefined : pegged.get(joint)),
  };
}
