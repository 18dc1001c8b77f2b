/**
 * Combinations summed from basic loads are the same as combinations solved whole: another path through the solver, which
 * itself is held against published frames in test/reference/frames.test.ts.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import { PER_SECTION, SHARES, sectionRow } from "../../../server/core/analysis/sections.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { jointActions } from "../../../server/core/statics/joint-actions.ts";
import { solveFrame } from "../../../server/core/statics/solve-frame.ts";
import { readFrame } from "../../../server/document/read.ts";

const QUANTITIES = ["N", "Vy", "Vz", "T", "My", "Mz"] as const;

describe.each(["cider-press-pavilion", "kayak-shelter"])("%s", (name) => {
  const text = readFileSync(new URL(`../../../samples/${name}.frame.yaml`, import.meta.url), "utf8");
  const model = buildModel(readFrame(text).frame);
  const solved = solveFrame(model, jointActions(model));
  const whole = new Map<unknown, ReturnType<typeof prepare>>();

  test("has an answer to every combination", () => {
    expect(solved.failed).toEqual([]);
    expect(solved.cases.length).toBeGreaterThan(20);
  });

  test.each(solved.cases.map((c) => [`${c.frameCase.id} (${c.seats})`, c] as const))("%s", (_, c) => {
    const { structure } = c.frame;
    if (!whole.has(structure)) whole.set(structure, prepare(structure));
    const result = whole.get(structure)!.solve(c.load());
    expect(result.status).toBe(c.combined.status);
    const solution = result.solution!;
    const force = Math.max(...solution.reactions.map((r) => Math.hypot(...r.force.slice(0, 3))));
    expect([...c.combined.dropped].sort()).toEqual([...solution.dropped].sort());
    for (let element = 0; element < structure.elements.length; element++) {
      const curves = solution.along(element)!;
      SHARES.forEach((share, place) => {
        for (let k = 0; k < PER_SECTION; k++) {
          const value = curves.valueAt(
            QUANTITIES[k]!,
            share * curves.length,
            share === 1 ? "before" : "after",
          );
          const mine = c.combined.sections()[sectionRow(element, place) + k]!;
          expect(Math.abs(mine - value)).toBeLessThan(1e-6 * force * (k < 3 ? 1 : 100));
        }
      });
    }
    c.combined.reactions().forEach((r, i) => {
      r.force.forEach((v, m) => {
        expect(Math.abs(v - solution.reactions[i]!.force[m]!)).toBeLessThan(1e-6 * force * (m < 3 ? 1 : 100));
      });
    });
    solution.displacements.forEach((u, node) => {
      c.combined.displacement(node).forEach((v, m) => {
        expect(Math.abs(v - u[m]!)).toBeLessThan(1e-6);
      });
    });
  });
});
