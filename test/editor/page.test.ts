/** The preview's page alone in the browser, without an editor round it: what it draws, keeps, and tells. */
import { readFile } from "node:fs/promises";
import { join } from "node:path";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import type { FromPage, PageState, ToPage } from "../../client/preview/messages.ts";
import { ROOT } from "../../client/start/installed.ts";
import { startBrowser } from "./browser.ts";
import { missingForPage, need, skipped } from "./installed.ts";

type Heard = FromPage[];

/** What the page finds in place of the editor's own function. */
const EDITOR_DOUBLE = `
  window.heard = [];
  window.acquireVsCodeApi = () => ({
    postMessage: (message) => window.heard.push(message),
    getState: () => JSON.parse(window.name || 'null') ?? undefined,
    setState: (state) => { window.name = JSON.stringify(state); },
  });`;

/** The elements of client/preview/page-html.ts that the page's script works on. */
const BODY = `<body data-document="file:///arch.frame.yaml"><header><select id="views"></select>
  <label>Layer <select id="layers"></select></label>
  <label id="case">Loads <select id="cases"></select></label>
  <button id="zoom-out">-</button><button id="zoom-in">+</button><button id="fit">Fit</button>
  <span id="stale" role="status"></span></header>
  <main id="viewport" tabindex="0"><svg id="sheet" xmlns="http://www.w3.org/2000/svg"><g id="drawing"></g></svg>
  <p id="nothing">Nothing is drawn yet.</p></main>
  <section id="joint" hidden><header><h2 id="joint-title"></h2><button id="joint-close">×</button></header>
  <div id="joint-view" tabindex="0"></div></section></body>`;

const VIEWS = [
  { id: "front", title: "Front" },
  { id: "1", title: "Bent 1" },
];

const LAYERS = [
  { id: "none", title: "None" },
  { id: "moment", title: "Moment" },
];

const CASES = [
  { id: "worst", title: "Worst of each timber" },
  { id: "1", title: "D" },
];

function svg(inner: string, viewBox = "0 0 100 60"): string {
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${viewBox}">${inner}</svg>`;
}

const POST =
  '<path class="timber" data-id="post@A1" data-path="/members/post" tabindex="0" d="M20 10h10v40h-10z"><title>post A1, 8x8</title></path>';

function drawing(inner: string, rest: Partial<Extract<ToPage, { kind: "drawing" }>> = {}): ToPage {
  return {
    kind: "drawing",
    uri: "file:///arch.frame.yaml",
    svg: svg(inner),
    view: "front",
    views: VIEWS,
    layer: "none",
    layers: LAYERS,
    case: "",
    cases: [],
    stale: "",
    ...rest,
  };
}

const skip = skipped(missingForPage());

