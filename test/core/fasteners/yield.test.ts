/** What must hold for any dowel, whatever its size. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltHole, boltLateral } from "../../../server/core/fasteners/bolt.ts";
import { combinedUse } from "../../../server/core/fasteners/combined.ts";
import {
  adjust,
  groupAction,
  toeNail,
  wetLateral,
  wetWithdrawal,
} from "../../../server/core/fasteners/connection-factors.ts";
import { dowelBearing, steelBearing } from "../../../server/core/fasteners/dowel-bearing.ts";
import { LAG_SIZES, lagLateral, lagSize, lagThread } from "../../../server/core/fasteners/lag-screw.ts";
import {
  headPullThrough,
  nailLateral,
  nailWithdrawal,
  toeNailReach,
} from "../../../server/core/fasteners/nail.ts";
import { boltDistances } from "../../../server/core/fasteners/placement.ts";
import { structuralScrew } from "../../../server/core/fasteners/structural-screw.ts";
import { WOOD_SCREWS, woodScrewLateral, woodScrewRoot } from "../../../server/core/fasteners/wood-screw.ts";
import { doubleShear, reductionTerm, singleShear } from "../../../server/core/fasteners/yield.ts";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const gravity = real(0.3, 0.75);
const shears = fc.record({
  diameter: real(0.25, 1),
  lm: real(1, 8),
  ls: real(0.5, 4),
  mainBearing: real(1000, 8000),
  sideBearing: real(1000, 8000),
  bendingYield: real(20000, 100000),
  angle: real(0, 90),
});
type Shear = typeof shears extends fc.Arbitrary<infer T> ? T : never;
const shear = (s: Shear) => ({
  diameter: s.diameter,
  main: { length: s.lm, bearing: s.mainBearing },
  side: { length: s.ls, bearing: s.sideBearing },
  bendingYield: s.bendingYield,
  reduction: reductionTerm(s.diameter, s.diameter, s.angle),
});
/** not below, but for the last digits of a float */
const notBelow = (more: number, less: number) => expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-9));

