import fc from "fast-check";
import { expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { distinct } from "../../server/drawing/dimensions.ts";
import { Layout, spread } from "../../server/drawing/layout.ts";
import { paperScale } from "../../server/drawing/paper.ts";

test("positions that have room stay where they are", () => {
  expect(spread([0, 10, 20], 5)).toEqual([0, 10, 20]);
});

test("positions that crowd move apart evenly about where they were wanted", () => {
  expect(spread([10, 10], 4)).toEqual([8, 12]);
  expect(spread([0, 10, 11, 12, 40], 4)).toEqual([0, 7, 11, 15, 40]);
});

test("however they crowd, no gap falls short and none moves without need", () => {
  const wanted = fc
    .array(fc.integer({ min: 0, max: 400 }), { maxLength: 20 })
    .map((a) => a.sort((p, q) => p - q));
  fc.assert(
    fc.property(wanted, (positions) => {
      const placed = spread(positions, 5);
      expect(placed).toHaveLength(positions.length);
      for (const [i, p] of placed.slice(1).entries()) expect(p - placed[i]!).toBeGreaterThanOrEqual(5 - 1e-6);
      if (positions.slice(1).every((p, i) => p - positions[i]! >= 5)) expect(placed).toEqual(positions);
    }),
  );
});

test("a text takes the first place with room, and none where there is none", () => {
  const layout = new Layout(4, makeSay("inch"));
  const here = { x: 0, y: 0, anchor: "middle" as const };
  const below = { x: 0, y: -8, anchor: "middle" as const };
  expect(layout.write("first", [here, below], [])).toMatchObject([{ at: [0, 0] }]);
  expect(layout.write("second", [here, below], [])).toMatchObject([{ at: [0, -8] }]);
  expect(layout.write("third", [here, below], [])).toEqual([]);
});

test("positions within a hair of each other are one", () => {
  expect(distinct([10, 0, 10.01, Number.NaN, 5])).toEqual([0, 5, 10]);
});

test("the scale on paper is the largest usual one that fits a sheet", () => {
  expect(paperScale(300, 200, false)).toEqual({ ratio: 1 / 32, name: "3/8 in = 1 ft" });
  expect(paperScale(200, 300, false).name).toBe("3/8 in = 1 ft");
  expect(paperScale(320, 250, false).name).toBe("1/4 in = 1 ft");
  expect(paperScale(300, 200, true)).toEqual({ ratio: 1 / 50, name: "1:50" });
  expect(paperScale(1e6, 10, true).name).toBe("1:100000");
});
