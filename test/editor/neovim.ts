/** Debian's Neovim without a window, set up by the very lines that README.md shows. */
import type { ChildProcess } from "node:child_process";
import { execFile } from "node:child_process";
import { existsSync } from "node:fs";
import { mkdtemp, readFile, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { promisify } from "node:util";
import { ROOT } from "../../client/start/installed.ts";
import { endGroup, startGroup } from "../../client/start/process-group.ts";

const NVIM = "/usr/bin/nvim";
const SET_UP = /^```lua\n((?:.*\n)*?)```$/gm;
/** As README.md writes the folder in which this repository lies. */
const ANY_FOLDER = "/path/to/bentwright";
const PATIENCE = 30_000;
const LOOK_EVERY = 50;

/** What is not there and without which there is no second editor. */
export function missingForNeovim(): readonly string[] {
  return existsSync(NVIM) ? [] : [`Neovim (${NVIM})`];
}

/** The lines for Neovim in README.md, as they stand there. Throws unless there is one such piece of Lua. */
export async function setUpInReadme(): Promise<string> {
  const readme = await readFile(join(ROOT, "README.md"), "utf8");
  const pieces = [...readme.matchAll(SET_UP)].map(([, lines = ""]) => lines);
  const [lines = ""] = pieces;
  if (pieces.length !== 1 || !lines.includes(ANY_FOLDER))
    throw new Error(`README.md must have one piece of Lua, with ${ANY_FOLDER}, not ${pieces.length}.`);
  return lines;
}

/** A finding as Neovim keeps it: lines from 0, columns in bytes from 0. */
export interface Finding {
  readonly code: string;
  readonly lnum: number;
  readonly col: number;
  readonly end_col: number;
}

export class Neovim {
  readonly #home: string;
  readonly #program: ChildProcess;

  private constructor(home: string, program: ChildProcess) {
    this.#home = home;
    this.#program = program;
  }

  /** Opens a text as a file of that name; no settings of this machine have a say. */
  static async open(name: string, text: string): Promise<Neovim> {
    const home = await mkdtemp(join(tmpdir(), "bentwright-nvim-"));
    await writeFile(join(home, "init.lua"), (await setUpInReadme()).replaceAll(ANY_FOLDER, ROOT));
    await writeFile(join(home, name), text);
    const args = ["--headless", "--clean", "-n", "-u", "init.lua", "--listen", join(home, "socket"), name];
    const env = {
      ...process.env,
      HOME: home,
      XDG_STATE_HOME: home,
      XDG_DATA_HOME: home,
      XDG_CONFIG_HOME: home,
    };
    const neovim = new Neovim(home, startGroup(NVIM, args, { cwd: home, env, stdio: "ignore" }));
    await neovim.until(async () => existsSync(join(home, "socket")), "Neovim to start");
    return neovim;
  }

  async close(): Promise<void> {
    await endGroup(this.#program);
    await rm(this.#home, { recursive: true, force: true, maxRetries: 5 });
  }

  /** The value of an expression in Lua. It comes in a file: what Neovim says without a window it cuts to its screen. */
  async value<T>(lua: string): Promise<T> {
    const answer = join(this.#home, "answer.json");
    const quoted = `vim.fn.writefile({ vim.json.encode(${lua}) }, "${answer}")`.replaceAll("'", "''");
    await this.#ask("--remote-expr", `luaeval('${quoted}')`);
    return JSON.parse(await readFile(answer, "utf8")) as T;
  }

  /** Runs statements of Lua. */
  async run(lua: string): Promise<void> {
    await this.value(`(function() ${lua} end)() or true`);
  }

  /** Types keys, written as in Neovim's own mappings: `<Esc>`, `<C-x>`. */
  async type(keys: string): Promise<void> {
    await this.#ask("--remote-send", keys);
  }

  /** Puts the cursor on the first place that holds the text. */
  async goTo(text: string): Promise<void> {
    const lines = await this.lines();
    const line = lines.findIndex((one) => one.includes(text));
    if (line < 0) throw new Error(`“${text}” does not stand in\n${lines.join("\n")}`);
    const column = Buffer.byteLength(lines[line]?.split(text)[0] ?? "");
    await this.run(`vim.api.nvim_win_set_cursor(0, {${line + 1}, ${column}})`);
  }

  lines(): Promise<readonly string[]> {
    return this.value("vim.api.nvim_buf_get_lines(0, 0, -1, true)");
  }

  /** The findings, once they are as told. */
  findings(hold: (findings: readonly Finding[]) => boolean, what: string): Promise<readonly Finding[]> {
    return this.until(async () => {
      const found = await this.value<readonly Finding[]>(
        "vim.tbl_map(function(d) return { code = d.code, lnum = d.lnum, col = d.col, end_col = d.end_col } end, vim.diagnostic.get(0))",
      );
      return hold(found) && found;
    }, what);
  }

  /** The lines of the window that floats over the text, once there is one. */
  floating(): Promise<readonly string[]> {
    return this.until(async () => {
      const windows = await this.value<readonly (readonly string[])[]>(
        "vim.tbl_map(function(w) return vim.api.nvim_win_get_config(w).relative ~= '' and vim.api.nvim_buf_get_lines(vim.api.nvim_win_get_buf(w), 0, -1, true) or {} end, vim.api.nvim_list_wins())",
      );
      return windows.find((lines) => lines.length > 0);
    }, "a window with the hover");
  }

  /** Asks again and again until there is an answer. */
  async until<T>(ask: () => Promise<T | false | undefined>, what: string): Promise<T> {
    const end = Date.now() + PATIENCE;
    for (;;) {
      const answer = await ask();
      if (answer !== undefined && answer !== false) return answer;
      if (Date.now() > end) throw new Error(`Waited ${PATIENCE} ms in vain for ${what}.`);
      await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
    }
  }

  async #ask(how: string, what: string): Promise<void> {
    const args = ["--server", join(this.#home, "socket"), how, what];
    await promisify(execFile)(NVIM, args, { timeout: PATIENCE });
  }
}
