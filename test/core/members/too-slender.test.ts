/** A timber too slender to bend on edge (R_B over 50, NDS 3.3.3.7) may not bend so at all; flat it may (3.3.3.1). */
import { expect, test } from "vitest";
import { ratios } from "./judged-section.ts";

// 2 × 12 in: S flat 8 in³, on edge 48 in³
const section = { breadth: 2, depth: 12, limits: { plus1: 0, minus1: 0, plus2: 1000, minus2: 1000 } };

test("bent flat only, it is held against its flat value [derived: M/S ÷ F_b]", () => {
  expect(ratios({ ...section, N: 0, M1: 0, M2: 4000 }).bending).toBeCloseTo(0.5, 12);
});

test("on edge any bending is too much", () => {
  expect(ratios({ ...section, N: 0, M1: 100, M2: 4000 }).bending).toBe(Number.POSITIVE_INFINITY);
});
