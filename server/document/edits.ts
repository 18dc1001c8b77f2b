/** Turns a change of the frame (a place and a text) into a change of the file, in the hand the file is written in. */
import type { Edit } from "../core/checks/check.ts";
import type { SourceIndex } from "./source-index.ts";
import {
  type Entry,
  type Item,
  keysOf,
  lineEnd,
  lineStart,
  type MapNode,
  stepTo,
  type Tree,
} from "./tree.ts";

/** UTF-16 offsets into the text that was read. */
export interface TextEdit {
  readonly start: number;
  readonly end: number;
  readonly newText: string;
}

/** What an edit needs of a reading. */
export interface Editable {
  readonly text: string;
  readonly index: SourceIndex;
}

/** The key that means "behind the last item" of a list (RFC 6901). */
const APPEND = "-";

/**
 * @param edit `replace` of a value that is not there adds it; `add` makes the maps that are missing on the way; `add`
 *   with the key `-` appends to a list. A text that would not stay one value where it goes is put in quotes.
 * @returns undefined where the change cannot be made: nothing to rename, or text that could not be read in the way
 */
export function toTextEdit(file: Editable, edit: Edit): TextEdit | undefined {
  switch (edit.kind) {
    case "characters":
      return { start: edit.start, end: edit.end, newText: edit.text };
    case "rename-key": {
      const entry = file.index.entry(edit.path);
      return entry && { ...entry.keyRange, newText: keyText(edit.text) };
    }
    case "replace":
      return replace(file, keysOf(edit.path), edit.text);
    case "add":
      return replace(file, [...keysOf(edit.path), edit.key], edit.text);
  }
}

/** One step on the way to a place: what stands there, and whether it stands inside braces or brackets. */
interface Step {
  readonly node: Tree;
  readonly step: Entry | Item | undefined;
  readonly inFlow: boolean;
}

function replace(file: Editable, keys: readonly string[], text: string): TextEdit | undefined {
  let at: Step = { node: file.index.root, step: undefined, inFlow: false };
  for (const [i, key] of keys.entries()) {
    const next = stepTo(at.node, key);
    // A merged value belongs to another entry: this map gets a key of its own, which wins.
    const merged = next !== undefined && "key" in next && next.merged === true;
    const blank = next?.value.kind === "blank" && i < keys.length - 1;
    if (next === undefined || merged) return addUnder(file, at, keys.slice(i), text);
    at = { node: next.value, step: next, inFlow: at.inFlow || isFlow(at.node) };
    if (blank) return addUnder(file, at, keys.slice(i + 1), text);
  }
  return at.step === undefined ? undefined : replaceValue(file, at, at.step, text);
}

function isFlow(node: Tree): boolean {
  return (node.kind === "map" || node.kind === "list") && node.flow;
}

function replaceValue(file: Editable, at: Step, step: Entry | Item, text: string): TextEdit {
  const newText = valueText(text, at.inFlow);
  if (step.alias !== undefined) return { ...step.alias, newText };
  const { node } = at;
  const block = (node.kind === "map" || node.kind === "list") && !node.flow;
  const folded = node.kind === "scalar" && /^[|>]/.test(file.text.slice(node.range.start, node.range.end));
  const end = block || folded ? contentEnd(file.text, step) : node.range.end;
  if (!("key" in step)) {
    const gap = node.kind === "blank" && file.text[node.range.start - 1] === "-" ? " " : "";
    return { start: node.range.start, end, newText: gap + newText };
  }
  // What stands in lines below its key begins anew right behind the colon.
  const colon = behindColon(file.text, step);
  const start = block || node.kind === "blank" ? colon : node.range.start;
  return { start, end: Math.max(end, start), newText: start === colon ? ` ${newText}` : newText };
}

function behindColon(text: string, { keyRange }: Entry): number {
  return keyRange.end + (/^\s*:/.exec(text.slice(keyRange.end, keyRange.end + 80))?.[0].length ?? 0);
}

/** Adds keys below a node; all but the first become inline maps. */
function addUnder(file: Editable, at: Step, keys: readonly string[], text: string): TextEdit | undefined {
  const [key = "", ...deeper] = keys;
  const inner = deeper.length > 0 || at.inFlow || isFlow(at.node);
  const value = deeper.reduceRight(
    (all, each) => (each === APPEND ? `[${all}]` : `{${keyText(each)}: ${all}}`),
    valueText(text, inner || key === APPEND),
  );
  const { node } = at;
  if (node.kind === "map") return addToMap(file, node, `${keyText(key)}: ${value}`);
  if (node.kind === "list") return key === APPEND ? addToList(file, at, node, value) : undefined;
  if (node.kind === "scalar" || node.lost) return undefined;
  return addToBlank(file, at, key, value);
}

