/** Overlaps by hand: plane geometry, derived. */
import { describe, expect, test } from "vitest";
import { boxTimber, type Interval } from "../../../server/core/model/box.ts";
import type { Timber } from "../../../server/core/model/model.ts";
import { solidOverlap, timberOverlap, woodOf } from "../../../server/core/model/overlap.ts";
import { type Solid, solidOf } from "../../../server/core/model/solid.ts";
import { along, cross, dot, scale, unit, type Vec3 } from "../../../server/core/model/vec.ts";

const BASE = { member: "stick", kind: "beam", path: "/members/stick", class: undefined } as const;
const PLACE = {
  id: "stick",
  rule: "free-ends",
  reference: { width: 0, depth: 0 },
  walls: [],
  bents: [],
} as const;

const box = (way: "up" | "x" | "y", x: Interval, y: Interval, z: Interval): Timber =>
  boxTimber(BASE, PLACE, way, x, y, z);

/** A square stick in the upright plane along x, through a point, its ends cut square. */
function slanted(middle: Vec3, degrees: number, size: number, long: number): Timber {
  const angle = (degrees * Math.PI) / 180;
  const axis: Vec3 = [Math.cos(angle), 0, Math.sin(angle)];
  const widthDir: Vec3 = [0, 1, 0];
  const origin = along(middle, axis, -long / 2);
  return {
    ...box("x", [0, long], [0, size], [0, size]),
    axis,
    widthDir,
    depthDir: cross(axis, widthDir),
    origin,
    foot: { point: origin, normal: scale(axis, -1) },
    head: { point: along(origin, axis, long), normal: axis },
  };
}

const post = box("up", [0, 8], [0, 8], [0, 96]);

describe("the overlap of two square boxes (derived)", () => {
  test.each<[string, Timber, number]>([
    [
      "through the middle, crossing: the way out is the lesser of both",
      box("x", [-24, 24], [2, 6], [40, 46]),
      6,
    ],
    ["half an inch into a face", box("x", [7.5, 60], [0, 8], [40, 46]), 0.5],
    ["an eighth into a face", box("x", [7.875, 60], [0, 8], [40, 46]), 0.125],
    ["just touching a face", box("x", [8, 60], [0, 8], [40, 46]), 0],
    ["a foot away", box("x", [20, 60], [0, 8], [40, 46]), 0],
    ["end to end", box("up", [0, 8], [0, 8], [96, 120]), 0],
    ["end to end, one inch into each other", box("up", [0, 8], [0, 8], [95, 120]), 1],
    ["parallel, two inches of eight in common", box("up", [6, 14], [0, 8], [0, 96]), 2],
    ["parallel, side by side", box("up", [8, 16], [0, 8], [0, 96]), 0],
    ["the same place", post, 8],
    ["wholly inside: out by the nearest face", box("up", [1, 5], [3, 6], [20, 60]), 5],
  ])("%s", (_, other, expected) => {
    expect(timberOverlap(post, other)).toBeCloseTo(expected, 9);
    expect(timberOverlap(other, post)).toBeCloseTo(expected, 9);
  });
});

