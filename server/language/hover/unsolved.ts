/** Which load combinations have no answer, so that nobody takes their silence for nothing. */
import type { Say } from "../../core/checks/say.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";

/** Whether at least one combination has forces. */
export function hasForces({ solution }: FrameResults): boolean {
  return solution.failed.length < solution.cases.length;
}

/** @returns a sentence where combinations lack an answer */
export function unsolvedWords(frame: FrameResults, say: Say): string[] {
  const { failed, cases } = frame.solution;
  if (failed.length === 0) return [];
  if (!hasForces(frame))
    return [say.text("Its forces are not known: the frame has no answer under any load combination.")];
  return [
    say.text("{count} of {all} load combinations have no answer; they are not among these forces.", {
      count: failed.length,
      all: cases.length,
    }),
  ];
}