function addToMap(file: Editable, map: MapNode, entry: string): TextEdit {
  const last = map.entries.findLast((each) => each.merged === undefined);
  if (map.flow) return addToFlow(file.text, map, last, entry);
  const end = last === undefined ? map.range.end : contentEnd(file.text, last);
  const at = lineEnd(file.text, end);
  const indent = " ".repeat(file.index.style(map).indent);
  return { start: at, end: at, newText: `${lineBreak(file.text)}${indent}${entry}` };
}

/** Behind the last entry, or right before the closing bracket where no comment stands between. */
function addToFlow(text: string, node: Tree, last: Entry | Item | undefined, entry: string): TextEdit {
  const close = /[}\]]/.test(text[node.range.end - 1] ?? "") ? node.range.end - 1 : node.range.end;
  const from = last === undefined ? node.range.start + 1 : contentEnd(text, last);
  const between = text.slice(from, close);
  const at = /[#\n]/.test(between) ? from : from + between.trimEnd().length;
  const comma =
    last !== undefined && !text.slice(from, at).includes(",") ? ", " : last === undefined ? "" : " ";
  return { start: at, end: at, newText: comma + entry };
}

function addToList(file: Editable, at: Step, list: Extract<Tree, { kind: "list" }>, value: string): TextEdit {
  const last = list.items.at(-1);
  if (list.flow) return addToFlow(file.text, list, last, value);
  const end = lineEnd(file.text, last === undefined ? list.range.end : contentEnd(file.text, last));
  const indent = " ".repeat(file.index.style(at.node).indent);
  return { start: end, end, newText: `${lineBreak(file.text)}${indent}- ${value}` };
}

/** Under a key without a value, and in a file without anything. */
function addToBlank(file: Editable, at: Step, key: string, value: string): TextEdit {
  const { text } = file;
  const entry = key === APPEND ? `- ${value}` : `${keyText(key)}: ${value}`;
  if (at.step === undefined) {
    const fresh = text === "" || text.endsWith("\n") || text === "\uFEFF";
    const before = fresh ? "" : lineBreak(text);
    return { start: text.length, end: text.length, newText: `${before}${entry}${lineBreak(text)}` };
  }
  const { range } = at.node;
  if (at.inFlow || !("key" in at.step)) {
    const inline = key === APPEND ? `[${value}]` : `{${entry}}`;
    const start = "key" in at.step ? behindColon(text, at.step) : range.start;
    return { start, end: Math.max(start, range.end), newText: ` ${inline}` };
  }
  const { keyRange } = at.step;
  const indent = " ".repeat(keyRange.start - lineStart(text, keyRange.start) + 2);
  const start = behindColon(text, at.step);
  // `key: ~` says "nothing" in a word, which gives way.
  if (range.end > start) return { start, end: range.end, newText: `${lineBreak(text)}${indent}${entry}` };
  const end = lineEnd(text, start);
  return { start: end, end, newText: `${lineBreak(text)}${indent}${entry}` };
}

/** Where what is written for an entry or item ends; line breaks behind a block of text left out. */
function contentEnd(text: string, step: Entry | Item): number {
  const { value } = step;
  if (step.alias !== undefined) return step.alias.end;
  let end = value.range.end;
  if (value.kind === "map" && !value.flow) {
    const last = value.entries.findLast((each) => each.merged === undefined);
    if (last !== undefined) end = contentEnd(text, last);
  } else if (value.kind === "list" && !value.flow) {
    const last = value.items.at(-1);
    if (last !== undefined) end = contentEnd(text, last);
  }
  while (end > 0 && /[\r\n]/.test(text[end - 1] ?? "")) end--;
  return "key" in step ? Math.max(end, step.keyRange.end) : end;
}

function lineBreak(text: string): string {
  return /\r?\n/.exec(text)?.[0] ?? "\n";
}

function keyText(key: string): string {
  return /^[\p{L}\p{N}_][\p{L}\p{N}_@.-]*$/u.test(key) ? key : JSON.stringify(key);
}

/** A whole inline map, inline list or quoted text, which goes in as it is. */
const WHOLE = /^(?:\[.*\]|\{.*\}|"(?:[^"\\]|\\.)*"|'(?:[^']|'')*')$/;
/** Beginnings that mean something to YAML; a minus before a number is one. */
const SPECIAL_START = /^(?:$|[\s#&*!|>%@`,[\]{}"']|[?:]|-(?![\d.]))/;
/** What ends a plain value, and characters that nobody sees. */
const SPECIAL_INSIDE = /:(?:\s|$)|\s#|\s$|[\p{Cc}\p{Zl}\p{Zp}\p{Cs}\uFEFF]/u;

/** A text that YAML would read as more or less than one value is put in quotes. */
function valueText(text: string, inFlow: boolean): string {
  if (WHOLE.test(text)) return text;
  const special =
    SPECIAL_START.test(text) || SPECIAL_INSIDE.test(text) || /^(?:~|null|Null|NULL)$/.test(text);
  return special || (inFlow && /[,[\]{}]/.test(text)) ? JSON.stringify(text) : text;
}
