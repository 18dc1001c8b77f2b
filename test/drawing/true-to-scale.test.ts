/** Timbers as they are drawn: their true outlines, what hides what, hollows and pegs. */
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import type { DrawingElement, PolyElement } from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { area } from "../../server/drawing/outline.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { pavilionFrame } from "./hand-model.ts";
import { outlineOf, textsOf } from "./look.ts";
import { parseXml } from "./xml.ts";

const say = makeSay("inch");
const pavilion = buildModel(pavilionFrame());

const widthOf = (poly: PolyElement): number => {
  const x = poly.points.map((p) => p[0]);
  return Math.max(...x) - Math.min(...x);
};

describe("true to scale", () => {
  test("a post is as wide and as high as its section and its end planes say", () => {
    const drawing = drawElevation(pavilion, "front", say);
    const outline = outlineOf(drawing, "post@A3");
    const z = outline.points.map((p) => p[1]);
    expect(widthOf(outline)).toBeCloseTo(8, 9);
    // stand-off 1 in over the pier's top at 8 in, up to the plate's underside at 112 - 9 in
    expect([Math.min(...z), Math.max(...z)]).toEqual([9, 103]);
  });

  test("on paper an inch of wood is an inch times the scale", () => {
    const drawing = drawElevation(pavilion, "side", say);
    const root = parseXml(toSvg(drawing, { standalone: true }));
    const [, , width] = root.attributes.get("viewBox")!.split(" ").map(Number);
    expect(Number.parseFloat(root.attributes.get("width")!) / width!).toBeCloseTo(drawing.scale, 4);
    const note = textsOf(drawing).find((text) => text.text.startsWith("Printed"))!;
    expect(note.text).toBe("Printed at its own size: 1/4 in = 1 ft");
    expect(drawing.scale).toBeCloseTo(1 / 48, 12);
  });

  test("a rafter's outline lacks the triangle of its bird's mouth: seat × heel / 2", () => {
    const seat = pavilion.roof!.slopes[0]!.seat;
    const rafter = pavilion.byId.get("rafter@A.1")!;
    const outline = outlineOf(drawElevation(pavilion, "front", say), rafter.id);
    const whole = (7 / Math.cos(Math.atan(7 / 12))) * widthOf(outline);
    expect(whole - Math.abs(area(outline.points.map(([x, y]) => [x, y])))).toBeCloseTo(
      (seat * seat * 7) / 12 / 2,
      6,
    );
  });

  test("the nearest bent hides the others: it comes last", () => {
    const order = drawElevation(pavilion, "front", say).elements.map((element) => element.id);
    expect(order.indexOf("tie@1")).toBeLessThan(order.indexOf("tie@2"));
    expect(order.indexOf("tie@2")).toBeLessThan(order.indexOf("tie@3"));
    const far = pavilion.joints.find((joint) => joint.of.id === "tie@1" && joint.into.id === "post@A1")!;
    expect(order.indexOf(far.id)).toBeGreaterThan(order.indexOf("post@A1"));
    expect(order.indexOf(far.id)).toBeLessThan(order.indexOf("post@A3"));
    // a plate runs to the eye: the post's head far back in it is not shown through its end, the nearest is
    const head = (bent: string) =>
      order.indexOf(pavilion.joints.find((joint) => joint.of.id === `post@A${bent}`)!.id);
    expect(head("1")).toBeLessThan(order.indexOf("plate@A"));
    expect(head("3")).toBeGreaterThan(order.indexOf("plate@A"));
  });
});

test.each([2, 7, 18])(
  "seen from the side at %s:12, near rafters pass before their plate and far ones behind theirs",
  (rise) => {
    const frame = pavilionFrame();
    const model = buildModel({ ...frame, roof: { ...frame.roof!, pitch: { rise, run: 12 } } });
    const order = drawElevation(model, "side", say).elements.map((element) => element.id);
    expect(order.indexOf("rafter@A.5")).toBeGreaterThan(order.indexOf("plate@A"));
    expect(order.indexOf("rafter@B.5")).toBeLessThan(order.indexOf("plate@B"));
    expect(order.indexOf("rafter@B.5")).toBeGreaterThan(-1);
  },
);

describe("a curved brace", () => {
  const knee = pavilion.byId.get("knee@A2-A3")!;
  const outline = outlineOf(drawElevation(pavilion, "side", say), knee.id);
  const index = outline.points.findIndex((p) => p[2] !== undefined);
  const from = outline.points[index]!;
  const to = outline.points[(index + 1) % outline.points.length]!;
  const chord = Math.hypot(to[0] - from[0], to[1] - from[1]);

  test("has an arc whose mid-ordinate is its rise and whose radius is its radius", () => {
    const bulge = Math.abs(from[2]!);
    const rise = (bulge * chord) / 2;
    expect(rise).toBeCloseTo(knee.curve!.rise, 9);
    expect((chord * (1 + bulge * bulge)) / (4 * bulge)).toBeCloseTo(100, 6);
  });

  test("is hollowed on the edge away from its corner, into the wood", () => {
    // knee@A2-A3 stands at bent 2 under the plate: the corner lies up and to the left of it
    const middle = outline.points.reduce((sum, p) => [sum[0] + p[0] / 4, sum[1] + p[1] / 4] as const, [
      0, 0,
    ] as readonly [number, number]);
    const edge = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] as const;
    expect(edge[0]).toBeGreaterThan(middle[0]);
    expect(edge[1]).toBeLessThan(middle[1]);
    // counter-clockwise turn (positive) swells to the right of the way; into the wood is where the middle lies
    const side = (to[0] - from[0]) * (middle[1] - from[1]) - (to[1] - from[1]) * (middle[0] - from[0]);
    expect(Math.sign(from[2]!)).toBe(side > 0 ? -1 : 1);
  });
});

describe("a peg", () => {
  const pegsOf = (view: string, id: string): DrawingElement[] => {
    const group = drawElevation(pavilion, view, say).elements.find((element) => element.id === id);
    return group?.type === "group" ? group.children.filter((child) => child.classes?.includes("peg")) : [];
  };
  test("is a circle of its diameter from its end and two dashed lines from its side", () => {
    const round = pegsOf("side", "post-head@A2");
    expect(round.map((peg) => (peg.type === "circle" ? peg.radius : undefined))).toEqual([0.375, 0.375]);
    const long = pegsOf("front", "post-head@A2");
    expect(long).toHaveLength(4);
    expect(long.every((line) => line.type === "line" && line.classes?.includes("dashed"))).toBe(true);
  });
});
