/** The commands of the palette and the editor's title bar. */
import { commands, type Disposable, l10n, Uri, window } from "vscode";
import { isFrame } from "./frame-files.ts";
import type { FrameServer } from "./frame-server.ts";
import type { PreviewPanels } from "./preview/panels.ts";

const OPEN_PREVIEW = "bentwright.openPreview";
export const RESTART_SERVER = "bentwright.restartServer";

/** Registers every command; the returned disposables take them away again. */
export function registerCommands(server: FrameServer, panels: PreviewPanels): Disposable[] {
  return [
    commands.registerCommand(OPEN_PREVIEW, (resource: unknown) => openPreview(panels, resource)),
    commands.registerCommand(RESTART_SERVER, () => restartServer(server)),
  ];
}

/** The title bar hands over the file it belongs to; the palette and keys mean the editor in front. */
async function openPreview(panels: PreviewPanels, resource: unknown): Promise<void> {
  const active = window.activeTextEditor?.document;
  if (resource instanceof Uri) panels.open(resource);
  else if (active !== undefined && isFrame(active)) panels.open(active.uri);
  else
    await window.showInformationMessage(
      l10n.t("Open a *.frame.yaml file first: the elevation is drawn from it."),
    );
}

async function restartServer(server: FrameServer): Promise<void> {
  try {
    await server.restart();
    window.setStatusBarMessage(l10n.t("The frame server was restarted."), 4000);
  } catch (error) {
    await window.showErrorMessage(l10n.t("The frame server did not start: {0}", String(error)));
  }
}
