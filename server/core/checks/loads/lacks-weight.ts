/** Whether the weight of some timber is not known: then nothing can be said of what only weight holds down. */
import type { FrameResults } from "../../statics/frame-results.ts";

export function lacksWeight({ solution }: FrameResults): boolean {
  return solution.loads.gaps.some(({ what }) => what === "weight");
}
