/**
 * The language server on any connection: documents come in, findings go out, questions are answered. `node.ts` and
 * `browser.ts` make a connection. Documents are told apart by their uri alone, whatever language the editor calls them.
 */
import {
  type CancellationToken,
  type ClientCapabilities,
  type CodeAction,
  CodeActionKind,
  type CodeLens,
  type CompletionItem,
  type Connection,
  ErrorCodes,
  type Hover,
  type InitializeResult,
  type InlayHint,
  MessageType,
  PositionEncodingKind,
  ResponseError,
  ShowMessageNotification,
  TextDocumentSyncKind,
  TextDocuments,
} from "vscode-languageserver";
import { TextDocument } from "vscode-languageserver-textdocument";
import { type Abilities, abilitiesOf } from "./abilities.ts";
import { answerAboutFindings } from "./about-findings.ts";
import type { Translate } from "./core/checks/speak.ts";
import { acceptActionsAt } from "./language/accept.ts";
import { atCursor } from "./language/at-cursor.ts";
import { codeLenses } from "./language/code-lens.ts";
import { completionsAt, TRIGGERS } from "./language/completion.ts";
import { countsOf, diagnosticsOf } from "./language/diagnostics.ts";
import { drawingOf } from "./language/drawing.ts";
import { createFrameService, type FrameService, type Snapshot } from "./language/frame-service.ts";
import { hoverAt } from "./language/hover.ts";
import { hintDetails, hintOf, inlayHints } from "./language/inlay-hints.ts";
import { jointDrawingOf } from "./language/joint-drawing.ts";
import { locatePath } from "./language/locate.ts";
import { newFrameQuestions, newFrameRefusal } from "./language/new-frame/questions.ts";
import { answersIn, writeInSteps } from "./language/new-frame/requests.ts";
import { quickFixesAt, resolveSize, sizeRequestOf, wantsQuickFixes } from "./language/quick-fixes.ts";
import { createSizer } from "./language/sizer.ts";
import { movingAbilities, serveMoving } from "./moving.ts";
import {
  AT_CURSOR_REQUEST,
  type AtCursorResult,
  CHECKED_NOTIFICATION,
  type CheckedParams,
  DRAWING_REQUEST,
  type DrawingResult,
  JOINT_DRAWING_REQUEST,
  type JointDrawingResult,
  LOCATE_REQUEST,
  type LocateResult,
  NEW_FRAME_QUESTIONS_REQUEST,
  NEW_FRAME_REFUSAL_REQUEST,
  NEW_FRAME_WRITE_REQUEST,
} from "./protocol.ts";
import { createPublished } from "./published.ts";
import { VERSION } from "./version.ts";

/** How long typing must rest before a check begins, milliseconds. */
const TYPING_PAUSE = 60;

/**
 * Serves until the connection ends.
 * @param makeService what reads and checks; tests give one with a part that breaks down
 * @param reference address of the check reference that is installed beside the server
 */
