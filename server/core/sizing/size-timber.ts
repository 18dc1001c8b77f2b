/**
 * "Size this timber": the smallest section of the usual series, within mill and logs, with which the frame passes. Each
 * candidate is judged by the whole chain, with the frame analysed anew; nothing is scaled or guessed.
 */
import type { Finding } from "../checks/check.ts";
import type { Say } from "../checks/say.ts";
import type { SourceFacts } from "../checks/source-facts.ts";
import type { Evaluation } from "../evaluate.ts";
import { type Candidate, type Line, linesOf, squaresOf } from "./candidates.ts";
import { entryOf, type SizedEntry } from "./entry.ts";
import { type SearchOutcome, smallestPassing, type Verdict } from "./search.ts";
import { faultsAround, isOpen, isOwnSize, type Trial, tryOut } from "./trial.ts";

export type Sizing =
  | {
      readonly kind: "sized";
      readonly entry: SizedEntry;
      readonly to: Candidate;
      /** no smaller one of the series passes; false where the search ended early */
      readonly smallest: boolean;
      /** ids of other checks of this section, of its sticks or of joints in them, that stay: no size mends them */
      readonly leaves: readonly string[];
    }
  | {
      readonly kind: "none";
      readonly entry: SizedEntry;
      /** none-larger: the series, or the logs, have none; too-weak: even the largest is; spoils: `by` would come; gave-up: too many to try */
      readonly because: "none-larger" | "too-weak" | "spoils" | "gave-up";
      readonly largest: Candidate | undefined;
      readonly by: readonly Finding[];
    };

/** What the mill cannot cut it cannot cut thicker either. */
const TOO_LONG = "longer-than-mill";

/** The most that the frame is analysed anew for one answer; a usual answer takes three to eight. */
export const MOST_ANALYSES = 40;

/**
 * Yields before each analysis of the frame, so that the caller can let other work in or stop. At most
 * {@link MOST_ANALYSES} of them.
 * @param evaluation of a complete frame, with the finding in it
 * @param source what was noticed about the writing of the same file
 * @param finding one about the section of an entry
 * @returns undefined where no size mends such a finding, or the frame is not complete
 */
export function* sizeTimber(
  evaluation: Evaluation,
  source: SourceFacts,
  finding: Finding,
  say: Say,
): Generator<undefined, Sizing | undefined> {
  const entry = sizable(evaluation, finding);
  if (!entry) return undefined;
  const { model } = evaluation;
  const tooLong = evaluation.findings.filter((f) => f.check === TOO_LONG && f.path === entry.path);
  if (tooLong.length > 0) return { kind: "none", entry, because: "spoils", largest: undefined, by: tooLong };
  const trials = new Map<string, Trial>();
  const trial = (candidate: Candidate): Trial => {
    const done = trials.get(candidate.text) ?? tryOut(evaluation, source, entry, candidate, say);
    trials.set(candidate.text, done);
    return done;
  };
  const squares = squaresOf(model, entry);
  const lines = linesOf(model, entry);
  const others = [
    ...new Set(
      evaluation.findings
        .filter((f) => isOpen(f) && isOwnSize(entry, f) && f.check !== finding.check)
        .map((f) => f.check),
    ),
  ];
  const around = new Set(faultsAround(evaluation, entry).map(({ key }) => key));
  let last: SearchOutcome<Candidate> | undefined;
  let whole = true;
  for (const goal of goalsOf(others, around, trials)) {
    for (const pass of [squares, lines]) {
      if (pass.length === 0) continue;
      const most = MOST_ANALYSES - trials.size;
      const done = ({ text }: Candidate): boolean => trials.has(text);
      last = yield* smallestPassing(pass, (c) => verdictOf(trial(c), goal), most, done);
      whole &&= last.whole;
      if (last.found) {
        const { own, stays } = trial(last.found);
        const leaves = [...new Set([...own, ...stays].map(({ check }) => check))];
        return { kind: "sized", entry, to: last.found, smallest: last.whole, leaves };
      }
    }
  }
  return none(entry, lines, last, whole, last?.spoiler && trial(last.spoiler));
}

/** The entry that the finding asks to size; undefined for an incomplete frame, of which nothing sure can be said. */
export function sizable({ model, results }: Evaluation, finding: Finding): SizedEntry | undefined {
  return results.complete && finding.accepted === undefined ? entryOf(model, finding) : undefined;
}

/** What may stay as it is. */
interface Goal {
  /** ids of checks of the section itself */
  readonly own: readonly string[];
  /** keys of faults of its sticks and of joints in them */
  readonly around: ReadonlySet<string>;
}

/**
 * First everything that is wrong with the section, its sticks and their joints; then all of it but what no size that was
 * tried has mended; then what was asked, and the rest stays.
 * @param trials those made so far, which grow while goals are tried
 */
function* goalsOf(
  others: readonly string[],
  around: ReadonlySet<string>,
  trials: ReadonlyMap<string, Trial>,
): Generator<Goal> {
  yield { own: [], around: new Set() };
  const made = [...trials.values()].filter(({ checked }) => checked);
  const lasting = new Set([...around].filter((key) => made.every((t) => t.stays.some((s) => s.key === key))));
  if (lasting.size > 0 && lasting.size < around.size) yield { own: [], around: lasting };
  if (around.size > 0) yield { own: [], around };
  if (others.length > 0) yield { own: others, around };
}

function verdictOf({ checked, own, stays, spoils }: Trial, goal: Goal): Verdict {
  if (!checked) return "unknown";
  if (own.some((f) => !goal.own.includes(f.check))) return "weak";
  if (stays.some(({ key }) => !goal.around.has(key))) return "weak";
  return spoils.length > 0 ? "spoils" : "passes";
}

function none(
  entry: SizedEntry,
  lines: readonly Line[],
  last: SearchOutcome<Candidate> | undefined,
  whole: boolean,
  spoiled: Trial | undefined,
): Sizing {
  const largest = lines
    .flat()
    .reduce<Candidate | undefined>(
      (most, c) => (most === undefined || c.area > most.area ? c : most),
      undefined,
    );
  const because = !last ? "none-larger" : spoiled ? "spoils" : whole ? "too-weak" : "gave-up";
  return { kind: "none", entry, because, largest, by: spoiled?.spoils ?? [] };
}
