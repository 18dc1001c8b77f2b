/** Forces over an elevation: read off the drawing as a person does, and held against what can be told by hand. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import {
  boxOf,
  type Drawing,
  type DrawingElement,
  elementBox,
  type PolyElement,
  type TextElement,
} from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import type { DrawnForces } from "../../server/drawing/forces-basis.ts";
import { caseIds, casesOf, type ForceLayer, type Overlay } from "../../server/drawing/forces-cases.ts";
import { roundBelow } from "../../server/drawing/forces-words.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { createFrameService, type FrameService } from "../../server/language/frame-service.ts";
import { SHED_IN_SNOW } from "../shed.ts";
import { overlapping } from "./look.ts";
import { drawOne, E, type OneTimber } from "./one-timber.ts";
import { parseXml } from "./xml.ts";

const LAYERS: readonly ForceLayer[] = ["axial", "shear", "moment", "deflected"];

const all = (elements: readonly DrawingElement[]): DrawingElement[] =>
  elements.flatMap((element) => (element.type === "group" ? [element, ...all(element.children)] : [element]));
const has = (element: DrawingElement, name: string): boolean => element.classes?.includes(name) ?? false;
const polys = (elements: readonly DrawingElement[], sign: string): PolyElement[] =>
  all(elements).flatMap((e) => (e.type === "poly" && e.closed && has(e, sign) ? [e] : []));
const textsIn = (elements: readonly DrawingElement[]): TextElement[] =>
  all(elements).flatMap((e) => (e.type === "text" ? [e] : []));
const values = ({ elements }: DrawnForces): string[] => textsIn(elements).map(({ text }) => text);
const words = ({ legend }: DrawnForces): string => legend.map(({ text }) => text).join("\n");

/** What one inch on the drawing stands for: lb, or lb·ft. */
function scaleOf({ legend }: DrawnForces): number {
  const row = legend.find(({ sample }) => typeof sample === "number");
  const amount = Number(/[\d,.]+/.exec(row?.text ?? "")?.[0].replaceAll(",", ""));
  return amount / (row?.sample as number);
}

/** How far the shapes of a sign reach from a level center line at 0, up positive, where the drawing has x. */
function reachAt(drawn: DrawnForces, sign: string, x: number): number {
  for (const { points } of polys(drawn.elements, sign)) {
    const here = points.filter((p) => Math.abs(p[0] - x) < 1e-6).map((p) => p[1]);
    if (here.length > 0) return here.reduce((far, y) => (Math.abs(y) > Math.abs(far) ? y : far), 0);
  }
  return Number.NaN;
}

const L = 160;
const w = 5;
const PINS = [
  { node: 0, fixed: { ux: 0, uy: 0, uz: 0, ry: 0 } },
  { node: 1, fixed: { ux: 0, uz: 0 } },
];
const BEAM: OneTimber = {
  foot: [0, 0, 0],
  axis: [0, 1, 0],
  depthDir: [0, 0, 1],
  length: L,
  width: 6,
  depth: 10,
  supports: PINS,
  spread: [0, 0, -w],
};
/** The same beam, drawn from the other end, and turned on its side. */
const TURNED: readonly (readonly [string, OneTimber])[] = [
  ["from left to right", BEAM],
  ["from right to left", { ...BEAM, foot: [0, L, 0], axis: [0, -1, 0] }],
  ["upside down", { ...BEAM, depthDir: [0, 0, -1] }],
  ["on its side", { ...BEAM, depthDir: [1, 0, 0] }],
];

