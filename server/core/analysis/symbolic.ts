/**
 * Where the factor L of a sparse symmetric matrix has entries, found on the graph of the nodes (each standing for up to
 * six motions), and how its columns group into supernodes: runs of nodes that share the entries below them.
 *
 * Elimination tree and column structures: Davis, Direct Methods for Sparse Linear Systems, ch. 4 (from memory).
 */
import { type Graph, minimumDegree, reverseCuthillMcKee } from "./ordering.ts";

export interface Supernode {
  /** Nodes by place in the order: from `first` up to but without `end`. */
  readonly first: number;
  readonly end: number;
  /** Places of the nodes below them that have entries, rising. */
  readonly below: readonly number[];
  /** Supernodes whose updates it takes in. */
  readonly children: number[];
}

export interface Symbolic {
  /** Nodes in the order of elimination, and the place of each. */
  readonly order: readonly number[];
  readonly place: Int32Array;
  readonly supernodes: readonly Supernode[];
  readonly method: "minimum-degree" | "reverse-cuthill-mckee";
  /** Entries of L, and multiplications to find them. */
  readonly entries: number;
  readonly work: number;
}

/** @param weights motions of each node: at least one */
export function analyseGraph(graph: Graph, weights: readonly number[]): Symbolic {
  const degree = withOrder(graph, weights, minimumDegree(graph, weights), "minimum-degree");
  const band = withOrder(graph, weights, reverseCuthillMcKee(graph), "reverse-cuthill-mckee");
  return band.work < degree.work ? band : degree;
}

function withOrder(
  graph: Graph,
  weights: readonly number[],
  given: readonly number[],
  method: Symbolic["method"],
): Symbolic {
  const first = columns(graph, given);
  // Children right before their parents, so that supernodes are runs.
  const order = postorder(first.parent).map((place) => given[place] ?? 0);
  const { parent, below } = columns(graph, order);
  const supernodes = group(
    parent,
    below,
    order.map((v) => weights[v] ?? 1),
  );
  const place = new Int32Array(graph.length);
  order.forEach((v, k) => {
    place[v] = k;
  });
  let [entries, work] = [0, 0];
  for (const s of supernodes) {
    const own = span(order, weights, s.first, s.end);
    const rest = s.below.reduce((sum, k) => sum + (weights[order[k] ?? 0] ?? 1), 0);
    for (let c = 0; c < own; c++) {
      const rows = own - c + rest;
      entries += rows;
      work += rows * rows;
    }
  }
  return { order, place, supernodes, method, entries, work };
}

const span = (order: readonly number[], weights: readonly number[], from: number, to: number): number =>
  order.slice(from, to).reduce((sum, v) => sum + (weights[v] ?? 1), 0);

/** For each place in the order: the places below it with entries in L, and the first of them, its parent in the tree. */
function columns(graph: Graph, order: readonly number[]): { parent: Int32Array; below: number[][] } {
  const n = order.length;
  const place = new Int32Array(n);
  order.forEach((v, k) => {
    place[v] = k;
  });
  const parent = new Int32Array(n).fill(-1);
  const below: number[][] = [];
  const children: number[][] = order.map(() => []);
  const mark = new Int32Array(n).fill(-1);
  for (let k = 0; k < n; k++) {
    const rows: number[] = [];
    const take = (r: number) => {
      if (r <= k || mark[r] === k) return;
      mark[r] = k;
      rows.push(r);
    };
    for (const v of graph[order[k] ?? 0] ?? []) take(place[v] ?? 0);
    for (const child of children[k] ?? []) for (const r of below[child] ?? []) take(r);
    rows.sort((a, b) => a - b);
    below.push(rows);
    const up = rows[0];
    if (up !== undefined) {
      parent[k] = up;
      children[up]?.push(k);
    }
  }
  return { parent, below };
}

function postorder(parent: Int32Array): number[] {
  const children: number[][] = Array.from(parent, () => []);
  const roots: number[] = [];
  parent.forEach((p, k) => {
    (p < 0 ? roots : children[p])?.push(k);
  });
  const out: number[] = [];
  const stack = roots.reverse();
  const opened = new Uint8Array(parent.length);
  while (stack.length > 0) {
    const k = stack[stack.length - 1] ?? 0;
    if (opened[k]) {
      out.push(k);
      stack.pop();
      continue;
    }
    opened[k] = 1;
    stack.push(...(children[k] ?? []).reverse());
  }
  return out;
}

/** Joins neighbors with the same entries below, and a child with its parent where that stores few noughts. */
function group(parent: Int32Array, below: readonly number[][], weights: readonly number[]): Supernode[] {
  const done: { first: number; end: number; own: number; rest: number; below: number[] }[] = [];
  const sum = (places: readonly number[]) => places.reduce((s, k) => s + (weights[k] ?? 1), 0);
  for (let k = 0; k < parent.length; k++) {
    const rows = below[k] ?? [];
    let run = { first: k, end: k + 1, own: weights[k] ?? 1, rest: sum(rows), below: rows };
    for (;;) {
      const child = done[done.length - 1];
      // The last child of this run ends right before it and has its parent in it.
      if (!child || parent[child.end - 1] !== run.first) break;
      const noughts = child.own * (run.own + run.rest - child.rest);
      const own = child.own + run.own;
      const stored = (own * (own + 1)) / 2 + own * run.rest;
      if (noughts > stored * (own <= SMALL ? 0.3 : 0.08)) break;
      done.pop();
      run = { ...run, first: child.first, own };
    }
    done.push(run);
  }
  const owner = new Int32Array(parent.length);
  done.forEach((s, n) => {
    owner.fill(n, s.first, s.end);
  });
  const supernodes: Supernode[] = done.map(({ first, end, below: rows }) => ({
    first,
    end,
    below: rows,
    children: [],
  }));
  supernodes.forEach((s, n) => {
    const up = s.below[0];
    if (up !== undefined) supernodes[owner[up] ?? 0]?.children.push(n);
  });
  return supernodes;
}

/** Up to this many motions, wide supernodes gain more than their noughts cost. */
const SMALL = 24;
