/** The way through the questions of New Frame, forward and back: pure, so that it is tested without an editor. */
import type { NewFrameAnswers, NewFrameQuestion } from "../../server/protocol.ts";

/** What a user does at one question. */
export type Reply =
  | { readonly kind: "answer"; readonly value: string }
  | { readonly kind: "back" }
  | { readonly kind: "cancel" };

/** Shows one question. @param given the answer to begin with, @param index of the question, from 0 */
export type Ask = (
  question: NewFrameQuestion,
  given: string,
  index: number,
  answers: NewFrameAnswers,
) => Promise<Reply>;

export interface Course {
  readonly questions: readonly NewFrameQuestion[];
  /** what is answered already */
  readonly answers: NewFrameAnswers;
  /** index of the first question to ask; those before it are reached by going back */
  readonly from: number;
  /** index of the question at which the asking ends, itself not asked */
  readonly to: number;
}

/** @returns all answers; `back` for a step back from the first question; `cancel` where the user gave up */
export async function askThrough(
  { questions, answers: before, from, to }: Course,
  ask: Ask,
): Promise<NewFrameAnswers | "back" | "cancel"> {
  let answers = before;
  let index = from;
  while (index < to) {
    const question = questions[index];
    if (question === undefined) break;
    const reply = await ask(question, answers[question.id] ?? question.default, index, answers);
    if (reply.kind === "cancel") return "cancel";
    if (reply.kind === "answer") {
      answers = { ...answers, [question.id]: reply.value };
      index += 1;
    } else if (index > 0) index -= 1;
    else return "back";
  }
  return answers;
}
