/** Pegged joints: what they carry, where pegs may stand, what is left of a drawbored hole. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  PEG_DISTANCES,
  pegDistances,
  pegRoom,
  SAFE_DISTANCES,
} from "../../../server/core/fasteners/pegs/distances.ts";
import { pegValue } from "../../../server/core/fasteners/pegs/double-shear.ts";
import { drawboreLens, drawboreRange } from "../../../server/core/fasteners/pegs/drawbore.ts";
import { type PegJointInput, pegJoint } from "../../../server/core/fasteners/pegs/peg-joint.ts";
import { pegStiffness } from "../../../server/core/fasteners/pegs/stiffness.ts";
import { pegGravity } from "../../../server/core/fasteners/pegs/strength.ts";
import { durationFactor } from "../../../server/core/loads/combinations.ts";
import { findSpecies, speciesIds } from "../../../server/core/wood/species.ts";

const pine = { species: "eastern-white-pine", G: 0.36 };
/** A post 8x8 under a plate: 2 in tenon 8 in wide and 6 1/2 in long, two white oak pegs of 3/4 in. */
const POST_HEAD: PegJointInput = {
  peg: { diameter: 0.75, G: 0.73, count: 2 },
  tenon: { ...pine, thickness: 2, width: 8, length: 6.5, setbacks: [3], alongWidth: [-2, 2] },
  mortised: { ...pine, walls: [2, 4] },
  seasoning: "green",
  duration: durationFactor("W"),
};
const have = (joint: ReturnType<typeof pegJoint>, what: string) =>
  joint.distances.find((d) => d.what === what)!;

describe("a pegged post head (memory, TFEC 1 3.4)", () => {
  const joint = pegJoint(POST_HEAD);
  test("carries two pegs sheared, for wind: 2 × 1.6 × π D² F_vy/7", () => {
    expect(joint.governs).toBe("V");
    const one = (Math.PI * 0.75 ** 2 * 4850 * 0.73 * 0.36 ** 0.75) / 7;
    expect(joint.one.reference.value).toBeCloseTo(one, 6);
    expect(joint.tension.value).toBeCloseTo(2 * 1.6 * one, 6);
    expect(joint.pegs.factors.map((f) => f.symbol)).toEqual(["C_D", "C_M"]);
  });
  test("is never called better known than the remembered rule", () => {
    expect([joint.tension.status, joint.pegs.status, joint.stiffness.status]).toEqual([
      "uncertain",
      "uncertain",
      "uncertain",
    ]);
  });
  test("has its pegs where they may stand, and may be counted on", () => {
    expect(joint.distances.map((d) => [d.what, d.have, d.need, d.ok])).toEqual([
      ["end", 3.5, 3, true],
      ["edge", 3, 3, true],
      ["tenon edge", 2, 1.125, true],
      ["spacing", 4, 2.25, true],
    ]);
    expect(joint.conditions.every((c) => c.ok)).toBe(true);
    expect(joint.holds).toBe(true);
  });
  test("in service above 19 percent moisture carries 0.7 of it", () => {
    const wet = pegJoint({ ...POST_HEAD, wetService: true });
    expect(wet.tension.value / joint.tension.value).toBeCloseTo(0.7, 9);
  });
  test("with its edge measured on the dried section falls short", () => {
    const dried = pegJoint({ ...POST_HEAD, mortised: { ...POST_HEAD.mortised, shrinkage: 0.04 } });
    expect(have(dried, "edge").have).toBeCloseTo(2.88, 9);
    expect(dried.holds).toBe(false);
  });
  test("needs 4 D to a free end of the mortised timber", () => {
    const at = (toEnd: number) => pegJoint({ ...POST_HEAD, mortised: { ...POST_HEAD.mortised, toEnd } });
    expect([at(5).holds, at(4.9).holds]).toEqual([true, false]);
  });
  test("tears its relish when the tenon’s shear strength is small, its neck when the tension strength is", () => {
    const weak = (Fv: number, Ft: number) =>
      pegJoint({ ...POST_HEAD, tenon: { ...POST_HEAD.tenon, strength: { Fv, Ft } } });
    expect(weak(200, 600).governs).toBe("V");
    const relish = weak(20, 600);
    expect(relish.governs).toBe("relish");
    expect(relish.tension.value).toBeCloseTo(2 * 3.5 * 2 * 20, 9);
    const neck = weak(1000, 10);
    expect(neck.governs).toBe("net-section");
    expect(neck.tension.value).toBeCloseTo((8 - 1.5) * 2 * 10, 9);
    expect(weak(100, 20).tenon.find((t) => t.what === "group-tear-out")!.value).toBeCloseTo(
      3.5 * 2 * 100 + (4 - 0.75) * 2 * 20,
      9,
    );
  });
});

