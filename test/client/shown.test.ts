import { beforeEach, describe, expect, it, vi } from "vitest";
import type { LanguageClient } from "vscode-languageclient/node";
import { isOn } from "../../client/settings.ts";
import { Shown } from "../../client/shown.ts";
import manifest from "../../package.json" with { type: "json" };

/** As much of the editor as the settings touch. */
const editor = vi.hoisted(() => ({
  settings: {} as Record<string, unknown>,
  listeners: new Set<(change: { affectsConfiguration(name: string): boolean }) => void>(),
}));

vi.mock("vscode", () => ({
  DiagnosticSeverity: { Error: 0, Warning: 1, Information: 2, Hint: 3 },
  languages: { match: (_: unknown, document: { isFrame: boolean }) => (document.isFrame ? 10 : 0) },
  workspace: {
    textDocuments: [{ isFrame: false }, { isFrame: true }],
    getConfiguration: (section: string) => ({
      get: (name: string, otherwise: unknown) => editor.settings[`${section}.${name}`] ?? otherwise,
    }),
    onDidChangeConfiguration: (listener: Parameters<typeof editor.listeners.add>[0]) => {
      editor.listeners.add(listener);
      return { dispose: () => editor.listeners.delete(listener) };
    },
  },
}));

function set(name: string, value: unknown): void {
  editor.settings[name] = value;
  for (const listener of editor.listeners) listener({ affectsConfiguration: (one) => one === name });
}

const FILE = { toString: () => "file:///a.frame.yaml" };
const FOUND = [0, 1, 2, 3].map((severity) => ({ severity }));

/** The client's side: what it shows, and how often it tells the editor to ask for hints and lenses anew. */
function client() {
  const asked = { hints: 0, lenses: 0 };
  const shown = new Map<unknown, readonly { severity: number }[]>();
  const features: Record<string, object> = {
    "textDocument/inlayHint": { onDidChangeInlayHints: { fire: () => ++asked.hints } },
    "textDocument/codeLens": { onDidChangeCodeLensEmitter: { fire: () => ++asked.lenses } },
  };
  const stand = {
    diagnostics: { set: (uri: unknown, found: never[]) => shown.set(uri, found) },
    getFeature: (name: string) => ({
      getProvider: (document: { isFrame: boolean }) => (document.isFrame ? features[name] : undefined),
    }),
  };
  return { stand: stand as unknown as LanguageClient, asked, shown };
}

/** A hook of the middleware, without the types of the editor's own objects. */
function hook(shown: Shown, name: keyof Shown["middleware"]): (...args: unknown[]) => unknown {
  return shown.middleware[name] as (...args: unknown[]) => unknown;
}

describe("the settings", () => {
  beforeEach(() => {
    editor.settings = {};
    editor.listeners.clear();
  });

  it("are on where nothing is set, as the package says", () => {
    const switches = manifest.contributes.configuration.flatMap(({ properties }) =>
      Object.entries<{ type: string; default: unknown }>(properties).filter(
        ([, { type }]) => type === "boolean",
      ),
    );
    expect(switches.map(([, one]) => one.default)).toEqual(switches.map(() => true));
    expect(isOn("text.notes")).toBe(true);
    set("bentwright.text.notes", false);
    expect(isOn("text.notes")).toBe(false);
  });

  it.each([
    ["bentwright.text.sectionUse", "provideInlayHints", "hints"],
    ["bentwright.text.stickCounts", "provideCodeLenses", "lenses"],
  ] as const)("%s takes them away and brings them back at once", (name, asking, counted) => {
    const { stand, asked } = client();
    const shown = new Shown();
    shown.watch(stand);
    const answer = () =>
      hook(shown, asking)(
        ...["document", "range", "token"].slice(asking === "provideCodeLenses" ? 1 : 0),
        () => ["one"],
      );
    expect(answer()).toEqual(["one"]);
    set(name, false);
    expect(answer()).toEqual([]);
    set(name, true);
    expect(answer()).toEqual(["one"]);
    expect(asked).toEqual({ hints: 0, lenses: 0, [counted]: 2 });
  });

  it("take notes away and bring them back without a new check, and no finding of a server that has gone", () => {
    const { stand, shown: list } = client();
    const shown = new Shown();
    shown.watch(stand);
    const find = (found: object[]) => hook(shown, "handleDiagnostics")(FILE, found, stand.diagnostics?.set);
    const severities = () => list.get(FILE)?.map(({ severity }) => severity);
    find(FOUND);
    expect(severities()).toEqual([0, 1, 2, 3]);
    set("bentwright.text.notes", false);
    expect(severities()).toEqual([0, 1]);
    find(FOUND.slice(1));
    expect(severities()).toEqual([1]);
    set("bentwright.text.notes", true);
    expect(severities()).toEqual([1, 2, 3]);
    list.clear();
    shown.forget();
    set("bentwright.text.notes", false);
    expect(list.size).toBe(0);
  });

  it("are left alone once we are put away", () => {
    const shown = new Shown();
    shown.watch(client().stand);
    expect(editor.listeners.size).toBe(3);
    shown.dispose();
    expect(editor.listeners.size).toBe(0);
  });
});
