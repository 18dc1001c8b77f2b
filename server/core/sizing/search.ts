/**
 * Finds the smallest candidate that passes. Strength grows with size along a line, so that its first strong candidate is
 * found by doubling steps and then by halves; whether it spoils something else is asked of that one and its next
 * neighbours only.
 */

/**
 * weak: it does not carry what it must; unknown: nobody can tell; spoils: it carries, but something else is wrong with it;
 * passes: it carries, and nothing is.
 */
export type Verdict = "weak" | "unknown" | "spoils" | "passes";

const carries = (verdict: Verdict): boolean => verdict === "spoils" || verdict === "passes";

export interface SearchOutcome<C> {
  readonly found: C | undefined;
  /** every line was searched to its end */
  readonly whole: boolean;
  /** the first strong candidate that spoiled something */
  readonly spoiler: C | undefined;
}

/** A strong candidate that spoils something rarely gets better by growing: so many larger ones are tried. */
const NEIGHBOURS = 2;

/**
 * Lines come in the order of preference; one behind takes over only with less area.
 * @param judge asked at most `most` times; each may take long, and before each this yields
 */
export function* smallestPassing<C extends { readonly area: number }>(
  lines: readonly (readonly C[])[],
  judge: (candidate: C) => Verdict,
  most: number,
): Generator<undefined, SearchOutcome<C>> {
  const said = new Map<C, Verdict>();
  let found: C | undefined;
  let spoiler: C | undefined;
  let whole = true;

  function* ask(candidate: C): Generator<undefined, Verdict | undefined> {
    const known = said.get(candidate);
    if (known) return known;
    if (said.size >= most) {
      whole = false;
      return undefined;
    }
    yield;
    const verdict = judge(candidate);
    said.set(candidate, verdict);
    return verdict;
  }

  /** Place of the first strong candidate; undefined where none is, or where no more may be asked. */
  function* firstStrong(line: readonly C[]): Generator<undefined, number | undefined> {
    let weak = -1;
    let strong: number | undefined;
    for (let at = 0, step = 1; strong === undefined; step *= 2) {
      const candidate = line[Math.min(at, line.length - 1)];
      const verdict = candidate && (yield* ask(candidate));
      if (verdict === undefined) return undefined;
      if (carries(verdict)) strong = Math.min(at, line.length - 1);
      else if (at >= line.length - 1) return undefined;
      else weak = at;
      at += step;
    }
    while (strong - weak > 1) {
      const middle: number = Math.floor((strong + weak) / 2);
      const candidate = line[middle];
      const verdict = candidate && (yield* ask(candidate));
      if (verdict === undefined) return undefined;
      if (carries(verdict)) strong = middle;
      else weak = middle;
    }
    return strong;
  }

  for (const [i, all] of lines.entries()) {
    // where even the largest is weak, no line behind has a strong one
    if (i === 1 && found === undefined && spoiler === undefined) {
      const largest = largestOf(lines);
      if (largest && (yield* ask(largest)) === "weak") break;
    }
    const line = all.filter((c) => found === undefined || c.area < found.area);
    const first = yield* firstStrong(line);
    if (first === undefined) continue;
    for (const candidate of line.slice(first, first + 1 + NEIGHBOURS)) {
      const verdict = yield* ask(candidate);
      if (verdict === "spoils") spoiler ??= candidate;
      if (verdict !== "passes") continue;
      found = candidate;
      break;
    }
  }
  return { found, whole, spoiler };
}

function largestOf<C extends { readonly area: number }>(lines: readonly (readonly C[])[]): C | undefined {
  return lines
    .flat()
    .reduce<C | undefined>((most, c) => (most === undefined || c.area > most.area ? c : most), undefined);
}
