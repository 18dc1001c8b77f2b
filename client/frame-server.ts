/** The language server as the rest of the client sees it: start, restart, and the requests that LSP does not have. */
import {
  type CancellationToken,
  type Disposable,
  EventEmitter,
  l10n,
  type Position,
  Range,
  type Uri,
  WorkspaceEdit,
} from "vscode";
import { LanguageClient, type LanguageClientOptions, State, TransportKind } from "vscode-languageclient/node";
import {
  ACCEPT_REQUEST,
  type AcceptParams,
  type AcceptResult,
  AT_CURSOR_REQUEST,
  type AtCursorParams,
  type AtCursorResult,
  CHECKED_NOTIFICATION,
  type CheckedParams,
  DRAWING_REQUEST,
  type DrawingParams,
  type DrawingResult,
  JOINT_DRAWING_REQUEST,
  type JointDrawingParams,
  type JointDrawingResult,
  LOCATE_REQUEST,
  type LocateParams,
  type LocateResult,
  NEW_FRAME_QUESTIONS_REQUEST,
  NEW_FRAME_REFUSAL_REQUEST,
  NEW_FRAME_WRITE_REQUEST,
  type NewFrameQuestion,
  type NewFrameQuestionsParams,
  type NewFrameRefusalParams,
  type NewFrameWriteParams,
  type NewFrameWriteResult,
  PAGE_REQUEST,
  type PageParams,
  type PageResult,
  type StartOptions,
} from "../server/protocol.ts";
import { FRAME_SELECTOR } from "./frame-files.ts";
import { Shown } from "./shown.ts";

/** A finished check of one document. */
export interface Check extends Omit<CheckedParams, "uri"> {
  readonly uri: Uri;
}

/**
 * Room for what lives only as long as one check, in MB: a check makes about as much anew, and with less room a third of its
 * time goes into clearing up.
 */
const ROOM = ["--min-semi-space-size=64", "--max-semi-space-size=64"];

export class FrameServer implements Disposable {
  readonly #client: LanguageClient;
  readonly #shown = new Shown();
  readonly #checked = new EventEmitter<Check>();
  readonly #stateChanged = new EventEmitter<void>();

  /** Fires after each check of a document. */
  readonly onChecked = this.#checked.event;
  /** Fires when `stopped` may have changed. */
  readonly onStateChanged = this.#stateChanged.event;

  /** @param serverModule absolute path of the bundled server */
  constructor(serverModule: string) {
    const options: LanguageClientOptions = {
      documentSelector: FRAME_SELECTOR,
      initializationOptions: {
        pictures: true,
        pages: true,
        accepts: true,
        suggestAgain: "editor.action.triggerSuggest",
        ...(l10n.bundle && { words: l10n.bundle }),
      } satisfies StartOptions,
      middleware: this.#shown.middleware,
    };
    const server = { module: serverModule, transport: TransportKind.ipc };
    const run = { ...server, options: { execArgv: ROOM } };
    const debug = { ...server, options: { execArgv: [...ROOM, "--nolazy", "--inspect=0"] } };
    this.#client = new LanguageClient("bentwright", "Bentwright", { run, debug }, options);
    this.#shown.watch(this.#client);
    this.#client.onDidChangeState(() => {
      if (this.stopped) this.#shown.forget();
      this.#stateChanged.fire();
    });
    this.#client.onNotification(CHECKED_NOTIFICATION, ({ uri, ...check }: CheckedParams) =>
      this.#checked.fire({ ...check, uri: this.#client.protocol2CodeConverter.asUri(uri) }),
    );
  }

  /** True when no answer will come unless the server is restarted. */
  get stopped(): boolean {
    return this.#client.state === State.Stopped;
  }

  async start(): Promise<void> {
    await this.#client.start();
  }

  /** Ends the server and starts a new one; also begins one that has given up after crashes. */
  async restart(): Promise<void> {
    if (this.#client.needsStart()) await this.#client.start();
    else await this.#client.restart();
  }

  /** The drawing of an open document. Rejects when the server cannot answer. */
  drawing(document: Uri, asked: Omit<DrawingParams, "uri">): Promise<DrawingResult> {
    return this.#client.sendRequest<DrawingResult>(DRAWING_REQUEST, {
      uri: this.#uri(document),
      ...asked,
    } satisfies DrawingParams);
  }

  /** Where the entry at `path` stands in the text; undefined where it is no longer there. */
  async locate(document: Uri, path: string): Promise<Range | undefined> {
    const params: LocateParams = { uri: this.#uri(document), path };
    const found = await this.#client.sendRequest<LocateResult | null>(LOCATE_REQUEST, params);
    return found === null ? undefined : rangeOf(found);
  }

  /** The drawing of one joint; undefined where the frame has no such joint. */
  async jointDrawing(document: Uri, id: string): Promise<JointDrawingResult | undefined> {
    const params: JointDrawingParams = { uri: this.#uri(document), id };
    return (
      (await this.#client.sendRequest<JointDrawingResult | null>(JOINT_DRAWING_REQUEST, params)) ?? undefined
    );
  }

  /** The ids of what the entry under a position draws, and the joint that it stands on. */
  async atCursor(document: Uri, position: Position, cancel: CancellationToken): Promise<AtCursorResult> {
    const { line, character } = position;
    const params: AtCursorParams = { uri: this.#uri(document), position: { line, character } };
    const found = await this.#client.sendRequest<AtCursorResult | null>(AT_CURSOR_REQUEST, params, cancel);
    return found ?? { ids: [] };
  }

  newFrameQuestions(asked: NewFrameQuestionsParams): Promise<readonly NewFrameQuestion[]> {
    return this.#client.sendRequest(NEW_FRAME_QUESTIONS_REQUEST, asked);
  }

  /** Why an answer cannot be taken; undefined where it can. */
  async newFrameRefusal(asked: NewFrameRefusalParams): Promise<string | undefined> {
    return (await this.#client.sendRequest<string | null>(NEW_FRAME_REFUSAL_REQUEST, asked)) ?? undefined;
  }

  newFrameWrite(asked: NewFrameWriteParams, cancel: CancellationToken): Promise<NewFrameWriteResult> {
    return this.#client.sendRequest(NEW_FRAME_WRITE_REQUEST, asked, cancel);
  }

  /** The page that a diagnostic's link leads to, by the link's query. */
  page(query: string): Promise<PageResult> {
    return this.#client.sendRequest<PageResult>(PAGE_REQUEST, { query } satisfies PageParams);
  }

  /** The edit that accepts a finding, or why there is none. */
  async accept(finding: unknown, because: string): Promise<WorkspaceEdit | string> {
    const params: AcceptParams = { finding, because };
    const { uri, edits, refused } = await this.#client.sendRequest<AcceptResult>(ACCEPT_REQUEST, params);
    if (refused !== "") return refused;
    const changes = new WorkspaceEdit();
    const document = this.#client.protocol2CodeConverter.asUri(uri);
    for (const { range, newText } of edits) changes.replace(document, rangeOf(range), newText);
    return changes;
  }

  /** Whether a document of the server's is this one. */
  isSame(named: string, document: Uri): boolean {
    return this.#uri(document) === named;
  }

  async stop(): Promise<void> {
    if (this.#client.isRunning()) await this.#client.stop();
  }

  dispose(): void {
    this.#shown.dispose();
    this.#checked.dispose();
    this.#stateChanged.dispose();
  }

  #uri(document: Uri): string {
    return this.#client.code2ProtocolConverter.asUri(document);
  }
}

function rangeOf({ start, end }: LocateResult): Range {
  return new Range(start.line, start.character, end.line, end.character);
}
