/** Nothing that we ship reaches for a network: what the bundles could, and what they do. `npm test` builds them first. */
import { execFile, type SpawnOptions, spawn } from "node:child_process";
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { transform } from "esbuild";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { ROOT } from "../../client/start/installed.ts";
import { Session } from "../server/session.ts";

const DIST = join(ROOT, "dist");
const HOOK = join(import.meta.dirname, "no-network.cjs");
const run = promisify(execFile);

describe("the bundles", () => {
  /**
   * The parts of Node that each may use. `net` comes with the libraries of the language server protocol, for ways to
   * connect that we do not go: our client asks for the channel between processes, and the server takes no other
   * argument (test/server/process.test.ts).
   */
  const PARTS: Readonly<Record<string, readonly string[]>> = {
    "extension.js": ["child_process", "crypto", "fs", "net", "os", "path", "util"],
    "server.js": ["buffer", "child_process", "crypto", "fs", "net", "os", "path", "process", "url", "util"],
    "cli.js": ["buffer", "fs", "process", "util"],
    "preview.js": [],
    "preview.css": [],
  };
  /** Addresses that name a standard and are never asked for. */
  const NAMES: ReadonlySet<string> = new Set([
    "http://www.w3.org/2000/svg",
    "https://json-schema.org/draft/2020-12/schema",
  ]);
  const REACHES =
    /(?<![\w.])(fetch|importScripts)\(|\b(XMLHttpRequest|WebSocket|EventSource|RTCPeerConnection|sendBeacon|openExternal|createTelemetryLogger|TelemetryReporter|logEvent\(|logUsage|logError)\b|@import|url\(\s*["']?\w+:/g;
  /** What the protocol's libraries do when a server asks for it; ours does not (the test of our sources below). */
  const NEVER_ASKED: ReadonlySet<string> = new Set(["logEvent(", "openExternal"]);

  const source = (file: string) => readFileSync(join(DIST, file), "utf8");
  /** As it runs, without comments. */
  const plain = async (file: string) =>
    (
      await transform(source(file), {
        minifyWhitespace: true,
        legalComments: "none",
        loader: file.endsWith(".css") ? "css" : "js",
      })
    ).code;

  it("are the ones that are looked at here", () => {
    const shipped = readdirSync(DIST).filter((file) => !file.endsWith(".map"));
    expect(shipped.sort()).toEqual(Object.keys(PARTS).sort());
  });

  it.each(Object.entries(PARTS))(
    "%s uses no part of Node beyond these, and no address",
    async (file, parts) => {
      const code = await plain(file);
      const used = [...code.matchAll(/(?:require|import)\("(?:node:)?([^"]+)"\)/g)].map(
        ([, name = ""]) => name,
      );
      expect([...new Set(used)].filter((name) => name !== "vscode").sort()).toEqual(parts);
      const addresses = [...code.matchAll(/\b(?:https?|wss?|ftp):\/\/[^"'`\s\\<>)]*/g)].map(
        ([address]) => address,
      );
      expect(addresses.filter((address) => !NAMES.has(address))).toEqual([]);
      const reaches = [...code.matchAll(REACHES)].map(([reach]) => reach);
      expect(reaches.filter((reach) => !NEVER_ASKED.has(reach))).toEqual([]);
    },
  );

  it("neither send telemetry nor open addresses: no source of ours speaks of it", () => {
    const files = ["server", "client"].flatMap((folder) =>
      readdirSync(join(ROOT, folder), { recursive: true, encoding: "utf8" }).map((file) =>
        join(folder, file),
      ),
    );
    const ours = files.filter((file) => file.endsWith(".ts") && !file.startsWith(join("client", "start")));
    expect(ours.length).toBeGreaterThan(100);
    const speaks = ours.filter((file) =>
      /telemetry|logEvent|showDocument|openExternal/i.test(readFileSync(join(ROOT, file), "utf8")),
    );
    expect(speaks).toEqual([]);
  });
});

describe("while it runs", () => {
  let home: string;
  let options: SpawnOptions;
  /** What was reached for. */
  const reached = () => readFileSync(join(home, "log"), "utf8");

  beforeEach(() => {
    home = mkdtempSync(join(tmpdir(), "bentwright-network-"));
    writeFileSync(join(home, "log"), "");
    options = { cwd: ROOT, env: { ...process.env, BENTWRIGHT_NETWORK_LOG: join(home, "log") } };
  });
  afterEach(() => rmSync(home, { recursive: true, force: true }));

  it.each([
    ["net.connect", 'require("net").connect(9)'],
    ["net.listen", 'require("net").createServer().listen(0)'],
    ["http.get", 'require("http").get("http://127.0.0.1:9")'],
    ["http.request", 'require("https").request("https://127.0.0.1:9")'],
    ["net.connect", 'new (require("http").Agent)().createConnection({ port: 9 })'],
    ["dns.lookup", 'require("dns").promises.lookup("localhost")'],
    ["dgram.send", 'require("dgram").createSocket("udp4").send("x", 9)'],
    ["fetch", 'fetch("http://127.0.0.1:9")'],
  ])("the watch sees %s", async (name, code) => {
    const reaching = run(process.execPath, ["--require", HOOK, "--eval", code], {
      ...options,
      timeout: 20_000,
    });
    await expect(reaching).rejects.toThrow("there is no network here");
    expect(reached()).toMatch(new RegExp(`^${name.replace(".", "\\.")}\n`));
  });

  const ARCH = "samples/garden-arch.frame.yaml";
  it.each([
    ["check", ARCH],
    ["check", "--format", "json", ARCH],
    ["draw", ARCH, "--view", "front", "--layer", "moment"],
    ["layout", ARCH],
    ["joint", ARCH, "post-head@A1"],
    ["forces", ARCH],
    ["model", ARCH],
    ["hover", `${ARCH}:18:5`],
    ["explain", "tenon-thin"],
  ])("the command line does not: %s %s", async (...args) => {
    await run(process.execPath, ["--require", HOOK, "dist/cli.js", ...args], {
      ...options,
      maxBuffer: 2 ** 26,
    });
    expect(reached()).toBe("");
  });

  it("the server does not: findings, hover, hints, drawings, a fix that is worked out", async () => {
    const child = spawn(process.execPath, ["--require", HOOK, "dist/server.js", "--stdio"], {
      ...options,
      stdio: ["pipe", "pipe", "inherit"],
    });
    const ended = new Promise((resolve) => child.once("exit", resolve));
    const session = new Session(child.stdout!, child.stdin!);
    const codeAction = {
      codeActionLiteralSupport: { codeActionKind: { valueSet: [] } },
      dataSupport: true,
      resolveSupport: { properties: ["edit"] },
    };
    await session.start({ textDocument: { codeAction } }, { pictures: true });
    const uri = "file:///pavilion.frame.yaml";
    const text = readFileSync(join(ROOT, "samples/cider-press-pavilion.frame.yaml"), "utf8");
    const small = text.replace(/(?<=kind: tie, section: )[^,]+/, "6x6");
    const line = small.split("\n").findIndex((one) => one.includes("kind: tie, section: 6x6"));
    const at = { line, character: (small.split("\n")[line] ?? "").indexOf("6x6") };
    await session.open(uri, small);
    const { diagnostics } = await session.diagnosticsOf(uri, 1);
    expect(diagnostics.map(({ code }) => code)).toContain("timber-overstressed");

    const textDocument = { uri };
    const range = { start: { line: 0, character: 0 }, end: { line: 60, character: 0 } };
    const answers = [
      await session.request("textDocument/hover", { textDocument, position: { ...at, character: 3 } }),
      await session.request("textDocument/inlayHint", { textDocument, range }),
      await session.request("textDocument/codeLens", { textDocument }),
      await session.request("bentwright/drawing", { uri, view: "front", layer: "moment", case: "worst" }),
      await session.request("bentwright/joint-drawing", { uri, id: "tie-end@A1" }),
      await session.request("bentwright/at-cursor", { uri, position: at }),
    ];
    for (const answer of answers) expect(answer).toBeTruthy();
    const actions = await session.request<{ title: string }[]>("textDocument/codeAction", {
      textDocument,
      range: { start: at, end: at },
      context: { diagnostics },
    });
    const size = actions.find(({ title }) => title.startsWith("Size this timber"));
    expect(await session.request("codeAction/resolve", size)).toHaveProperty("edit");
    await session.request("shutdown", undefined);
    await session.connection.sendNotification("exit");
    expect(await ended).toBe(0);
    expect(reached()).toBe("");
  });
});
