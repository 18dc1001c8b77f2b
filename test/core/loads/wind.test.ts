/**
 * Wind cases of whole roofs: hand-worked ones, and what must hold for every roof.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { makeSay } from "../../../server/core/checks/speak.ts";
import type { Edition, Terrain } from "../../../server/core/loads/snow-factors.ts";
import { type RoofPlane, type WindInput, windCases } from "../../../server/core/loads/wind-cases.ts";
import { leastWind, memberDrag } from "../../../server/core/loads/wind-drag.ts";
import {
  enclosureOf,
  internalPressure,
  leewardSlope,
  stripCoefficients,
  wallCoefficients,
  windwardSlope,
} from "../../../server/core/loads/wind-enclosed.ts";
import {
  alongCoefficients,
  monoslopeCoefficients,
  pitchedCoefficients,
} from "../../../server/core/loads/wind-open.ts";
import { exposureCoefficient, velocityPressure } from "../../../server/core/loads/wind-pressure.ts";
import { windNoteWords } from "../../../server/core/loads/wind-words.ts";

const gable = (rise: number, run: number): readonly [RoofPlane, RoofPlane] => [
  { id: "A", falls: "-y", pitch: { rise, run: 12 }, run },
  { id: "B", falls: "+y", pitch: { rise, run: 12 }, run },
];

/** The cider-press pavilion: 107 mph, exposure C, 7 on 12, 16 by 20 ft of roof, 11 ft high in the mean. */
const PAVILION: WindInput = {
  edition: "asce-7-16",
  speed: 107,
  exposure: "C",
  planes: gable(7, 8),
  meanHeight: 11,
  length: 20,
  enclosure: "open",
  flow: "clear",
};
const SHED: WindInput = {
  ...PAVILION,
  planes: [{ id: "A", falls: "-y", pitch: { rise: 3, run: 12 }, run: 14 }],
};

const ids = (input: WindInput) => windCases(input).cases.map((c) => c.id);
const caseOf = (input: WindInput, id: string) => windCases(input).cases.find((c) => c.id === id)!;

