/** Starts and ends one code-server: a full editor with a real extension host, on this machine only. */
import { type ChildProcess, spawn } from "node:child_process";
import { once } from "node:events";
import { cp, mkdir, mkdtemp, rm, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { CODE_SERVER, NODE, needEditor, ROOT } from "./installed.ts";

const START_TIMEOUT = 60_000;
const STOP_TIMEOUT = 5_000;

const SETTINGS = {
  "workbench.startupEditor": "none",
  "security.workspace.trust.enabled": false,
  "extensions.autoUpdate": false,
  "extensions.autoCheckUpdates": false,
  "telemetry.telemetryLevel": "off",
  "chat.disableAIFeatures": true,
  "workbench.secondarySideBar.defaultVisibility": "hidden",
  "window.autoDetectColorScheme": false,
  "files.autoSave": "off",
};

export interface CodeServer {
  /** the folder that is open in the editor: a copy of the samples, free to be edited */
  readonly folder: string;
  /** where the tests inside the extension host write their results */
  readonly resultsFile: string;
  /** address of a window with our extension loaded from its sources */
  readonly windowUrl: string;
  /** address of a window that runs the tests inside its extension host */
  readonly suiteUrl: string;
  stop(): Promise<void>;
}

export async function startCodeServer(): Promise<CodeServer> {
  needEditor();
  const home = await mkdtemp(join(tmpdir(), "bentwright-editor-"));
  const folder = join(home, "frames");
  const resultsFile = join(home, "suite-results.json");
  await mkdir(join(home, "data/User"), { recursive: true });
  await writeFile(join(home, "data/User/settings.json"), JSON.stringify(SETTINGS, null, 2));
  await cp(join(ROOT, "samples"), folder, { recursive: true });

  const port = await freePort();
  const child = spawn(NODE, codeServerArguments(home, port), {
    cwd: home,
    // A group of its own, so that its helpers end with it.
    detached: true,
    env: { ...outerEnvironment(), HOME: home, BENTWRIGHT_TEST_RESULTS: resultsFile },
    stdio: ["ignore", "pipe", "pipe"],
  });
  const stop = async () => {
    await endGroup(child);
    await rm(home, { recursive: true, force: true, maxRetries: 5 });
  };
  await untilListening(child).catch(async (error: unknown) => {
    await stop();
    throw error;
  });

  const url = (...payload: [string, string][]) => {
    const remote = `vscode-remote://127.0.0.1:${port}`;
    const all = [
      ["skipWelcome", "true"],
      ["extensionDevelopmentPath", `${remote}${ROOT}`],
    ];
    for (const [key, path] of payload) all.push([key, `${remote}${path}`]);
    const query = new URLSearchParams({ folder, payload: JSON.stringify(all) });
    return `http://127.0.0.1:${port}/?${query}`;
  };
  return {
    folder,
    resultsFile,
    windowUrl: url(),
    suiteUrl: url(["extensionTestsPath", join(ROOT, "out/test-suite.js")]),
    stop,
  };
}

function codeServerArguments(home: string, port: number): string[] {
  return [
    CODE_SERVER,
    "--auth=none",
    `--bind-addr=127.0.0.1:${port}`,
    `--user-data-dir=${join(home, "data")}`,
    `--extensions-dir=${join(home, "extensions")}`,
    "--disable-telemetry",
    "--disable-update-check",
    "--disable-workspace-trust",
    "--disable-getting-started-override",
    "--ignore-last-opened",
    // A released editor takes an extension from a folder only when it is under test.
    "--vscode-option=enable-smoke-test-driver",
  ];
}

/** Without what an editor around us has set: code-server would take it for its own window. */
function outerEnvironment(): NodeJS.ProcessEnv {
  return Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(VSCODE_|NODE_OPTIONS|VITEST)/.test(name)),
  );
}

async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const address = server.address();
  server.close();
  if (address === null || typeof address === "string") throw new Error("No port is free.");
  return address.port;
}

function untilListening(child: ChildProcess): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = "";
    const fail = (why: string) => reject(new Error(`code-server ${why}:\n${said}`));
    const timer = setTimeout(() => fail("did not start in time"), START_TIMEOUT);
    const hear = (chunk: Buffer) => {
      said += chunk.toString();
      if (!said.includes("HTTP server listening")) return;
      clearTimeout(timer);
      resolve();
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    child.on("error", (error) => fail(error.message));
    child.on("exit", (code) => fail(`ended with ${code}`));
  });
}

async function endGroup(child: ChildProcess): Promise<void> {
  const { pid } = child;
  if (pid === undefined || child.exitCode !== null) return;
  const ended = once(child, "exit");
  process.kill(-pid, "SIGTERM");
  const timer = setTimeout(() => process.kill(-pid, "SIGKILL"), STOP_TIMEOUT);
  await ended;
  clearTimeout(timer);
}