describe.each(TURNED)("a beam on two supports under a uniform load, %s", (_, beam) => {
  test("moment: w x (L − x) / 2 below the line, w L² / 8 at the middle (published: any handbook of statics)", () => {
    const drawn = drawOne(beam, "moment");
    const scale = scaleOf(drawn);
    for (const share of [0.125, 0.25, 0.5, 0.75]) {
      const x = share * L;
      expect(-reachAt(drawn, "positive", x) * scale).toBeCloseTo((w * x * (L - x)) / 2 / 12, 6);
    }
    expect(-reachAt(drawn, "positive", L / 2) * scale * 12).toBeCloseTo((w * L * L) / 8, 6);
    expect(polys(drawn.elements, "negative")).toEqual([]);
    expect(values(drawn)).toEqual(["+1,333 lb·ft"]);
  });

  test("shear: w L / 2 up at the left, down at the right (published: any handbook of statics)", () => {
    const drawn = drawOne(beam, "shear");
    const scale = scaleOf(drawn);
    expect(reachAt(drawn, "positive", 0) * scale).toBeCloseTo((w * L) / 2, 6);
    expect(reachAt(drawn, "negative", L) * scale).toBeCloseTo((-w * L) / 2, 6);
    expect(values(drawn).sort()).toEqual(["+400 lb", "−400 lb"]);
  });

  test("deflected: 5 w L⁴ / 384 E I at the middle, so many times as the legend says (published: AWC DA-6, figure 1; memory)", () => {
    const drawn = drawOne(beam, "deflected");
    const factor = Number(/drawn ([\d,.]+) times/.exec(words(drawn))?.[1]?.replaceAll(",", ""));
    const line = all(drawn.elements).find((e) => e.type === "poly") as PolyElement;
    const box = boxOf(line.points);
    const deep = beam.depthDir[2] === 0 ? (10 * 6 ** 3) / 12 : (6 * 10 ** 3) / 12;
    expect((box?.top ?? 0) / factor).toBeCloseTo(0, 9);
    expect(-(box?.bottom ?? 0) / factor).toBeCloseTo((5 * w * L ** 4) / (384 * E * deep), 6);
    expect([box?.left, box?.right]).toEqual([expect.closeTo(0, 6), expect.closeTo(L, 6)]);
  });
});

describe("a post fixed at its foot", () => {
  const post: OneTimber = {
    ...BEAM,
    axis: [0, 0, 1],
    depthDir: [0, 1, 0],
    supports: [{ node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } }],
    spread: [0, 0, 0],
    tip: [0, 100, 0],
  };

  test("pushed to the right at its head: tension at the left, drawn there, P h at the foot (published: statics)", () => {
    const drawn = drawOne(post, "moment");
    const [shape] = polys(drawn.elements, "negative");
    const left = Math.min(...(shape?.points ?? []).map((p) => p[0]));
    expect(-left * scaleOf(drawn) * 12).toBeCloseTo(100 * L, 6);
    expect(polys(drawn.elements, "positive")).toEqual([]);
    expect(values(drawn)).toEqual(["−1,333 lb·ft"]);
  });

  test("pushed to the right at its head: shear turns it clockwise, as seen", () => {
    expect(values(drawOne(post, "shear"))).toEqual(["+100 lb"]);
  });

  test.each([
    ["pressed", -300, "negative", "−300 lb"],
    ["pulled", 300, "positive", "+300 lb"],
  ])("%s: sign, pattern and width of its axial force (published: statics)", (_, force, sign, text) => {
    const drawn = drawOne({ ...post, tip: [0, 0, force] }, "axial");
    const [shape] = polys(drawn.elements, sign);
    const box = shape && elementBox(shape);
    expect(((box?.right ?? 0) - (box?.left ?? 0)) * scaleOf(drawn)).toBeCloseTo(300, 6);
    expect(values(drawn)).toEqual([text]);
    const hatched = all(drawn.elements).filter((e) => has(e, "strokes"));
    expect(hatched.map((e) => e.classes)).toEqual([["strokes", sign]]);
  });

  test("without load it carries nothing, and the legend says so", () => {
    const drawn = drawOne({ ...post, tip: [0, 0, 0] }, "axial");
    expect(drawn.elements).toEqual([]);
    expect(words(drawn)).toContain("No timber in this plane carries any.");
  });
});

test("a timber that runs out of the plane is left out, with a word", () => {
  const drawn = drawOne(
    {
      ...BEAM,
      axis: [1, 0, 0],
      supports: [{ node: 0, fixed: { ux: 0, uy: 0, uz: 0, rx: 0, ry: 0, rz: 0 } }],
    },
    "moment",
  );
  expect(drawn.elements).toEqual([]);
  expect(words(drawn)).toContain("out of this plane");
});

