/** Which joints pull and how stiff they are: decided by their pegs and screws. */

import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { pegTension } from "../joinery/peg-tension.ts";
import { screwHold, screwStiffness } from "../joinery/screw-hold.ts";
import type { Model, Timber } from "../model/model.ts";
import { isDiagonal } from "../model/upright.ts";
import type { Factor } from "../sourced.ts";
import type { JointActions } from "./prepared-frame.ts";

/** Whether screws hold at all does not depend on how long a load lasts. */
const PERMANENT: Factor = { symbol: "C_D", value: 0.9, status: "published", source: "NDS Table 2.3.2" };

/** A stated value that cannot be read leaves a stiffness as it is: the table's stand in for it, as for E (timber-wood.ts). */
function withReadable(timber: Timber): Timber {
  if (!timber.class?.unreadValues) return timber;
  const { unreadValues: _, ...readable } = timber.class;
  return { ...timber, class: readable };
}

/** Of pegs that keep their distances, or of screws that hold both ways, lb/in; undefined = the end only pushes. */
function endStiffness(found: Joint, { frame }: Model): number | undefined {
  const joint = { ...found, of: withReadable(found.of), into: withReadable(found.into) };
  if (joint.sizes.screws) {
    const hold = screwHold(joint, PERMANENT);
    return hold && hold.lateral.value > 0 && hold.withdrawal.value > 0 ? screwStiffness(joint) : undefined;
  }
  // laps and scarfs count as stiff, for how pegs give in single shear is not known: a stiff end draws more force to it
  if (!joint.sizes.tenon && !joint.sizes.pair) return undefined;
  const pegs = pegTension(joint, frame);
  return pegs?.holds ? pegs.stiffness.value : undefined;
}

/**
 * A brace pulls when the pegs or screws at both its ends keep their distances; otherwise it only pushes (design, section 6). An end
 * that hangs on its pegs or screws alone is as stiff as they are; what bears wood on wood counts as stiff.
 */
export function jointActions(model: Model): JointActions {
  const held = new Map<Joint, number>();
  for (const joint of model.joints) {
    const lies = Math.abs(joint.of.axis[2]) < 0.5 && joint.kind !== "rafter-pair";
    const hangs = isDiagonal(joint.of) || lies;
    const found = hangs && joint.end !== "side" ? endStiffness(joint, model) : undefined;
    if (found !== undefined) held.set(joint, found);
  }
  const byTimber = groupBy(model.joints, (j) => j.of.id);
  const pulls = (timber: Timber): boolean => {
    const ends = (byTimber.get(timber.id) ?? []).filter((j) => j.end !== "side");
    return ends.length === 2 && ends.every((j) => held.has(j));
  };
  return {
    pulls,
    endSpring: (joint) => (isDiagonal(joint.of) && !pulls(joint.of) ? undefined : held.get(joint)),
  };
}
