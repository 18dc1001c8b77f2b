/** More snow on a roof, or more goods on a loft, never uses a timber less, whatever its size. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { MemberResult } from "../../../server/core/statics/frame-results.ts";
import { checked, loft } from "./members.ts";
import { sheds, shedText } from "./random-shed.ts";

type Members = ReadonlyMap<string, MemberResult>;

/** How many loads to try on each frame. */
const LOADS = { minLength: 2, maxLength: 3 };

/**
 * @param rising results under one load after the other, each heavier
 * @param kind what the load is called in combinations
 * @returns how many timbers were governed by the load all along
 */
function expectRising(rising: readonly Members[], kind: "S" | "L"): number {
  let governed = 0;
  rising.slice(1).forEach((more, n) => {
    for (const [id, { uses }] of rising[n]!) {
      const [before, after] = [uses[0], more.get(id)?.uses[0]];
      if (!before) continue;
      expect(after?.ratio, `${id}: ${before.what} under ${before.combination}`).toBeGreaterThan(
        before.ratio * (1 - 1e-9),
      );
      const names = new RegExp(`\\b${kind}\\b`);
      if (!names.test(before.combination)) continue;
      governed++;
      // the same check under the same load case stays and grows, or another has grown past it
      expect(after!.ratio, `${id}: ${before.what} under ${before.combination}`).toBeGreaterThan(before.ratio);
      if (after!.what === before.what && after!.caseId === before.caseId)
        expect(after!.value).toBeGreaterThan(before.value);
    }
  });
  return governed;
}

const rising = (least: number, most: number): fc.Arbitrary<number[]> =>
  fc.uniqueArray(fc.integer({ min: least, max: most }), LOADS).map((loads) => loads.sort((a, b) => a - b));

describe("the governing ratio of every timber", () => {
  test("rises with the snow on sheds of any size [derived]", () => {
    fc.assert(
      fc.property(sheds, rising(20, 90), (shed, loads) => {
        const results = loads.map((snow) => checked(shedText({ ...shed, snow })).members);
        expect(expectRising(results, "S")).toBeGreaterThan(5);
      }),
      { seed: 7_310, numRuns: 6 },
    );
  });

  test("rises with the goods on a loft [derived]", () => {
    fc.assert(
      fc.property(fc.constantFrom("4x6", "4x8", "6x6"), rising(25, 120), (joist, loads) => {
        const results = loads.map((live) => checked(loft(joist, `${live} psf`)).members);
        expect(expectRising(results, "L")).toBeGreaterThan(3);
      }),
      { seed: 41_912, numRuns: 8 },
    );
  });
});
