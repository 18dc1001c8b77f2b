/** What an answer "I don't know yet" leaves in the file: the warning that says whom to ask. */
import type { Finding } from "../../core/checks/check.ts";
import type { Answers } from "./answers.ts";

/** The checks that tell of each open answer, and where. */
const TOLD_BY = {
  snow: { check: "site-value-missing", at: "/site/snow" },
  wind: { check: "site-value-missing", at: "/site/wind" },
  frost: { check: "site-value-missing", at: "/site" },
  species: { check: "question-open", at: "/ask/0" },
  mill: { check: "question-open", at: "/ask/" },
} as const satisfies { readonly [K in keyof Answers]?: { readonly check: string; readonly at: string } };

/** @returns whether the finding is what an answer that is not known yet leaves behind */
export function isAwaited({ check, path }: Finding, answers: Answers): boolean {
  return Object.entries(TOLD_BY).some(
    ([question, told]) =>
      told.check === check &&
      (told.at.endsWith("/") ? path.startsWith(told.at) : path === told.at) &&
      answers[question as keyof typeof TOLD_BY] === undefined,
  );
}
