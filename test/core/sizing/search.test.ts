/** The search for the smallest section, against trying every one (derived). */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { smallestPassing, type Verdict } from "../../../server/core/sizing/search.ts";

interface Size {
  readonly width: number;
  readonly depth: number;
  readonly area: number;
}

const size = (width: number, depth: number): Size => ({ width, depth, area: width * depth });
const LINES = [2, 3, 4, 5, 6].map((width) => Array.from({ length: 14 }, (_, i) => size(width, i + 3)));

function search(lines: readonly (readonly Size[])[], judge: (size: Size) => Verdict, most = 1000) {
  const asked: Size[] = [];
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
          const passes = ({ width, depth }: Size): boolean => width ** b * depth ** d >= needed;
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

  test("keeps the first line where another has no less area", () => {
    const { found } = search([[size(3, 8)], [size(4, 6)]], () => "passes");
    expect(found).toEqual(size(3, 8));
  });

  test("goes on to the next sizes where the first strong one spoils something, but not far", () => {
    const line = LINES[0]!;
    const judge =
      (cured: number) =>
      ({ depth }: Size): Verdict =>
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
