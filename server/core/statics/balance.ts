/** What acts on a frame under a combination and what its piers answer: two sums, each from its own side. */
import { add, scale, type Vec3 } from "../model/vec.ts";
import { totalOf } from "./line-loads.ts";
import type { SolvedCase } from "./solve-frame.ts";

/**
 * Sum of all loads of a combination, taken from the loads themselves, lb in global axes. A timber that floats, or stands in
 * the place of another, has a finding and is no part of the frame: what it weighs stands on nothing.
 */
export function appliedTotal({ frameCase, frame }: Pick<SolvedCase, "frameCase" | "frame">): Vec3 {
  return frameCase.parts.reduce<Vec3>(
    (sum, { load, factor }) => {
      const carried = load.loads.filter(({ timber }) => frame.skeleton.piecesOf.has(timber.id));
      return add(sum, scale(totalOf(carried), factor));
    },
    [0, 0, 0],
  );
}

export interface BearingReaction {
  /** what the frame stands on: the pier's id, else the timber's */
  readonly at: string;
  readonly timber: string;
  /** on the timber, lb in global axes */
  readonly force: Vec3;
}

/**
 * Forces of the ground on the frame, one for each pier (without piers, each foot). Empty for a combination without
 * solution. The ridge's hold of the sliding model is no bearing: what it carries has been put back at the plates.
 */
export function bearingReactions(solved: SolvedCase): BearingReaction[] {
  const byNode = new Map(solved.combined.reactions().map((r) => [r.node, r.force]));
  const seen = new Set<number>();
  return solved.frame.skeleton.bearings.flatMap(({ node, timber, pier }) => {
    const force = byNode.get(node);
    if (!force || seen.has(node)) return [];
    seen.add(node);
    return [{ at: pier?.id ?? timber.id, timber: timber.id, force: [force[0], force[1], force[2]] }];
  });
}

/** Sum of {@link bearingReactions}. */
export function reactionTotal(solved: SolvedCase): Vec3 {
  return bearingReactions(solved).reduce<Vec3>((sum, { force }) => add(sum, force), [0, 0, 0]);
}
