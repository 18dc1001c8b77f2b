/** Turns what the YAML library read into our own tree: source text and ranges, aliases and merge keys resolved. */
import {
  isAlias,
  isMap,
  isPair,
  isScalar,
  isSeq,
  type ParsedNode,
  type Scalar,
  type YAMLMap,
  type YAMLSeq,
} from "yaml";
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Draft } from "./draft.ts";
import { type RawEntry, untrap, untrapBlock } from "./inline-traps.ts";
import { LIMITS } from "./parse-yaml.ts";
import { hashTrap, type Repaired } from "./repair.ts";
import { withoutColon } from "./repair-separator.ts";
import { MAP_KEYS, TEXT_KEYS } from "./schema.ts";
import {
  type BlankNode,
  child,
  type Entry,
  type Item,
  lineEnd,
  lineStart,
  onOneLine,
  type Range,
  type ScalarNode,
  type Tree,
} from "./tree.ts";

export interface Built {
  readonly root: Tree;
  readonly facts: readonly SourceFact[];
  /** first words of lines that were left out */
  readonly names: readonly string[];
}

/** How often a file may refer to anchors, and how many values may come through them in all. */
const MOST_ALIASES = 100;
const MOST_EXPANDED = 10_000;

interface Size {
  readonly count: number;
  readonly height: number;
}

interface Builder {
  readonly text: string;
  readonly draft: Draft;
  readonly lost: readonly Range[];
  readonly facts: SourceFact[];
  readonly names: string[];
  readonly anchors: Map<string, Tree>;
  readonly sizes: Map<Tree, Size>;
  aliases: number;
  expanded: number;
}

/** @param text the user's text; all ranges of the tree refer to it */
export function buildTree(text: string, repaired: Repaired): Built {
  const builder: Builder = {
    text,
    draft: repaired.draft,
    lost: repaired.lost,
    facts: [],
    names: [],
    anchors: new Map(),
    sizes: new Map(),
    aliases: 0,
    expanded: 0,
  };
  const contents = repaired.parsed.document?.contents ?? null;
  const root =
    contents === null ? blank({ start: 0, end: 0 }, false) : nodeOf(builder, contents, "", 1).value;
  return { root, facts: builder.facts, names: builder.names };
}

function blank(range: Range, lost: boolean): BlankNode {
  return { kind: "blank", range, lost };
}

function rangeOf(builder: Builder, node: ParsedNode): Range {
  const { draft } = builder;
  return { start: draft.original(node.range[0]), end: draft.original(node.range[1]) };
}

function nodeOf(builder: Builder, node: ParsedNode, pointer: string, depth: number): Item {
  if (isAlias(node)) return aliasOf(builder, node.source, rangeOf(builder, node), depth);
  const value = isMap(node)
    ? mapOf(builder, node, pointer, depth)
    : isSeq(node)
      ? listOf(builder, node, pointer, depth)
      : scalarOf(builder, node, rangeOf(builder, node));
  if (node.anchor !== undefined) builder.anchors.set(node.anchor, value);
  return { value };
}

/** The value of an anchor above, unless it would make the file explode. */
function aliasOf(builder: Builder, name: string, range: Range, depth: number): Item {
  const target = builder.anchors.get(name);
  const place = onOneLine(builder.text, range.start, range.end);
  if (target === undefined) {
    builder.facts.push({ kind: "yaml", code: "BAD_ALIAS", ...place });
    return { value: blank(range, true), alias: range };
  }
  const size = sizeOf(builder, target);
  builder.aliases++;
  builder.expanded += size.count;
  if (
    builder.aliases > MOST_ALIASES ||
    builder.expanded > MOST_EXPANDED ||
    depth + size.height > LIMITS.depth
  ) {
    if (!builder.facts.some((fact) => fact.kind === "alias-limit")) {
      builder.facts.push({ kind: "alias-limit", ...place });
    }
    return { value: blank(range, true), alias: range };
  }
  return { value: target, alias: range };
}

function sizeOf(builder: Builder, tree: Tree): Size {
  const known = builder.sizes.get(tree);
  if (known !== undefined) return known;
  const children =
    tree.kind === "map"
      ? tree.entries.map((entry) => entry.value)
      : tree.kind === "list"
        ? tree.items.map((item) => item.value)
        : [];
  const sizes = children.map((each) => sizeOf(builder, each));
  const size = {
    count: sizes.reduce((sum, each) => sum + each.count, 1),
    height: 1 + sizes.reduce((most, each) => Math.max(most, each.height), 0),
  };
  builder.sizes.set(tree, size);
  return size;
}

/** Words that stand for no value in YAML's core schema. */
const NULL = new Set(["", "~", "null", "Null", "NULL"]);

