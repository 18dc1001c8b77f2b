/**
 * Lines that stand too far in or out. YAML reports them where it stumbles, which is often a sound line below; here the
 * line that is out of step with those around it takes the blame.
 */
import { nearest } from "../core/text/nearest.ts";
import type { Parsed, YamlError } from "./parse-yaml.ts";
import { KNOWN_KEYS, MAP_KEYS } from "./schema.ts";
import { lineStart, onOneLine } from "./tree.ts";
import { cover, report, type Workshop } from "./workshop.ts";

/** A line that holds something besides a comment. */
interface Line {
  readonly start: number;
  readonly end: number;
  readonly indent: number;
  readonly content: string;
}

const ABOUT_INDENT = new Set([
  "BAD_INDENT",
  "BLOCK_AS_IMPLICIT_KEY",
  "MULTILINE_IMPLICIT_KEY",
  "UNEXPECTED_TOKEN",
]);

/** @returns false when no line is out of step */
export function repairIndent(shop: Workshop, parsed: Parsed): boolean {
  const error = parsed.errors.find((each) => ABOUT_INDENT.has(each.code));
  if (error === undefined) return false;
  const lines = linesOf(shop.draft.text);
  const at = lines.findLastIndex((line) => line.start <= contentAfter(shop.draft.text, error.start));
  const line = lines[at];
  if (line === undefined) return false;
  if (repairTop(shop, lines, line, error) || repairMixed(shop, parsed, lines, at, error)) return true;
  const deep = tooDeep(shop.draft.text, lines, at, error, parsed.errors);
  if (deep !== undefined) return repairDeep(shop, lines, deep, error);
  return error.code === "BAD_INDENT" && repairShallow(shop, lines, at, error);
}

