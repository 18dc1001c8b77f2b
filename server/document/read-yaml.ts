/**
 * Text → our syntax tree and what was noticed about the writing. YAML 1.2 core, merge keys and aliases included. Never
 * throws and never hangs: what is too large is refused, what is broken is repaired around.
 */
import type { SourceFact } from "../core/checks/source-facts.ts";
import { buildTree } from "./build-tree.ts";
import { tooMuch } from "./parse-yaml.ts";
import { readRepaired } from "./repair.ts";
import { indexOf } from "./source-index.ts";
import { child, lineStart, type Range, type Tree } from "./tree.ts";

export interface YamlReading {
  readonly root: Tree;
  readonly facts: readonly SourceFact[];
  /** maps and lists that lost a line or a part of one: what they lack may be what was lost */
  readonly incomplete: ReadonlySet<Tree>;
  /** names that the file may define on lines that cannot be read */
  readonly names: readonly string[];
}

const NOTHING: Tree = { kind: "blank", range: { start: 0, end: 0 }, lost: false };

/** @param written the file; offsets in the answer are UTF-16 offsets into it */
export function readYaml(written: string): YamlReading {
  // A carriage return alone ends a line too (YAML 1.2.2, 5.4), which the library does not know.
  const text = written.replace(/\r(?!\n)/g, "\n");
  const refused = tooMuch(text);
  if (refused !== undefined) return { root: NOTHING, facts: [refused], incomplete: new Set(), names: [] };
  const repaired = readRepaired(text);
  if ("limit" in repaired) return { root: NOTHING, facts: [repaired], incomplete: new Set(), names: [] };
  const { root, facts, names: left } = buildTree(text, repaired);
  const index = indexOf(text, root);
  const placed = repaired.facts.map((fact) =>
    fact.kind === "missing-separator" ? { ...fact, path: index.pathAt(fact.start).pointer } : fact,
  );
  const names = new Set([...repaired.names, ...left, ...doubtfulNames(root)]);
  const all = [...placed, ...facts];
  const trapped = facts.flatMap((fact) => (fact.kind === "missing-separator" ? [fact] : []));
  return {
    root,
    facts: all,
    incomplete: new Set([
      ...incompleteOf(text, root, [...repaired.lost, ...trapped]),
      ...openedAt(root, new Set(repaired.cut)),
    ]),
    names: [...names],
  };
}

function doubtfulNames(tree: Tree): readonly string[] {
  if (tree.kind === "list")
    return tree.items.flatMap((item) => (item.alias ? [] : doubtfulNames(item.value)));
  if (tree.kind !== "map") return [];
  return tree.entries.flatMap((entry) => [
    ...(entry.doubtful ? [entry.key] : []),
    ...(entry.alias || entry.merged ? [] : doubtfulNames(entry.value)),
  ]);
}

/** The inline maps and lists that begin at these brackets. */
function openedAt(tree: Tree, starts: ReadonlySet<number>): readonly Tree[] {
  if (starts.size === 0 || (tree.kind !== "map" && tree.kind !== "list")) return [];
  const parts = tree.kind === "map" ? tree.entries : tree.items;
  const below = parts.flatMap((part) => (part.alias ? [] : openedAt(part.value, starts)));
  return tree.flow && starts.has(tree.range.start) ? [tree, ...below] : below;
}

/** For each stretch that was lost, the innermost map or list it was part of. */
function incompleteOf(text: string, root: Tree, lost: readonly Range[]): ReadonlySet<Tree> {
  const incomplete = new Set<Tree>();
  for (const gone of lost) {
    const column = gone.start - lineStart(text, gone.start);
    let node = root;
    for (
      let inner = within(text, node, gone, column);
      inner !== undefined;
      inner = within(text, node, gone, column)
    ) {
      node = inner;
    }
    incomplete.add(node);
  }
  return incomplete;
}

function within(text: string, node: Tree, gone: Range, column: number): Tree | undefined {
  const parts =
    node.kind === "map"
      ? node.entries
          .filter((entry) => !entry.alias && !entry.merged)
          .map((e) => ({ start: e.keyRange.start, value: e.value }))
      : node.kind === "list"
        ? node.items.filter((item) => !item.alias).map(({ value }) => ({ start: value.range.start, value }))
        : [];
  const value = parts.findLast(({ start }) => start <= gone.start)?.value;
  if (value === undefined || (value.kind !== "map" && value.kind !== "list")) return undefined;
  if (value.flow) return gone.start >= value.range.start && gone.start < value.range.end ? value : undefined;
  const indent = value.range.start - lineStart(text, value.range.start);
  // A first line that is lost stands above what is left of its block.
  if (gone.start < value.range.start) return column === indent ? value : undefined;
  return column >= indent || gone.start < value.range.end ? value : undefined;
}

/** @returns the pointer of each entry and item below, with its node: the whole tree in the order of the file */
export function* walkTree(
  node: Tree,
  pointer = "",
): Generator<{ readonly pointer: string; readonly node: Tree }> {
  yield { pointer, node };
  if (node.kind === "map")
    for (const { key, value } of node.entries) yield* walkTree(value, child(pointer, key));
  if (node.kind === "list")
    for (const [i, { value }] of node.items.entries()) yield* walkTree(value, child(pointer, i));
}
