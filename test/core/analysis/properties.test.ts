/** What must hold for every frame: balance, symmetry, superposition, and no change when the frame is told another way. */
import { describe, expect, it } from "vitest";
import { analyse, type Solution } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, Structure, Vec3 } from "../../../server/core/analysis/structure.ts";
import { random } from "./hall.ts";
import { type RandomFrame, randomFrame } from "./random-frame.ts";

const SEEDS = Array.from({ length: 25 }, (_, n) => n + 1);
const ALL = { joints: true, settlements: true, links: true };

function solutions({ structure, cases }: RandomFrame): Solution[] {
  return analyse(structure, cases).cases.map((c) => {
    expect(c.faults).toEqual([]);
    return c.solution!;
  });
}
const largest = (values: readonly number[]) => values.reduce((m, v) => Math.max(m, Math.abs(v)), 0);
const forcesOf = (s: Solution) => s.elements.flatMap((e) => [...e.endI, ...e.endJ]);
const motionsOf = (s: Solution) => s.displacements.flat();

function expectNear(got: readonly number[], want: readonly number[], share: number): void {
  const size = largest(want);
  expect(got).toHaveLength(want.length);
  expect(size).toBeGreaterThan(0);
  got.forEach((v, k) => {
    expect(Math.abs(v - want[k]!), `place ${k}: ${v} for ${want[k]} of ${size}`).toBeLessThanOrEqual(
      share * size,
    );
  });
}

type Matrix = readonly [Vec3, Vec3, Vec3];
const apply = (m: Matrix, v: Vec3): Vec3 =>
  m.map((row) => row[0] * v[0] + row[1] * v[1] + row[2] * v[2]) as unknown as Vec3;

/** A turn about a random axis (Rodrigues). */
function turn(seed: number): Matrix {
  const next = random(seed);
  const axis = [next() - 0.5, next() - 0.5, next() - 0.5];
  const size = Math.hypot(...axis);
  const [x, y, z] = axis.map((v) => v / size) as [number, number, number];
  const [c, s] = [Math.cos(2.1), Math.sin(2.1)];
  const t = 1 - c;
  return [
    [c + x * x * t, x * y * t - z * s, x * z * t + y * s],
    [y * x * t + z * s, c + y * y * t, y * z * t - x * s],
    [z * x * t - y * s, z * y * t + x * s, c + z * z * t],
  ];
}

