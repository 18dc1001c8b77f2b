/** Joints that hold by the shape of their wood: relish, cheeks, dovetails. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Dovetail, dovetailFit } from "../../../server/core/fasteners/dovetail.ts";
import {
  cheekSplit,
  groupTearOut,
  relish,
  rowTearOut,
  tenonNetTension,
} from "../../../server/core/fasteners/tear-out.ts";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("wood torn out round pegs", () => {
  test("relish: 1 5/8 in of wood is left before a 3/4 in hole at 2 in (derived)", () => {
    expect(relish(2, 1.5, 135, 0.75).clear).toBe(1.625);
    expect(relish(-1, 1.5, 135, 0.75).rowTearOut.value).toBe(0);
  });
  test("a row tears at its shorter step: end or spacing (memory, NDS E.3)", () => {
    expect(rowTearOut(3, 2, 1, 2, 100).value).toBe(3 * 2 * 100);
    expect(rowTearOut(3, 2, 2, 2, 100).value).toBe(2 * 2 * 2 * 100);
    expect(rowTearOut(1, 2, 2, 2, 100).value).toBe(2 * 1 * 2 * 100);
  });
  test("a group tears at its outer rows and between them (memory, NDS E.4)", () => {
    const row = rowTearOut(3, 0, 1, 2, 100).value;
    expect(groupTearOut([row, row], 4, 2, 1, 2, 400).value).toBe(3 * 2 * 100 + 3 * 2 * 400);
    expect(groupTearOut([row, 0], 0.5, 2, 1, 2, 400).value).toBe(row / 2);
  });
  test("a tenon with more holes than wood carries nothing (derived, NDS 3.1.2)", () => {
    expect(tenonNetTension(8, 2, 1, 2, 400).value).toBe(4800);
    expect(tenonNetTension(2, 2, 1, 3, 400).value).toBe(0);
  });
  test("cheeks pulled across the grain: 2/3 F_v b d_e, and (d_e/d)² of it near an end (memory, NDS 3.4.3.3)", () => {
    const far = cheekSplit(3, 0, 8, [2, 4], 125, 100);
    expect(far.shear.value).toBeCloseTo((2 / 3) * 125 * 6 * 3, 9);
    expect(far.pull).toBeCloseTo(2 * far.shear.value, 9);
    const near = cheekSplit(3, 0, 8, [2, 4], 125, 20);
    expect(near.shear.value).toBeCloseTo(far.shear.value * (3 / 8) ** 2, 9);
    expect(near.pull).toBe(near.shear.value);
    expect(cheekSplit(3, 2, 8, [2, 4], 125, 100).effective).toBe(5);
    expect(cheekSplit(7, 2, 8, [2, 4], 125, 100).effective).toBe(8);
  });
});

describe("wedged dovetails (derived, plane geometry)", () => {
  const half: Dovetail = { tail: 12, length: 7.25, slope: 1.25 / 7.25, slopedSides: 1, shrinkage: 0.03 };
  test("a half-dovetail of 12 in with 1 1/4 in of drop has a neck of 10 3/4 in", () => {
    expect(dovetailFit(half).neck).toBeCloseTo(10.75, 9);
  });
  test("flat slopes draw out more; a straight tail never tightens; a dry one stays", () => {
    fc.assert(
      fc.property(real(0.02, 0.4), (slope) => {
        expect(dovetailFit({ ...half, slope }).drawOut).toBeGreaterThan(
          dovetailFit({ ...half, slope: slope * 1.1 }).drawOut,
        );
      }),
    );
    expect(dovetailFit({ ...half, slope: 0 }).drawOut).toBe(Number.POSITIVE_INFINITY);
    expect(dovetailFit({ ...half, slope: 0, shrinkage: 0 }).drawOut).toBe(0);
  });
});
