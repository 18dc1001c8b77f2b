/** The bundled server, as any editor starts it. `npm test` builds it first. */
import { spawn } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { SHED } from "../shed.ts";
import { asProcess } from "./session.ts";

const URI = "file:///shed.frame.yaml";

function ended(child: ReturnType<typeof spawn>): Promise<number | null> {
  return child.exitCode !== null
    ? Promise.resolve(child.exitCode)
    : new Promise((resolve) => child.once("exit", resolve));
}

test("the bundle is built", () => expect(existsSync("dist/server.js")).toBe(true));

describe("over stdio", () => {
  test("finds, answers and ends with 0", async () => {
    const { session, process: child } = asProcess("--stdio");
    await session.start();
    await session.open(URI, SHED.replace("8x10", "8x"));
    const { diagnostics } = await session.diagnosticsOf(URI, 1);
    expect(diagnostics.map(({ code }) => code)).toContain("unreadable-quantity");
    expect(await session.request("bentwright/drawing", { uri: URI, view: "front" })).toMatchObject({
      svg: expect.stringContaining("<svg"),
    });
    await session.request("shutdown", undefined);
    await session.connection.sendNotification("exit");
    expect(await ended(child)).toBe(0);
  });

  test("links each finding to its chapter in the reference that is installed with it", async () => {
    const { session, process: child } = asProcess("--stdio");
    await session.start({ textDocument: { publishDiagnostics: { codeDescriptionSupport: true } } });
    await session.open(URI, SHED.replace("8x10", "8x"));
    const { diagnostics } = await session.diagnosticsOf(URI, 1);
    const { codeDescription } = diagnostics.find(({ code }) => code === "unreadable-quantity") ?? {};
    const [file = "", chapter] = codeDescription?.href.split("#") ?? [];
    expect(readFileSync(new URL(file), "utf8")).toContain(`\n### ${chapter}\n`);
    expect(chapter).toBe("unreadable-quantity");
    session.input.end();
    await ended(child);
  });

  test("ends with 1 when the editor is gone", async () => {
    const { session, process: child } = asProcess("--stdio");
    await session.start();
    session.input.end();
    expect(await ended(child)).toBe(1);
  });

  test("goes on after a message that is no JSON", async () => {
    const { session, process: child } = asProcess("--stdio");
    await session.start();
    session.input.write("Content-Length: 5\r\n\r\n{oops");
    await session.open(URI, SHED);
    expect((await session.diagnosticsOf(URI, 1)).version).toBe(1);
    await session.request("shutdown", undefined);
    await session.connection.sendNotification("exit");
    await ended(child);
  });
});

test.each([
  [[]],
  [["--help"]],
  [["--node-ipc"]],
  [["--stdio", "--node-ipc"]],
  [["--socket=9"]],
  [["--socket", "9", "--stdio"]],
  [["--pipe=p", "--stdio"]],
])("called wrongly (%j) it says how, and ends with 2", async (args) => {
  const child = spawn(process.execPath, ["dist/server.js", ...args], { stdio: ["ignore", "pipe", "pipe"] });
  let said = "";
  child.stderr.on("data", (piece) => {
    said += piece;
  });
  expect(await ended(child)).toBe(2);
  expect(said).toContain("server.js --stdio");
});

test("over the channel of a parent process", async () => {
  const child = spawn(process.execPath, ["dist/server.js", "--node-ipc"], {
    stdio: ["ignore", "inherit", "inherit", "ipc"],
  });
  const answer = new Promise<unknown>((resolve) => child.once("message", resolve));
  child.send({
    jsonrpc: "2.0",
    id: 1,
    method: "initialize",
    params: { processId: null, rootUri: null, capabilities: {} },
  });
  expect(await answer).toMatchObject({ id: 1, result: { capabilities: { hoverProvider: true } } });
  child.disconnect();
  expect(await ended(child)).toBe(1);
});
