/** Somebody who has only the packed extension: it is installed, and New Frame leads from an empty window to a drawing. */
import { mkdtemp, readdir, readFile, rm, stat } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type CodeServer, startCodeServer } from "../../client/start/code-server.ts";
import { startBrowser } from "./browser.ts";
import { EditorWindow } from "./editor-window.ts";
import { missingForEditor, need, skipped } from "./installed.ts";
import { newUserSteps } from "./new-user-steps.ts";
import { packExtension } from "./packed.ts";
import { takeStep } from "./picture.ts";

/** A package that is sent by mail and downloaded over a bad line. */
const MOST_BYTES = 4 * 1024 * 1024;

const skip = skipped(missingForEditor());

describe.skipIf(skip !== "")(`a new user${skip}`, () => {
  let place: string;
  let home: string;
  let vsix: string;
  let server: CodeServer | undefined;
  let browser: Browser | undefined;
  let window: EditorWindow;

  beforeAll(async () => {
    need(missingForEditor());
    place = await mkdtemp(join(tmpdir(), "bentwright-new-user-"));
    home = join(place, "home");
    vsix = await packExtension(place);
    server = await startCodeServer({ home, vsix });
    browser = await startBrowser();
    window = await EditorWindow.open(
      {
        folder: home,
        settingsFile: join(home, "data/User/settings.json"),
        windowUrl: server.windowUrl(undefined),
      },
      browser,
    );
  });

  afterAll(async () => {
    await browser?.close();
    await server?.stop();
    await rm(place, { recursive: true, force: true, maxRetries: 5 });
  });

  it("gets one file below 4 MB", async () => {
    expect((await stat(vsix)).size).toBeLessThan(MOST_BYTES);
  });

  it("has it installed, with what it shows and without its sources and tests", async () => {
    const [installed = ""] = (await readdir(join(home, "extensions"))).filter((name) =>
      name.startsWith("bentwright."),
    );
    const root = join(home, "extensions", installed);
    expect((await readdir(root)).toSorted()).toEqual(
      expect.arrayContaining(["client", "dist", "package.json", "samples", "schemas"]),
    );
    for (const sources of ["server", "test", "node_modules"])
      await expect(stat(join(root, sources))).rejects.toThrow("ENOENT");
    const { contributes } = JSON.parse(await readFile(join(root, "package.json"), "utf8")) as {
      contributes: { walkthroughs: { steps: { media: { image: Record<string, string> } }[] }[] };
    };
    for (const { steps } of contributes.walkthroughs)
      for (const { media } of steps)
        for (const picture of Object.values(media.image))
          expect((await stat(join(root, picture))).size).toBeGreaterThan(0);
  });

  for (const step of newUserSteps) it(step.name, () => takeStep(window, step));
});
