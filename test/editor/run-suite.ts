/** Runs the tests inside the extension host of a code-server, in a browser window of their own. */
import { readFile } from "node:fs/promises";
import type { Browser } from "playwright-core";
import type { TestEditor } from "./code-server.ts";
import type { SuiteResult } from "./suite/results.ts";

const SUITE_TIMEOUT = 180_000;

/** Throws when the tests could not be run to their end; a test that failed says so in its result. */
export async function runSuite(server: TestEditor, browser: Browser): Promise<readonly SuiteResult[]> {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  const log: string[] = [];
  try {
    await new Promise<void>((resolve, reject) => {
      const timer = setTimeout(
        () => reject(new Error(`The suite did not end.\n${log.join("\n")}`)),
        SUITE_TIMEOUT,
      );
      const end = () => {
        clearTimeout(timer);
        resolve();
      };
      page
        .exposeFunction("codeAutomationExit", end)
        .then(() =>
          page.exposeFunction("codeAutomationLog", (_: string, args: unknown[]) => log.push(args.join(" "))),
        )
        .then(() => page.goto(server.suiteUrl))
        .catch(reject);
    });
  } finally {
    await page.close();
  }
  const written = await readFile(server.resultsFile, "utf8").catch(() => undefined);
  if (written === undefined) throw new Error(`The suite ended without results.\n${log.join("\n")}`);
  const results = JSON.parse(written) as SuiteResult[];
  if (results.length === 0) throw new Error("The suite has no tests.");
  return results;
}
