/** Sizes and solids of the kinds of joint, by hand (joint rules of the manual, plane geometry; derived). */
import { describe, expect, test } from "vitest";
import { boxOf, build, expectNear, joint, stick } from "../model/frames.ts";
import { cut, expectPrism, framed, POST, prismBox } from "./prisms.ts";

describe("mortise and tenon", () => {
  const plate = (overhang: string, keys = "") =>
    framed(
      {
        head: `{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 in${keys}}}`,
      },
      { post: POST, plate: `{kind: plate, section: 8x10, walls: [A, B], top: top, overhang: ${overhang}}` },
    );

  test("full width where the mortised timber runs on", () => {
    const head = joint(plate("12 in"), "head@A1");
    expect(head.sizes.tenon?.width.value).toBe(8);
    expect(head.sizes.tenon?.relishCut).toBe(0);
    // set in 2 from the outside face, 6 up from the underside 86
    expectPrism(head.solids.tenons[0], [0, 2, 86], [8, 4, 92]);
    expectPrism(head.solids.mortises[0], [0, 2, 86], [8, 4, 92.25]);
  });

  test("held back 1 in from a free end of the mortised timber, on that side", () => {
    const model = plate("0");
    const first = joint(model, "head@A1");
    expect(first.sizes.tenon?.width.value).toBe(7);
    expect(first.sizes.tenon?.relishCut).toBe(1);
    expectPrism(first.solids.tenons[0], [1, 2, 86], [8, 4, 92]);
    expectPrism(joint(model, "head@A2").solids.tenons[0], [112, 2, 86], [119, 4, 92]);
    expect(cut(first, "tenon width")).toBe(7);
  });

  test("only as much as the end is near", () => {
    expect(joint(plate("1/4 in"), "head@A1").sizes.tenon?.width.value).toBe(7.25);
    expect(joint(plate("1 in"), "head@A1").sizes.tenon?.width.value).toBe(8);
    // the plate stops 1 in short of the post's outside face
    expectPrism(joint(plate("0, from: 1 in"), "head@A1").solids.tenons[0], [2, 2, 86], [8, 4, 92]);
  });

  test("a width that the file gives is not cut", () => {
    const head = joint(plate("0", ", width: 7 1/2 in"), "head@A1");
    expect(head.sizes.tenon?.width).toEqual({ value: 7.5, from: "file" });
    expect(head.sizes.tenon?.relishCut).toBe(0);
  });

  test("set-in is measured on the mortised timber from its reference face", () => {
    const head = joint(plate("12 in", ", set-in: 1 1/2 in"), "head@B2");
    expect(head.sizes.tenon?.walls).toEqual([1.5, 4.5]);
    // wall B looks out at 144
    expectPrism(head.solids.tenons[0], [112, 140.5, 86], [120, 142.5, 92]);
  });

  test("widths that differ: in the middle of the joined timber", () => {
    const model = framed(
      { head: "{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 in}}" },
      {
        post: "{kind: post, section: 8x6, at: [A1], from: base, to: plate}",
        plate: "{kind: plate, section: 8x10, walls: [A], top: top, overhang: 12 in}",
      },
    );
    expectPrism(joint(model, "head@A1").solids.tenons[0], [0, 2, 86], [8, 4, 92]);
  });

  test("through, flush or with a tail past the far face", () => {
    const tie = (keys: string) =>
      framed(
        {
          end: `{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, through: true}${keys}}`,
        },
        {
          post: POST,
          plate: "{kind: plate, section: 8x10, walls: [A, B], top: top}",
          tie: "{kind: tie, section: 8x8, bents: [1], top: tie-top}",
        },
      );
    const flush = tie("");
    expectNear(joint(flush, "end@A1").sizes.tenon?.length.value, 7.5, "8 - 1/2");
    expectNear(stick(flush, "tie@1").length, 144, "to the outside faces");
    const tailed = tie(", tail: 4 in");
    expectNear(joint(tailed, "end@A1").sizes.tenon?.length.value, 11.5, "7 1/2 + 4");
    expectNear(joint(tailed, "end@A1").sizes.tenon?.mortiseDepth, 7.5, "the wood behind the housing");
    expectNear(stick(tailed, "tie@1").length, 152, "4 in past both faces");
    expect(boxOf(stick(tailed, "tie@1")).y).toEqual([7.5, 136.5]);
  });
});

