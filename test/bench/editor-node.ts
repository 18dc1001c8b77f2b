/**
 * The server runs in the editor's own Node, not in that of the shell, and times differ by half: a bench measures in the
 * former where it is installed.
 */
import { spawnSync } from "node:child_process";
import { realpathSync } from "node:fs";
import { isEditorInstalled, NODE } from "../../client/start/installed.ts";

/** A program knows itself by its real path: clones that share one editor reach it by a link. */
const isEditorNode = (): boolean => isEditorInstalled() && process.execPath === realpathSync(NODE);

/** Runs the same program in the editor's Node and ends with it; goes on where it runs in it, or where there is none. */
export function inEditorNode(): void {
  if (!isEditorInstalled() || isEditorNode()) return;
  const { status } = spawnSync(NODE, [...process.execArgv, ...process.argv.slice(1)], { stdio: "inherit" });
  process.exit(status ?? 1);
}

/** What the times are of. */
export const runtime = (): string =>
  `Node ${process.versions.node} (V8 ${process.versions.v8})${isEditorNode() ? ", the editor's own" : ""}`;
