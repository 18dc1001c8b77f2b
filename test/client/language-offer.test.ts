import { beforeEach, describe, expect, it, vi } from "vitest";
import { LanguageOffer } from "../../client/language-offer.ts";

const YES = "Read It as a Timber Frame";
const NEVER = "Don't Ask Again";

/** As much of the editor as the offer touches. */
const editor = vi.hoisted(() => ({
  front: undefined as { document: object } | undefined,
  turned: [] as ((front: { document: object } | undefined) => void)[],
  saved: [] as ((document: object) => void)[],
  asked: [] as string[],
  answer: undefined as string | undefined,
  languages: [] as string[],
}));

vi.mock("vscode", () => ({
  l10n: { t: (text: string) => text },
  Range: class {},
  languages: {
    match: (_: unknown, document: { isFrame: boolean }) => (document.isFrame ? 10 : 0),
    setTextDocumentLanguage: async (_: unknown, language: string) => editor.languages.push(language),
  },
  window: {
    get activeTextEditor() {
      return editor.front;
    },
    onDidChangeActiveTextEditor: (listener: (typeof editor.turned)[number]) => {
      editor.turned.push(listener);
      return { dispose: () => editor.turned.splice(editor.turned.indexOf(listener), 1) };
    },
    showInformationMessage: async (text: string, ..._buttons: string[]) => {
      editor.asked.push(text);
      return editor.answer;
    },
  },
  workspace: {
    onDidSaveTextDocument: (listener: (typeof editor.saved)[number]) => {
      editor.saved.push(listener);
      return { dispose: () => editor.saved.splice(editor.saved.indexOf(listener), 1) };
    },
  },
}));

const file = (path: string, other: object = {}) => ({
  uri: { scheme: "file", toString: () => `file://${path}` },
  languageId: "yaml",
  isFrame: false,
  isClosed: false,
  getText: () => "frame: Shed\n",
  ...other,
});

function memento(kept: Record<string, unknown> = {}) {
  return {
    keys: () => Object.keys(kept),
    get: <T>(key: string, otherwise?: T) => (key in kept ? kept[key] : otherwise) as T,
    update: async (key: string, value: unknown) => {
      kept[key] = value;
    },
    setKeysForSync: () => undefined,
  };
}

/** Brings a document to the front, and lets the answer of the user come in. */
async function show(document: object): Promise<void> {
  editor.front = { document };
  for (const listener of editor.turned) listener(editor.front);
  await new Promise((resolve) => setTimeout(resolve));
}

describe("the offer in the editor", () => {
  beforeEach(() => {
    Object.assign(editor, {
      front: undefined,
      turned: [],
      saved: [],
      asked: [],
      answer: undefined,
      languages: [],
    });
  });

  it("comes once for a file, and changes nothing without a yes", async () => {
    new LanguageOffer(memento());
    await show(file("/a.yaml"));
    await show(file("/a.yaml"));
    expect(editor.asked.length).toBe(1);
    await show(file("/b.yaml"));
    expect(editor.asked.length).toBe(2);
    expect(editor.languages).toEqual([]);
  });

  it("comes for the file that is in front when we start", () => {
    editor.front = { document: file("/a.yaml") };
    new LanguageOffer(memento());
    expect(editor.asked.length).toBe(1);
  });

  it("switches the language on a yes, unless the file was closed meanwhile", async () => {
    new LanguageOffer(memento());
    editor.answer = YES;
    await show(file("/a.yaml"));
    await show(file("/b.yaml", { isClosed: true }));
    expect(editor.languages).toEqual(["bentwright-frame"]);
  });

  it("never comes again where that was the answer, in later sessions too", async () => {
    const state = memento();
    const first = new LanguageOffer(state);
    editor.answer = NEVER;
    await show(file("/a.yaml"));
    await show(file("/b.yaml"));
    first.dispose();
    new LanguageOffer(state);
    await show(file("/c.yaml"));
    expect(editor.asked.length).toBe(1);
    expect(editor.languages).toEqual([]);
  });

  it("comes at a save, when `frame:` was written into the file in front", async () => {
    new LanguageOffer(memento());
    let text = "";
    const document = file("/a.yaml", { getText: () => text });
    await show(document);
    text = "frame: Shed";
    for (const listener of editor.saved) listener(file("/behind.yaml"));
    expect(editor.asked.length).toBe(0);
    for (const listener of editor.saved) listener(document);
    expect(editor.asked.length).toBe(1);
  });

  it("leaves frames and files that cannot be written alone, and everything once disposed", async () => {
    const offer = new LanguageOffer(memento());
    await show(file("/a.frame.yaml", { isFrame: true }));
    await show(file("/a.yaml", { uri: { scheme: "git", toString: () => "git:/a.yaml" } }));
    offer.dispose();
    await show(file("/b.yaml"));
    expect(editor.asked).toEqual([]);
  });
});
