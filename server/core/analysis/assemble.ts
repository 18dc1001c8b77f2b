/**
 * The stiffness matrix of a structure, put in order of elimination and scaled to unit diagonal.
 *
 * Nodes are ordered as 6 × 6 blocks; below that the true entries count, for in a frame along the axes most entries of a
 * block are nought. Scaling makes motions of any unit and size comparable, so that a pivot near nought means a motion
 * without resistance.
 */
import { ENDS } from "./element-stiffness.ts";
import { at, bump, int } from "./numbers.ts";
import {
  type OrderMethod,
  orderNodes,
  postorder,
  type RowPattern,
  type Supernode,
  supernodesOf,
  treeOf,
} from "./symbolic.ts";
import type { Part, System } from "./system.ts";

export interface Matrix {
  /** Number of unknowns. */
  readonly n: number;
  /** Unknown of each motion, or −1 when it is held or when nothing resists it at all. */
  readonly unknown: Int32Array;
  readonly motion: Int32Array;
  /** Written anew at every solve: right side and unknowns. */
  readonly scratch: Float64Array;
  /** Motions that are free and that nothing resists. */
  readonly unresisted: readonly number[];
  /** Diagonal of the matrix over all motions, and 1/√ of it by unknown. */
  readonly diagonal: Float64Array;
  readonly scale: Float64Array;
  /** Lower half with the diagonal, by columns. */
  readonly starts: Int32Array;
  readonly rows: Int32Array;
  readonly values: Float64Array;
  readonly supernodes: readonly Supernode[];
  readonly method: OrderMethod;
  /** Entries of L, and multiplications to find them. */
  readonly entries: number;
  readonly work: number;
}

/** Below this share of what meets in a motion, what is left of its stiffness is rounding. */
const NOUGHT = 1e-14;

export function assemble(system: System): Matrix {
  const diagonal = diagonalOf(system);
  const { ground, size } = system;
  const weights = new Int32Array(size / 6);
  const live = new Uint8Array(size);
  const unresisted: number[] = [];
  for (let k = 0; k < size; k++) {
    if (ground.held[k]) continue;
    if (!(at(diagonal, k) > NOUGHT * at(system.gross, k))) {
      unresisted.push(k);
      continue;
    }
    live[k] = 1;
    const node = Math.floor(k / 6);
    weights[node] = int(weights, node) + 1;
  }
  const { motions, method } = ordered(system, live, weights);
  const first = numbered(motions, size);
  const start = columnsOf(system, first, motions.length, diagonal);
  // Once more, so that children in the elimination tree come right before their parents.
  const post = postorder(treeOf(rowsOf(start, motions.length)));
  const motion = post.map((k) => int(motions, k));
  const lower = renumbered(start, post);
  const { supernodes, entries, work } = supernodesOf(rowsOf(lower, motion.length));
  return {
    n: motion.length,
    unknown: numbered(motion, size),
    motion,
    scratch: new Float64Array(motion.length),
    unresisted,
    diagonal,
    scale: Float64Array.from(motion, (k) => 1 / Math.sqrt(at(diagonal, k))),
    ...lower,
    supernodes,
    method,
    entries,
    work,
  };
}

function diagonalOf(system: System): Float64Array {
  const diagonal = system.ground.springs.slice();
  for (const part of system.parts) {
    for (let m = 0; m < 6; m++) {
      bump(diagonal, 6 * part.i + m, at(part.k, m * (ENDS + 1)));
      bump(diagonal, 6 * part.j + m, at(part.k, (m + 6) * (ENDS + 1)));
      if (part.i === part.j) bump(diagonal, 6 * part.i + m, 2 * at(part.k, m * ENDS + m + 6));
    }
  }
  return diagonal;
}

/** Live motions in the order of elimination of their nodes. */
function ordered(
  system: System,
  live: Uint8Array,
  weights: Int32Array,
): { motions: Int32Array; method: OrderMethod } {
  // Only nodes with something to find take part.
  const active: number[] = [];
  const compact = new Int32Array(weights.length).fill(-1);
  weights.forEach((w, node) => {
    if (w === 0) return;
    compact[node] = active.length;
    active.push(node);
  });
  const neighbors = active.map(() => new Set<number>());
  for (const part of system.parts) {
    const [a, b] = [int(compact, part.i), int(compact, part.j)];
    if (a < 0 || b < 0 || a === b) continue;
    neighbors[a]?.add(b);
    neighbors[b]?.add(a);
  }
  const { order, method } = orderNodes(
    neighbors.map((s) => [...s]),
    active.map((node) => int(weights, node)),
  );
  const motions: number[] = [];
  for (const v of order) {
    const from = 6 * (active[v] ?? 0);
    for (let k = from; k < from + 6; k++) if (live[k]) motions.push(k);
  }
  return { motions: Int32Array.from(motions), method };
}

