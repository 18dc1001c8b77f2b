/** What the checks of timbers find under loads: of each timber the worst use of their kinds that passes its limit. */
import type { FrameResults, MemberUse } from "../../statics/frame-results.ts";
import type { Found } from "../check.ts";
import { loadRelated } from "./load-related.ts";
import { type Exceeded, worstOver } from "./use-words.ts";

/** A use over its limit, with what words its combination. */
export interface OverLimit extends Exceeded, Pick<FrameResults, "solution"> {}

/**
 * @param counts the kinds of use that the check is about
 * @param where the finding points, and its level where that is not the usual one; undefined = another finding says it
 */
export function* overLimit(
  frame: FrameResults | undefined,
  counts: (what: MemberUse["what"]) => boolean,
  where: (one: Exceeded) => Pick<Found<OverLimit>, "path" | "onKey" | "level"> | undefined,
): Generator<Found<OverLimit>> {
  if (!frame) return;
  const { members, solution } = frame;
  const related = loadRelated(frame);
  for (const result of members.values()) {
    const use = worstOver(result, counts);
    const at = use && where({ result, use });
    if (!at) continue;
    const { value, limit, unit, ratio } = use;
    yield {
      ...at,
      place: result.timber.id,
      data: { result, use, solution },
      // where nothing is left of the section, or it buckles, no number tells how far it is over
      ...(Number.isFinite(ratio) ? { value, limit, unit } : {}),
      severity: ratio,
      // only the worst of a path is told: the others need not be traced
      get related() {
        return related(result.timber, use);
      },
    };
  }
}
