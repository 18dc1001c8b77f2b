/** What the figures of the analysis leave out, so that nobody takes silence for nothing: loads, and combinations. */
import type { Say } from "../../core/checks/say.ts";
import type { FrameResults } from "../../core/statics/frame-results.ts";
import { gapWords } from "../gap-words.ts";

/** Whether at least one combination has forces. */
export function hasForces({ solution }: FrameResults): boolean {
  return solution.failed.length < solution.cases.length;
}

/** @returns a sentence where combinations lack an answer */
export function unansweredWords(frame: FrameResults, say: Say): string[] {
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

/** @returns a sentence where the figures lack a load, and one where combinations lack an answer */
export function unsolvedWords(frame: FrameResults, say: Say): string[] {
  const gaps = hasForces(frame) ? gapWords(frame.solution.loads.gaps, say) : [];
  return [...gaps, ...unansweredWords(frame, say)];
}
