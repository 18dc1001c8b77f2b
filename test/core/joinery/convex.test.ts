/** How far solids are apart, against closed forms and points all through them. Plane geometry, derived. */
import fc from "fast-check";
import { expect, test } from "vitest";
import { clearance, convexOf, convexParts, roundOf } from "../../../server/core/joinery/convex.ts";
import { rectangle } from "../../../server/core/joinery/face.ts";
import type { Prism } from "../../../server/core/joinery/joint.ts";
import { add, cross, scale, unit, type Vec2, type Vec3 } from "../../../server/core/model/vec.ts";
import { inPrism } from "./clearance.ts";

type Box = readonly [Vec3, Vec3];

/** A box as a prism in axes turned anyhow. */
function boxOf([low, high]: Box, [u, v, w]: readonly [Vec3, Vec3, Vec3], shift: Vec3): Prism {
  const outline = rectangle([low[0], high[0]], [low[1], high[1]]);
  return { base: shift, u, v, w, outline, from: low[2], to: high[2] };
}

const size = fc.integer({ min: 1, max: 40 }).map((n) => n / 4);
const place = fc.integer({ min: -60, max: 60 }).map((n) => n / 4);
const box = fc.tuple(place, place, place, size, size, size).map(
  ([x, y, z, a, b, c]): Box => [
    [x, y, z],
    [x + a, y + b, z + c],
  ],
);
const direction = fc
  .tuple(place, place, place)
  .filter(([x, y, z]) => Math.hypot(x, y, z) > 1)
  .map((v) => unit(v));
const axes = fc
  .tuple(direction, direction)
  .filter(([a, b]) => Math.hypot(...cross(a, b)) > 0.1)
  .map(([a, b]): readonly [Vec3, Vec3, Vec3] => {
    const w = unit(cross(a, b));
    return [a, cross(w, a), w];
  });

test("two boxes alike: the distance of their nearest corners, edges or faces; else the least way out [derived]", () => {
  fc.assert(
    fc.property(box, box, axes, fc.tuple(place, place, place), (a, b, turned, shift) => {
      const gaps = [0, 1, 2].map((k) => Math.max(a[0][k]! - b[1][k]!, b[0][k]! - a[1][k]!));
      const apart = Math.hypot(...gaps.map((g) => Math.max(0, g)));
      const expected = apart > 0 ? apart : Math.max(...gaps);
      const [one] = convexOf(boxOf(a, turned, shift));
      const [two] = convexOf(boxOf(b, turned, shift));
      expect(clearance(one!, two!, 1000)).toBeCloseTo(expected, 6);
      expect(clearance(two!, one!, 1000)).toBeCloseTo(expected, 6);
    }),
    { numRuns: 300 },
  );
});

test("a peg and a box: the distance from its axis, less half its thickness [derived]", () => {
  const [block] = convexOf(
    boxOf(
      [
        [0, 0, 0],
        [4, 4, 4],
      ],
      [
        [1, 0, 0],
        [0, 1, 0],
        [0, 0, 1],
      ],
      [0, 0, 0],
    ),
  );
  const peg = (x: number, y: number) => roundOf({ from: [x, y, -2], to: [x, y, 9], diameter: 1 });
  expect(clearance(block!, peg(5, 2), 9)).toBeCloseTo(0.5, 9);
  expect(clearance(block!, peg(4.5, 2), 9)).toBeCloseTo(0, 9);
  expect(clearance(block!, peg(4.25, 2), 9)).toBeCloseTo(-0.25, 9);
  expect(clearance(block!, peg(3.5, 2), 9)).toBeCloseTo(-1, 9);
  expect(clearance(block!, peg(7, 8), 9)).toBeCloseTo(4.5, 9);
  const across = roundOf({ from: [-2, 5, 3], to: [9, 5, 3], diameter: 1 });
  expect(clearance(peg(5, 2), across, 9)).toBeCloseTo(2, 9);
  expect(clearance(peg(5, 4.5), across, 9)).toBeCloseTo(-0.5, 9);
});

test("an outline with re-entrant corners is divided without loss or overlap", () => {
  const hooked: Vec2[] = [
    [0, 0],
    [6, 0],
    [6, 4],
    [4, 4],
    [4, 2],
    [2, 2],
    [2, 4],
    [0, 4],
  ];
  for (const outline of [hooked, [...hooked].reverse()]) {
    const parts = convexParts(outline);
    const area = (p: readonly Vec2[]): number =>
      p.reduce((sum, [x, y], i) => {
        const [nx, ny] = p[(i + 1) % p.length]!;
        return sum + (x * ny - nx * y) / 2;
      }, 0);
    expect(parts.reduce((sum, p) => sum + area(p), 0)).toBeCloseTo(20, 9);
    const prism: Prism = {
      base: [0, 0, 0],
      u: [1, 0, 0],
      v: [0, 1, 0],
      w: [0, 0, 1],
      outline,
      from: 0,
      to: 1,
    };
    for (let x = 0.25; x < 6; x += 0.5)
      for (let y = 0.25; y < 4; y += 0.5) {
        const p: Vec3 = [x, y, 0.5];
        const inside = parts.filter((part) => inPrism({ ...prism, outline: part }, p, 0)).length;
        expect(inside, `${p}`).toBe(inPrism(prism, add(p, scale([1, 1, 0], 1e-7)), 0) ? 1 : 0);
      }
  }
});
