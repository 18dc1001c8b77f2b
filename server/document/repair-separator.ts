/**
 * A colon or a comma that was forgotten: `tie {kind: …}`, `kind: tie section: 8x10`, `bents: [1, 2] from: A`. What was
 * meant is plain from the words around it, so it is reported as that, put in, and the line is read with it.
 */
import type { SourceFact } from "../core/checks/source-facts.ts";
import { type Parsed, STRUCTURAL } from "./parse-yaml.ts";
import { contentAfter } from "./repair-indent.ts";
import { KNOWN_KEYS, schemaAt } from "./schema.ts";
import { child, lineEnd, lineStart } from "./tree.ts";
import { report, type Workshop } from "./workshop.ts";

type Trap = Extract<SourceFact, { kind: "missing-separator" }>;

/** @returns false when no line that YAML stumbles over lacks a colon or a comma for all to see */
export function repairSeparator(shop: Workshop, parsed: Parsed): boolean {
  const { draft } = shop;
  const seen = new Set<number>();
  for (const error of parsed.errors) {
    if (!STRUCTURAL.has(error.code)) continue;
    const start = lineStart(draft.text, contentAfter(draft.text, error.start));
    if (seen.has(start)) continue;
    seen.add(start);
    if (seen.size > MOST_LINES) return false;
    const line = draft.text.slice(start, lineEnd(draft.text, start));
    const around = parsed.flows.findLast(
      (flow) => flow.start < start && (flow.end ?? flow.contentEnd()) > start,
    );
    const slip = slipOf(line, around?.open);
    if (slip === undefined) continue;
    const from = draft.original(start + slip.start);
    const to = draft.original(start + slip.end);
    report(shop, {
      kind: "missing-separator",
      path: "",
      start: from,
      end: to,
      written: shop.text.slice(from, to),
      reason: slip.reason,
      key: slip.key,
      proposals: [slip.proposal],
    });
    draft.insert(start + slip.at, slip.reason === "colon" ? ":" : ",");
    return true;
  }
  return false;
}

/** Errors on more lines than these are consequences of one above. */
const MOST_LINES = 5;
/** No line of a frame is longer. */
const LONGEST_LINE = 4000;

/** Offsets in the line; `at` is where the separator belongs. */
interface Slip {
  readonly reason: "colon" | "comma";
  readonly key: string;
  readonly start: number;
  readonly end: number;
  readonly at: number;
  readonly proposal: string;
}

interface Token {
  readonly sort: "open" | "close" | "comma" | "colon" | "quoted" | "words";
  readonly text: string;
  readonly start: number;
  readonly end: number;
  /** the bracket it stands in */
  readonly within: string | undefined;
}

const KEY = /^[\p{L}\d_][\p{L}\d_-]*$/u;

function slipOf(line: string, open: "{" | "[" | undefined): Slip | undefined {
  if (line.length > LONGEST_LINE) return undefined;
  const tokens = tokensOf(line, open);
  for (const [i, token] of tokens.entries()) {
    if (token.sort !== "words" || token.within === "[") continue;
    const [before, after] = [tokens[i - 1], tokens[i + 1]];
    const slip = colonSlip(before, token, after) ?? commaSlip(before, token, after);
    if (slip !== undefined) return slip;
  }
  return undefined;
}

/** `tie {`: a key with the bracket of its value. */
function colonSlip(before: Token | undefined, words: Token, after: Token | undefined): Slip | undefined {
  const first = before === undefined || before.sort === "comma" || before.sort === "open";
  if (!first || after?.sort !== "open" || !KEY.test(words.text)) return undefined;
  const { start, end, text } = words;
  return { reason: "colon", key: text, start, end, at: end, proposal: `${text}:` };
}

/** `tie section:` or `] from:`: a value, and behind it the next key. */
function commaSlip(before: Token | undefined, words: Token, after: Token | undefined): Slip | undefined {
  if (after?.sort !== "colon" || before === undefined || words.within === undefined) return undefined;
  const { text, end } = words;
  if (before.sort === "close" || before.sort === "quoted") {
    if (!KEY.test(text)) return undefined;
    const start = before.end - 1;
    return {
      reason: "comma",
      key: text,
      start,
      end,
      at: before.end,
      proposal: `${before.text.slice(-1)}, ${text}`,
    };
  }
  const key = /\s([^\s]+)$/.exec(text)?.[1];
  if (before.sort !== "colon" || key === undefined || !KEY.test(key)) return undefined;
  const value = text.slice(0, -key.length).trimEnd();
  const { start } = words;
  return { reason: "comma", key, start, end, at: start + value.length, proposal: `${value}, ${key}` };
}

/** The line's brackets, separators and what stands between them; outside of brackets commas are part of the words. */
function tokensOf(line: string, open: "{" | "[" | undefined): readonly Token[] {
  const tokens: Token[] = [];
  const within: string[] = open === undefined ? [] : [open];
  const parts =
    /(\s#.*$)|("(?:[^"\\]|\\.)*"|'(?:[^']|'')*')|([{[])|([}\]])|(,)|(:)(?=\s|$|[[\]{},])|\s+|[^\s{}[\],:"']+|./gu;
  for (const part of line.matchAll(parts)) {
    const [text, comment, quoted, opened, closed, comma, colon] = part;
    if (comment !== undefined) break;
    const place = { text, start: part.index, end: part.index + text.length, within: within.at(-1) };
    if (opened !== undefined) {
      tokens.push({ sort: "open", ...place });
      within.push(opened);
    } else if (closed !== undefined) {
      within.pop();
      tokens.push({ sort: "close", ...place, within: within.at(-1) });
    } else if (comma !== undefined && place.within !== undefined) tokens.push({ sort: "comma", ...place });
    else if (colon !== undefined) tokens.push({ sort: "colon", ...place });
    else if (quoted !== undefined && tokens.at(-1)?.sort !== "words")
      tokens.push({ sort: "quoted", ...place });
    else if (text.trim() !== "") addWords(tokens, line, place);
  }
  return tokens;
}

function addWords(tokens: Token[], line: string, place: Omit<Token, "sort">): void {
  const last = tokens.at(-1);
  if (last?.sort !== "words") tokens.push({ sort: "words", ...place });
  else tokens[tokens.length - 1] = { ...last, text: line.slice(last.start, place.end), end: place.end };
}

/**
 * `section 8x10`, `pitch 8:12`: a key and its value with nothing but a blank between them.
 * @param pointer of the map it stands in, where that is known
 * @returns its key and how it is written
 */
export function withoutColon(
  written: string,
  pointer?: string,
): Pick<Trap, "key" | "reason" | "proposals"> | undefined {
  const [, key, value] = /^([\p{L}\d_][\p{L}\d_-]*)[ \t]+([^\s].*)$/u.exec(written) ?? [];
  if (key === undefined || value === undefined || /[:,]\s|:$/.test(written)) return undefined;
  const known = KNOWN_KEYS.has(key) || (pointer !== undefined && isKeyAt(pointer, key, value));
  return known ? { key, reason: "colon", proposals: [`${key}: ${value}`] } : undefined;
}

/** Names that the file gives itself (levels, walls) have a number behind them; other words may be a sentence. */
function isKeyAt(pointer: string, key: string, value: string): boolean {
  return /^[-+]?[\d.]/.test(value) && schemaAt(undefined, child(pointer, key)) !== undefined;
}
