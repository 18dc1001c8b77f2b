/** Timbers that only push carry twice the load by twice the forces, the same ones having let go. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { prepare } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, Vec3 } from "../../../server/core/analysis/structure.ts";
import { hall } from "./hall.ts";

function scaled(load: LoadCase, by: number): LoadCase {
  const times = (v: Vec3): Vec3 => [v[0] * by, v[1] * by, v[2] * by];
  return {
    id: load.id,
    nodeLoads: (load.nodeLoads ?? []).map((l) => ({ ...l, force: times(l.force!) })),
    elementLoads: (load.elementLoads ?? []).map((l) =>
      l.kind === "point" ? { ...l, force: times(l.force!) } : { ...l, start: times(l.start) },
    ),
  };
}

describe("halls whose knees only push", () => {
  test("all loads a times as great: a times the forces and shifts, the same knees slack [derived]", () => {
    let slack = 0;
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 500 }),
        fc.double({ min: 0.02, max: 50, noNaN: true }),
        fc.nat(7),
        (seed, by, which) => {
          const { structure, cases } = hall(3, 2, seed);
          const { solve } = prepare(structure);
          const [one, more] = [cases[which]!, scaled(cases[which]!, by)].map((load) => solve(load));
          expect([one!.status, more!.status]).toEqual(["sound", "sound"]);
          const [a, b] = [one!.solution!, more!.solution!];
          expect([...b.dropped].sort()).toEqual([...a.dropped].sort());
          slack += a.dropped.length;
          const forces = a.elements.map((e) => [...e.endI, ...e.endJ]);
          const most = Math.max(...forces.flat().map(Math.abs));
          const off = b.elements.flatMap((e, n) =>
            [...e.endI, ...e.endJ].map((v, m) => Math.abs(v / by - forces[n]![m]!)),
          );
          expect(Math.max(...off)).toBeLessThan(1e-7 * most);
          const far = Math.max(...a.displacements.flat().map(Math.abs));
          const moved = b.displacements.flatMap((u, n) =>
            u.map((v, m) => Math.abs(v / by - a.displacements[n]![m]!)),
          );
          expect(Math.max(...moved)).toBeLessThan(1e-7 * far);
        },
      ),
      { seed: 1_618, numRuns: 40 },
    );
    expect(slack).toBeGreaterThan(40);
  });
});
