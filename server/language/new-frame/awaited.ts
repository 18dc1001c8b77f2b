/** What an answer "I don't know yet" leaves in the file: the warning that says whom to ask. */
import type { Finding } from "../../core/checks/check.ts";
import type { Answers } from "./answers.ts";

export function isAwaited({ check }: Finding, { snow, wind, frost }: Answers): boolean {
  return check === "site-value-missing" && (snow === undefined || wind === undefined || frost === undefined);
}
