/** Sections with something cut out, against closed forms (mechanics of materials: I = Σ(I₀ + A d²); derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { NetSections, sectionLeft, timberCuts } from "../../../server/core/statics/net-section.ts";
import { readFrame } from "../../../server/document/read.ts";
import { build, stick } from "../model/frames.ts";

describe("what is left of a section [derived]", () => {
  test("nothing cut: bd, bd³/12, bd²/6", () => {
    const s = sectionLeft(8, 10, []);
    expect([s.A, s.y, s.z]).toEqual([80, 0, 0]);
    expect(s.Iz).toBeCloseTo((8 * 10 ** 3) / 12);
    expect(s.Iy).toBeCloseTo((10 * 8 ** 3) / 12);
    expect(s.Sz).toBeCloseTo((8 * 10 ** 2) / 6);
    expect(s.Sy).toBeCloseTo((10 * 8 ** 2) / 6);
  });

  test("a mortise through the middle: two cheeks side by side", () => {
    const s = sectionLeft(8, 10, [{ y: [-5, 5], z: [-1, 1] }]);
    expect(s.A).toBeCloseTo(60);
    expect(s.Sz).toBeCloseTo((6 * 10 ** 2) / 6);
    expect(s.Iy).toBeCloseTo((10 * (8 ** 3 - 2 ** 3)) / 12);
    expect(s.Sy).toBeCloseTo((10 * (8 ** 3 - 2 ** 3)) / 12 / 4);
  });

  test("a housing across the top leaves a shallower section about its own middle", () => {
    const s = sectionLeft(8, 10, [{ y: [4.5, 5], z: [-4, 4] }]);
    expect(s.A).toBeCloseTo(76);
    expect(s.y).toBeCloseTo(-0.25);
    expect(s.Iz).toBeCloseTo((8 * 9.5 ** 3) / 12);
    expect(s.Sz).toBeCloseTo((8 * 9.5 ** 2) / 6);
  });

  test("a blind mortise in the top: parallel axis theorem", () => {
    // 8×12 less 2×6.5 open on top, set in 2 in from one side
    const s = sectionLeft(8, 12, [{ y: [-0.5, 6], z: [-2, 0] }]);
    const [A, a] = [96, 13];
    const [cy, cz] = [2.75, -1];
    const y = (-a * cy) / (A - a);
    const z = (-a * cz) / (A - a);
    const Iz = (8 * 12 ** 3) / 12 + A * y ** 2 - ((2 * 6.5 ** 3) / 12 + a * (cy - y) ** 2);
    const Iy = (12 * 8 ** 3) / 12 + A * z ** 2 - ((6.5 * 2 ** 3) / 12 + a * (cz - z) ** 2);
    expect(s.A).toBeCloseTo(83);
    expect(s.y).toBeCloseTo(y);
    expect(s.z).toBeCloseTo(z);
    expect(s.Iz).toBeCloseTo(Iz);
    expect(s.Iy).toBeCloseTo(Iy);
    expect(s.Sz).toBeCloseTo(Iz / (6 - y));
    expect(s.Sy).toBeCloseTo(Iy / (4 + z));
  });

  test("cuts that overlap or reach past the edge count once", () => {
    const once = sectionLeft(8, 8, [{ y: [3.5, 4], z: [-4, 4] }]);
    const twice = sectionLeft(8, 8, [
      { y: [3.5, 9], z: [-9, 9] },
      { y: [3.75, 4], z: [-1, 1] },
    ]);
    expect(twice.A).toBeCloseTo(once.A);
    expect(twice.Sz).toBeCloseTo(once.Sz);
    expect(sectionLeft(4, 4, [{ y: [-3, 3], z: [-3, 3] }]).A).toBe(0);
  });

  // 3 × 7 with 1.2073 in cut off below: b h²/6 of what stands; a strip that nobody can see is no fiber that bends
  test.each([0, 1e-12, -1e-12, 1e-6, -1e-6, 5e-4, -5e-4])(
    "a cut whose edges miss those of the stick and of its neighbor by %d in",
    (miss) => {
      const h = 5.7927;
      const exact = { A: 3 * h, Sz: (3 * h ** 2) / 6, Sy: (h * 3 ** 2) / 6 };
      const whole = [{ y: [-3.5 + miss, 3.5 - h] as const, z: [-1.5 + miss, 1.5 - miss] as const }];
      const halves = [
        { y: [-3.5 - miss, 3.5 - h] as const, z: [-1.5 - miss, -miss] as const },
        { y: [-3.5 + miss, 3.5 - h + miss] as const, z: [miss, 1.5 + miss] as const },
      ];
      const turned = sectionLeft(7, 3, [{ y: whole[0]!.z, z: whole[0]!.y }]);
      for (const cuts of [whole, halves]) {
        const left = sectionLeft(3, 7, cuts);
        for (const key of ["A", "Sz", "Sy"] as const)
          expect(Math.abs(left[key] / exact[key] - 1), key).toBeLessThan(5e-4);
      }
      expect(Math.abs(turned.Sy / exact.Sz - 1)).toBeLessThan(5e-4);
      expect(Math.abs(turned.Sz / exact.Sy - 1)).toBeLessThan(5e-4);
      expect(sectionLeft(4, 4, [{ y: [-2 + miss, 2 - miss], z: [-2 - miss, 2 - miss] }]).A).toBe(0);
    },
  );

  test("the wall between two mortises counts from a tenth of an inch as from a hundredth", () => {
    for (const wall of [0.1, 0.01]) {
      const left = sectionLeft(8, 8, [
        { y: [-4, 4], z: [-3, -wall / 2] },
        { y: [-4, 4], z: [wall / 2, 3] },
      ]);
      expect(left.A).toBeCloseTo(8 * (2 + wall));
    }
  });
});

describe("cuts of joints [derived]", () => {
  const model = build({
    members: {
      post: "{kind: post, section: 8x8, at: [A1, A2, B1, B2], from: base, to: plate}",
      plate: "{kind: plate, section: 8x10, walls: [A, B], from: 1, to: 2, top: top, overhang: 1 ft}",
      tie: "{kind: tie, section: 8x10, bents: [1, 2], top: tie-top}",
    },
    joints: {
      "post-head":
        "{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 5 in}, pegs: {count: 1, diameter: 1 in}}",
      "tie-end":
        "{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 2, diameter: 3/4 in}}",
    },
  });
  const cuts = timberCuts(model);
  const sections = (id: string) => {
    const t = stick(model, id);
    return new NetSections(t, cuts.get(t.id)!);
  };

  test("post under a tie: housing and mortise, and both rows of pegs for tension", () => {
    // tie from 74 to 84 in: housing 8 × 1/2, mortise 2 × (4 1/4) behind it
    const at = sections("post@A1").at(79);
    expect(at.section.A).toBeCloseTo(64 - 8 * 0.5 - 2 * 4.25);
    expect(at.joint).toBe("tie-end@A1");
    // 2 holes of 3/4 in within 4 diameters of each other along the post? they lie 1/4 and 3/4 of the width apart
    const places = sections("post@A1").places();
    const least = Math.min(...places.map((p) => p.tensionArea));
    // one hole goes through both cheeks, 8 in less the 2 in of the mortise
    expect(least).toBeCloseTo(64 - 8 * 0.5 - 2 * 4.25 - 0.75 * 6);
  });

  test("away from joints the section is whole", () => {
    expect(sections("post@A1").at(40)).toMatchObject({
      section: { A: 64 },
      tensionArea: 64,
      joint: undefined,
    });
    expect(sections("tie@1").places()).toEqual([]);
  });

  test("plate over a post: blind mortise from below, peg across both cheeks", () => {
    const places = sections("plate@A")
      .places()
      .filter((p) => p.joint === "post-head@A1");
    const middle = places.find((p) => p.tensionArea < p.section.A)!;
    // 8 × 10 less 2 × 5 1/4 from below
    expect(middle.section.A).toBeCloseTo(80 - 2 * 5.25);
    expect(middle.section.y).toBeCloseTo((2 * 5.25 * (5 - 5.25 / 2)) / (80 - 2 * 5.25));
    expect(middle.tensionArea).toBeCloseTo(80 - 2 * 5.25 - 1 * 6);
    const [first, last] = [places[0]!.x, places.at(-1)!.x];
    expect(last - first).toBeCloseTo(8, 0);
  });
});

test("a curved brace keeps its depth less its rise at the middle, off its own middle by half the rise [derived]", () => {
  const model = build({
    members: {
      post: "{kind: post, section: 8x8, at: [A1, A2], from: base, to: plate}",
      plate: "{kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: top}",
      knee: "{kind: brace, section: 4x8, between: [post, plate], leg: 36 in, curve: {rise: 2 in}}",
    },
  });
  const knee = stick(model, "knee@A1-A2");
  const at = new NetSections(knee, timberCuts(model).get(knee.id)!).at(knee.span / 2);
  expect(at.section.A).toBeCloseTo(4 * 6);
  expect(Math.abs(at.section.y)).toBeCloseTo(1);
  expect(at.section.Sz).toBeCloseTo((4 * 6 ** 2) / 6);
});

test("a cut that only touches a timber is no joint that weakens it", () => {
  const timber = stick(
    build({ members: { post: "{kind: post, section: 8x8, at: [A1], from: base, to: top}" } }),
    "post@A1",
  );
  const cut = (joint: string, y: readonly [number, number]) => ({
    joint,
    breaks: [10, 20],
    at: () => ({ y, z: [-2, 2] as const }),
  });
  const cuts = [cut("in", [0, 9]), cut("touches", [4, 6]), cut("by-rounding", [4 - 1e-9, 6])];
  const sections = new NetSections(timber, { cuts, pegs: [] });
  expect(sections.jointsAt(15)).toEqual(["in"]);
  expect(sections.jointsAt(21)).toEqual([]);
  expect(sections.at(15).section.A).toBeCloseTo(64 - 16);
});

/**
 * A frame in inches and the same in millimetres: every section written anew at 25.4 mm to the inch (exact); sizes that the file
 * leaves open are rounded to whole millimetres there instead of sixteenths. What a rafter's seat leaves is a rectangle as
 * wide as the rafter, whatever rounding says of its far edge: b h²/6.
 */
