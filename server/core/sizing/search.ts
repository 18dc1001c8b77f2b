/**
 * Finds the smallest candidate that passes. Strength grows with size along a line while the size class stays, so that the
 * first strong candidate of each class is found by doubling steps and then by halves; whether it spoils something else is
 * asked of that one and its next neighbours only. Where the class changes, design values jump: Douglas fir-larch No.2 of
 * 8x10 in is a post with F_c 700 psi, of 8x11 in a beam with 600, and carries less (NDS Supplement Table 4D).
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

/** What the search knows of a candidate: sides in in, area in in². */
export interface Sized {
  readonly width: number;
  readonly depth: number;
  readonly area: number;
  /** design values jump where it changes */
  readonly sizeClass: string;
}

/** A strong candidate that spoils something rarely gets better by growing: so many larger ones are tried. */
const NEIGHBOURS = 2;
/** in */
const SLACK = 1e-6;

/** A line divided where the size class changes. */
function divided<C extends Sized>(line: readonly C[]): C[][] {
  const pieces: C[][] = [];
  for (const candidate of line) {
    const piece = pieces.at(-1);
    if (piece?.[0]?.sizeClass === candidate.sizeClass) piece.push(candidate);
    else pieces.push([candidate]);
  }
  return pieces;
}

/**
 * Lines come in the order of preference; one behind takes over only with less area.
 * @param judge asked at most `most` times; each may take long, and before each this yields
 * @param free candidates whose verdict takes no work: asked without a yield, and not counted
 */
export function* smallestPassing<C extends Sized>(
  lines: readonly (readonly C[])[],
  judge: (candidate: C) => Verdict,
  most: number,
  free: (candidate: C) => boolean = () => false,
): Generator<undefined, SearchOutcome<C>> {
  const pieces = lines.flatMap(divided);
  const said = new Map<C, Verdict>();
  let found: C | undefined;
  let spoiler: C | undefined;
  let whole = true;
  let worked = 0;

  function* ask(candidate: C): Generator<undefined, Verdict | undefined> {
    const known = said.get(candidate);
    if (known) return known;
    if (!free(candidate)) {
      if (worked >= most) {
        whole = false;
        return undefined;
      }
      worked++;
      yield;
    }
    const verdict = judge(candidate);
    said.set(candidate, verdict);
    return verdict;
  }

  /** Place of the first strong candidate of one class; undefined where none is, or where no more may be asked. */
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

  /** Whether a candidate of its class that is larger both ways than all of a piece is weak: then all of it are. */
  function* isHopeless(piece: readonly C[]): Generator<undefined, boolean> {
    const largest = largestOf(pieces.flat().filter((c) => c.sizeClass === piece[0]?.sizeClass));
    const within = (c: C): boolean =>
      largest !== undefined && c.width <= largest.width + SLACK && c.depth <= largest.depth + SLACK;
    return largest !== undefined && piece.every(within) && (yield* ask(largest)) === "weak";
  }

  for (const [i, all] of pieces.entries()) {
    if (i > 0 && found === undefined && spoiler === undefined && (yield* isHopeless(all))) continue;
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

function largestOf<C extends Sized>(candidates: readonly C[]): C | undefined {
  return candidates.reduce<C | undefined>(
    (most, c) => (most === undefined || c.area > most.area ? c : most),
    undefined,
  );
}
