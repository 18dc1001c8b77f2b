import { beforeEach, describe, expect, it, vi } from "vitest";
import { atFirstFrame } from "../../client/first-frame.ts";

const editor = vi.hoisted(() => ({
  open: [] as object[],
  listeners: new Set<(document: object) => void>(),
}));

vi.mock("vscode", () => ({
  languages: { match: (_: unknown, document: { isFrame: boolean }) => (document.isFrame ? 10 : 0) },
  workspace: {
    get textDocuments() {
      return editor.open;
    },
    onDidOpenTextDocument: (listener: (document: object) => void) => {
      editor.listeners.add(listener);
      return { dispose: () => editor.listeners.delete(listener) };
    },
  },
}));

const FRAME = { isFrame: true };
const OTHER = { isFrame: false };
const opens = (document: object) => {
  for (const listener of editor.listeners) listener(document);
};

describe("the server", () => {
  beforeEach(() => {
    editor.open = [];
    editor.listeners.clear();
  });

  it("starts at once where a frame is open", () => {
    const start = vi.fn();
    editor.open = [OTHER, FRAME];
    atFirstFrame(start);
    opens(FRAME);
    expect(start).toHaveBeenCalledTimes(1);
  });

  it("else starts with the first frame that opens, and only then", () => {
    const start = vi.fn();
    editor.open = [OTHER];
    atFirstFrame(start);
    opens(OTHER);
    expect(start).not.toHaveBeenCalled();
    opens(FRAME);
    opens(FRAME);
    expect(start).toHaveBeenCalledTimes(1);
  });

  it("does not start once we are put away", () => {
    const start = vi.fn();
    atFirstFrame(start).dispose();
    opens(FRAME);
    expect(start).not.toHaveBeenCalled();
  });
});
