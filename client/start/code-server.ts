/** Starts and ends one code-server: a full editor with a real extension host, for this machine only. */
import { type ChildProcess, execFile } from "node:child_process";
import { once } from "node:events";
import { mkdir, writeFile } from "node:fs/promises";
import { createServer } from "node:net";
import { join } from "node:path";
import { promisify } from "node:util";
import { CODE_SERVER, NODE, ROOT } from "./installed.ts";
import { endGroup, startGroup } from "./process-group.ts";

const START_TIMEOUT = 60_000;

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

export interface CodeServerOptions {
  /** folder for settings and all else that the editor keeps; it is the editor's home */
  readonly home: string;
  /** variables for the editor beside those of this process */
  readonly env?: Readonly<Record<string, string>>;
  /** a packed extension to install before it starts; then nothing is loaded from our sources */
  readonly vsix?: string;
}

export interface CodeServer {
  /**
   * Address of a window with our extension, loaded from its sources unless it was installed.
   * @param folder the folder that it shows; undefined: none
   * @param paths what else the window is told, each with a file or folder as its value: `openFile`, `extensionTestsPath`
   */
  windowUrl(folder: string | undefined, paths?: Readonly<Record<string, string>>): string;
  /** settled when the server has ended, with why */
  readonly ended: Promise<string>;
  /** Ends the server and its helpers, and waits for it. */
  stop(): Promise<void>;
}

/** The user's settings of an editor with that home. */
export function settingsFile(home: string): string {
  return join(home, "data/User/settings.json");
}

/** Starts code-server on a free port of 127.0.0.1. Throws when it does not listen within a minute. */
export async function startCodeServer({ home, env = {}, vsix }: CodeServerOptions): Promise<CodeServer> {
  await mkdir(join(home, "data/User"), { recursive: true });
  // Kept where it is there: a user may have changed it.
  await writeFile(settingsFile(home), JSON.stringify(SETTINGS, null, 2), {
    flag: "wx",
  }).catch(() => undefined);

  const surroundings = { cwd: home, env: { ...outerEnvironment(), ...env, HOME: home } };
  if (vsix !== undefined)
    await promisify(execFile)(
      NODE,
      [CODE_SERVER, ...placesIn(home), "--install-extension", vsix],
      surroundings,
    );
  const port = await freePort();
  const child = startGroup(NODE, codeServerArguments(home, port), {
    ...surroundings,
    stdio: ["ignore", "pipe", "pipe"],
  });
  const ended = new Promise<string>((resolve) => {
    child.on("error", (error) => resolve(error.message));
    child.on("exit", (code, signal) => resolve(`it ended with ${signal ?? code}`));
  });
  await untilListening(child, ended).catch(async (error: unknown) => {
    await endGroup(child);
    throw error;
  });

  return {
    ended,
    stop: () => endGroup(child),
    windowUrl: (folder, paths = {}) => {
      const remote = `vscode-remote://127.0.0.1:${port}`;
      const sources = vsix === undefined ? { extensionDevelopmentPath: ROOT } : {};
      const payload = [
        ["skipWelcome", "true"],
        ...Object.entries({ ...sources, ...paths }).map(([key, path]) => [key, `${remote}${path}`]),
      ];
      const shown: Record<string, string> = folder === undefined ? { ew: "true" } : { folder };
      return `http://127.0.0.1:${port}/?${new URLSearchParams({ ...shown, payload: JSON.stringify(payload) })}`;
    },
  };
}

function codeServerArguments(home: string, port: number): string[] {
  return [
    CODE_SERVER,
    "--auth=none",
    `--bind-addr=127.0.0.1:${port}`,
    ...placesIn(home),
    "--disable-telemetry",
    "--disable-update-check",
    "--disable-getting-started-override",
    "--ignore-last-opened",
    // A released editor takes an extension from a folder only when it is under test.
    "--vscode-option=enable-smoke-test-driver",
  ];
}

function placesIn(home: string): string[] {
  return [`--user-data-dir=${join(home, "data")}`, `--extensions-dir=${join(home, "extensions")}`];
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

/** Also keeps reading what it says afterwards: a full pipe would stop it. */
function untilListening(child: ChildProcess, ended: Promise<string>): Promise<void> {
  return new Promise((resolve, reject) => {
    let said = "";
    let listening = false;
    const fail = (why: string) => {
      clearTimeout(timer);
      reject(new Error(`code-server does not run: ${why}.\n${said}`));
    };
    const timer = setTimeout(() => fail("it did not start in time"), START_TIMEOUT);
    const hear = (chunk: Buffer) => {
      if (listening) return;
      said += chunk.toString();
      if (!said.includes("HTTP server listening")) return;
      listening = true;
      clearTimeout(timer);
      resolve();
    };
    child.stdout?.on("data", hear);
    child.stderr?.on("data", hear);
    ended.then(fail);
  });
}
