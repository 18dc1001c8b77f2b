/** From what is drawn to the text that decides it. */
import type { LocateResult } from "../protocol.ts";
import type { Snapshot } from "./frame-service.ts";
import { placeOfPath } from "./place.ts";

/** @returns the entry's key, or its value where it has no key; undefined when the file no longer has it */
export function locatePath({ document, reading }: Snapshot, path: string): LocateResult | undefined {
  const index = reading?.index;
  const place = index?.keyRange(path) ?? index?.range(path);
  if (!index || !place) return undefined;
  const { start, end } = placeOfPath(document.getText(), index, path);
  const key = index.keyRange(path);
  return {
    start: document.positionAt(key?.start ?? start),
    end: document.positionAt(key?.end ?? end),
  };
}
