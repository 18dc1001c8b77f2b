/** Which sections of a file cannot be relied on to be all there. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import type { Pointer } from "../core/frame/frame.ts";
import type { Cursor } from "./cursor.ts";
import { child, keysOf } from "./tree.ts";

const SECTIONS: readonly Pointer[] = [
  "/basis",
  "/site",
  "/site/snow",
  "/site/wind",
  "/site/ground",
  "/timber",
  "/mill",
  "/grid",
  "/grid/walls",
  "/grid/bents",
  "/grid/levels",
  "/members",
  "/joints",
  "/roof",
  "/siding",
  "/roof/rafters",
  "/piers",
];

/** Most files have none: where it is not there, a line that cannot be read is no sign of it. */
const SELDOM: ReadonlySet<Pointer> = new Set(["/siding"]);

/**
 * @param root the whole file
 * @param facts what was noticed about its keys
 * @returns the sections that are missing although the file needs them, misspelt, half typed, cut off or unreadable
 */
export function lostSections(root: Cursor, facts: readonly SourceFact[]): Set<Pointer> {
  const lost = new Set<Pointer>();
  for (const path of SECTIONS) {
    const keys = keysOf(path);
    const key = keys.at(-1) ?? "";
    const parent = keys.slice(0, -1).reduce((at, each) => at.at(each), root);
    const gone = parent.has(key)
      ? unreliable(parent.at(key), facts)
      : lost.has(parent.path) || (parent.isCutItself && !SELDOM.has(path)) || missed(parent, key, facts);
    if (gone) lost.add(path);
  }
  return lost;
}

/** It is there, but not as the map it should be, or it ends in the middle. */
function unreliable(section: Cursor, facts: readonly SourceFact[]): boolean {
  if (!section.isMap || (section.isFlow && section.isCut)) return true;
  return facts.some(
    (fact) =>
      // of two entries of one name, one is meant to be another
      (fact.kind === "duplicate-key" &&
        (fact.path === section.path || fact.path === child(section.path, fact.key))) ||
      ("path" in fact && fact.path === section.path && !("start" in fact) && fact.kind !== "missing-key"),
  );
}

/** It is not there, and that has its finding: as missing, or as the misspelt or half-typed key that it was meant to be. */
function missed(parent: Cursor, key: string, facts: readonly SourceFact[]): boolean {
  return facts.some((fact) =>
    fact.kind === "missing-key"
      ? fact.path === parent.path && fact.key === key
      : fact.kind === "unknown-key" && fact.path === child(parent.path, fact.key) && meant(fact, key),
  );
}

/** Whether a key that its place does not know may be this one, misspelt or only begun. */
export function meant(fact: Extract<SourceFact, { kind: "unknown-key" }>, key: string): boolean {
  return fact.nearest === key || key.startsWith(fact.key);
}
