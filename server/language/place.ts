/** Where a finding stands in the text: never more than one line, as narrow as what is wrong. Offsets are UTF-16. */
import type { Finding } from "../core/checks/check.ts";
import type { Pointer } from "../core/frame/frame.ts";
import type { SourceIndex } from "../document/source-index.ts";
import { onOneLine, type Range } from "../document/tree.ts";

/**
 * The characters, the part, the value or the key that a finding is about. A value of several lines is shown by its
 * key; what is not in the text by the nearest thing around it.
 * @param index undefined where the text could not be read at all
 */
export function placeOfFinding(
  text: string,
  index: SourceIndex | undefined,
  finding: Pick<Finding, "path" | "onKey" | "part" | "span">,
): Range {
  const { path, part, onKey, span } = finding;
  if (span) return onOneLine(text, span.start, span.end);
  const value = index?.fullRange(path);
  if (part && value && !onKey && index?.node(path)?.kind === "scalar") {
    const quoted = text[value.start] === '"' || text[value.start] === "'" ? 1 : 0;
    const start = value.start + quoted + part.from;
    const end = Math.min(value.start + quoted + part.to, value.end - quoted);
    if (end > start) return onOneLine(text, start, end);
  }
  return onKey && index ? index.keyRange(path) : placeOfPath(text, index, path);
}

/** The value at a path, else its key, else the nearest around it that the text has. */
export function placeOfPath(text: string, index: SourceIndex | undefined, path: Pointer): Range {
  return index?.range(path) ?? firstLine(text);
}

/** The first line that says something; nothing at all in an empty text. */
function firstLine(text: string): Range {
  const found = /^\uFEFF?[ \t]*(?![#\s])\S/m.exec(text);
  const start = found ? found.index + found[0].length - 1 : 0;
  return onOneLine(text, start, text.length);
}
