/** Bounds of what acts along a stick, against what is read there; of ratios, against the formulas they bound. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import { lagrange } from "../../../server/core/analysis/inner-sections.ts";
import { evaluate } from "../../../server/core/analysis/polynomial.ts";
import { PER_SECTION, SHARES, sectionRow } from "../../../server/core/analysis/sections.ts";
import type { PointLoad, SpreadLoad, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";
import type { Limits } from "../../../server/core/statics/member-values.ts";
import { BOUNDS, boundStick, mostStress, noMost } from "../../../server/core/statics/stick-bounds.ts";

const LENGTH = 100;
const sized = fc.double({ min: -1, max: 1, noNaN: true }).map((v) => (Math.abs(v) < 1e-6 ? 0 : v));
const vector = (by: number) =>
  fc.tuple(sized, sized, sized).map(([x, y, z]): Vec3 => [by * x, by * y, by * z]);
const share = fc.oneof(fc.constantFrom(...SHARES), fc.double({ min: 0, max: 1, noNaN: true }));
const point = fc
  .tuple(share, vector(1), vector(20))
  .map(([at, force, moment]): PointLoad => ({ kind: "point", element: 0, at: at * LENGTH, force, moment }));
const spread = fc
  .tuple(share, share, vector(0.05), vector(0.05))
  .filter(([a, b]) => Math.abs(a - b) > 1e-3)
  .map(
    ([a, b, start, end]): SpreadLoad => ({
      kind: "spread",
      element: 0,
      from: Math.min(a, b) * LENGTH,
      to: Math.max(a, b) * LENGTH,
      start,
      end,
    }),
  );
const loads = fc.array(fc.oneof(point, spread), { maxLength: 3 });

function beam(oneWay: "push" | undefined): Structure {
  const section = { E: 1e6, G: 6e4, A: 36, Iy: 108, Iz: 200, J: 180 };
  const fixed = { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 };
  return {
    nodes: [
      { id: "a", at: [0, 0, 0] },
      { id: "b", at: [0.8 * LENGTH, 0.36 * LENGTH, 0.48 * LENGTH] },
      { id: "c", at: [LENGTH, 0, 0] },
    ],
    elements: [
      { id: "beam", i: 0, j: 1, ...section, ydir: [0, 0, 1], ...(oneWay ? { oneWay } : {}) },
      { id: "arm", i: 1, j: 2, ...section, ydir: [0, 0, 1] },
    ],
    supports: [0, 2].map((node) => ({ node, fixed })),
  };
}

/** Most pull, push, shears and moments that can be read: at and between the places, and where shear crosses nought. */
function read(table: Float64Array): number[] {
  const basis = SHARES.map((_, place) => lagrange(place));
  const most = new Array<number>(BOUNDS).fill(0);
  const see = (n: number, value: number) => {
    most[n] = Math.max(most[n]!, value);
  };
  const at = (place: number, k: number) => table[place * PER_SECTION + k]!;
  for (let n = 0; n <= 100; n++) {
    const weights = basis.map((p) => evaluate(p, n / 100));
    const value = (k: number) => weights.reduce((sum, w, place) => sum + w * at(place, k), 0);
    see(0, value(0));
    see(1, -value(0));
    [1, 2, 4, 5].forEach((k, m) => {
      see(2 + m, Math.abs(value(k)));
    });
  }
  const step = LENGTH / (SHARES.length - 1);
  for (let place = 0; place + 1 < SHARES.length; place++)
    for (const [shear, moment, sense, n] of [
      [1, 5, -1, 5],
      [2, 4, 1, 4],
    ] as const) {
      const [a, b] = [at(place, shear), at(place + 1, shear)];
      if (a * b < 0) see(n, Math.abs(at(place, moment) + (sense * a * (a / (a - b)) * step) / 2));
    }
  return most;
}