test("a mechanism: nothing but words, in every layer", () => {
  const hinge = { ...BEAM, supports: [{ node: 0, fixed: { ux: 0, uy: 0, uz: 0 } }] };
  for (const layer of LAYERS) {
    const drawn = drawOne(hinge, layer);
    expect(drawn.elements).toEqual([]);
    expect(words(drawn)).toContain("Nothing is drawn: the frame moves without resistance at beam.");
  }
});

test("scales are 1, 2 or 5 times a power of ten", () => {
  expect([0.03, 1, 1.99, 4.9, 5, 73, 1000, 99_999].map(roundBelow)).toEqual([
    0.02, 1, 1, 2, 5, 50, 1000, 50_000,
  ]);
  expect([0, Number.NaN, -3, Infinity].map(roundBelow)).toEqual([1, 1, 1, 1]);
});

const folder = new URL("../../samples/", import.meta.url);
const samples = readdirSync(folder).filter((name) => name.endsWith(".frame.yaml"));

function drawableOf(text: string): NonNullable<ReturnType<FrameService["drawable"]>> {
  const service = createFrameService();
  service.open("file:///f.frame.yaml", 1, text);
  const found = service.drawable("file:///f.frame.yaml");
  if (!found) throw new Error("nothing to draw");
  return found;
}

function problems(drawing: Drawing): string[] {
  const crossed = overlapping(drawing);
  const { left, right, bottom, top } = drawing.viewBox;
  const outside = drawing.elements.flatMap((element) => {
    const box = elementBox(element);
    const inside = !box || (box.left >= left && box.right <= right && box.bottom >= bottom && box.top <= top);
    return inside ? [] : [JSON.stringify(element).slice(0, 200)];
  });
  return [...crossed, ...outside];
}

describe.each(samples)("%s", (name) => {
  const { model, results, say } = drawableOf(readFileSync(new URL(name, folder), "utf8"));
  const views = viewsOf(model, say).map((view) => view.id);

  test.each(LAYERS)("%s, in every view: sound, texts apart, a legend, and ways back to the file", (layer) => {
    for (const view of views)
      for (const caseId of ["worst", ""]) {
        const overlay: Overlay = { layer, caseId, frame: results.frame };
        const drawing = drawElevation(model, view, say, overlay);
        const svg = toSvg(drawing, { standalone: true });
        expect(svg).not.toMatch(/NaN|Infinity|undefined/);
        expect(() => parseXml(svg)).not.toThrow();
        expect(problems(drawing), `${view} ${caseId}`).toEqual([]);
        expect(drawing.elements.filter((e) => has(e, "legend"))).toHaveLength(1);
        for (const force of drawing.elements.filter((e) => has(e, "force"))) {
          const timber = model.byId.get(force.id ?? "");
          expect(force.path).toBe(timber?.path);
          expect(
            Math.abs(
              timber?.axis[view === "side" || model.frame.grid.walls.some((l) => l.id === view) ? 1 : 0] ?? 1,
            ),
          ).toBeLessThan(0.31);
        }
      }
  });
});

