/** The extension in a real editor: the tests inside its extension host, then a user's way through its window. */
import type { Browser } from "playwright-core";
import { afterAll, describe, expect, it } from "vitest";
import { startBrowser } from "./browser.ts";
import { startTestEditor, type TestEditor } from "./code-server.ts";
import { EditorWindow } from "./editor-window.ts";
import { missingForEditor, skipped } from "./installed.ts";
import { takeStep } from "./picture.ts";
import { runSuite } from "./run-suite.ts";
import type { SuiteResult } from "./suite/results.ts";
import { steps } from "./user-steps.ts";

interface Session {
  readonly server: TestEditor;
  readonly browser: Browser;
  /** run before the tests here are named: each is one of them, and only the editor knows them */
  readonly results: readonly SuiteResult[];
  readonly window: EditorWindow;
}

/** Leaves nothing running when it does not get to its end: no test would be there to clear up. */
async function start(): Promise<Session> {
  const server = await startTestEditor();
  let browser: Browser | undefined;
  try {
    browser = await startBrowser();
    const results = await runSuite(server, browser);
    return { server, browser, results, window: await EditorWindow.open(server, browser) };
  } catch (error) {
    await browser?.close();
    await server.stop();
    throw error;
  }
}

const skip = skipped(missingForEditor());
const session = skip === "" ? await start() : undefined;

afterAll(async () => {
  await session?.browser.close();
  await session?.server.stop();
});

describe.skipIf(session === undefined)(`inside the extension host${skip}`, () => {
  if (session === undefined) it("runs its tests", () => expect.unreachable("no editor"));
  for (const { name, error } of session?.results ?? []) it(name, () => expect(error).toBe(""));
});

describe.skipIf(session === undefined)(`in the window${skip}`, () => {
  for (const step of steps) it(step.name, () => takeStep(session!.window, step));
});
