/** Where the editor starts us: one language server, the preview, the status bar entry and the commands. */
import { type Event, type ExtensionContext, l10n, type Uri, window } from "vscode";
import { registerAcceptFinding } from "./accept-finding.ts";
import { CheckPages } from "./check-pages.ts";
import { registerCommands } from "./commands.ts";
import { atFirstFrame } from "./first-frame.ts";
import { followFirstSteps } from "./first-steps.ts";
import { FrameServer } from "./frame-server.ts";
import { LanguageOffer } from "./language-offer.ts";
import { type DatedCheck, LastChecks } from "./last-checks.ts";
import { PreviewPanels } from "./preview/panels.ts";
import { FrameStatus } from "./status.ts";

/** What other extensions, and the tests inside the editor, get from `activate()`. */
export interface BentwrightApi {
  /** fires with a document after each check of it */
  readonly onChecked: Event<Uri>;
  /** the newest check of an open document */
  lastCheck(document: Uri): DatedCheck | undefined;
}

export function activate(context: ExtensionContext): BentwrightApi {
  const server = new FrameServer(context.asAbsolutePath("dist/server.js"));
  const checks = new LastChecks(server);
  const panels = new PreviewPanels(context.extensionUri, server);
  context.subscriptions.push(
    panels,
    checks,
    new FrameStatus(server, checks),
    followFirstSteps(server),
    new LanguageOffer(context.globalState),
    new CheckPages(server),
    registerAcceptFinding(server),
    ...registerCommands(server, panels),
    { dispose: () => server.stop().finally(() => server.dispose()) },
  );
  // Activation does not wait for it: requests do, and the commands stay to restart a server that did not start.
  const start = () =>
    server.start().catch((error: unknown) => {
      window.showErrorMessage(l10n.t("The frame server did not start: {0}", String(error)));
    });
  context.subscriptions.push(atFirstFrame(start));
  return { onChecked: checks.onChanged, lastCheck: (document) => checks.of(document) };
}
