/** How much of a story's load stands on uprights that lean on the others. */
import type { Story } from "./effective-length.ts";
import { isSolved, tipOf } from "./force-table.ts";
import type { SolvedCase } from "./solve-frame.ts";

/** Compression of an upright at its more loaded end, lb; 0 where it is lifted. */
function compressionOf(elements: readonly number[], tips: Float64Array): number {
  const [first, last] = [elements[0], elements.at(-1)];
  if (first === undefined || last === undefined) return 0;
  const [foot, head] = [tips[tipOf(first, "i")] ?? 0, tips[tipOf(last, "j")] ?? 0];
  return Math.max(0, -foot, -head);
}

/** Loads closer than this, as a share, are the same one: both models of the rafters' seats bring the same weight down. */
const SAME = 1e-6;

/**
 * Load of the whole story ÷ load of its swaying uprights, under the combination that loads the story most: the story
 * buckles as a whole, so that one decides; of the two models of the rafters' seats the worse. Without an answer or a load,
 * uprights count as equally loaded.
 */
export function leaningShare({ uprights, swaying }: Story, cases: readonly SolvedCase[]): number {
  const loads = cases.flatMap((solved) => {
    if (!isSolved(solved)) return [];
    const { tips } = solved.combined;
    const load = (ids: readonly string[]): number =>
      ids.reduce((sum, id) => sum + compressionOf(solved.frame.elementsOf.get(id) ?? [], tips), 0);
    const [all, theirs] = [load(uprights), load(swaying)];
    return theirs > 0 ? [{ all, share: all / theirs }] : [];
  });
  const most = Math.max(...loads.map((l) => l.all));
  const shares = loads.filter((l) => l.all >= most * (1 - SAME)).map((l) => l.share);
  return shares.length > 0 ? Math.max(...shares) : uprights.length / swaying.length;
}
