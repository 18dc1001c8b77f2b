/** The status bar entry: what the last check of the frame in front found, and how long it took. */
import {
  type Disposable,
  l10n,
  MarkdownString,
  StatusBarAlignment,
  type StatusBarItem,
  type TextDocument,
  ThemeColor,
  window,
} from "vscode";
import { RESTART_SERVER } from "./commands.ts";
import { isFrame } from "./frame-files.ts";
import type { FrameServer } from "./frame-server.ts";
import type { DatedCheck, LastChecks } from "./last-checks.ts";
import { isOn, onSwitch } from "./settings.ts";

const SHOW_PROBLEMS = "workbench.actions.view.problems";

export class FrameStatus implements Disposable {
  readonly #item: StatusBarItem;
  readonly #server: FrameServer;
  readonly #checks: LastChecks;
  readonly #subscriptions: Disposable[];
  /** the document of the editor that is in front, or was last and can still be seen */
  #document: TextDocument | undefined;

  constructor(server: FrameServer, checks: LastChecks) {
    this.#server = server;
    this.#checks = checks;
    this.#item = window.createStatusBarItem("bentwright.check", StatusBarAlignment.Left, 1);
    this.#item.name = l10n.t("Frame Check");
    const update = () => this.#update();
    this.#subscriptions = [
      this.#item,
      server.onStateChanged(update),
      checks.onChanged(update),
      window.onDidChangeActiveTextEditor(update),
      onSwitch("text.notes", update),
    ];
    update();
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }

  #update(): void {
    // With the preview or a panel in front there is no active editor; the frame beside it is still meant then.
    const beside = window.visibleTextEditors.find((editor) => editor.document === this.#document);
    this.#document = (window.activeTextEditor ?? beside)?.document;
    const document = this.#document;
    if (document === undefined || !isFrame(document)) {
      this.#item.hide();
      return;
    }
    const check = this.#checks.of(document.uri);
    if (this.#server.stopped)
      this.#show("$(debug-disconnect)", l10n.t("Frame: server stopped"), RESTART_SERVER);
    else if (check === undefined) this.#show("$(sync~spin)", l10n.t("Frame: checking"), SHOW_PROBLEMS);
    else this.#showCheck(check);
  }

  #showCheck(check: DatedCheck): void {
    const icon = check.errors > 0 ? "$(error)" : check.warnings > 0 ? "$(warning)" : "$(pass)";
    const milliseconds = Math.max(1, Math.round(check.milliseconds));
    this.#show(icon, l10n.t("Frame: {0} · {1} ms", summary(check), milliseconds), SHOW_PROBLEMS);
    this.#item.tooltip = new MarkdownString(
      l10n.t("Checked at {0} in {1} ms. Click for the list.", check.at.toLocaleTimeString(), milliseconds),
    );
    if (check.errors > 0) this.#item.backgroundColor = new ThemeColor("statusBarItem.errorBackground");
  }

  #show(icon: string, text: string, command: string): void {
    this.#item.text = `${icon} ${text}`;
    this.#item.command = command;
    this.#item.tooltip =
      command === RESTART_SERVER ? l10n.t("Click to restart the frame server.") : undefined;
    this.#item.backgroundColor = undefined;
    this.#item.show();
  }
}

/** `clean`, `1 error, 2 warnings`, `clean, 3 notes`: notes leave a frame clean, and stay out where the user wants none. */
function summary({ errors, warnings, notes }: DatedCheck): string {
  const parts: string[] = [];
  if (errors === 0 && warnings === 0) parts.push(l10n.t("clean"));
  if (errors > 0) parts.push(errors === 1 ? l10n.t("1 error") : l10n.t("{0} errors", errors));
  if (warnings > 0) parts.push(warnings === 1 ? l10n.t("1 warning") : l10n.t("{0} warnings", warnings));
  if (notes > 0 && isOn("text.notes"))
    parts.push(notes === 1 ? l10n.t("1 note") : l10n.t("{0} notes", notes));
  return parts.join(", ");
}