export function serve(
  connection: Connection,
  makeService: (translate: Translate) => FrameService = createFrameService,
  reference?: string,
): void {
  const documents = new TextDocuments(TextDocument);
  const opened = new Set<string>();
  const waiting = new Map<string, ReturnType<typeof setTimeout>>();
  const published = createPublished();
  const sizer = createSizer();
  let can: Abilities = {
    able: undefined,
    showing: {},
    linkOf: undefined,
    completing: { snippets: false, markdown: false, asIs: false },
    translate: (pattern) => pattern,
  };
  let client: ClientCapabilities = {};
  /** known only once the editor has said its language */
  const translate: Translate = (pattern) => can.translate(pattern);
  const service = makeService(translate);

  connection.onInitialize(({ capabilities, initializationOptions }) => {
    client = capabilities;
    can = abilitiesOf(capabilities, initializationOptions, reference);
    return whatItCan(client);
  });

  documents.onDidChangeContent(({ document }) => {
    const first = !opened.has(document.uri);
    opened.add(document.uri);
    later(document.uri, first ? 0 : TYPING_PAUSE);
  });
  documents.onDidSave(({ document }) => {
    forget(document.uri);
    publish(service.open(document.uri, document.version, document.getText()));
  });
  documents.onDidClose(({ document }) => {
    forget(document.uri);
    opened.delete(document.uri);
    service.close(document.uri);
    published.forget(document.uri);
    connection.sendDiagnostics({ uri: document.uri, diagnostics: [] });
  });

  function forget(uri: string): void {
    clearTimeout(waiting.get(uri));
    waiting.delete(uri);
  }

  function later(uri: string, pause: number): void {
    forget(uri);
    waiting.set(
      uri,
      setTimeout(() => {
        waiting.delete(uri);
        checkInStages(uri).catch((error: unknown) => {
          published.put(uri, documents.get(uri)?.version ?? 0, undefined);
          report("checking", error);
        });
      }, pause),
    );
  }

  async function checkInStages(uri: string): Promise<void> {
    const document = documents.get(uri);
    if (!document) return;
    const { version } = document;
    // a document that was closed and opened again begins with the same version
    const newest = (): boolean => documents.get(uri) === document && document.version === version;
    const snapshot = await service.openInStages(uri, version, document.getText(), newest);
    if (snapshot && newest()) publish(snapshot);
  }

  function publish(snapshot: Snapshot): void {
    const { uri, version, milliseconds } = snapshot;
    connection.sendDiagnostics({ uri, version, diagnostics: diagnosticsOf(snapshot, can.linkOf) });
    const checked: CheckedParams = { uri, version, ...countsOf(snapshot), milliseconds };
    connection.sendNotification(CHECKED_NOTIFICATION, checked);
    published.put(uri, version, snapshot);
    for (const fault of snapshot.faults) report(fault.what, fault.error);
  }

  function report(what: string, error: unknown): void {
    const detail = error instanceof Error ? (error.stack ?? error.message) : String(error);
    connection.console.error(`Broke down while ${what}: ${detail}`);
  }

  function snapshotOf(uri: string): Snapshot | undefined {
    const document = documents.get(uri);
    return document && service.open(uri, document.version, document.getText());
  }

  /** Nothing has been typed since, and the asker still waits. */
  function isNewest({ uri, version }: Snapshot, token: CancellationToken): boolean {
    return documents.get(uri)?.version === version && !token.isCancellationRequested;
  }

  /** The open version, once it is checked; undefined when it is overtaken or closed before. */
  async function checkedOf(uri: string): Promise<Snapshot | undefined> {
    const document = documents.get(uri);
    return document && published.at(uri, document.version);
  }

  connection.onHover(({ textDocument, position }): Hover | null => {
    const snapshot = snapshotOf(textDocument.uri);
    return (snapshot && hoverAt(snapshot, position, can.showing)) ?? null;
  });
  // what is typed next is wanted at once: it is answered from the text, before the check
  connection.onCompletion(({ textDocument: { uri }, position, context }): CompletionItem[] => {
    const document = documents.get(uri);
    if (!document) return [];
    return completionsAt(
      document,
      position,
      { ...can.completing, translate },
      service.drawable(uri),
      context?.triggerCharacter,
    );
  });
  // asked for anew with every key: these wait for the check instead of running one of their own
  connection.languages.inlayHint.on(async ({ textDocument, range }): Promise<InlayHint[]> => {
    const snapshot = await checkedOf(textDocument.uri);
    return snapshot ? inlayHints(snapshot, range) : [];
  });
  connection.languages.inlayHint.resolve(async (hint): Promise<InlayHint> => {
    const entry = hintOf(hint);
    const snapshot = entry && (await checkedOf(entry.uri));
    const tooltip = snapshot && hintDetails(snapshot, entry.path);
    return tooltip ? { ...hint, tooltip } : hint;
  });
  connection.onCodeLens(async ({ textDocument }): Promise<CodeLens[]> => {
    const snapshot = await checkedOf(textDocument.uri);
    return snapshot ? codeLenses(snapshot) : [];
  });
  connection.onCodeAction(async ({ textDocument, range, context }, token): Promise<CodeAction[]> => {
    const { able } = can;
    if (!able || !wantsQuickFixes(context.only)) return [];
    const snapshot = await checkedOf(textDocument.uri);
    if (!snapshot) return [];
    const fixes = await quickFixesAt(snapshot, range, sizer, able, () => isNewest(snapshot, token));
    return [...fixes, ...acceptActionsAt(snapshot, range, able)];
  });
  // what the user chose before a change is not carried out after it
  connection.onCodeActionResolve(async (action, token): Promise<CodeAction> => {
    const asked = sizeRequestOf(action);
    const snapshot = asked && (await checkedOf(asked.uri));
    const { able } = can;
    if (!able || !snapshot || snapshot.version !== asked.version) return action;
    const wanted = (): boolean => isNewest(snapshot, token);
    const resolved = await resolveSize(asked, snapshot, sizer, able, wanted);
    if (!resolved) return action;
    if (!("reason" in resolved)) return { ...action, ...resolved };
    const told = { type: MessageType.Info, message: `${resolved.reason}.` };
    connection.sendNotification(ShowMessageNotification.type, told);
    return action;
  });
  connection.onRequest(DRAWING_REQUEST, (params: unknown): DrawingResult => {
    const asked = { ...textsOf(params, "uri", "view"), ...givenTexts(params, "layer", "case") };
    snapshotOf(asked.uri);
    return drawingOf(service, asked);
  });
  connection.onRequest(JOINT_DRAWING_REQUEST, (params: unknown): JointDrawingResult | null => {
    const asked = textsOf(params, "uri", "id");
    snapshotOf(asked.uri);
    return jointDrawingOf(service, asked);
  });
  connection.onRequest(LOCATE_REQUEST, (params: unknown): LocateResult | null => {
    const { uri, path } = textsOf(params, "uri", "path");
    const snapshot = snapshotOf(uri);
    return (snapshot && locatePath(snapshot, path)) ?? null;
  });
  connection.onRequest(AT_CURSOR_REQUEST, async (params: unknown): Promise<AtCursorResult> => {
    const { uri } = textsOf(params, "uri");
    const position = positionOf(params);
    const snapshot = await checkedOf(uri);
    return snapshot ? atCursor(snapshot, position) : { ids: [] };
  });
  connection.onRequest(NEW_FRAME_QUESTIONS_REQUEST, (params: unknown) =>
    newFrameQuestions(
      memberOf(params, "units") === "mm" ? "mm" : "inch",
      answersIn(memberOf(params, "answers")),
      translate,
    ),
  );
  connection.onRequest(NEW_FRAME_REFUSAL_REQUEST, (params: unknown): string | null => {
    const { id, answer } = textsOf(params, "id", "answer");
    return newFrameRefusal(id, answer, answersIn(memberOf(params, "answers")), translate);
  });
  connection.onRequest(NEW_FRAME_WRITE_REQUEST, (params: unknown, token) =>
    writeInSteps(answersIn(memberOf(params, "answers")), () => !token.isCancellationRequested, translate),
  );

  serveMoving(
    connection,
    () => client,
    (uri) => {
      const document = documents.get(uri);
      return document && service.read(uri, document.version, document.getText());
    },
  );

  answerAboutFindings(connection, snapshotOf, translate);

  documents.listen(connection);
  connection.listen();
}