test("four pegs in two lines tear out twice the wood of two, as far as the shorter step (memory, NDS E.3)", () => {
  const tenon = {
    ...POST_HEAD.tenon,
    length: 7.25,
    setbacks: [2.375, 4.875],
    strength: { Fv: 100, Ft: 400 },
  };
  const joint = pegJoint({ ...POST_HEAD, peg: { ...POST_HEAD.peg, count: 4 }, tenon });
  const of = (what: string) => joint.tenon.find((t) => t.what === what)!.value;
  expect(of("relish")).toBeCloseTo(2 * 2 * 2.375 * 2 * 100, 9);
  expect(of("group-tear-out")).toBeCloseTo(2 * 2.375 * 2 * 100 + (4 - 0.75) * 2 * 400, 9);
  // the third peg stands alone in the second line
  const three = pegJoint({ ...POST_HEAD, peg: { ...POST_HEAD.peg, count: 3 }, tenon });
  expect(three.tenon[0]!.value).toBeCloseTo(3 * 2.375 * 2 * 100, 9);
});

describe("a brace", () => {
  const brace = (species: string, angle: number): PegJointInput => ({
    ...POST_HEAD,
    peg: { ...POST_HEAD.peg, count: 1 },
    tenon: {
      ...POST_HEAD.tenon,
      species,
      thickness: 1.5,
      width: 6,
      length: 3,
      setbacks: [1.5],
      alongWidth: [0],
    },
    mortised: { ...POST_HEAD.mortised, species },
    angle,
  });
  test("of white pine with a 3 in tenon only pushes: 4 D fit nowhere (memory)", () => {
    const joint = pegJoint(brace("eastern-white-pine", 45));
    expect(joint.holds).toBe(false);
    expect(have(joint, "edge").ok).toBe(false);
    expect(joint.tension.value).toBeGreaterThan(0);
  });
  test("of southern pine with the same tenon may pull: 2 D are enough (memory)", () => {
    const joint = pegJoint(brace("southern-pine", 45));
    expect(joint.holds).toBe(true);
    expect(have(joint, "end").have).toBeCloseTo(1.5 * Math.SQRT2, 9);
  });
  test("bears better on a leaning pull than on a square one, and never worse in the tenon", () => {
    const [lean, square] = [pegJoint(brace("southern-pine", 45)), pegJoint(brace("southern-pine", 90))];
    expect(lean.one.bearing.cheek.value).toBeGreaterThan(square.one.bearing.cheek.value);
    expect(lean.one.bearing.tenon.value).toBe(square.one.bearing.tenon.value);
  });
});

