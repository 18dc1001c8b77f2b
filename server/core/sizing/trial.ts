/** A frame analysed anew with another section: what that leaves and what it spoils. */
import type { Finding, Level } from "../checks/check.ts";
import type { Say } from "../checks/say.ts";
import type { SourceFacts } from "../checks/source-facts.ts";
import { type Evaluation, evaluate } from "../evaluate.ts";
import type { Results } from "../results.ts";
import type { Candidate } from "./candidates.ts";
import { SIZED_CHECKS, type SizedEntry, withSection } from "./entry.ts";

/** What one candidate does to the frame. */
export interface Trial {
  /** every timber that was checked is checked again; where this is false, silence is no pass */
  readonly checked: boolean;
  /** findings of the entry's own size that remain */
  readonly own: readonly Finding[];
  /** errors and warnings that were not there before, and those that mill and logs forbid */
  readonly spoils: readonly Finding[];
}

/** What neither mill nor logs can give is no size to propose, even if the present one has the same fault. */
const FORBIDDEN: ReadonlySet<string> = new Set(["longer-than-mill", "larger-than-logs"]);

const WEIGHT: Readonly<Record<Level, number>> = { error: 2, warning: 1, note: 0 };

/**
 * Runs the whole chain, from the frame to its findings.
 * @param before the frame as it stands; @param entry one of its entries
 */
export function tryOut(
  before: Evaluation,
  source: SourceFacts,
  entry: SizedEntry,
  candidate: Candidate,
  say: Say,
): Trial {
  const frame = withSection(before.frame, entry.path, candidate.section);
  const after = evaluate(frame, source, before, say);
  const open = after.findings.filter(isOpen);
  const isOwn = (f: Finding): boolean => isOwnSize(entry, f);
  const known = gravity(before.findings.filter(isOpen));
  return {
    checked: after.results.complete && checksAsMuch(before.results, after.results),
    own: open.filter(isOwn),
    spoils: open.filter(
      (f) =>
        !isOwn(f) &&
        (keysOf(f).some((key) => (known.get(key) ?? 0) < WEIGHT[f.level]) ||
          (FORBIDDEN.has(f.check) && f.path === entry.path)),
    ),
  };
}

/** Errors and warnings that the file does not accept. */
export function isOpen(finding: Finding): boolean {
  return finding.level !== "note" && finding.accepted === undefined;
}

/** Whether a finding says that the entry's section is too small. */
export function isOwnSize({ path }: SizedEntry, finding: Finding): boolean {
  return SIZED_CHECKS.has(finding.check) && finding.path === `${path}/section`;
}

/** One for each place of a finding, so that a fault that spreads to another stick counts as new. */
function keysOf({ check, path, places }: Finding): string[] {
  return (places.length === 0 ? [""] : places).map((place) => `${check} ${path} ${place}`);
}

function gravity(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const worst = new Map<string, number>();
  for (const f of findings)
    for (const key of keysOf(f)) worst.set(key, Math.max(worst.get(key) ?? 0, WEIGHT[f.level]));
  return worst;
}

function checksAsMuch(before: Results, after: Results): boolean {
  const ids = [...(before.frame?.members.keys() ?? [])];
  return (
    ids.every((id) => after.frame?.members.has(id)) &&
    after.rafters.length >= before.rafters.length &&
    after.skipped.length <= before.skipped.length
  );
}
