/** What the repairs of one reading share: the text under repair, what was reported and what was covered up. */
import type { SourceFact } from "../core/checks/source-facts.ts";
import { Draft } from "./draft.ts";
import { lineStart, type Range } from "./tree.ts";

export interface Workshop {
  readonly text: string;
  readonly draft: Draft;
  readonly facts: SourceFact[];
  readonly lost: Range[];
  readonly names: string[];
  /** starts of lines (user's text) that have their finding: what else YAML says about them is a consequence */
  readonly reported: Set<number>;
  /** opening brackets (user's text) that were given their closing one */
  readonly closed: Set<number>;
  /** how often a line was repaired already: each time more of it is covered up */
  readonly tries: Map<number, number>;
  /** opening brackets (user's text) of inline maps and lists that nothing closes: what follows in them is unknown */
  readonly cut: number[];
}

export function openWorkshop(text: string): Workshop {
  return {
    text,
    draft: new Draft(text),
    facts: [],
    lost: [],
    names: [],
    reported: new Set(),
    closed: new Set(),
    tries: new Map(),
    cut: [],
  };
}

/** Reports a fact once for its line. */
export function report(shop: Workshop, fact: SourceFact & { readonly start: number }): void {
  const line = lineStart(shop.text, fact.start);
  if (shop.reported.has(line)) return;
  shop.reported.add(line);
  shop.facts.push(fact);
}

/** Notes a stretch of the repaired text as lost. */
export function lose(shop: Workshop, start: number, end: number): void {
  shop.lost.push({ start: shop.draft.original(start), end: shop.draft.original(end) });
}

/** Covers up a stretch of the repaired text; @returns false where there was nothing to cover */
export function cover(shop: Workshop, start: number, end: number): boolean {
  if (shop.draft.text.slice(start, end).trim() === "") return false;
  lose(shop, start, end);
  shop.draft.blank(start, end);
  return true;
}
