/** Shares of what lies side by side, and of a beam over several supports. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { halves } from "../../../server/core/statics/line-loads.ts";
import { beamReactions } from "./beam-on-supports.ts";

const spans = fc.array(fc.double({ min: 1, max: 40, noNaN: true }), { minLength: 1, maxLength: 6 });
const past = fc.double({ min: 0, max: 5, noNaN: true });
const placesOf = (lengths: readonly number[]): number[] => [
  0,
  ...lengths.map((_, i) => lengths.slice(0, i + 1).reduce((sum, l) => sum + l, 0)),
];

describe("a plate over several posts", () => {
  it("of three equal spans bears 0.4, 1.1, 1.1, 0.4 w l (derived, theorem of three moments)", () => {
    const got = beamReactions([0, 10, 20, 30], [0, 30], 1);
    for (const [i, want] of [4, 11, 11, 4].entries()) expect(got[i]).toBeCloseTo(want, 6);
  });
  it("with one of two spans loaded bears 7/16, 5/8 and −1/16 of w l (derived, three moments: M = −w l²/16)", () => {
    const got = beamReactions([0, 10, 20], [0, 20], [1, 0]);
    for (const [i, want] of [10 * (7 / 16), 10 * (5 / 8), -10 / 16].entries())
      expect(got[i]).toBeCloseTo(want, 6);
  });
  it("of one span with an overhang by the lever: (L + o)²/2L and (L² − o²)/2L", () => {
    const [plate, ridge] = beamReactions([0, 6], [-1.5, 6], 30);
    expect(plate).toBeCloseTo((30 * 7.5 ** 2) / 12, 6);
    expect(ridge).toBeCloseTo((30 * (36 - 2.25)) / 12, 6);
  });
  it("with unequal spans meets the three moments: 8 and 12 ft under 1 plf, M = −14 ft-lb (derived)", () => {
    // M = −w (l₁³ + l₂³)/(8 (l₁ + l₂)) = −(512 + 1728)/160 = −14
    const [a, b, c] = beamReactions([0, 8, 20], [0, 20], 1);
    expect(a).toBeCloseTo(4 - 14 / 8, 6);
    expect(c).toBeCloseTo(6 - 14 / 12, 6);
    expect(b).toBeCloseTo(20 - a! - c!, 6);
  });
});

describe("timbers side by side", () => {
  it("share the whole between the edges among them, each the half way to its neighbors", () => {
    fc.assert(
      fc.property(spans, past, past, (lengths, before, after) => {
        const at = placesOf(lengths);
        const end = at.at(-1)!;
        const got = halves(at, -before, end + after);
        expect(got.reduce((sum, [low, high]) => sum + high - low, 0)).toBeCloseTo(end + before + after, 6);
        for (let i = 1; i < got.length; i++) {
          expect(got[i]![0]).toBe(got[i - 1]![1]);
          expect(got[i]![0]).toBeCloseTo((at[i - 1]! + at[i]!) / 2, 9);
        }
      }),
    );
  });
});
