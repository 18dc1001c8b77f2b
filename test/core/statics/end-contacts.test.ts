/** How ends hang: beside a contact, under the lap of a corner, on a ridge that nothing but rafters carries (derived: statics). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { evaluate } from "../../../server/core/evaluate.ts";
import { skeletonOf } from "../../../server/core/statics/skeleton.ts";
import { readFrame } from "../../../server/document/read.ts";

const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const PURLINS = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");

function frameOf(text: string) {
  const { frame, source } = readFrame(text);
  const { results, findings } = evaluate(frame, source);
  if (!results.frame) throw new Error("no analysis");
  return { ...results.frame, errors: findings.filter((f) => f.level === "error").map((f) => f.check) };
}

const failed = (text: string): number => frameOf(text).solution.failed.length;

describe("a contact beside the joint by which an end hangs", () => {
  // at 8:12 two rafters touch the king-post 4 in below their heads, at 7:12 they pass it by
  test("draws nothing out of the ridge: the heads beside are pulled as much (statics)", () => {
    const { joints } = frameOf(PAVILION.replace("pitch: 7:12", "pitch: 8:12"));
    const pull = (id: string): number => joints.get(id)?.tension.most ?? 0;
    // a clamped end showed 897 lb; at 7:12, where nothing is beside it, the same head is pulled with 296 lb
    expect(pull("rafter-head@A.5")).toBeLessThan(310);
    expect(pull("rafter-head@A.5")).toBeGreaterThan(pull("rafter-head@A.4"));
  });
  test("is no tie: at 7:12 the ends of principals beside the king-post are not in the skeleton twice", () => {
    const { frame } = readFrame(PURLINS.replace(/pitch: \d+:12/, "pitch: 7:12"));
    const { model } = evaluate(frame, readFrame(PURLINS).source);
    const touching = model.meetings.filter(
      ({ a, b }) =>
        [a, b].some((t) => t.kind === "king-post") && [a, b].some((t) => t.member === "principal"),
    );
    expect(touching.length).toBeGreaterThan(0);
    const tied = skeletonOf(model).ties.filter(({ meeting }) => touching.includes(meeting));
    expect(tied).toEqual([]);
  });
});

const FLOOR = `frame: Floor
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: ii}
site: {frost-depth: 24 in, soil: clay, wind: {speed: 100 mph, exposure: B, flow: clear}}
timber:
  frame: {species: douglas-fir-larch, grade: no-1, seasoning: dry, surface: rough}
grid:
  walls: {A: 0, B: 14 ft}
  bents: {1: 0, 2: 14 ft}
  levels: {pier-top: 8 in, floor: 8 ft}
members:
  post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
  plate: {kind: plate, section: 8x10, walls: [A, B], from: 1, to: 2, top: floor}
  tie: {kind: tie, section: 8x12, bents: [1, 2], from: A, to: B, top: floor}
  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}
  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}
piers:
  all: {under: post, kind: tube, diameter: 14 in, depth: 28 in, anchor: {kind: post-base}}
`;

describe("a corner where a tie is lapped onto a plate over the post", () => {
  test("holds together: it stands every way and every combination has an answer", () => {
    const { solution } = frameOf(FLOOR);
    expect(solution.racking.map(({ stands }) => stands)).toEqual([true, true, true, true]);
    expect(solution.failed).toEqual([]);
    expect(solution.cases.length).toBeGreaterThan(0);
  });
  test("plate, tie and post share the corner's node", () => {
    const { frame, source } = readFrame(FLOOR);
    const { piecesOf } = skeletonOf(evaluate(frame, source).model);
    const nodes = (id: string): number[] => (piecesOf.get(id) ?? []).flatMap((p) => [p.i.node, p.j.node]);
    const shared = nodes("plate@A").filter((n) => nodes("tie@1").includes(n));
    expect(new Set(shared).size).toBe(1);
    expect(nodes("post@A1")).toContain(shared[0]);
  });
});

describe("a ridge that lies between rafters and on nothing else", () => {
  const BOARD = PAVILION.replace(/^ {2}(king-post|ridge-knee|king-foot|king-head): .*\n/gm, "").replace(
    "[knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge]",
    "[knee, tie-knee], into: [post, plate, tie]",
  );
  const PANELS = BOARD.replace(
    "deck: {kind: boards, thickness: 1 in}",
    "deck: {kind: panels, thickness: 5/8 in}",
  );

  test("stands by the thrust of its rafters, as they do without it", () => {
    expect(failed(PANELS)).toBe(0);
    const { racking, solution } = frameOf(PANELS);
    expect(racking.map(({ stands }) => stands)).toEqual([true, true, true, true]);
    // nothing holds the ridge up, so its rafters' seats cannot slide
    expect(solution.cases.every(({ seats }) => seats === "hold")).toBe(true);
  });
  test("its rafters push as pairs without a ridge do, within the ridge's own weight and width", () => {
    const pairs = PANELS.replace(/^ {2}ridge: .*\n/m, "").replace(
      / head: \{kind: housed, into: ridge, fasten: \{[^}]*\}\},/,
      "",
    );
    const push = (text: string): number => {
      const { solution, model } = frameOf(text);
      const balanced = solution.cases.find((c) => c.frameCase.id === "3-S:S/balanced");
      const [post] = model.piers;
      if (!balanced || !post) throw new Error("no snow");
      const base = balanced.combined.reactions();
      return base.reduce((sum, r) => sum + r.force[2], 0);
    };
    // the whole load comes down either way; the ridge adds its weight
    expect(push(PANELS)).toBeGreaterThan(push(pairs));
    expect(push(PANELS) / push(pairs)).toBeLessThan(1.06);
  });
  test("what racks with boards only is the roof along the walls", () => {
    const { racking } = frameOf(BOARD);
    expect(racking.filter(({ stands }) => !stands).map(({ toward }) => toward)).toEqual(["+x", "-x"]);
  });
});