function linesOf(text: string): readonly Line[] {
  const lines: Line[] = [];
  for (const match of text.matchAll(/^(\uFEFF?)( *)([^\s#][^\r\n]*)/gm)) {
    const [whole, mark = "", blanks = "", content = ""] = match;
    const start = match.index + mark.length;
    lines.push({ start, end: match.index + whole.length, indent: blanks.length, content });
  }
  return lines;
}

/** YAML counts blanks and comments before a line as part of its fault. */
export function contentAfter(text: string, offset: number): number {
  const trivia = /(?:[ \t\r\n]|(?<=^|\s)#[^\r\n]*)*/y;
  trivia.lastIndex = offset;
  const end = offset + (trivia.exec(text)?.[0].length ?? 0);
  return end < text.length ? end : offset;
}

function keyOf(line: Line): string | undefined {
  return /^["']?([^\s:"'{}[\],#-][^:"'{}[\],#]*?)["']?\s*:(?:\s|$)/.exec(line.content)?.[1];
}

/** The first lines of a file decide where all others must begin: when those begin further left, the first are wrong. */
function repairTop(shop: Workshop, lines: readonly Line[], line: Line, error: YamlError): boolean {
  const first = lines.find((each) => !each.content.startsWith("%") && each.content !== "---");
  const top = lines.findIndex((each) => each.indent === 0 && keyOf(each) !== undefined);
  const stray = lines[top - 1];
  if (first === undefined || stray === undefined || line.indent !== 0) return false;
  if (first.indent === 0 && !/^-\s/.test(`${first.content} `)) return false;
  if (first.start >= (lines[top]?.start ?? 0)) return false;
  return blame(shop, error, first, first.start + first.indent, stray.end);
}

/**
 * A line that is neither an entry nor an item, or an item among entries: of two neighbors of a block that do not go
 * together, the kind that is rarer around them is wrong.
 */
function repairMixed(
  shop: Workshop,
  parsed: Parsed,
  lines: readonly Line[],
  at: number,
  error: YamlError,
): boolean {
  const inFlow = (line: Line): boolean =>
    parsed.flows.some((flow) => flow.start < line.start && (flow.end ?? flow.contentEnd()) > line.start);
  const pair = [lines[at], lines[at - 1]].flatMap((line) => line ?? []);
  const stray = pair.find((line) => sortOf(line) === "stray" && !inFlow(line));
  if (stray !== undefined) return blame(shop, error, stray, stray.start + stray.indent, stray.end);
  const [line, before] = pair;
  if (line === undefined || before?.indent !== line.indent || sortOf(line) === sortOf(before)) return false;
  const around = lines.slice(Math.max(0, at - 4), at + 4).filter((each) => each.indent === line.indent);
  const items = around.filter((each) => sortOf(each) === "item").length;
  const rare = items * 2 <= around.length ? "item" : "entry";
  const guilty = sortOf(line) === rare ? line : before;
  return blame(shop, error, guilty, guilty.start + guilty.indent, guilty.end, keyOf(guilty));
}

/** A line with a plain word is none of these: it is an entry just begun, and `repairLine` knows what to do. */
function sortOf(line: Line): "entry" | "item" | "stray" {
  if (/^-(?:\s|$)/.test(line.content)) return "item";
  return keyOf(line) === undefined && /^[&*!{}[\]|>?%@`"',:]/.test(line.content) ? "stray" : "entry";
}

/** @returns the index of a line that is indented below a line which already has its value */
function tooDeep(
  text: string,
  lines: readonly Line[],
  at: number,
  error: YamlError,
  errors: readonly YamlError[],
): number | undefined {
  const line = lines[at];
  const before = lines[at - 1];
  if (line === undefined) return undefined;
  if (error.code === "BAD_INDENT")
    return before !== undefined && before.indent < line.indent ? at : undefined;
  if (error.code === "UNEXPECTED_TOKEN") {
    const begins = error.start === line.start + line.indent;
    return begins && before !== undefined && before.indent < line.indent ? at : undefined;
  }
  const whole = errors.find((each) => each.start === error.start && each.code === "MULTILINE_IMPLICIT_KEY");
  const inValue = error.start > line.start + line.indent && keyOf(line) !== undefined;
  const next = lines[at + 1];
  if (whole === undefined || !inValue || next === undefined || next.indent <= line.indent) return undefined;
  return lineStart(text, Math.max(whole.start, whole.end - 1)) >= next.start - 1 ? at + 1 : undefined;
}

/** Either the line above has a value that it should not have, or does not belong there, or the deep lines do not. */
function repairDeep(shop: Workshop, lines: readonly Line[], at: number, error: YamlError): boolean {
  const [before, above, line] = [lines[at - 2], lines[at - 1], lines[at]];
  if (above === undefined || line === undefined) return false;
  const rest = lines.slice(at);
  const end = rest.findIndex((each) => each.indent < line.indent);
  const group = end < 0 ? rest : rest.slice(0, end);
  const many = group.filter((each) => each.indent === line.indent).length > 1;
  const key = keyOf(above);
  const value = /^[^:]*:\s*/.exec(above.content)?.[0].length ?? 0;
  const valueAt = above.start + above.indent + value;
  // A complete inline map is what such a key wants.
  const map = above.content[value] === "{";
  if (key !== undefined && MAP_KEYS.has(key) && !map && valueAt < above.end)
    return blame(shop, error, above, valueAt, above.end);
  if (many && before?.indent === line.indent) {
    return blame(shop, error, above, above.start + above.indent, above.end, key);
  }
  if (many && key !== undefined && !map && valueAt < above.end)
    return blame(shop, error, above, valueAt, above.end);
  return blame(shop, error, line, line.start + line.indent, group.at(-1)?.end ?? line.end, keyOf(line));
}

/** The first lines of a block stand further in than those that follow: the fewer are wrong. */
function repairShallow(shop: Workshop, lines: readonly Line[], at: number, error: YamlError): boolean {
  const line = lines[at];
  if (line === undefined) return false;
  const head = lines.slice(0, at).findLastIndex((each) => each.indent < line.indent);
  const deep = lines.slice(head + 1, at);
  const first = deep[0];
  const rest = lines.slice(at);
  const end = rest.findIndex((each) => each.indent < line.indent);
  const follow = (end < 0 ? rest : rest.slice(0, end)).filter((each) => each.indent === line.indent);
  if (head < 0 || first === undefined || deep.some((each) => each.indent <= line.indent)) return false;
  if (deep.filter((each) => each.indent === first.indent).length >= follow.length) return false;
  return blame(shop, error, first, first.start + first.indent, deep.at(-1)?.end ?? first.end, keyOf(first));
}

function blame(
  shop: Workshop,
  error: YamlError,
  line: Line,
  start: number,
  end: number,
  name?: string,
): boolean {
  const { draft, text } = shop;
  const from = draft.original(start);
  const to = Math.min(draft.original(end), draft.original(line.end));
  report(shop, { kind: "yaml", code: error.code, ...onOneLine(text, from, to) });
  if (name !== undefined) shop.names.push(name);
  return cover(shop, start, end);
}

/**
 * @param start of a line that is a word without a colon, above deeper lines
 * @returns whether the word is likely their heading, and not a line just begun in the middle of a block
 */
export function isHeading(text: string, start: number, word: string): boolean {
  const lines = linesOf(text);
  const at = lines.findIndex((line) => line.start === start);
  const [before, after] = [lines[at - 1], lines[at + 1]];
  if (before === undefined || before.indent !== after?.indent) return true;
  return [...KNOWN_KEYS].some((key) => key.startsWith(word)) || nearest(word, KNOWN_KEYS) !== undefined;
}
