import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Vec2 } from "../../server/core/model/vec.ts";
import { area, hatch, hull, inside, notched } from "../../server/drawing/outline.ts";

const square: Vec2[] = [
  [0, 0],
  [10, 0],
  [10, 10],
  [0, 10],
];

describe("hull", () => {
  test("drops what lies inside and on the edges", () => {
    expect(hull([...square, [5, 5], [5, 0], [10, 10], [10, 4]])).toEqual(square);
  });
  test("holds every point, whatever they are", () => {
    const coordinate = fc.integer({ min: -1000, max: 1000 }).map((n) => n / 16);
    fc.assert(
      fc.property(fc.array(fc.tuple(coordinate, coordinate), { minLength: 1, maxLength: 20 }), (points) => {
        const ring = hull(points);
        expect(ring.length).toBeGreaterThan(0);
        if (ring.length > 2) {
          expect(area(ring)).toBeGreaterThan(0);
          for (const p of points) expect(inside(ring, p)).toBe(true);
        }
      }),
    );
  });
});

describe("notched", () => {
  test("takes a notch out of an edge", () => {
    const cut = notched(square, [
      [
        [4, -2],
        [6, -2],
        [6, 3],
        [4, 3],
      ],
    ]);
    expect(area(cut)).toBeCloseTo(100 - 6, 9);
    expect(cut).toHaveLength(8);
  });
  test("takes two notches out of the same edge and one round a corner", () => {
    const bar = (from: number, to: number): Vec2[] => [
      [from, -1],
      [to, -1],
      [to, 2],
      [from, 2],
    ];
    const corner: Vec2[] = [
      [8, 8],
      [12, 8],
      [12, 12],
      [8, 12],
    ];
    const first: Vec2[] = [
      [-1, -1],
      [1, -1],
      [1, 1],
      [-1, 1],
    ];
    expect(area(notched(square, [bar(6, 7), bar(2, 3), corner, first]))).toBeCloseTo(100 - 2 - 2 - 4 - 1, 9);
  });
  test("cuts a triangle, as a bird's mouth does, in either order of its points", () => {
    const mouth: Vec2[] = [
      [3, 0],
      [7, 0],
      [5, 2],
    ];
    expect(area(notched(square, [mouth]))).toBeCloseTo(96, 9);
    expect(area(notched(square, [[...mouth].reverse()]))).toBeCloseTo(96, 9);
  });
  test("cuts off a corner in one straight line", () => {
    const corner: Vec2[] = [
      [8, 10],
      [10, 8],
      [10, 10],
    ];
    expect(notched(square, [corner])).toHaveLength(5);
    expect(area(notched(square, [corner]))).toBeCloseTo(98, 9);
  });
  test("follows a notch that steps: the half of a scarf with its key, and the sliver at its tip", () => {
    const below: Vec2[] = [
      [2, 0],
      [1, 2],
      [4, 6],
      [5, 6],
      [5, 4],
      [10, 7],
      [10, 0],
    ];
    const tip: Vec2[] = [
      [9, 10],
      [10, 10],
      [10, 7],
    ];
    expect(area(notched(square, [below, tip]))).toBeCloseTo(100 - Math.abs(area(below)) - 1.5, 9);
  });
  test("leaves alone what is no notch", () => {
    const hole = square.map(([x, y]): Vec2 => [4 + x / 10, 4 + y / 10]);
    const beside = square.map(([x, y]): Vec2 => [x + 20, y]);
    expect(notched(square, [hole, beside])).toEqual(square);
  });
});

test("hatching lies at 45°, inside, at its spacing", () => {
  const lines = hatch(square, 1);
  // the square is 20/√2 in across the hatching: 7 lines each side of the one through its corners
  expect(lines.length).toBe(15);
  for (const [a, b] of lines) {
    expect(Math.abs((b[1] - a[1]) / (b[0] - a[0]))).toBeCloseTo(1, 9);
    expect(inside(square, a) && inside(square, b)).toBe(true);
  }
  expect(hatch(square, 0)).toEqual([]);
});
