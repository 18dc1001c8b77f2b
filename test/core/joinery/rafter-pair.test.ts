/** Rafters head to head: sizes by plane geometry (derived), pegs by TFEC 1 as remembered, forces by statics (derived). */
import { describe, expect, test } from "vitest";
import type { Joint, Prism } from "../../../server/core/joinery/joint.ts";
import { pegTension } from "../../../server/core/joinery/peg-tension.ts";
import { pairPull } from "../../../server/core/statics/pair-pull.ts";
import { expectFindings } from "../../fixtures.ts";
import { ROOFED as ROOFED_SHED } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "../checks/gate.ts";
import { expectNear, joint, modelOf, stick } from "../model/frames.ts";
import { cut } from "./prisms.ts";

/** Under its ties one walks upright. */
const ROOFED = ROOFED_SHED.replace("tie-top: 7 ft", "tie-top: 7 ft 2 in");
const headed = (head: string): string => ROOFED.replace("overhang: {eave", `${head}overhang: {eave`);
const BRIDLE = headed("head: {kind: bridle, pegs: {count: 1, diameter: 3/4 in}}, ");
const LAPPED = headed("head: {kind: lapped, pegs: {count: 1, diameter: 3/4 in}}, ");
const ERRORS = { whole: true, only: ["error", "warning"] } as const;

/** 4 × 6 in rafters at 9:12: cos 0.8, sin 0.6, tan 0.75. */
const PLUMB = 6 / 0.8;
const REACH = PLUMB / 1.5;
/** A third of 4 in, to the eighth, and half of what it leaves. */
const [TONGUE, TINE] = [1.375, 1.3125];

function volume({ outline, from, to }: Prism): number {
  const twice = outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!;
    return sum + x * ny - nx * y;
  }, 0);
  return (Math.abs(twice) / 2) * (to - from);
}

describe("sizes of a bridle and of a lap [derived]", () => {
  const bridle = joint(modelOf(BRIDLE), "rafter-pair@A.2");
  const lapped = joint(modelOf(LAPPED), "rafter-pair@A.2");

  test("tongue and tines a third each, halves of a lap half the thickness [common practice, no source]", () => {
    expectNear(cut(bridle, "tongue thickness"), TONGUE, "tongue");
    expectNear(cut(bridle, "tine thickness, each"), TINE, "tine");
    expectNear(lapped.sizes.pair?.tongue, 2, "half");
    expectNear(lapped.sizes.pair?.tine, 2, "other half");
  });
  test("each runs on to the other's upper edge: H ÷ (2 tan θ), level", () => {
    expectNear(bridle.sizes.pair?.plumb, PLUMB, "plumb height");
    expectNear(cut(bridle, "past the plumb line, along the underside"), REACH / 0.8, "along the underside");
    expectNear(cut(bridle, "end cut to the grain"), (2 * (Math.atan(0.75) * 180)) / Math.PI, "both slopes");
    expectNear(cut(bridle, "ridge down to the peg hole, plumb"), PLUMB / 2, "peg in the middle");
  });
  test("the tongue fills the slot, the tines fill the cheeks: a half rhombus times its thickness", () => {
    const half = (PLUMB * REACH) / 2;
    expectNear(
      volume(bridle.solids.tenons[0]!),
      2 * half * TONGUE,
      "tongue, on both sides of the plumb line",
    );
    expectNear(volume(bridle.solids.mortises[0]!), half * TONGUE, "slot");
    expect(bridle.solids.notches).toHaveLength(2);
    for (const notch of bridle.solids.notches) expectNear(volume(notch), half * TINE, "cheek");
    expect(lapped.solids.notches).toHaveLength(1);
    expectNear(volume(lapped.solids.notches[0]!), half * 2, "half cut away");
    expectNear(volume(lapped.solids.mortises[0]!), half * 2, "the other half");
  });
  test("both sticks are longer by what runs past the plumb line", () => {
    const model = modelOf(BRIDLE);
    const [a, b] = [stick(model, "rafter@A.2"), stick(model, "rafter@B.2")];
    // plumb cut tail at the underside (tan θ × d/2 past the middle), the tip on the underside of the other end
    const plain = a.span;
    expectNear(a.length, b.length, "alike");
    expectNear(a.length, plain + 0.75 * 3 + REACH / 0.8 - 0.75 * 3, "length", 1e-6);
  });
});

test("without a ridge and without a word of it: a bridle, with one note and a fix that names it", () => {
  const found = findingsOf(ROOFED);
  expect(found.map(({ finding }) => finding.check)).toEqual(["joint-assumed"]);
  expect(joint(modelOf(ROOFED), "rafter-pair@A.1").sizes.pair?.form).toBe("bridle");
  const mended = fixed(ROOFED, "joint-assumed");
  expect(mended).toContain("head: {kind: bridle}");
  expect(findingsOf(mended)).toEqual([]);
});

