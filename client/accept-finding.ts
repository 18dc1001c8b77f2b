/** Accepts a finding: asks for the reason, and writes what the server says into the file. */
import { commands, type Disposable, l10n, window, workspace } from "vscode";
import type { FrameServer } from "./frame-server.ts";

/** A code action of the server calls it with the finding as its argument; nobody else has one to give. */
const ACCEPT_FINDING = "bentwright.acceptFinding";

export function registerAcceptFinding(server: FrameServer): Disposable {
  return commands.registerCommand(ACCEPT_FINDING, async (finding: unknown) => {
    const because = await window.showInputBox({
      title: titleOf(finding),
      prompt: l10n.t("Why is it acceptable? The reason stands in the file and in every report."),
      placeHolder: l10n.t("reviewed by the engineer, May 2027"),
      ignoreFocusOut: true,
      validateInput: (text) =>
        text.trim() === "" ? l10n.t("Nothing is accepted without a reason.") : undefined,
    });
    if (because === undefined) return;
    try {
      const edit = await server.accept(finding, because);
      if (typeof edit === "string") await window.showWarningMessage(edit);
      else if (!(await workspace.applyEdit(edit)))
        await window.showWarningMessage(l10n.t("The file could not be changed; nothing was accepted."));
    } catch (error) {
      await window.showErrorMessage(l10n.t("The finding could not be accepted: {0}", String(error)));
    }
  });
}

/** What the code action said, as the head of the question. */
function titleOf(finding: unknown): string {
  const title: unknown =
    typeof finding === "object" && finding !== null ? Reflect.get(finding, "title") : undefined;
  return typeof title === "string" ? title : l10n.t("Accept a finding");
}
