/** Which keys of a file say something of a load and cannot be read. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Pointer } from "../core/frame/frame.ts";
import { walkTree } from "./read-yaml.ts";
import { child, type Tree } from "./tree.ts";

/** Values that a load follows from. What stands beside them (the width of a sheet) loads nothing. */
const LOADS =
  /^\/site\/(snow|wind|elevation)(\/|$)|^\/floors($|\/[^/]+($|\/(live|dead|deck)(\/|$)))|^\/roof\/(covering|deck|ceiling)(\/(kind|weight|thickness|spacing)|$)|^\/siding\/|^\/timber\/[^/]+\/weight$/;

/** The key that a fact keeps from being read; undefined for facts that are about no key. */
function keyOf(fact: SourceFact): Pointer | undefined {
  switch (fact.kind) {
    case "unreadable-quantity":
    case "value-out-of-range":
    case "wrong-value":
    case "wrong-shape":
    case "missing-separator":
      return fact.path;
    case "missing-key":
      return child(fact.path, fact.key);
    case "unknown-key":
      // what it was meant to be stays unread
      return fact.nearest && child(fact.path.slice(0, fact.path.lastIndexOf("/")), fact.nearest);
    default:
      return undefined;
  }
}

/** Every key of a side is of one load: where its map ends in the middle, any of them may be what was lost. */
const SIDE = /^\/siding\/[^/]+$/;

const isLost = (node: Tree): boolean => node.kind === "blank" && node.lost;

/** Values that are lost without a fact of their own: of an inline map that is never closed the last one, and names of no anchor. */
function* lostIn(root: Tree, incomplete: ReadonlySet<Tree>): Generator<Pointer> {
  for (const { pointer, node } of walkTree(root)) {
    if (isLost(node)) yield pointer;
    if (node.kind !== "map" || !incomplete.has(node) || !SIDE.test(pointer)) continue;
    if (!node.entries.some(({ value }) => isLost(value))) yield pointer;
  }
}

/**
 * @param root the file
 * @param incomplete its maps and lists that lost a part
 * @param facts all that was noticed about it
 * @returns each key once
 */
export function unreadLoads(
  root: Tree,
  incomplete: ReadonlySet<Tree>,
  facts: readonly SourceFact[],
): Pointer[] {
  const mayBeLost =
    incomplete.size > 0 || facts.some(({ kind }) => kind === "yaml" || kind === "alias-limit");
  const lost = mayBeLost ? lostIn(root, incomplete) : [];
  const keys = [...facts.flatMap((fact) => keyOf(fact) ?? []), ...lost];
  return [...new Set(keys.filter((key) => LOADS.test(key)))];
}
