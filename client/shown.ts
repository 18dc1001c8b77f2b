/** Which of the server's answers the editor shows: the user's settings, between the language client and the editor. */
import { type Diagnostic, DiagnosticSeverity, type Disposable, type Uri, workspace } from "vscode";
import type { LanguageClient, Middleware } from "vscode-languageclient/node";
import { isFrame } from "./frame-files.ts";
import { isOn, onSwitch } from "./settings.ts";

interface Found {
  readonly uri: Uri;
  readonly diagnostics: Diagnostic[];
}

export class Shown implements Disposable {
  readonly middleware: Middleware = {
    provideInlayHints: (document, range, token, next) =>
      isOn("text.sectionUse") ? next(document, range, token) : [],
    provideCodeLenses: (document, token, next) => (isOn("text.stickCounts") ? next(document, token) : []),
    handleDiagnostics: (uri, diagnostics, next) => {
      if (diagnostics.length === 0) this.#found.delete(uri.toString());
      else this.#found.set(uri.toString(), { uri, diagnostics });
      next(uri, wanted(diagnostics));
    },
  };
  /** all that the server has found, so that what was left out can come back */
  readonly #found = new Map<string, Found>();
  #subscriptions: readonly Disposable[] = [];

  /** From now on what the client shows changes with the settings. */
  watch(client: LanguageClient): void {
    this.#subscriptions = [
      // one provider serves all frames: whichever of them finds it, the editor asks anew for each
      onSwitch("text.sectionUse", () => {
        const frame = workspace.textDocuments.find(isFrame);
        if (frame)
          client.getFeature("textDocument/inlayHint").getProvider(frame)?.onDidChangeInlayHints.fire();
      }),
      onSwitch("text.stickCounts", () => {
        const frame = workspace.textDocuments.find(isFrame);
        if (frame)
          client.getFeature("textDocument/codeLens").getProvider(frame)?.onDidChangeCodeLensEmitter.fire();
      }),
      onSwitch("text.notes", () => {
        for (const { uri, diagnostics } of this.#found.values())
          client.diagnostics?.set(uri, wanted(diagnostics));
      }),
    ];
  }

  /** Forgets the findings of a server that has gone: the editor has taken them away. */
  forget(): void {
    this.#found.clear();
  }

  dispose(): void {
    for (const subscription of this.#subscriptions) subscription.dispose();
  }
}

function wanted(diagnostics: Diagnostic[]): Diagnostic[] {
  if (isOn("text.notes")) return diagnostics;
  return diagnostics.filter(({ severity }) => severity <= DiagnosticSeverity.Warning);
}
