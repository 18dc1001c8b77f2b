/** The commands of the palette and the editor's title bar. */
import { commands, type Disposable, l10n, Uri, window } from "vscode";
import { isFrame } from "./frame-files.ts";
import type { FrameServer } from "./frame-server.ts";
import { newFrame } from "./new-frame/new-frame.ts";
import type { PreviewPanels } from "./preview/panels.ts";

const NEW_FRAME = "bentwright.newFrame";
const OPEN_FIRST_STEPS = "bentwright.openFirstSteps";
const OPEN_PREVIEW = "bentwright.openPreview";
export const RESTART_SERVER = "bentwright.restartServer";
/** The walkthrough, as the editor names it. */
const FIRST_STEPS = "bentwright.bentwright#first-steps";

/** Registers every command; the returned disposables take them away again. */
export function registerCommands(server: FrameServer, panels: PreviewPanels): Disposable[] {
  return [
    commands.registerCommand(NEW_FRAME, () => beginFrame(server, panels)),
    commands.registerCommand(OPEN_FIRST_STEPS, () =>
      commands.executeCommand("workbench.action.openWalkthrough", FIRST_STEPS, false),
    ),
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

async function beginFrame(server: FrameServer, panels: PreviewPanels): Promise<void> {
  try {
    await newFrame(server, panels);
  } catch (error) {
    await window.showErrorMessage(l10n.t("The new frame could not be written: {0}", String(error)));
  }
}

async function restartServer(server: FrameServer): Promise<void> {
  try {
    await server.restart();
    window.setStatusBarMessage(l10n.t("The frame server was restarted."), 4000);
  } catch (error) {
    await window.showErrorMessage(l10n.t("The frame server did not start: {0}", String(error)));
  }
}
