/** The language server as the rest of the client sees it: start, restart, and the requests that LSP does not have. */
import {
  type CancellationToken,
  type Disposable,
  EventEmitter,
  type Position,
  Range,
  type Uri,
} from "vscode";
import { LanguageClient, type LanguageClientOptions, State, TransportKind } from "vscode-languageclient/node";
import {
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
  type StartOptions,
} from "../server/protocol.ts";
import { FRAME_SELECTOR } from "./frame-files.ts";

/** A finished check of one document. */
export interface Check extends Omit<CheckedParams, "uri"> {
  readonly uri: Uri;
}

export class FrameServer implements Disposable {
  readonly #client: LanguageClient;
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
        suggestAgain: "editor.action.triggerSuggest",
      } satisfies StartOptions,
    };
    const run = { module: serverModule, transport: TransportKind.ipc };
    const debug = { ...run, options: { execArgv: ["--nolazy", "--inspect=0"] } };
    this.#client = new LanguageClient("bentwright", "Bentwright", { run, debug }, options);
    this.#client.onDidChangeState(() => this.#stateChanged.fire());
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
    if (found === null) return undefined;
    const { start, end } = found;
    return new Range(start.line, start.character, end.line, end.character);
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

  async stop(): Promise<void> {
    if (this.#client.isRunning()) await this.#client.stop();
  }

  dispose(): void {
    this.#checked.dispose();
    this.#stateChanged.dispose();
  }

  #uri(document: Uri): string {
    return this.#client.code2ProtocolConverter.asUri(document);
  }
}
