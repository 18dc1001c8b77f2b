/**
 * L D Lᵀ of a sparse positive semi-definite matrix, multifrontal: each supernode gathers its columns and the updates of
 * its children in a small dense matrix, eliminates its own unknowns there and hands the rest on (Duff and Reid 1983;
 * Davis, Direct Methods for Sparse Linear Systems; from memory). No pivoting is needed for such a matrix.
 *
 * A pivot near nought (the matrix has unit diagonal) is a motion without resistance: it is not divided by, its unknown
 * is held at nought instead, and named.
 */
import type { Matrix } from "./assemble.ts";
import { at, bump, int } from "./numbers.ts";
import type { Supernode } from "./symbolic.ts";

export interface Front {
  /** Own unknowns: `first` … `first + own`. */
  readonly first: number;
  readonly own: number;
  /** Unknowns of the rows below its own. */
  readonly below: Int32Array;
  /** Where its unit lower columns begin in `l`: (own + below) rows each. */
  readonly at: number;
}

export interface Factor {
  readonly n: number;
  readonly fronts: readonly Front[];
  readonly l: Float64Array;
  /** 1/D, or 0 where the unknown is held. */
  readonly inverse: Float64Array;
  /** Unknowns held for lack of resistance, and all pivots before that. */
  readonly held: readonly number[];
  /** Written anew at every solve: what one front gathers from below. */
  readonly scratch: Float64Array;
}

/** Pivots of the scaled matrix below this are taken for nought. */
const TINY = 1e-12;

/**
 * @param keep unknowns not to be held however small their pivot, as long as it is positive
 * @param hold unknowns to be held whatever their pivot
 */
export function factorise(
  matrix: Matrix,
  keep: ReadonlySet<number> = new Set(),
  hold: ReadonlyMap<number, unknown> = new Map(),
): Factor {
  const { n, starts, supernodes } = matrix;
  const inverse = new Float64Array(n);
  const held: number[] = [];
  const pivotIn = (k: number, pivot: number): number => {
    const nought = !(pivot > TINY) && !(keep.has(k) && pivot > 0);
    if (!nought && !hold.has(k)) return 1 / pivot;
    held.push(k);
    return 0;
  };
  const room = roomFor(supernodes);
  const l = new Float64Array(room.columns);
  const front = new Float64Array(room.front);
  const updates = new Float64Array(room.updates);
  const rowOf = new Int32Array(n);
  const fronts: Front[] = [];
  // Children come right before their parents, so their updates lie on top of the stack.
  let top = 0;
  let stored = 0;
  for (const { first, end, below, children } of supernodes) {
    const own = end - first;
    const rows = own + below.length;
    front.fill(0, 0, rows * rows);
    for (let k = 0; k < own; k++) rowOf[first + k] = k;
    for (let r = 0; r < below.length; r++) rowOf[int(below, r)] = own + r;
    for (let c = first; c < end; c++) {
      const base = (c - first) * rows;
      for (let p = int(starts, c); p < int(starts, c + 1); p++)
        front[base + int(rowOf, int(matrix.rows, p))] = at(matrix.values, p);
    }
    for (let n = children.length - 1; n >= 0; n--) {
      const child = fronts[children[n] ?? 0];
      if (!child) continue;
      top -= child.below.length ** 2;
      extendAdd(front, rows, updates, top, child.below, rowOf);
    }
    eliminate(front, rows, own, first, inverse, pivotIn);
    l.set(front.subarray(0, rows * own), stored);
    fronts.push({ first, own, below, at: stored });
    stored += rows * own;
    const size = below.length;
    for (let c = 0; c < size; c++) {
      const from = (own + c) * rows + own;
      for (let r = c; r < size; r++) updates[top + c * size + r] = at(front, from + r);
    }
    top += size * size;
  }
  const most = fronts.reduce((so, f) => Math.max(so, f.below.length), 0);
  return { n, fronts, l, inverse, held, scratch: new Float64Array(most) };
}

/** Numbers to make room for: all columns of L, the largest front, and the updates that wait at one time. */
function roomFor(supernodes: readonly Supernode[]): { columns: number; front: number; updates: number } {
  let [columns, front, updates, top] = [0, 0, 0, 0];
  for (const { first, end, below, children } of supernodes) {
    const rows = end - first + below.length;
    columns += rows * (end - first);
    front = Math.max(front, rows * rows);
    for (const n of children) top -= (supernodes[n]?.below.length ?? 0) ** 2;
    top += below.length ** 2;
    updates = Math.max(updates, top);
  }
  return { columns, front, updates };
}

function extendAdd(
  front: Float64Array,
  rows: number,
  updates: Float64Array,
  from: number,
  unknowns: Int32Array,
  rowOf: Int32Array,
): void {
  const size = unknowns.length;
  const to = new Int32Array(size);
  for (let r = 0; r < size; r++) to[r] = int(rowOf, int(unknowns, r));
  for (let c = 0; c < size; c++) {
    const base = int(to, c) * rows;
    const column = from + c * size;
    // Rows keep their order, so the lower half stays the lower half.
    for (let r = c; r < size; r++) bump(front, base + int(to, r), at(updates, column + r));
  }
}

/** Eliminates the first `own` unknowns of a dense matrix stored by columns (lower half). */
function eliminate(
  a: Float64Array,
  rows: number,
  own: number,
  first: number,
  inverse: Float64Array,
  pivotIn: (unknown: number, pivot: number) => number,
): void {
  const d = new Float64Array(own);
  for (let j = 0; j < rows; j++) {
    const base = j * rows;
    const done = Math.min(j, own);
    let k = 0;
    // Four columns at a time: the column being updated is read and written a quarter as often.
    for (; k + 3 < done; k += 4) {
      const k0 = k * rows;
      const k1 = k0 + rows;
      const k2 = k1 + rows;
      const k3 = k2 + rows;
      const c0 = at(a, k0 + j) * at(d, k);
      const c1 = at(a, k1 + j) * at(d, k + 1);
      const c2 = at(a, k2 + j) * at(d, k + 2);
      const c3 = at(a, k3 + j) * at(d, k + 3);
      if (c0 === 0 && c1 === 0 && c2 === 0 && c3 === 0) continue;
      for (let i = j; i < rows; i++)
        a[base + i] =
          at(a, base + i) -
          (at(a, k0 + i) * c0 + at(a, k1 + i) * c1 + at(a, k2 + i) * c2 + at(a, k3 + i) * c3);
    }
    for (; k < done; k++) {
      const c = at(a, k * rows + j) * at(d, k);
      if (c === 0) continue;
      for (let i = j; i < rows; i++) bump(a, base + i, -at(a, k * rows + i) * c);
    }
    if (j >= own) continue;
    const pivot = at(a, base + j);
    const over = pivotIn(first + j, pivot);
    inverse[first + j] = over;
    d[j] = over === 0 ? 0 : pivot;
    a[base + j] = 1;
    for (let i = j + 1; i < rows; i++) a[base + i] = at(a, base + i) * over;
  }
}
