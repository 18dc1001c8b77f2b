/** From what is drawn to the text that decides it. */
import type { LocateResult } from "../protocol.ts";
import type { Snapshot } from "./frame-service.ts";

/** @returns the entry's key, or the item of a list; undefined when the file no longer has it */
export function locatePath({ document, reading }: Snapshot, path: string): LocateResult | undefined {
  if (reading?.index.node(path) === undefined) return undefined;
  const { start, end } = reading.index.keyRange(path);
  return { start: document.positionAt(start), end: document.positionAt(end) };
}
