/** Works out "size this timber" beside the editor's other work, and remembers the answers of a checked frame. */
import type { Finding } from "../core/checks/check.ts";
import type { Evaluation } from "../core/evaluate.ts";
import type { SizedEntry } from "../core/sizing/entry.ts";
import { type Sizing, sizable, sizeTimber } from "../core/sizing/size-timber.ts";
import { breath, type Snapshot } from "./frame-service.ts";

export interface Sizer {
  /** The entry whose size could mend the finding. */
  readonly entryOf: (snapshot: Snapshot, finding: Finding) => SizedEntry | undefined;
  /** The answer, where it was worked out before for an equal frame. */
  readonly known: (snapshot: Snapshot, finding: Finding) => Sizing | undefined;
  /**
   * Works the answer out, and lets other work in before every analysis of the frame.
   * @param wanted asked there too; the work is dropped once it says no
   * @returns undefined when dropped, or where no size mends the finding
   */
  readonly find: (snapshot: Snapshot, finding: Finding, wanted: () => boolean) => Promise<Sizing | undefined>;
}

/** One for a server; answers live as long as the evaluation that they are of. */
export function createSizer(): Sizer {
  const answers = new WeakMap<Evaluation, Map<string, Sizing>>();
  const keyOf = ({ check, path }: Finding): string => `${check} ${path}`;

  const known: Sizer["known"] = ({ evaluation }, finding) =>
    evaluation && answers.get(evaluation)?.get(keyOf(finding));

  return Object.freeze({
    known,
    entryOf: ({ evaluation }: Snapshot, finding: Finding) => evaluation && sizable(evaluation, finding),
    async find(snapshot: Snapshot, finding: Finding, wanted: () => boolean) {
      const before = known(snapshot, finding);
      const { evaluation, reading, say } = snapshot;
      if (before || !evaluation || !reading) return before;
      const work = sizeTimber(evaluation, reading.source, finding, say);
      let step = work.next();
      while (!step.done) {
        await breath();
        if (!wanted()) return undefined;
        step = work.next();
      }
      const { value } = step;
      if (!value) return undefined;
      const own = answers.get(evaluation) ?? new Map<string, Sizing>();
      answers.set(evaluation, own.set(keyOf(finding), value));
      return value;
    },
  });
}
