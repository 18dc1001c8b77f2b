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

interface Front {
  /** Own unknowns: `first` … `first + own`. */
  readonly first: number;
  readonly own: number;
  /** Unknowns of the rows below its own. */
  readonly below: Int32Array;
  /** Unit lower columns, (own + below) rows each. */
  readonly l: Float64Array;
}

export interface Factor {
  readonly n: number;
  readonly fronts: readonly Front[];
  /** 1/D, or 0 where the unknown is held. */
  readonly inverse: Float64Array;
  /** Unknowns held for lack of resistance, and all pivots before that. */
  readonly held: readonly number[];
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
  const { symbolic, start, n } = matrix;
  const inverse = new Float64Array(n);
  const held: number[] = [];
  const fronts: Front[] = [];
  const updates: (Float64Array | undefined)[] = [];
  const rowOf = new Int32Array(n);
  const pivotIn = (k: number, pivot: number): number => {
    const nought = !(pivot > TINY) && !(keep.has(k) && pivot > 0);
    if (!nought && !hold.has(k)) return 1 / pivot;
    held.push(k);
    return 0;
  };
  for (const s of symbolic.supernodes) {
    const first = int(start, s.first);
    const own = int(start, s.end) - first;
    const below = s.below.flatMap((p) => span(int(start, p), int(start, p + 1)));
    const rows = own + below.length;
    const front = new Float64Array(rows * rows);
    for (let k = 0; k < own; k++) rowOf[first + k] = k;
    below.forEach((k, r) => {
      rowOf[k] = own + r;
    });
    for (let p = s.first; p < s.end; p++) {
      const panel = matrix.panels[p];
      if (!panel) continue;
      const width = int(start, p + 1) - int(start, p);
      const height = panel.rows.length;
      for (let c = 0; c < width; c++) {
        const base = (int(start, p) + c - first) * rows;
        // The block on the diagonal is stored whole; its upper half is not read.
        for (let r = c; r < height; r++)
          bump(front, base + int(rowOf, int(panel.rows, r)), at(panel.values, c * height + r));
      }
    }
    for (const child of s.children) {
      const update = updates[child];
      const from = fronts[child];
      if (update && from) extendAdd(front, rows, update, from.below, rowOf);
      updates[child] = undefined;
    }
    eliminate(front, rows, own, first, inverse, pivotIn);
    fronts.push({ first, own, below: Int32Array.from(below), l: front.slice(0, rows * own) });
    updates.push(remainder(front, rows, own));
  }
  return { n, fronts, inverse, held };
}

const span = (from: number, to: number): number[] => Array.from({ length: to - from }, (_, k) => from + k);

function remainder(front: Float64Array, rows: number, own: number): Float64Array {
  const size = rows - own;
  const out = new Float64Array(size * size);
  for (let c = 0; c < size; c++)
    out.set(front.subarray((own + c) * rows + own + c, (own + c + 1) * rows), c * size + c);
  return out;
}

function extendAdd(
  front: Float64Array,
  rows: number,
  update: Float64Array,
  unknowns: Int32Array,
  rowOf: Int32Array,
): void {
  const size = unknowns.length;
  const to = Int32Array.from(unknowns, (k) => int(rowOf, k));
  for (let c = 0; c < size; c++) {
    const base = int(to, c) * rows;
    // Rows keep their order, so the lower half stays the lower half.
    for (let r = c; r < size; r++) bump(front, base + int(to, r), at(update, c * size + r));
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

/** Solves in place; held unknowns come out nought. */
export function solve(factor: Factor, x: Float64Array): void {
  forward(factor, x);
  for (let k = 0; k < factor.n; k++) x[k] = at(x, k) * at(factor.inverse, k);
  backward(factor, x);
}

function forward(factor: Factor, x: Float64Array): void {
  for (const { first, own, below, l } of factor.fronts) {
    const rest = below.length;
    const rows = own + rest;
    for (let c = 0; c < own; c++) {
      const value = at(x, first + c);
      if (value === 0) continue;
      const base = c * rows;
      for (let r = c + 1; r < own; r++) bump(x, first + r, -at(l, base + r) * value);
      for (let r = 0; r < rest; r++) bump(x, int(below, r), -at(l, base + own + r) * value);
    }
  }
}

/** x ← L⁻ᵀ x. For a unit vector at a held unknown: the motion that meets no resistance. */
export function backward(factor: Factor, x: Float64Array): void {
  const { fronts } = factor;
  for (let n = fronts.length - 1; n >= 0; n--) {
    const front = fronts[n];
    if (!front) continue;
    const { first, own, below, l } = front;
    const rest = below.length;
    const rows = own + rest;
    const gathered = new Float64Array(rest);
    for (let r = 0; r < rest; r++) gathered[r] = at(x, int(below, r));
    for (let c = own - 1; c >= 0; c--) {
      const base = c * rows;
      let sum = at(x, first + c);
      for (let r = c + 1; r < own; r++) sum -= at(l, base + r) * at(x, first + r);
      for (let r = 0; r < rest; r++) sum -= at(l, base + own + r) * at(gathered, r);
      x[first + c] = sum;
    }
  }
}
