/** The deck over a roof, whatever carries it, and the heights that are read off beside it. */
import { describe, expect, test } from "vitest";
import { makeSay } from "../../server/core/checks/speak.ts";
import { buildModel } from "../../server/core/model/build.ts";
import { solidOf } from "../../server/core/model/solid.ts";
import { readFrame } from "../../server/document/read.ts";
import type { Drawing } from "../../server/drawing/drawing.ts";
import { drawElevation } from "../../server/drawing/elevation.ts";
import { viewsOf } from "../../server/drawing/views.ts";
import { each, groupOf, overlapping, textsOf } from "./look.ts";

const say = makeSay("inch");

/** A barn at 9:12, 14 ft wide between outside faces, plates' tops at 112 in, tails of 14 in. */
const barn = (purlins: string, roof = "deck: {kind: boards, thickness: 1 in}"): string => `frame: Barn
format: 1
units: inch
timber:
  frame: {species: eastern-hemlock, grade: no-1, seasoning: green}
grid:
  walls: {A: 0, B: 14 ft}
  bents: {1: 0, 2: 8 ft, 3: 16 ft}
  levels: {pier-top: 8 in, tie-top: 8 ft, eave: 9 ft 4 in}
members:
  post: {kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: pier-top, to: plate}
  plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 3, top: eave, overhang: 12 in}
  tie: {kind: tie, section: 8x10, bents: [1, 2, 3], from: A, to: B, top: tie-top}
  king-post: {kind: king-post, section: 8x8, bents: [1, 2, 3], from: tie, to: ridge}
  ridge: {kind: ridge, section: 8x10, from: 1, to: 3, overhang: 12 in}
  principal: {kind: rafter, section: 6x8, bents: [1, 2, 3], from: plate, to: ridge, overhang: 14 in}
${purlins}roof:
  kind: gable
  pitch: 9:12
  ${roof}
`;
const PURLINS = "  purlin: {kind: purlin, section: 4x6, spacing: 30 in}\n";
const modelOf = (text: string) => buildModel(readFrame(text).frame);

/** Height of the first slope's deck over a place across the bents, its underside and its top. */
function deckAt(drawing: Drawing, y: number): readonly [number, number] {
  const [deck] = groupOf(drawing, "roof").children;
  if (deck?.type !== "poly") throw new Error("no deck");
  const [low, high, highTop, lowTop] = deck.points as [number, number][];
  const on = (a: [number, number], b: [number, number]) =>
    a[1] + ((b[1] - a[1]) * (y - a[0])) / (b[0] - a[0]);
  return [on(low!, high!), on(lowTop!, highTop!)];
}

describe("a deck", () => {
  // plane geometry: the default seat is the largest quarter inch whose cut, seat × 3/5, stays within 8/4 in: 3 1/4 in;
  // over the plate's outside face an 8 in rafter's top is at 112 − 3 1/4 × 3/4 + 8 × 5/4 in
  const overPlate = 112 - 3.25 * 0.75 + 8 * 1.25;

  test("lies on principal rafters where nothing lies on them (derived)", () => {
    const [under, top] = deckAt(drawElevation(modelOf(barn("")), "front", say), 0);
    expect(under).toBeCloseTo(overPlate, 6);
    expect(top - under).toBeCloseTo(1.25, 6);
  });

  test("lies on purlins, their depth above the rafters, square to the slope (derived)", () => {
    const [under] = deckAt(drawElevation(modelOf(barn(PURLINS)), "front", say), 0);
    expect(under).toBeCloseTo(overPlate + 6 * 1.25, 6);
  });

  test("touches the top of every purlin and passes none", () => {
    const model = modelOf(barn(PURLINS));
    const drawing = drawElevation(model, "front", say);
    const purlins = model.timbers.filter((t) => t.kind === "purlin" && t.walls.includes("A"));
    expect(purlins.length).toBeGreaterThan(2);
    for (const purlin of purlins) {
      const over = solidOf(purlin).corners.map(([, y, z]) => z - deckAt(drawing, y)[0]);
      expect(Math.max(...over)).toBeCloseTo(0, 6);
    }
  });

  test.each(["front", "2", "side", "A"])("is drawn in view %s of both roofs", (view) => {
    for (const purlins of ["", PURLINS]) {
      const drawing = drawElevation(modelOf(barn(purlins)), view, say);
      expect(groupOf(drawing, "roof").children.length).toBeGreaterThan(0);
      expect(overlapping(drawing)).toEqual([]);
    }
  });

  test("closes over the ridge and ends over the tails", () => {
    const [deck] = groupOf(drawElevation(modelOf(barn(PURLINS)), "front", say), "roof").children;
    const [low, high] = deck?.type === "poly" ? deck.points : [];
    expect(low?.[0]).toBeCloseTo(-14, 6);
    expect(high?.[0]).toBeCloseTo(84, 6);
  });

  test("from the side reaches from the tails' tops to the peak", () => {
    const lines = groupOf(drawElevation(modelOf(barn("")), "side", say), "roof").children;
    const z = lines.flatMap((line) => (line.type === "line" ? [line.from[1]] : []));
    expect(Math.min(...z)).toBeCloseTo(overPlate - 14 * 0.75, 6);
    expect(Math.max(...z)).toBeCloseTo(overPlate + 84 * 0.75, 6);
  });

  test("that the file does not name is not drawn", () => {
    const drawing = drawElevation(modelOf(barn("", "")), "front", say);
    expect(drawing.elements.filter((element) => element.id === "roof")).toEqual([]);
  });
});

