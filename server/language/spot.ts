/** What the cursor stands on: a key or a value, with its path. */
import type { Position } from "vscode-languageserver-types";
import type { Pointer } from "../core/frame/frame.ts";
import type { Snapshot } from "./frame-service.ts";
import type { Place } from "./place.ts";

export interface Spot {
  readonly path: Pointer;
  readonly onKey: boolean;
  /** the key, or the value without its quotes */
  readonly text: string;
  readonly place: Place;
}

/** @returns undefined on blanks, comments and brackets, and past the end of a line */
export function spotAt({ document, reading }: Snapshot, position: Position): Spot | undefined {
  const offset = document.offsetAt(position);
  const there = document.positionAt(offset);
  if (!reading || there.line !== position.line || there.character !== position.character) return undefined;
  const { index, text } = reading;
  const path = index.pathAt(offset);
  const around = (place: Place | undefined): place is Place =>
    place !== undefined && place.end > place.start && place.start <= offset && offset <= place.end;
  const key = index.keyRange(path);
  if (around(key)) return { path, onKey: true, text: unquoted(text.slice(key.start, key.end)), place: key };
  const value = index.range(path);
  if (!around(value) || index.nodeAt(path)?.kind !== "scalar") return undefined;
  return { path, onKey: false, text: unquoted(text.slice(value.start, value.end)), place: value };
}

function unquoted(text: string): string {
  const match = /^(["'])(.*)\1$/s.exec(text.trim());
  return match?.[2] ?? text.trim();
}
