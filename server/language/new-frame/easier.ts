/** Answers next to the given ones, for a frame that no listed section can carry. */
import type { Say } from "../../core/checks/say.ts";
import type { Answers } from "./answers.ts";
export function easierAnswers(a: Answers, say: Say): { question: string; answers: Answers; help: string }[] {
  return [];
}
