/** Quick fixes over the protocol, as editors with different abilities ask for them. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { SHED } from "../shed.ts";
import { inMemory, type Session } from "./session.ts";

const URI = "file:///f.frame.yaml";
const WEAK = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8").replace(
  "kind: tie, section: 8x12",
  "kind: tie, section: 6x6",
);
const SIZED = /^Make tie 7 × \d+ in: smallest that passes$/;
const LITERALS = { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix"] } } };
const EDITOR = {
  workspace: { workspaceEdit: { documentChanges: true } },
  textDocument: {
    codeAction: {
      ...LITERALS,
      dataSupport: true,
      disabledSupport: true,
      resolveSupport: { properties: ["edit"] },
    },
  },
};

interface Action {
  readonly title: string;
  readonly edit?: { readonly documentChanges: readonly unknown[]; readonly changes: unknown };
  readonly data?: unknown;
}

async function opened(text: string, capabilities: object = EDITOR): Promise<Session> {
  const session = inMemory();
  await session.start(capabilities);
  await session.open(URI, text);
  return session;
}

/** What is offered at some words of the text. */
function ask(session: Session, text: string, words: string, context: object = {}): Promise<Action[]> {
  const before = text.slice(0, text.indexOf(words)).split("\n");
  const start = { line: before.length - 1, character: before.at(-1)?.length ?? 0 };
  return session.request("textDocument/codeAction", {
    textDocument: { uri: URI },
    range: { start, end: start },
    context: { diagnostics: [], ...context },
  });
}

test("the server says that it has quick fixes", async () => {
  const { capabilities } = await inMemory().start();
  expect(capabilities.codeActionProvider).toEqual({ codeActionKinds: ["quickfix"], resolveProvider: true });
});

test("a fix, with an edit of the open version", async () => {
  const text = SHED.replace("overhang: 12 in", "overhnag: 12 in");
  const session = await opened(text);
  const [fix] = await ask(session, text, "overhnag");
  expect(fix?.edit?.documentChanges).toMatchObject([
    { textDocument: { uri: URI, version: 1 }, edits: [{ newText: "overhang" }] },
  ]);
  expect(await ask(session, text, "overhnag", { only: ["refactor"] })).toEqual([]);
});

test("a size, worked out when it is chosen", async () => {
  const session = await opened(WEAK);
  const [fix] = await ask(session, WEAK, "6x6");
  expect(fix?.edit).toBeUndefined();
  const resolved = await session.request<Action>("codeAction/resolve", fix);
  expect(resolved.title).toMatch(SIZED);
  expect(resolved.edit?.documentChanges).toMatchObject([
    { textDocument: { uri: URI, version: 1 }, edits: [{ newText: expect.stringMatching(/^7x\d+$/) }] },
  ]);
  expect(session.shown).toEqual([]);
});

test("a size that there is not: the user is told why", async () => {
  const text = WEAK.replace("longest-cut: 21 ft", "longest-cut: 10 ft");
  const session = await opened(text);
  const [fix] = await ask(session, text, "6x6");
  expect(await session.request("codeAction/resolve", fix)).toEqual(fix);
  expect(await session.until(() => session.shown[0], "a reason")).toContain("longer-than-mill");
});

test("what was chosen before a change is not carried out after it", async () => {
  const session = await opened(WEAK);
  const [fix] = await ask(session, WEAK, "6x6");
  await session.change(URI, 2, WEAK.replace("ground: 45 psf", "ground: 46 psf"));
  expect(await session.request("codeAction/resolve", fix)).toEqual(fix);
});

test("a change while a size is worked out ends it", async () => {
  const session = await opened(WEAK);
  const [fix] = await ask(session, WEAK, "6x6");
  const resolving = session.request<Action>("codeAction/resolve", fix);
  await session.change(URI, 2, `${WEAK}# more\n`);
  expect((await resolving).edit).toBeUndefined();
  await session.diagnosticsOf(URI, 2);
});

test("an editor that cannot ask later gets the result, in plain changes", async () => {
  const session = await opened(WEAK, { textDocument: { codeAction: LITERALS } });
  const [fix] = await ask(session, WEAK, "6x6");
  expect(fix?.title).toMatch(SIZED);
  expect(fix?.edit?.changes).toMatchObject({ [URI]: [{ newText: expect.stringMatching(/^7x\d+$/) }] });
});

test("an editor that knows commands only gets nothing, nor does a document that is not open", async () => {
  const session = await opened(WEAK, {});
  expect(await ask(session, WEAK, "6x6")).toEqual([]);
  const other = inMemory();
  await other.start(EDITOR);
  expect(await ask(other, WEAK, "6x6")).toEqual([]);
});

test.each([
  ["textDocument/codeAction", undefined],
  ["textDocument/codeAction", { textDocument: { uri: URI }, range: null, context: null }],
  ["codeAction/resolve", undefined],
])("a bad question ends nothing: %s %j", async (method, params) => {
  const session = await opened(SHED);
  await expect(session.request(method, params)).rejects.toThrow();
  expect(await session.request("bentwright/locate", { uri: URI, path: "/members" })).not.toBeNull();
});

test("a fix that is not ours comes back as it is", async () => {
  const session = await opened(SHED);
  for (const data of [undefined, null, 3, {}, { uri: URI, version: "1", check: "x", path: "/" }]) {
    const action = { title: "Something", data };
    expect(await session.request("codeAction/resolve", action)).toEqual(JSON.parse(JSON.stringify(action)));
  }
});
