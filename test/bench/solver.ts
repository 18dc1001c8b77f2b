/**
 * `npm run bench:solver`: how long the frame analysis takes for halls of growing size, beside a full matrix (small ones
 * only) and beside the sparse LU of scipy on the same matrix (when python3 has scipy).
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { prepare } from "../../server/core/analysis/analyse.ts";
import { assemble, type Matrix } from "../../server/core/analysis/assemble.ts";
import { factorise } from "../../server/core/analysis/ldlt.ts";
import { solve } from "../../server/core/analysis/solve.ts";
import { makeSystem } from "../../server/core/analysis/system.ts";
import { choleskyInPlace, choleskySolve } from "../core/analysis/dense.ts";
import { hall } from "../core/analysis/hall.ts";

const SIZES = [
  { bents: 5, aisles: 2 },
  { bents: 8, aisles: 4 },
  { bents: 27, aisles: 4 },
  { bents: 55, aisles: 6 },
];
const SOLVES = 8;
/** At least so many runs, and until so many ms are over: a program is slow until it has been compiled. */
const RUNS = 5;
const WARM = 600;
const DENSE_UP_TO = 2600;

const SCIPY = `
import sys, time, numpy as np
from scipy.sparse import csc_matrix
from scipy.sparse.linalg import splu
folder, n = sys.argv[1], int(sys.argv[2])
read = lambda name, kind: np.fromfile(folder + "/" + name, dtype=kind)
matrix = csc_matrix((read("values", "<f8"), read("rows", "<i4"), read("starts", "<i4")), shape=(n, n))
right = np.sin(np.arange(1, n + 1))
def run(**how):
    best = None
    for _ in range(${RUNS}):
        began = time.perf_counter()
        factor = splu(matrix, **how)
        done = time.perf_counter()
        for _ in range(${SOLVES}): x = factor.solve(right)
        took = (done - began, time.perf_counter() - done)
        best = took if best is None or sum(took) < sum(best) else best
    return best, factor.L.nnz + factor.U.nnz, x
plain, _, x = run()
tuned, filled, x = run(permc_spec="MMD_AT_PLUS_A", diag_pivot_thresh=0.0, options=dict(SymmetricMode=True))
print(plain[0] * 1e3, plain[1] * 1e3, tuned[0] * 1e3, tuned[1] * 1e3, filled, np.abs(x).max())
`;

interface Row {
  timbers: number;
  ours: number;
  /** of it, factorising and solving: what scipy is given to do */
  factored: number;
  whole: number;
  /** the faster of its two orderings; undefined where it is not to be had */
  scipy: number | undefined;
}

const rows: Row[] = [];
console.log(
  `best of ${RUNS} runs or more; "solver" = assemble, order, factorise, ${SOLVES} solves; "whole" = structure to forces in 8 load cases\n`,
);
for (const { bents, aisles } of SIZES) {
  const { structure, timbers, cases } = hall(bents, aisles);
  const system = makeSystem(structure);
  const matrix = assemble(system);
  const right = Float64Array.from({ length: matrix.n }, (_, k) => Math.sin(k + 1));
  let x = right;
  const solverTime = best(() => {
    const factor = factorise(assemble(system));
    for (let k = 0; k < SOLVES; k++) {
      x = right.slice();
      solve(factor, x);
    }
  });
  const factored = best(() => {
    const factor = factorise(matrix);
    for (let k = 0; k < SOLVES; k++) {
      x = right.slice();
      solve(factor, x);
    }
  });
  let failed = 0;
  const whole = best(() => {
    const prepared = prepare(structure);
    failed = cases.map(prepared.solve).filter((r) => r.status === "failed").length;
  });
  const most = x.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
  const other = scipy(matrix, most);
  rows.push({ timbers, ours: solverTime, factored, whole, scipy: other.best });
  console.log(
    `${timbers} timbers, ${structure.elements.length} elements, ${matrix.n} unknowns, ${matrix.entries} entries in L (${matrix.method})`,
  );
  console.log(
    `  solver ${show(solverTime)} (of it factorising and solving ${show(factored)})   whole ${show(whole)}   cases without solution ${failed}`,
  );
  console.log(`  scipy  ${other.text}`);
  if (matrix.n <= DENSE_UP_TO) console.log(`  full   ${show(dense(matrix, right))}`);
}
const [first, last] = [rows[0]!, rows[rows.length - 1]!];
const power = (pick: (row: Row) => number) =>
  (Math.log(pick(last) / pick(first)) / Math.log(last.timbers / first.timbers)).toFixed(2);
