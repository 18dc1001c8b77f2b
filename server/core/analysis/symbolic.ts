/**
 * Where the factor L of a sparse symmetric matrix has entries, and how its columns group into supernodes: runs of
 * unknowns that share the entries below them.
 *
 * Elimination tree (Liu) and column counts by row subtrees: Davis, Direct Methods for Sparse Linear Systems, ch. 4 (from
 * memory).
 */
import { int } from "./numbers.ts";
import { type Graph, minimumDegree, reverseCuthillMcKee } from "./ordering.ts";

/** A lower half without its diagonal: the columns with an entry in each row. */
export interface RowPattern {
  readonly starts: Int32Array;
  readonly columns: Int32Array;
}

export interface Supernode {
  /** Unknowns from `first` up to but without `end`. */
  readonly first: number;
  readonly end: number;
  /** Unknowns below them that have entries, rising. */
  readonly below: Int32Array;
  /** Supernodes whose updates it takes in. */
  readonly children: readonly number[];
}

export type OrderMethod = "minimum-degree" | "reverse-cuthill-mckee";

/** The better of two orders of elimination for a graph whose nodes stand for `weights` unknowns each. */
export function orderNodes(
  graph: Graph,
  weights: readonly number[],
): { readonly order: readonly number[]; readonly method: OrderMethod } {
  const degree = minimumDegree(graph, weights);
  const band = reverseCuthillMcKee(graph);
  return workOf(graph, weights, band) < workOf(graph, weights, degree)
    ? { order: band, method: "reverse-cuthill-mckee" }
    : { order: degree, method: "minimum-degree" };
}

/** Multiplications that an order needs when every node's unknowns are coupled with all of its neighbors'. */
function workOf(graph: Graph, weights: readonly number[], order: readonly number[]): number {
  const place = new Int32Array(order.length);
  order.forEach((v, k) => {
    place[v] = k;
  });
  const starts = new Int32Array(order.length + 1);
  const columns: number[] = [];
  order.forEach((v, k) => {
    for (const w of graph[v] ?? []) if (int(place, w) < k) columns.push(int(place, w));
    starts[k + 1] = columns.length;
  });
  const rows = { starts, columns: Int32Array.from(columns) };
  const own = Int32Array.from(order, (v) => weights[v] ?? 1);
  const below = countBelow(rows, treeOf(rows), own);
  return below.reduce((sum, count, k) => sum + int(own, k) * (count + int(own, k) / 2) ** 2, 0);
}

/** Parent of each unknown in the elimination tree: the first below it with an entry in its column of L; −1 for none. */
export function treeOf({ starts, columns }: RowPattern): Int32Array {
  const n = starts.length - 1;
  const parent = new Int32Array(n).fill(-1);
  const ancestor = new Int32Array(n).fill(-1);
  for (let i = 0; i < n; i++)
    for (let p = int(starts, i); p < int(starts, i + 1); p++) {
      let k = int(columns, p);
      while (k !== -1 && k < i) {
        const next = int(ancestor, k);
        ancestor[k] = i;
        if (next === -1) parent[k] = i;
        k = next;
      }
    }
  return parent;
}

/** Entries below the diagonal in each column of L, each row counting for its weight. */
function countBelow({ starts, columns }: RowPattern, parent: Int32Array, weights?: Int32Array): Int32Array {
  const n = parent.length;
  const count = new Int32Array(n);
  const mark = new Int32Array(n).fill(-1);
  for (let i = 0; i < n; i++) {
    mark[i] = i;
    const weight = weights ? int(weights, i) : 1;
    for (let p = int(starts, i); p < int(starts, i + 1); p++)
      for (let k = int(columns, p); int(mark, k) !== i; k = int(parent, k)) {
        count[k] = int(count, k) + weight;
        mark[k] = i;
      }
  }
  return count;
}

