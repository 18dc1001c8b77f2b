/** Runs the YAML library over a text within limits, and looks its token tree through. Knows nothing of frames. */
import { Composer, type CST, type Document, Parser } from "yaml";
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Range } from "./tree.ts";

export const LIMITS = { characters: 1_000_000, entries: 60_000, depth: 64 } as const;

export type TooLarge = Extract<SourceFact, { kind: "too-large" }>;

export interface YamlError {
  readonly code: string;
  readonly start: number;
  readonly end: number;
}

/** Errors that make YAML read the lines behind them wrongly. All others stay within one value. */
export const STRUCTURAL = new Set([
  "BLOCK_AS_IMPLICIT_KEY",
  "BLOCK_IN_FLOW",
  "IMPOSSIBLE",
  "KEY_OVER_1024_CHARS",
  "MISSING_CHAR",
  "MULTILINE_IMPLICIT_KEY",
  "UNEXPECTED_TOKEN",
]);

export interface Flow {
  readonly start: number;
  /** where its closing bracket, or what YAML took for it, ends; undefined when nothing closes it */
  readonly end: number | undefined;
  readonly open: "{" | "[";
  /** a closing bracket of the other kind stands where its own should */
  readonly mismatch: { readonly at: number; readonly bracket: string } | undefined;
  readonly closed: boolean;
  /** end of the last thing written inside it; costs a walk over it */
  readonly contentEnd: () => number;
  /** of a list that goes on with `key: value`: where the last item before that ends, and where the key stands */
  readonly keyBehind: () => { readonly end: number; readonly key: Range } | undefined;
}

export interface Parsed {
  readonly document: Document.Parsed | undefined;
  readonly errors: readonly YamlError[];
  /** inline maps and lists, outer before inner */
  readonly flows: readonly Flow[];
  /** texts in quotes */
  readonly quotes: readonly (Range & { readonly quote: string })[];
  readonly directives: readonly Range[];
  /** start of a second document in the file */
  readonly second: number | undefined;
}

/**
 * A rough count of what a text holds, without reading it, so that a megabyte of noise is refused before it costs
 * a second.
 */
