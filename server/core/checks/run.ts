/** Runs checks over their inputs: catches their faults by name, words their findings, folds the same path into one. */

import { groupBy } from "../collect.ts";
import type { Accepted } from "../frame/frame.ts";
import { coveredBy } from "./acceptance.ts";
import type { Check, CheckInputs, Finding, Found, Level } from "./check.ts";
import type { Say } from "./say.ts";
import { sharedOf } from "./shared.ts";

/** A check with its two type parameters hidden, as the registry lists it. */
export interface AnyCheck {
  readonly meta: Check<keyof CheckInputs, unknown>["meta"];
  readonly input: keyof CheckInputs;
  readonly ofTheWhole: boolean;
  /** its page shows the formula with the numbers of the case */
  readonly showsFormula: boolean;
  run(inputs: CheckInputs, accepted: readonly Accepted[], say: Say): AcceptedFinding[];
}

/** Wraps a check so that checks of every kind stand in one list. */
export function anyCheck<I extends keyof CheckInputs, D>(check: Check<I, D>): AnyCheck {
  return {
    meta: check.meta,
    input: check.input,
    ofTheWhole: check.ofTheWhole ?? false,
    showsFormula: check.worked !== undefined,
    run: (inputs, accepted, say) => findings(check, inputs[check.input], accepted, say),
  };
}

const WEIGHT: Readonly<Record<Level, number>> = { error: 2, warning: 1, note: 0 };

/** A finding and the entry of `accept` that covers it, if one does. */
interface AcceptedFinding {
  readonly finding: Finding;
  readonly by: Accepted | undefined;
}

/** One finding for each path and level, the worst place first; accepted places stand apart from the others. */
function findings<I extends keyof CheckInputs, D>(
  check: Check<I, D>,
  input: CheckInputs[I],
  accepted: readonly Accepted[],
  say: Say,
): AcceptedFinding[] {
  const all = [...check.find(input)];
  if (all.length === 0) return [];
  const own = accepted.filter((a) => a.check === check.meta.id);
  const found = all.map((f) => ({ f, by: coveredBy(own, f) }));
  const groups = groupBy(found, ({ f, by }) =>
    [
      f.level ?? check.meta.level,
      f.onKey ? "key" : "",
      f.path,
      f.part?.from ?? f.span?.start ?? "",
      f.apart ?? "",
      by ? own.indexOf(by) : "",
    ].join(" "),
  );
  return [...groups.values()].flatMap((group) => {
    const sorted = [...group].sort((a, b) => (b.f.severity ?? 0) - (a.f.severity ?? 0));
    const worst = sorted[0];
    if (!worst) return [];
    const places = [...new Set(sorted.flatMap(({ f }) => (f.place === undefined ? [] : [f.place])))];
    const said = finding(check, worst.f, places, input, say);
    return [{ finding: worst.by ? { ...said, accepted: worst.by.because } : said, by: worst.by }];
  });
}

/** How many further places a message names before it only counts them. */
const NAMED_PLACES = 3;

function finding<I extends keyof CheckInputs, D>(
  check: Check<I, D>,
  worst: Found<D>,
  places: readonly string[],
  input: CheckInputs[I],
  say: Say,
): Finding {
  const others = places.slice(1);
  const tail =
    others.length === 0 || worst.counted
      ? ""
      : others.length <= NAMED_PLACES
        ? ` ${say.text("The same holds at {places}.", { places: say.list(others) })}`
        : ` ${say.text("The same holds at {count} more places, {places} and others.", { count: others.length, places: others.slice(0, NAMED_PLACES).join(", ") })}`;
  return {
    check: check.meta.id,
    level: worst.level ?? check.meta.level,
    path: worst.path,
    onKey: worst.onKey ?? false,
    ...(worst.part ? { part: worst.part } : {}),
    ...(worst.span ? { span: worst.span } : {}),
    message: check.words(worst.data, say) + tail,
    ...(worst.value !== undefined && Number.isFinite(worst.value) ? { value: worst.value } : {}),
    ...(worst.limit !== undefined && Number.isFinite(worst.limit) ? { limit: worst.limit } : {}),
    ...(worst.unit ? { unit: worst.unit } : {}),
    places,
    related: (worst.related ?? []).map((r) => ({ path: r.path, message: r.message(say) })),
    worked: () => check.worked?.(worst.data, say),
    fixes: () => check.fixes?.(worst.data, say, input) ?? [],
  };
}

/** A check that broke is named, so that nobody takes its silence for a pass. */
function broken(check: AnyCheck, say: Say): Finding {
  return {
    check: "check-failed",
    level: "error",
    path: "",
    onKey: false,
    message: say.text(
      "The check {check} broke on this file, so nothing is known of what it looks for. The other checks went on. Please report it with the file.",
      { check: check.meta.id },
    ),
    places: [],
    related: [],
    fixes: () => [],
  };
}

/**
 * Runs all checks. Findings come errors first; those the file accepts carry the reason.
 * @returns findings, and which accepted entries covered nothing
 */
export function runChecks(
  checks: readonly AnyCheck[],
  given: Omit<CheckInputs, "shared">,
  accepted: readonly Accepted[],
  say: Say,
): { readonly findings: Finding[]; readonly idle: Accepted[] } {
  const inputs: CheckInputs = { ...given, shared: sharedOf(given.results) };
  const all = checks.flatMap((check): AcceptedFinding[] => {
    try {
      return check.run(inputs, accepted, say);
    } catch {
      return [{ finding: broken(check, say), by: undefined }];
    }
  });
  const used = new Set(all.flatMap(({ by }) => (by ? [by] : [])));
  const said = all.map(({ finding }) => finding);
  said.sort((a, b) => WEIGHT[b.level] - WEIGHT[a.level]);
  return { findings: said, idle: accepted.filter((a) => !used.has(a)) };
}
