/** A new user's way, by the keyboard alone: from an empty window to a frame of their own. */
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { ROOT } from "../../client/start/installed.ts";
import { type EditorWindow, until } from "./editor-window.ts";
import type { Step } from "./user-steps.ts";

const FILE = "my-frame.frame.yaml";
const REFUSED = ["abc", "-3 ft", "1e9"];

const title = (window: EditorWindow) => window.page.locator(".quick-input-title");
const message = (window: EditorWindow) => window.page.locator(".quick-input-message");
/** A question that is answered by a list shows one. */
const isList = async (window: EditorWindow) =>
  (await window.page.locator(".quick-input-widget .monaco-list-row").filter({ visible: true }).count()) > 0;

/** How far the questions are, `(3/13)`: from 1, and how many there are. */
async function progress(window: EditorWindow): Promise<readonly [number, number]> {
  const [, at, of] = /\((\d+)\/(\d+)\)/.exec((await title(window).textContent()) ?? "") ?? [];
  return [Number(at), Number(of)];
}

/** Waits for a question by its number, from 1. */
const isAt = (window: EditorWindow, step: number) =>
  until(async () => (await progress(window))[0] === step, `question ${step}`);

async function begin(window: EditorWindow): Promise<void> {
  await window.choose("Bentwright: New Frame");
  await isAt(window, 1);
}

/** Takes the answer that is offered. */
async function accept(window: EditorWindow): Promise<void> {
  const [step, steps] = await progress(window);
  await window.input.press("Enter");
  if (step < steps) await isAt(window, step + 1);
}

const frames = async (window: EditorWindow) =>
  (await readdir(window.folder)).filter((name) => name.includes(".frame."));

export const newUserSteps: readonly Step[] = [
  {
    name: "New Frame asks in an empty window",
    async take(window) {
      await begin(window);
      assert.match((await title(window).textContent()) ?? "", /New Frame/);
    },
  },
  {
    name: "an answer that cannot be is refused in words at the question",
    async take(window) {
      while (await isList(window)) await accept(window);
      const [step] = await progress(window);
      const good = await window.input.inputValue();
      for (const bad of REFUSED) {
        await window.input.fill(bad);
        await window.page.locator(".quick-input-widget .monaco-inputbox.error").waitFor();
        const words = (await message(window).textContent()) ?? "";
        assert.match(words, /\w+ \w+ \w+/, `words against ${bad}`);
        await window.input.press("Enter");
        assert.equal((await progress(window))[0], step, `${bad} was taken`);
      }
      await window.input.fill(good);
      await accept(window);
    },
  },
  {
    name: "a step back shows the answer that was given",
    async take(window) {
      const [step] = await progress(window);
      await window.page.getByRole("button", { name: "Back" }).click();
      await isAt(window, step - 1);
      await window.page.keyboard.press("Escape");
      await window.page.locator(".quick-input-widget").waitFor({ state: "hidden" });
    },
  },
  {
    name: "giving up at any question leaves nothing behind",
    async take(window) {
      await begin(window);
      const [, steps] = await progress(window);
      assert.ok(steps > 5, `${steps} questions`);
      await window.page.keyboard.press("Escape");
      for (let last = 2; last <= steps; last += 1) {
        await begin(window);
        for (let step = 1; step < last; step += 1) await accept(window);
        await window.page.keyboard.press("Escape");
        await window.page.locator(".quick-input-widget").waitFor({ state: "hidden" });
        assert.equal(await window.page.locator(".tab").count(), 0, `a tab is open after question ${last}`);
      }
      assert.deepEqual(await frames(window), []);
    },
  },
  {
    name: "New Frame by keyboard ends in a clean file and its drawing",
    async take(window) {
      await begin(window);
      const [, steps] = await progress(window);
      for (let step = 1; step <= steps; step += 1) await accept(window);
      // where to keep it: the editor's own dialog, with a name that is free
      await until(async () => (await window.input.inputValue().catch(() => "")).endsWith(FILE), "the dialog");
      await window.input.press("Enter");
      await window.page.getByRole("tab", { name: FILE }).first().waitFor();
      await window.statusSays(/Frame: clean/);
      await window.preview.locator('[data-id^="post@"][tabindex]').first().waitFor();
      assert.deepEqual(await frames(window), [FILE]);
    },
  },
  {
    name: "the file is what the command line writes for the same answers",
    async take(window) {
      const written = spawnSync(process.execPath, [join(ROOT, "dist/cli.js"), "new"], { encoding: "utf8" });
      assert.equal(await window.read(FILE), written.stdout);
    },
  },
  ...["Light Modern", "Dark High Contrast", "Light High Contrast", "Dark Modern"].map(
    (theme): Step => ({
      name: `the first steps open in ${theme}`,
      async take(window) {
        await window.chooseTheme(theme);
        await window.choose("Bentwright: First Steps");
        const steps = window.page.locator(".getting-started-step");
        await steps.first().waitFor();
        assert.equal(await steps.count(), 5);
        const picture = window.page.locator(".getting-started-media img").first();
        await until(
          () => picture.evaluate((image) => image instanceof HTMLImageElement && image.naturalWidth > 0),
          "the picture",
        );
        // what the user has done so far is ticked off
        await window.page
          .locator('.getting-started-step[data-step-id$="#new-frame"] .codicon-getting-started-step-checked')
          .waitFor();
      },
    }),
  ),
];