function scalarOf(builder: Builder, node: Scalar.Parsed, range: Range): Tree {
  const quoted = node.type !== "PLAIN";
  const text = node.source;
  if (isLost(builder, range)) return blank(range, true);
  if (!quoted && NULL.has(text)) return blank(range, false);
  return { kind: "scalar", text, quoted, range };
}

/** An error inside a scalar, right behind it or right before it takes its value. */
function isLost({ lost, text }: Builder, { start, end }: Range): boolean {
  return lost.some(
    (gone) =>
      gone.start <= end &&
      (gone.end >= start ||
        (gone.end > start - 200 &&
          text.slice(gone.end, start).trim() === "" &&
          sameLine(text, gone.end, start))),
  );
}

function sameLine(text: string, from: number, to: number): boolean {
  return !text.slice(from, to).includes("\n");
}

function listOf(builder: Builder, node: YAMLSeq.Parsed, pointer: string, depth: number): Tree {
  const items: Item[] = [];
  node.items.forEach((item, i) => {
    if (isPair(item)) return;
    const built = nodeOf(builder, item, child(pointer, i), depth + 1);
    const hash = hashAt(builder, built.value, built.value.range.start, pointer);
    items.push(hash === undefined ? built : { value: hash });
  });
  return { kind: "list", items, range: rangeOf(builder, node), flow: node.flow === true };
}

function mapOf(builder: Builder, node: YAMLMap.Parsed, pointer: string, depth: number): Tree {
  const raw: RawEntry[] = [];
  const merged: { readonly entries: readonly Entry[] }[] = [];
  for (const pair of node.items) {
    const { key, value } = pair as { key: ParsedNode | null; value: ParsedNode | null };
    if (key === null || !isScalar(key)) {
      reportKey(builder, key);
      continue;
    }
    const keyRange = rangeOf(builder, key);
    if (key.source === "<<" && key.type === "PLAIN" && value !== null) {
      const item = nodeOf(builder, value, child(pointer, "<<"), depth + 1);
      merged.push({ entries: mergedEntries(builder, item.value, keyRange) });
      continue;
    }
    const bare = value === null;
    if (key.source === "" && !bare && keyRange.start === keyRange.end) {
      reportKey(builder, key);
      continue;
    }
    const item =
      value === null
        ? { value: blank(afterKey(builder, keyRange), false) }
        : nodeOf(builder, value, child(pointer, key.source), depth + 1);
    const entry = entryOf(builder, key.source, keyRange, item, pointer);
    const below = !item.alias && node.flow !== true;
    raw.push({ bare, entry: below ? { ...entry, value: belowKey(builder, entry, pointer) } : entry });
  }
  const flow = node.flow === true;
  const { entries, traps } = flow
    ? untrap(raw, builder.text, pointer)
    : { entries: raw.map((each) => each.entry), traps: [] };
  builder.facts.push(
    ...traps.filter((trap) => !builder.lost.some((gone) => onLineOf(builder.text, gone, trap.start))),
  );
  const unique = withoutDuplicates(builder, entries, pointer);
  return { kind: "map", entries: withMerged(unique, merged), range: rangeOf(builder, node), flow };
}

/** A line that lost something already has its finding: what looks like a trap there may be its consequence. */
function onLineOf(text: string, gone: Range, at: number): boolean {
  return lineStart(text, gone.start) === lineStart(text, at);
}

function entryOf(builder: Builder, key: string, keyRange: Range, item: Item, pointer: string): Entry {
  const doubtful = builder.lost.some((gone) => gone.start < keyRange.end && gone.end > keyRange.start);
  const base = { key, keyRange, ...(item.alias && { alias: item.alias }), ...(doubtful && { doubtful }) };
  if (
    item.value.kind !== "blank" ||
    item.alias !== undefined ||
    item.value.range.end > item.value.range.start
  ) {
    return { ...base, value: item.value };
  }
  const gone = lostValue(builder, keyRange);
  if (gone !== undefined) return { ...base, value: blank(gone, true) };
  const after = afterKey(builder, keyRange);
  const hash = hashAt(builder, item.value, after.start, child(pointer, key));
  return { ...base, value: hash ?? blank(after, item.value.lost) };
}

/**
 * A plain value that goes on below its key: entries that YAML takes for text, or a line just begun that YAML adds to the
 * value above it. Only sentences may run over several lines.
 */
