/** What the tests in a real editor need of this machine: test/editor/setup.sh brings it. */
import { existsSync } from "node:fs";
import { isEditorInstalled } from "../../client/start/installed.ts";

export const BROWSER = "/usr/bin/chromium";

/** What is not there and without which no page can be shown. */
export function missingForPage(): readonly string[] {
  return existsSync(BROWSER) ? [] : [`browser (${BROWSER})`];
}

/** What is not there and without which no editor can be shown. */
export function missingForEditor(): readonly string[] {
  return [...(isEditorInstalled() ? [] : ["editor (.editor)"]), ...missingForPage()];
}

/** Throws, with what to do about it, when something is missing. */
export function need(missing: readonly string[]): void {
  if (missing.length > 0) throw new Error(reason(missing));
}

/**
 * Why tests are skipped on this machine, for their title; empty when they can run.
 * Where changes are accepted (CI is set) skipped tests would look like passed ones: there they run, and fail.
 */
export function skipped(missing: readonly string[]): string {
  return missing.length === 0 || process.env.CI ? "" : ` (skipped: ${reason(missing)})`;
}

function reason(missing: readonly string[]): string {
  return `this machine has no ${missing.join(" and no ")}; “bash test/editor/setup.sh” installs it on Debian`;
}
