import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import type { Model, Timber } from "../../server/core/model/model.ts";
import type { Vec3 } from "../../server/core/model/vec.ts";
import {
  type Box,
  type Drawing,
  type DrawingElement,
  type PolyElement,
  type TextElement,
  textBox,
} from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { area } from "../../server/drawing/outline.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import {
  emptyFrame,
  gridLines,
  inch,
  member,
  modelOf,
  pavilionFrame,
  place,
  post,
  ref,
  section,
} from "./hand-model.ts";
import { hasClass, parseXml, walk, withId } from "./xml.ts";

const say = makeSay("inch");
const pavilion = buildModel(pavilionFrame());
const views = viewsOf(pavilion).map((view) => view.id);

function* each(elements: readonly DrawingElement[]): Generator<DrawingElement> {
  for (const element of elements) {
    yield element;
    if (element.type === "group") yield* each(element.children);
  }
}

const textsOf = (drawing: Drawing): TextElement[] =>
  [...each(drawing.elements)].filter((element) => element.type === "text");

function overlapping(drawing: Drawing): string[] {
  const texts = textsOf(drawing);
  const apart = (a: Box, b: Box) =>
    a.left >= b.right || b.left >= a.right || a.bottom >= b.top || b.bottom >= a.top;
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => (apart(textBox(a), textBox(b)) ? [] : [`${a.text} over ${b.text}`])),
  );
}

const outlineOf = (drawing: Drawing, id: string): PolyElement => {
  const group = drawing.elements.find((element) => element.id === id);
  if (group?.type !== "group" || group.children[0]?.type !== "poly") throw new Error(`no outline of ${id}`);
  return group.children[0];
};
const widthOf = (poly: PolyElement): number => {
  const x = poly.points.map((p) => p[0]);
  return Math.max(...x) - Math.min(...x);
};

test("a frame has a front, a side, and a view of each bent and each wall, in the order of the grid", () => {
  expect(viewsOf(pavilion)).toEqual([
    { id: "front", title: "Front, seen from bent 3 toward bent 1" },
    { id: "side", title: "Side, seen from outside wall A" },
    { id: "1", title: "Bent 1, seen from the side of bent 3" },
    { id: "2", title: "Bent 2, seen from the side of bent 3" },
    { id: "3", title: "Bent 3, seen from outside" },
    { id: "A", title: "Wall A, seen from outside" },
    { id: "B", title: "Wall B, seen from the side of wall A" },
  ]);
  const nothing = emptyFrame({ grid: { path: "", walls: [], bents: [], levels: [] } });
  expect(viewsOf(buildModel(nothing)).map((view) => view.id)).toEqual(["front", "side"]);
});

test("a view that the frame does not have gives the front", () => {
  expect(drawElevation(pavilion, "Z", say)).toEqual(drawElevation(pavilion, "front", say));
});

describe.each(views)("the pavilion, view %s", (view) => {
  const drawing = drawElevation(pavilion, view, say);
  const svg = toSvg(drawing, { standalone: false });
  const root = parseXml(svg);

  test("is well-formed, without a number that is none", () => {
    expect(svg).not.toMatch(/NaN|Infinity|undefined|e[+-]\d/);
    expect(svg).not.toMatch(/\d\.\d{4,}/);
    expect(() => parseXml(toSvg(drawing, { standalone: true }))).not.toThrow();
  });

  test("shows nothing twice, and everything with its path and title", () => {
    const carrying = [...walk(root)].filter((node) => node.attributes.has("data-id"));
    const ids = carrying.map((node) => node.attributes.get("data-id"));
    expect(new Set(ids).size).toBe(ids.length);
    for (const node of carrying) {
      expect(node.children[0]?.name).toBe("title");
      expect(node.attributes.get("aria-label")).toBe(node.children[0]?.text);
    }
    for (const timber of carrying.filter((node) => hasClass(node, "timber"))) {
      const model = pavilion.byId.get(timber.attributes.get("data-id")!)!;
      expect(timber.attributes.get("data-path")).toBe(model.path);
    }
  });

  test("no text lies over another, and all of them inside the sheet", () => {
    expect(overlapping(drawing)).toEqual([]);
    for (const text of textsOf(drawing)) {
      const box = textBox(text);
      expect(box.left).toBeGreaterThanOrEqual(drawing.viewBox.left);
      expect(box.right).toBeLessThanOrEqual(drawing.viewBox.right);
      expect(box.bottom).toBeGreaterThanOrEqual(drawing.viewBox.bottom);
      expect(box.top).toBeLessThanOrEqual(drawing.viewBox.top);
    }
  });

  test("is the same every time", () => {
    expect(toSvg(drawElevation(buildModel(pavilionFrame()), view, say), { standalone: false })).toBe(svg);
  });
});

