/** Joints that hold by the shape of their wood: relish, cheeks, dovetails, seats. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Dovetail, dovetailFit, dovetailPull } from "../../../server/core/fasteners/dovetail.ts";
import {
  cheekSplit,
  groupTearOut,
  relish,
  rowTearOut,
  tenonNetTension,
} from "../../../server/core/fasteners/tear-out.ts";
import {
  bearingAtAngle,
  housingBearing,
  shoulderBearing,
  strutSeat,
} from "../../../server/core/fasteners/wood-bearing.ts";

const real = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const pine = { Fc: 800, FcPerp: 235 };
const oak = { Fc: 900, FcPerp: 800 };

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
  const tenon = { Fv: 125, Ft: 400, ...pine };
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
  test("pulls by the least of bearing, shear of the tail and its neck, and names it", () => {
    const pull = dovetailPull(half, 2, tenon, pine);
    expect(pull.tension.value).toBe(Math.min(pull.bearing, pull.tailShear, pull.neckTension));
    expect(pull.tailShear).toBe((7.25 * 2 * 125) / 2);
    expect(pull.governs).toBe("bearing");
    expect(dovetailPull(half, 2, { ...tenon, Fv: 1 }, pine).governs).toBe("tail-shear");
    expect(dovetailPull(half, 2, { ...tenon, Ft: 1 }, pine).governs).toBe("neck-tension");
    // resultant on the slope: stress × face, of which the sine pulls along the tenon
    const angle = Math.atan(half.slope);
    const stress = bearingAtAngle(pine, 90 - (angle * 180) / Math.PI).value;
    expect(pull.bearing).toBeCloseTo((stress * 2 * 7.25 * Math.sin(angle)) / Math.cos(angle), 6);
  });
  test("two sloped sides bear twice", () => {
    const two = dovetailPull({ ...half, slopedSides: 2 }, 2, tenon, pine);
    expect(two.bearing).toBeCloseTo(2 * dovetailPull(half, 2, tenon, pine).bearing, 9);
  });
  test("wood without strength carries nothing", () => {
    expect(dovetailPull(half, 2, { ...tenon, Fc: 0 }, pine).tension.value).toBe(0);
  });
});

describe("bearing of wood on wood (published, NDS 3.10.3)", () => {
  test("Hankinson’s value lies between along and across and falls with the angle", () => {
    fc.assert(
      fc.property(real(0, 89), (angle) => {
        const value = bearingAtAngle(pine, angle).value;
        expect(value).toBeLessThanOrEqual(pine.Fc);
        expect(value).toBeGreaterThanOrEqual(pine.FcPerp);
        expect(bearingAtAngle(pine, angle + 1).value).toBeLessThan(value);
      }),
    );
  });
  test("the weaker of the two timbers at its own angle governs", () => {
    const seat = shoulderBearing(3000, 12, [
      { ...pine, angle: 0 },
      { ...pine, angle: 90 },
    ]);
    expect(seat.allowed.value).toBe(235);
    expect(seat.ratio).toBeCloseTo(3000 / (12 * 235), 9);
    expect(shoulderBearing(1, 12, []).ratio).toBe(Number.POSITIVE_INFINITY);
    expect(shoulderBearing(0, 0, []).ratio).toBe(0);
  });
  test("a housing without depth carries nothing and tells the depth it needs", () => {
    expect(housingBearing(1000, 4, 0, 250)).toMatchObject({
      capacity: 0,
      ratio: Number.POSITIVE_INFINITY,
      depthNeeded: 1,
    });
    expect(housingBearing(1000, 0, 1, 250).depthNeeded).toBe(Number.POSITIVE_INFINITY);
  });
});

describe("the seat of an oblique strut (derived, statics)", () => {
  test("both faces together carry the strut’s force, and take its whole section", () => {
    fc.assert(
      fc.property(real(100, 20000), real(5, 90), (force, angle) => {
        const area = 30;
        const { nose, heel } = strutSeat(force, area, angle, [pine, oak]);
        const half = (angle * Math.PI) / 360;
        const [n, h] = [nose.stress * nose.area, heel.stress * heel.area];
        expect(Math.hypot(n, h)).toBeCloseTo(force, 6);
        expect(nose.area * Math.cos(half) + heel.area * Math.sin(half)).toBeCloseTo(area, 6);
      }),
    );
  });
  test("the nose stands at half the angle to both grains, the heel at its complement; the weaker wood governs", () => {
    const seat = strutSeat(8000, 30.25, 45, [oak, pine]);
    expect([seat.nose.angle, seat.heel.angle]).toEqual([22.5, 67.5]);
    expect(seat.nose.allowed.value).toBeCloseTo(bearingAtAngle(pine, 22.5).value, 9);
    expect(seat.governs).toBe("nose");
    expect(seat.nose.ratio).toBeCloseTo(seat.nose.stress / seat.nose.allowed.value, 9);
  });
  test("a strut in line stands on its nose alone", () => {
    const seat = strutSeat(1000, 10, 0, [pine]);
    expect([seat.nose.stress, seat.heel.stress, seat.governs]).toEqual([200, 0, "nose"]);
  });
});
