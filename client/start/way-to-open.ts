/** How `npm start` opens the sample: decided from what this machine is, without touching it. */
import { posix, win32 } from "node:path";

export interface Machine {
  readonly platform: NodeJS.Platform;
  readonly arch: NodeJS.Architecture;
  /** whether programs built for the usual C library of Linux run here: those of the browser-served editor are */
  readonly glibc: boolean;
  /** whether somebody sits at a terminal and can press Ctrl-C */
  readonly terminal: boolean;
  /** the variable CI */
  readonly ci: string | undefined;
  /** whether VS Code's `code` is on the PATH */
  readonly vsCode: boolean;
}

/** What was asked for on the command line; `any` when nothing was. */
export type Wish = "any" | "browser" | "no-editor";

/** An installed VS Code; an editor served to a browser; words on how to install the extension. */
export type Way = "vs-code" | "browser" | "words";

export interface Plan {
  /** tried in this order until one works; none: stop before the editor */
  readonly ways: readonly Way[];
  /** why there is no editor, or none served to a browser; empty when nothing is left out */
  readonly why: string;
}

/** The wish in the arguments of `npm start --`, or the argument that is not known. */
export function readWish(args: readonly string[]): Wish | { readonly unknown: string } {
  let wish: Wish = "any";
  for (const arg of args) {
    if (arg === "--no-editor") wish = "no-editor";
    else if (arg === "--browser") wish = "browser";
    else return { unknown: arg };
  }
  return wish;
}

/** Without a terminal nothing may stay that only Ctrl-C ends, unless it was asked for by name. */
export function planToOpen(machine: Machine, wish: Wish): Plan {
  if (wish === "no-editor") return { ways: [], why: "--no-editor was given" };
  if (wish === "any" && isSet(machine.ci)) return { ways: [], why: "CI is set" };
  const unfit = unfitForBrowser(machine);
  const stays = wish === "browser" || machine.terminal;
  const vsCode: Way[] = wish === "any" && machine.vsCode ? ["vs-code"] : [];
  if (unfit !== "") return { ways: [...vsCode, "words"], why: unfit };
  if (stays) return { ways: [...vsCode, "browser", "words"], why: "" };
  return {
    ways: vsCode,
    why: "there is no terminal to end it from (npm start -- --browser opens it all the same)",
  };
}

function unfitForBrowser({ platform, arch, glibc }: Machine): string {
  if (platform !== "linux" || arch !== "x64") {
    return `the editor for the browser is there for Linux on x64 only, and this is ${platform} on ${arch}`;
  }
  return glibc ? "" : "the editor for the browser needs the GNU C library, and this Linux has another";
}

function isSet(ci: string | undefined): boolean {
  return ci !== undefined && !["", "0", "false"].includes(ci.toLowerCase());
}

/**
 * The first file of a program on the PATH, as a shell would find it; undefined where there is none.
 * @param isFile whether a file of this name can be run
 */
export function findOnPath(
  name: string,
  env: Readonly<Record<string, string | undefined>>,
  platform: NodeJS.Platform,
  isFile: (file: string) => boolean,
): string | undefined {
  const windows = platform === "win32";
  const path = windows ? win32 : posix;
  const endings = windows ? (env.PATHEXT ?? ".COM;.EXE;.BAT;.CMD").split(";") : [""];
  for (const folder of (env.PATH ?? "").split(path.delimiter)) {
    if (folder === "") continue;
    for (const ending of endings) {
      const file = path.join(folder, name + ending.toLowerCase());
      if (isFile(file)) return file;
    }
  }
  return undefined;
}
