/** Moving about in a file: outline, definition, references, highlight, folding. None of it waits for a check. */
import type { ClientCapabilities, Connection, ServerCapabilities } from "vscode-languageserver";
import { definitionsAt } from "./language/definition.ts";
import { foldingRangesOf } from "./language/folding.ts";
import type { ReadText } from "./language/frame-service.ts";
import { highlightsAt, referencesAt } from "./language/references.ts";
import { flatSymbols, symbolsOf } from "./language/symbols.ts";

export const MOVING: ServerCapabilities = {
  documentSymbolProvider: true,
  definitionProvider: true,
  referencesProvider: true,
  documentHighlightProvider: true,
  foldingRangeProvider: true,
};

/** @param readOf the newest text of an open document, read */
export function serveMoving(
  connection: Connection,
  able: () => ClientCapabilities,
  readOf: (uri: string) => ReadText | undefined,
): void {
  connection.onDocumentSymbol(({ textDocument: { uri } }) => {
    const text = readOf(uri);
    const symbols = text ? symbolsOf(text) : [];
    const tree = able().textDocument?.documentSymbol?.hierarchicalDocumentSymbolSupport;
    return tree ? symbols : flatSymbols(symbols, uri);
  });
  connection.onDefinition(({ textDocument: { uri }, position }) => {
    const text = readOf(uri);
    const links = text ? definitionsAt(text, position) : [];
    if (able().textDocument?.definition?.linkSupport) return links;
    return links.map(({ targetUri, targetSelectionRange }) => ({
      uri: targetUri,
      range: targetSelectionRange,
    }));
  });
  connection.onReferences(({ textDocument: { uri }, position, context }) => {
    const text = readOf(uri);
    return text ? referencesAt(text, position, context.includeDeclaration) : [];
  });
  connection.onDocumentHighlight(({ textDocument: { uri }, position }) => {
    const text = readOf(uri);
    return text ? highlightsAt(text, position) : [];
  });
  connection.onFoldingRanges(({ textDocument: { uri } }) => {
    const text = readOf(uri);
    return text ? foldingRangesOf(text) : [];
  });
}
