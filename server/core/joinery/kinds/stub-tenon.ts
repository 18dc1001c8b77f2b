/**
 * Stub tenon: a short tenon without pegs that keeps a timber in its place. It bears on its shoulder and against the walls
 * of its mortise, and holds nothing when it is pulled.
 */

import { lengthNote } from "../../note.ts";
import { squareIn } from "../assembly.ts";
import { housingRows, tenonRows } from "../cut-rows.ts";
import { endInSide } from "../fit.ts";
import type { Joint, JointKind, JointPlace, ShapedJoint } from "../joint.ts";
import { usual } from "../proportions.ts";
import { tenonShape } from "./mortise-and-tenon.ts";

/** Length: 1 1/2 in, or 40 mm (common practice, no source). */
const usualLength = (metric: boolean): number => usual(metric, 1.5, 40);

function shape(place: JointPlace): ShapedJoint {
  const { sizes, solids, ...rest } = tenonShape(place, usualLength(place.metric));
  const { pegs: _, ...unpegged } = sizes;
  return { ...rest, sizes: unpegged, solids: { ...solids, pegs: [] } };
}

export const stubTenon: JointKind = {
  kind: "stub-tenon",
  title: "Stub tenon",
  unfit: endInSide,
  shape,
  assembly: squareIn,
  cutSheet(joint: Joint) {
    const { tenon } = joint.sizes;
    const rule = lengthNote("the usual {length} of a stub tenon (common practice)", 1.5);
    return [...(tenon ? tenonRows(tenon, rule) : []), ...housingRows(joint)];
  },
};
