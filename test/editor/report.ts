/** Prints a line for each test and sets the exit code: other than zero when one failed or there were none. */
import type { SuiteResult } from "./suite/results.ts";

export function report(results: readonly SuiteResult[]): void {
  for (const { name, error, milliseconds } of results) {
    console.log(`${error === "" ? "passed" : "FAILED"}  ${name} (${milliseconds} ms)`);
    if (error !== "") console.log(error.replace(/^/gm, "        "));
  }
  const failed = results.filter(({ error }) => error !== "").length;
  console.log(`${results.length - failed} passed, ${failed} failed`);
  if (failed > 0 || results.length === 0) process.exitCode = 1;
}