export function tooMuch(text: string): TooLarge | undefined {
  if (text.length > LIMITS.characters) {
    return { kind: "too-large", size: text.length, limit: LIMITS.characters, what: "characters" };
  }
  if (text.length <= LIMITS.entries) return undefined;
  let entries = 0;
  for (const _ of text.matchAll(/[\n,:"'[\]{}#&*?-]/g)) entries++;
  return entries > LIMITS.entries
    ? { kind: "too-large", size: entries, limit: LIMITS.entries, what: "entries" }
    : undefined;
}

/**
 * Parses a text as YAML 1.2 with the failsafe schema: every scalar stays text. Never throws.
 * @returns the library's document with all errors; or a fact when the text nests too deeply to be composed
 */
export function parseYaml(text: string): Parsed | TooLarge {
  const tokens = [...new Parser().parse(text)];
  const look = lookThrough(tokens);
  if (look.depth > LIMITS.depth) {
    return { kind: "too-large", size: look.depth, limit: LIMITS.depth, what: "depth" };
  }
  const composer = new Composer({
    schema: "failsafe",
    uniqueKeys: false,
    prettyErrors: false,
    keepSourceTokens: true,
    logLevel: "silent",
  });
  let document: Document.Parsed | undefined;
  let second: number | undefined;
  for (const next of composer.compose(tokens, true, text.length)) {
    if (document !== undefined) {
      second = next.range[0];
      break;
    }
    document = next;
  }
  const errors = [...(document?.errors ?? []), ...(document?.warnings ?? [])]
    .map((error) => ({ code: error.code, start: error.pos[0], end: error.pos[1] }))
    .sort((a, b) => a.start - b.start);
  return { document, errors, flows: look.flows, quotes: look.quotes, directives: look.directives, second };
}

interface Looked {
  readonly depth: number;
  readonly flows: readonly Flow[];
  readonly quotes: readonly (Range & { readonly quote: string })[];
  readonly directives: readonly Range[];
}

/** One pass over the token tree with a stack of its own, so that no depth of nesting can exhaust the call stack. */
function lookThrough(tokens: readonly CST.Token[]): Looked {
  const flows: Flow[] = [];
  const quotes: (Range & { quote: string })[] = [];
  const directives: Range[] = [];
  let depth = 0;
  const stack: { readonly token: CST.Token; readonly level: number }[] = [];
  const push = (token: CST.Token | null | undefined, level: number): void => {
    if (token) stack.push({ token, level });
  };
  for (const token of [...tokens].reverse()) push(token, 0);
  for (let next = stack.pop(); next !== undefined; next = stack.pop()) {
    const { token, level } = next;
    switch (token.type) {
      case "document":
        push(token.value, level);
        break;
      case "directive":
        directives.push({ start: token.offset, end: token.offset + token.source.length });
        break;
      case "single-quoted-scalar":
      case "double-quoted-scalar":
        quotes.push(quoteAt(token.offset, token.source));
        for (const extra of token.end ?? []) {
          // `"6""`: the library hangs what follows a finished scalar on its end.
          if (/^["']/.test(extra.source)) quotes.push(quoteAt(extra.offset, extra.source));
        }
        break;
      case "flow-collection":
      case "block-map":
      case "block-seq":
        depth = Math.max(depth, level + 1);
        if (token.type === "flow-collection") flows.push(flowOf(token));
        for (const item of [...token.items].reverse()) {
          push(item.value, level + 1);
          push("key" in item ? item.key : undefined, level + 1);
        }
        break;
      default:
    }
  }
  return { depth, flows, quotes, directives };
}

function quoteAt(start: number, source: string): Range & { readonly quote: string } {
  return { start, end: start + source.length, quote: source.slice(0, 1) };
}

function flowOf(token: CST.FlowCollection): Flow {
  const open = token.start.source === "{" ? "{" : "[";
  const wanted = open === "{" ? "flow-map-end" : "flow-seq-end";
  const end = token.end[0];
  const closed = end?.type === wanted;
  const bracket = end?.source.slice(0, 1);
  return {
    start: token.offset,
    end: end === undefined ? undefined : end.offset + (closed ? 1 : 0),
    open,
    closed,
    mismatch: !closed && (bracket === "}" || bracket === "]") ? { at: end?.offset ?? 0, bracket } : undefined,
    contentEnd: () => endOfItems(token.offset, token.items),
    keyBehind: () => (open === "[" ? keyBehind(token) : undefined),
  };
}

function keyBehind(token: CST.FlowCollection): { readonly end: number; readonly key: Range } | undefined {
  const at = token.items.findIndex(
    (item) => item.sep?.some((mark) => mark.type === "map-value-ind") && item.key?.type === "scalar",
  );
  const key = token.items[at]?.key;
  if (at < 1 || key?.type !== "scalar") return undefined;
  const range = { start: key.offset, end: key.offset + key.source.length };
  return { end: endOfItems(token.offset, token.items.slice(0, at)), key: range };
}

/** End of the last thing written inside an inline map or list, comments and blanks left out. */
function endOfItems(start: number, items: CST.FlowCollection["items"]): number {
  let end = start + 1;
  const reach = (offset: number, source: string): void => {
    end = Math.max(end, offset + source.length);
  };
  for (const item of items) {
    for (const mark of [...item.start, ...(item.sep ?? [])]) {
      if (!["space", "newline", "comment"].includes(mark.type)) reach(mark.offset, mark.source);
    }
    for (const part of [item.key, item.value]) {
      if (!part) continue;
      if (part.type === "flow-collection") end = Math.max(end, flowEnd(part));
      else if ("source" in part) reach(part.offset, part.source);
    }
  }
  return end;
}

function flowEnd(token: CST.FlowCollection): number {
  const close = token.end.find((mark) => mark.type === "flow-map-end" || mark.type === "flow-seq-end");
  return close === undefined ? endOfItems(token.offset, token.items) : close.offset + 1;
}
