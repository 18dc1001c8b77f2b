/** Guesses which of the known words was meant. */

/** Longer words are no typing slips of a known one, and comparing them costs their length squared. */
const LONGEST = 64;

/**
 * @param word what was written
 * @param known what could have been meant
 * @returns the known word with the fewest slips (a letter added, dropped, changed, or two swapped; capitals are free),
 *   if they are few for its length; the first of equals
 */
export function nearest(word: string, known: Iterable<string>): string | undefined {
  if (word.length > LONGEST) return undefined;
  const written = word.toLowerCase();
  let best: string | undefined;
  let fewest = Number.POSITIVE_INFINITY;
  for (const candidate of known) {
    const slips = distance(written, candidate.toLowerCase());
    const most = Math.max(1, Math.floor(Math.max(word.length, candidate.length) / 3));
    // In a word of one or two letters every other such word is one slip away.
    const short = slips > 0 && Math.min(word.length, candidate.length) < 3;
    if (slips < fewest && slips <= most && !short) {
      fewest = slips;
      best = candidate;
    }
  }
  return best;
}

/** Optimal string alignment distance (Damerau-Levenshtein with each pair of letters swapped at most once). */
function distance(a: string, b: string): number {
  let before: number[] = [];
  let last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1];
      let least = Math.min((last[j] ?? 0) + 1, (row[j - 1] ?? 0) + 1, (last[j - 1] ?? 0) + (same ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) {
        least = Math.min(least, (before[j - 2] ?? 0) + 1);
      }
      row.push(least);
    }
    before = last;
    last = row;
  }
  return last[b.length] ?? 0;
}