function belowKey(builder: Builder, { key, keyRange, value }: Entry, pointer: string): Tree {
  const { text, facts, names } = builder;
  if (value.kind !== "scalar" || value.quoted) return value;
  const written = text.slice(value.range.start, value.range.end);
  if (!sameLine(text, keyRange.end, value.range.start)) {
    const untrapped = untrapBlock(text, value, child(pointer, key));
    if (untrapped === undefined)
      return MAP_KEYS.has(key) ? wordBelow(builder, value, child(pointer, key)) : value;
    facts.push(...untrapped.traps);
    return untrapped.map;
  }
  const first = /^[^\r\n]*/.exec(written)?.[0].trimEnd() ?? "";
  if (first.length === written.length || TEXT_KEYS.has(key)) return value;
  const [gap = ""] = /^\s*/.exec(written.slice(first.length)) ?? [];
  const line = /^[^\r\n]*/.exec(written.slice(first.length + gap.length))?.[0].trimEnd() ?? "";
  const start = value.range.start + first.length + gap.length;
  const slip = withoutColon(line, pointer);
  facts.push({
    kind: "missing-separator",
    path: pointer,
    start,
    end: start + line.length,
    written: line,
    reason: "no-value",
    proposals: [],
    ...slip,
  });
  names.push(slip?.key ?? line);
  return {
    ...value,
    text: first,
    range: { start: value.range.start, end: value.range.start + first.length },
  };
}

/** The first entry of a section, just begun: a word without its colon. */
function wordBelow({ facts, names }: Builder, value: ScalarNode, pointer: string): Tree {
  const slip = withoutColon(value.text, pointer);
  if (/\s/.test(value.text) && slip === undefined) return value;
  const { start, end } = value.range;
  facts.push({
    kind: "missing-separator",
    path: pointer,
    start,
    end,
    written: value.text,
    reason: "no-value",
    proposals: [],
    ...slip,
  });
  names.push(slip?.key ?? value.text);
  return blank(value.range, true);
}

/** The place behind the key's colon, for a value that is not there. */
function afterKey({ text }: Builder, keyRange: Range): Range {
  const colon = /^\s*:/.exec(text.slice(keyRange.end, keyRange.end + 80))?.[0].length ?? 0;
  return { start: keyRange.end + colon, end: keyRange.end + colon };
}

/** @returns what was covered up where the key's value stands */
function lostValue({ text, lost }: Builder, keyRange: Range): Range | undefined {
  const column = keyRange.start - lineStart(text, keyRange.start);
  return lost.find((gone) => {
    if (gone.start < keyRange.end || gone.start > keyRange.end + 1000) return false;
    const between = text.slice(keyRange.end, gone.start);
    if (!/^\s*:\s*(?:#.*\s*)?$/.test(between)) return gone.start <= keyRange.end;
    return !between.includes("\n") || gone.start - lineStart(text, gone.start) > column;
  });
}

/** `grade: #1` in a block: the value is a comment. */
function hashAt(builder: Builder, value: Tree, from: number, pointer: string): Tree | undefined {
  if (value.kind !== "blank" || value.lost) return undefined;
  const line = builder.text.slice(from, lineEnd(builder.text, from));
  const match = /^\s*(#\d[^\s,\]}]*)/.exec(line);
  const written = match?.[1];
  if (match === null || written === undefined) return undefined;
  const trap = { ...hashTrap(from + match[0].length - written.length, written), path: pointer };
  builder.facts.push(trap);
  return blank({ start: trap.start, end: trap.end }, true);
}

function reportKey(builder: Builder, key: ParsedNode | null): void {
  if (key === null) return;
  const range = rangeOf(builder, key);
  builder.facts.push({
    kind: "yaml",
    code: "NON_STRING_KEY",
    ...onOneLine(builder.text, range.start, range.end),
  });
}

function withoutDuplicates(builder: Builder, entries: readonly Entry[], pointer: string): readonly Entry[] {
  const seen = new Set<string>();
  return entries.filter(({ key, keyRange, doubtful }) => {
    if (!seen.has(key)) {
      seen.add(key);
      return true;
    }
    if (doubtful) return false;
    const path = child(pointer, key);
    const place = onOneLine(builder.text, keyRange.start, keyRange.end);
    builder.facts.push({ kind: "duplicate-key", path, key, first: path, ...place });
    return false;
  });
}

/** YAML merge key: one map, or a list of them of which the first that has a key wins. */
function mergedEntries(builder: Builder, value: Tree, keyRange: Range): readonly Entry[] {
  const maps = value.kind === "list" ? value.items.map((item) => item.value) : [value];
  const entries: Entry[] = [];
  for (const map of maps) {
    if (map.kind === "map") entries.push(...map.entries);
    else if (map.kind !== "blank" || !map.lost) {
      const place = onOneLine(builder.text, keyRange.start, keyRange.end);
      builder.facts.push({ kind: "yaml", code: "BAD_MERGE", ...place });
    }
  }
  return entries.map((entry) => ({ ...entry, merged: true }));
}

/** Keys that the map writes itself win over merged ones. */
function withMerged(
  own: readonly Entry[],
  merged: readonly { readonly entries: readonly Entry[] }[],
): readonly Entry[] {
  if (merged.length === 0) return own;
  const seen = new Set(own.map((entry) => entry.key));
  const added = merged.flatMap(({ entries }) =>
    entries.filter(({ key }) => {
      if (seen.has(key)) return false;
      seen.add(key);
      return true;
    }),
  );
  return [...own, ...added];
}
