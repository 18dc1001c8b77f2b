/** What can be folded away: maps and lists of several lines, comments of several lines, and `# region` to `# endregion`. */
import { type FoldingRange, FoldingRangeKind } from "vscode-languageserver-types";
import type { Tree } from "../document/tree.ts";
import type { ReadText } from "./frame-service.ts";

const COMMENT = /^\uFEFF?[ \t]*#/;
const REGION = /^\uFEFF?[ \t]*#\s*(end)?region\b/;

/** @returns by their first line, the outer ones first; each lies within another or beside it */
export function foldingRangesOf(text: ReadText): FoldingRange[] {
  const lines = text.document.getText().split(/\r\n|\n|\r/);
  const parts: FoldingRange[] = [];
  const texts = new Set<number>();
  if (text.reading) parts.push(...valuesOf(text, text.reading.index.root, lines, texts));
  return nested([...commentsOf(lines, texts), ...parts]);
}

/** @param texts takes the lines that belong to a text of several lines: a `#` there begins no comment */
function valuesOf(text: ReadText, root: Tree, lines: readonly string[], texts: Set<number>): FoldingRange[] {
  const found: FoldingRange[] = [];
  const lineAt = (offset: number): number => text.document.positionAt(offset).line;
  const visit = (value: Tree, from: number): void => {
    const { start, end } = value.range;
    const last = lineAt(start + text.document.getText().slice(start, end).trimEnd().length);
    if (value.kind === "scalar") for (let line = lineAt(start) + 1; line <= last; line++) texts.add(line);
    const flow = (value.kind === "map" || value.kind === "list") && value.flow;
    // a bracket that closes on a line of its own stays in sight
    const endLine = !flow
      ? withComments(lines, from, last)
      : /^\s*[}\]]/.test(lines[last] ?? "")
        ? last - 1
        : last;
    if (endLine > from) found.push({ startLine: from, endLine });
    if (value.kind === "map")
      for (const entry of value.entries)
        if (!entry.merged && !entry.alias) visit(entry.value, lineAt(entry.keyRange.start));
    if (value.kind === "list")
      for (const item of value.items) if (!item.alias) visit(item.value, lineAt(item.value.range.start));
  };
  if (root.kind === "map")
    for (const entry of root.entries)
      if (!entry.merged && !entry.alias) visit(entry.value, lineAt(entry.keyRange.start));
  return found;
}

/** Comments behind a block that stand deeper than its key are a part of it. */
function withComments(lines: readonly string[], from: number, last: number): number {
  const indent = indentOf(lines[from] ?? "");
  let end = last;
  for (let at = last + 1; at < lines.length; at++) {
    const line = lines[at] ?? "";
    if (line.trim() === "") continue;
    if (!COMMENT.test(line) || indentOf(line) <= indent) break;
    end = at;
  }
  return end;
}

function indentOf(line: string): number {
  return line.replace("\uFEFF", "").search(/\S|$/);
}

function commentsOf(lines: readonly string[], texts: ReadonlySet<number>): FoldingRange[] {
  const found: FoldingRange[] = [];
  const regions: number[] = [];
  let first: number | undefined;
  const close = (endLine: number): void => {
    if (first !== undefined && endLine > first)
      found.push({ startLine: first, endLine, kind: FoldingRangeKind.Comment });
    first = undefined;
  };
  lines.forEach((line, at) => {
    const comment = COMMENT.test(line) && !texts.has(at);
    const region = comment ? REGION.exec(line) : null;
    if (!comment || region) close(at - 1);
    if (region?.[1] !== undefined) {
      const startLine = regions.pop();
      if (startLine !== undefined) found.push({ startLine, endLine: at, kind: FoldingRangeKind.Region });
    } else if (region) regions.push(at);
    else if (comment) first ??= at;
  });
  close(lines.length - 1);
  return found;
}

/** Of two that begin on one line the longer; what would end outside of the one it begins in is left out. */
function nested(ranges: readonly FoldingRange[]): FoldingRange[] {
  const sorted = [...ranges].sort((a, b) => a.startLine - b.startLine || b.endLine - a.endLine);
  const open: FoldingRange[] = [];
  return sorted.filter((range) => {
    while ((open.at(-1)?.endLine ?? Number.POSITIVE_INFINITY) < range.startLine) open.pop();
    const outer = open.at(-1);
    if (outer && (outer.startLine === range.startLine || range.endLine > outer.endLine)) return false;
    open.push(range);
    return true;
  });
}
