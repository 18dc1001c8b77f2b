/** Nothing that can be typed may throw, hang or come back as NaN: faults are named instead. */
import { describe, expect, it } from "vitest";
import { type Analysis, analyse } from "../../../server/core/analysis/analyse.ts";
import type { FrameElement, LoadCase, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";
import { random, section } from "./hall.ts";
import { randomFrame } from "./random-frame.ts";

const W = { E: 1_200_000, G: 75_000, ...section(6, 8) };
const HELD = { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 };
const NODES = [
  { id: "a", at: [0, 0, 0] as Vec3 },
  { id: "b", at: [100, 0, 0] as Vec3 },
  { id: "c", at: [100, 0, 0] as Vec3 },
];
const STICK: FrameElement = { id: "stick", i: 0, j: 1, ...W, ydir: [0, 1, 0] };
const SOUND: Structure = {
  nodes: NODES.slice(0, 2),
  elements: [STICK],
  supports: [{ node: 0, fixed: HELD }],
};
const LOAD: LoadCase = { id: "load", nodeLoads: [{ node: 1, force: [0, -100, 0] }] };

/** Every number of an answer; an answer with one that is not finite is worse than none. */
function numbersIn(value: unknown): number[] {
  if (typeof value === "number") return [value];
  if (value instanceof Float64Array) return [...value];
  if (Array.isArray(value)) return value.flatMap(numbersIn);
  if (value && typeof value === "object") return Object.values(value).flatMap(numbersIn);
  return [];
}
function expectFinite(analysis: Analysis): void {
  expect(numbersIn(analysis).every(Number.isFinite)).toBe(true);
}

describe("input that cannot be worked with", () => {
  const bad: [string, Partial<Structure>, string, string][] = [
    ["ends in one place", { nodes: NODES, elements: [{ ...STICK, i: 1, j: 2 }] }, "no-length", "stick"],
    [
      "arms that bring the ends together",
      { elements: [{ ...STICK, offsetJ: [-100, 0, 0] }] },
      "no-length",
      "stick",
    ],
    ["one node at both ends", { elements: [{ ...STICK, j: 0 }] }, "no-length", "stick"],
    ["a node that is not there", { elements: [{ ...STICK, j: 7 }] }, "unknown-node", "stick"],
    ["a negative node", { elements: [{ ...STICK, i: -1 }] }, "unknown-node", "stick"],
    ["half a node", { elements: [{ ...STICK, i: 0.5 }] }, "unknown-node", "stick"],
    ["NaN for a stiffness", { elements: [{ ...STICK, E: Number.NaN }] }, "bad-number", "stick"],
    ["a section of nothing", { elements: [{ ...STICK, A: 0 }] }, "bad-number", "stick"],
    [
      "no torsion constant",
      { elements: [{ id: "stick", i: 0, j: 1, E: 1, A: 1, ydir: [0, 1, 0] }] },
      "bad-number",
      "stick",
    ],
    [
      "an infinite inertia",
      { elements: [{ ...STICK, Iz: Number.POSITIVE_INFINITY }] },
      "bad-number",
      "stick",
    ],
    ["a negative joint spring", { elements: [{ ...STICK, endSpringI: { rz: -1 } }] }, "bad-number", "stick"],
    ["a direction along the stick", { elements: [{ ...STICK, ydir: [1, 0, 0] }] }, "bad-direction", "stick"],
    ["no direction at all", { elements: [{ ...STICK, ydir: [0, 0, 0] }] }, "bad-direction", "stick"],
    ["NaN for a place", { nodes: [NODES[0]!, { id: "b", at: [Number.NaN, 0, 0] }] }, "bad-number", "b"],
    ["two sticks of one name", { elements: [STICK, STICK] }, "repeated-id", "stick"],
    ["two supports at a node", { supports: [...SOUND.supports, ...SOUND.supports] }, "repeated-support", "a"],
    [
      "support axes that lean",
      {
        supports: [
          {
            node: 0,
            fixed: HELD,
            axes: [
              [1, 0, 0],
              [1, 1, 0],
              [0, 0, 1],
            ],
          },
        ],
      },
      "bad-axes",
      "a",
    ],
    ["a support of NaN", { supports: [{ node: 0, fixed: { ux: Number.NaN } }] }, "bad-number", "a"],
    ["no nodes", { nodes: [], elements: [], supports: [] }, "no-nodes", ""],
    [
      "a link without stiffness",
      { links: [{ id: "l", i: 0, j: 1, direction: [1, 0, 0], stiffness: 0 }] },
      "bad-number",
      "l",
    ],
    [
      "a link without direction",
      { links: [{ id: "l", i: 0, j: 1, direction: [0, 0, 0], stiffness: 1 }] },
      "bad-direction",
      "l",
    ],
    [
      "a link that would turn the frame",
      { links: [{ id: "l", i: 0, j: 1, direction: [0, 0, 1], stiffness: 1 }] },
      "askew",
      "l",
    ],
  ];
  for (const [name, change, kind, id] of bad)
    it(`${name}: ${kind}, naming it`, () => {
      const analysis = analyse({ ...SOUND, ...change }, [LOAD]);
      expect(analysis.faults.map((f) => [f.kind, f.id])).toContainEqual([kind, id]);
      expect(analysis.cases[0]!.status).toBe("failed");
      expect(analysis.cases[0]!.solution).toBeUndefined();
    });

  const badLoads: [string, Partial<LoadCase>, string][] = [
    ["on a node that is not there", { nodeLoads: [{ node: 9, force: [1, 0, 0] }] }, "unknown-node"],
    ["of NaN", { nodeLoads: [{ node: 1, force: [Number.NaN, 0, 0] }] }, "bad-number"],
    [
      "on a stick that is not there",
      { elementLoads: [{ kind: "spread", element: 3, start: [0, 0, 1] }] },
      "unknown-element",
    ],
    ["beyond the stick's end", { elementLoads: [{ kind: "point", element: 0, at: 101 }] }, "load-outside"],
    [
      "that ends before it starts",
      { elementLoads: [{ kind: "spread", element: 0, from: 50, to: 40, start: [0, 0, 1] }] },
      "load-outside",
    ],
    [
      "of an infinite spread",
      { elementLoads: [{ kind: "spread", element: 0, start: [0, 0, Number.POSITIVE_INFINITY] }] },
      "bad-number",
    ],
    ["moving what no support holds", { settlements: [{ node: 1, motion: "ux", value: 1 }] }, "not-held"],
    ["stretching a stick that is not there", { elongations: [{ element: 4, value: 1 }] }, "unknown-element"],
  ];
  for (const [name, load, kind] of badLoads)
    it(`a load ${name}: ${kind}, and the other cases are still solved`, () => {
      const { cases, faults } = analyse(SOUND, [{ id: "bad", ...load }, LOAD]);
      expect(faults).toEqual([]);
      expect(cases[0]!.faults).toMatchObject([
        { kind: "input", fault: { kind, in: "load-case", id: "bad" } },
      ]);
      expect(cases[1]!.status).toBe("sound");
    });

  it("a torque on a bar: it has nothing to take it with", () => {
    const structure = {
      ...SOUND,
      elements: [{ ...STICK, axialOnly: true }],
      supports: [...SOUND.supports, { node: 1, fixed: { uy: 0, uz: 0 } }],
    };
    const { cases } = analyse(structure, [
      { id: "t", elementLoads: [{ kind: "point", element: 0, at: 50, moment: [10, 0, 0] }] },
    ]);
    expect(cases[0]!.faults).toMatchObject([{ kind: "input", fault: { kind: "torque-on-bar" } }]);
  });

  it("no load at all: nothing moves, nothing warns", () => {
    const { cases } = analyse(SOUND, [{ id: "none" }]);
    expect(cases[0]!.status).toBe("sound");
    expect(numbersIn(cases[0]!.solution!.displacements).every((v) => v === 0)).toBe(true);
  });

  it("answers either right or not at all when stiffnesses lie 10¹² apart", () => {
    for (const power of [3, 6, 9, 12, 15, 18]) {
      const stiff = 10 ** power;
      const structure: Structure = {
        nodes: [0, 1, 2].map((n) => ({ id: `n${n}`, at: [100 * n, 0, 0] as Vec3 })),
        elements: [
          { ...STICK, id: "soft", j: 1 },
          { ...STICK, id: "stiff", i: 1, j: 2, E: W.E * stiff, G: W.G * stiff },
        ],
        supports: [{ node: 0, fixed: HELD }],
      };
      const analysis = analyse(structure, [{ id: "p", nodeLoads: [{ node: 2, force: [0, -100, 0] }] }]);
      expectFinite(analysis);
      const [result] = analysis.cases;
      if (!result!.solution) {
        expect(result!.faults).toHaveLength(1);
        expect(power).toBeGreaterThan(6);
        continue;
      }
      // The stiff stick goes along straight with the end of the soft one, which bears P and the moment 100 P.
      const [EI, P, M] = [W.E * W.Iz, 100, 1e4];
      const end = (P * 100 ** 3) / (3 * EI) + (M * 100 ** 2) / (2 * EI);
      const turn = (P * 100 ** 2) / (2 * EI) + (M * 100) / EI;
      const want = end + turn * 100;
      expect(Math.abs(-result!.solution.displacements[2]![1] / want - 1)).toBeLessThan(2 / stiff + 1e-6);
    }
  });

  it("survives 400 frames with random damage: finite numbers or named faults", () => {
    const spoilt = [Number.NaN, Number.POSITIVE_INFINITY, 0, -1, 1e300, 1e-300, 1e12];
    const seen = { solved: 0, refused: 0 };
    for (let seed = 1; seed <= 400; seed++) {
      const next = random(seed);
      const { structure, cases } = randomFrame((seed % 40) + 1, {
        joints: true,
        oneWay: true,
        links: true,
        settlements: true,
      });
      const pick = <T>(list: readonly T[]): T => list[Math.floor(next() * list.length)]!;
      // A copy to damage: any number anywhere in it.
      const copy: { structure: Structure; cases: LoadCase[] } = JSON.parse(
        JSON.stringify({ structure, cases }),
      );
      for (let hits = 0; hits < 1 + (seed % 3); hits++) {
        let at: Record<string, unknown> = copy as unknown as Record<string, unknown>;
        for (;;) {
          const keys = Object.keys(at);
          if (keys.length === 0) break;
          const key = pick(keys);
          const value = at[key];
          if (value !== null && typeof value === "object") at = value as Record<string, unknown>;
          else {
            if (typeof value === "number") at[key] = pick(spoilt);
            break;
          }
        }
      }
      const analysis = analyse(copy.structure, copy.cases);
      expectFinite({ ...analysis, faults: [] });
      for (const c of analysis.cases) {
        if (c.solution) {
          seen.solved++;
          expect(c.solution.residual.nodes).toBeLessThan(1e-6);
          const along = c.solution.along(0)!;
          expect(Number.isFinite(along.valueAt("Mz", along.length / 3))).toBe(true);
        } else {
          seen.refused++;
          expect(c.faults.length).toBeGreaterThan(0);
        }
      }
    }
    expect(seen.solved).toBeGreaterThan(100);
    expect(seen.refused).toBeGreaterThan(100);
  });
});
