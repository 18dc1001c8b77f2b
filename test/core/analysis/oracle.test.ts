/** Whole frames against a second solver made another way (oracle.ts): motions, end forces and reactions. */
import { describe, expect, it } from "vitest";
import { analyse } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";
import { hall, section } from "./hall.ts";
import { oracle } from "./oracle.ts";
import { randomFrame } from "./random-frame.ts";

const largest = (values: readonly number[]) => values.reduce((m, v) => Math.max(m, Math.abs(v)), 0);

/** Largest deviation as a share of the largest figure of its kind: translations, rotations, forces, moments. */
function compare(structure: Structure, load: LoadCase, leftOut?: ReadonlySet<string>): number {
  const [result] = analyse(structure, [load]).cases;
  expect(result!.faults).toEqual([]);
  const s = result!.solution!;
  const second = oracle(structure, load, leftOut ?? new Set(s.dropped));
  const kinds = (list: readonly number[], half: number) =>
    list.filter((_, k) => (k % 6 < 3 ? 0 : 1) === half);
  const pairs: [readonly number[], readonly number[]][] = [
    [s.displacements.flat(), second.motions],
    [s.elements.flatMap((e) => [...e.endI, ...e.endJ]), second.ends.flat()],
    [s.reactions.flatMap((r) => [...r.force]), second.reactions.flat()],
  ];
  return Math.max(
    ...pairs.flatMap(([got, want]) =>
      [0, 1].map((half) => {
        const [g, w] = [kinds(got, half), kinds(want, half)];
        expect(g).toHaveLength(w.length);
        const size = largest(w);
        return size === 0 ? largest(g) : largest(g.map((v, k) => v - w[k]!)) / size;
      }),
    ),
  );
}

describe("against a full matrix assembled another way", () => {
  for (const seed of [3, 14, 15, 92, 65])
    it(`random space frame ${seed}: sprung and released joints, rigid arms, links, skew supports, settlement, heat`, () => {
      const { structure, cases } = randomFrame(seed, { joints: true, settlements: true, links: true });
      for (const load of cases) expect(compare(structure, load)).toBeLessThan(1e-6);
    });

  const pavilion = hall(3, 2, 5);
  for (const load of pavilion.cases)
    it(`pavilion of three bents, ${load.id}`, () => {
      // The weight of braces that let go is not in the second solver; leave it out of both.
      const plain = {
        ...load,
        elementLoads: load.elementLoads!.filter((l) => !pavilion.structure.elements[l.element]!.oneWay),
      };
      expect(compare(pavilion.structure, plain)).toBeLessThan(1e-6);
    });

  it("pavilion under wind has braces that let go, so the above compares that too", () => {
    const { cases } = analyse(pavilion.structure, pavilion.cases);
    expect(cases.filter((c) => c.solution!.dropped.length > 0).length).toBeGreaterThanOrEqual(4);
  });

  it("lean-to: rafters beside their plates on rigid arms, feet on springs, shear deformation", () => {
    const W = { E: 1_200_000, G: 75_000 };
    const post = section(6, 6);
    const area = { Asy: 36 / 1.2, Asz: 36 / 1.2 };
    const at: Vec3[] = [];
    for (const x of [0, 110, 220]) at.push([x, 0, 0], [x, 0, 84], [x, 100, 0], [x, 100, 120]);
    const structure: Structure = {
      nodes: at.map((p, n) => ({ id: `n${n}`, at: p })),
      elements: [
        ...[0, 2, 4, 6, 8, 10].map((n) => ({
          id: `post${n}`,
          i: n,
          j: n + 1,
          ...W,
          ...post,
          ...area,
          ydir: [1, 0, 0] as Vec3,
        })),
        ...[1, 5, 3, 7].map((n) => ({
          id: `plate${n}`,
          i: n,
          j: n + 4,
          ...W,
          ...section(6, 8),
          ydir: [0, 0, 1] as Vec3,
        })),
        ...[1, 5, 9].map((n) => ({
          id: `rafter${n}`,
          i: n,
          j: n + 2,
          offsetI: [5, 0, 7] as Vec3,
          offsetJ: [5, 0, 7] as Vec3,
          ...W,
          ...section(3, 7),
          ydir: [0, 0, 1] as Vec3,
          releaseI: ["ry" as const, "rz" as const],
          endSpringJ: { ux: 4e4, rz: 1e5 },
        })),
      ],
      supports: [0, 2, 4, 6, 8, 10].map((node) => ({
        node,
        fixed: { ux: 0, uy: 0, rz: 0 },
        springs: { uz: 20000, rx: 1e6, ry: 2e6 },
      })),
    };
    const load: LoadCase = {
      id: "snow and wind",
      elementLoads: [10, 11, 12].map((element) => ({
        kind: "spread",
        element,
        from: 10,
        start: [0, 0, -12],
        end: [0, 2, -4],
        per: "projection",
      })),
      nodeLoads: [{ node: 3, force: [300, 120, 0], moment: [0, 400, 100] }],
    };
    expect(compare(structure, load)).toBeLessThan(1e-6);
  });
});
