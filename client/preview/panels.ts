/** All open preview panels: one a document, found again after a reload, following a file that is renamed. */
import {
  type Disposable,
  Uri,
  ViewColumn,
  type WebviewPanel,
  type WebviewPanelSerializer,
  window,
  workspace,
} from "vscode";
import type { FrameServer } from "../frame-server.ts";
import type { PageState } from "./messages.ts";
import { PreviewPanel } from "./panel.ts";

/** Also named by the manifest, so that the editor starts us to restore a panel. */
const VIEW_TYPE = "bentwright.elevation";

export class PreviewPanels implements WebviewPanelSerializer<PageState>, Disposable {
  readonly #extension: Uri;
  readonly #server: FrameServer;
  readonly #panels = new Set<PreviewPanel>();
  readonly #subscriptions: Disposable[];

  constructor(extension: Uri, server: FrameServer) {
    this.#extension = extension;
    this.#server = server;
    this.#subscriptions = [
      window.registerWebviewPanelSerializer(VIEW_TYPE, this),
      workspace.onDidRenameFiles(({ files }) => {
        for (const { oldUri, newUri } of files) this.#rename(oldUri, newUri);
      }),
      workspace.onDidDeleteFiles(({ files }) => {
        for (const panel of this.#panels)
          if (files.some((file) => restOf(panel.document, file) !== undefined)) panel.close();
      }),
    ];
  }

  /** Shows the document's preview beside it; the one that is open already, where there is one. */
  open(document: Uri): void {
    const existing = this.#of(document);
    if (existing !== undefined) {
      existing.reveal();
      return;
    }
    const column = { viewColumn: ViewColumn.Beside, preserveFocus: true };
    this.#add(window.createWebviewPanel(VIEW_TYPE, "", column), document);
  }

  /** Called by the editor for each preview that was open when the window was closed. */
  async deserializeWebviewPanel(webview: WebviewPanel, state: PageState | undefined): Promise<void> {
    if (typeof state?.uri !== "string") webview.dispose();
    else this.#add(webview, Uri.parse(state.uri));
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
    for (const panel of this.#panels) panel.dispose();
  }

  #add(webview: WebviewPanel, document: Uri): void {
    const panel = new PreviewPanel(webview, this.#extension, document, this.#server);
    this.#panels.add(panel);
    webview.onDidDispose(() => this.#panels.delete(panel));
  }

  #of(document: Uri): PreviewPanel | undefined {
    return [...this.#panels].find((panel) => panel.document.toString() === document.toString());
  }

  #rename(from: Uri, to: Uri): void {
    for (const panel of this.#panels) {
      const rest = restOf(panel.document, from);
      if (rest !== undefined) panel.follow(to.with({ path: to.path + rest }));
    }
  }
}

/** What follows a file's or folder's own path in a document's: `''` for the file itself, undefined outside. */
function restOf(document: Uri, file: Uri): string | undefined {
  if (document.scheme !== file.scheme || !document.path.startsWith(file.path)) return undefined;
  const rest = document.path.slice(file.path.length);
  return rest === "" || rest.startsWith("/") ? rest : undefined;
}
