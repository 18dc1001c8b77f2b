/** The words of the reader's language, as the editor gives them when it starts the server. */
import type { Translate } from "../core/checks/speak.ts";

/**
 * @param words sentence patterns as they stand in the program, each with the pattern that takes its place; anything
 * else that came over the wire
 * @returns what looks them up: a pattern that is not there, or whose translation has a hole that it lacks, stays English
 */
export function translatorOf(words: unknown): Translate {
  if (typeof words !== "object" || words === null) return (pattern) => pattern;
  const known = new Map<string, string>();
  for (const [pattern, other] of Object.entries(words))
    if (typeof other === "string" && other !== "" && fits(other, pattern)) known.set(pattern, other);
  return (pattern) => known.get(pattern) ?? pattern;
}

const HOLE = /\{[a-z0-9-]+\}/gi;

/** A hole that nothing fills would be shown as it stands. */
function fits(other: string, pattern: string): boolean {
  const holes = new Set(pattern.match(HOLE));
  return (other.match(HOLE) ?? []).every((hole) => holes.has(hole));
}
