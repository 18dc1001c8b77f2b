/** Edges and sight of wood as it is cut, against lengths that can be worked out by hand (derived). */
import { describe, expect, test } from "vitest";
import type { Prism } from "../../server/core/joinery/joint.ts";
import type { Vec2, Vec3 } from "../../server/core/model/vec.ts";
import { type Edge, edgesOf } from "../../server/drawing/cut-edges.ts";
import { type CutSolid, isWood, prismBlock, woodAhead } from "../../server/drawing/cut-solid.ts";
import { eyeFrom, type FlatLine, seenLines } from "../../server/drawing/seen-lines.ts";

const rectangle = (x: number, y: number, wide: number, deep: number): Vec2[] => [
  [x, y],
  [x + wide, y],
  [x + wide, y + deep],
  [x, y + deep],
];
const upright = (outline: readonly Vec2[], from: number, to: number): Prism => ({
  base: [0, 0, 0],
  u: [1, 0, 0],
  v: [0, 1, 0],
  w: [0, 0, 1],
  outline,
  from,
  to,
});
const solid = (wood: readonly Prism[], cut: readonly Prism[] = []): CutSolid => ({
  wood: wood.map(prismBlock),
  cut: cut.map(prismBlock),
});
const lengthOf = (edges: readonly Edge[]): number =>
  edges.reduce((sum, { from, to }) => sum + Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]), 0);
const flatLength = (lines: readonly FlatLine[]): number =>
  lines.reduce((sum, [a, b]) => sum + Math.hypot(b[0] - a[0], b[1] - a[1]), 0);

/** 8 × 6 in, 10 in tall */
const BLOCK = upright(rectangle(0, 0, 8, 6), 0, 10);
const FROM_ABOVE = eyeFrom([0, 0, 1], [0, 1, 0], [0, 0, 0]);
const FROM_THE_FRONT = eyeFrom([0, -1, 0], [0, 0, 1], [0, 0, 0]);

describe("edges", () => {
  test("a block has its twelve edges: 4 (8 + 6 + 10) in (derived)", () => {
    expect(lengthOf(edgesOf(solid([BLOCK])))).toBeCloseTo(96, 2);
  });
  test("a blind mortise of 2 × 3 in, 4 in deep adds its own twelve: 4 (2 + 3 + 4) in (derived)", () => {
    const mortise = upright(rectangle(3, 1, 2, 3), 6, 10);
    expect(lengthOf(edgesOf(solid([BLOCK], [mortise])))).toBeCloseTo(96 + 36, 2);
  });
  test("a tenon as broad as its timber: edges that lie flush are none (derived)", () => {
    const tenon = upright(rectangle(3, 0, 2, 6), 10, 14);
    // its tip's outline 16, its four uprights 16, two shoulder lines 12, less the two stretches of 2 at the end grain
    expect(lengthOf(edgesOf(solid([BLOCK, tenon])))).toBeCloseTo(96 + 16 + 16 + 12 - 4, 2);
  });
  test("a slot that runs out of the wood cuts edges that belong to neither (derived)", () => {
    const slot = upright(rectangle(-1, 2, 10, 1), 8, 12);
    // two slots' ends of 2 × 2 and 1 below at each side, four lines of 8, less two stretches of 1 above
    expect(lengthOf(edgesOf(solid([BLOCK], [slot])))).toBeCloseTo(96 + 2 * (2 + 2 + 1) + 4 * 8 - 2 * 1, 2);
  });
  test("a surface that only bends a little keeps its edge: a wedge's slope of 1 in 10", () => {
    const bent: Vec2[] = [
      [0, 0],
      [4, 0],
      [8, 0.4],
      [8, 6],
      [0, 6],
    ];
    const [at] = edgesOf(solid([upright(bent, 0, 10)])).filter(
      ({ from, to }) => from[0] === 4 && to[0] === 4 && from[1] === 0 && to[1] === 0,
    );
    expect(at).toBeDefined();
  });
});

describe("wood along a line of sight", () => {
  const holed = solid([BLOCK], [upright(rectangle(3, 1, 2, 3), 6, 10)]);
  test("is what is left in front (derived)", () => {
    const up: Vec3 = [0, 0, 1];
    expect(woodAhead(holed, [4, 2, -5], up, 100)).toBeCloseTo(6, 6);
    expect(woodAhead(holed, [1, 2, -5], up, 100)).toBeCloseTo(10, 6);
    expect(woodAhead(holed, [4, 2, 7], up, 100)).toBe(0);
    expect([isWood(holed, [4, 2, 5]), isWood(holed, [4, 2, 7]), isWood(holed, [9, 2, 5])]).toEqual([
      true,
      false,
      false,
    ]);
  });
});

describe("what is seen", () => {
  const mortised = solid([BLOCK], [upright(rectangle(3, 1, 2, 3), 6, 10)]);
  test("into a mortise its mouth is seen; from the side it is dashed (derived)", () => {
    const edges = edgesOf(mortised);
    const above = seenLines(FROM_ABOVE, edges, [mortised]);
    expect(flatLength(above.seen)).toBeCloseTo(28 + 10, 2);
    expect(above.hidden).toEqual([]);
    const front = seenLines(FROM_THE_FRONT, edges, [mortised]);
    expect(flatLength(front.seen)).toBeCloseTo(36, 2);
    // two upright walls of 4 and the bottom of 2; the mouth lies on the block's own edge
    expect(flatLength(front.hidden)).toBeCloseTo(10, 2);
  });
  test("a block behind another is dashed only where that one covers it (derived)", () => {
    const before = solid([upright(rectangle(4, -5, 8, 2), 0, 5)]);
    const behind = solid([BLOCK]);
    const edges = [...edgesOf(before), ...edgesOf(behind)];
    const { hidden } = seenLines(FROM_THE_FRONT, edges, [before, behind]);
    // its right edge below 5; its foot lies on a line of the other that is seen
    expect(flatLength(hidden)).toBeCloseTo(5, 2);
  });
});
