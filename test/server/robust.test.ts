/** Bad questions, bad notifications and parts that break down leave the server standing. */
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { SHED } from "../shed.ts";
import { started } from "./session.ts";

const URI = "file:///shed.frame.yaml";
const BROKEN = SHED.replace("section: 8x10", "section: 8x");

describe("nothing ends the server", () => {
  test.each([
    ["textDocument/hover", undefined],
    ["textDocument/hover", { textDocument: null }],
    ["textDocument/inlayHint", { textDocument: null }],
    ["textDocument/codeLens", undefined],
    ["bentwright/drawing", undefined],
    ["bentwright/drawing", { uri: 3, view: [] }],
    ["bentwright/locate", { uri: URI }],
    ["bentwright/joint-drawing", { uri: URI, id: 3 }],
    ["bentwright/at-cursor", { uri: URI, position: "here" }],
    ["bentwright/nothing-like-this", {}],
  ])("a bad question: %s %j", async (method, params) => {
    const session = await started();
    await session.open(URI, SHED);
    await expect(session.request(method, params)).rejects.toThrow();
    expect(await session.request("bentwright/locate", { uri: URI, path: "/members" })).not.toBeNull();
  });

  test("bad notifications", async () => {
    const session = await started();
    await session.connection.sendNotification("textDocument/didOpen", { textDocument: null });
    await session.connection.sendNotification("textDocument/didChange", { contentChanges: 4 });
    await session.change("file:///never-opened.frame.yaml", 2, "");
    await session.close("file:///never-opened.frame.yaml");
    await session.open(URI, BROKEN);
    expect((await session.diagnosticsOf(URI, 1)).diagnostics.length).toBeGreaterThan(0);
  });

  test("a part of it that breaks down is a finding and is logged", async () => {
    const service = createFrameService(undefined, {
      evaluate: () => {
        throw new Error("no such beam");
      },
    });
    const session = await started(service);
    await session.open(URI, SHED);
    const { diagnostics } = await session.diagnosticsOf(URI, 1);
    expect(diagnostics).toMatchObject([{ code: "check-failed", severity: 1 }]);
    expect(diagnostics[0]?.message).toContain("checking the frame");
    expect(diagnostics[0]?.message).toContain("no such beam");
    expect(await session.until(() => session.log[0], "the log")).toContain("no such beam");
  });

  test("a sound frame logs nothing", async () => {
    const session = await started();
    await session.open(URI, SHED);
    await session.diagnosticsOf(URI, 1);
    expect(session.log).toEqual([]);
  });
});
