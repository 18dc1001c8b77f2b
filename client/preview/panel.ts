/** One preview: the drawing of one document, beside it, in step with its text and its cursor. */
import {
  CancellationTokenSource,
  type Disposable,
  l10n,
  type Position,
  TabInputText,
  type Uri,
  ViewColumn,
  type WebviewPanel,
  window,
  workspace,
} from "vscode";
import type { DrawingResult } from "../../server/protocol.ts";
import { fileName } from "../frame-files.ts";
import type { FrameServer } from "../frame-server.ts";
import { isOn, onSwitch } from "../settings.ts";
import type { FromPage, ToPage, Wanted } from "./messages.ts";
import { pageHtml } from "./page-html.ts";

export class PreviewPanel implements Disposable {
  readonly #panel: WebviewPanel;
  readonly #server: FrameServer;
  readonly #subscriptions: Disposable[];
  #document: Uri;
  /** what the user asked for; the server draws what is usual where it does not exist */
  #wanted: Wanted = { view: "", layer: "", case: "" };
  /** the last drawing that could be made, kept while the text is broken or the server away */
  #good: DrawingResult | undefined;
  /** the joint shown larger beneath the elevation */
  #joint: string | undefined;
  /** the joint that the cursor stood on last: closed there, it stays closed until the cursor comes to another */
  #atCursor: string | undefined;
  /** counts requests, so that an answer that was overtaken is dropped */
  #turn = 0;
  #asking = new CancellationTokenSource();
  #disposed = false;