test("principal rafters are whole in the view of their wall, however shallow the roof", () => {
  const model = modelOf(barn("").replace("9:12", "4:12"));
  const principals = drawElevation(model, "A", say).elements.filter((e) => e.id?.startsWith("principal@A"));
  expect(principals.map(({ id }) => id)).toHaveLength(3);
  expect(principals.filter((e) => e.classes?.includes("section"))).toEqual([]);
});

describe("the ridge's level", () => {
  const levels = (text: string, view = "front"): string[] => {
    const model = modelOf(text);
    return textsOf(drawElevation(model, view, say)).map((t) => t.text);
  };
  const ridgeTop = (text: string): number => solidOf(modelOf(text).byId.get("ridge")!).high[2];

  test("is the top of the ridge timber, not of the rafters let into it", () => {
    // rafters in housings of an inch stand 9/12 in proud of the ridge; its own top is where their tops meet its side
    const text = barn("").replace(
      "  principal: {kind: rafter, section: 6x8, bents: [1, 2, 3], from: plate, to: ridge, overhang: 14 in}\n",
      "",
    );
    const housed = text.replace(
      "roof:\n",
      "roof:\n  rafters: {section: 3x8, spacing: 30 in, head: {kind: housed, into: ridge, housing: 1 in}, overhang: {eave: 14 in}}\n",
    );
    const seat = 3.25;
    const top = 112 - seat * 0.75 + 8 * 1.25 + (84 - 4) * 0.75;
    expect(ridgeTop(housed)).toBeCloseTo(top, 6);
    const model = modelOf(housed);
    const heads = Math.max(...model.timbers.map((t) => solidOf(t).high[2]));
    expect(heads - top).toBeCloseTo(0.75, 6);
    const said = levels(housed);
    expect(said).toContain(`ridge ${say.length(top)}`);
    expect(said.filter((words) => words.startsWith("top "))).toEqual([]);
    // from the datum, the same height over all
    expect(said).toContain(say.length(top));
    expect(levels(housed, "A")).toContain(`ridge ${say.length(top)}`);
  });

  test("stands beside the top of purlins that lie well over it", () => {
    const text = barn(PURLINS);
    const highest = Math.max(...modelOf(text).timbers.map((t) => solidOf(t).high[2]));
    expect(levels(text)).toEqual(
      expect.arrayContaining([`ridge ${say.length(ridgeTop(text))}`, `top ${say.length(highest)}`]),
    );
  });

  test("is not said in a view that ends far below it", () => {
    const text = barn(PURLINS).replace("walls: {A: 0, B: 14 ft}", "walls: {A: 0, M: 7 ft, B: 14 ft}");
    const inner = text.replace(
      "  tie:",
      "  girt: {kind: girt, section: 6x6, walls: [M], from: 1, to: 3, top: tie-top}\n  tie:",
    );
    expect(viewsOf(modelOf(inner)).map(({ id }) => id)).toContain("M");
    expect(levels(inner, "M").filter((words) => words.startsWith("ridge"))).toEqual([]);
  });
});

test("a pier that is placed by its own measure is in the view of the bent it stands on", () => {
  const text = barn("").concat(
    "piers:\n  all: {under: post, kind: tube, diameter: 14 in, depth: 48 in}\n  sill: {under: plate, at: [A@8 ft 2 in], kind: tube, diameter: 14 in, depth: 48 in}\n",
  );
  const model = modelOf(text);
  const own = model.piers.find((pier) => pier.id.startsWith("sill"))!;
  const shown = (view: string): boolean =>
    drawElevation(model, view, say).elements.some((element) => element.id === own.id);
  expect(["1", "2", "3"].map(shown)).toEqual([false, true, false]);
});

test("a shed's rafters stand in the views of both walls they lie on", () => {
  const model = modelOf(`frame: Shed
format: 1
units: inch
grid:
  walls: {A: 0, B: 10 ft}
  bents: {1: 0, 2: 8 ft}
  levels: {low: 7 ft, high: 9 ft}
members:
  low: {kind: plate, section: 6x8, walls: [A], top: low}
  high: {kind: plate, section: 6x8, walls: [B], top: high}
roof: {kind: shed, high: B, rafters: {section: 3x6, count: 4, seat: {kind: birds-mouth}, overhang: {eave: 12 in, high: 6 in}}}
`);
  for (const wall of ["A", "B"]) {
    const drawing = drawElevation(model, wall, say);
    const drawn = new Set([...each(drawing.elements)].flatMap((e) => e.id ?? []));
    expect([...drawn].filter((id) => id.startsWith("rafter@")).sort()).toEqual(
      [1, 2, 3, 4].map((n) => `rafter@A.${n}`),
    );
  }
});
