/** Motions without resistance: found, named and told apart from turns that do no harm. */
import { describe, expect, it } from "vitest";
import { analyse } from "../../../server/core/analysis/analyse.ts";
import type { FrameElement, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";
import { hall, random, section } from "./hall.ts";
import { randomFrame } from "./random-frame.ts";

const W = { E: 1_200_000, G: 75_000, ...section(6, 8) };
const PIN = { ux: 0, uy: 0, uz: 0 };

function line(count: number, ends: Partial<FrameElement> = {}): Structure {
  return {
    nodes: Array.from({ length: count + 1 }, (_, n) => ({ id: `n${n}`, at: [40 * n, 0, 0] as Vec3 })),
    elements: Array.from({ length: count }, (_, n) => ({
      id: `e${n}`,
      i: n,
      j: n + 1,
      ...W,
      ydir: [0, 0, 1] as Vec3,
      ...ends,
    })),
    supports: [],
  };
}

describe("mechanisms", () => {
  it("a frame on nothing has six ways to go, however it lies in space", () => {
    const { structure } = randomFrame(2);
    const next = random(5);
    const [a, b] = [next() * 6, next() * 6];
    const turn = (p: Vec3): Vec3 => {
      const [x, y] = [p[0] * Math.cos(a) - p[1] * Math.sin(a), p[0] * Math.sin(a) + p[1] * Math.cos(a)];
      return [x, y * Math.cos(b) - p[2] * Math.sin(b), y * Math.sin(b) + p[2] * Math.cos(b)];
    };
    for (const go of [(p: Vec3) => p, turn]) {
      const floating: Structure = {
        nodes: structure.nodes.map((n) => ({ ...n, at: go(n.at) })),
        elements: structure.elements.map((e) => ({ ...e, ydir: go(e.ydir) })),
        supports: [],
      };
      const analysis = analyse(floating, [{ id: "none" }]);
      expect(analysis.mechanisms).toHaveLength(6);
      expect(analysis.cases[0]!.status).toBe("failed");
      for (const mode of analysis.mechanisms) {
        expect(Math.hypot(...mode.direction)).toBeCloseTo(1, 9);
        expect(Math.max(...mode.nodes.flatMap((n) => n.motion.slice(0, 3).map(Math.abs)))).toBeCloseTo(1, 9);
      }
    }
  });

  it("a hall without the knees along its walls racks along the walls and no other way", () => {
    const { structure, cases } = hall(4, 2);
    const without = {
      ...structure,
      elements: structure.elements.filter((e) => !e.id.startsWith("knee-")),
    };
    const { mechanisms, cases: results } = analyse(without, [{ id: cases[0]!.id }]);
    // Each line of plates can go alone where nothing but rafters holds it to the next.
    expect(mechanisms.length).toBeGreaterThanOrEqual(1);
    for (const mode of mechanisms) expect(Math.abs(mode.direction[0])).toBeGreaterThan(0.99);
    expect(results[0]!.status).toBe("failed");
    expect(analyse(structure, []).mechanisms).toEqual([]);
  });

  it("a stick of many pieces that spins about itself is idle, and solved as if held; under a torque it is a mechanism", () => {
    const structure = {
      ...line(5),
      supports: [
        { node: 0, fixed: PIN },
        { node: 5, fixed: { uy: 0, uz: 0 } },
      ],
    };
    const analysis = analyse(structure, [
      { id: "weight", elementLoads: [{ kind: "spread", element: 2, start: [0, 0, -5] }] },
      { id: "torque", nodeLoads: [{ node: 3, moment: [50, 0, 0] }] },
    ]);
    expect(analysis.mechanisms).toEqual([]);
    expect(analysis.idle).toHaveLength(1);
    expect(analysis.idle[0]!.nodes).toHaveLength(6);
    expect(analysis.cases[0]!.status).toBe("sound");
    expect(analysis.cases[1]!.faults).toMatchObject([{ kind: "mechanism", modes: [{ driven: true }] }]);
  });

  it("a spinning stick that carries an outrigger is no idle one: the outrigger swings", () => {
    const structure = {
      ...line(2),
      supports: [
        { node: 0, fixed: PIN },
        { node: 2, fixed: { uy: 0, uz: 0 } },
      ],
    };
    const swinging: Structure = {
      ...structure,
      nodes: [...structure.nodes, { id: "tip", at: [40, 30, 0] }],
      elements: [...structure.elements, { id: "arm", i: 1, j: 3, ...W, ydir: [0, 0, 1] }],
    };
    const { mechanisms, idle } = analyse(swinging, []);
    expect(idle).toEqual([]);
    expect(mechanisms).toHaveLength(1);
    expect(mechanisms[0]!.elements).toEqual(["arm"]);
    expect(Math.abs(mechanisms[0]!.direction[2])).toBeCloseTo(1, 9);
  });

  it("a stick loose between its own joints is named: it swings, slides or spins", () => {
    const ends = {
      supports: [
        { node: 0, fixed: { ...PIN, rx: 0, ry: 0, rz: 0 } },
        { node: 1, fixed: { ...PIN, rx: 0, ry: 0, rz: 0 } },
      ],
    };
    const slides = analyse({ ...line(1, { releaseI: ["ux"], releaseJ: ["ux"] }), ...ends }, []);
    expect(slides.mechanisms).toMatchObject([{ elements: ["e0"], driven: false }]);
    expect(Math.abs(slides.mechanisms[0]!.direction[0])).toBeCloseTo(1, 9);
    const swings = analyse({ ...line(1, { releaseI: ["ry"], releaseJ: ["uz", "ry"] }), ...ends }, []);
    expect(swings.mechanisms).toMatchObject([{ elements: ["e0"] }]);
    expect(Math.abs(swings.mechanisms[0]!.direction[1])).toBeCloseTo(1, 9);
    const spins = analyse({ ...line(1, { releaseI: ["rx"], releaseJ: ["rx"] }), ...ends }, [
      { id: "weight", elementLoads: [{ kind: "spread", element: 0, start: [0, 0, -5] }] },
      { id: "torque", elementLoads: [{ kind: "point", element: 0, at: 10, moment: [9, 0, 0] }] },
    ]);
    expect(spins.mechanisms).toEqual([]);
    expect(spins.idle).toMatchObject([{ elements: ["e0"] }]);
    expect(spins.cases.map((c) => c.status)).toEqual(["sound", "failed"]);
  });

  it("a joint where every end is pinned turns idly, also where the pins lie askew; a moment there drives it", () => {
    const structure: Structure = {
      nodes: [
        { id: "left", at: [0, 0, 0] },
        { id: "peak", at: [70, 13, 41] },
        { id: "right", at: [140, -9, 0] },
        { id: "back", at: [66, 120, 3] },
      ],
      elements: [0, 2, 3].map((n) => ({
        id: `r${n}`,
        i: n,
        j: 1,
        ...W,
        ydir: [0.2, 0.1, 1],
        releaseJ: ["rx", "ry", "rz"],
      })),
      supports: [0, 2, 3].map((node) => ({ node, fixed: { ...PIN, rx: 0, ry: 0, rz: 0 } })),
    };
    const { idle, mechanisms, cases } = analyse(structure, [
      { id: "force", nodeLoads: [{ node: 1, force: [10, 20, -300] }] },
      { id: "moment", nodeLoads: [{ node: 1, moment: [0, 70, 0] }] },
    ]);
    expect(mechanisms).toEqual([]);
    expect(idle).toHaveLength(3);
    expect(cases[0]!.status).toBe("sound");
    expect(cases[1]!.faults).toMatchObject([{ kind: "mechanism", modes: [{ driven: true }] }]);
    expect(cases[1]!.solution).toBeUndefined();
  });

  it("a very limber frame is no mechanism: a pole of 200 pieces, fixed at its foot, bends as the formula says", () => {
    const pieces = 200;
    const structure = { ...line(pieces), supports: [{ node: 0, fixed: { ...PIN, rx: 0, ry: 0, rz: 0 } }] };
    const { mechanisms, cases } = analyse(structure, [
      { id: "p", nodeLoads: [{ node: pieces, force: [0, 0, -1e-3] }] },
    ]);
    expect(mechanisms).toEqual([]);
    const want = (1e-3 * (40 * pieces) ** 3) / (3 * W.E * W.Iz);
    const got = -cases[0]!.solution!.displacements[pieces]![2];
    expect(Math.abs(got / want - 1)).toBeLessThan(1e-6);
  });
});
