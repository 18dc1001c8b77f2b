/** Feet of principal rafters stepped into a tie: sizes by plane geometry, relish by statics and F_v′ (derived, NDS from memory). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { relishOf } from "../../../server/core/joinery/relish.ts";
import { dot } from "../../../server/core/model/vec.ts";
import { bearingSurfaces } from "../../../server/core/statics/end-surfaces.ts";
import { heelThrusts } from "../../../server/core/statics/heel-thrusts.ts";
import { jointPulls } from "../../../server/core/statics/joint-pulls.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { findingsOf, fixed } from "../checks/gate.ts";
import { expectNear, joint, modelOf } from "../model/frames.ts";
import { cut } from "./prisms.ts";

const TRUSS = readFileSync(new URL("../../frames/king-post-truss.frame.yaml", import.meta.url), "utf8");
const without = (text: string, from: string, to: string): string => {
  expect(text).toContain(from);
  return text.replace(from, to);
};
const errorsOf = (text: string, check: string) =>
  findingsOf(text, true).filter(({ finding }) => finding.check === check && finding.level === "error");

const ALPHA = Math.atan(0.5);

describe("sizes at 6:12, stepped 1 1/2 in [derived]", () => {
  const heel = joint(modelOf(TRUSS), "heel@A1");
  const half = 8 / Math.sin(ALPHA) / 2;

  test("the bisecting abutment stands at half the angle to both grains", () => {
    expectNear(heel.sizes.heel?.abutment, 1.5 / Math.cos(ALPHA / 2), "abutment");
    const [abutment] = bearingSurfaces(heel);
    const toGrain = Math.acos(Math.abs(dot(abutment!.toward, heel.into.axis)));
    const toRafter = Math.acos(Math.abs(dot(abutment!.toward, heel.of.axis)));
    expectNear(toGrain, ALPHA / 2, "to the tie");
    expectNear(toRafter, ALPHA / 2, "to the rafter");
    expectNear(abutment!.area, (8 * 1.5) / Math.cos(ALPHA / 2), "area");
  });
  test("square to the rafter where the file says so: its thrust goes along the rafter's grain", () => {
    const square = joint(modelOf(without(TRUSS, "rafter-heel,", "rafter-heel, form: square,")), "heel@A1");
    expectNear(square.sizes.heel?.abutment, 1.5 / Math.cos(ALPHA), "abutment");
    const [abutment] = bearingSurfaces(square);
    expectNear(Math.abs(dot(abutment!.toward, square.of.axis)), 1, "along the rafter");
  });
  test("sole and relish from the abutment's bottom", () => {
    const bottom = half - 1.5 * Math.tan(ALPHA / 2);
    expectNear(heel.sizes.heel?.sole, Math.hypot(1.5, bottom + half), "sole");
    const [low, high] = heel.face.ends;
    expectNear(heel.sizes.heel?.relish, Math.min(-low, high) - bottom, "relish");
    expectNear(cut(heel, "relish beyond the step"), Math.min(-low, high) - bottom, "cut sheet");
  });
  test("what is cut out of the tie takes the foot, and the tenon lies in the rafter's own wood", () => {
    const [tenon, foot] = heel.solids.tenons;
    expect(heel.solids.housings).toEqual([foot]);
    for (const [u, v] of tenon!.outline) {
      const across = -u * Math.cos(ALPHA) + Math.abs(v) * Math.sin(ALPHA);
      expect(Math.abs(across)).toBeLessThanOrEqual(4 + 1e-9);
    }
  });
  test("without a word of it: a sixth of the tie [common practice, no source]", () => {
    const usual = joint(modelOf(TRUSS.replace(/^ {2}heel: .*\n/m, "")), "principal-tie@A1");
    expect([usual.kind, usual.assumed]).toEqual(["rafter-heel", true]);
    expectNear(usual.sizes.housing.value, 1.625, "10 ÷ 6 down to the eighth");
  });
});

describe("relish", () => {
  const SHORT = without(
    without(
      without(TRUSS, "bottom: eave, overhang: 12 in", "bottom: eave, overhang: 4 in"),
      "rafter, section: 8x8",
      "rafter, section: 4x8",
    ),
    "housing: 1 1/2 in, tenon: {thickness: 2 in",
    "housing: 2 1/2 in, tenon: {thickness: 1 1/4 in",
  );
  const snowy = (text: string): string => without(text, "ground: 40 psf", "ground: 150 psf");

  test("thrust ÷ (relish × width), eight steps at most [derived; memory]", () => {
    const { evaluation } = createFrameService().open("file:///t.frame.yaml", 1, TRUSS);
    const frame = evaluation!.results.frame!;
    const found = heelThrusts(frame);
    expect(found).toHaveLength(6);
    for (const { joint: j, relish, thrust, stress, limit, duration } of found) {
      expectNear(relish.counted, Math.min(j.sizes.heel!.relish, 12), "eight times 1 1/2 in");
      expectNear(stress, thrust / (relish.counted * 8), "stress");
      // Douglas fir-larch, posts and timbers: F_v 170 psi (memory), no C_M for shear of timbers
      expectNear(limit, 170 * duration.value, "F_v′");
      // the tie pulls with what the feet push
      expect(thrust).toBeGreaterThan(1000);
    }
  });
  test("both feet of a truss push alike, or its tie would move [derived]", () => {
    const { evaluation } = createFrameService().open("file:///t.frame.yaml", 1, TRUSS);
    const frame = evaluation!.results.frame!;
    const thrusts = new Map(heelThrusts(frame).map((h) => [h.joint.id, h]));
    const [a, b] = [thrusts.get("heel@A2")!, thrusts.get("heel@B2")!];
    expect(Math.abs(a.thrust - b.thrust) / a.thrust).toBeLessThan(0.05);
  });
  test("long enough on the truss as it stands", () => expect(errorsOf(TRUSS, "relish-short")).toEqual([]));
  test("a tie with a short tail under deep snow: named with its numbers, and mended by the fix", () => {
    const [found, ...more] = errorsOf(snowy(SHORT), "relish-short");
    expect(more).toEqual([]);
    expect(found, "fires").toBeDefined();
    expect(found!.finding.path).toBe("/joints/heel");
    expect(found!.finding.value!).toBeGreaterThan(found!.finding.limit!);
    expect(found!.finding.message).toMatch(
      /pushes toward the end of tie@\d with [\d,]+ lb under .* which shears the .* of wood beyond its toe with \d+ psi, more than \d+ psi/,
    );
    const mended = fixed(snowy(SHORT), "relish-short", 0, true);
    expect(mended).toMatch(/bottom: eave, overhang: (?!4 in)/);
  });
  test("where eight steps are not enough: a deeper step, no longer tail", () => {
    const [found] = errorsOf(without(SHORT, "ground: 40 psf", "ground: 240 psf"), "relish-short");
    expect(found!.finding.message).toContain("Step the foot deeper into the tie, or take a wider rafter.");
    expect(found!.finding.fixes()).toEqual([]);
  });
  test("before a tenon alone the block is held by its bottom and both sides", () => {
    const tenoned = joint(
      modelOf(
        TRUSS.replace("{kind: rafter-heel", "{kind: mortise-and-tenon").replace("housing: 1 1/2 in, ", ""),
      ),
      "heel@A1",
    );
    const relish = relishOf(tenoned)!;
    expectNear(relish.breadth, 2 + 2 * 4, "thickness and twice the depth");
    const half = 8 / Math.sin(ALPHA) / 2;
    expectNear(
      relish.length,
      Math.min(-tenoned.face.ends[0], tenoned.face.ends[1]) - half,
      "from the square toe",
    );
  });
});

describe("a king-post that hangs the tie has a foot that holds it", () => {
  test("pegged through tenon: held", () => {
    expect(errorsOf(TRUSS, "joint-pulled")).toEqual([]);
    expect(errorsOf(TRUSS, "peg-overloaded")).toEqual([]);
  });
  test("without pegs it draws out", () => {
    const bare = without(
      TRUSS,
      "through: true}, pegs: {count: 2, diameter: 1 in}}",
      "through: true}, pegs: {count: 0}}",
    );
    const found = errorsOf(bare, "joint-pulled");
    expect(found.map(({ finding }) => finding.path)).toEqual(["/joints/king-foot/pegs"]);
    expect(found[0]!.finding.message).toContain("king-foot@");
    expect(errorsOf(fixed(bare, "joint-pulled", 0, true), "joint-pulled")).toEqual([]);
  });
  test("its pull is the weight that hangs on it, judged by its pegs [derived]", () => {
    const { evaluation } = createFrameService().open("file:///t.frame.yaml", 1, TRUSS);
    const frame = evaluation!.results.frame!;
    const foot = frame.model.joints.find(({ id }) => id === "king-foot@2")!;
    const pull = jointPulls(frame)(foot)!;
    expect(pull.hold.kind).toBe("pegs");
    // five eighths of a tie of 8 × 10 in over two equal spans hang on its middle: some 20 lb/ft × 20 ft
    expect(pull.most).toBeGreaterThan(150);
    expect(pull.most).toBeLessThan(450);
    expect(pull.ratio).toBeLessThan(1);
  });
});
