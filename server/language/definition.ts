/** From a name to where it is defined. */
import type { LocationLink, Position } from "vscode-languageserver-types";
import type { ReadText } from "./frame-service.ts";
import { nameUnder, rangeOf } from "./name-at.ts";

/**
 * @returns the entries that the name at the position stands for, the key of each as what to select; more than one where
 *   it is a kind of timber, none where it is no name
 */
export function definitionsAt(text: ReadText, position: Position): LocationLink[] {
  const there = nameUnder(text, position);
  const index = text.reading?.index;
  if (!there || !index) return [];
  const keys = new Map(
    there.names.flatMap(({ declares, definitions, range }) =>
      declares ? definitions.map((path) => [path, range] as const) : [],
    ),
  );
  return there.name.definitions.flatMap((path) => {
    const entry = index.entry(path);
    if (!entry) return [];
    const { start, end } = entry.keyRange;
    return [
      {
        originSelectionRange: rangeOf(text, there.name.range),
        targetUri: text.uri,
        targetRange: rangeOf(text, { start, end: Math.max(end, (entry.alias ?? entry.value.range).end) }),
        // without the quotes that may stand round it
        targetSelectionRange: rangeOf(text, keys.get(path) ?? entry.keyRange),
      },
    ];
  });
}
