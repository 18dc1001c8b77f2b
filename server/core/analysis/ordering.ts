/**
 * In which order to eliminate the nodes so that the factor stays sparse.
 *
 * Minimum degree on the quotient graph with approximate external degrees (Amestoy, Davis and Duff 1996, from memory) and
 * reverse Cuthill–McKee (George and Liu 1981, from memory). The caller takes the one that needs less work.
 */

/** Neighbors of each node, without itself and without repeats. */
export type Graph = readonly (readonly number[])[];

/** @param weights how many motions each node stands for */
export function minimumDegree(graph: Graph, weights: readonly number[]): number[] {
  const n = graph.length;
  const weight = (v: number) => weights[v] ?? 1;
  const total = weights.reduce((a, b) => a + b, 0);
  const plain: number[][] = graph.map((list) => [...list]);
  // Cliques made by eliminated nodes, named by that node; `cliquesOf` lists those a node belongs to.
  const cliques: (number[] | undefined)[] = graph.map(() => undefined);
  const cliquesOf: number[][] = graph.map(() => []);
  const sizeOf = new Float64Array(n);
  const degree = Int32Array.from(graph, (list) => list.reduce((sum, v) => sum + weight(v), 0));
  const gone = new Uint8Array(n);
  const queue = new Buckets(n, total);
  for (let v = 0; v < n; v++) queue.put(v, degree[v] ?? 0);
  const outside = new Float64Array(n);
  const seenAt = new Int32Array(n).fill(-1);
  const inClique = new Int32Array(n).fill(-1);
  const order: number[] = [];
  let left = total;

  for (let step = 0; step < n; step++) {
    const p = queue.takeLeast();
    order.push(p);
    gone[p] = 1;
    left -= weight(p);
    const members: number[] = [];
    let size = 0;
    const take = (v: number) => {
      if (gone[v] || inClique[v] === step) return;
      inClique[v] = step;
      members.push(v);
      size += weight(v);
    };
    for (const v of plain[p] ?? []) take(v);
    for (const c of cliquesOf[p] ?? []) {
      for (const v of cliques[c] ?? []) take(v);
      cliques[c] = undefined;
    }
    cliques[p] = members;
    sizeOf[p] = size;
    // How much of each other clique lies outside the new one.
    for (const v of members)
      for (const c of cliquesOf[v] ?? []) {
        if (!cliques[c]) continue;
        if (seenAt[c] !== step) {
          seenAt[c] = step;
          outside[c] = sizeOf[c] ?? 0;
        }
        outside[c] = (outside[c] ?? 0) - weight(v);
      }
    for (const v of members) {
      // A clique wholly inside the new one says nothing more.
      const kept = (cliquesOf[v] ?? []).filter((c) => cliques[c] && (outside[c] ?? 0) > 0);
      const rest = (plain[v] ?? []).filter((w) => !gone[w] && inClique[w] !== step);
      let reach = size - weight(v);
      const grown = (degree[v] ?? 0) + reach;
      for (const c of kept) reach += outside[c] ?? 0;
      for (const w of rest) reach += weight(w);
      cliquesOf[v] = [p, ...kept];
      plain[v] = rest;
      const next = Math.min(reach, grown, left - weight(v));
      degree[v] = next;
      queue.move(v, next);
    }
  }
  return order;
}

/** Nodes by degree, in doubly linked lists. */
class Buckets {
  readonly #head: Int32Array;
  readonly #next: Int32Array;
  readonly #back: Int32Array;
  readonly #key: Int32Array;
  #least = 0;

  constructor(n: number, most: number) {
    this.#head = new Int32Array(most + 2).fill(-1);
    this.#next = new Int32Array(n).fill(-1);
    this.#back = new Int32Array(n).fill(-1);
    this.#key = new Int32Array(n);
  }

  put(v: number, key: number): void {
    const first = this.#head[key] ?? -1;
    this.#key[v] = key;
    this.#next[v] = first;
    this.#back[v] = -1;
    if (first >= 0) this.#back[first] = v;
    this.#head[key] = v;
    if (key < this.#least) this.#least = key;
  }

  move(v: number, key: number): void {
    if (this.#key[v] === key) return;
    this.#drop(v);
    this.put(v, key);
  }

  takeLeast(): number {
    while ((this.#head[this.#least] ?? -1) < 0) this.#least++;
    const v = this.#head[this.#least] ?? 0;
    this.#drop(v);
    return v;
  }

  #drop(v: number): void {
    const [next, back] = [this.#next[v] ?? -1, this.#back[v] ?? -1];
    if (back >= 0) this.#next[back] = next;
    else this.#head[this.#key[v] ?? 0] = next;
    if (next >= 0) this.#back[next] = back;
  }
}

/** Breadth first from a node far out, neighbors by rising degree, then reversed: a narrow band. */
export function reverseCuthillMcKee(graph: Graph): number[] {
  const done = new Uint8Array(graph.length);
  const order: number[] = [];
  const degree = (v: number) => graph[v]?.length ?? 0;
  const byDegree = graph.map((_, v) => v).sort((a, b) => degree(a) - degree(b) || a - b);
  for (const start of byDegree) {
    if (done[start]) continue;
    let from = start;
    let depth = -1;
    // Walk to the far end of the piece until it gets no farther.
    for (;;) {
      const levels = levelsFrom(graph, from);
      if (levels.depth <= depth) break;
      depth = levels.depth;
      from = levels.last.reduce((a, b) => (degree(b) < degree(a) ? b : a));
    }
    done[from] = 1;
    let head = order.length;
    order.push(from);
    for (; head < order.length; head++) {
      const fresh = (graph[order[head] ?? 0] ?? []).filter((v) => !done[v]);
      fresh.sort((a, b) => degree(a) - degree(b) || a - b);
      for (const v of fresh) {
        done[v] = 1;
        order.push(v);
      }
    }
  }
  return order.reverse();
}

function levelsFrom(graph: Graph, from: number): { depth: number; last: number[] } {
  const seen = new Set([from]);
  let level = [from];
  let depth = 0;
  for (;;) {
    const next: number[] = [];
    for (const v of level)
      for (const w of graph[v] ?? []) {
        if (seen.has(w)) continue;
        seen.add(w);
        next.push(w);
      }
    if (next.length === 0) return { depth, last: level };
    level = next;
    depth++;
  }
}