/** Unknowns in an order in which children come right before their parents, so that supernodes are runs. */
export function postorder(parent: Int32Array): Int32Array {
  const n = parent.length;
  const child = new Int32Array(n).fill(-1);
  const sibling = new Int32Array(n).fill(-1);
  for (let k = n - 1; k >= 0; k--) {
    const up = int(parent, k);
    if (up < 0) continue;
    sibling[k] = int(child, up);
    child[up] = k;
  }
  const out = new Int32Array(n);
  let done = 0;
  for (let root = 0; root < n; root++) {
    if (int(parent, root) >= 0) continue;
    let k = root;
    for (;;) {
      // Down to a leaf, then up until there is another branch.
      while (int(child, k) >= 0) k = int(child, k);
      out[done++] = k;
      while (k !== root && int(sibling, k) < 0) {
        k = int(parent, k);
        out[done++] = k;
      }
      if (k === root) break;
      k = int(sibling, k);
    }
  }
  return out;
}

/** @param rows pattern of a matrix whose unknowns are in postorder */
export function supernodesOf(rows: RowPattern): {
  readonly supernodes: readonly Supernode[];
  /** Entries of L, and multiplications to find them. */
  readonly entries: number;
  readonly work: number;
} {
  const parent = treeOf(rows);
  const runs = group(parent, countBelow(rows, parent));
  const owner = new Int32Array(parent.length);
  runs.forEach((run, n) => {
    owner.fill(n, run.first, run.end);
  });
  const below = structures(rows, parent, runs, owner);
  const children: number[][] = runs.map(() => []);
  let [entries, work] = [0, 0];
  const supernodes = runs.map(({ first, end }, n): Supernode => {
    const list = below[n] ?? new Int32Array(0);
    if (list.length > 0) children[int(owner, int(list, 0))]?.push(n);
    for (let c = first; c < end; c++) {
      const height = end - c + list.length;
      entries += height;
      work += height * height;
    }
    return { first, end, below: list, children: children[n] ?? [] };
  });
  return { supernodes, entries, work };
}

interface Run {
  readonly first: number;
  readonly end: number;
  readonly rest: number;
}

/** Joins neighbors with the same entries below, and a child with its parent where that stores few noughts. */
function group(parent: Int32Array, below: Int32Array): Run[] {
  const done: Run[] = [];
  for (let k = 0; k < parent.length; k++) {
    let run: Run = { first: k, end: k + 1, rest: int(below, k) };
    for (;;) {
      const child = done[done.length - 1];
      // The last child of this run ends right before it and has its parent at its start.
      if (!child || int(parent, child.end - 1) !== run.first) break;
      const own = run.end - run.first;
      const noughts = (child.end - child.first) * (own + run.rest - child.rest);
      const all = run.end - child.first;
      const stored = (all * (all + 1)) / 2 + all * run.rest;
      if (noughts > stored * (all <= SMALL ? MOST_NOUGHTS : FEW_NOUGHTS)) break;
      done.pop();
      run = { ...run, first: child.first };
    }
    done.push(run);
  }
  return done;
}

/** Up to this many unknowns, wider supernodes gain more than these shares of noughts cost. */
const SMALL = 16;
const MOST_NOUGHTS = 0.3;
const FEW_NOUGHTS = 0.1;

/** Entries below each run: those of the matrix and those that its children hand on. */
function structures(
  { starts, columns }: RowPattern,
  parent: Int32Array,
  runs: readonly Run[],
  owner: Int32Array,
): Int32Array[] {
  // A row takes part in a run's structure when a path up the tree from one of its entries passes the run.
  const lists: number[][] = runs.map(() => []);
  const mark = new Int32Array(runs.length).fill(-1);
  const up = runs.map((run) => int(parent, run.end - 1));
  for (let i = 0; i < parent.length; i++) {
    const own = int(owner, i);
    mark[own] = i;
    for (let p = int(starts, i); p < int(starts, i + 1); p++) {
      let s = int(owner, int(columns, p));
      while (int(mark, s) !== i) {
        mark[s] = i;
        lists[s]?.push(i);
        s = int(owner, up[s] ?? 0);
      }
    }
  }
  // Rows were visited in rising order.
  return lists.map((list) => Int32Array.from(list));
}
