/** Members that only push or only pull: the program's own way against the plain one, and the cases at its edges. */
import { describe, expect, it } from "vitest";
import { analyse } from "../../../server/core/analysis/analyse.ts";
import type { LoadCase, Structure } from "../../../server/core/analysis/structure.ts";
import { hall, section } from "./hall.ts";
import { plainOneWay } from "./plain-one-way.ts";
import { randomFrame } from "./random-frame.ts";

const largest = (values: readonly number[]) => values.reduce((m, v) => Math.max(m, Math.abs(v)), 0);

function expectSame(structure: Structure, load: LoadCase): number {
  const fast = analyse(structure, [load]).cases[0]!;
  const plain = plainOneWay(structure, load);
  expect(plain, "the plain way settles").toBeDefined();
  expect(fast.faults).toEqual([]);
  const { solution } = fast;
  expect([...solution!.dropped].sort()).toEqual(plain!.dropped);
  const kept = structure.elements.filter((e) => !plain!.dropped.includes(e.id));
  const want = plain!.result.solution!;
  const force = largest(want.elements.flatMap((e) => [...e.endI.slice(0, 3), ...e.endJ.slice(0, 3)]));
  const shift = largest(want.displacements.flatMap((v) => v.slice(0, 3)));
  kept.forEach((e, k) => {
    const got = solution!.elements[structure.elements.indexOf(e)]!;
    expect(Math.abs(got.axial - want.elements[k]!.axial)).toBeLessThan(1e-7 * force);
  });
  solution!.displacements.forEach((v, n) => {
    for (let m = 0; m < 3; m++)
      expect(Math.abs(v[m]! - want.displacements[n]![m]!)).toBeLessThan(1e-7 * shift);
  });
  return plain!.dropped.length;
}

/** Bars and links of these frames without rigid arms and loads the plain way cannot hang up. */
function simple(seed: number): { structure: Structure; cases: LoadCase[] } {
  const { structure, cases } = randomFrame(seed, { oneWay: true, settlements: true, links: true });
  return {
    structure,
    cases: cases.map((c) => ({
      ...c,
      elementLoads: c.elementLoads!.flatMap((l) => {
        if (!structure.elements[l.element]!.oneWay) return [l];
        return [{ kind: "point" as const, element: l.element, at: 30, force: [20, -30, -60] as const }];
      }),
    })),
  };
}

