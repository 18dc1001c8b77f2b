/** The name under the cursor, with all names of its file. */
import type { Position, Range } from "vscode-languageserver-types";
import type { ReadText } from "./frame-service.ts";
import { type NameUse, nameAt, namesIn } from "./names.ts";

interface NameThere {
  readonly name: NameUse;
  /** every name of the file, in the order of the text */
  readonly names: readonly NameUse[];
}

/** @returns undefined where no name of the file stands, and past the end of a line */
export function nameUnder({ document, reading }: ReadText, position: Position): NameThere | undefined {
  const offset = document.offsetAt(position);
  const there = document.positionAt(offset);
  if (!reading || there.line !== position.line || there.character !== position.character) return undefined;
  const names = namesIn(reading);
  const name = nameAt(names, offset);
  return name && { name, names };
}

/** A stretch of the text as the protocol has it. */
export function rangeOf(
  { document }: ReadText,
  { start, end }: { readonly start: number; readonly end: number },
): Range {
  return { start: document.positionAt(start), end: document.positionAt(end) };
}
