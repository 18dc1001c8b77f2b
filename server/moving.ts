/** Moving about in a file: outline, definition, references, highlight, folding; and renaming. None of it waits for a check. */
import {
  type ClientCapabilities,
  type Connection,
  LSPErrorCodes,
  ResponseError,
  type ServerCapabilities,
  type WorkspaceEdit,
} from "vscode-languageserver";
import { definitionsAt } from "./language/definition.ts";
import { foldingRangesOf } from "./language/folding.ts";
import type { ReadText } from "./language/frame-service.ts";
import { highlightsAt, referencesAt } from "./language/references.ts";
import { type Refused, renamableAt, renameEdits } from "./language/rename.ts";
import { flatSymbols, symbolsOf } from "./language/symbols.ts";

/** @param able what the editor says it can do */
export function movingAbilities(able: ClientCapabilities): ServerCapabilities {
  return {
    documentSymbolProvider: true,
    definitionProvider: true,
    referencesProvider: true,
    documentHighlightProvider: true,
    foldingRangeProvider: true,
    renameProvider: able.textDocument?.rename?.prepareSupport ? { prepareProvider: true } : true,
  };
}

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
    const lit = text ? highlightsAt(text, position) : [];
    // with no answer an editor lights the same words, as it does where no names are known
    return lit.length > 0 ? lit : null;
  });
  connection.onFoldingRanges(({ textDocument: { uri } }) => {
    const text = readOf(uri);
    return text ? foldingRangesOf(text) : [];
  });
  connection.onPrepareRename(({ textDocument: { uri }, position }) => {
    const text = readOf(uri);
    return text ? unlessRefused(renamableAt(text, position)) : null;
  });
  connection.onRenameRequest(({ textDocument: { uri }, position, newName }): WorkspaceEdit | null => {
    const text = readOf(uri);
    if (!text) return null;
    const { edits } = unlessRefused(renameEdits(text, position, newName));
    return able().workspace?.workspaceEdit?.documentChanges
      ? { documentChanges: [{ textDocument: { uri, version: text.version }, edits }] }
      : { changes: { [uri]: edits } };
  });
}

/** @throws ResponseError that the editor shows to the user */
function unlessRefused<T extends object>(answer: T | Refused): T {
  if ("reason" in answer) throw new ResponseError(LSPErrorCodes.RequestFailed, answer.reason);
  return answer;
}