describe("yield modes of any dowel (derived, NDS 12.3.1)", () => {
  test.each([
    ["diameter", 1.3],
    ["lm", 1.5],
    ["ls", 1.5],
    ["bendingYield", 1.5],
  ] as const)("more %s never carries less", (key, by) => {
    fc.assert(
      fc.property(shears, (s) => {
        const more = { ...s, [key]: s[key] * by };
        notBelow(singleShear(shear(more)).governs.Z, singleShear(shear(s)).governs.Z);
        notBelow(doubleShear(shear(more)).governs.Z, doubleShear(shear(s)).governs.Z);
      }),
    );
  });
  test("stronger wood on both sides never carries less", () => {
    fc.assert(
      fc.property(shears, (s) => {
        const more = { ...s, mainBearing: s.mainBearing * 1.2, sideBearing: s.sideBearing * 1.2 };
        notBelow(singleShear(shear(more)).governs.Z, singleShear(shear(s)).governs.Z);
      }),
    );
  });
  test("single shear does not care which member is called main", () => {
    fc.assert(
      fc.property(shears, (s) => {
        const swapped = {
          ...s,
          lm: s.ls,
          ls: s.lm,
          mainBearing: s.sideBearing,
          sideBearing: s.mainBearing,
        };
        const [one, other] = [singleShear(shear(s)), singleShear(shear(swapped))];
        expect(one.governs.Z).toBeCloseTo(other.governs.Z, 6);
        const z = (y: typeof one, mode: string) => y.modes.find((m) => m.mode === mode)!.Z;
        expect(z(one, "Im")).toBeCloseTo(z(other, "Is"), 6);
        expect(z(one, "IIIm")).toBeCloseTo(z(other, "IIIs"), 6);
      }),
    );
  });
  test("the least of the modes governs, and double shear doubles all but the main member’s bearing", () => {
    fc.assert(
      fc.property(shears, (s) => {
        const [one, two] = [singleShear(shear(s)), doubleShear(shear(s))];
        expect(one.governs.Z).toBe(Math.min(...one.modes.map((m) => m.Z)));
        for (const { mode, Z } of two.modes) {
          const single = one.modes.find((m) => m.mode === mode)!.Z;
          expect(Z).toBeCloseTo(mode === "Im" ? single : 2 * single, 6);
        }
      }),
    );
  });
  test("a size of nothing carries nothing", () => {
    for (const bad of [0, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      const s = { diameter: 0.5, lm: bad, ls: 2, mainBearing: 4000, sideBearing: 4000, bendingYield: 45000 };
      expect(singleShear(shear({ ...s, angle: 0 })).governs.Z).toBe(0);
      expect(doubleShear(shear({ ...s, angle: 0 })).governs.Z).toBe(0);
    }
  });
});

describe("dowel bearing (published, NDS 12.3.3)", () => {
  test("at an angle lies between along and across, and follows the angle", () => {
    fc.assert(
      fc.property(gravity, real(0.25, 1), real(0, 90), real(0, 90), (G, D, a, b) => {
        const [low, high] = a < b ? [a, b] : [b, a];
        const { along, across, value } = dowelBearing(G, D, low);
        expect(value).toBeLessThanOrEqual(Math.max(along, across) * (1 + 1e-12));
        notBelow(value, Math.min(along, across));
        if (along >= across) notBelow(value, dowelBearing(G, D, high).value);
      }),
    );
  });
  test("grows with the gravity", () => {
    fc.assert(
      fc.property(gravity, real(0.1, 1), real(0, 90), (G, D, angle) => {
        notBelow(dowelBearing(G * 1.1, D, angle, false).value, dowelBearing(G, D, angle, false).value);
      }),
    );
  });
  test("nothing of nothing", () => {
    expect(dowelBearing(0, 0.5, 0).value).toBe(0);
    expect(dowelBearing(0.5, Number.NaN, 0).value).toBe(0);
  });
  test("steel", () => {
    expect(steelBearing(58000, "hot").value).toBe(87000);
    // Fe 61,850 psi of the printed lag table is sheet of 45,000 psi
    expect(steelBearing(45000, "cold").value).toBeCloseTo(61875, 6);
  });
});

describe("fasteners by name", () => {
  const main = { kind: "wood", G: 0.36, angle: 0 } as const;
  const side = { ...main, thickness: 1.5 };
  test("a lag screw or nail that is too short carries nothing (published)", () => {
    const lag = (reach: number) => lagLateral({ diameter: 0.5, main, side, penetration: reach }).reference;
    expect(lag(2.01).value).toBeGreaterThan(0);
    expect(lag(1.9).value).toBe(0);
    const nail = (length: number) => nailLateral({ diameter: 0.162, length, main, side }).reference.value;
    expect(nail(2.48)).toBeGreaterThan(0);
    expect(nail(2.4)).toBe(0);
    expect(nail(1)).toBe(0);
  });
  test("roots of printed sizes, and in proportion between them (memory)", () => {
    for (const size of LAG_SIZES) expect(lagSize(size.diameter)).toEqual(size);
    expect(lagSize(0.28125).root).toBeCloseTo((0.173 + 0.227) / 2, 9);
    expect(lagSize(2).root).toBe(0.78);
    for (const [, nominal, root] of WOOD_SCREWS) expect(woodScrewRoot(nominal)).toBe(root);
  });
  test("thread of lag screws (memory): 4 in has 2 1/2, 9 in has 5, 12 in and more 6", () => {
    expect([1, 4, 9, 9.5, 12, 20].map(lagThread)).toEqual([1, 2.5, 5, 5, 6, 6]);
  });
  test("a structural screw is worth its lag screw, and is always called uncertain", () => {
    const deep = { ...main, thickness: 4 };
    const screw = structuralScrew({ diameter: 0.3125, length: 10, main, side: deep });
    expect(screw.asIf).toBe("lag-screw");
    expect(screw.Z.value).toBe(
      lagLateral({ diameter: 0.3125, main, side: deep, penetration: 6 - 3 / 16 }).reference.value,
    );
    expect(screw.W.value).toBeCloseTo(1800 * 0.36 ** 1.5 * 0.3125 ** 0.75 * (5 - 3 / 16), 9);
    expect([screw.Z.status, screw.W.status]).toEqual(["uncertain", "uncertain"]);
    expect(screw.draws).toBeUndefined();
    expect(structuralScrew({ diameter: 0.3125, length: 10, thread: 6, main, side: deep }).draws).toBe(true);
    const end = structuralScrew({ diameter: 0.3125, length: 10, main, side: deep, endGrain: true });
    expect(end.Z.value / screw.Z.value).toBeCloseTo(0.67, 9);
    expect(end.W.value / screw.W.value).toBeCloseTo(0.75, 9);
  });
  test("a structural screw under 1/4 in is a wood screw; its head may pull through first", () => {
    const screw = structuralScrew({ diameter: 0.216, length: 6, head: 0.4, main, side });
    expect(screw.asIf).toBe("wood-screw");
    expect(screw.lateral.reference.value).toBe(
      woodScrewLateral({ diameter: 0.216, main, side, reach: 4.5 }).reference.value,
    );
    expect(screw.W.value).toBeCloseTo(
      Math.min(screw.withdrawal.reference.value, 690 * Math.PI * 0.4 * 0.36 ** 2),
      6,
    );
    expect(structuralScrew({ diameter: 0.216, length: 6, main, side, endGrain: true }).W.value).toBe(0);
    expect(structuralScrew({ diameter: 0.3125, length: 4, thread: 4, main, side }).draws).toBe(false);
  });
  test("head pull-through stops growing at 2.5 heads of thickness (memory)", () => {
    expect(headPullThrough(0.4, 0.5, 5).value).toBeCloseTo(1725 * Math.PI * 0.4 ** 2 * 0.25, 6);
  });
  test("nails: ring shanks hold better in light wood; a toe-nail reaches L cos 30° − L/3 (memory)", () => {
    expect(nailWithdrawal(0.36, 0.162, 2, "ring").reference.value).toBeGreaterThan(
      nailWithdrawal(0.36, 0.162, 2).reference.value,
    );
    expect(toeNailReach(3).side).toBe(1);
    expect(toeNailReach(3).reach).toBeCloseTo(1.598, 3);
    expect([toeNail("lateral").value, toeNail("withdrawal").value]).toEqual([0.83, 0.67]);
  });
  test("bolt holes are 1/32 to 1/16 in over (published)", () => {
    expect(boltHole(0.75)).toEqual({ least: 0.78125, most: 0.8125 });
  });
  test("the thinner side counts in double shear", () => {
    const at = (thickness: number, farSide: number) =>
      boltLateral({ diameter: 0.75, main, mainThickness: 3.5, side: { ...main, thickness }, farSide })
        .reference.value;
    expect(at(3, 1)).toBe(at(1, 3));
    expect(at(3, 1)).toBeLessThan(at(3, 3));
  });
});

describe("sideways and outward at once (memory, NDS 12.4)", () => {
  test("is the one or the other at its ends, and never more than the greater between", () => {
    fc.assert(
      fc.property(real(50, 1000), real(50, 1000), real(0, 90), (Z, W, angle) => {
        const a = (angle * Math.PI) / 180;
        for (const kind of ["screw", "nail"] as const) {
          expect(combinedUse(kind, Z, W, 100, 0).allowed.value).toBe(Z);
          expect(combinedUse(kind, Z, W, 0, 100).allowed.value).toBe(W);
          const both = combinedUse(kind, Z, W, 100 * Math.cos(a), 100 * Math.sin(a));
          expect(both.allowed.value).toBeLessThanOrEqual(Math.max(Z, W) * (1 + 1e-9));
          expect(both.ratio).toBeCloseTo(100 / both.allowed.value, 6);
        }
      }),
    );
  });
  test("nails by the straight rule come to less than screws by Hankinson’s", () => {
    expect(combinedUse("nail", 100, 100, 70, 70).allowed.value).toBeCloseTo(100 / Math.SQRT2, 6);
    expect(combinedUse("screw", 100, 100, 70, 70).allowed.value).toBeCloseTo(100, 6);
  });
  test("nothing pulls: nothing is used; nothing holds: anything is too much", () => {
    expect(combinedUse("screw", 0, 0, 0, 0).ratio).toBe(0);
    expect(combinedUse("screw", 100, 0, 0, 5).ratio).toBe(Number.POSITIVE_INFINITY);
    expect(combinedUse("screw", 100, 0, 5, 0).ratio).toBe(0.05);
  });
});

describe("factors of connections (memory, NDS 11.3)", () => {
  test("green when placed: only more than one row is cut down", () => {
    const green = { placed: "green", service: "dry" } as const;
    expect(wetLateral(green, 0.5, 1).value).toBe(1);
    expect(wetLateral(green, 0.5, 2).value).toBe(0.4);
    expect(wetLateral(green, 0.162, 1).value).toBe(0.7);
    expect(wetLateral({ placed: "dry", service: "dry" }, 0.5, 2).value).toBe(1);
    expect(wetLateral({ placed: "dry", service: "green" }, 0.5, 1).value).toBe(0.7);
    expect(wetWithdrawal(green, "nail").value).toBe(0.25);
    expect(wetWithdrawal(green, "screw").value).toBe(1);
    expect(wetWithdrawal({ placed: "green", service: "green" }, "nail").value).toBe(1);
    expect(wetWithdrawal({ placed: "green", service: "green" }, "screw").value).toBe(0.7);
  });
  test("group action lies in (0, 1], falls with the count, is 1 for one", () => {
    const row = { spacing: 4, diameter: 0.75, main: 1.2e6 * 30, side: 1.2e6 * 15, sideIs: "wood" } as const;
    expect(groupAction({ ...row, count: 1 }).value).toBe(1);
    const values = [2, 3, 4, 6, 8, 10].map((count) => groupAction({ ...row, count }).value);
    values.reduce((last, value) => {
      expect(value).toBeGreaterThan(0);
      expect(value).toBeLessThan(last);
      return value;
    }, 1);
    expect(groupAction({ ...row, count: 3, main: 0 }).value).toBe(0);
  });
  test("the formula gives 1 for one fastener too: it meets the rule", () => {
    const many = groupAction({
      count: 2,
      spacing: 1e-9,
      diameter: 0.75,
      main: 1e9,
      side: 1e9,
      sideIs: "wood",
    });
    expect(many.value).toBeCloseTo(1, 4);
  });
  test("every factor is shown and multiplied", () => {
    const value = adjust({ value: 100, status: "published", source: "x" }, [
      toeNail("lateral"),
      wetLateral({ placed: "dry", service: "green" }, 0.162, 1),
    ]);
    expect(value.value).toBeCloseTo(58.1, 9);
    expect(value.factors.map((f) => f.symbol)).toEqual(["C_tn", "C_M"]);
    expect(value.status).toBe("memory");
  });
});

describe("places of bolts (memory, NDS 12.5.1)", () => {
  const bolts = { diameter: 0.75, wood: "softwood", slenderness: 5 } as const;
  test("a softwood end in tension takes 7 D in full, 3.5 D at least, in proportion between", () => {
    const at = (end: number) => boltDistances({ ...bolts, load: "along-tension", end }).factor.value;
    expect([at(5.25), at(4.2), at(2.625), at(2.6)]).toEqual([1, expect.closeTo(0.8, 9), 0.5, 0]);
    expect(boltDistances({ ...bolts, wood: "hardwood", load: "along-tension", end: 3.75 }).factor.value).toBe(
      1,
    );
  });
  test("the smallest factor counts, and is named", () => {
    const got = boltDistances({
      ...bolts,
      load: "across",
      end: 2.4,
      edge: 3,
      unloadedEdge: 1.125,
      spacing: 2.5,
      rowSpacing: 4,
    });
    expect(got.distances).toHaveLength(5);
    expect(got.factor.value).toBeCloseTo(0.8, 9);
    expect(got.factor.note).toBe("by the end");
    expect(boltDistances({ ...bolts, load: "across", edge: 2.9 }).factor.value).toBe(0);
  });
  test("rows pulled across the grain stand (5 l/D + 10)/8 apart, between 2.5 and 5 D; along it 1.5 D", () => {
    const rows = (slenderness: number, load: "across" | "along-compression") =>
      boltDistances({ ...bolts, load, slenderness, rowSpacing: 9 }).distances[0]!.need / 0.75;
    expect([1, 4, 8].map((slenderness) => rows(slenderness, "across"))).toEqual([2.5, 3.75, 5]);
    expect(rows(4, "along-compression")).toBe(1.5);
  });
  test("slender bolts along the grain need half their row spacing at the edge", () => {
    const edge = (slenderness: number) =>
      boltDistances({ ...bolts, load: "along-compression", slenderness, edge: 1.2, rowSpacing: 3 })
        .distances[0]!;
    expect([edge(6).need, edge(7).need]).toEqual([1.125, 1.5]);
    expect([edge(6).ok, edge(7).ok]).toEqual([true, false]);
  });
});
