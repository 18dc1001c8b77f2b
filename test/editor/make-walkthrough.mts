/** Takes the pictures of the first steps in the real editor, dark and light: part of `npm run pictures`. */
import { mkdtemp, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { settingsFile, startCodeServer } from "../../client/start/code-server.ts";
import { ROOT } from "../../client/start/installed.ts";
import { startBrowser } from "./browser.ts";
import { EditorWindow } from "./editor-window.ts";
import { acceptAnswer, begin, FILE, keepFile } from "./new-frame-by-keyboard.ts";

const THEMES = [
  ["Dark Modern", "dark"],
  ["Light Modern", "light"],
] as const;

const home = await mkdtemp(join(tmpdir(), "bentwright-walkthrough-"));
const server = await startCodeServer({ home });
const browser = await startBrowser();
try {
  const window = await EditorWindow.open(
    { folder: home, settingsFile: settingsFile(home), windowUrl: server.windowUrl(undefined) },
    browser,
  );
  const { page } = window;
  await page.setViewportSize({ width: 1180, height: 760 });
  const shoot = (name: string, theme: string) =>
    page.screenshot({
      path: join(ROOT, `client/walkthrough/${name}-${theme}.png`),
      animations: "disabled",
    });
  await window.choose("View: Toggle Activity Bar Visibility").catch(() => undefined);

  for (const [name, theme] of THEMES) {
    await window.chooseTheme(name);
    await begin(window);
    await acceptAnswer(window);
    await acceptAnswer(window);
    await shoot("new-frame", theme);
    await page.keyboard.press("Escape");
  }

  await begin(window);
  await keepFile(window);
  for (const [name, theme] of THEMES) {
    await window.chooseTheme(name);
    await window.statusSays(/Frame: clean/);
    await window.preview.locator('[data-id^="post@"][tabindex]').first().waitFor();
    await shoot("preview", theme);

    const lines = (await window.read(FILE)).split("\n");
    const line = lines.findIndex((one) => one.startsWith("  post-head:"));
    const column = (lines[line] ?? "").indexOf("thickness: ") + "thickness: ".length;
    await window.goTo(line + 1, 5);
    await page.keyboard.press("Control+k");
    await page.keyboard.press("Control+i");
    await page.locator(".monaco-hover img").first().waitFor();
    await page.waitForTimeout(1000);
    await shoot("hover", theme);
    await page.keyboard.press("Escape");

    await window.goTo(line + 1, column + 1);
    await window.typeOver("2 in".length, "1 1/8 in");
    await window.statusSays(/Frame: \d+ /);
    await page.keyboard.press("Control+Shift+m");
    await page.locator(".markers-panel").getByText("tenon-thin").first().waitFor();
    await window.goTo(line + 1, column + 1);
    await shoot("finding", theme);
    await page.keyboard.press("Control+j");

    await window.goTo(line + 1, column + 1);
    await page.keyboard.press("Control+.");
    await page.locator(".action-widget").first().waitFor();
    await page.waitForTimeout(500);
    await shoot("fix", theme);
    await page.keyboard.press("Escape");
    await window.undoAll();
  }
} finally {
  await browser.close();
  await server.stop();
  await rm(home, { recursive: true, force: true, maxRetries: 5 });
}
