/** What the cursor stands on: a key or a value, with its path. */
import type { Position } from "vscode-languageserver-types";
import type { Pointer } from "../core/frame/frame.ts";
import { keysOf, type Range } from "../document/tree.ts";
import type { Snapshot } from "./frame-service.ts";

export interface Spot {
  readonly path: Pointer;
  readonly onKey: boolean;
  /** the key, or the value without its quotes */
  readonly text: string;
  readonly place: Range;
}

/** @returns undefined on blanks, comments and brackets, and past the end of a line */
export function spotAt({ document, reading }: Snapshot, position: Position): Spot | undefined {
  const offset = document.offsetAt(position);
  const there = document.positionAt(offset);
  if (!reading || there.line !== position.line || there.character !== position.character) return undefined;
  const { pointer: path, onKey, node } = reading.index.pathAt(offset);
  const place = onKey ? reading.index.keyRange(path) : reading.index.fullRange(path);
  if (!place || path === "" || place.start > offset || offset > place.end || place.start === place.end)
    return undefined;
  if (onKey) return { path, onKey, text: keysOf(path).at(-1) ?? "", place };
  return node.kind === "scalar" ? { path, onKey, text: node.text, place } : undefined;
}