describe("combinations", () => {
  const { model, results, say } = drawableOf(
    readFileSync(new URL("cider-press-pavilion.frame.yaml", folder), "utf8"),
  );
  const frame = results.frame;
  const legendOf = (overlay: Overlay, view = "2"): string => {
    const drawing = drawElevation(model, view, say, overlay);
    return textsIn(drawing.elements.filter((e) => has(e, "legend")))
      .map(({ text }) => text)
      .join("\n");
  };

  test("dead load with balanced snow where none is asked for; a shape is never of several", () => {
    expect(legendOf({ layer: "moment", caseId: "", frame })).toContain("Moment: D + S (balanced snow)");
    expect(legendOf({ layer: "deflected", caseId: "worst", frame })).toContain(
      "Deflected shape: D + S (balanced snow)",
    );
    expect(legendOf({ layer: "shear", caseId: "worst", frame })).toContain(
      "each timber under the combination that gives it the most",
    );
  });

  test("the short list: worst, then those that govern, each once; no worst for a shape", () => {
    const overlay: Overlay = { layer: "moment", caseId: "", frame };
    const ids = casesOf(overlay, say).map(({ id }) => id);
    const known = caseIds(overlay);
    const top = [...(frame?.members.values() ?? [])]
      .flatMap(({ uses }) => uses[0] ?? [])
      .reduce((a, b) => (b.ratio > a.ratio ? b : a));
    expect(ids.slice(0, 2)).toEqual(["worst", top.caseId]);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeLessThan(known.length);
    expect(known).toEqual(expect.arrayContaining(ids));
    expect(casesOf({ ...overlay, layer: "deflected" }, say).map(({ id }) => id)).not.toContain("worst");
  });

  test("the worst of a timber is the most that any combination gives it", () => {
    const most = (caseId: string): Map<string, number> => {
      const drawing = drawElevation(model, "2", say, { layer: "moment", caseId, frame });
      return new Map(
        drawing.elements
          .filter((e) => has(e, "force"))
          .map((e) => {
            const figures = [...(e.title ?? "").matchAll(/([\d,]+) lb·ft/g)].map((m) =>
              Number(m[1]?.replaceAll(",", "")),
            );
            return [e.id ?? "", Math.max(...figures)];
          }),
      );
    };
    const worst = most("worst");
    const single = caseIds({ layer: "moment", caseId: "", frame })
      .filter((id) => id !== "worst")
      .map(most);
    expect(worst.size).toBeGreaterThan(4);
    for (const [id, value] of worst)
      expect(value, id).toBe(Math.max(...single.map((one) => one.get(id) ?? 0)));
  });

  test("braces that let go under a combination are dashed, and the legend says so", () => {
    const slack = frame?.solution.cases.find(({ combined }) =>
      combined.dropped.some((id) => id.startsWith("tie-knee@2") || id.startsWith("tie-knee@A2")),
    );
    expect(slack).toBeDefined();
    const overlay: Overlay = { layer: "axial", caseId: slack?.frameCase.id ?? "", frame };
    const lines = drawElevation(model, "2", say, overlay).elements.filter((e) => has(e, "slack"));
    expect(lines.length).toBeGreaterThan(0);
    expect(legendOf(overlay)).toContain("slack under this combination");
  });
});

test("a frame without an answer says so in its drawing; one that cannot be analysed yet says that", () => {
  // rafters that lean on no ridge
  const loose = drawableOf(`${SHED_IN_SNOW}roof:
  kind: gable
  pitch: 8:12
  rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, rake: 8 in}}
`);
  for (const layer of LAYERS) {
    const drawing = drawElevation(loose.model, "front", loose.say, {
      layer,
      caseId: "",
      frame: loose.results.frame,
    });
    expect(drawing.elements.filter((e) => has(e, "force"))).toEqual([]);
    expect(
      textsIn(drawing.elements)
        .map(({ text }) => text)
        .join(" "),
    ).toContain("Nothing is drawn: the frame moves without resistance at");
    const waiting = drawElevation(loose.model, "front", loose.say, {
      layer,
      caseId: "worst",
      frame: undefined,
    });
    expect(
      textsIn(waiting.elements)
        .map(({ text }) => text)
        .join(" "),
    ).toContain("cannot be read or placed yet");
  }
});

test("quick enough to follow typing: a layer costs little beside the elevation itself", () => {
  const { model, results, say } = drawableOf(
    readFileSync(new URL("cider-press-pavilion.frame.yaml", folder), "utf8"),
  );
  const overlay: Overlay = { layer: "moment", caseId: "worst", frame: results.frame };
  const draw = (over?: Overlay): number => {
    const start = performance.now();
    toSvg(drawElevation(model, "side", say, over), { standalone: false });
    return performance.now() - start;
  };
  const least = (over?: Overlay): number => Math.min(...Array.from({ length: 25 }, () => draw(over)));
  least();
  const [bare, full] = [least(), least(overlay)];
  expect(full).toBeLessThan(4 * bare + 5);
});
