/** The user's settings that are on or off. Each is read when it is needed, so that a change counts at once. */
import { type Disposable, workspace } from "vscode";

const SECTION = "bentwright";

/** As package.json names and describes them; each is on until the user turns it off. */
export type Switch = "text.sectionUse" | "text.stickCounts" | "text.notes" | "elevation.followCursor";

export function isOn(name: Switch): boolean {
  return workspace.getConfiguration(SECTION).get(name, true);
}

/** Calls `then` after each change of the setting. */
export function onSwitch(name: Switch, then: () => void): Disposable {
  return workspace.onDidChangeConfiguration((change) => {
    if (change.affectsConfiguration(`${SECTION}.${name}`)) then();
  });
}
