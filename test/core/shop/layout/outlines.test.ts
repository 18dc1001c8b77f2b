/** Outlines that are no rectangle and mouths on a slant, against plane geometry by hand, the cut sheet and the solids (derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { cut } from "../../joinery/prisms.ts";
import { build, joint, modelOf } from "../../model/frames.ts";
import { cutOn, expectRange, layoutOf } from "./marks.ts";

const file = (name: string): string =>
  readFileSync(new URL(`../../../frames/${name}.frame.yaml`, import.meta.url), "utf8");

const TRUSS = file("king-post-truss");

/** Corners by their place across, then along. */
const sorted = (corners: readonly { along: number; across: number }[] | undefined): number[][] =>
  (corners ?? []).map((c) => [c.across, c.along]).sort(([a = 0, b = 0], [c = 0, d = 0]) => a - c || b - d);

describe("a dovetail lap's socket", () => {
  const lapped = (keys: string) =>
    build({
      members: {
        long: `{kind: sill, section: 8x8, walls: [A, B], top: base, overhang: 2 ft}`,
        cross: "{kind: sill, section: 8x8, bents: [2], top: base}",
      },
      joints: { lap: `{kind: dovetail-lap, of: cross, into: long${keys}}` },
    });

  test("is marked with its mouth where the tail comes in, and widens to the far face, as sheet and solid say", () => {
    const model = lapped("");
    const lap = joint(model, "lap@2.foot");
    const long = layoutOf(model, "long@A");
    const socket = cutOn(long, "lap@2.foot", "lap");
    // the cross sill stands 116 to 124 in from bent 1, the long one begins 24 in before it; face 1 looks out of the wall
    expect(socket.face).toBe(2);
    expectRange(socket.opening.along, 140, 148);
    expectRange(socket.opening.across, 0, 8);
    expect(socket.depth).toBe(4);
    // flare of 1 3/8 in: 8 − 2 × 1 3/8 = 5 1/4 in at the inner face, 8 in at the outer one
    expect(sorted(socket.corners)).toEqual([
      [0, 140],
      [0, 148],
      [8, 141.375],
      [8, 146.625],
    ]);
    expect(cut(lap, "socket width at its mouth")).toBe(5.25);
    expect(cut(lap, "socket width at its far end")).toBe(8);
    expect(cut(lap, "socket flare on each side")).toBe(1.375);
  });

  test("that ends in the timber is marked on the face it enters: its mouth there, at its deepest the full width", () => {
    const model = lapped(", dovetail: {length: 5 in, flare: 1/2 in}");
    const lap = joint(model, "lap@2.head");
    const { face, opening, bottom, depth, through } = cutOn(layoutOf(model, "long@B"), lap.id, "lap");
    expect([face, depth, through]).toEqual([3, 5, false]);
    expectRange(opening.along, 140.5, 147.5);
    expectRange(bottom?.along ?? [0, 0], 140, 148);
    // the upper half
    expectRange(opening.across, 0, 4);
    expect(cut(lap, "socket width at its mouth")).toBe(7);
    expect(cut(lap, "socket length")).toBe(5);
  });

  test("without a flare it is a plain trench", () => {
    expect(cutOn(layoutOf(lapped(", dovetail: {flare: 0}"), "long@A"), "lap@2.foot", "lap").corners).toBe(
      undefined,
    );
  });
});

describe("a rafter pair's cheeks", () => {
  test("are marked by the corners of their triangle, where they lie on the stick", () => {
    const model = modelOf(file("market-stall"));
    const pair = model.joints.find((j) => j.kind === "rafter-pair");
    const marks = layoutOf(model, pair?.of.id ?? "").joints.find((m) => m.joint === pair?.id);
    const notch = marks?.cuts.find((c) => c.corners !== undefined);
    expect(notch?.corners).toHaveLength(3);
    const { along = 0, across = 0 } = notch?.corners?.find((c) => c.across > 1) ?? {};
    // its point lies on the underside where the plumb line of the ridge crosses the depth of 6 in
    expect(across).toBeCloseTo(pair?.of.depth ?? 0, 9);
    expect(along).toBeGreaterThan(notch?.opening.along[0] ?? 0);
  });
});

describe.each([
  ["bisecting", Math.tan(Math.atan(0.5) / 2)],
  ["square", 0.5],
] as const)("the mortise of a heel stepped 1 1/2 in at 6:12, its abutment %s", (form, back) => {
  const model = modelOf(TRUSS.replace("rafter-heel,", `rafter-heel, form: ${form},`));
  const heel = joint(model, "heel@A1");
  const tie = layoutOf(model, "tie@1");
  const { opening, bottom } = cutOn(tie, "heel@A1", "mortise");

  test("has its mouth on the housing's slanted floor, from the abutment's bottom to the heel", () => {
    const housing = cutOn(tie, "heel@A1", "housing");
    // 8 in ÷ sin α from toe to heel on the tie's face, less the step's fall back
    const foot = 8 / Math.sin(Math.atan(0.5));
    expectRange(housing.opening.along, housing.opening.along[1] - foot, housing.opening.along[1]);
    expectRange(opening.along, housing.opening.along[0] + 1.5 * back, housing.opening.along[1]);
    expect(opening.along[1] - opening.along[0]).toBeCloseTo(
      cut(heel, "mortise length along the grain") ?? 0,
      9,
    );
  });

  test("and its back follows the rafter's grain: at its deepest it is shorter by two for one of depth", () => {
    const depth = cut(heel, "mortise depth from the housed face") ?? 0;
    const tenon = cut(heel, "tenon length") ?? 0;
    expect(depth - tenon).toBeCloseTo(0.25, 9);
    expectRange(bottom?.along ?? [0, 0], opening.along[0], opening.along[1] - 2 * tenon);
  });
});
