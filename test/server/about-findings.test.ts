/** Links of diagnostics, their pages and accepting, over the protocol: our own client beside any other. */
import { describe, expect, test } from "vitest";
import type { AcceptResult, PageResult } from "../../server/protocol.ts";
import { SHED } from "../shed.ts";
import { inMemory, type Session } from "./session.ts";

const URI = "file:///s%20h.frame.yaml";
const UNJOINED = SHED.replace(/ {2}tie-end: .*\n/, "");
const EDITOR = {
  textDocument: {
    publishDiagnostics: { codeDescriptionSupport: true },
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix"] } } },
  },
};

interface Action {
  readonly title: string;
  readonly command?: { readonly command: string; readonly arguments: readonly unknown[] };
  readonly edit?: { readonly changes: unknown };
}

async function opened(options: object, text = UNJOINED): Promise<Session> {
  const session = inMemory();
  await session.start(EDITOR, options);
  await session.open(URI, text);
  return session;
}

/** The first finding that can be accepted, and its action. */
async function acceptable(session: Session) {
  for (const one of (await session.diagnosticsOf(URI, 1)).diagnostics) {
    const actions = await session.request<Action[]>("textDocument/codeAction", {
      textDocument: { uri: URI },
      range: one.range,
      context: { diagnostics: [] },
    });
    const action = actions.find(({ title }) => title.startsWith(`Accept ${one.code}`));
    if (action) return { diagnostic: one, action };
  }
  throw new Error("nothing can be accepted");
}

describe("our own client", () => {
  const OWN = { pages: true, accepts: true };

  test("gets a link to a page, and the page for it", async () => {
    const session = await opened(OWN);
    const { diagnostic } = await acceptable(session);
    const link = new URL(diagnostic.codeDescription?.href ?? "");
    expect(link.protocol).toBe("bentwright-page:");
    const query = decodeURIComponent(link.search.slice(1));
    const { markdown, uri } = await session.request<PageResult>("bentwright/page", { query });
    expect(uri).toBe(URI);
    expect(markdown).toContain(`\`${diagnostic.code}\``);
    expect(markdown).toContain(`s h.frame.yaml, line ${diagnostic.range.start.line + 1}`);
  });

  test("accepts: the command's argument and a reason give the edit", async () => {
    const session = await opened(OWN);
    const { diagnostic, action } = await acceptable(session);
    expect(action.command?.command).toBe("bentwright.acceptFinding");
    const [finding] = action.command?.arguments ?? [];
    const ask = (because: unknown): Promise<AcceptResult> =>
      session.request("bentwright/accept", { finding, because });
    expect(await ask("reviewed")).toMatchObject({
      uri: URI,
      refused: "",
      edits: [{ newText: expect.stringContaining(`{check: ${diagnostic.code}, at: `) }],
    });
    for (const nothing of ["", " ", null])
      expect(await ask(nothing)).toMatchObject({ edits: [], refused: expect.stringContaining("reason") });
  });

  test.each([undefined, null, 3, {}, { query: "%" }, { finding: 3, because: "x" }])(
    "a bad question ends nothing: %j",
    async (params) => {
      const session = await opened(OWN);
      expect((await session.request<PageResult>("bentwright/page", params ?? {})).uri).toBeNull();
      const answer = await session.request<AcceptResult>("bentwright/accept", params ?? {});
      expect(answer).toMatchObject({ edits: [], refused: expect.stringMatching(/./) });
    },
  );
});

test("another editor gets an edit with an empty reason, and no link it could not open", async () => {
  const session = await opened({});
  const { diagnostic, action } = await acceptable(session);
  expect(diagnostic.codeDescription).toBeUndefined();
  expect(action.command).toBeUndefined();
  expect(JSON.stringify(action.edit?.changes)).toContain('because: \\"\\"');
});