describe("one-way members", () => {
  it("come out as when the frame is factorised anew for every change (40 random frames, two cases each)", () => {
    let dropped = 0;
    for (let seed = 1; seed <= 40; seed++) {
      const { structure, cases } = simple(seed);
      for (const load of cases) dropped += expectSame(structure, load);
    }
    // The test would be empty if nothing ever let go.
    expect(dropped).toBeGreaterThan(150);
  });

  it("come out so in a hall under every case, with the braces' own weight on them", () => {
    const { structure, cases } = hall(4, 2, 7);
    for (const load of cases) expectSame(structure, load);
  });

  const W = { E: 1_200_000, G: 75_000 };
  const ydir = [0, 1, 0] as const;
  const FLAT = { uy: 0, rx: 0, rz: 0 };

  /** A bent in the x-z plane: two posts pinned at the feet, a pinned tie, and a knee on the sides named. */
  function bent(sides: string, extra: Partial<Structure["elements"][number]> = {}): Structure {
    const at = {
      AF: [0, 0, 0],
      AB: [0, 0, 84],
      AT: [0, 0, 120],
      TL: [36, 0, 120],
      TR: [108, 0, 120],
      BT: [144, 0, 120],
      BB: [144, 0, 84],
      BF: [144, 0, 0],
    } as const;
    const names = Object.keys(at);
    const n = (id: string) => names.indexOf(id);
    const beam = (id: string, i: string, j: string, ends = {}) => ({
      id,
      i: n(i),
      j: n(j),
      ...W,
      ...section(8, 8),
      ydir,
      ...ends,
    });
    const knee = (id: string, i: string, j: string) => ({
      ...beam(id, i, j),
      ...section(4, 6),
      axialOnly: true,
      oneWay: "push" as const,
      ...extra,
    });
    return {
      nodes: Object.entries(at).map(([id, p]) => ({ id, at: p })),
      elements: [
        beam("pa1", "AF", "AB"),
        beam("pa2", "AB", "AT"),
        beam("pb1", "BF", "BB"),
        beam("pb2", "BB", "BT"),
        beam("t1", "AT", "TL", { releaseI: ["ry", "rz"] }),
        beam("t2", "TL", "TR"),
        beam("t3", "TR", "BT", { releaseJ: ["ry", "rz"] }),
        ...(sides.includes("L") ? [knee("L", "AB", "TL")] : []),
        ...(sides.includes("R") ? [knee("R", "BB", "TR")] : []),
      ],
      supports: names.map((id, node) => ({
        node,
        fixed: { ...FLAT, ...(id.endsWith("F") ? { ux: 0, uz: 0 } : {}) },
      })),
    };
  }
  const push = (force: readonly [number, number, number]): LoadCase => ({
    id: "push",
    nodeLoads: [{ node: 2, force }],
  });

  it("leave a mechanism that is named, with the way it goes and who let go", () => {
    const { cases } = analyse(bent("L"), [push([500, 0, 0]), push([-500, 0, 0])]);
    expect(cases[0]!.status).toBe("failed");
    expect(cases[0]!.solution).toBeUndefined();
    const [fault] = cases[0]!.faults;
    if (fault?.kind !== "mechanism") throw new Error("no mechanism");
    expect(fault.dropped).toEqual(["L"]);
    expect(fault.modes[0]!.direction[0]).toBeCloseTo(1, 9);
    expect(fault.modes[0]!.driven).toBe(true);
    expect(fault.modes[0]!.elements).toEqual(expect.arrayContaining(["pa1", "pb1", "t2"]));
    expect(cases[1]!.status).toBe("sound");
  });

  it("that all go slack together leave a frame in balance that nothing holds: said, with the way it would go", () => {
    // Tops pushed apart evenly: both knees would pull.
    const spread: LoadCase = {
      id: "spread",
      nodeLoads: [
        { node: 1, force: [-300, 0, 0] },
        { node: 6, force: [300, 0, 0] },
      ],
    };
    const [result] = analyse(bent("LR"), [spread]).cases;
    expect(result!.status).toBe("slack");
    const [fault] = result!.faults;
    if (fault?.kind !== "slack") throw new Error("not slack");
    expect(Math.abs(fault.modes[0]!.direction[0])).toBeCloseTo(1, 9);
    expect(fault.modes[0]!.driven).toBe(false);
    expect([...result!.solution!.dropped, ...result!.solution!.atZero].sort()).toEqual(
      expect.arrayContaining(["L", "R"]),
    );
    // Forces are those of statics all the same: posts bend as simple beams, 300 · 84 · 36 / 120.
    const moment = result!.solution!.along(0)!.valueAt("My", 84, "before");
    expect(Math.abs(moment)).toBeCloseTo((300 * 84 * 36) / 120, 5);
  });

  it("that let go carry their own load to their ends like a simple beam", () => {
    const weight: LoadCase = {
      id: "w",
      nodeLoads: [{ node: 2, force: [400, 0, 0] }],
      elementLoads: [7, 8].map((element) => ({ kind: "spread", element, start: [0, 0, -1] })),
    };
    const structure = bent("LR");
    const [result] = analyse(structure, [weight]).cases;
    expect(result!.solution!.dropped).toEqual(["L"]);
    const knee = result!.solution!.elements[7]!;
    const length = 36 * Math.SQRT2;
    expect(Math.hypot(knee.endI[0], knee.endI[1], knee.endI[2])).toBeCloseTo(length / 2, 9);
    expect(Math.hypot(knee.endJ[0], knee.endJ[1], knee.endJ[2])).toBeCloseTo(length / 2, 9);
    const middle = result!.solution!.along(7)!.extremes("My");
    expect(Math.max(Math.abs(middle.least.value), Math.abs(middle.greatest.value))).toBeCloseTo(
      (length * 36) / 8,
      6,
    );
  });

  it("may also be whole beams: those that let go lose their bending too", () => {
    const structure = bent("LR", { axialOnly: false });
    const load = push([2000, 0, -300]);
    expect(expectSame(structure, load)).toBe(1);
  });

  it("come back: with settlement and reversed load the set differs from case to case on one factorisation", () => {
    const structure = bent("LR");
    const cases = [push([400, 0, 0]), push([-400, 0, 0]), push([400, 0, 0])];
    const results = analyse(structure, cases).cases;
    expect(results.map((r) => r.solution!.dropped)).toEqual([["L"], ["R"], ["L"]]);
    expect(results[2]!.solution!.displacements).toEqual(results[0]!.solution!.displacements);
  });

  it("of a link: a stop holds one way only", () => {
    const structure: Structure = {
      nodes: [
        { id: "a", at: [0, 0, 0] },
        { id: "b", at: [100, 0, 0] },
        { id: "stop", at: [100, 0, 2] },
      ],
      elements: [{ id: "e", i: 0, j: 1, ...W, ...section(6, 6), ydir }],
      links: [{ id: "gap", i: 1, j: 2, direction: [0, 0, 1], stiffness: 500, oneWay: "push" }],
      supports: [
        { node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } },
        { node: 2, fixed: { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } },
      ],
    };
    // The stop lies on the far side of the direction: moving up closes it, moving down opens it.
    const { cases } = analyse(structure, [
      { id: "up", nodeLoads: [{ node: 1, force: [0, 0, 100] }] },
      { id: "down", nodeLoads: [{ node: 1, force: [0, 0, -100] }] },
    ]);
    const stiff = (3 * W.E * section(6, 6).Iy) / 100 ** 3;
    expect(cases[0]!.solution!.displacements[1]![2]).toBeCloseTo(100 / (stiff + 500), 9);
    expect(cases[0]!.solution!.links[0]).toBeCloseTo((-500 * 100) / (stiff + 500), 6);
    expect(cases[1]!.solution!.displacements[1]![2]).toBeCloseTo(-100 / stiff, 9);
    expect(cases[1]!.solution!.dropped).toEqual(["gap"]);
    expect(cases[1]!.solution!.links[0]).toBe(0);
  });
});
