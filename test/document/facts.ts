/** Facts as short lines, so that a test shows all of what was noticed and nothing else. */
import type { SourceFact } from "../../server/core/checks/source-facts.ts";
import { type Reading, readFrame } from "../../server/document/read.ts";

/** `unknown-key /site/sno (snow)`, `missing-separator "2:-4 in" → 2: -4 in` */
export function lines(reading: Reading): string[] {
  return reading.source.facts.map((fact) => line(reading, fact));
}

export function linesOf(text: string): string[] {
  return lines(readFrame(text));
}

function line({ text }: Reading, fact: SourceFact): string {
  switch (fact.kind) {
    case "missing-separator":
      return `${fact.kind} ${fact.path} ${fact.reason} "${text.slice(fact.start, fact.end)}" → ${fact.proposals.join(" | ")}`;
    case "unclosed-quote":
    case "unclosed-bracket":
    case "directive":
    case "alias-limit":
      return `${fact.kind} ${fact.start} "${text.slice(fact.start, fact.end)}"`;
    case "duplicate-key":
      return `${fact.kind} ${fact.path} ${fact.start}`;
    case "yaml":
      return `${fact.kind} ${fact.code} "${text.slice(fact.start, fact.end)}"`;
    case "unknown-key":
      return `${fact.kind} ${fact.path} (${fact.nearest ?? fact.allowed.join(", ")})`;
    case "missing-key":
      return `${fact.kind} ${fact.path} ${fact.key}`;
    case "wrong-value":
      return `${fact.kind} ${fact.path} "${fact.text}" (${fact.nearest ?? fact.allowed.join(", ")})`;
    case "wrong-shape":
      return `${fact.kind} ${fact.path} ${fact.got}, not ${fact.expected}`;
    case "unreadable-quantity":
      return `${fact.kind} ${fact.path} "${fact.text}" ${fact.reason} at ${fact.at}`;
    case "value-out-of-range":
      return `${fact.kind} ${fact.path} "${fact.text}"`;
    case "inch-section-in-mm":
      return `${fact.kind} ${fact.path} "${fact.text}" → ${fact.suggestion}`;
    case "too-large":
      return `${fact.kind} ${fact.what}`;
    default:
      return fact.kind;
  }
}

/** Where a fact stands in the text. */
export function placeOf(
  reading: Reading,
  fact: SourceFact,
): { readonly start: number; readonly end: number } {
  if ("start" in fact) return fact;
  if (fact.kind === "unknown-key") return reading.index.keyRange(fact.path);
  return reading.index.range("path" in fact ? fact.path : "");
}