describe("the wind on an open gable", () => {
  it("has two load cases in each of four directions (published, Figure 27.3-5, and memory, 27.3-7)", () => {
    expect(ids(PAVILION)).toEqual(["+x/A", "+x/B", "-x/A", "-x/B", "+y/A", "+y/B", "-y/A", "-y/B"]);
    expect(windCases(PAVILION)).toMatchObject({ level: "strength", asdFactor: { value: 0.6 } });
  });
  it("is worked by hand for 7 on 12: q_h 21.15 psf, C_N 1.3 and 0.3103 (derived)", () => {
    const q = 0.00256 * 2.01 * (15 / 900) ** (2 / 9.5) * 0.85 * 107 ** 2;
    expect(windCases(PAVILION).velocityPressure.value).toBeCloseTo(q, 9);
    expect(q).toBeCloseTo(21.15, 2);
    const share = ((Math.atan2(7, 12) * 180) / Math.PI - 30) / 7.5;
    const { roof, resultant } = caseOf(PAVILION, "+y/A");
    expect(roof.map((r) => [r.plane, r.from, r.to])).toEqual([
      ["A", 0, 8],
      ["B", 8, 16],
    ]);
    const [windward, leeward] = roof.map((r) => r.psf);
    expect(windward).toBeCloseTo(q * 0.85 * 1.3, 9);
    expect(leeward).toBeCloseTo(q * 0.85 * (0.3 + 0.3 * share), 9);
    expect(resultant.up).toBeCloseTo(-(windward! + leeward!) * 160, 6);
    expect(resultant.y).toBeCloseTo(((windward! - leeward!) * 160 * 7) / 12, 6);
  });
  it("lifts both slopes when it blows along the ridge, less with every height of distance (memory, Figure 27.3-7)", () => {
    const { roof } = caseOf({ ...PAVILION, length: 30 }, "-x/A");
    const own = roof.filter((r) => r.plane === "B");
    expect(own.map((r) => [r.from, r.to])).toEqual([
      [0, 11],
      [11, 22],
      [22, 30],
    ]);
    const unit = windCases(PAVILION).velocityPressure.value * 0.85;
    expect(own.map((r) => Number((r.psf / unit).toFixed(9)))).toEqual([-0.8, -0.6, -0.3]);
    expect(caseOf(PAVILION, "+x/A").resultant.y).toBeCloseTo(0, 9);
  });
  it("takes K_d into the pressure in 7-22, not into q (derived)", () => {
    const wind = windCases({ ...PAVILION, edition: "asce-7-22" });
    const { factors, direction, value } = wind.velocityPressure;
    expect(factors.map((f) => f.symbol)).toEqual(["K_z", "K_zt", "K_e"]);
    expect(wind.cases.find((c) => c.id === "+y/A")!.roof[0]!.psf).toBeCloseTo(value * 0.85 * 0.85 * 1.3, 9);
    expect(direction).toBe(0.85);
  });
  it("takes both rows where a coefficient changes its sign (published table, own reading of “like signs only”)", () => {
    expect(pitchedCoefficients(20, "clear").map((c) => [c.id, c.windward, c.leeward])).toEqual([
      ["A@15", 1.1, -0.4],
      ["A@22.5", 1.1, 0.1],
      ["B@15", 0.1, -1.1],
      ["B@22.5", -0.1, -0.8],
    ]);
    const notes = windCases({ ...PAVILION, planes: gable(4.5, 8) }).notes;
    expect(notes.map((n) => n.kind)).toContain("both-rows");
    // Blocked flow lifts in every row: nothing to keep apart.
    expect(pitchedCoefficients(20, "obstructed").map((c) => c.id)).toEqual(["A", "B"]);
  });
  it("goes by the monoslope figure below 7.5°, in both its directions (published rule)", () => {
    const found = pitchedCoefficients(5, "obstructed");
    expect(found.map((c) => c.id)).toEqual([
      "high-edge-A",
      "high-edge-B",
      "low-edge-A",
      "low-edge-B@0",
      "low-edge-B@7.5",
    ]);
    expect(found[0]!.windward).toBeCloseTo(-0.5 - (2 / 3) * 0.5, 9);
    expect(pitchedCoefficients(7.5, "clear").map((c) => c.id)).toEqual(["A", "B"]);
  });
  it("says where the figures do not hold, instead of reaching past them silently", () => {
    expect(windCases(PAVILION).notes).toEqual([]);
    const tall = windCases({ ...PAVILION, meanHeight: 20, length: 90 });
    expect(tall.notes).toEqual([
      { kind: "height-to-length", along: "x", ratio: 20 / 90 },
      { kind: "height-to-length", along: "y", ratio: 20 / 16 },
    ]);
    const steep = windCases({ ...PAVILION, planes: gable(14, 8) });
    expect(steep.notes.filter((n) => n.kind === "too-steep")).toHaveLength(2);
    const last = pitchedCoefficients(45, "clear").map((c) => [c.windward, c.leeward]);
    expect(pitchedCoefficients(50, "clear").map((c) => [c.windward, c.leeward])).toEqual(last);
    expect(windCases({ ...PAVILION, planes: gable(12, 8) }).notes).toEqual([]);
  });
  it("gives slopes that differ each its own coefficient, and says so", () => {
    const [a, b] = gable(12, 8);
    const wind = windCases({ ...PAVILION, planes: [a, { ...b, pitch: { rise: 7, run: 12 } }] });
    expect(wind.notes).toContainEqual({ kind: "unequal-slopes" });
    const unit = wind.velocityPressure.value * 0.85;
    const [windward, leeward] = wind.cases.find((c) => c.id === "+y/A")!.roof;
    expect(windward!.psf / unit).toBeCloseTo(1.1, 9);
    expect(leeward!.psf / unit).toBeCloseTo(0.3103, 4);
  });
});

describe("the wind on an open shed", () => {
  it("presses when it meets the low edge and lifts when it meets the high one (memory, Figure 27.3-4)", () => {
    const low = caseOf(SHED, "+y/A");
    const high = caseOf(SHED, "-y/A");
    expect(low.roof.map((r) => [r.plane, r.from, r.to, r.psf > 0])).toEqual([
      ["A", 0, 7, true],
      ["A", 7, 14, true],
    ]);
    expect(high.roof.every((r) => r.psf < 0)).toBe(true);
    expect(low.resultant.up).toBeLessThan(0);
    expect(high.resultant.up).toBeGreaterThan(0);
  });
  it("pushes downwind in either case: the plane catches it like a sail", () => {
    expect(caseOf(SHED, "+y/A").resultant.y).toBeGreaterThan(0);
    expect(caseOf(SHED, "-y/A").resultant.y).toBeLessThan(0);
  });
  it("of no slope is the same from both sides", () => {
    const flat = (edge: "high-edge" | "low-edge") => monoslopeCoefficients(0, "clear", edge);
    expect(flat("high-edge")).toEqual(flat("low-edge"));
  });
});