describe("tenons from both sides of a timber", () => {
  const into = (section: string) =>
    build({
      members: {
        post: `{kind: post, section: ${section}, at: [A2], from: base, to: plate}`,
        plate: "{kind: plate, section: 8x10, walls: [A], top: top}",
        girt: "{kind: girt, section: 6x6, walls: [A], from: 1, to: 3, top: 5 ft}",
        ends: "{kind: post, section: 8x8, at: [A1, A3], from: base, to: plate}",
      },
    }).joints.filter((j) => j.of.member === "girt" && j.into.member === "post");
  test("leave wood between their mortises", () => {
    for (const section of ["8x8", "7x7", "10x10"]) {
      const both = into(section);
      expect(both).toHaveLength(2);
      const deep = both.reduce((sum, j) => sum + j.sizes.tenon!.mortiseDepth + j.sizes.housing.value, 0);
      expect(deep, section).toBeLessThan(both[0]!.face.thickness - 1e-6);
    }
  });
});

describe("brace tenons", () => {
  const braces = (bents: string, at: string) =>
    build({
      bents,
      members: {
        post: `{kind: post, section: 8x8, at: ${at}, from: base, to: plate}`,
        plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
      },
      joints: { ends: "{kind: brace-tenon, of: knee, into: [post, plate], housing: 3/4 in}" },
    });

  test("two that meet in a post share its wood: half between the housings less 1/2 in", () => {
    const model = braces("{1: 0, 2: 10 ft, 3: 20 ft}", "[A1, A2, A3]");
    // (8 - 1.5) / 2 - 0.5 = 2.75
    expectNear(joint(model, "ends@A2-A1.foot").sizes.tenon?.length.value, 2.75, "shared");
    expectNear(joint(model, "ends@A2-A1.foot").sizes.tenon?.room, 3.25, "room to the middle");
    expectNear(joint(model, "ends@A1-A2.foot").sizes.tenon?.length.value, 3, "alone");
  });

  test("shares are rounded down, so that both mortises leave wood between them", () => {
    const model = build({
      bents: "{1: 0, 2: 10 ft, 3: 20 ft}",
      members: {
        post: "{kind: post, section: 7 1/4 x 7 1/4, at: [A1, A2, A3], from: base, to: plate}",
        plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
        knee: "{kind: brace, section: 4x6, between: [post, plate], leg: 30 in}",
      },
      joints: { ends: "{kind: brace-tenon, of: knee, into: [post, plate], housing: 1/2 in}" },
    });
    // (7.25 - 1) / 2 - 0.5 = 2.625
    expectNear(joint(model, "ends@A2-A1.foot").sizes.tenon?.length.value, 2.5, "shared");
  });

  test("a housing admits the brace on both sides of a post and of a corner: from its toe up to its other edge", () => {
    const model = braces("{1: 0, 2: 10 ft, 3: 20 ft}", "[A1, A2, A3]");
    // toe of the foot at 58.75; bearing 6 √2; 3/4 in farther at the unhoused face, at 45°
    const [low, high] = [58.75, 58.75 + 6 * Math.SQRT2 + 0.75];
    expectPrism(joint(model, "ends@A2-A1.foot").solids.housings[0], [116, 0, low], [116.75, 4, high]);
    expectPrism(joint(model, "ends@A2-A3.foot").solids.housings[0], [123.25, 0, low], [124, 4, high]);
    // toes of the heads 30 in from the housed post
    const long = 6 * Math.SQRT2 + 0.75;
    expectPrism(joint(model, "ends@A2-A1.head").solids.housings[0], [86.75, 0, 88], [86.75 + long, 4, 88.75]);
    expectPrism(
      joint(model, "ends@A2-A3.head").solids.housings[0],
      [153.25 - long, 0, 88],
      [153.25, 4, 88.75],
    );
  });

  test("the toe stands square to the post at the end of the leg, the other edge follows the brace", () => {
    const model = braces("{1: 0, 2: 10 ft}", "[A1, A2]");
    const tenon = joint(model, "ends@A1-A2.foot").solids.tenons[0]!;
    // housed face x 8 - 0.75, plate's underside 88 + 0.75, toe at 88.75 - 30; bearing 6 √2
    const toe = 58.75;
    expectPrism(tenon, [4.25, 1.5, toe], [7.25, 3, toe + 6 * Math.SQRT2]);
    const corners = tenon.outline.map(([u, v]) => [
      tenon.base[0] + u * tenon.u[0] + v * tenon.v[0],
      tenon.base[2] + u * tenon.u[2] + v * tenon.v[2],
    ]);
    const tips = corners.filter(([x]) => Math.abs(x! - 4.25) < 1e-6).map(([, z]) => z!);
    expectNear(Math.min(...tips), toe, "toe");
    expectNear(Math.max(...tips), toe + 6 * Math.SQRT2 - 3, "3 in along 45°");
  });
});

