/** Covers up the part of a line that YAML cannot read: first the smallest part, then the value, then the line. */
import { type Parsed, STRUCTURAL, type YamlError } from "./parse-yaml.ts";
import { contentAfter, isHeading } from "./repair-indent.ts";
import { withoutColon } from "./repair-separator.ts";
import { lineEnd, lineStart, onOneLine } from "./tree.ts";
import { cover, lose, report, type Workshop } from "./workshop.ts";

/** @returns false when there is nothing (more) to repair */
export function repairLine(shop: Workshop, parsed: Parsed): boolean {
  for (const error of parsed.errors) {
    if (!STRUCTURAL.has(error.code)) continue;
    const start = lineStart(shop.draft.text, guiltyOffset(shop.draft.text, error, parsed.errors));
    const line = { start, end: lineEnd(shop.draft.text, start) };
    const key = shop.draft.original(start);
    const tries = shop.tries.get(key) ?? 0;
    if (tries > 2 || shop.draft.text.slice(line.start, line.end).trim() === "") continue;
    shop.tries.set(key, tries + 1);
    if (repairBareLine(shop, line.start, line.end)) return true;
    const from = shop.draft.original(error.start);
    const inLine = from >= shop.draft.original(line.start) && from <= shop.draft.original(line.end);
    const at = inLine ? error.start : line.start + indentation(shop.draft.text, line.start);
    const place = shop.draft.original(at);
    const end = inLine ? shop.draft.original(error.end) : shop.draft.original(line.end);
    report(shop, { kind: "yaml", code: error.code, ...onOneLine(shop.text, place, end) });
    if (tries === 0 && inLine && coverPart(shop, parsed, at, line.end)) return true;
    if (tries <= 1 && coverValue(shop, line.start, line.end, at)) return true;
    coverLine(shop, line.start, line.end);
    return true;
  }
  return false;
}

/** A word just begun above a comment: YAML takes the word for a text that ends there, and stumbles over all that follows. */
export function repairWordAboveComment(shop: Workshop, parsed: Parsed): boolean {
  const { draft } = shop;
  const [error] = parsed.errors;
  if (error === undefined) return false;
  const at = lineStart(draft.text, contentAfter(draft.text, error.start));
  const above = /(?:^|\n)([^\n]*)\r?\n(?:[ \t]*#[^\n]*\n|[ \t]*\r?\n)*[ \t]*#[^\n]*\n(?:[ \t]*\r?\n)*$/.exec(
    draft.text.slice(Math.max(0, at - FAR), at),
  );
  const line = above?.[1];
  if (above === null || line === undefined || /^\s*#/.test(line)) return false;
  const start = Math.max(0, at - FAR) + above.index + (above[0].startsWith("\n") ? 1 : 0);
  const inFlow = parsed.flows.some((flow) => flow.start < start && (flow.end ?? flow.contentEnd()) > start);
  return (
    !inFlow &&
    !shop.tries.has(draft.original(start)) &&
    repairBareLine(shop, start, lineEnd(draft.text, start))
  );
}

/** Comments longer than this stand between no word and its line. */
const FAR = 2000;

/**
 * A key that runs over several lines: either its first line lacks the colon (`pla` above `tie: …`), or a value is
 * followed by a line that is indented too far, and then that line is the culprit.
 */
function guiltyOffset(text: string, error: YamlError, errors: readonly YamlError[]): number {
  const whole = errors.find((e) => e.start === error.start && e.code === "MULTILINE_IMPLICIT_KEY") ?? error;
  const start = lineStart(text, error.start);
  const bare = error.start === start + indentation(text, start);
  const last =
    whole.code === "MULTILINE_IMPLICIT_KEY" ? lineStart(text, Math.max(whole.start, whole.end - 1)) : start;
  return bare || last === start ? error.start : last;
}

function indentation(text: string, start: number): number {
  let at = start;
  while (text[at] === " ") at++;
  return at - start;
}

/** A line that is a word without a colon, or `2:-4 in` without the blank behind it. */
function repairBareLine(shop: Workshop, start: number, end: number): boolean {
  const { draft } = shop;
  const line = draft.text.slice(start, end);
  const match = /^( *)([^\s#{}[\]"'|>&*!%@`,-](?:[^#]|(?<! )#)*?)\s*(?: #.*)?$/.exec(line);
  const content = match?.[2];
  if (match === null || content === undefined || /:(?:\s|$)/.test(content)) return false;
  const indent = match[1]?.length ?? 0;
  const at = start + indent;
  const from = draft.original(at);
  const joined = /^([\w-]+):(\S.*)$/.exec(content);
  const name = joined?.[1] ?? content;
  const above = joined === null && nextIndentation(draft.text, end) > indent;
  const parent = above && isHeading(draft.text, start, content);
  const slip = parent
    ? ({ key: content, reason: "colon", proposals: [`${content}:`] } as const)
    : above
      ? undefined
      : withoutColon(content);
  report(shop, {
    kind: "missing-separator",
    path: "",
    ...onOneLine(shop.text, from, from + content.length),
    written: content,
    reason: joined === null ? "no-value" : "space",
    proposals: joined === null ? [] : [`${name}: ${joined[2] ?? ""}`],
    ...slip,
  });
  lose(shop, at, at + content.length);
  shop.names.push(slip?.key ?? name);
  if (parent) draft.insert(at + content.length, ":");
  else if (joined === null) draft.blank(at, end);
  else draft.blank(at + name.length + 1, end);
  return true;
}

/** Indentation of the next line that holds something; -1 at the end of the text. */
function nextIndentation(text: string, end: number): number {
  const match = /^[ \t]*\r?\n(?:[ \t]*(?:#.*)?\r?\n)*( *)[^\s#]/.exec(text.slice(end));
  return match === null ? -1 : (match[1]?.length ?? 0);
}

/** Inside an inline map or list: up to the next comma or bracket. Outside: a bracket that nothing opened. */
function coverPart(shop: Workshop, parsed: Parsed, at: number, end: number): boolean {
  const { draft } = shop;
  const inFlow = parsed.flows.some((flow) => flow.start < at && (flow.end ?? flow.contentEnd()) > at);
  const char = draft.text[at] ?? "";
  if ("}],".includes(char) && char !== "") return cover(shop, at, at + 1);
  if (!inFlow) return false;
  let depth = 0;
  let to = at;
  for (; to < end; to++) {
    const next = draft.text[to] ?? "";
    if ("[{".includes(next)) depth++;
    else if ("]}".includes(next) && depth-- === 0) break;
    else if (next === "," && depth === 0) break;
  }
  return to > at && cover(shop, at, to);
}

function coverValue(shop: Workshop, start: number, end: number, at: number): boolean {
  const line = shop.draft.text.slice(start, end);
  const key = /^ *(?:- +)*[^\s{}[\],"'#][^{}[\],"'#]*?: +/.exec(line);
  if (key === null || at < start + key[0].length - 1) return false;
  return cover(shop, start + key[0].length, end);
}

/** The whole line, and the lines below that belong to it. */
function coverLine(shop: Workshop, start: number, end: number): void {
  const { draft } = shop;
  const line = draft.text.slice(start, end);
  const name = /^\s*(?:- +)?["']?([^\s:"'{}[\],]+)/.exec(line)?.[1];
  if (name !== undefined) shop.names.push(name);
  const indent = indentation(draft.text, start);
  let to = end;
  while (nextIndentation(draft.text, to) > indent) {
    const next = draft.text.indexOf("\n", to);
    if (next < 0) break;
    to = lineEnd(draft.text, next + 1);
  }
  cover(shop, start + indent, to);
}
