/** What several checks ask of one frame. Each is worked out when the first of them asks, and then kept for the others. */
import { once } from "../analysis/once.ts";
import { remembering } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import type { Model } from "../model/model.ts";
import type { Results } from "../results.ts";
import { type FootUse, footUses } from "../statics/foot-uses.ts";
import type { FrameResults } from "../statics/frame-results.ts";
import { type JointPull, jointPulls } from "../statics/joint-pulls.ts";
import { type NailSet, nailSets } from "./joinery/nail-sets.ts";
import { type ScrewSet, screwSets } from "./joinery/screw-sets.ts";

export interface Shared {
  readonly model: Model;
  /** as in the results: undefined while the frame is not complete */
  readonly frame: FrameResults | undefined;
  readonly screwSets: () => readonly ScrewSet[];
  readonly nailSets: () => readonly NailSet[];
  /** the pull that asks most of a joint; none without the frame's forces */
  readonly pullOf: (joint: Joint) => JointPull | undefined;
  /** what asks most of the posts' feet; none without the frame's forces */
  readonly footUses: () => readonly FootUse[];
}

export function sharedOf({ model, frame }: Results): Shared {
  const pulls = once(() => (frame ? jointPulls(frame) : () => undefined));
  return {
    model,
    frame,
    screwSets: once(() => [...screwSets(model)]),
    nailSets: once(() => [...nailSets(model)]),
    pullOf: remembering((joint) => pulls()(joint)),
    footUses: once(() => (frame ? footUses(frame) : [])),
  };
}
