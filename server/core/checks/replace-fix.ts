import type { Pointer } from "../frame/frame.ts";
import type { Fix } from "./check.ts";

/**
 * The fix that most findings have: it puts `text` in the place of what the file gives at `path`.
 * @param path undefined = the file gives nothing there
 * @param text as it is written into the file; undefined = nothing fits
 * @returns none where either is undefined
 */
export function replaceFix(
  path: Pointer | undefined,
  text: string | undefined,
  title: (text: string) => string,
): Fix[] {
  if (path === undefined || text === undefined) return [];
  return [{ title: title(text), edits: [{ kind: "replace", path, text }] }];
}
