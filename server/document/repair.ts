/**
 * Reads a text that YAML cannot read as it stands: each fault is reported once, at its cause, covered up, and the text
 * is read again, so that one half-typed line never takes the rest of the file with it.
 */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Draft } from "./draft.ts";
import { type Flow, type Parsed, parseYaml, type TooLarge, type YamlError } from "./parse-yaml.ts";
import { contentAfter, repairIndent } from "./repair-indent.ts";
import { repairLine, repairWordAboveComment } from "./repair-line.ts";
import { repairSeparator } from "./repair-separator.ts";
import { lineEnd, lineStart, onOneLine, type Range } from "./tree.ts";
import { lose, openWorkshop, report, type Workshop } from "./workshop.ts";

export interface Repaired {
  readonly parsed: Parsed;
  readonly draft: Draft;
  readonly facts: readonly SourceFact[];
  /** what was covered up or has an error, in the user's text: nothing there has a value; ascending */
  readonly lost: readonly Range[];
  /** first words of lines that were covered up: names that the file may define there */
  readonly names: readonly string[];
  /** opening brackets of inline maps and lists that nothing closes, in the user's text */
  readonly cut: readonly number[];
}

/** Reading again costs time in proportion to the text: this many characters in all, and never more than 12 times. */
const REPAIR_BUDGET = 600_000;
const MOST_ROUNDS = 12;
/** Errors beyond these are consequences of noise; nobody reads them. */
const MOST_ERRORS = 50;

const NOISE = 200;

type Closing = Extract<SourceFact, { kind: "unclosed-bracket" }>["closings"][number];

/** @returns the reading with its facts, or the fact that the text nests too deeply */
export function readRepaired(text: string): Repaired | TooLarge {
  const shop = openWorkshop(text);
  const rounds = Math.min(MOST_ROUNDS, Math.max(2, Math.floor(REPAIR_BUDGET / (text.length + 1))));
  let parsed = parseYaml(shop.draft.text);
  if ("limit" in parsed) return parsed;
  reportDirectives(shop, parsed);
  for (let round = 0; round < roundsFor(parsed, rounds) && repairOnce(shop, parsed); round++) {
    const again = parseYaml(shop.draft.text);
    if ("limit" in again) return again;
    parsed = again;
  }
  reportRest(shop, parsed);
  shop.lost.sort((a, b) => a.start - b.start);
  return { ...shop, parsed };
}

/** A text with hundreds of errors is noise, which no repair makes a frame of. */
function roundsFor(parsed: Parsed, most: number): number {
  return parsed.errors.length > NOISE ? 1 : most;
}

function repairOnce(shop: Workshop, parsed: Parsed): boolean {
  if (parsed.errors.length === 0) return false;
  return (
    repairTabs(shop, parsed) ||
    repairQuote(shop, parsed) ||
    repairSeparator(shop, parsed) ||
    repairBracket(shop, parsed) ||
    repairWordAboveComment(shop, parsed) ||
    repairIndent(shop, parsed) ||
    repairLine(shop, parsed)
  );
}

function reportDirectives(shop: Workshop, parsed: Parsed): void {
  for (const { start, end } of parsed.directives) {
    report(shop, { kind: "directive", ...onOneLine(shop.text, start, end) });
  }
}

/** Indentation by tabs: each tab stands for one step of the file's own indentation. */
function repairTabs(shop: Workshop, parsed: Parsed): boolean {
  const errors = parsed.errors.filter((error) => error.code === "TAB_AS_INDENT");
  if (errors.length === 0) return false;
  const { draft } = shop;
  for (const error of errors.slice(0, MOST_ERRORS)) {
    const start = lineStart(shop.text, draft.original(error.start));
    const blanks = /^[ \t]*/.exec(shop.text.slice(start, lineEnd(shop.text, start)))?.[0].length ?? 0;
    report(shop, { kind: "yaml", code: error.code, ...onOneLine(shop.text, start, start + blanks) });
  }
  const step = /(?:^|\n)( +)[^ \r\n]/.exec(draft.text)?.[1]?.length ?? 2;
  const tabs = [...draft.text.matchAll(/(?<=^[ \t]*)\t/gm)].map((match) => match.index);
  if (tabs.length === 0 || tabs.length > MOST_TABS) return false;
  for (const at of tabs.reverse()) {
    draft.blank(at, at + 1);
    if (step > 1) draft.insert(at, " ".repeat(step - 1));
  }
  return true;
}

