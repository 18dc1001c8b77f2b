/**
 * `npm start`: a first look. Builds, checks two samples, draws one, and opens it in an editor with the extension
 * loaded. `--no-editor` stops before the editor; `--browser` takes the browser-served editor also where VS Code is.
 */
import { spawnSync } from "node:child_process";
import { once } from "node:events";
import { accessSync, constants, mkdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { type CodeServer, startCodeServer } from "./code-server.ts";
import { EDITOR, isEditorInstalled, ROOT } from "./installed.ts";
import { endGroup, startGroup } from "./process-group.ts";
import { findOnPath, type Machine, planToOpen, readWish, type Wish } from "./way-to-open.ts";

const SAMPLE = "samples/cider-press-pavilion.frame.yaml";
const WRONG = "samples/wrong-on-purpose.frame.yaml";
const DRAWING = "out/pavilion-front.svg";

const say = (words: string) => process.stdout.write(`${words}\n`);

// Ctrl-C also ends a program that reads what is said here; the editor must still be ended in order.
process.stdout.on("error", () => undefined);
process.chdir(ROOT);
const wish = readWish(process.argv.slice(2));
if (typeof wish === "string") {
  process.exitCode = (await look()) ? await open(wish) : 1;
} else {
  say(`npm start knows --no-editor and --browser, not ${wish.unknown}.`);
  process.exitCode = 2;
}

/** False when the program could not be built, or did not run to its end. */
async function look(): Promise<boolean> {
  say("Building …");
  if (run("esbuild.mjs") !== 0) return false;
  mkdirSync(join(ROOT, "out"), { recursive: true });
  // 1 says that there are findings; those of the second sample are there to be seen.
  if (bentwright("check", SAMPLE) > 1 || bentwright("check", WRONG) > 1) return false;
  if (bentwright("draw", SAMPLE, "--view", "front", "-o", DRAWING) !== 0) return false;
  say(`\nThe front elevation is in ${join(ROOT, DRAWING)}`);
  return true;
}

function bentwright(...args: string[]): number {
  say(`\n$ npx bentwright ${args.join(" ")}`);
  return run("dist/cli.js", ...args);
}

function run(script: string, ...args: string[]): number {
  return spawnSync(process.execPath, [script, ...args], { stdio: "inherit" }).status ?? 2;
}

/** Opens the sample in the first way that works; the exit code. */
async function open(asked: Wish): Promise<number> {
  const code = findOnPath("code", process.env, process.platform, isProgram);
  const plan = planToOpen(thisMachine(code !== undefined), asked);
  if (plan.ways.length === 0) say(`\nNo editor is opened: ${plan.why}.`);
  let exit = 0;
  for (const way of plan.ways) {
    if (way === "vs-code" && code !== undefined) {
      if (openInVsCode(code)) return 0;
      exit = 1;
    }
    if (way === "browser") {
      const done = await serve();
      if (done !== "not served") return done === "stopped" ? 0 : 1;
      exit = 1;
    }
    if (way === "words") sayHowToInstall(plan.why);
  }
  return exit;
}

function thisMachine(vsCode: boolean): Machine {
  return {
    platform: process.platform,
    arch: process.arch,
    glibc: hasGlibc(),
    terminal: Boolean(process.stdin.isTTY || process.stdout.isTTY),
    ci: process.env.CI,
    vsCode,
  };
}

function hasGlibc(): boolean {
  const report: unknown = process.report.getReport();
  const header =
    typeof report === "object" && report !== null && "header" in report ? report.header : undefined;
  return typeof header === "object" && header !== null && "glibcVersionRuntime" in header;
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return statSync(file).isFile();
  } catch {
    return false;
  }
}

