/**
 * Combinations in which a member has let go and little else holds the frame: the sum of basic loads against the whole
 * solution, which is found another way and refined at every node.
 */
import { describe, expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, Structure } from "../../../server/core/analysis/structure.ts";

/** A post on a turning spring, with an arm whose end stands on a stiff link that only pushes. */
function crane(spring: number, stiffness: number): Structure {
  const section = { E: 1e6, G: 6e4, A: 36, Iy: 108, Iz: 108, J: 180 };
  return {
    nodes: [
      { id: "foot", at: [0, 0, 0] },
      { id: "head", at: [0, 0, 100] },
      { id: "tip", at: [100, 0, 100] },
    ],
    elements: [
      { id: "post", i: 0, j: 1, ...section, ydir: [1, 0, 0] },
      { id: "arm", i: 1, j: 2, ...section, ydir: [0, 0, 1] },
    ],
    links: [
      { id: "prop", i: 0, j: 2, offsetI: [100, 0, 100], direction: [0, 0, 1], stiffness, oneWay: "push" },
    ],
    supports: [{ node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0, rz: 0 }, springs: { ry: spring } }],
  };
}

const lift = (force: number): LoadCase => ({
  id: "lift",
  nodeLoads: [{ node: 2, force: [0, 0, force] }],
  elementLoads: [{ kind: "spread", element: 1, start: [0, 0, force / 100] }],
});

describe.each([
  [1e6, 1e3],
  [1e3, 1e7],
  [1, 1e7],
  [0.1, 1e5],
  [0.01, 1e5],
])("a spring of %d lb·in under a link of %d lb/in", (spring, stiffness) => {
  test("is in balance, and moves as the whole solution says [derived: P a² ÷ spring, and what bends]", () => {
    const prepared = prepare(crane(spring, stiffness));
    const summed = prepared.superpose([lift(0.5)]).combine("2 × lift", [2]);
    const whole = prepared.solve(lift(1)).solution!;
    expect(summed.status).toBe("sound");
    expect(summed.dropped).toEqual(["prop"]);
    expect(summed.residual).toBeLessThan(1e-6);
    expect(summed.links[0]).toBe(0);
    // 1 lb at the tip and 1 lb along the arm turn the foot by 150 ÷ spring
    const rigid = (150 / spring) * 100;
    const tip = summed.displacement(2)[2];
    expect(Math.abs(tip / whole.displacements[2]![2] - 1)).toBeLessThan(1e-5);
    expect(tip).toBeGreaterThan(rigid);
    expect(tip - rigid).toBeLessThan(rigid * 1e-4 + 0.1);
    const held = summed.reactions()[0]!.force;
    expect(held[2]).toBeCloseTo(-2, 6);
    expect(Math.abs(held[4])).toBeCloseTo(150, 4);
  });
});

test.each([
  ["a load that overflows", 1e306, 1],
  ["a factor that is no number", 1, Number.NaN],
  ["an infinite factor", 1, Number.POSITIVE_INFINITY],
])("%s has no answer", (_, force, factor) => {
  const { status, tips } = prepare(crane(1e3, 1e5))
    .superpose([lift(force)])
    .combine("x", [factor]);
  expect(status).toBe("failed");
  expect(tips).toHaveLength(0);
});
