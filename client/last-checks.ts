/** The newest check of each open frame. */
import { type Disposable, EventEmitter, type Uri, workspace } from "vscode";
import type { Check, FrameServer } from "./frame-server.ts";

/** A check and when it came in. */
export interface DatedCheck extends Check {
  readonly at: Date;
}

export class LastChecks implements Disposable {
  readonly #checks = new Map<string, DatedCheck>();
  readonly #changed = new EventEmitter<Uri>();
  readonly #subscriptions: Disposable[];

  /** Fires with the document that has a new check. */
  readonly onChanged = this.#changed.event;

  constructor(server: FrameServer) {
    this.#subscriptions = [
      server.onChecked((check) => {
        this.#checks.set(check.uri.toString(), { ...check, at: new Date() });
        this.#changed.fire(check.uri);
      }),
      workspace.onDidCloseTextDocument(({ uri }) => this.#checks.delete(uri.toString())),
      this.#changed,
    ];
  }

  of(document: Uri): DatedCheck | undefined {
    return this.#checks.get(document.toString());
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }
}
