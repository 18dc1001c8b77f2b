/** The pressure under a square pad whose load stands off its middle both ways, against statics and a sum over small squares. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { pierBearing } from "../../../server/core/checks/ground/pier-bearing.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { bearingUse } from "../../../server/core/ground/bearing.ts";
import { padPressure } from "../../../server/core/ground/pad-pressure.ts";
import type { Pier } from "../../../server/core/model/model.ts";
import { reckon, shows } from "../checks/reckon.ts";

const most = (load: number, side: number, x: number, y: number): number | undefined =>
  padPressure(load, side, [x, y])?.most;

describe("by hand (derived: a plane of pressure that cannot pull)", () => {
  test("in the middle third: N/B² (1 + 6 e/B)", () => {
    expect(most(4000, 24, 0, 0)).toBe(1000);
    expect(most(4000, 24, 2, 0)).toBeCloseTo(1500, 9);
    expect(most(4000, 24, 0, 4)).toBeCloseTo(2000, 9);
    expect(most(4000, 24, 1, 3)).toBeCloseTo(2000, 9);
  });
  test("beyond it the pressure's triangle has its middle under the load: 2 N over 3 (B/2 − e) times B", () => {
    // 3 × (12 in − 8 in) = 12 in long, 24 in wide: 2 ft², so 2 × 4000/2
    expect(most(4000, 24, 8, 0)).toBeCloseTo(4000, 9);
    expect(most(4000, 24, 0, 8)).toBeCloseTo(4000, 9);
    expect(most(4000, 24, 12, 0)).toBeUndefined();
    expect(most(4000, 24, 3, 13)).toBeUndefined();
  });
  test("near a corner a pyramid: its middle a quarter of its legs from the corner, N = p/3 × half of their product", () => {
    // legs of 4 × (12 in − 6.6 in) = 21.6 in
    expect(most(1000, 24, 6.6, 6.6)).toBeCloseTo((3 * 1000) / (0.5 * 1.8 * 1.8), 9);
    expect(most(1000, 24, 6, 9)).toBeCloseTo((3 * 1000) / (0.5 * 2 * 1), 9);
  });
  test("with a corner lifted, an eighth of the side off both ways", () => {
    // by symmetry the legs are alike, s B. The whole plane less the pyramid that would pull, over the pressure there:
    const s = 0.3690315;
    const pyramid = s ** 2 / 6;
    const sum = 1 / s - 1 + pyramid;
    const moment = 1 / (12 * s) - pyramid * (1 / 2 - s / 4);
    expect(moment / sum).toBeCloseTo(1 / 8, 6);
    const { contact } = padPressure(1000, 24, [3, 3])!;
    expect(contact.kind === "corner-off" && contact.legs.map((leg) => leg / 24)).toEqual([
      expect.closeTo(s, 6),
      expect.closeTo(s, 6),
    ]);
    expect(most(1000, 24, 3, 3)).toBeCloseTo((250 * (2 / s - 1)) / sum, 2);
  });
});

describe("against a plane that is fitted over 160,000 small squares of the pad, by nothing of what is tested", () => {
  /** The most pressure on a pad of side 1 under a load of 1: sum and moments of what presses, by Newton's steps. */
  const summed = (x: number, y: number): number => {
    const n = 400;
    const p: [number, number, number] = [1, 12 * x, 12 * y];
    for (let step = 0; step < 60; step++) {
      const want = [1, x, y];
      const m = [0, 1, 2].map(() => [0, 0, 0]);
      for (let i = 0; i < n; i++)
        for (let j = 0; j < n; j++) {
          const v = [1, (i + 0.5) / n - 0.5, (j + 0.5) / n - 0.5];
          const q = p[0] * v[0]! + p[1] * v[1]! + p[2] * v[2]!;
          if (q <= 0) continue;
          for (let r = 0; r < 3; r++) {
            want[r]! -= (q * v[r]!) / n ** 2;
            for (let c = 0; c < 3; c++) m[r]![c]! += (v[r]! * v[c]!) / n ** 2;
          }
        }
      if (Math.max(...want.map(Math.abs)) < 1e-9) break;
      // Gauss, without change of rows: what presses is nowhere thin here
      for (let r = 0; r < 3; r++)
        for (let s = 0; s < 3; s++) {
          if (s === r) continue;
          const by = m[s]![r]! / m[r]![r]!;
          for (let c = 0; c < 3; c++) m[s]![c]! -= by * m[r]![c]!;
          want[s]! -= by * want[r]!;
        }
      for (const r of [0, 1, 2] as const) p[r] += want[r]! / m[r]![r]!;
    }
    return p[0] + Math.abs(p[1]) / 2 + Math.abs(p[2]) / 2;
  };
  test.each([
    [0.05, 0.1, "whole"],
    [0.1, 0.1, "corner-off"],
    [0.125, 0.125, "corner-off"],
    [0.02, 0.16, "corner-off"],
    [0.24, 0.2, "corner-off"],
    [0.249, 0.249, "corner-off"],
    [0.251, 0.251, "corner"],
    [0.275, 0.275, "corner"],
    [0.3, 0.4, "corner"],
    [0.25, 0.24, "strip"],
    [0.24, 0.02, "strip"],
    [0.1, 0.4, "strip"],
    [0.42, 0, "strip"],
  ] as const)("%s and %s of the side off: %s", (x, y, kind) => {
    const { most, contact } = padPressure(1, 12, [12 * x, 12 * y])!;
    expect(contact.kind).toBe(kind);
    expect(most / summed(x, y)).toBeCloseTo(1, 3);
  });
});