describe("rafters over their seats, in the cider-press pavilion", () => {
  const text = readFileSync(
    new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
    "utf8",
  );
  const inMillimetres = text
    .replace(/^units: inch$/m, "units: mm")
    .replace(/(\d+)x(\d+)/g, (_, b: string, d: string) => `${Number(b) * 25.4}x${Number(d) * 25.4}`);
  const models = new Map([text, inMillimetres].map((t) => [t, buildModel(readFrame(t).frame)]));
  const sectionAt = (source: string, id: string, x: number) => {
    const model = models.get(source)!;
    const timber = stick(model, id);
    return new NetSections(timber, timberCuts(model).get(timber.id)!).at(x).section;
  };

  test("the sloping part of a birdsmouth", () => {
    const { A, Sz, Sy } = sectionAt(text, "rafter@A.5", 20.49);
    expect(A).toBeCloseTo(17.378, 2);
    expect(Sz).toBeCloseTo((3 * 5.7927 ** 2) / 6, 2);
    expect(Sy).toBeCloseTo((5.7927 * 3 ** 2) / 6, 2);
  });

  test.each([
    ["inch", text],
    ["mm", inMillimetres],
  ])("all along both slopes, %s", (_, source) => {
    for (const id of ["rafter@A.5", "rafter@B.3"])
      for (let x = 18.9; x < 22.5; x += 0.0317) {
        const { A, Sz, Sy } = sectionAt(source, id, x);
        expect(A).toBeLessThan(21);
        expect(Sz / (A ** 2 / 3 / 6), `${id} at ${x}`).toBeCloseTo(1, 6);
        expect(Sy / ((A * 3) / 6), `${id} at ${x}`).toBeCloseTo(1, 6);
      }
  });
});