  constructor(panel: WebviewPanel, extension: Uri, document: Uri, server: FrameServer) {
    this.#panel = panel;
    this.#server = server;
    this.#document = document;
    panel.webview.options = {
      enableScripts: true,
      localResourceRoots: [extension.with({ path: `${extension.path}/dist` })],
    };
    this.#subscriptions = [
      panel.webview.onDidReceiveMessage((message: FromPage) => this.#receive(message)),
      panel.onDidDispose(() => this.dispose()),
      panel.onDidChangeViewState(() => {
        if (panel.visible) this.#openDocument();
      }),
      server.onChecked(({ uri }) => {
        if (this.#isMine(uri)) this.#draw();
      }),
      server.onStateChanged(() => {
        if (server.stopped) this.#draw();
      }),
      window.onDidChangeTextEditorSelection(({ textEditor, selections }) => {
        const cursor = selections[0]?.active;
        if (cursor !== undefined && this.#isMine(textEditor.document.uri)) this.#highlight(cursor);
      }),
      window.onDidChangeActiveTextEditor(() => this.#highlightCursor()),
      onSwitch("elevation.followCursor", () => this.#highlightCursor()),
    ];
    this.#title();
    panel.webview.html = pageHtml(panel.webview, extension, document);
  }

  get document(): Uri {
    return this.#document;
  }

  reveal(): void {
    this.#panel.reveal(undefined, true);
  }

  close(): void {
    this.#panel.dispose();
  }

  /** Shows another document from now on: the same one under a new name. */
  follow(document: Uri): void {
    this.#document = document;
    this.#title();
    this.#openDocument();
  }

  dispose(): void {
    this.#disposed = true;
    this.#asking.cancel();
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #title(): void {
    this.#panel.title = l10n.t("Elevation: {0}", fileName(this.#document));
  }

  #isMine(document: Uri): boolean {
    return document.toString() === this.#document.toString();
  }

  #receive(message: FromPage): void {
    switch (message.kind) {
      case "ready":
        // The page begins anew whenever it is shown again, and after a reload it knows the view and we do not.
        this.#want(message);
        this.#openDocument();
        break;
      case "view":
        this.#want(message);
        this.#draw();
        break;
      case "pick":
        if (message.joint !== undefined) this.#showJoint(message.joint);
        this.#select(message.path);
        break;
      case "close-joint":
        this.#joint = undefined;
        break;
    }
  }

  #want({ view, layer, case: loads }: Wanted): void {
    this.#wanted = { view, layer, case: loads };
  }

  /** The server draws open documents only, and an editor restored in the background has not opened its own yet. */
  async #openDocument(): Promise<void> {
    try {
      await workspace.openTextDocument(this.#document);
    } catch {
      this.#send({ svg: null, stale: l10n.t("The file cannot be opened.") });
      return;
    }
    await this.#draw();
  }

  async #draw(): Promise<void> {
    this.#turn += 1;
    const turn = this.#turn;
    const drawing = await this.#server.drawing(this.#document, this.#wanted).catch(() => undefined);
    if (turn !== this.#turn) return;
    if (drawing === undefined) {
      this.#send({ svg: null, stale: l10n.t("Older drawing: the frame server does not answer.") });
      return;
    }
    const stale = drawing.stale ? l10n.t("Older drawing: the text as it stands cannot be drawn.") : "";
    this.#send({ svg: drawing.svg, stale }, drawing);
    if (this.#joint !== undefined) this.#showJoint(this.#joint);
    this.#highlightCursor();
  }

  /** Sends what there is: a drawing that could not be made leaves the last good one in place. */
  #send({ svg, stale }: { svg: string | null; stale: string }, drawing?: DrawingResult): void {
    if (drawing !== undefined && svg !== null) this.#good = drawing;
    const shown = this.#good;
    this.#post({
      kind: "drawing",
      uri: this.#document.toString(),
      svg: shown?.svg ?? null,
      view: shown?.view ?? this.#wanted.view,
      views: shown?.views ?? drawing?.views ?? [],
      layer: shown?.layer ?? this.#wanted.layer,
      layers: shown?.layers ?? [],
      case: shown?.case ?? "",
      cases: shown?.cases ?? [],
      stale,
    });
  }

  #highlightCursor(): void {
    const editor = window.visibleTextEditors.find(({ document }) => this.#isMine(document.uri));
    if (editor !== undefined) this.#highlight(editor.selection.active);
  }

  async #highlight(cursor: Position): Promise<void> {
    this.#asking.cancel();
    if (!isOn("elevation.followCursor")) {
      this.#post({ kind: "highlight", ids: [] });
      return;
    }
    this.#asking = new CancellationTokenSource();
    const { token } = this.#asking;
    // Without an answer the old light stays: the next move of the cursor asks again.
    const found = await this.#server.atCursor(this.#document, cursor, token).catch(() => undefined);
    if (found === undefined || token.isCancellationRequested) return;
    const { ids, joint } = found;
    this.#post({ kind: "highlight", ids });
    if (joint === this.#atCursor) return;
    this.#atCursor = joint;
    // a place of the same entry that was clicked stays
    if (joint !== undefined && !ids.includes(this.#joint ?? "")) this.#showJoint(joint);
  }

  /** Shows a joint larger, as it is now; one that the frame no longer has goes. */
  async #showJoint(id: string): Promise<void> {
    this.#joint = id;
    const joint = await this.#server.jointDrawing(this.#document, id).catch(() => undefined);
    if (this.#joint !== id) return;
    if (joint === undefined) this.#joint = undefined;
    this.#post({ kind: "joint", joint: joint === undefined ? null : { title: joint.title, svg: joint.svg } });
  }

  /** Puts the cursor on what was clicked, in the editor that already shows the document where there is one. */
  async #select(path: string): Promise<void> {
    const selection = await this.#server.locate(this.#document, path).catch(() => undefined);
    if (selection === undefined) return;
    const tab = window.tabGroups.all
      .flatMap((group) => group.tabs)
      .find(({ input }) => input instanceof TabInputText && this.#isMine(input.uri));
    const viewColumn =
      tab?.group.viewColumn ??
      (this.#panel.viewColumn === ViewColumn.One ? ViewColumn.Beside : ViewColumn.One);
    await window.showTextDocument(this.#document, { viewColumn, selection });
  }

  #post(message: ToPage): void {
    // An answer may come in after the panel was closed.
    if (!this.#disposed) this.#panel.webview.postMessage(message);
  }
}
