/** Sizes and solids of stub tenons, bridles, dovetail laps and scarfs, by hand (joint rules of the manual, plane geometry; derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { drawOut } from "../../../server/core/joinery/dovetail-drying.ts";
import { jointKindOf } from "../../../server/core/joinery/kinds/index.ts";
import { onlyBears } from "../../../server/core/statics/joint-pulls.ts";
import { boxOf, build, expectLength, expectNear, joint, modelOf, stick } from "../model/frames.ts";
import { collisions } from "./clearance.ts";
import { cut, expectPrism, framed, POST } from "./prisms.ts";

describe("stub tenons", () => {
  const foot = (keys: string) =>
    framed(
      { foot: `{kind: stub-tenon, of: post, into: sill${keys}}` },
      {
        sill: "{kind: sill, section: 8x8, walls: [A], top: base, overhang: 12 in}",
        post: "{kind: post, section: 8x8, at: [A1, A2], from: sill, to: plate}",
        plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
      },
    );

  test("1 1/2 in long where the file says nothing (common practice), without pegs", () => {
    const model = foot("");
    const stub = joint(model, "foot@A1");
    expect(stub.sizes.tenon?.length).toEqual({ value: 1.5, from: "default" });
    // set in 2 from the outside face, down from the sill's top at 0
    expectPrism(stub.solids.tenons[0], [0, 2, -1.5], [8, 4, 0]);
    expectPrism(stub.solids.mortises[0], [0, 2, -1.75], [8, 4, 0]);
    expect(stub.solids.pegs).toEqual([]);
    expect(onlyBears(stub)).toBe(true);
    expectLength(model, "post@A1", 88 + 1.5 + (joint(model, "post-plate@A1").sizes.tenon?.length.value ?? 0));
  });

  test("as long as the file says, in a metric file 40 mm", () => {
    expect(joint(foot(", tenon: {length: 2 in}"), "foot@A1").sizes.tenon?.length.value).toBe(2);
    const metric = build({
      units: "mm",
      walls: "{A: 0, B: 3000}",
      bents: "{1: 0, 2: 3000}",
      levels: "{base: 0, top: 2400, tie-top: 2000}",
      members: {
        sill: "{kind: sill, section: 200x200, walls: [A], top: base}",
        post: "{kind: post, section: 200x200, at: [A1], from: sill, to: top}",
      },
      joints: { foot: "{kind: stub-tenon, of: post, into: sill}" },
    });
    expectNear(joint(metric, "foot@A1").sizes.tenon?.length.value, 40 / 25.4, "40 mm");
  });
});

describe("corner bridles", () => {
  const corner = (long = "8x8", short = "8x8") =>
    build({
      members: {
        long: `{kind: sill, section: ${long}, walls: [A, B], top: base}`,
        short: `{kind: sill, section: ${short}, bents: [1], top: base}`,
      },
      joints: { corner: "{kind: corner-bridle, of: short, into: long, pegs: {count: 2, diameter: 3/4 in}}" },
    });

  test("a tongue of a third, down to the quarter inch, in a fork open at the end", () => {
    const model = corner();
    const bridle = joint(model, "corner@1.foot");
    // 8 / 3 = 2.67 → 2 1/2, in the middle of the depth -8 to 0
    expectPrism(bridle.solids.tenons[0], [0, 0, -5.25], [8, 8, -2.75]);
    expectPrism(bridle.solids.mortises[0], [0, 0, -5.25], [8, 8, -2.75]);
    expect(bridle.sizes.tenon?.walls).toEqual([2.75, 2.75]);
    expect(cut(bridle, "tongue thickness")).toBe(2.5);
    // the full section of the joined sill ends at the inner face of the other
    expect(boxOf(stick(model, "short@1")).y).toEqual([8, 136]);
    expectLength(model, "short@1", 144);
  });

  test("the fork runs out of the receiving timber where it goes past the corner", () => {
    const model = build({
      members: {
        long: "{kind: sill, section: 8x8, walls: [A, B], top: base, overhang: {from: 3 in, to: 0}}",
        short: "{kind: sill, section: 6x8, bents: [1], top: base}",
      },
      joints: { corner: "{kind: corner-bridle, of: short, into: long}" },
    });
    const found = model.joints.filter((j) => j.kind === "corner-bridle");
    for (const each of found)
      expectPrism(
        each.solids.mortises[0],
        [-3, each.end === "foot" ? 0 : 136, -5.25],
        [6, each.end === "foot" ? 8 : 144, -2.75],
      );
  });

  test("pegs stand in double shear, one on each side of the middle", () => {
    const bridle = joint(corner(), "corner@1.foot");
    expect(bridle.solids.pegs.map((p) => p.from[0]).sort((a, b) => a - b)).toEqual([2, 6]);
    for (const { from, to } of bridle.solids.pegs) expect([from[2], to[2]].sort()).toEqual([-8, 0].sort());
    expect(onlyBears(bridle)).toBe(false);
  });
});

describe("dovetail laps", () => {
  const lapped = (keys: string, section = "8x8") =>
    framed(
      { lap: `{kind: dovetail-lap, of: cross, into: long${keys}}` },
      {
        long: "{kind: sill, section: 8x8, walls: [A, B], top: base, overhang: 2 ft}",
        cross: `{kind: sill, section: ${section}, bents: [2], top: base}`,
      },
    );

  test("from above: the upper half, to the far face, flared by one in six but no more than a fifth of the width", () => {
    const model = lapped("");
    const lap = joint(model, "lap@2.foot");
    const { dovetail } = lap.sizes;
    expect(dovetail?.length).toEqual({ value: 8, from: "default" });
    expect(dovetail?.depth.value).toBe(4);
    expect(dovetail?.flare.value).toBe(1.375); // 8/6 = 1.333 to the eighth
    expect(dovetail?.neck).toBe(5.25);
    expectPrism(lap.solids.tenons[0], [112, 0, -4], [120, 8, 0]);
    expectPrism(lap.solids.mortises[0], [112, 0, -4], [120, 8, 0]);
    expect(joint(lapped("", "6x8"), "lap@2.foot").sizes.dovetail?.flare.value).toBe(1.25); // 6/5 = 1.2
  });

  test("below the other's top: the socket is open to it, the dovetail is not", () => {
    const model = framed(
      { lap: "{kind: dovetail-lap, of: cross, into: long}" },
      {
        long: "{kind: sill, section: 8x10, walls: [A, B], top: base, overhang: 2 ft}",
        cross: "{kind: sill, section: 8x8, bents: [2], top: -1 in}",
      },
    );
    const lap = joint(model, "lap@2.foot");
    expectPrism(lap.solids.tenons[0], [112, 0, -5], [120, 8, -1]);
    expectPrism(lap.solids.mortises[0], [112, 0, -5], [120, 8, 0]);
  });

  test("a collar tie between principals comes in from its side, on the slant of the rafters", () => {
    const model = build({
      bents: "{1: 0, 2: 10 ft}",
      members: {
        plate: "{kind: plate, section: 8x8, walls: [A, B], top: top}",
        principal: "{kind: rafter, section: 6x8, bents: [1, 2], from: plate, to: ridge}",
        ridge: "{kind: ridge, section: 6x9}",
        collar:
          "{kind: tie, section: 6x6, ends: [{at: A1, level: 11 ft, offset: [0, 36 in, 0]}, {at: B1, level: 11 ft, offset: [0, -36 in, 0]}]}",
      },
      roof: '{kind: gable, pitch: "12:12"}',
      joints: { collar: "{kind: dovetail-lap, of: collar, into: principal}" },
    });
    const found = model.joints.filter((j) => j.kind === "dovetail-lap");
    expect(found).toHaveLength(2);
    for (const each of found) {
      const way = jointKindOf("dovetail-lap").assembly(each).direction;
      expect(Math.abs(way[0])).toBeCloseTo(1, 6);
      expect(collisions(each).hits.slice(0, 3), each.id).toEqual([]);
      // 6 in across the grain of a rafter at 45°
      expect(each.sizes.dovetail?.tip).toBeCloseTo(6 * Math.SQRT2, 6);
    }
  });

  test("draws out by shrinkage across the tip over twice the slope (Wood Handbook Eq 4-9, derived); dry timber does not", () => {
    const model = lapped("");
    const lap = joint(model, "lap@2.foot");
    const { dovetail } = lap.sizes;
    if (!dovetail) throw new Error("no dovetail");
    // eastern white pine 6.1 % tangential (published), to 12 % of 30 %: 3.66 % of 8 in; slope 1.375 / 8
    expectNear(drawOut(lap.of, dovetail), (0.061 * 0.6 * 8) / (2 * (1.375 / 8)), "drawn out", 1e-9);
    expectNear(cut(lap, "draws out as it dries, at most"), 0.8518, "row", 1e-3);
    const dry = { ...lap.of, class: { ...lap.of.class!, seasoning: "dry" as const } };
    expect(drawOut(dry, dovetail)).toBe(0);
  });
});

describe("scarfs", () => {
  const spliced = (kind: string, keys = "") =>
    framed(
      { scarf: `{kind: ${kind}, of: plate, into: plate${keys}}` },
      {
        post: POST,
        plate: `{kind: plate, section: 8x8, walls: [A, B], top: top, splice: {at: 5 ft, kind: ${kind}}}`,
      },
    );

  test("the kind that the splice names holds", () => {
    const model = build({
      bents: "{1: 0, 2: 10 ft}",
      members: {
        post: POST,
        plate: "{kind: plate, section: 8x8, walls: [A, B], top: top, splice: {at: 5 ft, kind: bladed-scarf}}",
      },
    });
    expect(joint(model, "plate-scarf@A.1").kind).toBe("bladed-scarf");
  });

  test("bladed: three depths with blades of half the depth; each half is cut away up to the other's slot", () => {
    const model = spliced("bladed-scarf");
    const scarf = joint(model, "scarf@A.1");
    expect(scarf.sizes.lap).toEqual({ length: { value: 24, from: "default" }, depth: 4 });
    expect(scarf.sizes.blade).toEqual({
      thickness: { value: 2, from: "default" },
      length: { value: 4, from: "default" },
    });
    // lap 48 to 72 about 60 in, width 0 to 8, depth 88 to 96
    expectPrism(scarf.solids.tenons[0], [68, 3, 92], [72, 5, 96]);
    expectPrism(scarf.solids.mortises[0], [48, 0, 92], [68, 8, 96]);
    expectPrism(scarf.solids.mortises[1], [68, 3, 92], [72, 5, 96]);
    expectPrism(scarf.solids.notches[0], [52, 0, 88], [72, 8, 92]);
    expectPrism(scarf.solids.notches[1], [48, 3, 88], [52, 5, 92]);
    expectLength(model, "plate@A.1", 72);
    expectLength(model, "plate@A.2", 72);
    // two pegs across each blade, in its middle
    expect(scarf.solids.pegs.map((p) => [p.from[0], p.from[2]])).toEqual([
      [70, 93],
      [70, 95],
      [50, 91],
      [50, 89],
    ]);
  });

  test("stop-splayed: four and a half depths from butt to butt, butts of a quarter undercut by a quarter of that", () => {
    const model = spliced("stop-splayed-scarf");
    const scarf = joint(model, "scarf@A.1");
    const { splay, lap } = scarf.sizes;
    expect(lap).toEqual({ length: { value: 36, from: "default" }, depth: 4.625 });
    expect(splay).toMatchObject({ butt: { value: 2 }, undercut: 0.5, key: { length: 1.25, height: 1.25 } });
    // butts 42 to 78 in on the faces, half an inch further inside
    expectLength(model, "plate@A.1", 78.5);
    expectLength(model, "plate@A.2", 120 - 41.5);
    expectPrism(scarf.solids.notches[0], [41.5, 0, 88], [78.5, 8, 94]);
    expectPrism(scarf.solids.mortises[0], [41.5, 0, 90], [78.5, 8, 96]);
    // what is left of both fills the lap but for the opening of the wedges: areas seen from the side
    const area = (ring: readonly (readonly [number, number])[]): number =>
      Math.abs(
        ring.reduce((sum, [x, y], i) => {
          const [u, v] = ring[(i + 1) % ring.length]!;
          return sum + x * v - u * y;
        }, 0) / 2,
      );
    const taken = [...scarf.solids.notches, ...scarf.solids.mortises].reduce(
      (sum, p) => sum + area(p.outline),
      0,
    );
    expect(taken).toBeCloseTo(37 * 8 + 1.25 * 1.25, 6);
    expect(scarf.solids.wedges).toHaveLength(2);
    expect(scarf.solids.wedges.reduce((sum, w) => sum + area(w.outline), 0)).toBeCloseTo(1.25 * 8, 6);
    expect(cut(scarf, "wedge, thick end")).toBeCloseTo(1.025, 6); // 5/8 and 1 in 10 over 4 in
    expect(cut(scarf, "wedge, thin end")).toBeCloseTo(0.225, 6);
  });

  test("sizes that the file gives hold", () => {
    const bladed = joint(
      spliced("bladed-scarf", ", lap: 30 in, blade: {thickness: 1 1/2 in, length: 5 in}"),
      "scarf@A.1",
    );
    expectPrism(bladed.solids.tenons[0], [70, 3.25, 92], [75, 4.75, 96]);
    const splayed = joint(spliced("stop-splayed-scarf", ", lap: 40 in, butt: 3 in"), "scarf@A.1");
    expect(splayed.sizes.splay).toMatchObject({ butt: { value: 3, from: "file" }, undercut: 0.75 });
    expect(splayed.sizes.lap?.length).toEqual({ value: 40, from: "file" });
  });

  test("go together the way they say and no other: blades down, under-squinted butts down and then along", () => {
    const bladed = joint(spliced("bladed-scarf"), "scarf@A.1");
    const splayed = joint(spliced("stop-splayed-scarf"), "scarf@A.1");
    for (const each of [bladed, splayed]) expect(collisions(each).hits.slice(0, 3), each.id).toEqual([]);
    expect(jointKindOf("stop-splayed-scarf").assembly(splayed)).toEqual({
      direction: [-0, -0, -1],
      last: { direction: [1, 0, 0], distance: 0.5 },
    });
    const straight = { direction: [0, 0, -1] } as const;
    const along = { direction: [1, 0, 0] } as const;
    expect(collisions(splayed, straight).hits.length).toBeGreaterThan(0);
    expect(collisions(splayed, along).hits.length).toBeGreaterThan(0);
  });

  test("a hinge: it bears, and its pegs keep it from being called loose", () => {
    expect(onlyBears(joint(spliced("bladed-scarf"), "scarf@A.1"))).toBe(false);
    expect(onlyBears(joint(spliced("stop-splayed-scarf", ", pegs: {count: 0}"), "scarf@A.1"))).toBe(true);
  });
});

describe("pegs of timbers that are bored together", () => {
  const drawn = (j: ReturnType<typeof joint>): number[] => [
    j.sizes.pegs?.draw.value ?? Number.NaN,
    jointKindOf(j.kind)
      .cutSheet(j)
      .filter(({ label }) => label === "drawbore offset").length,
  ];
  const SILLS = {
    long: "{kind: sill, section: 8x8, walls: [A, B], top: base, overhang: 2 ft}",
    cross: "{kind: sill, section: 8x8, bents: [2], top: base}",
  };
  const crossing = (keys: string) =>
    joint(framed({ lap: `{kind: dovetail-lap, of: cross, into: long${keys}}` }, SILLS), "lap@2.foot");

  test("nothing is drawn, and no cut sheet asks for an offset (common practice, no source)", () => {
    expect(drawn(crossing(""))).toEqual([0, 0]);
  });
  test("a draw that the file names is marked all the same", () => {
    expect(drawn(crossing(", pegs: {count: 1, diameter: 3/4 in, draw: 1/16 in}"))).toEqual([1 / 16, 1]);
  });
  test("every kind of lap and scarf; the tongue of a bridle is drawn into its fork", () => {
    const corner = (kind: string) =>
      joint(
        build({
          members: {
            long: "{kind: sill, section: 8x8, walls: [A, B], top: base}",
            short: "{kind: sill, section: 8x8, bents: [1], top: base}",
          },
          joints: { corner: `{kind: ${kind}, of: short, into: long}` },
        }),
        "corner@1.foot",
      );
    expect(drawn(corner("corner-half-lap"))).toEqual([0, 0]);
    expect(drawn(corner("corner-bridle"))).toEqual([3 / 32, 1]);
    const stall = modelOf(readFileSync("test/frames/market-stall.frame.yaml", "utf8"));
    const scarfs = stall.joints.filter(({ kind }) => kind.endsWith("-scarf"));
    expect(new Set(scarfs.map(({ kind }) => kind)).size).toBeGreaterThan(1);
    for (const scarf of scarfs) expect(drawn(scarf), scarf.id).toEqual([0, 0]);
  });
});
