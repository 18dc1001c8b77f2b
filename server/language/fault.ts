/** A fault of our own, told to the reader as a finding instead of a crash. */
import { CHECK_FAILED } from "../core/checks/accepted.ts";
import type { Finding } from "../core/checks/check.ts";
import type { Say } from "../core/checks/say.ts";

export interface Fault {
  /** what was being done: `reading the file` */
  readonly what: string;
  readonly error: unknown;
}

/** @returns an error: what was not checked must not look sound */
export function faultFinding(fault: Fault, say: Say): Finding {
  return {
    check: CHECK_FAILED.id,
    level: "error",
    path: "",
    onKey: false,
    message: say.text(
      "Bentwright broke down while {what} ({reason}), so this frame is not checked. Undo the last change, or report the file that does this.",
      { what: fault.what, reason: reasonOf(fault.error) },
    ),
    places: [],
    related: [],
    fixes: () => [],
  };
}

/** One line about anything that was thrown. */
function reasonOf(error: unknown): string {
  const text = error instanceof Error ? error.message || error.name : String(error);
  return text.split(/\r?\n/, 1)[0] ?? "";
}
