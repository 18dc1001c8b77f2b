/**
 * Every name of a file: where it stands in the text and where it is defined. One walk over the tree and the schema
 * serves definition, references, highlight and rename.
 */
import type { Pointer } from "../core/frame/frame.ts";
import type { Reading } from "../document/read.ts";
import { childSchema, ROOT, type Schema } from "../document/schema.ts";
import { child, type Entry, type Range, type Tree } from "../document/tree.ts";
import { type DefinedNames, definedNames, partsOf, SECTIONS, type Sort } from "./defined-names.ts";

/** A name as it stands in the text: a key, a value, or a part of one (`A` in `post@A1`). */
export interface NameUse {
  /** UTF-16 offsets */
  readonly range: Range;
  /** what stands there */
  readonly text: string;
  /** the entries it stands for; more than one where a kind is named, and then the very same list wherever it is */
  readonly definitions: readonly Pointer[];
  /** it is the key of its own definition */
  readonly declares: boolean;
  /** it stands, too or only, for every timber of this kind */
  readonly byKind: boolean;
}

/** @returns in the order of the text, each stretch once; names that nothing in the file answers to are left out */
export function namesIn({ text, index }: Pick<Reading, "text" | "index">): readonly NameUse[] {
  const walk: Walk = { text, names: definedNames(index.root), found: new Map() };
  declared(walk, index);
  visit(walk, index.root, ROOT, "");
  return [...walk.found.values()].sort((a, b) => a.range.start - b.range.start);
}

/** The name at an offset: the one that begins or goes on there, else the one that ends there. */
export function nameAt(names: readonly NameUse[], offset: number): NameUse | undefined {
  return (
    names.find(({ range }) => range.start <= offset && offset < range.end) ??
    names.find(({ range }) => range.end === offset)
  );
}

/** All uses of what a name stands for, its definitions among them. */
export function usesOf(names: readonly NameUse[], name: NameUse): readonly NameUse[] {
  const wanted = new Set(name.definitions);
  const known = new Map<readonly Pointer[], boolean>();
  return names.filter(({ definitions }) => {
    const shared = known.get(definitions) ?? definitions.some((path) => wanted.has(path));
    known.set(definitions, shared);
    return shared;
  });
}

interface Walk {
  readonly text: string;
  readonly names: DefinedNames;
  /** by the offset they begin at: what comes in by an alias is met more than once, and stands in one place */
  readonly found: Map<number, NameUse>;
}

/** Entries of the roof that ids are made of: `rafter@A.4`, `rafter-seat@A.4`. */
const ROOF_ENTRIES = ["/roof/rafters", "/roof/rafters/seat", "/roof/rafters/head"];

function declared(walk: Walk, index: Reading["index"]): void {
  for (const sort of Object.keys(SECTIONS) as Sort[])
    for (const entry of walk.names.of[sort].values()) declare(walk, entry, child(SECTIONS[sort], entry.key));
  for (const path of ROOF_ENTRIES) {
    const entry = index.entry(path);
    if (entry) declare(walk, entry, path);
  }
}

function declare(walk: Walk, { key, keyRange }: Entry, path: Pointer): void {
  add(walk, keyRange, key, { from: 0, to: key.length, definitions: [path], byKind: false }, true);
}

function add(
  { text, found }: Walk,
  place: Range,
  written: string,
  part: ReturnType<typeof partsOf>[number],
  declares = false,
): void {
  const start = startOf(text, place, written);
  if (start === undefined || part.to <= part.from) return;
  const range = { start: start + part.from, end: start + part.to };
  const before = found.get(range.start);
  found.set(range.start, {
    range,
    text: written.slice(part.from, part.to),
    definitions: before ? [...new Set([...before.definitions, ...part.definitions])] : part.definitions,
    declares: declares || before?.declares === true,
    byKind: part.byKind || before?.byKind === true,
  });
}

/** Where the characters of a key or value begin, behind a quote; undefined where they are written otherwise (escapes, folded lines). */
function startOf(text: string, { start, end }: Range, written: string): number | undefined {
  return [start, start + 1].find((at) => at + written.length <= end && text.startsWith(written, at));
}

function visit(walk: Walk, node: Tree, schema: Schema, path: Pointer): void {
  const sorts = sortsAt(schema, path);
  if (node.kind === "scalar") {
    if (sorts) named(walk, node.range, node.text, sorts, path);
  } else if (node.kind === "list") {
    node.items.forEach(({ value }, i) => {
      step(walk, node, schema, path, String(i), value);
    });
  } else if (node.kind === "map") {
    for (const { key, keyRange, value } of node.entries) {
      if (sorts) named(walk, keyRange, key, sorts, path);
      else if (key.includes("@") && /^\/members\/[^/]*\/measured$/.test(path))
        named(walk, keyRange, key, ["stick"], path);
      step(walk, node, schema, path, key, value);
    }
  }
}

/** While the kind is half typed, the keys mean what they mean in any kind. */
function step(walk: Walk, node: Tree, schema: Schema, path: Pointer, key: string, value: Tree): void {
  const next =
    childSchema(schema, node, key) ??
    schema.oneOf?.map((branch) => childSchema(branch, node, key)).find((each) => each !== undefined);
  if (next) visit(walk, value, next, child(path, key));
}

/** What may be named here; what is accepted may be a joint's place or a pier as well. */
function sortsAt(schema: Schema, path: Pointer): readonly string[] | undefined {
  const sorts = schema["x-ref"];
  return sorts && path.startsWith("/accept/") && sorts.includes("stick")
    ? [...sorts, "joint", "pier"]
    : sorts;
}

/** In joints and at rafters' heads a name that is a kind too means all timbers of it, the entry of that name first. */
const WIDELY = /^\/(?:joints\/[^/]*\/(?:of|into)|roof\/rafters\/head\/into)(?:\/|$)/;

function named(walk: Walk, place: Range, text: string, sorts: readonly string[], path: Pointer): void {
  for (const part of partsOf(walk.names, text, sorts, WIDELY.test(path))) add(walk, place, text, part);
}
