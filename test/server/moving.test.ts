/** Moving about, as an editor asks for it. */
import { expect, test } from "vitest";
import type { DocumentSymbol, Location, LocationLink, SymbolInformation } from "vscode-languageserver-types";
import { createFrameService } from "../../server/language/frame-service.ts";
import { SHED } from "../shed.ts";
import { inMemory, type Session } from "./session.ts";

const URI = "file:///shed.frame.yaml";
const textDocument = { uri: URI };
const LINES = SHED.split("\n");
/** the `post` in `between: [post, plate]` */
const line = LINES.findIndex((each) => each.startsWith("  knee:"));
const position = { line, character: (LINES[line] ?? "").indexOf("post") };
const KEY = LINES.findIndex((each) => each.startsWith("  post:"));

/** An open file that is read and never checked: whoever waits for a check gets no answer. */
async function opened(capabilities: object): Promise<Session> {
  const session = inMemory({
    ...createFrameService(),
    open: () => {
      throw new Error("checked");
    },
    openInStages: () => new Promise(() => undefined),
  });
  await session.start({ textDocument: capabilities });
  await session.open(URI, SHED);
  return session;
}

test("says that it can", async () => {
  const { capabilities } = await inMemory().start({ textDocument: { rename: { prepareSupport: true } } });
  expect(capabilities).toMatchObject({
    documentSymbolProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    foldingRangeProvider: true,
    renameProvider: { prepareProvider: true },
  });
  const plain = await inMemory().start();
  expect(plain.capabilities.renameProvider).toBe(true);
});

test("an editor of today gets a tree, and links with the name they begin at", async () => {
  const session = await opened({
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    definition: { linkSupport: true },
  });
  const symbols = await session.request<DocumentSymbol[]>("textDocument/documentSymbol", { textDocument });
  const members = symbols.find(({ name }) => name === "members");
  expect(members?.children?.map(({ name }) => name)).toEqual(["post", "plate", "tie", "knee", "tie-knee"]);
  const links = await session.request<LocationLink[]>("textDocument/definition", { textDocument, position });
  expect(links).toHaveLength(1);
  expect(links[0]).toMatchObject({
    targetUri: URI,
    originSelectionRange: { start: position, end: { line, character: position.character + 4 } },
    targetSelectionRange: { start: { line: KEY, character: 2 }, end: { line: KEY, character: 6 } },
  });
});

test("a plain editor gets lists and places; nothing of it waits for a check", async () => {
  const session = await opened({});
  const symbols = await session.request<SymbolInformation[]>("textDocument/documentSymbol", { textDocument });
  expect(symbols.find(({ name }) => name === "post")).toMatchObject({
    containerName: "members",
    location: { uri: URI, range: { start: { line: KEY, character: 2 } } },
  });
  const key = { start: { line: KEY, character: 2 }, end: { line: KEY, character: 6 } };
  expect(await session.request("textDocument/definition", { textDocument, position })).toEqual([
    { uri: URI, range: key },
  ]);
  const asked = { textDocument, position };
  const uses = (includeDeclaration: boolean): Promise<Location[]> =>
    session.request("textDocument/references", { ...asked, context: { includeDeclaration } });
  const [all, without] = [await uses(true), await uses(false)];
  expect(all).toContainEqual({ uri: URI, range: key });
  expect(without).toEqual(all.filter(({ range }) => range.start.line !== KEY));
  const lit = await session.request<unknown[]>("textDocument/documentHighlight", asked);
  expect(lit).toHaveLength(all.length);
  expect(lit).toContainEqual({ range: key, kind: 3 });
  const folds = await session.request("textDocument/foldingRange", { textDocument });
  expect(folds).toContainEqual({ startLine: KEY - 1, endLine: KEY + 4 });
});

test("renames, for the version that was read, and says in words why not", async () => {
  const session = await opened({ rename: { prepareSupport: true } });
  const asked = { textDocument, position };
  expect(await session.request("textDocument/prepareRename", asked)).toEqual({
    range: { start: position, end: { line, character: position.character + 4 } },
    placeholder: "post",
  });
  const edit = await session.request<{ changes: Record<string, unknown[]> }>("textDocument/rename", {
    ...asked,
    newName: "leg",
  });
  expect(edit.changes[URI]?.length).toBeGreaterThan(5);
  await expect(session.request("textDocument/rename", { ...asked, newName: "tie" })).rejects.toThrow(
    "“tie” is taken already, under members.",
  );
  await expect(
    session.request("textDocument/prepareRename", { textDocument, position: { line: 0, character: 0 } }),
  ).rejects.toThrow("Here stands no name of this file.");
  const versioned = inMemory();
  await versioned.start({ workspace: { workspaceEdit: { documentChanges: true } } });
  await versioned.open(URI, SHED, 7);
  expect(await versioned.request("textDocument/rename", { ...asked, newName: "leg" })).toEqual({
    documentChanges: [{ textDocument: { uri: URI, version: 7 }, edits: edit.changes[URI] }],
  });
});

test("in a file that is not open there is nothing", async () => {
  const session = inMemory();
  await session.start();
  const asked = { textDocument: { uri: "file:///other.frame.yaml" }, position };
  for (const method of ["documentSymbol", "definition", "foldingRange"])
    expect(await session.request(`textDocument/${method}`, asked)).toEqual([]);
  for (const method of ["documentHighlight", "prepareRename"])
    expect(await session.request(`textDocument/${method}`, asked)).toBeNull();
});
