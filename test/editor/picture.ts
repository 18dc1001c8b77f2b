/** Takes a step of the user's and a picture of what the window shows after it, also when the step failed. */
import { join } from "node:path";
import { ROOT } from "../../client/start/installed.ts";
import type { EditorWindow } from "./editor-window.ts";
import type { Step } from "./user-steps.ts";

export async function takeStep(window: EditorWindow, step: Step): Promise<void> {
  try {
    await step.take(window);
  } finally {
    const file = `${step.name.replace(/[^a-z0-9]+/gi, "-").slice(0, 60)}.png`;
    // what fades in is shown as it stands in the end
    await window.page.screenshot({ path: join(ROOT, "out/screenshots", file), animations: "disabled" });
  }
}
