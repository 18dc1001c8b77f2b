/** The search for the smallest section, against trying every one (derived). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Sized, smallestPassing, type Verdict } from "../../../server/core/sizing/search.ts";
import { designValues } from "../../../server/core/wood/design-values.ts";
import { sizeClass } from "../../../server/core/wood/size-class.ts";

const size = (width: number, depth: number, of = "one"): Sized => ({
  width,
  depth,
  area: width * depth,
  sizeClass: of,
});
const LINES = [2, 3, 4, 5, 6].map((width) => Array.from({ length: 14 }, (_, i) => size(width, i + 3)));

function search(lines: readonly (readonly Sized[])[], judge: (size: Sized) => Verdict, most = 1000) {
  const asked: Sized[] = [];
  const work = smallestPassing(
    lines,
    (one) => {
      asked.push(one);
      return judge(one);
    },
    most,
  );
  let breaths = 0;
  let step = work.next();
  while (!step.done) {
    breaths++;
    step = work.next();
  }
  return { ...step.value, asked, breaths };
}

describe("the search", () => {
  test("finds what trying all of them finds, wherever strength grows with both sides", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.double({ min: 0.5, max: 3, noNaN: true }),
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        (b, d, needed) => {
          const passes = ({ width, depth }: Sized): boolean => width ** b * depth ** d >= needed;
          const { found, whole, asked, breaths } = search(LINES, (s) => (passes(s) ? "passes" : "weak"));
          const all = LINES.flat().filter(passes);
          expect(whole).toBe(true);
          expect(found?.area).toBe(all.length === 0 ? undefined : Math.min(...all.map((s) => s.area)));
          // none is asked about twice, and there is a breath before each
          expect(new Set(asked).size).toBe(asked.length);
          expect(breaths).toBe(asked.length);
          expect(asked.length).toBeLessThanOrEqual(LINES.length * 8);
        },
      ),
    );
  });

  test("finds the least of all where strength drops or leaps with the size class [derived]", () => {
    const classed = [4, 5, 6, 8, 10].map((width) =>
      Array.from({ length: 14 }, (_, i) => size(width, i + width, sizeClass(width, i + width))),
    );
    const strength = fc.double({ min: 0.3, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.record({
          "dimension-lumber": strength,
          "posts-and-timbers": strength,
          "beams-and-stringers": strength,
        }),
        strength,
        fc.double({ min: 1, max: 20_000, noNaN: true }),
        (values: Readonly<Record<string, number>>, d, needed) => {
          const passes = (s: Sized): boolean => (values[s.sizeClass] ?? 0) * s.width * s.depth ** d >= needed;
          const { found, whole } = search(classed, (s) => (passes(s) ? "passes" : "weak"));
          const all = classed.flat().filter(passes);
          expect(whole).toBe(true);
          expect(found?.area).toBe(all.length === 0 ? undefined : Math.min(...all.map((s) => s.area)));
        },
      ),
    );
  });

  test("a post of Douglas fir-larch No.2 for 54,000 lb is 8x10, which carries more than 8x11 [published, Table 4D]", () => {
    const line = Array.from({ length: 8 }, (_, i) => size(8, i + 9, sizeClass(8, i + 9)));
    const carried = ({ width, depth, area }: Sized): number => {
      const found = designValues("douglas-fir-larch", "no-2", width, depth);
      return found.kind === "values" ? found.values.Fc.value * area : 0;
    };
    // F_c 700 psi as posts and timbers, 600 as beams and stringers
    expect([size(8, 10), size(8, 11), size(8, 12)].map(carried)).toEqual([56_000, 52_800, 57_600]);
    const { found, whole } = search([line], (s) => (carried(s) >= 54_000 ? "passes" : "weak"));
    expect({ depth: found?.depth, whole }).toEqual({ depth: 10, whole: true });
  });

  test("keeps the first line where another has no less area", () => {
    const { found } = search([[size(3, 8)], [size(4, 6)]], () => "passes");
    expect(found).toEqual(size(3, 8));
  });

  test("goes on to the next sizes where the first strong one spoils something, but not far", () => {
    const line = LINES[0]!;
    const judge =
      (cured: number) =>
      ({ depth }: Sized): Verdict =>
        depth < 6 ? "weak" : depth < cured ? "spoils" : "passes";
    expect(search([line], judge(8)).found).toEqual(size(2, 8));
    const hopeless = search([line], judge(12));
    expect(hopeless.found).toBeUndefined();
    expect(hopeless.spoiler).toEqual(size(2, 6));
  });

  test("ends when it has asked as often as it may, and says so", () => {
    const { found, whole, asked } = search(LINES, () => "unknown", 7);
    expect({ found, whole, count: asked.length }).toEqual({ found: undefined, whole: false, count: 7 });
  });

  test("does not go on where even the largest is weak, but does where nobody knows about it", () => {
    const hopeless = search(LINES, () => "weak");
    expect(hopeless).toMatchObject({ found: undefined, whole: true });
    expect(hopeless.asked.at(-1)).toEqual(size(6, 16));
    expect(hopeless.asked.length).toBeLessThanOrEqual(6);
    const thin = search(LINES, ({ width, area }) => (width > 4 ? "unknown" : area < 34 ? "weak" : "passes"));
    expect(thin.found).toEqual(size(3, 12));
  });

  test("without candidates there is nothing to find", () => {
    expect(search([], () => "passes").found).toBeUndefined();
    expect(search([[]], () => "passes").found).toBeUndefined();
  });
});
