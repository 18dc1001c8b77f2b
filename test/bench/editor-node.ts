/**
 * The server runs in the editor's own Node, not in that of the shell, and times differ by half: a bench measures in the
 * former where it is installed.
 */
import { spawnSync } from "node:child_process";
import { isEditorInstalled, NODE } from "../../client/start/installed.ts";

/** Runs the same program in the editor's Node and ends with it; goes on where it runs in it, or where there is none. */
export function inEditorNode(): void {
  if (process.execPath === NODE || !isEditorInstalled()) return;
  const { status } = spawnSync(NODE, [...process.execArgv, ...process.argv.slice(1)], { stdio: "inherit" });
  process.exit(status ?? 1);
}

/** What the times are of. */
export const runtime = (): string =>
  `Node ${process.versions.node} (V8 ${process.versions.v8})${process.execPath === NODE ? ", the editor's own" : ""}`;
