/** Where a finding stands in the text: never more than one line, as narrow as what is wrong. Offsets are UTF-16. */
import type { Finding } from "../core/checks/check.ts";
import type { Pointer } from "../core/frame/frame.ts";
import type { SourceIndex } from "../document/source-index.ts";

export interface Place {
  readonly start: number;
  readonly end: number;
}

/**
 * The part, the value or the key that a finding is about. A value of several lines is shown by its key; what is not in
 * the text by the nearest thing around it; a part of the whole file (path '') is in characters of the file.
 * @param index undefined where the text could not be read at all
 */
export function placeOfFinding(
  text: string,
  index: SourceIndex | undefined,
  finding: Pick<Finding, "path" | "onKey" | "part">,
): Place {
  const { path, part, onKey } = finding;
  if (part && path === "") return oneLine(text, { start: part.from, end: part.to });
  const value = index?.range(path);
  if (part && value && !onKey) {
    const quoted = text[value.start] === '"' || text[value.start] === "'" ? 1 : 0;
    const start = Math.min(value.start + quoted + part.from, value.end);
    const end = Math.min(value.start + quoted + Math.max(part.to, part.from), value.end);
    if (end > start) return oneLine(text, { start, end });
  }
  const key = index?.keyRange(path);
  return onKey && key ? oneLine(text, key) : placeOfPath(text, index, path);
}

/** The value at a path, else its key, else the nearest around it that the text has. */
export function placeOfPath(text: string, index: SourceIndex | undefined, path: Pointer): Place {
  for (let at = path; index && at !== ""; at = parentOf(at)) {
    const value = at === path ? index.range(at) : undefined;
    if (value && value.end > value.start && !hasLineEnd(text, value)) return value;
    const key = index.keyRange(at);
    if (key) return oneLine(text, key);
    const item = value ?? index.range(at);
    if (item && item.end > item.start) return oneLine(text, item);
  }
  return firstLine(text);
}

/** The path of the map or list that holds `path`; the whole file's is its own. */
export function parentOf(path: Pointer): Pointer {
  return path.slice(0, Math.max(0, path.lastIndexOf("/")));
}

function hasLineEnd(text: string, place: Place): boolean {
  return /[\r\n]/.test(text.slice(place.start, place.end));
}

/** The first line of a place, without the blanks at its end; inside the text whatever the offsets say. */
function oneLine(text: string, place: Place): Place {
  const start = Math.min(Math.max(place.start, 0), text.length);
  const cut = /^[^\r\n]*/.exec(text.slice(start, Math.max(start, place.end)))?.[0] ?? "";
  return { start, end: start + (cut.trimEnd().length || cut.length) };
}

/** The first line that says something; nothing at all in an empty text. */
function firstLine(text: string): Place {
  const found = /^\uFEFF?[ \t]*(?![#\s])\S[^\r\n]*/m.exec(text);
  if (!found) return { start: 0, end: 0 };
  const start = found.index + (found[0].length - found[0].replace(/^\uFEFF?[ \t]*/, "").length);
  return { start, end: found.index + found[0].trimEnd().length };
}