describe("wedged half-dovetail", () => {
  const model = framed(
    {
      end: "{kind: wedged-half-dovetail, of: tie, into: post, housing: 1 in, tenon: {thickness: 2 in}, drop: 1 1/2 in, pegs: {count: 3, diameter: 3/4 in}}",
    },
    {
      post: POST,
      plate: "{kind: plate, section: 8x10, walls: [A, B], top: top}",
      tie: "{kind: tie, section: 8x10, bents: [1], top: tie-top}",
    },
  );
  const end = joint(model, "end@A1");

  test("level on top, cut up below at the shoulder, full depth at the tip", () => {
    // tie 74 to 84; shoulder at y 7, tip at 0
    expectPrism(end.solids.tenons[0], [2, 0, 74], [4, 7, 84]);
    expect(cut(end, "tenon depth at the shoulder")).toBe(8.5);
    expect(cut(end, "tenon depth at the tip")).toBe(10);
  });

  test("goes in, then down: mortise and housing stand the drop above it, the roof rises outward", () => {
    // 84 + 1.5 + 7 / 10
    expectPrism(end.solids.mortises[0], [2, 0, 74], [4, 7, 86.2]);
    expectPrism(end.solids.housings[0], [0, 7, 74], [8, 8, 85.5]);
    expectPrism(end.solids.wedges[0], [2, 0, 84], [4, 7, 86.2]);
    expect(cut(end, "mortise height at the inner face")).toBe(10);
    expectNear(cut(end, "mortise height at the outer face"), 12.2, "10 + 1.5 + 0.7");
    expect(cut(end, "wedge height, thin end")).toBe(1.5);
    // through the mortise of 7 in, and 10 × 0.0366 × 10 in more as the pine dries, to the half inch
    expect(cut(end, "wedge length")).toBe(11);
    expect(cut(end, "length in the mortise")).toBe(7);
    expectNear(cut(end, "driven on as the timber dries, at most"), 3.66, "6.1 × (1 − 12/30) %");
    expectNear(cut(end, "wedge height, thick end"), 1.5 + 1.1, "thick end");
    expectNear(cut(end, "wedge slope"), (Math.atan(0.1) * 180) / Math.PI, "1 in 10");
  });

  test("has as many pegs as it says, and tells where along the tenon", () => {
    expect(end.solids.pegs).toHaveLength(3);
    // mean depth (8.5 + 10) / 2, two rows over the neck of 8.5
    expectNear(cut(end, "tenon top to peg hole, peg 2"), (8.5 + 10) / 4 - 8.5 / 4, "from the top");
    expectNear(cut(end, "peg hole to peg hole, peg 2 to pegs 1 and 3"), 8.5 / 2, "apart");
    expect(cut(end, "face to peg hole, pegs 1 and 2")).toBeLessThan(cut(end, "face to peg hole, peg 3") ?? 0);
    const heights = end.solids.pegs.map((p) => 84 - p.from[2]);
    expectNear(Math.min(...heights), (8.5 + 10) / 4 - 8.5 / 4, "as the first row stands");
  });

  test("with a tail past the far face or short of it: the mortise is cut for the depth that leaves it", () => {
    const other = (keys: string) =>
      joint(
        framed(
          {
            end: `{kind: wedged-half-dovetail, of: tie, into: post, housing: 1 in, drop: 1 1/2 in, ${keys}}`,
          },
          {
            post: POST,
            plate: "{kind: plate, section: 8x10, walls: [A, B], top: top}",
            tie: "{kind: tie, section: 8x10, bents: [1], top: tie-top}",
          },
        ),
        "end@A1",
      );
    const tailed = other("tenon: {thickness: 2 in}, tail: 3 in");
    // 8.5 at the shoulder, 10 after 7 + 3: 9.55 at the far face, and 1.5 + 0.7 above it
    expectNear(cut(tailed, "tenon depth at the tip"), 10, "full depth at the tip");
    expectNear(cut(tailed, "mortise height at the outer face"), 9.55 + 2.2, "outer face");
    const { high, low } = prismBox(tailed.solids.mortises[0]!);
    expectNear(high[2]! - low[2]!, 9.55 + 2.2, "as the mortise is");
    const short = other("tenon: {thickness: 2 in, length: 3 1/2 in}");
    expectNear(cut(short, "tenon depth at the tip"), 9.25, "halfway to the far face");
    // blind: as deep as the tenon is long and 1/4 in of room, in sheet and solid alike; the tail goes on to fall, the roof to rise
    expectNear(cut(short, "mortise depth from the housed face"), 3.75, "blind");
    expect(short.sizes.tenon?.through).toBe(false);
    const deep = prismBox(short.solids.mortises[0]!);
    expectNear(deep.high[1]! - deep.low[1]!, 3.75, "the solid");
    expectNear(
      cut(short, "mortise height at its bottom"),
      8.5 + 3.75 * (1.5 / 7) + 1.5 + 0.375,
      "its bottom",
    );
    expectNear(deep.high[2]! - deep.low[2]!, 8.5 + 3.75 * (1.5 / 7) + 1.5 + 0.375, "as the mortise is");
    expect(cut(short, "mortise height at the outer face")).toBeUndefined();
    // as long as the wood less the room it needs, it is through
    const flush = other("tenon: {thickness: 2 in, length: 6 3/4 in}");
    expect([flush.sizes.tenon?.through, cut(flush, "mortise depth from the housed face")]).toEqual([true, 7]);
  });
});

