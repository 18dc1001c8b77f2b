import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { beam, loadsForShear, spanDeflection, uniform } from "../../../server/core/members/beam.ts";

const EI = 1e8;

describe("a beam with an overhang (derived, any beam table)", () => {
  // w = 10 lb/in over span 120 and overhang 30
  const [w, L, a] = [10, 120, 30];
  const found = beam({ span: L, overhang: a, blocks: [{ from: -a, to: L, w }], points: [] });
  it("has the reactions w(L+a)²/2L and w(L²−a²)/2L", () => {
    expect(found.reactions[0]).toBeCloseTo((w * (L + a) ** 2) / (2 * L), 9);
    expect(found.reactions[1]).toBeCloseTo((w * (L ** 2 - a ** 2)) / (2 * L), 9);
  });
  it("has the moments w(L+a)²(L−a)²/8L² and −wa²/2", () => {
    expect(found.sagging.moment).toBeCloseTo((w * (L + a) ** 2 * (L - a) ** 2) / (8 * L ** 2), 6);
    expect(found.sagging.at).toBeCloseTo(L - (L / 2) * (1 - (a / L) ** 2), 9);
    expect(found.hogging).toEqual({ at: 0, moment: (w * a ** 2) / 2 });
  });
  it("has the shears w(L²+a²)/2L and wa", () => {
    expect(found.shear).toBeCloseTo((w * (L ** 2 + a ** 2)) / (2 * L), 9);
    expect(found.overhangShear).toBeCloseTo(w * a, 9);
  });
  it("has the tip deflection wa(3a³ + 4a²L − L³)/24EI", () => {
    expect(found.deflectionAt(-a, EI)).toBeCloseTo(
      (w * a * (3 * a ** 3 + 4 * a ** 2 * L - L ** 3)) / (24 * EI),
      12,
    );
  });
  it("and, loaded in the span alone, lifts its tip by wL³a/24EI", () => {
    const span = beam({ span: L, overhang: a, blocks: [{ from: 0, to: L, w }], points: [] });
    expect(span.deflectionAt(-a, EI)).toBeCloseTo((-w * L ** 3 * a) / (24 * EI), 12);
    expect(spanDeflection(span, L, EI)).toBeCloseTo((5 * w * L ** 4) / (384 * EI), 12);
  });
  it("of a plate under rafters bears 140.6 plf by statics where the area rule gives 135 (derived, load-trib-003)", () => {
    const plate = beam({ span: 72, overhang: 18, blocks: [uniform(-18, 72, 30)], points: [] });
    expect(plate.reactions[0]).toBeCloseTo(140.625, 9);
    expect(plate.reactions[1]).toBeCloseTo(84.375, 9);
  });
});

describe("any beam", () => {
  const loads = fc
    .record({
      span: fc.double({ min: 12, max: 400, noNaN: true }),
      share: fc.double({ min: 0, max: 0.5, noNaN: true }),
      blocks: fc.array(fc.tuple(unit(), unit(), fc.double({ min: 0, max: 50, noNaN: true })), {
        maxLength: 4,
      }),
      points: fc.array(fc.tuple(unit(), fc.double({ min: 0, max: 2000, noNaN: true })), { maxLength: 3 }),
    })
    .map(({ span, share, blocks, points }) => {
      const overhang = span * share;
      const at = (u: number) => -overhang + u * (span + overhang);
      return {
        span,
        overhang,
        blocks: blocks.map(([p, q, w]) => ({ from: at(Math.min(p, q)), to: at(Math.max(p, q)), w })),
        points: points.map(([p, load]) => ({ at: at(p), load })),
      };
    });
  it("is in equilibrium, ends without moment, and rests on its supports", () => {
    fc.assert(
      fc.property(loads, (l) => {
        const found = beam(l);
        const total =
          l.blocks.reduce((s, b) => s + b.w * (b.to - b.from), 0) + l.points.reduce((s, p) => s + p.load, 0);
        const scale = 1 + total;
        expect(Math.abs(found.reactions[0] + found.reactions[1] - total) / scale).toBeLessThan(1e-9);
        expect(Math.abs(found.momentAt(l.span)) / (scale * l.span)).toBeLessThan(1e-9);
        expect(Math.abs(found.deflectionAt(0, EI))).toBeLessThan(1e-9 * scale);
        expect(Math.abs(found.deflectionAt(l.span, EI))).toBeLessThan(1e-9 * scale);
      }),
    );
  });
  it("has no moment anywhere beyond the largest ones it reports, and no more shear with load left out", () => {
    fc.assert(
      fc.property(loads, (l) => {
        const found = beam(l);
        for (let i = 0; i <= 50; i++) {
          const M = found.momentAt(-l.overhang + (i / 50) * (l.span + l.overhang));
          expect(M).toBeLessThanOrEqual(found.sagging.moment + 1e-6);
          expect(-M).toBeLessThanOrEqual(found.hogging.moment + 1e-6);
        }
        const inSpan = {
          ...l,
          overhang: 0,
          blocks: l.blocks.filter((b) => b.from >= 0),
          points: l.points.filter((p) => p.at >= 0),
        };
        expect(beam(loadsForShear(inSpan, 8)).shear).toBeLessThanOrEqual(beam(inSpan).shear + 1e-6);
      }),
    );
  });
});

function unit() {
  return fc.double({ min: 0, max: 1, noNaN: true });
}
