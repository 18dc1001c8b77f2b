/** Beams, joints and springs whose answers are formulas, each with its source. */
import { describe, expect, it } from "vitest";
import { analyse, type Solution } from "../../../server/core/analysis/analyse.ts";
import type {
  FrameElement,
  FrameSupport,
  LoadCase,
  Structure,
  Vec3,
} from "../../../server/core/analysis/structure.ts";

const E = 1_200_000;
const G = 75_000;
const SIZE = { A: 48, Iy: 144, Iz: 256, J: 311 };
const L = 120;
const HELD = { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 };
const EI = E * SIZE.Iz;

/** One stick along x, y up, so that loads along −y bend it about z. */
function beam(
  supports: readonly FrameSupport[],
  load: Omit<LoadCase, "id">,
  extra: Partial<FrameElement> = {},
  more: Partial<Structure> = {},
): Solution {
  const structure: Structure = {
    nodes: [
      { id: "i", at: [0, 0, 0] },
      { id: "j", at: [L, 0, 0] },
    ],
    elements: [{ id: "e", i: 0, j: 1, E, G, ...SIZE, ydir: [0, 1, 0], ...extra }],
    supports,
    ...more,
  };
  const [result] = analyse(structure, [{ id: "load", ...load }]).cases;
  expect(result!.faults).toEqual([]);
  return result!.solution!;
}

const PINNED: FrameSupport[] = [
  { node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0 } },
  { node: 1, fixed: { uy: 0, uz: 0 } },
];
const CANTILEVER: FrameSupport[] = [{ node: 0, fixed: HELD }];
const FIXED: FrameSupport[] = [
  { node: 0, fixed: HELD },
  { node: 1, fixed: HELD },
];
const spread = (start: Vec3, end?: Vec3) => ({
  elementLoads: [{ kind: "spread" as const, element: 0, start, ...(end ? { end } : {}) }],
});
const near = (got: number, want: number, share = 1e-9) =>
  expect(Math.abs(got - want), `got ${got}, want ${want}`).toBeLessThanOrEqual(share * Math.abs(want));