/** Unknown of each motion, −1 for none. */
function numbered(motions: Int32Array, size: number): Int32Array {
  const unknown = new Int32Array(size).fill(-1);
  motions.forEach((k, n) => {
    unknown[k] = n;
  });
  return unknown;
}

type Lower = Pick<Matrix, "starts" | "rows" | "values">;

/** Sums the parts into columns: first every entry as it comes, then those in the same place together, noughts left out. */
function columnsOf(system: System, unknown: Int32Array, n: number, diagonal: Float64Array): Lower {
  const scale = diagonal.map((d) => (d > 0 ? 1 / Math.sqrt(d) : 0));
  const place = new Int32Array(ENDS);
  const factor = new Float64Array(ENDS);
  const count = new Int32Array(n + 1);
  const locate = (part: Part) => {
    for (let m = 0; m < ENDS; m++) {
      const k = m < 6 ? 6 * part.i + m : 6 * part.j + m - 6;
      place[m] = int(unknown, k);
      factor[m] = at(scale, k);
    }
  };
  for (const part of system.parts) {
    locate(part);
    for (let c = 0; c < ENDS; c++) {
      const a = int(place, c);
      if (a < 0) continue;
      for (let r = c; r < ENDS; r++) {
        const b = int(place, r);
        if (b < 0 || at(part.k, c * ENDS + r) === 0) continue;
        const col = Math.min(a, b);
        count[col + 1] = int(count, col + 1) + 1;
      }
    }
  }
  // One more place in each column for a spring to the ground.
  for (let c = 0; c < n; c++) count[c + 1] = int(count, c + 1) + int(count, c) + 1;
  const next = count.slice();
  const rows = new Int32Array(int(count, n));
  const values = new Float64Array(rows.length);
  for (let k = 0; k < system.size; k++) {
    const col = int(unknown, k);
    if (col < 0) continue;
    const p = int(next, col);
    next[col] = p + 1;
    rows[p] = col;
    values[p] = at(system.ground.springs, k) * at(scale, k) ** 2;
  }
  for (const part of system.parts) {
    locate(part);
    for (let c = 0; c < ENDS; c++) {
      const a = int(place, c);
      if (a < 0) continue;
      for (let r = c; r < ENDS; r++) {
        const b = int(place, r);
        const value = at(part.k, c * ENDS + r);
        if (b < 0 || value === 0) continue;
        const col = Math.min(a, b);
        const p = int(next, col);
        next[col] = p + 1;
        rows[p] = Math.max(a, b);
        // Between the ends of a part on one node an entry of its matrix counts on both sides of the diagonal.
        const twice = a === b && r !== c ? 2 : 1;
        values[p] = twice * value * at(factor, r) * at(factor, c);
      }
    }
  }
  return merged({ starts: count, rows, values });
}

function merged({ starts, rows, values }: Lower): Lower {
  const n = starts.length - 1;
  const where = new Int32Array(n).fill(-1);
  const from = new Int32Array(n + 1);
  let end = 0;
  for (let c = 0; c < n; c++) {
    const first = end;
    for (let p = int(starts, c); p < int(starts, c + 1); p++) {
      const row = int(rows, p);
      const known = int(where, row);
      if (known >= first) bump(values, known, at(values, p));
      else {
        where[row] = end;
        rows[end] = row;
        values[end++] = at(values, p);
      }
    }
    from[c + 1] = end;
  }
  return { starts: from, rows: rows.slice(0, end), values: values.slice(0, end) };
}

/** The same entries by rows, without the diagonal. */
function rowsOf({ starts, rows }: Lower, n: number): RowPattern {
  const from = new Int32Array(n + 1);
  for (let c = 0; c < n; c++)
    for (let p = int(starts, c); p < int(starts, c + 1); p++) {
      const r = int(rows, p);
      if (r !== c) from[r + 1] = int(from, r + 1) + 1;
    }
  for (let r = 0; r < n; r++) from[r + 1] = int(from, r + 1) + int(from, r);
  const next = from.slice();
  const columns = new Int32Array(int(from, n));
  for (let c = 0; c < n; c++)
    for (let p = int(starts, c); p < int(starts, c + 1); p++) {
      const r = int(rows, p);
      if (r === c) continue;
      columns[int(next, r)] = c;
      next[r] = int(next, r) + 1;
    }
  return { starts: from, columns };
}

/** @param order unknowns as they were, in their new order; keeps rows below columns, as a postorder does */
function renumbered({ starts, rows, values }: Lower, order: Int32Array): Lower {
  const place = new Int32Array(order.length);
  order.forEach((old, k) => {
    place[old] = k;
  });
  const from = new Int32Array(order.length + 1);
  const newRows = new Int32Array(rows.length);
  const newValues = new Float64Array(rows.length);
  let end = 0;
  order.forEach((old, c) => {
    for (let p = int(starts, old); p < int(starts, old + 1); p++) {
      newRows[end] = int(place, int(rows, p));
      newValues[end++] = at(values, p);
    }
    from[c + 1] = end;
  });
  return { starts: from, rows: newRows, values: newValues };
}