describe("the wind on a building with walls (memory, Figure 27.3-1)", () => {
  const BARN: WindInput = { ...PAVILION, enclosure: "enclosed", plan: { along: 18, across: 13 } };
  it("counts both values of the windward slope with pressure and suction inside", () => {
    expect(ids(BARN).filter((id) => id.startsWith("+y"))).toEqual([
      "+y/suction/pressure-inside",
      "+y/suction/suction-inside",
      "+y/pressure/pressure-inside",
      "+y/pressure/suction-inside",
    ]);
  });
  it("knows the walls: +0.8, −0.7, leeward by L/B", () => {
    const at = (ratio: number) => wallCoefficients(ratio * 10, 10).leeward.value;
    expect([0.5, 1, 2, 4, 6].map(at)).toEqual([-0.5, -0.5, -0.3, -0.2, -0.2]);
    expect(at(1.5)).toBeCloseTo(-0.4, 9);
    expect(at(3)).toBeCloseTo(-0.25, 9);
    const { windward, side } = wallCoefficients(10, 10);
    expect([windward.value, side.value]).toEqual([0.8, -0.7]);
  });
  it("knows the slopes, and goes straight between them", () => {
    expect(windwardSlope(30, 0.2)).toEqual([-0.2, 0.3]);
    expect(windwardSlope(15, 0.5)).toEqual([-0.7, -0.18]);
    for (const [slope, low, middle, high] of [
      [10, -0.3, -0.5, -0.7],
      [15, -0.5, -0.5, -0.6],
      [20, -0.6, -0.6, -0.6],
      [45, -0.6, -0.6, -0.6],
    ] as const)
      expect([0.25, 0.5, 1].map((ratio) => leewardSlope(slope, ratio))).toEqual([low, middle, high]);
    expect(windwardSlope(20, 0.75)[0]).toBeCloseTo(-0.55, 9);
    expect(windwardSlope(70, 1)[1]).toBeCloseTo(0.7, 9);
    expect(leewardSlope(10, 1)).toBe(-0.7);
    expect(leewardSlope(40, 0.3)).toBe(-0.6);
  });
  it("adds internal pressure to every surface, ±0.18 and ±0.55", () => {
    const wind = windCases(BARN);
    const q = wind.velocityPressure.value;
    const [out, inside] = ["pressure", "suction"].map((way) => caseOf(BARN, `+y/suction/${way}-inside`));
    expect(inside!.roof[1]!.psf - out!.roof[1]!.psf).toBeCloseTo(2 * 0.18 * q, 9);
    expect(out!.walls!.windward).toBeCloseTo(q * (0.85 * 0.8 - 0.18), 9);
    expect(out!.walls!.side).toBeCloseTo(q * (-0.85 * 0.7 - 0.18), 9);
    expect(internalPressure("partially-enclosed").value).toBe(0.55);
    const partly = caseOf({ ...BARN, enclosure: "partially-enclosed" }, "+y/suction/pressure-inside");
    expect(partly.resultant.up).toBeGreaterThan(out!.resultant.up);
  });
  it("pushes the windward overhang up from below besides", () => {
    const found = caseOf(BARN, "+x/suction/pressure-inside");
    const q = windCases(BARN).velocityPressure.value;
    const ratio = (11 / 18 - 0.5) / 0.5;
    expect(found.windwardOverhang).toBeCloseTo(q * 0.85 * (-0.9 - 0.4 * ratio - 0.8), 9);
  });
  it("goes by the distance from the edge on a roof flatter than 10°, across the ridge too", () => {
    const flat = caseOf({ ...BARN, planes: gable(1, 20) }, "+y/suction/pressure-inside");
    expect(flat.roof.map((r) => [r.plane, r.from, r.to])).toEqual([
      ["A", 0, 5.5],
      ["A", 5.5, 11],
      ["A", 11, 20],
      ["B", 20, 22],
      ["B", 22, 40],
    ]);
    expect(stripCoefficients(10, 40, 0.5)[0]!.strips.map((s) => s.C)).toEqual([-0.9, -0.9, -0.5, -0.3]);
    expect(stripCoefficients(10, 40, 1)[0]!.strips.map((s) => s.C)).toEqual([-1.3, -0.7, -0.7, -0.7]);
  });
  it("takes a shed as one windward or one leeward slope", () => {
    const shed = { ...SHED, planes: gable(6, 14).slice(0, 1) as never, enclosure: "enclosed" as const };
    expect(ids(shed).filter((id) => id.startsWith("+y"))).toHaveLength(4);
    expect(ids(shed).filter((id) => id.startsWith("-y"))).toHaveLength(2);
    expect(caseOf(shed, "-y/suction/pressure-inside").roof).toHaveLength(1);
  });
  it("passes between two open sides as the site says, and is caught elsewhere (published, Figure 27.3-5)", () => {
    const barn = { ...BARN, enclosure: "partially-open" } as const;
    const through = { ...barn, passage: { x: false, y: true } };
    const roofOf = (input: WindInput, id: string) =>
      caseOf(input, id).roof.map(({ coefficient }) => coefficient);
    // across the ridge as under the same roof on posts alone, along it under an obstructed one
    expect(roofOf(through, "+y/A")).toEqual(roofOf(PAVILION, "+y/A"));
    expect(roofOf(through, "+x/A")).toEqual(roofOf({ ...PAVILION, flow: "obstructed" }, "+x/A"));
    expect(roofOf(barn, "+y/A")).toEqual(roofOf({ ...PAVILION, flow: "obstructed" }, "+y/A"));
    expect(roofOf({ ...through, flow: "obstructed" }, "+y/A")).toEqual(roofOf(barn, "+y/A"));
    expect(roofOf(through, "+y/A")).not.toEqual(roofOf(barn, "+y/A"));
  });
  it("tells the enclosure classes apart (memory, section 26.2)", () => {
    const roof = { gross: 300, openings: 0 };
    const walls = (...openings: number[]) => openings.map((open) => ({ gross: 100, openings: open }));
    expect(enclosureOf(walls(80, 90, 100, 85), roof)).toBe("open");
    expect(enclosureOf(walls(1, 0, 1, 0.5), roof)).toBe("enclosed");
    expect(enclosureOf(walls(100, 0, 0, 0), roof)).toBe("partially-enclosed");
    expect(enclosureOf(walls(60, 60, 0, 0), roof)).toBe("partially-open");
    expect(enclosureOf(walls(60, 54, 0, 0), roof)).toBe("partially-enclosed");
  });
});