describe("closed forms", () => {
  it("simple beam, uniform load (Roark; memory): wL²/8 and 5wL⁴/384EI in the middle of one stick", () => {
    const w = 7;
    const along = beam(PINNED, spread([0, -w, 0])).along(0)!;
    const moment = along.extremes("Mz").greatest;
    near(moment.value, (w * L ** 2) / 8);
    near(moment.x, L / 2);
    const sag = along.sag("dy").least;
    near(-sag.value, (5 * w * L ** 4) / (384 * EI));
    near(sag.x, L / 2);
    near(along.valueAt("Vy", 0), (-w * L) / 2);
    near(along.valueAt("Vy", L), (w * L) / 2);
  });

  it("simple beam, load rising to w at one end (AISC beam table; memory): wL²/9√3 at L/√3, 0.00652 wL⁴/EI at 0.5193 L", () => {
    const w = 9;
    const along = beam(PINNED, spread([0, 0, 0], [0, -w, 0])).along(0)!;
    const moment = along.extremes("Mz").greatest;
    near(moment.value, (w * L ** 2) / (9 * Math.sqrt(3)));
    near(moment.x, L / Math.sqrt(3), 1e-7);
    const sag = along.sag("dy").least;
    near(-sag.value, (0.00652 * w * L ** 4) / EI, 5e-4);
    near(sag.x, 0.5193 * L, 1e-4);
  });

  it("both ends fixed, load rising to w at end j (Roark; memory): wL²/30 and wL²/20", () => {
    const w = 9;
    const { endI, endJ } = beam(FIXED, spread([0, 0, 0], [0, -w, 0])).elements[0]!;
    near(endI[5], (w * L ** 2) / 30);
    near(endJ[5], (-w * L ** 2) / 20);
    near(endI[1], (3 * w * L) / 20);
    near(endJ[1], (7 * w * L) / 20);
  });

  it("both ends fixed, moment M at a (Roark; memory): 6Mab/L³ across, Mb(2a − b)/L² and Ma(2b − a)/L² at the ends", () => {
    const [M, a] = [5000, 45];
    const b = L - a;
    const solution = beam(FIXED, {
      elementLoads: [{ kind: "point", element: 0, at: a, moment: [0, 0, M] }],
    });
    const { endI, endJ } = solution.elements[0]!;
    near(Math.abs(endI[1]), (6 * M * a * b) / L ** 3);
    near(endI[5], (M * b * (2 * a - b)) / L ** 2);
    near(endJ[5], (M * a * (2 * b - a)) / L ** 2);
    const along = solution.along(0)!;
    near(along.valueAt("Mz", a, "before") - along.valueAt("Mz", a, "after"), M);
  });

  it("cantilever with shear deformation (Timoshenko; memory): PL³/3EI + PL/GA_s, wL⁴/8EI + wL²/2GA_s, both ways", () => {
    const [P, w, area] = [250, 4, 40];
    const point = { nodeLoads: [{ node: 1, force: [0, -P, -P] as Vec3 }] };
    const tip = beam(CANTILEVER, point, { Asy: area, Asz: area }).displacements[1]!;
    near(-tip[1], (P * L ** 3) / (3 * EI) + (P * L) / (G * area));
    near(-tip[2], (P * L ** 3) / (3 * E * SIZE.Iy) + (P * L) / (G * area));
    const even = beam(CANTILEVER, spread([0, -w, 0]), { Asy: area, Asz: area });
    near(-even.displacements[1]![1], (w * L ** 4) / (8 * EI) + (w * L ** 2) / (2 * G * area));
    near(even.along(0)!.valueAt("dy", L), even.displacements[1]![1]);
  });

  it("propped cantilever with shear deformation (force method, derived): R = w(L⁴/8EI + L²/2GA_s)/(L³/3EI + L/GA_s)", () => {
    const [w, area] = [6, 12];
    const supports = [...CANTILEVER, { node: 1, fixed: { uy: 0 } }];
    const { endJ } = beam(supports, spread([0, -w, 0]), { Asy: area }).elements[0]!;
    const want = (w * (L ** 4 / (8 * EI) + L ** 2 / (2 * G * area))) / (L ** 3 / (3 * EI) + L / (G * area));
    near(endJ[1], want);
  });

  it("ends on turning springs k (derived: wL³/24EI = M(1/k + L/2EI)): M = (wL²/12)/(1 + 2EI/kL)", () => {
    const [w, k] = [7, 3e6];
    const soft = { endSpringI: { rz: k }, endSpringJ: { rz: k } };
    const { endI, endJ } = beam(FIXED, spread([0, -w, 0]), soft).elements[0]!;
    const want = (w * L ** 2) / 12 / (1 + (2 * EI) / (k * L));
    near(endI[5], want);
    near(endJ[5], -want);
  });

  it("peg spring in series with the stick (Hooke): P (L/EA + 1/k), also for a very soft and a very stiff peg", () => {
    const P = 900;
    for (const k of [1e-3, 4e4, 1e12]) {
      const load = { nodeLoads: [{ node: 1, force: [P, 0, 0] as Vec3 }] };
      const solution = beam(CANTILEVER, load, { endSpringJ: { ux: k } });
      near(solution.displacements[1]![0], P * (L / (E * SIZE.A) + 1 / k), 1e-8);
      near(solution.elements[0]!.axial, P);
      // The stick itself stretches by its own part only; the rest is in the joint.
      near(solution.along(0)!.valueAt("dx", L), (P * L) / (E * SIZE.A), 1e-6);
    }
  });

  it("held at both ends and heated (Hooke): N = −EA δ/L, and nothing when one end is free", () => {
    const free = 0.03;
    const held = beam(FIXED, { elongations: [{ element: 0, value: free }] });
    near(held.elements[0]!.axial, (-E * SIZE.A * free) / L);
    const loose = beam(CANTILEVER, {}, { freeElongation: free });
    near(loose.displacements[1]![0], free);
    expect(Math.abs(loose.elements[0]!.axial)).toBeLessThan(1e-6);
    near(loose.along(0)!.valueAt("dx", L / 2), free / 2);
  });

  it("rigid arm at the end (statics): a load beside the stick's end bends and twists it", () => {
    const arm: Vec3 = [0, 0, 10];
    const structure: Structure = {
      nodes: [
        { id: "i", at: [0, 0, 0] },
        { id: "j", at: [L, 0, -10] },
      ],
      elements: [{ id: "e", i: 0, j: 1, E, G, ...SIZE, ydir: [0, 1, 0], offsetJ: arm }],
      supports: CANTILEVER,
    };
    const load: LoadCase = { id: "p", nodeLoads: [{ node: 1, force: [0, -100, 0] }] };
    const { displacements, elements } = analyse(structure, [load]).cases[0]!.solution!;
    // Force at z = −10: moment about x at the axis = −z·Fy·(−1) = (−10)(−100)(−1).
    near(Math.abs(elements[0]!.endI[3]), 1000);
    const twist = (1000 * L) / (G * SIZE.J);
    near(Math.abs(displacements[1]![3]), twist);
    near(-displacements[1]![1], (100 * L ** 3) / (3 * EI) + 10 * twist);
  });

  it("snow on a slope (statics): per level length, cos times as much as per length of the rafter; square to it nothing changes", () => {
    const structure: Structure = {
      nodes: [
        { id: "i", at: [0, 0, 0] },
        { id: "j", at: [120, 0, 90] },
      ],
      elements: [{ id: "e", i: 0, j: 1, E, G, ...SIZE, ydir: [0, 1, 0] }],
      supports: [
        { node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0 } },
        { node: 1, fixed: { uy: 0, uz: 0 } },
      ],
    };
    const load = (per: "length" | "projection", start: Vec3): LoadCase => ({
      id: per,
      elementLoads: [{ kind: "spread", element: 0, start, per }],
    });
    const { cases } = analyse(structure, [
      load("length", [0, 0, -10]),
      load("projection", [0, 0, -10]),
      load("projection", [-6, 0, 8]),
    ]);
    const lift = (n: number) => cases[n]!.solution!.reactions.reduce((sum, r) => sum + r.force[2], 0);
    near(lift(0), 10 * 150);
    near(lift(1), 10 * 120);
    near(lift(2), -8 * 150);
  });

  it("two springs side by side and in line through links (Hooke)", () => {
    const [k1, k2, P] = [500, 300, 90];
    const structure: Structure = {
      nodes: [0, 1, 2].map((n) => ({ id: `n${n}`, at: [n * 10, 0, 0] as Vec3 })),
      elements: [],
      links: [
        { id: "a", i: 0, j: 1, direction: [1, 0, 0], stiffness: k1 },
        { id: "b", i: 1, j: 2, direction: [1, 0, 0], stiffness: k2 },
      ],
      supports: [
        { node: 0, fixed: HELD },
        { node: 1, fixed: { uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } },
        { node: 2, fixed: { uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } },
      ],
    };
    const { displacements, links } = analyse(structure, [
      { id: "p", nodeLoads: [{ node: 2, force: [P, 0, 0] }] },
    ]).cases[0]!.solution!;
    near(displacements[2]![0], P * (1 / k1 + 1 / k2));
    near(links[0]!, P);
    near(links[1]!, P);
  });

  it("a bar with a section to bend sags between its ends under its own load (Roark; memory): 5wL⁴/384EI", () => {
    const w = 3;
    const solution = beam(
      [...PINNED.slice(0, 1), { node: 1, fixed: { uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } }],
      spread([0, -w, 0]),
      { axialOnly: true },
    );
    near(-solution.along(0)!.sag("dy").least.value, (5 * w * L ** 4) / (384 * EI));
    near(solution.elements[0]!.endI[1], (w * L) / 2);
    expect(solution.elements[0]!.endI[5]).toBe(0);
  });
});
