/** A new user's way, by the keyboard but for one click: from an empty window to a frame of their own. */
import assert from "node:assert/strict";
import { spawnSync } from "node:child_process";
import { readdir } from "node:fs/promises";
import { join } from "node:path";
import { ROOT } from "../../client/start/installed.ts";
import { type EditorWindow, until } from "./editor-window.ts";
import {
  acceptAnswer,
  begin,
  FILE,
  isAt,
  isList,
  keepFile,
  message,
  progress,
  title,
} from "./new-frame-by-keyboard.ts";
import type { Step } from "./user-steps.ts";

const REFUSED = ["abc", "-3 ft", "1e9"];

const frames = async (window: EditorWindow) =>
  (await readdir(window.folder)).filter((name) => name.includes(".frame."));

/** The tick at one of the first steps; there is none before it is done. */
const ticked = (window: EditorWindow, step: string) =>
  window.page.locator(
    `.getting-started-step[data-step-id$="#${step}"] .codicon-getting-started-step-checked`,
  );

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
      while (await isList(window)) await acceptAnswer(window);
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
      await acceptAnswer(window);
    },
  },
  {
    name: "a step back shows the answer that was given",
    async take(window) {
      const [step] = await progress(window);
      await window.page.locator(".quick-input-widget").getByRole("button", { name: "Back" }).click();
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
        for (let step = 1; step < last; step += 1) await acceptAnswer(window);
        await window.page.keyboard.press("Escape");
        await window.page.locator(".quick-input-widget").waitFor({ state: "hidden" });
        assert.equal(await window.page.locator(".tab").count(), 0, `a tab is open after question ${last}`);
      }
      assert.deepEqual(await frames(window), []);
    },
  },
  {
    name: "the first steps tell how to begin",
    async take(window) {
      await window.choose("Bentwright: First Steps");
      await window.page.locator(".getting-started-step").first().waitFor();
      assert.equal(await window.page.locator(".getting-started-step").count(), 5);
      for (const open of ["new-frame", "finding", "fix"]) assert.equal(await ticked(window, open).count(), 0);
    },
  },
  {
    name: "New Frame by keyboard ends in a clean file and its drawing",
    async take(window) {
      await begin(window);
      await keepFile(window);
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
  {
    name: "what its first comment says is found, and the fix mends it",
    async take(window) {
      const text = await window.read(FILE);
      const comment = text.replace(/\n# /g, " ");
      const [, joint = "", from = "", to = ""] =
        /Try this: in (\S+) below.* from (\d.*?) to (\d.*?)\. /.exec(comment) ?? [];
      const lines = text.split("\n");
      const line = lines.findIndex((one) => one.trimStart().startsWith(`${joint}:`));
      const column = (lines[line] ?? "").indexOf(`thickness: ${from}`) + "thickness: ".length;
      await window.goTo(line + 1, column + 1);
      await window.typeOver(from.length, to);
      await window.statusSays(/Frame: 1 warning/);
      await window.page.keyboard.press("Control+.");
      await window.page
        .locator(".action-widget .monaco-list-row")
        .filter({ hasText: /Make the tenon .* thick/ })
        .click();
      await window.statusSays(/Frame: clean/);
      await window.undoAll();
    },
  },
  ...["Light Modern", "Dark High Contrast", "Light High Contrast", "Dark Modern"].map(
    (theme): Step => ({
      name: `the first steps open in ${theme}`,
      async take(window) {
        await window.chooseTheme(theme);
        // pictures are shown where there is room for them
        await window.choose("View: Close All Editors");
        await window.choose("Bentwright: First Steps");
        const steps = window.page.locator(".getting-started-step");
        await steps.first().waitFor();
        assert.equal(await steps.count(), 5);
        const picture = window.page.locator(".getting-started-media img").first();
        await until(
          () => picture.evaluate((image) => image instanceof HTMLImageElement && image.naturalWidth > 0),
          "the picture",
        );
        // what the user has done while they stood open is ticked off
        for (const done of ["new-frame", "finding", "fix"]) await ticked(window, done).waitFor();
      },
    }),
  ),
];