console.log(
  `\ngrowth: timbers to the power of ${power((r) => r.ours)} (solver), ${power((r) => r.whole)} (whole)`,
);
for (const { timbers, factored, scipy } of rows) {
  const aim = `${timbers} timbers: factorising and ${SOLVES} solves no slower than scipy's sparse LU on the same matrix`;
  if (scipy === undefined) console.log(`unknown ${aim}: not measured`);
  else
    console.log(
      `${factored <= scipy ? "meets " : "misses"} ${aim}, ${show(factored)} against ${show(scipy)}`,
    );
}

function best(run: () => void): number {
  let least = Number.POSITIVE_INFINITY;
  const first = performance.now();
  for (let k = 0; k < RUNS || performance.now() - first < WARM; k++) {
    const began = performance.now();
    run();
    least = Math.min(least, performance.now() - began);
  }
  return least;
}

function show(ms: number): string {
  return `${ms.toFixed(1)} ms`;
}

/** Every entry of the matrix, both halves. */
function entries(matrix: Matrix): { row: number; col: number; value: number }[] {
  const all: { row: number; col: number; value: number }[] = [];
  for (let col = 0; col < matrix.n; col++)
    for (let p = matrix.starts[col]!; p < matrix.starts[col + 1]!; p++) {
      const [row, value] = [matrix.rows[p]!, matrix.values[p]!];
      all.push({ row, col, value });
      if (row !== col) all.push({ row: col, col: row, value });
    }
  return all;
}

function scipy(matrix: Matrix, ours: number): { readonly text: string; readonly best: number | undefined } {
  const folder = mkdtempSync(join(tmpdir(), "solver-"));
  try {
    const all = entries(matrix).sort((a, b) => a.col - b.col || a.row - b.row);
    const starts = new Int32Array(matrix.n + 1);
    for (const { col } of all) starts[col + 1]!++;
    for (let k = 0; k < matrix.n; k++) starts[k + 1]! += starts[k]!;
    writeFileSync(
      join(folder, "values"),
      Float64Array.from(all, (e) => e.value),
    );
    writeFileSync(
      join(folder, "rows"),
      Int32Array.from(all, (e) => e.row),
    );
    writeFileSync(join(folder, "starts"), starts);
    const run = spawnSync("python3", ["-c", SCIPY, folder, String(matrix.n)], { encoding: "utf8" });
    if (run.status !== 0)
      return { text: "not measured: python3 with scipy is not to be had here", best: undefined };
    const [plainLu, plainSolve, tunedLu, tunedSolve, filled, most] = run.stdout.trim().split(" ").map(Number);
    const apart = Math.abs(most! - ours) / ours;
    const [plain, tuned] = [plainLu! + plainSolve!, tunedLu! + tunedSolve!];
    return {
      best: Math.min(plain, tuned),
      text:
        `${show(plain)} as it comes, ${show(tuned)} with a symmetric ordering ` +
        `(LU ${show(tunedLu!)}, ${filled} entries); largest unknown apart by ${apart.toExponential(1)}`,
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function dense(matrix: Matrix, right: Float64Array): number {
  const a = new Float64Array(matrix.n ** 2);
  for (const { row, col, value } of entries(matrix)) a[row * matrix.n + col] = value;
  const began = performance.now();
  if (!choleskyInPlace(a, matrix.n)) throw new Error("The matrix is not positive definite.");
  for (let k = 0; k < SOLVES; k++) choleskySolve(a, matrix.n, Array.from(right));
  return performance.now() - began;
}