describe("any pegged joint", () => {
  const sizes = fc.record({
    G: fc.double({ min: 0.57, max: 0.75, noNaN: true }),
    timber: fc.double({ min: 0.31, max: 0.73, noNaN: true }),
    D: fc.double({ min: 0.5, max: 1.25, noNaN: true }),
    tenon: fc.double({ min: 1, max: 3, noNaN: true }),
    cheek: fc.double({ min: 1, max: 4, noNaN: true }),
    angle: fc.double({ min: 0, max: 90, noNaN: true }),
  });
  type Sizes = typeof sizes extends fc.Arbitrary<infer T> ? T : never;
  const Z = (s: Sizes) =>
    pegValue(
      s.G,
      s.D,
      s.tenon,
      [s.cheek, s.cheek + 1],
      { G: s.timber, angle: 0 },
      { G: s.timber, angle: s.angle },
    ).reference.value;
  test.each(["G", "D", "tenon", "cheek", "timber"] as const)("more %s never carries less", (key) => {
    fc.assert(
      fc.property(sizes, (s) => {
        expect(Z({ ...s, [key]: s[key] * 1.15 })).toBeGreaterThanOrEqual(Z(s) * (1 - 1e-9));
      }),
    );
  });
  test("does not care which wall is the thin one", () => {
    const wall = (walls: readonly [number, number]) =>
      pegJoint({ ...POST_HEAD, mortised: { ...POST_HEAD.mortised, walls } }).tension.value;
    expect(wall([0.4, 4])).toBe(wall([4, 0.4]));
    expect(wall([0.4, 4])).toBeLessThan(wall([4, 4]));
    expect(wall([0, 4])).toBe(0);
  });
  test("is sheared at the lighter of two timbers", () => {
    const light = { G: 0.36, angle: 0 };
    const heavy = { G: 0.67, angle: 90 };
    const of = (a: typeof light, b: typeof light) => pegValue(0.73, 0.75, 2, [3, 3], a, b).shear.value;
    expect(of(light, heavy)).toBe(of(light, light));
    expect(of(heavy, light)).toBe(of(light, light));
  });
  test("carries in proportion to its pegs", () => {
    const n = (count: number) =>
      pegJoint({
        ...POST_HEAD,
        peg: { ...POST_HEAD.peg, count },
        tenon: { ...POST_HEAD.tenon, alongWidth: Array.from({ length: count }, (_, i) => i * 3 - 3) },
      });
    expect(n(3).tension.value).toBeCloseTo(3 * n(1).tension.value, 6);
    expect(n(3).stiffness.value).toBeCloseTo(3 * n(1).stiffness.value, 6);
    expect([n(0).tension.value, n(0).holds, n(0).distances.length]).toEqual([0, false, 0]);
  });
  test("holds nothing where pegs have no place or sizes make no sense", () => {
    const tenon = POST_HEAD.tenon;
    expect(pegJoint({ ...POST_HEAD, tenon: { ...tenon, setbacks: [] } }).holds).toBe(false);
    expect(pegJoint({ ...POST_HEAD, tenon: { ...tenon, alongWidth: [0] } }).holds).toBe(false);
    for (const bad of [0, -1, Number.NaN]) {
      expect(pegJoint({ ...POST_HEAD, peg: { ...POST_HEAD.peg, diameter: bad } }).holds).toBe(false);
      expect(pegJoint({ ...POST_HEAD, peg: { ...POST_HEAD.peg, G: bad } }).holds).toBe(false);
      expect(pegJoint({ ...POST_HEAD, tenon: { ...tenon, thickness: bad } }).holds).toBe(false);
      expect(pegJoint({ ...POST_HEAD, tenon: { ...tenon, G: bad } }).holds).toBe(false);
      const strength = { Fv: bad, Ft: 400 };
      expect(pegJoint({ ...POST_HEAD, tenon: { ...tenon, strength } }).holds).toBe(false);
    }
  });
  test("counts the pegs that stand on two lines with their nearest neighbor", () => {
    const joint = pegJoint({
      ...POST_HEAD,
      peg: { ...POST_HEAD.peg, count: 4 },
      tenon: { ...POST_HEAD.tenon, length: 9, setbacks: [3, 5], alongWidth: [-2, 2] },
    });
    expect(have(joint, "spacing").have).toBe(2);
    expect(have(joint, "spacing").ok).toBe(false);
    expect(have(joint, "end").have).toBe(4);
    expect(have(joint, "edge").have).toBe(3);
  });
});