/** Each replaced tab costs a copy of the text. */
const MOST_TABS = 500;

/**
 * A quote that nothing closes, or that closes only where another one was meant to open: its opening is covered up and
 * the words behind it count as lost.
 */
function repairQuote(shop: Workshop, parsed: Parsed): boolean {
  const starts = new Set(parsed.errors.map((error) => error.start));
  const unclosed = new Set(parsed.errors.filter((e) => e.code === "MISSING_CHAR").map((e) => e.start));
  const { draft } = shop;
  const quote = parsed.quotes.find(
    ({ start, end }) => unclosed.has(end) || (starts.has(end) && draft.text.slice(start, end).includes("\n")),
  );
  if (quote === undefined) return false;
  const at = draft.original(quote.start);
  report(shop, { kind: "unclosed-quote", ...onOneLine(shop.text, at, at + 1), quote: quote.quote });
  shop.reported.add(lineStart(shop.text, at));
  lose(shop, quote.start, quote.start + 1);
  draft.blank(quote.start, quote.start + 1);
  return true;
}

function repairBracket(shop: Workshop, parsed: Parsed): boolean {
  const open = parsed.flows.filter(
    (flow) => !flow.closed && !shop.closed.has(shop.draft.original(flow.start)),
  );
  const flow = open.findLast((candidate) => candidate.mismatch !== undefined) ?? open.at(-1);
  if (flow === undefined) return false;
  const { draft } = shop;
  if (repairHash(shop, flow)) return true;
  const start = draft.original(flow.start);
  if (repairOpening(shop, flow)) return true;
  shop.closed.add(start);
  const close = flow.open === "{" ? "}" : "]";
  const behind = flow.keyBehind();
  if (behind !== undefined) {
    const { end, key } = behind;
    reportUnclosed(shop, start, flow.open, insertion(shop, end, close), draft.text.slice(key.start, key.end));
    draft.insert(end, close);
    return true;
  }
  if (flow.mismatch === undefined) {
    const end = endOfUnclosed(draft.text, flow);
    reportUnclosed(shop, start, flow.open, insertion(shop, end, close));
    // The last value is still being written: `9` may become `9 ft`.
    lose(shop, end, end);
    shop.cut.push(start);
    draft.insert(end, close);
    return true;
  }
  const { at, bracket } = flow.mismatch;
  const outer = open.some(
    (other) => other.start < flow.start && (other.open === "{" ? "}" : "]") === bracket,
  );
  const closing = insertion(shop, at, close);
  reportUnclosed(shop, start, flow.open, outer ? closing : { ...closing, end: draft.original(at + 1) });
  if (outer) draft.insert(at, close);
  else draft.overwrite(at, close);
  return true;
}

function insertion({ draft }: Workshop, offset: number, text: string): Closing {
  const at = draft.original(offset);
  return { at, end: at, text };
}

