/** Leads from a place of the frame (a JSON Pointer) to the text and back. */
import {
  child,
  type Entry,
  type Item,
  keysOf,
  lineEnd,
  lineStart,
  onOneLine,
  type Range,
  stepTo,
  type Tree,
} from "./tree.ts";

/** What stands at an offset of the text. */
interface Place {
  readonly pointer: string;
  /** the offset is on the key of the entry, not on its value */
  readonly onKey: boolean;
  /** the value at `pointer` */
  readonly node: Tree;
}

/** How a map or list is written, for an edit in the same hand. */
interface Style {
  readonly flow: boolean;
  /** column of its keys or dashes, when it stands in lines of its own */
  readonly indent: number;
}

export interface SourceIndex {
  readonly root: Tree;
  /**
   * Where to point for a place: a scalar's own characters, for everything longer its key. Never longer than one line;
   * where nothing stands, the nearest place above it that exists.
   */
  range(pointer: string): Range;
  /** the key's characters; for an item of a list, the item; where nothing stands, the nearest place above */
  keyRange(pointer: string): Range;
  /** the whole of a value, over as many lines as it takes; undefined where nothing stands */
  fullRange(pointer: string): Range | undefined;
  /** the value at a place, also through anchors and merge keys */
  node(pointer: string): Tree | undefined;
  /** the entry of a map at a place; undefined for items of lists, for the whole file and where nothing stands */
  entry(pointer: string): Entry | undefined;
  /** the innermost place whose text holds the offset */
  pathAt(offset: number): Place;
  style(node: Tree): Style;
}

/** @param text the user's text, which the tree's ranges refer to */
export function indexOf(text: string, root: Tree): SourceIndex {
  const find = (pointer: string): Found => walk(root, pointer);
  return {
    root,
    range(pointer) {
      const { step, exact } = find(pointer);
      return exact ? shown(text, root, step) : keyShown(text, root, step);
    },
    keyRange: (pointer) => keyShown(text, root, find(pointer).step),
    fullRange(pointer) {
      const { step, exact, node } = find(pointer);
      return exact ? (step?.alias ?? node.range) : undefined;
    },
    node(pointer) {
      const { node, exact } = find(pointer);
      return exact ? node : undefined;
    },
    entry(pointer) {
      const { step, exact } = find(pointer);
      return exact && step !== undefined && "key" in step ? step : undefined;
    },
    pathAt: (offset) => placeAt(text, root, offset),
    style: (node) => styleOf(text, node),
  };
}

interface Found {
  readonly node: Tree;
  /** the entry or item that holds the node; undefined for the whole file */
  readonly step: Entry | Item | undefined;
  readonly exact: boolean;
}

function walk(root: Tree, pointer: string): Found {
  let found: Found = { node: root, step: undefined, exact: true };
  for (const key of keysOf(pointer)) {
    const step: Entry | Item | undefined = stepTo(found.node, key);
    if (step === undefined) return { ...found, exact: false };
    found = { node: step.value, step, exact: true };
  }
  return found;
}

function shown(text: string, root: Tree, step: Entry | Item | undefined): Range {
  if (step === undefined) return firstKey(text, root);
  const { value } = step;
  const scalar = value.kind === "scalar" && !text.slice(value.range.start, value.range.end).includes("\n");
  if (scalar || (value.kind === "blank" && value.range.end > value.range.start)) {
    return onOneLine(text, value.range.start, value.range.end);
  }
  if ("key" in step) return keyShown(text, root, step);
  return onOneLine(text, value.range.start, value.range.end);
}

function keyShown(text: string, root: Tree, step: Entry | Item | undefined): Range {
  if (step === undefined) return firstKey(text, root);
  const range = "key" in step ? step.keyRange : step.value.range;
  return onOneLine(text, range.start, range.end);
}

/** The whole file is shown by its first key, or by its first character. */
function firstKey(text: string, root: Tree): Range {
  const first = root.kind === "map" ? root.entries[0]?.keyRange : undefined;
  return first === undefined
    ? onOneLine(text, root.range.start, root.range.start + 1)
    : onOneLine(text, first.start, first.end);
}

/** Values that came in by an anchor or a merge key stand elsewhere: they are found where they are written. */
function placeAt(text: string, root: Tree, offset: number): Place {
  let place: Place = { pointer: "", onKey: false, node: root };
  for (;;) {
    const { node, pointer }: Place = place;
    if (node.kind === "map") {
      const own = node.entries.filter((entry) => entry.merged === undefined);
      const entry = own.findLast(({ keyRange }) => keyRange.start <= offset);
      if (entry === undefined) return place;
      const next = child(pointer, entry.key);
      if (offset <= entry.keyRange.end) return { pointer: next, onKey: true, node: entry.value };
      if (!reaches(text, entry, node.flow, offset)) return place;
      place = { pointer: next, onKey: false, node: entry.value };
      if (entry.alias !== undefined) return place;
    } else if (node.kind === "list") {
      const at = node.items.findLastIndex((item) => (item.alias ?? item.value.range).start <= offset);
      const item = node.items[at];
      if (item === undefined || offset > (item.alias ?? item.value.range).end) return place;
      place = { pointer: child(pointer, at), onKey: false, node: item.value };
      if (item.alias !== undefined) return place;
    } else return place;
  }
}

/** Behind the key, up to the end of the value; behind a missing value, up to the end of the line or the next comma. */
function reaches(text: string, entry: Entry, flow: boolean, offset: number): boolean {
  const { start, end } = entry.alias ?? entry.value.range;
  if (offset <= end) return true;
  if (offset < start) return true;
  if (entry.value.kind === "map" || entry.value.kind === "list")
    return !flow && !entryIsFlow(entry) && deeper(text, entry, offset);
  const line = lineEnd(text, entry.keyRange.start);
  return offset <= line && !(flow && /[,}\]]/.test(text.slice(end, offset)));
}

function entryIsFlow(entry: Entry): boolean {
  return (entry.value.kind === "map" || entry.value.kind === "list") && entry.value.flow;
}

/** On a blank line behind a block, the column tells whether the cursor still belongs to it. */
function deeper(text: string, entry: Entry, offset: number): boolean {
  const column = entry.keyRange.start - lineStart(text, entry.keyRange.start);
  return offset - lineStart(text, offset) > column;
}

function styleOf(text: string, node: Tree): Style {
  const flow = (node.kind === "map" || node.kind === "list") && node.flow;
  const first =
    node.kind === "map"
      ? node.entries.find((entry) => entry.merged === undefined)?.keyRange.start
      : node.kind === "list"
        ? node.range.start
        : undefined;
  const at = first ?? node.range.start;
  return { flow, indent: at - lineStart(text, at) };
}
