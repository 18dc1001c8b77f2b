/** Ticks off steps of the walkthrough by what happens to the user's frames, through the editor's context keys. */
import { commands, type Disposable } from "vscode";
import type { FrameServer } from "./frame-server.ts";

/**
 * A frame was checked; a value was found wrong; a frame that had become worse was mended. Notes do not count, a sound
 * frame has some; nor does what a frame began with, such as a snow load that nobody knows yet.
 */
export function followFirstSteps(server: FrameServer): Disposable {
  const reached = new Set<string>();
  const reach = (key: string): void => {
    if (reached.has(key)) return;
    reached.add(key);
    void commands.executeCommand("setContext", `bentwright.${key}`, true);
  };
  const defects = new Map<string, number>();
  const worse = new Set<string>();
  return server.onChecked(({ uri, errors, warnings }) => {
    const file = uri.toString();
    const before = defects.get(file);
    const now = errors + warnings;
    defects.set(file, now);
    reach("frameChecked");
    if (before === undefined || now === before) return;
    if (now > before) {
      worse.add(file);
      reach("findingSeen");
    } else if (worse.has(file)) reach("findingMended");
  });
}
