/** A program with all that it starts in a process group of its own, so that the whole can be ended by its own id. */
import { type ChildProcess, type SpawnOptions, spawn } from "node:child_process";
import { once } from "node:events";

const PATIENCE = 5_000;
const LOOK_EVERY = 50;

/** Starts a program as the head of a new process group; the options are those of `spawn`. */
export function startGroup(program: string, args: readonly string[], options: SpawnOptions): ChildProcess {
  return spawn(program, args, { ...options, detached: true });
}

/** Ends the program and its helpers, also those that outlived it; kills after five seconds what does not go. */
export async function endGroup(child: ChildProcess): Promise<void> {
  const { pid } = child;
  if (pid === undefined) return;
  const headEnded = child.exitCode === null && child.signalCode === null ? once(child, "exit") : undefined;
  signalGroup(pid, "SIGTERM");
  const end = Date.now() + PATIENCE;
  while (signalGroup(pid, 0) && Date.now() < end) {
    await new Promise((resolve) => setTimeout(resolve, LOOK_EVERY));
  }
  signalGroup(pid, "SIGKILL");
  await headEnded;
}

/** False when nothing of the group is left. */
function signalGroup(pid: number, signal: NodeJS.Signals | 0): boolean {
  try {
    return process.kill(-pid, signal);
  } catch {
    return false;
  }
}
