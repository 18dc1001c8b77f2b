import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { panBy, visible, wholeIn, zoomAt } from "../../client/preview/viewport.ts";

const side = fc.double({ min: 1, max: 2000, noNaN: true });
const coordinate = fc.double({ min: -2000, max: 2000, noNaN: true });
const size = fc.record({ width: side, height: side });
const box = fc.record({ x: coordinate, y: coordinate, width: side, height: side });
const factor = fc.double({ min: 0.1, max: 10, noNaN: true });

describe("the preview viewport", () => {
  it("shows the whole drawing, centered", () => {
    fc.assert(
      fc.property(box, size, (drawing, page) => {
        const seen = visible(wholeIn(drawing, page), page);
        expect(seen.width).toBeGreaterThanOrEqual(drawing.width);
        expect(seen.height).toBeGreaterThanOrEqual(drawing.height);
        expect(seen.x + seen.width / 2).toBeCloseTo(drawing.x + drawing.width / 2, 6);
        expect(seen.y + seen.height / 2).toBeCloseTo(drawing.y + drawing.height / 2, 6);
      }),
    );
  });

  it("keeps what is under the pointer there while zooming", () => {
    const drawing = { x: 0, y: 0, width: 100, height: 50 };
    const page = { width: 800, height: 600 };
    const at = { x: 300, y: 250 };
    const before = wholeIn(drawing, page);
    const after = zoomAt(before, 2, at, drawing, page);
    const under = (place: typeof before) => {
      const seen = visible(place, page);
      return [seen.x + at.x / place.scale, seen.y + at.y / place.scale];
    };
    expect(after.scale).toBeCloseTo(before.scale * 2, 9);
    expect(under(after)[0]).toBeCloseTo(under(before)[0] ?? Number.NaN, 9);
    expect(under(after)[1]).toBeCloseTo(under(before)[1] ?? Number.NaN, 9);
  });

  it("never loses the drawing, however it is moved and zoomed", () => {
    const step = fc.oneof(
      fc.record({ kind: fc.constant("zoom" as const), factor, x: coordinate, y: coordinate }),
      fc.record({ kind: fc.constant("pan" as const), x: coordinate, y: coordinate }),
    );
    fc.assert(
      fc.property(box, size, fc.array(step, { maxLength: 30 }), (drawing, page, steps) => {
        let place = wholeIn(drawing, page);
        const whole = place.scale;
        for (const one of steps) {
          place =
            one.kind === "zoom"
              ? zoomAt(place, one.factor, one, drawing, page)
              : panBy(place, one.x, one.y, drawing);
        }
        expect(place.x).toBeGreaterThanOrEqual(drawing.x);
        expect(place.x).toBeLessThanOrEqual(drawing.x + drawing.width);
        expect(place.y).toBeGreaterThanOrEqual(drawing.y);
        expect(place.y).toBeLessThanOrEqual(drawing.y + drawing.height);
        expect(place.scale / whole).toBeGreaterThan(0.24);
        expect(place.scale / whole).toBeLessThan(61);
      }),
    );
  });

  it("moves with the hand: 10 px to the right shows what was 10 px to the left", () => {
    const drawing = { x: 0, y: 0, width: 100, height: 100 };
    const moved = panBy({ x: 50, y: 50, scale: 2 }, 10, -4, drawing);
    expect(moved).toEqual({ x: 45, y: 52, scale: 2 });
  });
});
