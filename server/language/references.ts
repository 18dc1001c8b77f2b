/** Where else a name stands. */
import {
  type DocumentHighlight,
  DocumentHighlightKind,
  type Location,
  type Position,
} from "vscode-languageserver-types";
import type { ReadText } from "./frame-service.ts";
import { nameUnder, rangeOf } from "./name-at.ts";
import { type NameUse, usesOf } from "./names.ts";

/** @param withDefinition whether the keys that define it are among them */
export function referencesAt(text: ReadText, position: Position, withDefinition: boolean): Location[] {
  return usesAt(text, position)
    .filter((use) => withDefinition || !use.declares)
    .map((use) => ({ uri: text.uri, range: rangeOf(text, use.range) }));
}

/** The same for the one file that is open; definitions count as written. */
export function highlightsAt(text: ReadText, position: Position): DocumentHighlight[] {
  return usesAt(text, position).map((use) => ({
    range: rangeOf(text, use.range),
    kind: use.declares ? DocumentHighlightKind.Write : DocumentHighlightKind.Read,
  }));
}

function usesAt(text: ReadText, position: Position): readonly NameUse[] {
  const there = nameUnder(text, position);
  return there ? usesOf(there.names, there.name) : [];
}
