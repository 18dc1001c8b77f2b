/**
 * A beam of 8x12 (7.5 x 11.5) Douglas Fir-Larch No.1 over 14 ft under dead 150 plf and snow 300 plf, by the outside
 * figures of its parts: mem-defl-002, mem-shear-002, mem-cl (derived, NDS).
 */
import { describe, expect, it } from "vitest";
import { durationFactor } from "../../../server/core/loads/combinations.ts";
import {
  checkSimpleSpan,
  longestSpan,
  type SimpleSpanInput,
} from "../../../server/core/members/simple-span.ts";
import { designValues } from "../../../server/core/wood/design-values.ts";

const found = designValues("douglas-fir-larch", "no-1", 7.5, 11.5);
if (found.kind === "none") throw new Error(found.reason);

const BEAM: SimpleSpanInput = {
  values: found.values,
  conditions: {
    section: { sizeClass: found.sizeClass, group: found.group, breadth: 7.5, depth: 11.5 },
    grade: found.grade,
    duration: durationFactor("S"),
    wet: false,
  },
  deadPlf: 150,
  livePlf: 300,
  span: 168,
  unbraced: 0,
  seasoning: "dry",
  limits: { live: 180, total: 120 },
};
const use = (input: SimpleSpanInput, what: string) =>
  checkSimpleSpan(input).uses.find((u) => u.what === what)!;

describe("a simple span", () => {
  it("bends, shears and deflects as by hand", () => {
    expect(use(BEAM, "bending").value).toBeCloseTo(
      ((450 / 12) * (168 ** 2 / 8)) / ((7.5 * 11.5 ** 2) / 6),
      6,
    );
    expect(use(BEAM, "bending").limit).toBeCloseTo(1350 * 1.15, 6);
    expect(use({ ...BEAM, deadPlf: 100 }, "shear").value).toBeCloseTo(42.029, 3);
    expect(use(BEAM, "live-deflection").value).toBeCloseTo(0.1705, 4);
    expect(use(BEAM, "total-deflection").value).toBeCloseTo(0.29837, 4);
    expect(use({ ...BEAM, seasoning: "green" }, "total-deflection").value).toBeCloseTo(0.341, 4);
  });
  it("has 5/8 w L of shear beside a support past which it goes on as far again, less w d (AISC Manual Table 3-23 and AWC DA6, two equal spans, memory; NDS 3.4.3.1)", () => {
    const w = 450 / 12;
    const V = (5 / 8) * w * 168 - w * 11.5;
    expect(use({ ...BEAM, runsOn: true }, "shear").value).toBeCloseTo((1.5 * V) / (7.5 * 11.5), 9);
    expect(use({ ...BEAM, runsOn: true }, "bending").value).toBe(use(BEAM, "bending").value);
  });
  it("has 19/32 P of shear there under a load on the middle of one of two spans (same diagrams, memory), 9/16 w L if it covers that span", () => {
    const alone = { ...BEAM, deadPlf: 0, livePlf: 0, runsOn: true } as const;
    const shear = (length: number) =>
      use({ ...alone, patch: { load: 1000, length } }, "shear").value * ((7.5 * 11.5) / 1.5);
    expect(shear(0.001)).toBeCloseTo((19 / 32) * 1000, 3);
    expect(shear(168)).toBeCloseTo((9 / 16) * 1000 - (1000 / 168) * 11.5, 6);
  });
  it("governs by its worst use", () => {
    const { governing, uses } = checkSimpleSpan(BEAM);
    expect(governing.ratio).toBe(Math.max(...uses.map((u) => u.ratio)));
    expect(governing.what).toBe("bending");
  });
  it("loses strength where its top is free, and goes less far", () => {
    const free = { ...BEAM, unbraced: 168 };
    expect(use(free, "bending").factors.at(-1)).toMatchObject({ symbol: "C_L" });
    expect(use(free, "bending").limit).toBeLessThan(use(BEAM, "bending").limit);
    expect(longestSpan(free)!).toBeLessThan(longestSpan(BEAM)!);
  });
  it("too slender carries nothing", () => {
    const thin = { ...BEAM, unbraced: 1200 };
    const section = { ...BEAM.conditions.section, breadth: 1.5 };
    expect(use({ ...thin, conditions: { ...BEAM.conditions, section } }, "bending").ratio).toBe(
      Number.POSITIVE_INFINITY,
    );
  });
  it("has no longest span under a load that even 1 ft cannot carry", () => {
    expect(longestSpan({ ...BEAM, livePlf: 1e7 })).toBeUndefined();
  });
});