test.each(["front", "side"])("view %s shows every timber and every joint once", (view) => {
  const root = parseXml(toSvg(drawElevation(pavilion, view, say), { standalone: false }));
  for (const timber of pavilion.timbers) expect(withId(root, timber.id), timber.id).toHaveLength(1);
  for (const joint of pavilion.joints) expect(withId(root, joint.id), joint.id).toHaveLength(1);
  for (const pier of pavilion.piers) expect(withId(root, pier.id), pier.id).toHaveLength(1);
});

test("a bent shows its own timbers, one rafter of each slope, and plates and ridge cut", () => {
  const drawing = drawElevation(pavilion, "2", say);
  const timbers = drawing.elements.filter((element) => element.classes?.includes("timber"));
  const cut = timbers.filter((element) => element.classes?.includes("section")).map((element) => element.id);
  expect(cut.sort()).toEqual(["plate@A", "plate@B", "ridge"]);
  const whole = timbers.map((element) => element.id).filter((id) => !cut.includes(id));
  expect(whole.filter((id) => !id?.startsWith("rafter")).sort()).toEqual(
    ["king-post@2", "post@A2", "post@B2", "tie-knee@A2-B2", "tie-knee@B2-A2", "tie@2"].sort(),
  );
  expect(whole.filter((id) => id?.startsWith("rafter")).sort()).toEqual(["rafter@A.5", "rafter@B.5"]);
  const hatching = [...each(drawing.elements)].filter((element) => element.classes?.includes("hatch"));
  expect(hatching.length).toBeGreaterThan(6);
});

test("a wall shows the timbers of that wall only", () => {
  const drawing = drawElevation(pavilion, "A", say);
  const ids = drawing.elements
    .filter((element) => element.classes?.includes("timber"))
    .map((element) => element.id);
  expect(ids).toContain("plate@A");
  expect(ids).toContain("knee@A2-A3");
  expect(ids.filter((id) => /^(post|plate|knee)@B/.test(id ?? ""))).toEqual([]);
});

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

describe("dimensions", () => {
  const words = (view: string, model = pavilion, speak = say) =>
    textsOf(drawElevation(model, view, speak)).map((text) => text.text);
  test("the front gives wall spacing, width over all, levels, heights and pitch", () => {
    expect(words("front")).toEqual(
      expect.arrayContaining([
        "13'-0\"",
        "16'-0\"",
        "eave 9'-4\"",
        "pier-top 8 in",
        "18 in",
        "7'-2\"",
        "12",
        "7",
      ]),
    );
  });
  test("the side gives bent spacing and the length from the first bent to the last", () => {
    expect(words("side").filter((text) => text === "9'-0\"")).toHaveLength(2);
    expect(words("side")).toContain("18'-0\"");
  });
  test("in a metric file they are millimetres", () => {
    const metric = words("front", pavilion, makeSay("mm"));
    expect(metric).toContain("3962 mm");
    expect(metric.some((text) => /'|\bin\b/.test(text))).toBe(false);
  });
  test("grid lines and levels lead to their lines in the file", () => {
    const root = parseXml(toSvg(drawElevation(pavilion, "front", say), { standalone: false }));
    expect(withId(root, "B")[0]!.attributes.get("data-path")).toBe("/grid/walls/B");
    expect(withId(root, "eave")[0]!.attributes.get("data-path")).toBe("/grid/levels/eave");
    expect(withId(root, "ground")[0]!.attributes.get("data-path")).toBe("/site/ground");
  });
  test("crowded lines and levels keep their texts apart", () => {
    const numbers = Array.from({ length: 24 }, (_, i) => i);
    const crowded = buildModel(
      emptyFrame({
        grid: {
          path: "/grid",
          walls: gridLines("walls", { A: 0, AA: 2, BBBB: 3, C: 120 }),
          bents: gridLines(
            "bents",
            Object.fromEntries(numbers.map((n) => [String(n + 1), n * (n % 3 === 0 ? 30 : 31)])),
          ),
          levels: [...numbers, 96].map((n) => ({ id: `level-${n}`, path: "", height: inch(n) })),
        },
        members: [
          member("post", "post", {
            section: section(8, 8),
            at: [place("A1"), place("C9")],
            from: ref("level-0"),
            to: ref("level-96"),
          }),
        ],
      }),
    );
    expect(crowded.timbers).toHaveLength(2);
    for (const { id } of viewsOf(crowded))
      expect(overlapping(drawElevation(crowded, id, say)), id).toEqual([]);
    // numbers may give way, names may not
    expect(words("front", crowded)).toEqual(
      expect.arrayContaining(["A", "AA", "BBBB", "C", ...numbers.map((n) => `level-${n} ${say.length(n)}`)]),
    );
    expect(words("side", crowded)).toEqual(expect.arrayContaining(numbers.map((n) => String(n + 1))));
  });
});

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
