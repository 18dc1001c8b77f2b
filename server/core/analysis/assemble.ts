/**
 * The stiffness matrix of a structure: 6 × 6 blocks of nodes put in order of elimination and scaled to unit diagonal.
 *
 * Scaling makes motions of any unit and size comparable, so that a pivot near nought means a motion without resistance.
 */
import { ENDS } from "./element-stiffness.ts";
import { at, bump, int } from "./numbers.ts";
import { analyseGraph, type Symbolic } from "./symbolic.ts";
import type { System } from "./system.ts";

export interface Matrix {
  readonly symbolic: Symbolic;
  /** Number of unknowns. */
  readonly n: number;
  /** Unknown of each motion, or −1 when it is held or when nothing resists it at all. */
  readonly unknown: Int32Array;
  readonly motion: Int32Array;
  /** First unknown of each place in the order, and one past the last. */
  readonly start: Int32Array;
  /** Motions that are free and that nothing resists. */
  readonly unresisted: readonly number[];
  /** Diagonal of the matrix over all motions, and 1/√ of it by unknown. */
  readonly diagonal: Float64Array;
  readonly scale: Float64Array;
  /** Lower part by columns of nodes: see {@link column}. */
  readonly panels: readonly Panel[];
}

/** Columns of one node: a dense block of `rows.length` by the node's unknowns, by columns. */
export interface Panel {
  /** Unknowns of the rows, rising, its own first. */
  readonly rows: Int32Array;
  readonly values: Float64Array;
}

/** Below this share of what meets in a motion, what is left of its stiffness is rounding. */
const NOUGHT = 1e-14;

export function assemble(system: System): Matrix {
  const diagonal = diagonalOf(system);
  const { ground, size } = system;
  const nodes = size / 6;
  const unresisted: number[] = [];
  const live = new Uint8Array(size);
  const weights = new Int32Array(nodes);
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
  // Only nodes with something to find take part.
  const active: number[] = [];
  const compact = new Int32Array(nodes).fill(-1);
  weights.forEach((w, node) => {
    if (w === 0) return;
    compact[node] = active.length;
    active.push(node);
  });
  const graph = graphOf(system, active.length, compact);
  const symbolic = analyseGraph(
    graph,
    active.map((node) => int(weights, node)),
  );

  const unknown = new Int32Array(size).fill(-1);
  const motion: number[] = [];
  const start = new Int32Array(active.length + 1);
  symbolic.order.forEach((v, place) => {
    start[place] = motion.length;
    const node = active[v] ?? 0;
    for (let m = 0; m < 6; m++) {
      if (!live[6 * node + m]) continue;
      unknown[6 * node + m] = motion.length;
      motion.push(6 * node + m);
    }
  });
  start[active.length] = motion.length;
  const scale = Float64Array.from(motion, (k) => 1 / Math.sqrt(at(diagonal, k)));
  const frame = { n: motion.length, unknown, motion: Int32Array.from(motion), start, scale };
  const panels = fillPanels(system, graph, symbolic, compact, frame);
  return { symbolic, ...frame, unresisted, diagonal, panels };
}

function diagonalOf(system: System): Float64Array {
  const diagonal = Float64Array.from(system.ground.springs);
  for (const part of system.parts) {
    for (let m = 0; m < 6; m++) {
      bump(diagonal, 6 * part.i + m, at(part.k, m * (ENDS + 1)));
      bump(diagonal, 6 * part.j + m, at(part.k, (m + 6) * (ENDS + 1)));
      if (part.i === part.j) bump(diagonal, 6 * part.i + m, 2 * at(part.k, m * ENDS + m + 6));
    }
  }
  return diagonal;
}

function graphOf(system: System, count: number, compact: Int32Array): number[][] {
  const sets = Array.from({ length: count }, () => new Set<number>());
  for (const part of system.parts) {
    const [a, b] = [int(compact, part.i), int(compact, part.j)];
    if (a < 0 || b < 0 || a === b) continue;
    sets[a]?.add(b);
    sets[b]?.add(a);
  }
  return sets.map((s) => [...s]);
}

function fillPanels(
  system: System,
  graph: readonly (readonly number[])[],
  symbolic: Symbolic,
  compact: Int32Array,
  frame: Pick<Matrix, "n" | "unknown" | "start" | "scale">,
): Panel[] {
  const { unknown, start, scale } = frame;
  const { place, order } = symbolic;
  const from = (p: number) => int(start, p);
  // Row of a panel at which the unknowns of another node begin, by node.
  const offsets: Map<number, number>[] = [];
  const panels = order.map((v, p): Panel => {
    const higher = (graph[v] ?? []).map((w) => int(place, w)).filter((q) => q > p);
    higher.sort((a, b) => a - b);
    const rows: number[] = [];
    const offset = new Map<number, number>();
    for (const q of [p, ...higher]) {
      offset.set(q, rows.length);
      for (let k = from(q); k < from(q + 1); k++) rows.push(k);
    }
    offsets.push(offset);
    return {
      rows: Int32Array.from(rows),
      values: new Float64Array(rows.length * (from(p + 1) - from(p))),
    };
  });
  const add = (row: number, col: number, rowPlace: number, colPlace: number, value: number) => {
    const panel = panels[colPlace];
    const shift = offsets[colPlace]?.get(rowPlace);
    if (!panel || shift === undefined) return;
    const inRow = shift + row - from(rowPlace);
    const scaled = value * at(scale, row) * at(scale, col);
    bump(panel.values, (col - from(colPlace)) * panel.rows.length + inRow, scaled);
  };
  for (const part of system.parts)
    for (let r = 0; r < ENDS; r++) {
      const rowNode = r < 6 ? part.i : part.j;
      const row = int(unknown, 6 * rowNode + (r % 6));
      if (row < 0) continue;
      const rowPlace = int(place, int(compact, rowNode));
      for (let c = 0; c < ENDS; c++) {
        const value = at(part.k, r * ENDS + c);
        if (value === 0) continue;
        const colNode = c < 6 ? part.i : part.j;
        const col = int(unknown, 6 * colNode + (c % 6));
        if (col < 0) continue;
        const colPlace = int(place, int(compact, colNode));
        if (rowPlace >= colPlace) add(row, col, rowPlace, colPlace, value);
      }
    }
  for (let k = 0; k < system.size; k++) {
    const row = int(unknown, k);
    const spring = at(system.ground.springs, k);
    if (row < 0 || spring === 0) continue;
    const p = int(place, int(compact, Math.floor(k / 6)));
    add(row, row, p, p, spring);
  }
  return panels;
}
