/** Which keys of a file say something of a load and cannot be read. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Pointer } from "../core/frame/frame.ts";
import { child } from "./tree.ts";

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

/** @param facts all that was noticed about the file; @returns each key once, in their order */
export function unreadLoads(facts: readonly SourceFact[]): Pointer[] {
  const keys = facts.flatMap((fact) => keyOf(fact) ?? []);
  return [...new Set(keys.filter((key) => LOADS.test(key)))];
}
