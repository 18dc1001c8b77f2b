/**
 * Basic loads that are sums of others of their kind: snow on part of a roof is a share of all of it and of another part, wind
 * with suction inside is what the other three make. Only those that no others add up to have to be solved. Those of another
 * kind do not serve, though live load on a roof presses like snow: else all that is kept of the one would go with the other.
 */
import { addScaled } from "../analysis/mechanism.ts";
import { at, bump, int } from "../analysis/numbers.ts";
import type { Timber } from "../model/model.ts";
import type { BasicLoad } from "./basic-loads.ts";
import type { LineLoad } from "./line-loads.ts";

type Basic = Pick<BasicLoad, "kind" | "loads">;

/** A share of a load that is solved, and its factor. */
export interface Share<L extends Basic = BasicLoad> {
  readonly of: L;
  readonly factor: number;
}

export interface LoadsInSum<L extends Basic = BasicLoad> {
  /** those that are to be solved, in their order */
  readonly solved: readonly L[];
  /** each load as a sum of solved ones of its kind */
  readonly shares: ReadonlyMap<L, readonly Share<L>[]>;
}

/** Of the largest figure of a load: what is left of it below this share is rounding. */
const NOUGHT = 1e-11;
/** Sums with factors beyond this would lose figures: such a load is solved itself. */
const MOST = 8;
/** In: places nearer than this are rounded apart. */
const SAME_PLACE = 1e-9;
/** A line load is six figures: force per length at its start and at its end. */
const FIGURES = 6;

/** A stretch of a timber that line loads lie on, and where its figures stand; −1 = no load has that one. */
interface Stretch {
  readonly from: number;
  readonly to: number;
  readonly rows: Int32Array;
}

/** What is left of a solved load without those before it, and that as a sum of solved ones. */
interface Rest {
  readonly kind: BasicLoad["kind"];
  readonly figures: Float64Array;
  /** of its figures, the largest */
  readonly pivot: number;
  readonly shares: readonly number[];
}

/**
 * By elimination, one load after another, with the largest figure that is left as pivot.
 * @param loads the line loads of each basic load
 */
export function loadsInSum<L extends Basic>(loads: readonly L[]): LoadsInSum<L> {
  const { columns, size } = columnsOf(loads);
  const rests: Rest[] = [];
  const solved: L[] = [];
  const sharesOf = (load: L, { rows, figures }: Column): readonly Share<L>[] => {
    const { kind } = load;
    const left = new Float64Array(size);
    let largest = 0;
    for (let n = 0; n < rows.length; n++) {
      const value = figures[n] as number;
      bump(left, rows[n] as number, value);
      largest = Math.max(largest, Math.abs(value));
    }
    const own = new Array<number>(solved.length).fill(0);
    for (const rest of rests) {
      if (rest.kind !== kind) continue;
      const by = at(left, rest.pivot) / at(rest.figures, rest.pivot);
      if (!(Math.abs(by) > NOUGHT)) continue;
      addScaled(left, -by, rest.figures);
      for (let k = 0; k < rest.shares.length; k++)
        own[k] = (own[k] as number) + by * (rest.shares[k] as number);
    }
    const pivot = largestAt(left);
    const over = Math.abs(at(left, pivot));
    const isNew = over > NOUGHT * largest;
    if (!isNew && Number.isFinite(largest) && own.every((by) => Math.abs(by) <= MOST))
      return solved.flatMap((of, n) => {
        const factor = own[n] as number;
        return Math.abs(factor) > NOUGHT ? [{ of, factor }] : [];
      });
    solved.push(load);
    // numbers too large to reckon with make no other load
    if (isNew && Number.isFinite(largest))
      rests.push({ kind, figures: left, pivot, shares: [...own.map((by) => -by), 1] });
    return [{ of: load, factor: 1 }];
  };
  return { solved, shares: new Map(loads.map((load, n) => [load, sharesOf(load, columns[n] as Column)])) };
}

/** Where the largest of some figures stands. */
function largestAt(figures: Float64Array): number {
  let found = 0;
  for (let k = 1; k < figures.length; k++)
    if (Math.abs(at(figures, k)) > Math.abs(at(figures, found))) found = k;
  return found;
}

/** Whether a load is the same sum in both: of the very same loads, with the same factors. */
export function isSameSum(a: LoadsInSum, b: LoadsInSum, load: BasicLoad): boolean {
  const [own, other] = [a.shares.get(load), b.shares.get(load)];
  return (
    own !== undefined &&
    own.length === other?.length &&
    own.every(({ of, factor }, n) => of === other[n]?.of && factor === other[n]?.factor)
  );
}

interface Column {
  readonly rows: readonly number[];
  readonly figures: readonly number[];
}

/** The figures of each load, and how many there are that some load has. */
function columnsOf(loads: readonly Basic[]): {
  readonly columns: readonly Column[];
  readonly size: number;
} {
  const stretches = new Map<Timber, Stretch[]>();
  let size = 0;
  const stretchOf = ({ timber, from, to }: LineLoad): Stretch => {
    const own = stretches.get(timber) ?? [];
    stretches.set(timber, own);
    const known = own.find((s) => Math.abs(s.from - from) < SAME_PLACE && Math.abs(s.to - to) < SAME_PLACE);
    if (known) return known;
    const made = { from, to, rows: new Int32Array(FIGURES).fill(-1) };
    own.push(made);
    return made;
  };
  const columns = loads.map((basic): Column => {
    const rows: number[] = [];
    const figures: number[] = [];
    const take = (stretch: Stretch, figure: number, value: number): void => {
      if (value === 0) return;
      if (int(stretch.rows, figure) < 0) stretch.rows[figure] = size++;
      rows.push(int(stretch.rows, figure));
      figures.push(value);
    };
    for (const load of basic.loads) {
      const stretch = stretchOf(load);
      for (let c = 0; c < 3; c++) {
        take(stretch, c, load.startForce[c] as number);
        take(stretch, 3 + c, load.endForce[c] as number);
      }
    }
    return { rows, figures };
  });
  return { columns, size };
}
