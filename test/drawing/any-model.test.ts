/** Whatever the model, there is a drawing: nothing in it, a single stick, numbers that are none. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import type { Model, Timber } from "../../server/core/model/model.ts";
import type { Vec3 } from "../../server/core/model/vec.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { emptyFrame, gridLines, inch, modelOf, post } from "./hand-model.ts";
import { overlapping } from "./look.ts";
import { parseXml } from "./xml.ts";

const say = makeSay("inch");

describe("whatever the model", () => {
  const drawn = (model: Model): string[] =>
    viewsOf(model).map((view) => {
      const drawing = drawElevation(model, view.id, say);
      const svg = toSvg(drawing, { standalone: true });
      expect(svg).not.toMatch(/NaN|Infinity|undefined/);
      expect(() => parseXml(svg)).not.toThrow();
      expect(overlapping(drawing)).toEqual([]);
      const { left, right, bottom, top } = drawing.viewBox;
      expect(right).toBeGreaterThan(left);
      expect(top).toBeGreaterThan(bottom);
      return svg;
    });

  test("no timber: says so and still shows the grid", () => {
    const [front] = drawn(modelOf([]));
    expect(front).toContain("No timber to draw here yet");
    expect(front).toContain('data-id="A"');
  });
  test("no grid either", () => {
    drawn(modelOf([], emptyFrame({ grid: { path: "", walls: [], bents: [], levels: [] } })));
  });
  test("one timber", () => {
    expect(drawn(modelOf([post()]))[0]).toContain('data-id="post@A1"');
  });
  test("a timber without length or without thickness", () => {
    drawn(modelOf([post({ span: 0, head: { point: [4, 4, 0], normal: [0, 0, 1] } })]));
    drawn(modelOf([post({ width: 0, depth: 0 })]));
    drawn(modelOf([post({ width: 0, depth: 0, span: 0, head: { point: [4, 4, 0], normal: [0, 0, 1] } })]));
  });
  test("three timbers that hide each other in a ring", () => {
    const bar = (id: string, origin: Vec3, to: Vec3): Timber => {
      const span = Math.hypot(to[0] - origin[0], to[1] - origin[1], to[2] - origin[2]);
      const axis: Vec3 = [(to[0] - origin[0]) / span, (to[1] - origin[1]) / span, (to[2] - origin[2]) / span];
      const level = Math.hypot(axis[1], axis[2]);
      const depthDir: Vec3 = [0, -axis[2] / level, axis[1] / level];
      const widthDir: Vec3 = [
        depthDir[1] * axis[2] - depthDir[2] * axis[1],
        depthDir[2] * axis[0] - depthDir[0] * axis[2],
        depthDir[0] * axis[1] - depthDir[1] * axis[0],
      ];
      return post({
        id,
        origin,
        axis,
        widthDir,
        depthDir,
        width: 2,
        depth: 2,
        span,
        foot: { point: origin, normal: [-axis[0], -axis[1], -axis[2]] },
        head: { point: to, normal: axis },
      });
    };
    const ring = [
      bar("a", [20, 0, 0], [-20, 60, 0.1]),
      bar("b", [20, 60, -10], [-20, 20, 50]),
      bar("c", [20, 30, 60], [-20, 10, -20]),
    ];
    expect(drawn(modelOf(ring))[0]).toContain('data-id="c"');
  });
  test("numbers that are none, or beyond all measure, are left out", () => {
    const odd = fc.constantFrom(0, 1, -5, 8, 96, 1e-9, 1e6, 1e9, 1e300, Number.NaN, Number.POSITIVE_INFINITY);
    const vector = fc.tuple(odd, odd, odd);
    fc.assert(
      fc.property(
        odd,
        odd,
        odd,
        vector,
        vector,
        vector,
        vector,
        odd,
        (width, depth, span, origin, axis, point, normal, rise) => {
          drawn(
            modelOf([
              post(),
              post({
                id: "odd",
                width,
                depth,
                span,
                origin,
                axis,
                foot: { point, normal },
                curve: { side: 1, radius: span, rise, chord: span },
              }),
            ]),
          );
        },
      ),
      { numRuns: 150 },
    );
  });
  test("names with letters of any kind", () => {
    const frame = emptyFrame({
      name: `<&"'> 木`,
      grid: {
        path: "",
        walls: gridLines("walls", { "<A>": 0, "&": 100 }),
        bents: gridLines("bents", { '"': 0, front: 100 }),
        levels: [{ id: "]]>", path: "", height: inch(40) }],
      },
    });
    drawn(modelOf([post({ id: `<x>&@"` })], frame));
    const ids = viewsOf(modelOf([], frame)).map((view) => view.id);
    expect(ids).toEqual(["front", "side", '"', "<A>", "&"]);
  });
});