/** The server's answer to "what can you do?". */
function whatItCan(client: ClientCapabilities): InitializeResult {
  return {
    capabilities: {
      positionEncoding: PositionEncodingKind.UTF16,
      textDocumentSync: {
        openClose: true,
        change: TextDocumentSyncKind.Incremental,
        save: { includeText: false },
      },
      hoverProvider: true,
      completionProvider: { triggerCharacters: [...TRIGGERS] },
      inlayHintProvider: { resolveProvider: true },
      codeLensProvider: {},
      codeActionProvider: { codeActionKinds: [CodeActionKind.QuickFix], resolveProvider: true },
      ...movingAbilities(client),
    },
    serverInfo: { name: "bentwright", version: VERSION },
  };
}

/** Members of a request that must be texts. @throws ResponseError that the asker gets as its answer */
function textsOf<K extends string>(params: unknown, ...names: readonly K[]): Readonly<Record<K, string>> {
  const found: Partial<Record<K, string>> = {};
  for (const name of names) {
    const value = memberOf(params, name);
    if (typeof value !== "string") throw invalid(`\`${name}\` must be a text`);
    found[name] = value;
  }
  return found as Record<K, string>;
}

/** Those members of a request that are texts; what is left out, or is none, counts as not given. */
function givenTexts<K extends string>(
  params: unknown,
  ...names: readonly K[]
): { readonly [name in K]?: string } {
  const found: { [name in K]?: string } = {};
  for (const name of names) {
    const value = memberOf(params, name);
    if (typeof value === "string") found[name] = value;
  }
  return found;
}

function positionOf(params: unknown): { readonly line: number; readonly character: number } {
  const position = memberOf(params, "position");
  const [line, character] = [memberOf(position, "line"), memberOf(position, "character")];
  if (typeof line !== "number" || typeof character !== "number")
    throw invalid("`position` must have a line and a character");
  return { line, character };
}

function memberOf(value: unknown, name: string): unknown {
  return typeof value === "object" && value !== null ? Reflect.get(value, name) : undefined;
}

function invalid(message: string): ResponseError<undefined> {
  return new ResponseError(ErrorCodes.InvalidParams, message);
}
