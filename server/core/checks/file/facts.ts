import type { SourceFact, SourceFacts } from "../source-facts.ts";

/** The facts of one kind. */
export function factsOf<K extends SourceFact["kind"]>(
  source: SourceFacts,
  kind: K,
): Extract<SourceFact, { kind: K }>[] {
  return source.facts.filter((f): f is Extract<SourceFact, { kind: K }> => f.kind === kind);
}