describe("distances by wood (memory; Douglas fir published)", () => {
  test("every wood named in a row exists", () => {
    for (const row of PEG_DISTANCES) {
      for (const id of row.woods) expect(findSpecies(id), id).toBeDefined();
    }
  });
  test("a wood without a row takes the largest of each", () => {
    expect(pegDistances("eastern-hemlock")).toBe(SAFE_DISTANCES);
    expect(pegDistances("no-such-wood")).toBe(SAFE_DISTANCES);
    expect([SAFE_DISTANCES.end, SAFE_DISTANCES.edge, SAFE_DISTANCES.spacing]).toEqual([4, 4, 3]);
    for (const id of speciesIds()) {
      const row = pegDistances(id);
      expect(row.end).toBeLessThanOrEqual(SAFE_DISTANCES.end);
      expect(row.edge).toBeLessThanOrEqual(SAFE_DISTANCES.edge);
      expect(row.spacing).toBeLessThanOrEqual(SAFE_DISTANCES.spacing);
    }
  });
  test("one peg has no spacing", () => {
    expect([pegRoom(0.75, 2, 3, 0), pegRoom(0.75, 2, 3, 1)]).toEqual([0, 3]);
  });
  test("of two woods the tenon decides the end, the mortised timber the edge, the larger the spacing", () => {
    const mixed = pegJoint({
      ...POST_HEAD,
      tenon: { ...POST_HEAD.tenon, species: "white-oak" },
      mortised: { ...POST_HEAD.mortised, species: "southern-pine" },
    });
    const needs = mixed.distances.map((d) => d.need / 0.75);
    expect(needs).toEqual([3, 2, 1.5, 3]);
  });
});

describe("gravity of peg woods", () => {
  test.each([
    ["white-oak", 0.73],
    ["northern-red-oak", 0.68],
    ["red-oak", 0.67],
    ["beech-birch-hickory", 0.71],
    ["black-locust", 0.69],
    ["sugar-maple", 0.63],
    ["white-ash", 0.6],
  ])("%s is %d (published; white oak derived)", (wood, G) => {
    expect(pegGravity(wood)?.value).toBe(G);
  });
  test("an unknown wood has none", () => {
    expect(pegGravity("plastic")).toBeUndefined();
  });
});

describe("stiffness (memory, no figure seen)", () => {
  test("lies within its range, grows with diameter and count", () => {
    for (const G of [0.31, 0.36, 0.5, 0.55, 0.7]) {
      const one = pegStiffness(G, 0.75, 1);
      expect(one.value).toBeGreaterThan(one.range[0]);
      expect(one.value).toBeLessThan(one.range[1]);
      expect(pegStiffness(G, 1, 2).value).toBeCloseTo((one.value * 2) / 0.75, 6);
    }
    expect(pegStiffness(0.5, 1, 1).value).toBeGreaterThan(pegStiffness(0.36, 1, 1).value);
    expect(pegStiffness(0.5, -1, 1).value).toBe(0);
  });
});

describe("drawbore (published for 1 in pegs in hardwood)", () => {
  test("holds the usual 3/32 in for 3/4 in pegs in any wood", () => {
    for (const wood of ["hardwood", "softwood"] as const) {
      const { least, most } = drawboreRange(0.75, wood);
      expect(least).toBeLessThanOrEqual(3 / 32);
      expect(most).toBeGreaterThanOrEqual(3 / 32);
    }
    expect(drawboreRange(1, "softwood").most).toBeLessThan(0.25);
    expect(drawboreRange(1, "hardwood").status).toBe("published");
    expect(drawboreRange(1, "softwood").status).toBe("derived");
  });
  test("holes in line are wholly open, holes a diameter apart are shut", () => {
    expect(drawboreLens(1, 0, 2)).toEqual({ clear: 1, open: 1, slope: 0 });
    expect(drawboreLens(1, 1, 2).open).toBeCloseTo(0, 9);
    expect(drawboreLens(1, 3, 2).clear).toBe(0);
    expect(drawboreLens(0, 0, 0)).toEqual({ clear: 0, open: 0, slope: 0 });
  });
  test("more draw leaves less of the hole", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 0.4, noNaN: true }), (offset) => {
        expect(drawboreLens(1, offset + 0.01, 2).open).toBeLessThan(drawboreLens(1, offset, 2).open);
      }),
    );
  });
});