test("principal rafters as members, named by a joint entry", () => {
  const model = modelOf(
    ROOFED.replace(
      "  tie: {kind",
      "  principal: {kind: rafter, section: 6x8, bents: [1, 2], from: plate}\n  tie: {kind",
    )
      .replace(
        "  post-head:",
        "  peak: {kind: rafter-pair, form: lapped, of: principal, into: principal, pegs: {count: 2}}\n  post-head:",
      )
      .replace(/^ {2}rafters: .*\n/m, ""),
  );
  const peak = joint(model, "peak@A1");
  expect([peak.of.id, peak.into.id, peak.kind]).toEqual(["principal@A1", "principal@B1", "rafter-pair"]);
  expect(peak.sizes.pegs?.count).toBe(2);
  expectNear(
    peak.solids.pegs[1]!.from[2] - peak.solids.pegs[0]!.from[2],
    10 / 2,
    "two pegs a half of 8 ÷ 0.8 apart",
  );
});

describe("what wood leaves to the pegs [derived]", () => {
  const pair = joint(modelOf(BRIDLE), "rafter-pair@A.2");
  const by = (inward: number, up: number): number => pairPull(pair, [0, inward, up]);
  test("a level push, and any that points between both squares to the undersides: nothing", () => {
    expect(by(-100, 0)).toBe(0);
    expectNear(by(-60, 79.9), 0, "within");
    expectNear(by(-60, -79.9), 0, "within, down");
  });
  test("a level pull: all of it, since no push points that way", () => {
    expectNear(by(100, 0), 100, "pull");
  });
  test("up or down alone: its share along the rafter's own grain, sin θ", () => {
    expectNear(by(0, 100), 60, "up");
    expectNear(by(0, -100), 60, "down");
  });
});

describe("pegs", () => {
  const capacity = (text: string): number => {
    const model = modelOf(text);
    return pegTension(joint(model, "rafter-pair@A.2"), model.frame)!.pegs.value;
  };
  const holds = (j: Joint, text: string) => pegTension(j, modelOf(text).frame)!;

  test("a bridle's peg, white oak in white pine at 9:12 [memory: TFEC 1 3.4, NDS 12.3-7 to 12.3-10]", () => {
    const [D, Gp, G, theta] = [0.75, 0.73, 0.36, (Math.atan(0.75) * 180) / Math.PI];
    const [along, across] = [4770 * Gp ** 1.32, 4900 * Gp * Math.sqrt(G)];
    const rad = (theta * Math.PI) / 180;
    const Fe = (along * across) / (along * Math.sin(rad) ** 2 + across * Math.cos(rad) ** 2);
    const K = 1 + theta / 360;
    const Fyb = 24850 * Gp ** 1.13;
    const t = TINE;
    const k3 = -1 + Math.sqrt(4 + (2 * Fyb * 3 * D ** 2) / (3 * Fe * t ** 2));
    const modes = [
      (D * TONGUE * Fe) / (4 * K),
      (2 * D * TINE * Fe) / (4 * K),
      (2 * k3 * D * t * Fe) / (3 * 3.2 * K),
      (Math.PI * D ** 2 * 4850 * Gp * G ** 0.75) / (2 * 3.5),
    ];
    expectNear(capacity(BRIDLE), Math.min(...modes), "Z", 0.5);
  });
  test("a lap shears its peg once: at most half of two faces' shear [derived]", () => {
    const model = modelOf(LAPPED);
    const modes = holds(joint(model, "rafter-pair@A.2"), LAPPED).one.yields.modes;
    const V = modes.find(({ mode }) => mode === "V")!.Z;
    expectNear(V, (Math.PI * 0.75 ** 2 * 4850 * 0.73 * 0.36 ** 0.75) / (4 * 3.5), "V, one face", 0.5);
    expect(modes.some(({ mode }) => mode === "II")).toBe(true);
  });
});

describe("wind that draws the pairs apart", () => {
  const STORM = (text: string): string => text.replace("speed: 100 mph", "speed: 180 mph");
  test("one peg holds the shed's in 100 mph", () => expectFindings(BRIDLE, ERRORS));
  test("without pegs: named, with the force", () => {
    const bare = STORM(
      BRIDLE.replace("bridle, pegs: {count: 1, diameter: 3/4 in}", "bridle, pegs: {count: 0}"),
    );
    const found = findingsOf(bare, true).filter(({ finding }) => finding.check === "joint-pulled");
    expect(found).toHaveLength(1);
    expect(found[0]!.finding.message).toContain("its lap has no pegs and slides apart");
    expect(found[0]!.finding.path).toBe("/roof/rafters/head/pegs");
  });
});
