/** Asks, once for a file and session, whether a YAML file that begins with `frame:` is to be read as a frame. */
import {
  type Disposable,
  l10n,
  languages,
  type Memento,
  Range,
  type TextDocument,
  window,
  workspace,
} from "vscode";
import { isFrame, LANGUAGE, SCHEMES } from "./frame-files.ts";
import { HEAD_LINES, shouldOffer } from "./offer.ts";

const NEVER = "bentwright.neverOfferLanguage";

export class LanguageOffer implements Disposable {
  readonly #state: Memento;
  readonly #offered = new Set<string>();
  readonly #subscriptions: Disposable[];

  /** @param state where "Don't ask again" is kept */
  constructor(state: Memento) {
    this.#state = state;
    // The editor in front, not every document that opens: searches open files that nobody looks at.
    this.#subscriptions = [
      window.onDidChangeActiveTextEditor((editor) => this.#consider(editor?.document)),
      workspace.onDidSaveTextDocument((document) => {
        if (document === window.activeTextEditor?.document) this.#consider(document);
      }),
    ];
    this.#consider(window.activeTextEditor?.document);
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #consider(document: TextDocument | undefined): void {
    if (document === undefined || !SCHEMES.includes(document.uri.scheme)) return;
    const file = document.uri.toString();
    const offer = shouldOffer({
      language: document.languageId,
      text: document.getText(new Range(0, 0, HEAD_LINES, 0)),
      isFrame: isFrame(document),
      offered: this.#offered.has(file),
      never: this.#state.get(NEVER, false),
    });
    if (!offer) return;
    this.#offered.add(file);
    void this.#ask(document);
  }

  async #ask(document: TextDocument): Promise<void> {
    const yes = l10n.t("Read It as a Timber Frame");
    const never = l10n.t("Don't Ask Again");
    const answer = await window.showInformationMessage(
      l10n.t("This YAML file begins like a timber frame. Check it as one?"),
      yes,
      never,
    );
    if (answer === never) await this.#state.update(NEVER, true);
    else if (answer === yes && !document.isClosed)
      await languages.setTextDocumentLanguage(document, LANGUAGE);
  }
}