describe("random space frames", () => {
  it("are in balance, at every node and as a whole, and each stick's curves end at its end forces and motions", () => {
    for (const seed of SEEDS) {
      const frame = randomFrame(seed, ALL);
      for (const s of solutions(frame)) {
        expect(s.residual.nodes).toBeLessThan(1e-10);
        expect(s.residual.whole).toBeLessThan(1e-10);
        const size = largest(forcesOf(s));
        frame.structure.elements.forEach((e, n) => {
          const along = s.along(n)!;
          along.forcesAt(along.length).forEach((v, m) => {
            expect(Math.abs(v - s.elements[n]!.endJ[m]!)).toBeLessThan(1e-9 * size);
          });
          if (e.offsetI || e.endSpringI || e.releaseJ) return;
          // Without joints between, the far end of the curve is the node.
          const [dx, dy, dz] = along.motionsAt(along.length).slice(0, 3) as [number, number, number];
          const u = s.displacements[e.j]!;
          expect(Math.abs(Math.hypot(dx, dy, dz) - Math.hypot(u[0], u[1], u[2]))).toBeLessThan(
            1e-8 * largest(motionsOf(s)),
          );
        });
      }
    }
  });

  it("obey Betti: the work of one load through the motions of another is the same both ways", () => {
    for (const seed of SEEDS) {
      const { structure, cases } = randomFrame(seed, { joints: true, links: true });
      const nodal = cases.map((c) => ({ id: c.id, nodeLoads: c.nodeLoads! }));
      const [a, b] = solutions({ structure, cases: nodal });
      const work = (load: (typeof nodal)[number], s: Solution) =>
        load.nodeLoads.map((l) => {
          const u = s.displacements[l.node]!;
          return [...l.force!, ...l.moment!].reduce((sum, f, m) => sum + f * u[m]!, 0);
        });
      const [ab, ba] = [work(nodal[0]!, b!), work(nodal[1]!, a!)];
      const total = (w: readonly number[]) => w.reduce((s, v) => s + v, 0);
      expect(Math.abs(total(ab) - total(ba))).toBeLessThan(1e-9 * Math.max(largest(ab), largest(ba)));
    }
  });

  it("add up: two cases at once, one of them doubled, give the sum", () => {
    for (const seed of SEEDS) {
      const { structure, cases } = randomFrame(seed, { joints: true, links: true });
      const both: LoadCase = {
        id: "both",
        nodeLoads: cases.flatMap((c, n) => Array.from({ length: n + 1 }, () => c.nodeLoads!).flat()),
        elementLoads: cases.flatMap((c, n) => Array.from({ length: n + 1 }, () => c.elementLoads!).flat()),
      };
      const [a, b, sum] = solutions({ structure, cases: [...cases, both] });
      expectNear(
        forcesOf(sum!),
        forcesOf(a!).map((v, k) => v + 2 * forcesOf(b!)[k]!),
        1e-9,
      );
      expectNear(
        motionsOf(sum!),
        motionsOf(a!).map((v, k) => v + 2 * motionsOf(b!)[k]!),
        1e-9,
      );
    }
  });

  it("are not strained when all supports go along with a rigid motion", () => {
    for (const seed of SEEDS) {
      const { structure } = randomFrame(seed, { joints: true, links: true });
      const [shift, spin]: [Vec3, Vec3] = [
        [0.3, -0.2, 0.5],
        [0.001, 0.002, -0.0015],
      ];
      const motion = (p: Vec3) => [
        shift[0] + spin[1] * p[2] - spin[2] * p[1],
        shift[1] + spin[2] * p[0] - spin[0] * p[2],
        shift[2] + spin[0] * p[1] - spin[1] * p[0],
        ...spin,
      ];
      const supports = structure.supports.map((s) => {
        const [ux, uy, uz, rx, ry, rz] = motion(structure.nodes[s.node]!.at);
        return { node: s.node, fixed: { ux: ux!, uy: uy!, uz: uz!, rx: rx!, ry: ry!, rz: rz! } };
      });
      const moved = { structure: { ...structure, supports }, cases: [{ id: "moved" }] };
      const [s] = solutions(moved);
      // Against what the same motion of a single node would give.
      expect(largest(forcesOf(s!))).toBeLessThan(1e-3);
      expectNear(
        motionsOf(s!),
        structure.nodes.flatMap((n) => motion(n.at)),
        1e-9,
      );
    }
  });

  it("come out the same with nodes and sticks listed in another order and some sticks turned end for end", () => {
    for (const seed of SEEDS) {
      const { structure, cases } = randomFrame(seed, ALL);
      const next = random(seed + 1000);
      const shuffled = (n: number) =>
        Array.from({ length: n }, (_, k) => ({ k, at: next() }))
          .sort((a, b) => a.at - b.at)
          .map(({ k }) => k);
      const order = shuffled(structure.nodes.length);
      const sticks = shuffled(structure.elements.length);
      const place = (k: number) => order.indexOf(k);
      const other: Structure = {
        nodes: order.map((k) => structure.nodes[k]!),
        elements: sticks.map((k) => {
          const e = structure.elements[k]!;
          return { ...e, i: place(e.i), j: place(e.j) };
        }),
        links: structure.links!.map((l) => ({ ...l, i: place(l.i), j: place(l.j) })),
        supports: structure.supports.map((s) => ({ ...s, node: place(s.node) })).reverse(),
      };
      const loads = cases.map((c) => ({
        ...c,
        nodeLoads: c.nodeLoads!.map((l) => ({ ...l, node: place(l.node) })),
        elementLoads: c.elementLoads!.map((l) => ({ ...l, element: sticks.indexOf(l.element) })),
        settlements: (c.settlements ?? []).map((l) => ({ ...l, node: place(l.node) })),
        elongations: (c.elongations ?? []).map((l) => ({ ...l, element: sticks.indexOf(l.element) })),
      }));
      const before = solutions({ structure, cases });
      const after = solutions({ structure: other, cases: loads });
      before.forEach((s, n) => {
        expectNear(
          order.flatMap((_, k) => after[n]!.displacements[place(k)]!),
          motionsOf(s),
          1e-8,
        );
        expectNear(
          sticks.flatMap((_, k) => {
            const e = after[n]!.elements[sticks.indexOf(k)]!;
            return [...e.endI, ...e.endJ];
          }),
          forcesOf(s),
          1e-8,
        );
      });
    }
  });

  it("come out the same turned as a whole in space: end forces alike, motions turned along", () => {
    for (const seed of SEEDS) {
      const { structure, cases } = randomFrame(seed, ALL);
      const m = turn(seed);
      const go = (v: Vec3) => apply(m, v);
      const identity: Matrix = [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ];
      const turned: Structure = {
        nodes: structure.nodes.map((n) => ({ ...n, at: go(n.at) })),
        elements: structure.elements.map((e) => ({
          ...e,
          ydir: go(e.ydir),
          ...(e.offsetI ? { offsetI: go(e.offsetI) } : {}),
        })),
        links: structure.links!.map((l) => ({ ...l, direction: go(l.direction), offsetI: go(l.offsetI!) })),
        supports: structure.supports.map((s) => ({
          ...s,
          axes: (s.axes ?? identity).map((row) => go(row)) as unknown as Matrix,
        })),
      };
      const loads = cases.map((c) => ({
        ...c,
        nodeLoads: c.nodeLoads!.map((l) => ({ ...l, force: go(l.force!), moment: go(l.moment!) })),
        elementLoads: c.elementLoads!.map((l) => {
          if (l.axes === "local") return l;
          if (l.kind === "point")
            return {
              ...l,
              ...(l.force ? { force: go(l.force) } : {}),
              ...(l.moment ? { moment: go(l.moment) } : {}),
            };
          return { ...l, start: go(l.start), ...(l.end ? { end: go(l.end) } : {}) };
        }),
      }));
      const before = solutions({ structure, cases });
      const after = solutions({ structure: turned, cases: loads });
      before.forEach((s, n) => {
        expectNear(forcesOf(after[n]!), forcesOf(s), 1e-8);
        const want = s.displacements.flatMap((u) => [...go([u[0], u[1], u[2]]), ...go([u[3], u[4], u[5]])]);
        expectNear(motionsOf(after[n]!), want, 1e-8);
      });
    }
  });

  it("have rigid arms that are what very stiff sticks come near to", () => {
    for (const seed of SEEDS.slice(0, 8)) {
      const { structure, cases } = randomFrame(seed, {});
      const arm: Vec3 = [3, -2, 4];
      const target = 0;
      const e = structure.elements[target]!;
      const at = structure.nodes[e.i]!.at;
      const extra = structure.nodes.length;
      const stiff: Structure = {
        ...structure,
        nodes: [...structure.nodes, { id: "arm", at: [at[0] + arm[0], at[1] + arm[1], at[2] + arm[2]] }],
        elements: [
          ...structure.elements.map((x, n) => (n === target ? { ...x, i: extra } : x)),
          {
            id: "arm",
            i: e.i,
            j: extra,
            E: 1e10,
            G: 1e10,
            A: 100,
            Iy: 1000,
            Iz: 1000,
            J: 1000,
            ydir: [0, 0, 1],
          },
        ],
      };
      const rigid: Structure = {
        ...structure,
        elements: structure.elements.map((x, n) => (n === target ? { ...x, offsetI: arm } : x)),
      };
      const loads = cases.map((c) => ({
        ...c,
        elementLoads: c.elementLoads!.filter((l) => l.element !== target),
      }));
      const [a, b] = [
        solutions({ structure: stiff, cases: loads }),
        solutions({ structure: rigid, cases: loads }),
      ];
      b.forEach((s, n) => {
        expectNear(forcesOf(a[n]!).slice(0, forcesOf(s).length), forcesOf(s), 1e-4);
      });
    }
  });
});