test("where the whole pad just presses it is twice the even pressure, however the sums are rounded", () => {
  for (const side of [12, 24, 30, 34, 800 / 25.4])
    for (let n = 0; n <= 250; n++) {
      const x = (side / 6) * (n / 250);
      for (const past of [0, 1e-16, 1e-15, 1e-12, 1e-9, 1e-7, 9e-7, 1.1e-6, 1e-5]) {
        const off = [x + past * side, side / 6 - x] as const;
        for (const each of [off, [off[1], off[0]] as const]) {
          const shown = `${side}: ${each.join(", ")}`;
          const { most } = padPressure(side ** 2 / 144, side, each) ?? { most: Number.NaN };
          // a plane that presses all over gives 2 + 6 × past; one with a corner off no less than that
          expect(most, shown).toBeGreaterThan(2 + 6 * past - 1e-9);
          expect(most, shown).toBeLessThan(2 + 6 * past + 1e-6);
        }
      }
    }
});

test("it grows with every step off the middle, and nowhere jumps", () => {
  for (const y of [0, 0.05, 1 / 12, 0.15, 0.2499, 0.25, 0.2501, 0.4]) {
    let before = padPressure(1, 12, [0, 12 * y])!.most;
    for (let x = 1; x <= 480; x++) {
      const { most } = padPressure(1, 12, [(12 * x) / 1000, 12 * y])!;
      expect(most, `${x / 1000}, ${y}`).toBeGreaterThanOrEqual(before - 1e-9);
      // the last step, from 21 to 20 thousandths before the edge, is a twentieth
      expect(most / before, `${x / 1000}, ${y}`).toBeLessThan(1.06);
      before = most;
    }
  }
});

test("the formula of the page gives the pressure again, wherever the pad presses", () => {
  const kinds = new Set<string>();
  fc.assert(
    fc.property(
      fc.integer({ min: -1500, max: 1500 }),
      fc.integer({ min: -1500, max: 1500 }),
      fc.integer({ min: 500, max: 9000 }),
      fc.integer({ min: 12, max: 48 }),
      fc.boolean(),
      (x, y, down, side, metric) => {
        const pier = {
          id: "p@A1",
          entry: { kind: "pad", lateral: "single", path: "/piers/p" },
          place: { text: "A1" },
          top: [0, 0, 8],
          tubeBottom: -10,
          bottom: -10,
          diameter: side,
        } as unknown as Pier;
        const each = { caseId: "x", force: [x, y, down] as const, dead: 1, onlyDead: false, wind: true };
        const use = bearingUse(pier, [each], "clay")!;
        if (use.ratio <= 1) return;
        kinds.add(use.contact?.kind ?? "tips");
        const line = pierBearing.worked?.({ use } as never, makeSay(metric ? "mm" : "inch")) ?? "";
        const shown = reckon(line, true);
        if (use.contact) expect(shows(shown, use.pressure, "psf"), line).toBe(true);
        else expect(shows(shown, side / 2, "in"), line).toBe(true);
      },
    ),
    { numRuns: 3000 },
  );
  expect([...kinds].sort()).toEqual(["corner", "corner-off", "strip", "tips", "whole"]);
});