describe("wind on posts and braces (memory, section 29.4)", () => {
  const q = (speed: number, edition: Edition = "asce-7-16") =>
    velocityPressure({ edition, speed, Kz: exposureCoefficient(edition, "C", 11) });
  it("is q G C_f with C_f 2.0 for flat sides", () => {
    expect(memberDrag("asce-7-16", q(107)).value).toBeCloseTo(q(107).value * 0.85 * 2, 9);
    expect(memberDrag("asce-7-22", q(107, "asce-7-22")).value).toBeCloseTo(
      q(107, "asce-7-22").value * 0.85 * 0.85 * 2,
      9,
    );
  });
  it("is at least 16 psf of the area seen", () => {
    expect(memberDrag("asce-7-16", q(60))).toMatchObject({ value: 16, least: true });
    expect(memberDrag("asce-7-16", q(107)).least).toBe(false);
    expect(leastWind("asce-7-16")).toMatchObject({ walls: { value: 16 }, roof: { value: 8 } });
  });
});

describe("the words", () => {
  const say = makeSay("inch");
  it("word every note", () => {
    const wind = windCases({ ...PAVILION, planes: gable(14, 8), length: 90 });
    const notes = [
      ...wind.notes,
      { kind: "unequal-slopes" } as const,
      { kind: "both-rows", toward: "+y" } as const,
    ];
    expect(new Set(notes.map((n) => windNoteWords(n, say))).size).toBe(5);
  });
});