describe("the overlap of a brace with a post (derived)", () => {
  test("its corner just reaches the face, then passes it by half an inch", () => {
    // square cut at 45°: the rim's corners lie 2/√2 = √2 to the left and right of its middle
    const half = 20 / Math.SQRT2;
    const end = (x: number): Timber => slanted([x + half, 4, 40 + half], 45, 4, 40);
    expect(timberOverlap(post, end(8 + Math.SQRT2))).toBeCloseTo(0, 9);
    expect(timberOverlap(post, end(8 + Math.SQRT2 - 0.5))).toBeCloseTo(0.5, 9);
  });

  test("two crossing braces: the least way out is across their own thickness", () => {
    const [up, down] = [slanted([0, 4, 40], 45, 4, 60), slanted([0, 4, 40], -45, 4, 60)];
    expect(timberOverlap(up, down)).toBeCloseTo(4, 9);
    const beside = slanted([0, 8, 40], -45, 4, 60);
    expect(timberOverlap(up, beside)).toBe(0);
  });

  test("only a cross of edges parts two sticks that pass edge over edge", () => {
    // both lie level, at right angles, turned on edge: their rims of √2 on each side meet edge to edge
    const onEdge = (axis: Vec3, middle: Vec3): Timber => {
      const side = unit(cross([0, 0, 1], axis));
      const widthDir = unit([side[0], side[1], 1]);
      const origin = along(middle, axis, -10);
      return {
        ...box("x", [0, 20], [0, 2], [0, 2]),
        axis,
        widthDir,
        depthDir: cross(axis, widthDir),
        origin,
        foot: { point: origin, normal: scale(axis, -1) },
        head: { point: along(origin, axis, 20), normal: axis },
      };
    };
    const at = (height: number): Timber => onEdge([0, 1, 0], [0, 0, height]);
    const lower = onEdge([1, 0, 0], [0, 0, 0]);
    expect(timberOverlap(lower, at(2 * Math.SQRT2 + 0.01))).toBe(0);
    expect(timberOverlap(lower, at(2 * Math.SQRT2 - 0.5))).toBeCloseTo(0.5, 9);
    const [a, b] = [solidOf(lower), solidOf(at(2 * Math.SQRT2 - 0.5))];
    // across every face they have more than that in common
    for (const { normal } of [...a.faces, ...b.faces]) expect(common(a, b, normal)).toBeGreaterThan(1);
  });
});

function common(a: Solid, b: Solid, direction: Vec3): number {
  const [p, q] = [a, b].map(({ corners }) => corners.map((c) => dot(c, direction))) as [number[], number[]];
  return Math.min(Math.max(...p) - Math.min(...q), Math.max(...q) - Math.min(...p));
}

describe("the wood of a curved timber (derived)", () => {
  const straight = box("x", [0, 60], [0, 4], [0, 10]);
  // chord 60, rise 4: radius = (30² + 4²) / (2 · 4)
  const curved: Timber = { ...straight, curve: { side: 1, radius: 114.5, rise: 4, chord: 60 } };
  const deepest = (t: Timber, x: number): number =>
    Math.max(...woodOf(t).flatMap((s) => (s.low[0] <= x && s.high[0] >= x ? [s.high[2]] : [])));

  test("its pieces follow the hollow from inside, and keep its straight edge", () => {
    expect(woodOf(straight)).toHaveLength(1);
    for (const solid of woodOf(curved)) expect(solid.low[2]).toBeCloseTo(0, 9);
    for (let x = 1; x < 60; x += 2) {
      const edge = 10 - (4 - (114.5 - Math.sqrt(114.5 ** 2 - (x - 30) ** 2)));
      expect(deepest(curved, x)).toBeLessThanOrEqual(edge + 1e-9);
      expect(deepest(curved, x)).toBeGreaterThan(edge - 2);
    }
  });

  test("a rod in the hollow is clear, one under the hollow or at its end is not", () => {
    const rod = (x: number, z: number): Timber => box("y", [x - 1, x + 1], [-20, 20], [z - 1, z + 1]);
    expect(timberOverlap(straight, rod(30, 8))).toBe(3);
    expect(timberOverlap(curved, rod(30, 8))).toBe(0);
    expect(timberOverlap(curved, rod(30, 6))).toBeCloseTo(1, 9);
    expect(timberOverlap(curved, rod(1, 7))).toBeGreaterThan(1);
  });

  test("a hollow deeper than the timber leaves no wood there", () => {
    const gone: Timber = { ...straight, curve: { side: 1, radius: 44, rise: 12, chord: 60 } };
    expect(timberOverlap(gone, box("y", [29, 31], [-20, 20], [0, 10]))).toBe(0);
  });
});

test("two solids are asked the same either way round", () => {
  const [a, b] = [solidOf(post), solidOf(slanted([6, 4, 40], 30, 6, 40))];
  expect(solidOverlap(a, b)).toBeCloseTo(solidOverlap(b, a), 12);
  expect(solidOverlap(a, b)).toBeGreaterThan(0);
});
