/** Pages about findings: what the link of a diagnostic opens. The server writes them; an open one follows its document. */
import { type Disposable, EventEmitter, type TextDocumentContentProvider, type Uri, workspace } from "vscode";
import type { FrameServer } from "./frame-server.ts";

/** Also named by the manifest, so that the editor shows these pages instead of their text. */
const SCHEME = "bentwright-page";

export class CheckPages implements TextDocumentContentProvider, Disposable {
  readonly #server: FrameServer;
  readonly #changed = new EventEmitter<Uri>();
  /** the document that each open page tells of */
  readonly #about = new Map<string, string>();
  readonly #subscriptions: Disposable[];

  readonly onDidChange = this.#changed.event;

  constructor(server: FrameServer) {
    this.#server = server;
    this.#subscriptions = [
      this.#changed,
      workspace.registerTextDocumentContentProvider(SCHEME, this),
      server.onChecked(({ uri }) => this.#rewrite(uri)),
      workspace.onDidCloseTextDocument(({ uri }) => this.#about.delete(uri.toString())),
    ];
  }

  async provideTextDocumentContent(page: Uri): Promise<string> {
    const { markdown, uri } = await this.#server.page(page.query);
    if (uri !== null) this.#about.set(page.toString(), uri);
    return markdown;
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #rewrite(checked: Uri): void {
    for (const page of workspace.textDocuments) {
      const about = this.#about.get(page.uri.toString());
      if (about !== undefined && this.#server.isSame(about, checked)) this.#changed.fire(page.uri);
    }
  }
}
