/**
 * A user's way through the editor, each step from where the last one ended.
 * What is typed and looked for is read from the sample, so that it may be written differently tomorrow.
 */
import assert from "node:assert/strict";
import { type EditorWindow, until } from "./editor-window.ts";

export interface Step {
  readonly name: string;
  take(window: EditorWindow): Promise<void>;
}

const ARCH = "garden-arch.frame.yaml";
const THICKNESS = /tenon:\s*\{?\s*thickness: *([^,}\n#]*[^,}\n# ])/;
const JOINT = /^joints:\n(?: *#.*\n)* +([a-z0-9-]+):/m;
const POST = /^ +(post):.*kind: post/m;
const BRACE = /^ +([a-z0-9-]+):.*kind: brace/m;
const SECTION = /^ +post:.*section: *([0-9]+x[0-9]+)/m;
const STALE = "#stale";

interface Spot {
  /** from 1 */
  readonly line: number;
  readonly column: number;
  readonly text: string;
}

/** Where the first group of a pattern stands in the sample. */
async function spot(window: EditorWindow, pattern: RegExp): Promise<Spot> {
  const text = await window.read(ARCH);
  const match = new RegExp(pattern.source, `${pattern.flags}d`).exec(text);
  const group = match?.indices?.[1];
  if (group === undefined) throw new Error(`${pattern} is not in ${ARCH}.`);
  const before = text.slice(0, group[0]).split("\n");
  return { line: before.length, column: (before.at(-1) ?? "").length + 1, text: text.slice(...group) };
}

const squiggles = (window: EditorWindow) => window.editor.locator(".squiggly-error, .squiggly-warning");
const post = (window: EditorWindow) => window.preview.locator('[data-id^="post@"][tabindex]').first();

/** How wide the post is drawn, drawing units: its wood, without the outline that light on it widens. */
function width(window: EditorWindow): Promise<number> {
  return post(window).evaluate((element) =>
    element instanceof SVGGraphicsElement ? element.getBBox().width : 0,
  );
}

export const steps: readonly Step[] = [
  {
    name: "a sample opens clean",
    async take(window) {
      await window.openFile(ARCH);
      await window.statusSays(/Frame: clean/);
      assert.equal(await squiggles(window).count(), 0);
    },
  },
  {
    name: "a thin tenon is underlined and listed",
    async take(window) {
      const value = await spot(window, THICKNESS);
      await window.goTo(value.line, value.column);
      await window.typeOver(value.text.length, "3/4 in");
      await squiggles(window).first().waitFor();
      await window.page
        .locator(".statusbar-item")
        .filter({ hasText: /Frame: \d+ / })
        .click();
      await window.page.locator(".markers-panel").getByText("tenon-thin").first().waitFor();
    },
  },
  {
    name: "the link of a finding opens its page",
    async take(window) {
      await window.page.locator(".markers-panel a").getByText("tenon-thin").first().click();
      // the editor starts its own reader of Markdown for it, which takes its time
      const heading = window.preview.getByRole("heading", { name: "A tenon too thin" });
      await heading.waitFor({ timeout: 45_000 });
      const page = window.preview.locator("body");
      assert.match((await page.textContent()) ?? "", /The tenon at post-head@A1 is 3\/4 in thick/);
      const tab = window.page.getByRole("tab", { name: "tenon-thin.md" });
      await tab.click({ button: "middle" });
      await tab.waitFor({ state: "detached" });
    },
  },
  {
    name: "a finding is accepted with a reason, which is asked for",
    async take(window) {
      const value = await spot(window, THICKNESS);
      await window.goTo(value.line, value.column + 1);
      // by the key: the bulb moves while the line settles, and a click that it takes along closes the list unread
      await window.page.keyboard.press("Control+.");
      await window.page
        .locator(".action-widget .monaco-list-row")
        .filter({ hasText: "Accept tenon-thin" })
        .first()
        .click();
      // the box of another question is still in the page: Enter would go into the text
      await window.page.locator(".quick-input-title").filter({ hasText: "with a reason" }).waitFor();
      const { input } = window;
      await input.press("Enter");
      await window.page
        .locator(".quick-input-widget")
        .getByText("Nothing is accepted without a reason")
        .waitFor();
      await input.fill("carries next to nothing");
      await input.press("Enter");
      await window.statusSays(/Frame: clean/);
      await window.editor.getByText("carries next to nothing").first().waitFor();
    },
  },
  {
    name: "an undo takes the finding away",
    async take(window) {
      await window.undoAll();
      await window.statusSays(/Frame: clean/);
      await until(async () => (await squiggles(window).count()) === 0, "the underline to go");
      await window.page.keyboard.press("Control+j");
    },
  },
  {
    name: "a joint shows its cut sizes",
    async take(window) {
      const joint = await spot(window, JOINT);
      await window.goTo(joint.line, joint.column + 1);
      await window.page.keyboard.press("Control+k");
      await window.page.keyboard.press("Control+i");
      await window.page
        .locator(".monaco-hover")
        .getByText(/mortise/i)
        .first()
        .waitFor();
      const picture = window.page.locator(".monaco-hover img").first();
      await until(
        () => picture.evaluate((image) => image instanceof HTMLImageElement && image.naturalWidth > 0),
        "the joint's picture",
      );
    },
  },
  {
    name: "the elevation opens beside the text",
    async take(window) {
      await window.page.keyboard.press("Escape");
      await window.page.getByRole("button", { name: "Open the Elevation Beside" }).first().click();
      await post(window).waitFor();
    },
  },
  {
    name: "a click on a post leads to its entry",
    async take(window) {
      const brace = await spot(window, BRACE);
      await window.goTo(brace.line, brace.column);
      await post(window).click();
      await window.cursorIsOnLine((await spot(window, POST)).line);
    },
  },
  {
    name: "a click on a joint shows it larger",
    async take(window) {
      const joint = window.preview.locator('.joint[data-id^="post-head@"]').first();
      await joint.click({ force: true });
      await window.cursorIsOnLine((await spot(window, JOINT)).line);
      const drawn = window.preview.locator("#joint-view svg");
      await drawn.waitFor();
      assert.match((await window.preview.locator("#joint-title").textContent()) ?? "", /^post-head@/);
    },
  },
  {
    name: "the joint goes when it is closed",
    async take(window) {
      await window.preview.getByRole("button", { name: "Close the joint" }).click();
      await window.preview.locator("#joint").waitFor({ state: "hidden" });
    },
  },
  {
    name: "the cursor lights what it stands on",
    async take(window) {
      const brace = await spot(window, BRACE);
      await window.goTo(brace.line, brace.column);
      await window.preview.locator(`.selected[data-id^="${brace.text}@"]`).first().waitFor();
      assert.equal(await window.preview.locator('.selected[data-id^="post@"]').count(), 0);
    },
  },
  {
    name: "the elevation lets the cursor be when its user wants that, at once",
    async take(window) {
      const lit = window.preview.locator(".selected");
      await window.setForFolder({ "bentwright.elevation.followCursor": false });
      await until(async () => (await lit.count()) === 0, "the light to go");
      await window.setForFolder({ "bentwright.elevation.followCursor": true });
      await lit.first().waitFor();
    },
  },
  {
    name: "zoom and place stay while the text is edited",
    async take(window) {
      const whole = await window.viewBox();
      await post(window).hover();
      await window.page.mouse.wheel(0, -300);
      await until(async () => (await window.viewBox()) !== whole, "the zoom");
      const zoomed = await window.viewBox();
      const drawn = await width(window);
      const section = await spot(window, SECTION);
      await window.goTo(section.line, section.column);
      // Both sides, since either may be the one that is seen from here.
      const wider = section.text.replace(/[0-9]+/g, (side) => String(Number(side) + 1));
      await window.typeOver(section.text.length, wider);
      await until(async () => (await width(window)) !== drawn, "the wider post");
      assert.equal(await window.viewBox(), zoomed);
      await window.undoAll();
      await until(async () => (await width(window)) === drawn, "the old post");
    },
  },
  {
    name: "a layer of forces lies over the frame at the same zoom, and goes again",
    async take(window) {
      const zoomed = await window.viewBox();
      await window.preview.getByLabel("Layer").selectOption("axial");
      await window.preview.locator(".force.axial").first().waitFor();
      assert.match((await window.preview.locator(".legend").textContent()) ?? "", /^Axial force: D/);
      assert.ok(await window.preview.getByLabel("Loads").isVisible());
      assert.equal(await window.viewBox(), zoomed);
      await window.preview.getByLabel("Layer").selectOption("none");
      await window.preview.locator(".force").first().waitFor({ state: "detached" });
    },
  },
  {
    name: "the preview is there again after a reload",
    async take(window) {
      const zoomed = await window.viewBox();
      await window.reload();
      await post(window).waitFor();
      assert.equal(await window.viewBox(), zoomed);
      assert.equal(await window.preview.locator(STALE).textContent(), "");
    },
  },
  {
    name: "a half-typed value leaves the last good drawing, which says so",
    async take(window) {
      const section = await spot(window, SECTION);
      await window.goTo(section.line, section.column);
      await window.typeOver(section.text.length, "6x");
      await window.preview.locator(`${STALE}:not(:empty)`).waitFor();
      assert.ok(await post(window).isVisible());
      await window.undoAll();
      await window.preview.locator(`${STALE}:empty`).waitFor({ state: "attached" });
      await window.statusSays(/Frame: clean/);
    },
  },
  ...["Light Modern", "Dark High Contrast", "Light High Contrast", "Dark Modern"].map(
    (theme): Step => ({
      name: `the drawing can be read in ${theme}`,
      async take(window) {
        await window.chooseTheme(theme);
        const dark = !theme.includes("Light");
        await until(
          async () => (await luminance(window, "body", "backgroundColor")) < 0.5 === dark,
          `the theme ${theme}`,
        );
        await until(
          async () => (await contrast(window, ".timber:not(.selected)", "stroke")) >= 4.5,
          "lines that stand out",
        );
        await until(
          async () => (await contrast(window, "#drawing text", "fill")) >= 4.5,
          "words that stand out",
        );
      },
    }),
  ),
  {
    name: "a YAML file that begins as a frame is read as one when its user says so",
    async take(window) {
      const file = "arch-by-another-name.yaml";
      await window.write(file, await window.read(ARCH));
      await window.openFile(file);
      const language = window.page.locator('.statusbar-item[id="status.editor.mode"]');
      await language.filter({ hasText: "YAML" }).waitFor();
      // behind the bell it stands whether or not it is still shown over the editor
      await window.page.locator('.statusbar-item[id="status.notifications"]').click();
      const offer = window.page
        .locator(".notification-list-item")
        .filter({ hasText: "begins like a timber frame" })
        .first();
      await offer.waitFor();
      await offer.getByText("Read It as a Timber Frame").click();
      await language.filter({ hasText: "Timber Frame" }).waitFor();
      await window.statusSays(/Frame: clean/);
    },
  },
  {
    name: "a folder that is not trusted opens with its elevation",
    async take(window) {
      await window.setForUser({
        "security.workspace.trust.enabled": true,
        "security.workspace.trust.startupPrompt": "never",
        "security.workspace.trust.banner": "never",
      });
      await window.reload();
      await post(window).waitFor();
    },
  },
  {
    name: "and all of it works there",
    async take(window) {
      await window.openFile(ARCH);
      await window.statusSays(/Frame: clean/);
      const value = await spot(window, THICKNESS);
      await window.goTo(value.line, value.column);
      await window.typeOver(value.text.length, "3/4 in");
      await squiggles(window).first().waitFor();
      await window.undoAll();
      await until(async () => (await squiggles(window).count()) === 0, "the underline to go");
      // the editor says it last, when all else has been loaded
      await window.statusSays("Restricted Mode");
    },
  },
];

/** Contrast of a colour with the page's ground by the Web Content Accessibility Guidelines 2.2, 1 to 21. */
async function contrast(
  window: EditorWindow,
  selector: string,
  property: "stroke" | "fill",
): Promise<number> {
  const ground = await luminance(window, "body", "backgroundColor");
  const drawn = await luminance(window, selector, property);
  return (Math.max(ground, drawn) + 0.05) / (Math.min(ground, drawn) + 0.05);
}

/** Relative luminance of a computed colour, 0 to 1 (same guidelines). */
async function luminance(
  window: EditorWindow,
  selector: string,
  property: "stroke" | "fill" | "backgroundColor",
): Promise<number> {
  const element = window.preview.locator(selector).first();
  const colour = await element.evaluate((one, name) => getComputedStyle(one)[name], property);
  const [red = 0, green = 0, blue = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
    const value = Number(part) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}
