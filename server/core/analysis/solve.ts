/** Solving with a factor L D Lᵀ, one right side at a time. */
import type { Factor, Front } from "./ldlt.ts";
import { at, bump, int } from "./numbers.ts";

/** Solves in place; held unknowns come out nought. */
export function solve(factor: Factor, x: Float64Array): void {
  const { scratch } = factor;
  for (const front of factor.fronts) forward(front, factor.l, x, scratch);
  for (let k = 0; k < factor.n; k++) x[k] = at(x, k) * at(factor.inverse, k);
  for (let n = factor.fronts.length - 1; n >= 0; n--) up(factor.fronts[n], factor.l, x, scratch);
}

/** x ← L⁻ᵀ x. For a unit vector at a held unknown: the motion that meets no resistance. */
export function backward(factor: Factor, x: Float64Array): void {
  for (let n = factor.fronts.length - 1; n >= 0; n--) up(factor.fronts[n], factor.l, x, factor.scratch);
}

/** x ← L⁻¹ x for the columns of one front. Four columns at a time, so that the sums are read and written less. */
function forward(front: Front, l: Float64Array, x: Float64Array, sums: Float64Array): void {
  const { first, own, below, at: start } = front;
  const rest = below.length;
  const rows = own + rest;
  let touched = false;
  for (let c = 0; c < own; c++) {
    const value = at(x, first + c);
    if (value === 0) continue;
    touched = true;
    for (let r = c + 1; r < own; r++) bump(x, first + r, -at(l, start + c * rows + r) * value);
  }
  if (!touched || rest === 0) return;
  sums.fill(0, 0, rest);
  let c = 0;
  for (; c + 3 < own; c += 4) {
    const x0 = at(x, first + c);
    const x1 = at(x, first + c + 1);
    const x2 = at(x, first + c + 2);
    const x3 = at(x, first + c + 3);
    const l0 = start + c * rows + own;
    const l1 = l0 + rows;
    const l2 = l1 + rows;
    const l3 = l2 + rows;
    for (let r = 0; r < rest; r++)
      bump(sums, r, at(l, l0 + r) * x0 + at(l, l1 + r) * x1 + (at(l, l2 + r) * x2 + at(l, l3 + r) * x3));
  }
  for (; c < own; c++) {
    const value = at(x, first + c);
    const low = start + c * rows + own;
    for (let r = 0; r < rest; r++) bump(sums, r, at(l, low + r) * value);
  }
  for (let r = 0; r < rest; r++) bump(x, int(below, r), -at(sums, r));
}

/** x ← L⁻ᵀ x for the columns of one front. */
function up(front: Front | undefined, l: Float64Array, x: Float64Array, gathered: Float64Array): void {
  if (!front) return;
  const { first, own, below, at: start } = front;
  const rest = below.length;
  const rows = own + rest;
  for (let r = 0; r < rest; r++) gathered[r] = at(x, int(below, r));
  let c = own - 1;
  for (; c >= 3 && rest > 0; c -= 4) {
    const l0 = start + c * rows + own;
    const l1 = l0 - rows;
    const l2 = l1 - rows;
    const l3 = l2 - rows;
    let s0 = 0;
    let s1 = 0;
    let s2 = 0;
    let s3 = 0;
    for (let r = 0; r < rest; r++) {
      const v = at(gathered, r);
      s0 += at(l, l0 + r) * v;
      s1 += at(l, l1 + r) * v;
      s2 += at(l, l2 + r) * v;
      s3 += at(l, l3 + r) * v;
    }
    bump(x, first + c, -s0);
    bump(x, first + c - 1, -s1);
    bump(x, first + c - 2, -s2);
    bump(x, first + c - 3, -s3);
  }
  for (; c >= 0 && rest > 0; c--) {
    let sum = 0;
    for (let r = 0; r < rest; r++) sum += at(l, start + c * rows + own + r) * at(gathered, r);
    bump(x, first + c, -sum);
  }
  for (c = own - 1; c >= 0; c--) {
    let sum = at(x, first + c);
    for (let r = c + 1; r < own; r++) sum -= at(l, start + c * rows + r) * at(x, first + r);
    x[first + c] = sum;
  }
}
