/**
 * The syntax tree of a frame file: what stands where, as source text. Ranges are UTF-16 offsets into the text as the
 * user wrote it. Nothing is converted: keys keep their order and their spelling, scalars their characters.
 */

/** Offsets into the text, `end` exclusive. */
export interface Range {
  readonly start: number;
  readonly end: number;
}

export type Tree = MapNode | ListNode | ScalarNode | BlankNode;

export interface MapNode {
  readonly kind: "map";
  readonly entries: readonly Entry[];
  readonly range: Range;
  /** written in braces */
  readonly flow: boolean;
}

export interface Entry {
  readonly key: string;
  readonly keyRange: Range;
  readonly value: Tree;
  /** where `*name` is written, when the value comes from an anchor; the value's ranges then lie at the anchor */
  readonly alias?: Range;
  /** came in through `<<`; its ranges lie where it is written */
  readonly merged?: true;
  /** the key's line has a YAML error: the key may not be the one that was meant */
  readonly doubtful?: true;
}

interface ListNode {
  readonly kind: "list";
  readonly items: readonly Item[];
  readonly range: Range;
  readonly flow: boolean;
}

export interface Item {
  readonly value: Tree;
  readonly alias?: Range;
}

export interface ScalarNode {
  readonly kind: "scalar";
  /** without its quotes, lines folded */
  readonly text: string;
  /** in quotes or a block of text: never a number or a choice of true and false */
  readonly quoted: boolean;
  readonly range: Range;
}

/** No value: nothing is written, or (`lost`) what is written cannot be read and has been reported. */
export interface BlankNode {
  readonly kind: "blank";
  readonly range: Range;
  readonly lost: boolean;
}

/** @returns the entry of that key, or undefined; never looks at prototypes */
export function entryOf(node: Tree | undefined, key: string): Entry | undefined {
  return node?.kind === "map" ? node.entries.find((entry) => entry.key === key) : undefined;
}

/** @returns the value of that key, or undefined when there is none or `node` is not a map */
export function valueAt(node: Tree | undefined, key: string): Tree | undefined {
  return entryOf(node, key)?.value;
}

/** @returns the entry or item of that key or number; undefined when there is none */
export function stepTo(node: Tree | undefined, key: string): Entry | Item | undefined {
  if (node?.kind !== "list") return entryOf(node, key);
  return /^\d+$/.test(key) ? node.items[Number(key)] : undefined;
}

/** @returns the JSON Pointer of a child: `~` and `/` escaped as `~0` and `~1` (RFC 6901) */
export function child(pointer: string, key: string | number): string {
  const token = typeof key === "number" ? String(key) : key.replaceAll("~", "~0").replaceAll("/", "~1");
  return `${pointer}/${token}`;
}

/** @returns the keys of a JSON Pointer, unescaped; `''` has none */
export function keysOf(pointer: string): readonly string[] {
  return pointer
    .split("/")
    .slice(1)
    .map((token) => token.replaceAll("~1", "/").replaceAll("~0", "~"));
}

/**
 * Cuts a range to its first line and into the text, and widens an empty one to a character of its line, so that an
 * editor can always underline it.
 */
export function onOneLine(text: string, start: number, end: number): Range {
  let from = Math.max(0, Math.min(start, text.length));
  // An error at the end of a line is reported at the start of the next one's break: stay on the line before it.
  while (from > 0 && from === text.length && isBreak(text, from - 1)) from--;
  let to = from;
  while (to < Math.min(end, text.length) && !isBreak(text, to)) to++;
  if (to > from) return { start: from, end: to };
  if (to < text.length && !isBreak(text, to)) return { start: from, end: to + 1 };
  if (from > 0 && !isBreak(text, from - 1)) return { start: from - 1, end: to };
  return { start: from, end: to };
}

function isBreak(text: string, at: number): boolean {
  const char = text[at];
  return char === "\n" || char === "\r";
}

/** @returns the offset of the first character of the line that holds `offset`; a byte order mark is no part of it */
export function lineStart(text: string, offset: number): number {
  let start = Math.max(0, offset);
  // between the two characters of a break
  if (text[start] === "\n" && text[start - 1] === "\r") start--;
  while (start > 0 && !isBreak(text, start - 1)) start--;
  return start === 0 && offset > 0 && text.startsWith("\uFEFF") ? 1 : start;
}

/** @returns the offset just before the line break (or the end of the text) after `offset` */
export function lineEnd(text: string, offset: number): number {
  const next = /[\r\n]/g;
  next.lastIndex = offset;
  return next.exec(text)?.index ?? text.length;
}
