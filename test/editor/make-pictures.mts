/**
 * Makes the pictures of the README from what the program itself shows: `npm run pictures`, after `npm run test:editor`.
 * Elevations come from the command line, the editor's pictures from the steps of the editor tests.
 */
import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { startBrowser } from "./browser.ts";

const ROOT = new URL("../../", import.meta.url);
const path = (name: string): string => fileURLToPath(new URL(name, ROOT));

const EDITOR = [
  ["the-elevation-opens-beside-the-text", "editor"],
  ["a-thin-tenon-is-underlined-and-listed", "finding"],
  ["a-joint-shows-its-cut-sizes", "cut-sizes"],
] as const;

const ELEVATIONS = [
  ["cider-press-pavilion", "front", "pavilion-front"],
  ["cider-press-pavilion", "side", "pavilion-side"],
  ["kayak-shelter", "1", "kayak-shelter"],
] as const;

mkdirSync(path("samples/pictures"), { recursive: true });
for (const [step, name] of EDITOR)
  copyFileSync(path(`out/screenshots/${step}.png`), path(`samples/pictures/${name}.png`));

const browser = await startBrowser();
const page = await browser.newPage({ viewport: { width: 1000, height: 900 } });
for (const [sample, view, name] of ELEVATIONS) {
  const drawn = spawnSync(
    process.execPath,
    ["dist/cli.js", "draw", `samples/${sample}.frame.yaml`, "--view", view, "-o", "-"],
    {
      cwd: path("."),
      encoding: "utf8",
    },
  );
  await page.setContent(
    `<body style="margin:0;background:white">${drawn.stdout.replace(/<\?xml.*?\?>/, "")}</body>`,
  );
  await page.addStyleTag({ content: "svg { width: 1000px; height: auto; display: block }" });
  await page
    .locator("svg")
    .first()
    .screenshot({ path: path(`samples/pictures/${name}.png`) });
}
await browser.close();