describe.skipIf(skip !== "")(`the preview page${skip}`, () => {
  let browser: Browser;
  let page: Page;
  let assets: { script: string; styles: string };

  beforeAll(async () => {
    need(missingForPage());
    browser = await startBrowser();
    const read = (file: string) => readFile(join(ROOT, "dist", file), "utf8");
    assets = { script: await read("preview.js"), styles: await read("preview.css") };
  });
  afterAll(() => browser?.close());

  beforeEach(async () => {
    page = await browser.newPage({ viewport: { width: 800, height: 600 } });
    await load();
  });
  afterEach(() => page.close());

  /** Loads the page, or loads it again with the state it has kept. */
  async function load(): Promise<void> {
    await page.setContent(`<!DOCTYPE html><html><head><style>${assets.styles}</style></head>${BODY}</html>`);
    await page.addScriptTag({ content: EDITOR_DOUBLE });
    await page.addScriptTag({ content: assets.script });
  }
  const show = (message: ToPage) =>
    page.evaluate((data) => window.dispatchEvent(new MessageEvent("message", { data })), message);
  const heard = () => page.evaluate(() => (window as unknown as { heard: Heard }).heard);
  const kept = () => page.evaluate(() => JSON.parse(window.name) as PageState);
  const viewBox = () => page.locator("#sheet").getAttribute("viewBox");

  it("says that it is ready, and that nothing is drawn yet", async () => {
    expect(await heard()).toEqual([{ kind: "ready", view: "", layer: "", case: "" }]);
    expect(await page.locator("#nothing").isVisible()).toBe(true);
  });

  it("shows the drawing and its views", async () => {
    await show(drawing(POST));
    expect(await page.locator('[data-id="post@A1"]').isVisible()).toBe(true);
    expect(await page.locator("#nothing").isVisible()).toBe(false);
    expect(await page.locator("#views option").allTextContents()).toEqual(["Front", "Bent 1"]);
  });

  it("tells which entry was clicked, and not one that was dragged over", async () => {
    await show(drawing(POST));
    await page.locator('[data-id="post@A1"]').click();
    const at = await page.locator('[data-id="post@A1"]').boundingBox();
    await page.mouse.move((at?.x ?? 0) + 10, (at?.y ?? 0) + 10);
    await page.mouse.down();
    await page.mouse.move((at?.x ?? 0) + 60, (at?.y ?? 0) + 30, { steps: 4 });
    await page.mouse.up();
    expect((await heard()).filter(({ kind }) => kind === "pick")).toEqual([
      { kind: "pick", path: "/members/post" },
    ]);
  });

  it("shows a joint larger beneath the elevation, and closes it by button and key", async () => {
    const joint = { title: "post-head@A1", svg: svg('<line class="seen" x1="0" y1="0" x2="9" y2="9"/>') };
    await show(drawing(POST));
    expect(await page.locator("#joint").isVisible()).toBe(false);
    await show({ kind: "joint", joint });
    expect(await page.getByRole("heading", { name: "post-head@A1" }).isVisible()).toBe(true);
    expect(await page.locator("#joint-view svg").isVisible()).toBe(true);
    await page.getByRole("button", { name: "×" }).click();
    expect(await page.locator("#joint").isVisible()).toBe(false);
    expect((await heard()).at(-1)).toEqual({ kind: "close-joint" });
    await show({ kind: "joint", joint });
    await page.keyboard.press("Escape");
    expect(await page.locator("#joint").isVisible()).toBe(false);
    await show({ kind: "joint", joint });
    await show({ kind: "joint", joint: null });
    expect(await page.locator("#joint").isVisible()).toBe(false);
    expect((await heard()).filter(({ kind }) => kind === "close-joint")).toHaveLength(2);
  });

  it("tells which joint was clicked, and cleans its drawing", async () => {
    await show(
      drawing(
        '<g class="joint" data-id="tie-end@1" data-path="/joints/tie-end" tabindex="0"><path d="M0 0h60v60z"/></g>',
      ),
    );
    await page.locator('[data-id="tie-end@1"]').click({ position: { x: 40, y: 10 } });
    expect((await heard()).at(-1)).toEqual({ kind: "pick", path: "/joints/tie-end", joint: "tie-end@1" });
    await show({
      kind: "joint",
      joint: { title: "x", svg: svg('<script>window.ran = true</script><circle r="1"/>') },
    });
    expect(await page.locator("#joint-view script").count()).toBe(0);
    expect(await page.locator("#joint-view circle").count()).toBe(1);
  });

  it("can be used from the keyboard: a timber has a name, and Enter chooses it", async () => {
    await show(drawing(POST));
    const post = page.getByRole("button", { name: "post A1, 8x8" });
    await post.focus();
    await page.keyboard.press("Enter");
    expect((await heard()).at(-1)).toEqual({ kind: "pick", path: "/members/post" });
  });

  it("keeps zoom, place and keyboard focus when the drawing is replaced", async () => {
    await show(drawing(POST));
    const whole = await viewBox();
    await page.mouse.move(500, 200);
    await page.mouse.wheel(0, -400);
    await page.waitForFunction(
      (box) => document.getElementById("sheet")?.getAttribute("viewBox") !== box,
      whole,
    );
    await page.locator('[data-id="post@A1"]').focus();
    const before = await viewBox();
    await show(
      drawing(POST.replace("M20 10h10", "M20 10h14"), {
        svg: svg(POST.replace("h10v", "h14v"), "-4 0 108 60"),
      }),
    );
    expect(await viewBox()).toBe(before);
    expect(await page.evaluate(() => document.activeElement?.getAttribute("data-id"))).toBe("post@A1");
  });

  it("zooms at the pointer", async () => {
    await show(drawing(POST));
    const post = page.locator('[data-id="post@A1"]');
    const before = await post.boundingBox();
    await page.mouse.move(before?.x ?? 0, before?.y ?? 0);
    await page.mouse.wheel(0, -300);
    await page.waitForFunction(
      (width) =>
        (document.querySelector('[data-id="post@A1"]')?.getBoundingClientRect().width ?? 0) > width * 1.5,
      before?.width ?? 0,
    );
    const after = await post.boundingBox();
    expect(Math.abs((after?.x ?? 0) - (before?.x ?? 0))).toBeLessThan(2);
    expect(Math.abs((after?.y ?? 0) - (before?.y ?? 0))).toBeLessThan(2);
  });

  it("has keys for zooming, moving and showing all of it again", async () => {
    await show(drawing(POST));
    const whole = await viewBox();
    await page.locator("#viewport").focus();
    await page.keyboard.press("+");
    const nearer = await viewBox();
    await page.keyboard.press("ArrowRight");
    const moved = await viewBox();
    await page.keyboard.press("0");
    expect(new Set([whole, nearer, moved]).size).toBe(3);
    expect(await viewBox()).toBe(whole);
  });

  it("comes back after a reload with its view and its place", async () => {
    await show(drawing(POST, { view: "1" }));
    await page.locator("#views").selectOption("front");
    await show(drawing(POST));
    await page.locator("#zoom-in").click();
    const before = await viewBox();
    expect(await kept()).toMatchObject({ uri: "file:///arch.frame.yaml", view: "front" });
    await load();
    expect(await heard()).toEqual([{ kind: "ready", view: "front", layer: "", case: "" }]);
    await show(drawing(POST));
    expect(await viewBox()).toBe(before);
  });

  it("offers layers, and combinations where there is a layer; keeps zoom and what was chosen", async () => {
    await show(drawing(POST));
    expect(await page.locator("#layers option").allTextContents()).toEqual(["None", "Moment"]);
    expect(await page.locator("#cases").isVisible()).toBe(false);
    await page.locator("#zoom-in").click();
    const before = await viewBox();
    await page.getByLabel("Layer").focus();
    await page.keyboard.press("ArrowDown");
    expect((await heard()).at(-1)).toEqual({ kind: "view", view: "", layer: "moment", case: "" });
    const layer = { layer: "moment", cases: CASES, case: "1", svg: svg(POST, "0 0 100 90") };
    await show(drawing(POST, layer));
    expect(await viewBox()).toBe(before);
    await page.getByLabel("Loads").selectOption("worst");
    const chosen = { view: "", layer: "moment", case: "worst" };
    expect((await heard()).at(-1)).toEqual({ kind: "view", ...chosen });
    expect(await kept()).toMatchObject(chosen);
    await load();
    expect(await heard()).toEqual([{ kind: "ready", ...chosen }]);
  });

  it("keeps a place for each view", async () => {
    await show(drawing(POST));
    await page.locator("#zoom-in").click();
    const front = await viewBox();
    await show(drawing(POST, { view: "1" }));
    expect(await viewBox()).not.toBe(front);
    await show(drawing(POST));
    expect(await viewBox()).toBe(front);
  });

  it("lights what the cursor stands on, also in the next drawing", async () => {
    await show(drawing(POST));
    await show({ kind: "highlight", ids: ["post@A1"] });
    await show(drawing(POST.replace("h10v", "h12v")));
    expect(await page.locator(".selected").count()).toBe(1);
    await show({ kind: "highlight", ids: [] });
    expect(await page.locator(".selected").count()).toBe(0);
  });

  it("says when the drawing is older than the text, and keeps it", async () => {
    await show(drawing(POST));
    await show(drawing(POST, { stale: "Older drawing." }));
    expect(await page.getByRole("status").textContent()).toBe("Older drawing.");
    expect(await page.locator('[data-id="post@A1"]').isVisible()).toBe(true);
    await show(drawing(POST));
    expect(await page.getByRole("status").textContent()).toBe("");
  });

  it("runs and loads nothing that a drawing carries", async () => {
    const wanted: string[] = [];
    page.on("request", (request) => wanted.push(request.url()));
    const inner = [
      POST.replace("<path", '<path onclick="window.ran = 1"'),
      "<script>window.ran = 1</script>",
      '<foreignObject><body xmlns="http://www.w3.org/1999/xhtml"><img src="x" onerror="window.ran = 1"/></body></foreignObject>',
      '<image href="http://127.0.0.1:9/x.png" onerror="window.ran = 1"/>',
      '<use href="http://127.0.0.1:9/x.svg#y"/>',
    ].join("");
    await show(drawing(inner));
    await page.locator('[data-id="post@A1"]').click();
    expect(await page.evaluate(() => "ran" in window)).toBe(false);
    expect(
      await page
        .locator("#drawing script, #drawing foreignObject, #drawing image, #drawing use[href]")
        .count(),
    ).toBe(0);
    expect(wanted).toEqual([]);
  });

  it("shows nothing for a text that is not an SVG", async () => {
    await show(drawing("", { svg: "<svg" }));
    expect(await page.locator("#nothing").isVisible()).toBe(true);
  });
});