describe("corner half-laps", () => {
  const lap = (long: string, short: string) =>
    build({
      members: {
        long: `{kind: sill, section: ${long}, walls: [A, B], top: base}`,
        short: `{kind: sill, section: ${short}, bents: [1], top: base}`,
      },
    });

  test("each gives half of the depth", () => {
    const corner = joint(lap("8x8", "8x8"), "short-corner@1.foot");
    expectPrism(corner.solids.notches[0], [0, 0, -8], [8, 8, -4]); // short, below
    expectPrism(corner.solids.mortises[0], [0, 0, -4], [8, 8, 0]); // long, above
    expectNear(corner.sizes.lap?.depth, 4, "depth");
    expect(corner.into.id).toBe("long@A");
  });

  test("depths that differ, flush on top: down to the middle of what both have", () => {
    const corner = joint(lap("8x10", "6x6"), "short-corner@1.foot");
    expectPrism(corner.solids.notches[0], [0, 0, -6], [6, 8, -3]);
    expectPrism(corner.solids.mortises[0], [0, 0, -3], [6, 8, 0]);
    const other = joint(lap("8x6", "6x10"), "short-corner@1.foot");
    expectPrism(other.solids.notches[0], [0, 0, -10], [6, 8, -3]);
    expect(cut(other, "cut away below")).toBe(7);
    expect(cut(other, "cut away above")).toBe(3);
  });

  test("as many pegs as the file says, across the joined timber", () => {
    const model = build({
      members: {
        long: "{kind: sill, section: 8x8, walls: [A, B], top: base}",
        short: "{kind: sill, section: 8x8, bents: [1], top: base}",
      },
      joints: { lap: "{kind: corner-half-lap, of: short, into: long, pegs: {count: 2, diameter: 3/4 in}}" },
    });
    const { pegs } = joint(model, "lap@1.foot").solids;
    expect(pegs.map((p) => p.from[0]).sort((a, b) => a - b)).toEqual([2, 6]);
    for (const { from, to } of pegs) expect([from[1], from[2], to[2]]).toEqual([4, 0, -8]);
  });

  test("the same whichever is written first", () => {
    const turned = build({
      members: {
        short: "{kind: sill, section: 8x8, bents: [1], top: base}",
        long: "{kind: sill, section: 8x8, walls: [A, B], top: base}",
      },
    });
    expect(turned.joints.map((j) => j.id).sort()).toEqual(
      lap("8x8", "8x8")
        .joints.map((j) => j.id)
        .sort(),
    );
  });
});
