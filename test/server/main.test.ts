import { describe, expect, test } from "vitest";
import type { CompletionItem } from "vscode-languageserver-types";
import { createFrameService, type FrameService } from "../../server/language/frame-service.ts";
import type {
  AtCursorResult,
  DrawingResult,
  JointDrawingResult,
  LocateResult,
} from "../../server/protocol.ts";
import { SHED } from "../shed.ts";
import { inMemory, started } from "./session.ts";

const URI = "file:///shed.frame.yaml";
const BROKEN = SHED.replace("section: 8x10", "section: 8x");

function positionOf(text: string, words: string): { line: number; character: number } {
  const offset = text.indexOf(words);
  expect(offset, `${words} is in the text`).toBeGreaterThanOrEqual(0);
  const before = text.slice(0, offset).split("\n");
  return { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
}

test("says what it can do", async () => {
  const { capabilities, serverInfo } = await inMemory().start();
  expect(capabilities).toMatchObject({
    positionEncoding: "utf-16",
    textDocumentSync: { openClose: true, change: 2, save: { includeText: false } },
    hoverProvider: true,
    completionProvider: { triggerCharacters: [" ", "{", "[", "@"] },
    inlayHintProvider: { resolveProvider: true },
    codeLensProvider: {},
  });
  expect(serverInfo).toEqual({ name: "bentwright", version: expect.stringMatching(/^\d+\.\d+\.\d+/) });
});

describe("findings", () => {
  test("come after opening, with the version, whatever the language is called", async () => {
    const session = await started();
    await session.open(URI, BROKEN, 7, "plaintext");
    const { diagnostics } = await session.diagnosticsOf(URI, 7);
    const found = diagnostics.find(({ code }) => code === "unreadable-quantity");
    const { line, character } = positionOf(BROKEN, "8x,");
    expect(found).toMatchObject({
      severity: 1,
      source: "bentwright",
      range: { start: { line }, end: { line, character: character + 2 } },
    });
  });

  test("a count follows them", async () => {
    const session = await started();
    await session.open(URI, BROKEN);
    const checked = await session.until(() => session.checked[0], "the count");
    const { diagnostics } = await session.diagnosticsOf(URI, 1);
    const count = (severity: number): number => diagnostics.filter((one) => one.severity === severity).length;
    expect(checked).toEqual({
      uri: URI,
      version: 1,
      errors: count(1),
      warnings: count(2),
      notes: count(3),
      milliseconds: expect.any(Number),
    });
    expect(checked.errors).toBeGreaterThan(0);
  });

  test("of quick changes only the newest is published", async () => {
    const session = await started();
    await session.open(URI, SHED);
    await session.diagnosticsOf(URI, 1);
    const end = positionOf(`${SHED}\0`, "\0");
    for (let version = 2; version <= 10; version++) {
      const at = { line: end.line, character: version - 2 };
      await session.change(URI, version, "#", { start: at, end: at });
    }
    const { line, character } = positionOf(SHED, "8x10");
    const ten = { start: { line, character: character + 2 }, end: { line, character: character + 4 } };
    await session.change(URI, 11, "", ten);
    const { diagnostics } = await session.diagnosticsOf(URI, 11);
    expect(diagnostics.map(({ code }) => code)).toContain("unreadable-quantity");
    expect(session.published.map(({ version }) => version)).toEqual([1, 11]);
  });

  test("saving checks at once", async () => {
    const session = await started();
    await session.open(URI, SHED);
    await session.diagnosticsOf(URI, 1);
    await session.change(URI, 2, BROKEN);
    await session.save(URI);
    await session.diagnosticsOf(URI, 2);
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(session.published.map(({ version }) => version)).toEqual([1, 2]);
  });

  test("none are left when the document is closed, and nothing comes after that", async () => {
    const session = await started();
    await session.open(URI, BROKEN);
    await session.diagnosticsOf(URI, 1);
    await session.change(URI, 2, SHED);
    await session.close(URI);
    await session.until(() => session.published.find((one) => one.version === undefined), "cleared findings");
    await new Promise((resolve) => setTimeout(resolve, 150));
    expect(session.published.at(-1)).toEqual({ uri: URI, diagnostics: [] });
  });

  test("of a document that was closed while it was checked do not land in the one opened after it", async () => {
    const service = createFrameService();
    const slow: FrameService = {
      ...service,
      async openInStages(...asked) {
        await new Promise((resolve) => setTimeout(resolve, 50));
        return service.openInStages(...asked);
      },
    };
    const session = await started(slow);
    await session.open(URI, BROKEN);
    await new Promise((resolve) => setTimeout(resolve, 20));
    await session.close(URI);
    await session.open(URI, SHED);
    await session.diagnosticsOf(URI, 1);
    await new Promise((resolve) => setTimeout(resolve, 150));
    const codes = session.published.flatMap(({ diagnostics }) => diagnostics.map(({ code }) => code));
    expect(codes).not.toContain("unreadable-quantity");
  });

  test("are never empty in between", async () => {
    const session = await started();
    await session.open(URI, BROKEN);
    await session.diagnosticsOf(URI, 1);
    await session.change(URI, 2, `${BROKEN}\n`);
    await session.diagnosticsOf(URI, 2);
    expect(session.published.every(({ diagnostics }) => diagnostics.length > 0)).toBe(true);
  });

  test("two documents do not mix", async () => {
    const session = await started();
    const other = "untitled:Untitled-1";
    await session.open(URI, BROKEN);
    await session.open(other, "frame: Nothing yet\n");
    const first = await session.diagnosticsOf(URI, 1);
    const second = await session.diagnosticsOf(other, 1);
    expect(first.diagnostics.map(({ code }) => code)).toContain("unreadable-quantity");
    expect(second.diagnostics.map(({ code }) => code)).not.toContain("unreadable-quantity");
  });
});

describe("questions", () => {
  test("a hover", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const hover = await session.request<{ contents: { kind: string; value: string } } | null>(
      "textDocument/hover",
      { textDocument: { uri: URI }, position: positionOf(SHED, "post-head:") },
    );
    expect(hover?.contents.kind).toBe("markdown");
    expect(hover?.contents.value).toContain("tenon thickness");
  });

  test("lenses and hints of the newest text, once it is checked", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const ask = <T>(method: string) =>
      session.request<T>(method, {
        textDocument: { uri: URI },
        range: { start: { line: 0, character: 0 }, end: { line: 99, character: 0 } },
      });
    type Lens = { range: { start: { line: number } }; command: { title: string } };
    const lenses = await ask<readonly Lens[]>("textDocument/codeLens");
    const { line } = positionOf(SHED, "  post: {");
    expect(lenses.find(({ range }) => range.start.line === line)?.command.title).toMatch(/^4 sticks · /);
    type Hint = { label: string; tooltip?: { value: string } };
    const [hint] = await ask<readonly Hint[]>("textDocument/inlayHint");
    expect(hint?.tooltip).toBeUndefined();
    const resolved = await session.request<Hint>("inlayHint/resolve", hint);
    expect(resolved.label).toBe(hint?.label);
    expect(resolved.tooltip?.value).toContain("Used to **");
    await session.change(URI, 2, SHED.replace("at: [A1, A2, B1, B2]", "at: [A1, A2, B1]"));
    const after = await ask<readonly Lens[]>("textDocument/codeLens");
    expect(after.find(({ range }) => range.start.line === line)?.command.title).toMatch(/^3 sticks/);
  });

  test("no hover where nothing is, nor in a document that is not open", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const ask = (uri: string, line: number): Promise<unknown> =>
      session.request("textDocument/hover", { textDocument: { uri }, position: { line, character: 0 } });
    expect(await ask(URI, 9999)).toBeNull();
    expect(await ask("file:///other.frame.yaml", 0)).toBeNull();
  });

  test("a drawing, and the views there are", async () => {
    const session = await started();
    await session.open(URI, SHED, 3);
    const drawn = await session.request<DrawingResult>("bentwright/drawing", { uri: URI, view: "1" });
    expect(drawn).toMatchObject({ version: 3, stale: false, view: "1" });
    expect(drawn.views.map(({ id }) => id)).toEqual(["front", "side", "1", "2", "A", "B"]);
    expect(drawn.svg).toContain('data-id="post@A1"');
  });

  test("a drawing with forces over it, and what can be chosen", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const ask = (more: object): Promise<DrawingResult> =>
      session.request<DrawingResult>("bentwright/drawing", { uri: URI, view: "1", ...more });
    const bare = await ask({});
    expect(bare).toMatchObject({ layer: "none", cases: [], case: "" });
    expect(bare.layers.map(({ id }) => id)).toEqual(["none", "axial", "shear", "moment", "deflected"]);
    const moment = await ask({ layer: "moment" });
    expect(moment).toMatchObject({ layer: "moment", view: "1" });
    expect(moment.cases.map(({ id }) => id)).toContain(moment.case);
    expect(moment.svg).toContain('class="force moment" data-id="tie@1" data-path="/members/tie"');
    expect(moment.svg).not.toMatch(/<style|fill="|stroke="/);
    expect(await ask({ layer: "shear", case: "worst" })).toMatchObject({ layer: "shear", case: "worst" });
    const shape = await ask({ layer: "deflected", case: "worst" });
    expect(shape.case).not.toBe("worst");
    expect(shape.cases.map(({ id }) => id)).toContain(shape.case);
    expect(await ask({ layer: "torque", case: 4 })).toEqual(bare);
  });

  test("a view that is not there gives the first", async () => {
    const session = await started();
    await session.open(URI, SHED);
    expect(await session.request("bentwright/drawing", { uri: URI, view: "9" })).toMatchObject({
      view: "front",
    });
  });

  test("an older drawing while a line is half typed", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const before = await session.request<DrawingResult>("bentwright/drawing", { uri: URI, view: "front" });
    await session.change(URI, 2, BROKEN);
    const after = await session.request<DrawingResult>("bentwright/drawing", { uri: URI, view: "front" });
    expect(after).toEqual({ ...before, stale: true });
    await session.change(URI, 3, SHED);
    const again = await session.request<DrawingResult>("bentwright/drawing", { uri: URI, view: "front" });
    expect(again).toMatchObject({ stale: false, version: 3 });
  });

  test("no drawing yet", async () => {
    const session = await started();
    await session.open(URI, "");
    expect(await session.request("bentwright/drawing", { uri: URI, view: "front" })).toMatchObject({
      svg: null,
      stale: false,
    });
  });

  test("where the drawn thing stands in the text", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const start = positionOf(SHED, "tie:");
    expect(
      await session.request<LocateResult>("bentwright/locate", { uri: URI, path: "/members/tie" }),
    ).toEqual({
      start,
      end: { ...start, character: start.character + 3 },
    });
    expect(await session.request("bentwright/locate", { uri: URI, path: "/members/none" })).toBeNull();
  });

  test("what the cursor lights", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const at = async (words: string, past = 0): Promise<readonly string[]> => {
      const { line, character } = positionOf(SHED, words);
      const params = { uri: URI, position: { line, character: character + past } };
      return (await session.request<AtCursorResult>("bentwright/at-cursor", params)).ids;
    };
    expect(await at("tie:")).toEqual(["tie@1", "tie@2"]);
    expect(await at("A2, B1")).toEqual(["post@A2"]);
    expect(await at("of: post", 5)).toEqual(["post@A1", "post@A2", "post@B1", "post@B2"]);
    expect(await at("post-head")).toEqual(["post-head@A1", "post-head@A2", "post-head@B1", "post-head@B2"]);
    expect(await at("all:")).toEqual(["all@A1", "all@A2", "all@B1", "all@B2"]);
    expect(await at("frame: Wood")).toEqual([]);
  });

  test("a joint’s drawing, and which place of an entry the cursor asks for", async () => {
    const session = await started();
    await session.open(URI, SHED);
    const params = { uri: URI, position: positionOf(SHED, "post-head") };
    const { ids, joint } = await session.request<AtCursorResult>("bentwright/at-cursor", params);
    expect(ids).toContain(joint);
    const drawn = await session.request<JointDrawingResult>("bentwright/joint-drawing", {
      uri: URI,
      id: joint,
    });
    expect(drawn).toMatchObject({ id: joint, title: `${joint} · Mortise and tenon` });
    expect(drawn.svg).toMatch(/^<svg class="joint-sheet"/);
    expect(drawn.svg).not.toMatch(/<style|fill="|stroke="/);
    const none = { uri: URI, id: "post-head@Z9" };
    expect(await session.request("bentwright/joint-drawing", none)).toBeNull();
  });

  describe("completion", () => {
    const TYPED = SHED.replace("members:\n", "members:\n  new: {kind: brace, }\n");
    const asked = async (capabilities: object, options: object = {}): Promise<CompletionItem[]> => {
      const service = createFrameService();
      let checks = 0;
      const session = inMemory({
        ...service,
        open: (...args) => {
          checks++;
          return service.open(...args);
        },
      });
      await session.start({ textDocument: { completion: { completionItem: capabilities } } }, options);
      await session.open(URI, TYPED);
      const { line, character } = positionOf(TYPED, "brace, }");
      const params = { textDocument: { uri: URI }, position: { line, character: character + 7 } };
      const items = await session.request<CompletionItem[]>("textDocument/completion", params);
      expect(checks).toBe(0);
      return items;
    };

    test("answers from the text, in the way that the editor can read", async () => {
      const full = await asked(
        { snippetSupport: true, documentationFormat: ["markdown"], insertTextModeSupport: { valueSet: [1] } },
        { suggestAgain: "list.again" },
      );
      expect(full.map(({ label }) => label).slice(0, 2)).toEqual(["section", "between"]);
      expect(full[1]).toMatchObject({
        insertTextFormat: 2,
        insertTextMode: 1,
        documentation: { kind: "markdown" },
        textEdit: { newText: "between: [$0]" },
        command: { command: "list.again" },
      });
      const bare = await asked({});
      expect(bare[1]).toMatchObject({
        insertTextFormat: 1,
        documentation: expect.any(String),
        textEdit: { newText: "between: []" },
      });
      expect(bare[1]).not.toHaveProperty("command");
      expect(bare[1]).not.toHaveProperty("insertTextMode");
    });
  });

  test("pictures in hovers only for a client that shows them", async () => {
    const hovered = async (options: object): Promise<string> => {
      const session = inMemory();
      await session.start({}, options);
      await session.open(URI, SHED);
      const params = { textDocument: { uri: URI }, position: positionOf(SHED, "post-head") };
      return JSON.stringify(await session.request("textDocument/hover", params));
    };
    expect(await hovered({ pictures: true })).toContain("data:image/svg+xml;base64,");
    expect(await hovered({})).not.toContain("data:");
  });

  test("the cursor, which moves with every key, starts no check of its own", async () => {
    const service = createFrameService();
    let atOnce = 0;
    const counted: FrameService = {
      ...service,
      open(...asked) {
        atOnce++;
        return service.open(...asked);
      },
    };
    const session = await started(counted);
    await session.open(URI, SHED);
    await session.diagnosticsOf(URI, 1);
    await session.change(URI, 2, SHED.replace("bents: [1, 2]", "bents: [1]"));
    const params = { uri: URI, position: positionOf(SHED, "tie:") };
    expect(await session.request<AtCursorResult>("bentwright/at-cursor", params)).toEqual({ ids: ["tie@1"] });
    expect(atOnce).toBe(0);
  });
});
