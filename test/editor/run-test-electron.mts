/**
 * Runs the tests inside an installed VS Code: `npx tsx test/editor/run-test-electron.mts`.
 * VSCODE_EXECUTABLE names the program; without it @vscode/test-electron fetches one.
 */
import { cp, mkdtemp, readFile, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { runTests } from "@vscode/test-electron";
import { ROOT } from "../../client/start/installed.ts";
import { report } from "./report.ts";
import type { SuiteResult } from "./suite/results.ts";

const home = await mkdtemp(join(tmpdir(), "bentwright-vscode-"));
const folder = join(home, "frames");
const resultsFile = join(home, "suite-results.json");
await cp(join(ROOT, "samples"), folder, { recursive: true });
const installed = process.env.VSCODE_EXECUTABLE;
try {
  await runTests({
    ...(installed === undefined ? {} : { vscodeExecutablePath: installed }),
    extensionDevelopmentPath: ROOT,
    extensionTestsPath: join(ROOT, "out/test-suite.js"),
    extensionTestsEnv: { BENTWRIGHT_TEST_RESULTS: resultsFile },
    launchArgs: [
      folder,
      "--disable-extensions",
      "--disable-workspace-trust",
      `--user-data-dir=${join(home, "data")}`,
    ],
  }).catch((error: unknown) => {
    // Failed tests are told by name below; this also covers an editor that did not start.
    console.error(String(error));
    process.exitCode = 1;
  });
  const written = await readFile(resultsFile, "utf8").catch(() => "[]");
  report(JSON.parse(written) as SuiteResult[]);
} finally {
  await rm(home, { recursive: true, force: true });
}
