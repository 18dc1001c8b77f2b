/** An editor for the tests: fresh settings, and a copy of the samples that is free to be edited. */
import { cp, mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { settingsFile, startCodeServer } from "../../client/start/code-server.ts";
import { ROOT } from "../../client/start/installed.ts";
import { missingForEditor, need } from "./installed.ts";

export interface TestEditor {
  /** the folder that is open in the editor */
  readonly folder: string;
  /** where the tests inside the extension host write their results */
  readonly resultsFile: string;
  /** the user's settings */
  readonly settingsFile: string;
  readonly windowUrl: string;
  /** address of a window that runs the tests inside its extension host */
  readonly suiteUrl: string;
  stop(): Promise<void>;
}

export async function startTestEditor(): Promise<TestEditor> {
  need(missingForEditor());
  const home = await mkdtemp(join(tmpdir(), "bentwright-editor-"));
  const clear = () => rm(home, { recursive: true, force: true, maxRetries: 5 });
  try {
    const folder = join(home, "frames");
    const resultsFile = join(home, "suite-results.json");
    await cp(join(ROOT, "samples"), folder, { recursive: true });
    const server = await startCodeServer({ home, env: { BENTWRIGHT_TEST_RESULTS: resultsFile } });
    return {
      folder,
      resultsFile,
      settingsFile: settingsFile(home),
      windowUrl: server.windowUrl(folder),
      suiteUrl: server.windowUrl(folder, { extensionTestsPath: join(ROOT, "out/test-suite.js") }),
      stop: async () => {
        await server.stop();
        await clear();
      },
    };
  } catch (error) {
    await clear();
    throw error;
  }
}
