/**
 * Runs all editor tests in a code-server, without vitest: `npx tsx test/editor/run-code-server.mts`.
 * First the tests inside the extension host, then what a user sees and does, with a picture of each step.
 */
import type { Browser } from "playwright-core";
import { startBrowser } from "./browser.ts";
import { startTestEditor } from "./code-server.ts";
import { EditorWindow } from "./editor-window.ts";
import { takeStep } from "./picture.ts";
import { report } from "./report.ts";
import { runSuite } from "./run-suite.ts";
import type { SuiteResult } from "./suite/results.ts";
import { steps } from "./user-steps.ts";

const server = await startTestEditor();
let browser: Browser | undefined;
try {
  browser = await startBrowser();
  const results: SuiteResult[] = [...(await runSuite(server, browser))];
  const window = await EditorWindow.open(server, browser);
  for (const step of steps) {
    const start = Date.now();
    const error = await takeStep(window, step).then(
      () => "",
      (reason: unknown) => String(reason),
    );
    results.push({ name: step.name, error, milliseconds: Date.now() - start });
  }
  report(results);
} finally {
  await browser?.close();
  await server.stop();
}
