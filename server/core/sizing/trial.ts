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
  /** what was wrong before with its sticks or with joints in them, and still is: one for each place */
  readonly stays: readonly PlacedFault[];
  /** errors and warnings that were not there before, and those that mill and logs forbid */
  readonly spoils: readonly Finding[];
}

/** A finding at one of its places. */
export interface PlacedFault {
  readonly key: string;
  readonly check: string;
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
  const spoils = open.filter(
    (f) =>
      !isOwn(f) &&
      (keysOf(f).some((key) => (known.get(key) ?? 0) < WEIGHT[f.level]) ||
        (FORBIDDEN.has(f.check) && f.path === entry.path)),
  );
  return {
    checked: after.results.complete && checksAsMuch(before.results, after.results),
    own: open.filter(isOwn),
    stays: faultsAround(after, entry).filter(({ key }) => known.has(key)),
    spoils,
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

/** Screws and nails that are too long, short or many: they are mended themselves, no timber grows for their sake. */
const FASTENERS = /\/(fasten|screws)(\/|$)/;

/**
 * What is wrong with the sticks of an entry, or with joints in them, other than that the section is too small: a thin wall
 * beside a mortise, pegs that hold too little.
 */
export function faultsAround({ model, findings }: Evaluation, entry: SizedEntry): PlacedFault[] {
  const sticks = new Set(entry.sticks.map(({ id }) => id));
  const around = new Set([
    ...sticks,
    ...model.joints.filter(({ of, into }) => sticks.has(of.id) || sticks.has(into.id)).map(({ id }) => id),
    ...model.feet.filter(({ post }) => sticks.has(post.id)).map(({ id }) => id),
  ]);
  return findings
    .filter((f) => isOpen(f) && !isOwnSize(entry, f) && !FASTENERS.test(f.path))
    .flatMap(({ check, path, places }) =>
      places.filter((place) => around.has(place)).map((place) => ({ check, key: keyAt(check, path, place) })),
    );
}

const keyAt = (check: string, path: string, place: string): string => `${check} ${path} ${place}`;

/** One for each place of a finding, so that a fault that spreads to another stick counts as new. */
function keysOf({ check, path, places }: Finding): string[] {
  return (places.length === 0 ? [""] : places).map((place) => keyAt(check, path, place));
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
