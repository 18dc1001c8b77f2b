/** What an answer "I don't know yet" leaves in the file: the warning that says whom to ask. */
import type { Finding } from "../../core/checks/check.ts";
import type { Answers } from "./answers.ts";

/** The checks that tell of each open answer. */
const TOLD_BY = {
  snow: "site-value-missing",
  wind: "site-value-missing",
  frost: "site-value-missing",
  species: "question-open",
  mill: "question-open",
} as const satisfies { readonly [K in keyof Answers]?: string };

/** @returns whether the finding is what an answer that is not known yet leaves behind */
export function isAwaited({ check }: Finding, answers: Answers): boolean {
  return Object.entries(TOLD_BY).some(
    ([question, told]) => told === check && answers[question as keyof typeof TOLD_BY] === undefined,
  );
}
