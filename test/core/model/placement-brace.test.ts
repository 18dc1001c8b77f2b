/** Braces: corners they fit, legs, faces, plan braces (placement rules, plane geometry; derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { unsupportedEnds } from "../../../server/core/model/unsupported.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import {
  boxOf,
  build,
  expectBox,
  expectNear,
  expectPoint,
  idsOf,
  joint,
  type Parts,
  problem,
  stick,
} from "./frames.ts";

const FRAME = {
  post: "{kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: base, to: plate}",
  plate: "{kind: plate, section: 8x9, walls: [A, B], top: top, overhang: 12 in}",
  tie: "{kind: tie, section: 8x8, bents: [1, 2, 3], top: tie-top}",
};
const braced = (brace: string, more: Partial<Parts> = {}, members: Record<string, string> = FRAME) =>
  build({ members: { ...members, knee: `{kind: brace, section: 4x6, ${brace}}` }, ...more });

describe("legs", () => {
  // posts 8 in, plate's underside 96 - 9 = 87, assumed housings of 1/2 in
  test("run from the housed corner along each timber to the far end of the bearing", () => {
    const model = braced("between: [post, plate], leg: 30 in");
    expectBox(model, "knee@A1-A2", [7.5, 37.5], [0, 4], [57.5, 87.5]);
    expectBox(model, "knee@A2-A1", [86.5, 116.5], [0, 4], [57.5, 87.5]);
  });

  test("unequal ones, by the name of their timber, in any order", () => {
    for (const legs of ["{post: 40 in, plate: 30 in}", "{plate: 30 in, post: 40 in}"]) {
      const model = braced(`between: [post, plate], legs: ${legs}`);
      expectBox(model, "knee@A1-A2", [7.5, 37.5], [0, 4], [47.5, 87.5]);
      const brace = stick(model, "knee@A1-A2");
      // long edge √(40² + 30²) = 50; toes of 3 in: along the brace 3 × 3/5 at the post and 3 × 4/5 at the plate
      expectNear(brace.length, 50 + 3 * (30 / 50) + 3 * (40 / 50), "length");
      expectPoint(brace.axis, [0.6, 0, 0.8], "direction");
      // bearing: depth ÷ sine of the angle to each timber
      expectNear(joint(model, "knee-post@A1-A2").sizes.tenon?.width.value, 6 / 0.6, "on the post");
      expectNear(joint(model, "knee-plate@A1-A2").sizes.tenon?.width.value, 6 / 0.8, "on the plate");
    }
  });

  test("none given, or one missing, is said", () => {
    expect(problem(braced("between: [post, plate]"), "placement-missing").needs).toEqual(["leg", "legs"]);
    expect(
      problem(braced("between: [post, plate], legs: {post: 30 in, tie: 30 in}"), "placement-missing").needs,
    ).toEqual(["legs: plate"]);
  });

  test("the housing of the joint that holds there moves the corner", () => {
    const model = braced("between: [post, plate], leg: 30 in", {
      joints: { ends: "{kind: brace-tenon, of: knee, into: [post, plate], housing: 1 in}" },
    });
    expectBox(model, "knee@A1-A2", [7, 37], [0, 4], [58, 88]);
    const unhoused = braced("between: [post, plate], leg: 30 in", {
      joints: {
        ends: "{kind: brace-tenon, of: knee, into: [post, plate], housing: 1 in}",
        single: "{kind: brace-tenon, of: knee@A1-A2, into: post, housing: 0}",
      },
    });
    expectBox(unhoused, "knee@A1-A2", [8, 38], [0, 4], [58, 88]);
    expectBox(unhoused, "knee@A2-A3", [123, 153], [0, 4], [58, 88]);
  });
});

describe("corners", () => {
  test("both ways at inner posts, none where the plate is too short", () => {
    const model = braced("between: [post, plate], leg: 30 in");
    expect(idsOf(model, "knee")).toHaveLength(8);
    // overhang 12: 12 + 8 - 7.5 = 12.5 in of plate past the housed faces of the end posts
    expect(idsOf(braced("between: [post, plate], leg: 12 1/2 in"), "knee")).toHaveLength(12);
    expect(idsOf(braced("between: [post, plate], leg: 12 1/2 in"), "knee")).toContain("knee@A1-out");
    expect(idsOf(braced("between: [post, plate], leg: 13 in"), "knee")).toHaveLength(8);
  });

  test("below the upper timber, unless above", () => {
    const below = braced("between: [post, tie], leg: 20 in");
    expect(boxOf(stick(below, "knee@A1-B1")).z).toEqual([56.5, 76.5]); // underside 76
    const low = { ...FRAME, tie: "{kind: tie, section: 8x8, bents: [1, 2, 3], top: 4 ft}" };
    const above = braced("between: [post, tie], leg: 20 in, above: true", {}, low);
    expectBox(above, "knee@A1-B1", [0, 4], [7.5, 27.5], [47.5, 67.5]);
  });

  test("an entry that fits nowhere is said, with the longest leg that would", () => {
    const model = braced("between: [post, plate], leg: 14 ft");
    expect(idsOf(model, "knee")).toEqual([]);
    expect(problem(model, "brace-nowhere")).toMatchObject({ path: "/members/knee", leg: 168 });
    // the post's 87 in from the housed underside
    expectNear(problem(model, "brace-nowhere").longest, 87.5, "longest");
  });

  test("posts between the lines have braces of their own", () => {
    const model = braced(
      "between: [post, plate], leg: 15 in",
      {},
      {
        ...FRAME,
        post: "{kind: post, section: 8x8, at: [A@3 ft, A@7 ft], from: base, to: plate}",
      },
    );
    expect(idsOf(model, "knee").sort()).toEqual([
      "knee@A@3-ft-A1",
      "knee@A@3-ft-A2",
      "knee@A@7-ft-A1",
      "knee@A@7-ft-A2",
    ]);
  });

  test("one stick alone", () => {
    expect(idsOf(braced("between: [post@A2, plate], leg: 30 in"), "knee")).toEqual([
      "knee@A2-A1",
      "knee@A2-A3",
    ]);
    const model = braced("between: [post@A9, plate], leg: 30 in");
    expect(problem(model, "unknown-id")).toMatchObject({
      sort: "stick",
      text: "post@A9",
      path: "/members/knee/between/0",
    });
  });
});

describe("across the thickness", () => {
  const y = (brace: string, members: Record<string, string> = FRAME, id = "knee@B1-B2") =>
    boxOf(stick(braced(`between: [post, plate], leg: 30 in${brace}`, {}, members), id)).y;

  test("flush with the reference faces, outward in outer walls", () => {
    expect(y("")).toEqual([140, 144]);
    expect(y("", FRAME, "knee@A1-A2")).toEqual([0, 4]);
  });

  test("toward wall A in inner walls", () => {
    const members = {
      ...FRAME,
      post: "{kind: post, section: 8x8, at: [B1, B2], from: base, to: plate}",
      tie: "{kind: tie, section: 8x8, bents: [1], from: A, to: C, top: tie-top}",
    };
    const model = braced(
      "between: [post, plate], leg: 30 in",
      { walls: "{A: 0, B: 6 ft, C: 12 ft}" },
      members,
    );
    expect(boxOf(stick(model, "knee@B1-B2")).y).toEqual([68, 72]);
  });

  test("centered when told", () => {
    expect(y(", face: center")).toEqual([138, 142]);
  });

  test("centered on what both have in common where widths differ, tenons in the brace's middle", () => {
    const members = {
      ...FRAME,
      plate: "{kind: plate, section: 6x9, walls: [A, B], top: top, overhang: 12 in}",
    };
    // plate 138 to 144 on the post 136 to 144
    expect(y("", members)).toEqual([139, 143]);
    const model = braced("between: [post, plate], leg: 30 in", {}, members);
    for (const id of ["knee-post@B1-B2", "knee-plate@B1-B2"]) {
      const prism = joint(model, id).solids.tenons[0]!;
      const ys = [prism.from, prism.to].map((w) => prism.base[1] + w * prism.w[1]);
      expectNear(Math.min(...ys), 141 - 0.75, id);
      expectNear(Math.max(...ys), 141 + 0.75, id);
    }
  });
});

describe("plan braces between lying timbers", () => {
  const flat = {
    post: "{kind: post, section: 8x8, at: [A1, A2, A3, B1, B2, B3], from: base, to: plate}",
    plate: "{kind: plate, section: 8x8, walls: [A, B], top: top}",
    tie: "{kind: tie, section: 8x8, bents: [1, 2, 3], from: plate, to: plate, top: top}",
  };
  const model = braced("between: [plate, tie], leg: 24 in", {}, flat);

  test("stand in every corner, named by where they stand and both ways they spread", () => {
    expect(idsOf(model, "knee").sort()).toEqual([
      "knee@A1-A2-B1",
      "knee@A2-A1-B2",
      "knee@A2-A3-B2",
      "knee@A3-A2-B3",
      "knee@B1-B2-A1",
      "knee@B2-B1-A2",
      "knee@B2-B3-A2",
      "knee@B3-B2-A3",
    ]);
  });

  test("flush with the tops", () => {
    // plate's inside face 8 - 0.5, tie's 8 - 0.5
    expectBox(model, "knee@A1-A2-B1", [7.5, 31.5], [7.5, 31.5], [92, 96]);
    expectBox(model, "knee@B2-B3-A2", [123.5, 147.5], [144 - 31.5, 144 - 7.5], [92, 96]);
  });

  test("have tenons in both timbers", () => {
    const ends = model.joints.filter((j) => j.of.id === "knee@A1-A2-B1");
    expect(ends.map((j) => `${j.kind} ${j.into.id}`).sort()).toEqual([
      "brace-tenon plate@A",
      "brace-tenon tie@1",
    ]);
  });
});

describe("curves", () => {
  const curved = (curve: string) =>
    stick(braced(`between: [post, plate], leg: 30 in, curve: ${curve}`), "knee@A1-A2").curve;
  const chord = 30 * Math.SQRT2;

  test("rise from radius and radius from rise", () => {
    const byRadius = curved("{radius: 76 1/2 in}");
    expectNear(byRadius?.chord, chord, "shoulder to shoulder");
    expectNear(byRadius?.rise, 76.5 - Math.sqrt(76.5 ** 2 - chord ** 2 / 4), "rise");
    expectNear(byRadius?.rise, 3, "a 3 in hollow", 1e-6);
    expectNear(curved("{rise: 3 in}")?.radius, 76.5, "radius"); // (450 + 9) / 6
  });

  test("a radius less than half the chord is the half circle", () => {
    expectNear(curved("{radius: 10 in}")?.rise, chord / 2, "rise");
  });
});

describe("struts between a king-post and the principals", () => {
  const TRUSS = readFileSync(
    new URL("../../frames/king-post-truss.frame.yaml", import.meta.url),
    "utf8",
  ).replace(
    "  low-knee:",
    "  strut: {kind: strut, section: 6x6, between: [king-post, principal], legs: {king-post: 36 in, principal: 48 in}}\n  low-knee:",
  );
  // the usual form ends its king-post under the ridge, so that the principals meet its line above it
  const UNDER_RIDGE = TRUSS.replace("to: 15 ft 2 in}", "to: ridge}")
    .replace("from: tie, to: king-post}", "from: tie, to: ridge}")
    .replace("  low-tie:", "  ridge: {kind: ridge, section: 6x9, from: 1, to: 3}\n  low-tie:")
    .replace(/ {2}(heel|king-head):.*\n/g, "");
  const strutsOf = (text: string) => {
    const model = buildModel(readFrame(text).frame);
    expect(model.problems.filter(({ kind }) => kind === "brace-nowhere")).toEqual([]);
    return { model, struts: model.timbers.filter(({ kind }) => kind === "strut") };
  };

  test.each([
    ["a king-post as high as the principals", TRUSS],
    ["a king-post that ends under the ridge", UNDER_RIDGE],
  ])("stand on both sides of %s, by their legs (derived)", (_, text) => {
    const { model, struts } = strutsOf(text);
    expect(struts.map(({ id }) => id).sort()).toEqual(
      ["1-A1", "1-B1", "2-A2", "2-B2", "3-A3", "3-B3"].map((place) => `strut@${place}`),
    );
    // from 36 in down the king-post to 48 in down a principal at 6 in 12
    const pitch = Math.atan(6 / 12);
    const [level, up] = [48 * Math.cos(pitch), 36 - 48 * Math.sin(pitch)];
    for (const { id, axis } of struts) {
      const out = id.includes("-A") ? -1 : 1;
      expectPoint(axis, [0, (out * level) / Math.hypot(level, up), up / Math.hypot(level, up)], id);
    }
    expect(unsupportedEnds(model).filter(({ timber }) => timber.kind === "strut")).toEqual([]);
  });

  test("are joined at both ends and carry", () => {
    const { evaluation } = createFrameService().open("file:///truss.frame.yaml", 1, UNDER_RIDGE);
    const joints = evaluation?.model.joints.filter(({ of }) => of.id === "strut@2-A2") ?? [];
    expect(joints.map(({ end, into }) => `${end} ${into.id}`).sort()).toEqual([
      "foot king-post@2",
      "head principal@A2",
    ]);
    const uses = evaluation?.results.frame?.members.get("strut@2-A2")?.uses ?? [];
    expect(uses.find(({ what }) => what === "compression")?.ratio).toBeGreaterThan(0.01);
  });
});
