/** When the server is needed: any YAML file activates us, and most of them are no frames. */
import { type Disposable, workspace } from "vscode";
import { isFrame } from "./frame-files.ts";

/** Runs `start` once: now if a frame is open, else as soon as one is. The result takes the waiting back. */
export function atFirstFrame(start: () => void): Disposable {
  const opened = workspace.onDidOpenTextDocument((document) => {
    if (!isFrame(document)) return;
    opened.dispose();
    start();
  });
  if (workspace.textDocuments.some(isFrame)) {
    opened.dispose();
    start();
  }
  return opened;
}
