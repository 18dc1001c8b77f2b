/** The sparse factor and its orders of elimination against plain elimination on the full matrix. */
import { describe, expect, it } from "vitest";
import { assemble, type Matrix } from "../../../server/core/analysis/assemble.ts";
import { factorise } from "../../../server/core/analysis/ldlt.ts";
import { minimumDegree, reverseCuthillMcKee } from "../../../server/core/analysis/ordering.ts";
import { solve } from "../../../server/core/analysis/solve.ts";
import { orderNodes } from "../../../server/core/analysis/symbolic.ts";
import { makeSystem } from "../../../server/core/analysis/system.ts";
import { choleskyInPlace, choleskySolve } from "./dense.ts";
import { hall, random } from "./hall.ts";
import { randomFrame } from "./random-frame.ts";

function full(matrix: Matrix): Float64Array {
  const a = new Float64Array(matrix.n ** 2);
  for (let c = 0; c < matrix.n; c++)
    for (let p = matrix.starts[c]!; p < matrix.starts[c + 1]!; p++) {
      const r = matrix.rows[p]!;
      a[r * matrix.n + c] = matrix.values[p]!;
      a[c * matrix.n + r] = matrix.values[p]!;
    }
  return a;
}

function grid(width: number, height: number): number[][] {
  return Array.from({ length: width * height }, (_, k) => {
    const [x, y] = [k % width, Math.floor(k / width)];
    return [
      ...(x > 0 ? [k - 1] : []),
      ...(x + 1 < width ? [k + 1] : []),
      ...(y > 0 ? [k - width] : []),
      ...(y + 1 < height ? [k + width] : []),
    ];
  });
}

describe("sparse factor", () => {
  const structures = [
    ...[1, 2, 3, 4].map((seed) => randomFrame(seed, { joints: true, links: true }).structure),
    hall(4, 2).structure,
  ];
  it("solves as plain elimination does, and every diagonal entry is 1", () => {
    for (const structure of structures) {
      const matrix = assemble(makeSystem(structure));
      const factor = factorise(matrix);
      expect(factor.held).toEqual([]);
      const a = full(matrix);
      for (let k = 0; k < matrix.n; k++) expect(a[k * matrix.n + k]).toBeCloseTo(1, 12);
      const next = random(9);
      const b = Float64Array.from({ length: matrix.n }, () => next() - 0.5);
      const x = b.slice();
      solve(factor, x);
      expect(choleskyInPlace(a, matrix.n)).toBe(true);
      const want = choleskySolve(a, matrix.n, [...b]);
      const size = Math.max(...want.map(Math.abs));
      want.forEach((v, k) => {
        expect(Math.abs(v - x[k]!)).toBeLessThan(1e-7 * size);
      });
    }
  });

  it("stores far less than the full matrix, and no more than it says", () => {
    const matrix = assemble(makeSystem(hall(12, 4).structure));
    expect(matrix.entries).toBeLessThan(matrix.n ** 2 / 40);
    const { fronts, l } = factorise(matrix);
    const stored = fronts.reduce(
      (sum, f) => sum + f.own * (f.own + f.below.length) - (f.own * (f.own - 1)) / 2,
      0,
    );
    expect(stored).toBe(matrix.entries);
    expect(l.length).toBeGreaterThanOrEqual(matrix.entries);
  });

  it("orders every node once, whatever the graph", () => {
    const next = random(3);
    const graphs = [
      [],
      [[]],
      [[], [], []],
      grid(7, 5),
      Array.from({ length: 12 }, (_, k) => Array.from({ length: 12 }, (__, m) => m).filter((m) => m !== k)),
    ];
    for (let n = 0; n < 20; n++) {
      const size = 5 + Math.floor(next() * 40);
      const sets = Array.from({ length: size }, () => new Set<number>());
      for (let e = 0; e < size * 2; e++) {
        const [a, b] = [Math.floor(next() * size), Math.floor(next() * size)];
        if (a === b) continue;
        sets[a]!.add(b);
        sets[b]!.add(a);
      }
      graphs.push(sets.map((s) => [...s]));
    }
    for (const graph of graphs) {
      const all = graph.map((_, k) => k);
      const weights = graph.map(() => 1 + Math.floor(next() * 6));
      expect([...minimumDegree(graph, weights)].sort((a, b) => a - b)).toEqual(all);
      expect([...reverseCuthillMcKee(graph)].sort((a, b) => a - b)).toEqual(all);
    }
  });

  it("takes the better of two orders: a band for a chain of squares, minimum degree for a wide grid", () => {
    const wide = grid(30, 30);
    expect(
      orderNodes(
        wide,
        wide.map(() => 6),
      ).method,
    ).toBe("minimum-degree");
    const band = (order: readonly number[], graph: readonly (readonly number[])[]) =>
      Math.max(...graph.flatMap((list, v) => list.map((w) => Math.abs(order.indexOf(v) - order.indexOf(w)))));
    const narrow = grid(3, 60);
    expect(band(reverseCuthillMcKee(narrow), narrow)).toBeLessThanOrEqual(4);
  });
});