test("no force that is read along a stick passes its bound; some come near it [derived]", () => {
  const nearest = new Array<number>(BOUNDS).fill(0);
  fc.assert(
    fc.property(
      fc.array(loads, { minLength: 3, maxLength: 3 }),
      fc.array(sized, { minLength: 3, maxLength: 3 }),
      vector(5),
      fc.constantFrom("push" as const, undefined),
      (cases, factors, force, oneWay) => {
        const combined = prepare(beam(oneWay))
          .superpose(
            cases.map((elementLoads, n) => ({ id: `${n}`, elementLoads, nodeLoads: [{ node: 1, force }] })),
          )
          .combine("all", factors);
        fc.pre(combined.status !== "failed");
        const table = new Float64Array(sectionRow(1, 0));
        combined.writeSections(0, table, 0);
        const bounds = new Float64Array(BOUNDS);
        boundStick(combined, 0, new Float64Array(2 * PER_SECTION), bounds);
        read(table).forEach((value, n) => {
          expect(value).toBeLessThanOrEqual(bounds[n]! * (1 + 1e-9) + 1e-9);
          if (bounds[n]! > 1e-3) nearest[n] = Math.max(nearest[n]!, value / bounds[n]!);
        });
      },
    ),
    { numRuns: 400, seed: 4 },
  );
  for (const near of nearest) expect(near).toBeGreaterThan(0.95);
});

test("what loads lead off the line between the ends of a stick stays within its bounds, on either side [derived]", () => {
  const nearest = { above: 0, below: 0 };
  const basis = SHARES.map((_, place) => lagrange(place));
  fc.assert(
    fc.property(loads, (elementLoads) => {
      const combined = prepare(beam(undefined))
        .superpose([{ id: "all", elementLoads }])
        .combine("all", [1]);
      const table = new Float64Array(sectionRow(1, 0));
      const inner = new Float64Array(2 * PER_SECTION);
      combined.writeSections(0, table, 0);
      combined.boundInner(0, inner);
      const last = sectionRow(0, SHARES.length - 1);
      for (const k of [0, 1, 2, 4, 5])
        for (let n = 0; n <= 50; n++) {
          const share = n / 50;
          const value = basis.reduce(
            (sum, p, place) => sum + evaluate(p, share) * table[sectionRow(0, place) + k]!,
            0,
          );
          const off = value - table[k]! * (1 - share) - table[last + k]! * share;
          const [middle, half] = [inner[k]!, inner[k + PER_SECTION]!];
          expect(Math.abs(off - middle)).toBeLessThanOrEqual(half * (1 + 1e-9) + 1e-9);
          if (middle + half > 1e-3) nearest.above = Math.max(nearest.above, off / (middle + half));
          if (half - middle > 1e-3) nearest.below = Math.max(nearest.below, off / (middle - half));
        }
    }),
    { numRuns: 300, seed: 5 },
  );
  expect(nearest.above).toBeGreaterThan(0.95);
  expect(nearest.below).toBeGreaterThan(0.95);
});

const one = Float64Array.of(1);
const nought = Float64Array.of(0);
const WHOLE = { A: one, At: one, yc: nought, zc: nought, Sz: one, Sy: one, shear: one };
const LIMITS: Limits = {
  ...{ Fb1: 2000, plus1: 2000, minus1: 1000, criticalPlus: 6000, criticalMinus: 3000 },
  ...{ Fb2: 1500, plus2: 1500, minus2: 750 },
  ...{ Ft: 800, Fv: 150, Fc: 900, FcStar: 1200, FcE1: 5000, FcE2: 2500 },
};

function most(bounds: readonly number[], limits = LIMITS) {
  const found = noMost();
  mostStress(Float64Array.from(bounds), WHOLE, 0, limits, 1, true, found);
  return found;
}

test("of two senses of bending the lesser limit counts (NDS 3.9-3)", () => {
  const lateral = 900 / 3000;
  expect(most([0, 0, 0, 0, 0, 900]).bending).toBeCloseTo(900 / 1000, 12);
  expect(most([0, 0, 0, 0, 300, 900]).bending).toBeCloseTo(0.9 + 300 / (750 * (1 - lateral ** 2)), 12);
});

test("pull, push and shear (NDS 3.8, 3.6, 3.9.1, 3.9.2, 3.4.2)", () => {
  expect(most([400, 0, 0, 0, 0, 0]).tension).toBeCloseTo(0.5, 12);
  expect(most([400, 0, 0, 0, 0, 500]).tensionAndBending).toBeCloseTo(0.5 + 500 / 2000, 12);
  expect(most([0, 450, 0, 0, 0, 0]).compression).toBeCloseTo(0.5, 12);
  expect(most([0, 450, 0, 0, 0, 200]).compressionAndBending).toBeCloseTo(
    0.25 + 200 / (1000 * (1 - 450 / 5000)),
    12,
  );
  expect(most([0, 0, 60, 80, 0, 0]).shear).toBeCloseTo((1.5 * 100) / 150, 12);
});
