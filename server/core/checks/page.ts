/**
 * What a reader is told of a check and of one case of it, as labelled parts: `bentwright explain`, the check reference
 * and the page in the editor are written from the same ones.
 */
import { amountWords } from "./amount-words.ts";
import type { CheckMeta, Finding, Level, SourceStatus, Unit } from "./check.ts";
import { stepsOf } from "./formula-words.ts";
import type { Say } from "./say.ts";

/** A paragraph and what it is about: `Why`. */
export interface PagePart {
  readonly label: string;
  readonly text: string;
  /** the same text step by step, where it has more than one */
  readonly steps?: readonly string[];
}

/** How well the source of a rule is known, in words. */
const SOURCE_STATUS: Readonly<Record<SourceStatus, string>> = {
  published: "seen in the publication",
  derived: "worked out from a published rule",
  memory: "remembered from the publication, not seen again",
  "common-practice": "common practice of the trade",
  "file-format": "a rule of the frame file",
};

const LEVELS: Readonly<Record<Level, string>> = { error: "Error", warning: "Warning", note: "Note" };

/** What holds of every case: what, why, formula, what to do, source and how well it is known. */
export function metaParts({ source, explanation }: CheckMeta, say: Say): PagePart[] {
  const { what, why, formula, remedy } = explanation;
  return [
    { label: say.text("What"), text: say.text(what) },
    { label: say.text("Why"), text: say.text(why) },
    ...(formula === undefined ? [] : [{ label: say.text("Formula"), text: say.text(formula) }]),
    { label: say.text("What to do"), text: say.text(remedy) },
    { label: say.text("Source"), text: `${source.text} (${say.text(SOURCE_STATUS[source.status])})` },
  ];
}

/**
 * What holds of this case: the message with its numbers, the formula worked with them (else the number and its limit),
 * and the places.
 */
export function caseParts(finding: Finding, say: Say): PagePart[] {
  const { level, message, places, accepted } = finding;
  const worked = finding.worked?.();
  const bare = worked === undefined ? numberWords(finding, say) : undefined;
  return [
    { label: say.text(LEVELS[level]), text: message },
    ...(worked === undefined ? [] : [workedPart(worked, say)]),
    ...(bare === undefined ? [] : [{ label: say.text("Number and limit"), text: bare }]),
    ...(places.length === 0 ? [] : [{ label: say.text("Where"), text: say.list(places) }]),
    ...(accepted === undefined ? [] : [{ label: say.text("Accepted because"), text: accepted }]),
  ];
}

function workedPart(worked: string, say: Say): PagePart {
  const label = say.text("With its numbers");
  const steps = stepsOf(worked);
  return steps.length > 1 ? { label, text: worked, steps } : { label, text: worked };
}

/** `2 1/2 in, limit 3 in`; undefined without a limit to compare with. */
function numberWords({ value, limit, unit }: Finding, say: Say): string | undefined {
  if (value === undefined || limit === undefined || unit === undefined) return undefined;
  return say.text("{value}, limit {limit}", {
    value: inUnit(value, unit, say),
    limit: inUnit(limit, unit, say),
  });
}

function inUnit(value: number, unit: Unit, say: Say): string {
  if (unit === "count") return say.number(value, 0);
  return amountWords({ value, unit: unit === "deg" ? "degree" : unit }, say);
}