function openInVsCode(code: string): boolean {
  say("\nOpening the sample in VS Code, with the extension loaded …");
  // On Windows `code` is a script that only a shell runs, and a shell wants names with blanks in quotes.
  const shell = process.platform === "win32";
  const quote = (word: string) => (shell ? `"${word}"` : word);
  const { status, error } = spawnSync(
    quote(code),
    [`--extensionDevelopmentPath=${ROOT}`, join(ROOT, SAMPLE)].map(quote),
    { stdio: "inherit", shell },
  );
  if (status !== 0) say(`VS Code did not open: ${error?.message ?? `code ended with ${status}`}.`);
  return status === 0;
}

function sayHowToInstall(why: string): void {
  if (why !== "") say(`\nNo editor is opened: ${why}.`);
  say(`\nTo have Bentwright in your own VS Code:
  npm run package
  code --install-extension ${vsixName()}    (or “Install from VSIX…” in its Extensions view)
then open ${SAMPLE}.`);
}

function vsixName(): string {
  const { name, version } = JSON.parse(readFileSync(join(ROOT, "package.json"), "utf8")) as Record<
    string,
    string
  >;
  return `${name}-${version}.vsix`;
}

/** Serves an editor until Ctrl-C, or until it ends by itself. */
async function serve(): Promise<"stopped" | "ended" | "not served"> {
  const stop = new AbortController();
  // All stay listened to: a second Ctrl-C must not leave behind what the first is about to end.
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.on(signal, () => stop.abort());
  // npm and its shell can be ended without us; nobody could then end the editor.
  const parent = process.ppid;
  const watch = setInterval(() => process.ppid === parent || stop.abort(), 500);
  watch.unref();
  const stopped = once(stop.signal, "abort").then(() => "stopped" as const);

  if (!(await setUp(stop.signal))) return stop.signal.aborted ? "stopped" : "not served";
  let server: CodeServer;
  try {
    server = await startCodeServer({ home: join(EDITOR, "user") });
  } catch (error) {
    say(error instanceof Error ? error.message : String(error));
    return "not served";
  }
  try {
    if (!stop.signal.aborted) {
      const file = join(ROOT, SAMPLE);
      const url = server.windowUrl(join(ROOT, "samples"), { openFile: file });
      say(`\nThe sample opens in the editor at this address:\n\n  ${url}\n
Everyone on this machine can reach it, and nobody else. Ctrl-C ends it.`);
      showInBrowser(url);
    }
    const done = await Promise.race([stopped, server.ended]);
    if (done === "stopped") say("\nEnding the editor …");
    else say(`\nThe editor is gone: ${done}.`);
    return done === "stopped" ? "stopped" : "ended";
  } finally {
    await server.stop();
  }
}

/** Installs the editor where it is not there; false when that failed or was broken off. */
async function setUp(stop: AbortSignal): Promise<boolean> {
  if (!isEditorInstalled()) {
    say(
      `\nSetting up an editor for the browser in ${relative(ROOT, EDITOR)}, once; this takes some minutes.`,
    );
  }
  const child = startGroup("bash", [join(ROOT, "client/start/install-editor.sh")], {
    stdio: ["ignore", "inherit", "inherit"],
  });
  const end = () => void endGroup(child);
  stop.addEventListener("abort", end, { once: true });
  const why = await new Promise<string>((resolve) => {
    child.on("error", (error) => resolve(error.message));
    child.on("exit", (code) => resolve(code === 0 ? "" : `install-editor.sh ended with ${code}, see above`));
  });
  stop.removeEventListener("abort", end);
  if (stop.aborted) await endGroup(child);
  else if (why !== "") say(`The editor could not be set up: ${why}.`);
  return why === "" && !stop.aborted;
}

/** Only on a desktop; elsewhere the address alone must do. */
function showInBrowser(url: string): void {
  if (!process.env.DISPLAY && !process.env.WAYLAND_DISPLAY) return;
  const opener = findOnPath("xdg-open", process.env, process.platform, isProgram);
  if (opener === undefined) return;
  // In a group of its own: the browser is the user's, and stays when the editor ends.
  const child = startGroup(opener, [url], { stdio: "ignore" });
  child.on("error", () => undefined);
  child.unref();
}
