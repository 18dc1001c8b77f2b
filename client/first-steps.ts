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
  return server.onChecked(({ uri, errors, warnings }) => {
    const before = defects.get(uri.toString());
    const now = errors + warnings;
    defects.set(uri.toString(), now);
    reach("frameChecked");
    if (now > (before ?? 0)) reach("findingSeen");
    if (now < (before ?? 0)) reach("findingMended");
  });
}