/** `bents: 1, 2]`: a list that is closed and was never opened. */
function repairOpening(shop: Workshop, { open, start, mismatch }: Flow): boolean {
  const { draft } = shop;
  if (open !== "{" || mismatch?.bracket !== "]") return false;
  // At the end of a line it is a slip for the other bracket.
  if (!/^\][ \t]*[,}]/.test(draft.text.slice(mismatch.at, mismatch.at + 20))) return false;
  const line = draft.text.slice(Math.max(start + 1, lineStart(draft.text, mismatch.at)), mismatch.at);
  const [written, key, values] = /(?<=^|[\s,])([\w-]+):[ \t]+([^\s:[\]{}#"'][^:[\]{}#"']*)$/.exec(line) ?? [];
  if (written === undefined || values === undefined) return false;
  const at = draft.original(mismatch.at);
  const from = draft.original(mismatch.at - written.length);
  report(shop, {
    kind: "missing-separator",
    path: "",
    start: from,
    end: at + 1,
    written: shop.text.slice(from, at + 1),
    reason: "brackets",
    proposals: [`${key}: [${values}]`],
  });
  draft.insert(mismatch.at - values.length, "[");
  return true;
}

/** One finding for a line, however many of its brackets are open: they are closed together. */
function reportUnclosed(
  { text, facts, reported }: Workshop,
  start: number,
  bracket: string,
  closing: Closing,
  before?: string,
): void {
  const line = lineStart(text, start);
  const at = facts.findIndex(
    (fact) => fact.kind === "unclosed-bracket" && lineStart(text, fact.start) === line,
  );
  const inner = facts[at];
  if (inner?.kind === "unclosed-bracket")
    facts[at] = {
      ...inner,
      bracket: bracket + inner.bracket,
      closings: withClosing(inner.closings, closing),
    };
  else {
    const place = onOneLine(text, start, start + 1);
    const limit = before === undefined ? {} : { before };
    facts.push({ kind: "unclosed-bracket", ...place, bracket, closings: [closing], ...limit });
  }
  reported.add(line);
}

/** Two brackets that are closed at one place are one edit, the inner one first. */
function withClosing(closings: readonly Closing[], closing: Closing): readonly Closing[] {
  const same = closings.find(({ at, end }) => at === closing.at && end === at && closing.end === at);
  return same === undefined
    ? [...closings, closing]
    : closings.map((each) => (each === same ? { ...same, text: same.text + closing.text } : each));
}

/** An inline map or list ends with its line, unless the line says that it goes on: by an open bracket or a comma. */
function endOfUnclosed(text: string, flow: Flow): number {
  const end = lineEnd(text, flow.start);
  const comment = /\s#/.exec(text.slice(flow.start, end));
  const line = text.slice(flow.start, comment === null ? end : flow.start + comment.index).trimEnd();
  const next = /^\s*([^#\r\n]*?)\s*(?:#.*)?$/m.exec(text.slice(end))?.[1] ?? "";
  const goesOn = line.endsWith(",") || (/[[{]$/.test(line) && /[[{,]$/.test(next));
  return goesOn ? Math.max(flow.contentEnd(), flow.start + line.length) : flow.start + line.length;
}

/** `{grade: #1, surface: rough}`: `#` opens a comment, which swallows the rest of the line and its bracket. */
function repairHash(shop: Workshop, flow: Flow): boolean {
  const { draft } = shop;
  const line = draft.text.slice(flow.start, lineEnd(draft.text, flow.start));
  const match = /[:,[{]\s*#([^\s,\]}]+)/.exec(line);
  if (match === null) return false;
  const written = `#${match[1] ?? ""}`;
  const at = flow.start + match.index + match[0].length - written.length;
  const start = draft.original(at);
  report(shop, hashTrap(start, written));
  lose(shop, at, at + written.length);
  draft.blank(at, at + written.length);
  return true;
}

/** `path` is put in by the caller that knows the tree. */
export function hashTrap(start: number, written: string): Extract<SourceFact, { kind: "missing-separator" }> {
  const number = /^#(\d+)$/.exec(written)?.[1];
  const proposals = number === undefined ? [`"${written}"`] : [`no-${number}`, `"${written}"`];
  return {
    kind: "missing-separator",
    path: "",
    start,
    end: start + written.length,
    written,
    reason: "hash",
    proposals,
  };
}

/** What is left after the repairs: faults inside one value, and what could not be repaired. */
function reportRest(shop: Workshop, parsed: Parsed): void {
  const { draft, text } = shop;
  const rest: readonly YamlError[] =
    parsed.second === undefined
      ? parsed.errors
      : [...parsed.errors, { code: "MULTIPLE_DOCS", start: parsed.second, end: parsed.second + 3 }];
  for (const error of rest.slice(0, MOST_ERRORS)) {
    const start = draft.original(contentAfter(draft.text, error.start));
    const range = onOneLine(text, start, Math.max(start, draft.original(error.end)));
    report(shop, { kind: "yaml", code: error.code, ...range });
    if (error.code !== "MULTIPLE_DOCS") shop.lost.push(range);
  }
}