describe("what holds for every roof", () => {
  const input = fc.record({
    edition: fc.constantFrom<Edition>("asce-7-16", "asce-7-22"),
    speed: fc.double({ min: 60, max: 200, noNaN: true }),
    exposure: fc.constantFrom<Terrain>("B", "C", "D"),
    rise: fc.double({ min: 0, max: 24, noNaN: true }),
    run: fc.double({ min: 3, max: 40, noNaN: true }),
    meanHeight: fc.double({ min: 6, max: 60, noNaN: true }),
    length: fc.double({ min: 4, max: 120, noNaN: true }),
    enclosure: fc.constantFrom("open", "partially-open", "partially-enclosed", "enclosed"),
    flow: fc.constantFrom("clear", "obstructed"),
    kind: fc.constantFrom("gable", "shed"),
  });
  const roofOf = ({ rise, run, kind, ...rest }: typeof input extends fc.Arbitrary<infer T> ? T : never) =>
    ({ ...rest, planes: kind === "gable" ? gable(rise, run) : gable(rise, run).slice(0, 1) }) as WindInput;
  const OPPOSITE = { "+x": "-x", "-x": "+x", "+y": "-y", "-y": "+y" } as const;

  it("opposite winds are mirrored on a symmetric gable", () => {
    fc.assert(
      fc.property(input, (r) => {
        const { cases } = windCases(roofOf({ ...r, kind: "gable" }));
        for (const one of cases) {
          const id = one.id.replace(one.toward, OPPOSITE[one.toward]);
          const other = cases.find((c) => c.id === id)!;
          const swap = one.toward.endsWith("y");
          const name = (plane: string) => (swap ? (plane === "A" ? "B" : "A") : plane);
          expect(one.roof.map((p) => ({ ...p, plane: name(p.plane) }))).toEqual(other.roof);
          expect(one.resultant.up).toBeCloseTo(other.resultant.up, 6);
          expect(one.resultant.y).toBeCloseTo(swap ? -other.resultant.y : other.resultant.y, 6);
          expect(one.walls).toEqual(other.walls);
        }
      }),
    );
  });

  it("pressure goes with the square of the speed", () => {
    fc.assert(
      fc.property(input, fc.double({ min: 0.2, max: 3, noNaN: true }), (r, k) => {
        const [base, faster] = [windCases(roofOf(r)), windCases(roofOf({ ...r, speed: r.speed * k }))];
        for (const [i, c] of base.cases.entries()) {
          for (const [j, p] of c.roof.entries()) {
            const got = faster.cases[i]!.roof[j]!.psf;
            expect(Math.abs(got - p.psf * k ** 2)).toBeLessThanOrEqual(1e-9 * (1 + Math.abs(got)));
          }
        }
      }),
    );
  });

  it("pressure grows from exposure B to C to D and with height", () => {
    fc.assert(
      fc.property(input, fc.double({ min: 0, max: 60, noNaN: true }), (r, more) => {
        const q = (exposure: Terrain, meanHeight: number) =>
          windCases(roofOf({ ...r, exposure, meanHeight })).velocityPressure.value;
        expect(q("B", r.meanHeight)).toBeLessThan(q("C", r.meanHeight));
        expect(q("C", r.meanHeight)).toBeLessThan(q("D", r.meanHeight));
        expect(q(r.exposure, r.meanHeight)).toBeLessThanOrEqual(q(r.exposure, r.meanHeight + more));
      }),
    );
  });

  it("every plane is covered from edge to edge, once, in every case, and every case has its own name", () => {
    fc.assert(
      fc.property(input, (r) => {
        const roof = roofOf(r);
        const { cases } = windCases(roof);
        expect(new Set(cases.map((c) => c.id)).size).toBe(cases.length);
        for (const c of cases) {
          const along = c.toward.endsWith("x");
          for (const plane of roof.planes) {
            const covered = c.roof
              .filter((p) => p.plane === plane.id)
              .reduce((sum, p) => sum + (p.to - p.from), 0);
            expect(covered).toBeCloseTo(along ? roof.length : plane.run, 6);
          }
          expect(c.roof.every((p) => Number.isFinite(p.psf))).toBe(true);
        }
      }),
    );
  });

  it("the pairs of an open roof lie within those of the rows beside its slope", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 7.5, max: 45, noNaN: true }),
        fc.constantFrom("clear", "obstructed"),
        (slope, flow) => {
          const low = Math.floor(slope / 7.5) * 7.5;
          const rows = [low, Math.min(45, low + 7.5)].flatMap((s) => pitchedCoefficients(s, flow));
          for (const c of pitchedCoefficients(slope, flow)) {
            const same = rows.filter((x) => x.id[0] === c.id[0]);
            for (const side of ["windward", "leeward"] as const) {
              expect(c[side]).toBeGreaterThanOrEqual(Math.min(...same.map((x) => x[side])) - 1e-9);
              expect(c[side]).toBeLessThanOrEqual(Math.max(...same.map((x) => x[side])) + 1e-9);
            }
          }
        },
      ),
    );
  });

  it("no wind presses nowhere", () => {
    const still = windCases({ ...PAVILION, speed: 0 });
    expect(still.cases.every((c) => c.roof.every((p) => Math.abs(p.psf) === 0))).toBe(true);
    expect(alongCoefficients(10, 5, "clear")[0]!.strips).toHaveLength(1);
  });
});
