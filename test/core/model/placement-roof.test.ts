/** Roof planes, ridge, king-posts, rafters, principal rafters, purlins (placement rules, plane trigonometry; derived). */
import { describe, expect, test } from "vitest";
import {
  boxOf,
  build,
  expectBox,
  expectNear,
  idsOf,
  joint,
  modelOf,
  problem,
  problemsOf,
  stick,
  textOf,
} from "./frames.ts";
import { GABLE, gable, rafters, TOP0 } from "./gables.ts";

describe("gable", () => {
  test("default seat: the largest quarter inch within a quarter of the depth", () => {
    const seat = (pitch: string, section = "2x6"): number | undefined =>
      joint(
        build({
          members: GABLE,
          roof: `{kind: gable, pitch: "${pitch}", rafters: {section: ${section}, seat: {kind: birds-mouth}, count: 2, overhang: {eave: 1 ft}}}`,
        }),
        "rafter-seat@A.1",
      ).sizes.seat?.level.value;
    expect(seat("12:12")).toBe(2); // 1.5 / 0.7071 = 2.12
    expect(seat("9:12")).toBe(2.5); // 1.5 / 0.6 exactly
    expect(seat("3:12")).toBe(6); // 1.5 / 0.2425 = 6.18
    expect(seat("1:12")).toBe(8); // 18.06, but the plate is 8 in wide
    expect(seat("24:12", "2x3")).toBe(0.75); // 0.75 / 0.8944 = 0.84
  });

  test("a seat that the file gives lowers the rafters by as much as its plumb cut grows", () => {
    const model = build({
      members: GABLE,
      roof: `{kind: gable, pitch: "12:12", rafters: {section: 2x6, seat: {kind: birds-mouth, length: 1 in}, count: 2, overhang: {eave: 1 ft}}}`,
    });
    expectNear(model.roof?.slopes[0]?.plane.point[2], 96 - 1 + 6 * Math.SQRT2, "tops at the outside face");
    expect(joint(model, "rafter-seat@A.1").sizes.seat?.level).toEqual({ value: 1, from: "file" });
  });

  test("rafters meet in the middle without a ridge, and in the ridge's housings with one", () => {
    const bare = stick(gable(), "rafter@A.1");
    expectNear(bare.origin[1], -12, "tail");
    expectNear(bare.head.point[1], 72, "peak");
    const ridge = gable({}, { ridge: "{kind: ridge, section: 6x9}" }, ", head: {kind: housed, into: ridge}");
    expectBox(ridge, "ridge", [0, 240], [69, 75], [TOP0 + 69 - 9, TOP0 + 69]);
    expectNear(stick(ridge, "rafter@A.1").head.point[1], 69.5, "1/2 in housing");
    const deep = gable(
      {},
      { ridge: "{kind: ridge, section: 6x9}" },
      ", head: {kind: housed, into: ridge, housing: 1 in}",
    );
    expectNear(stick(deep, "rafter@B.1").head.point[1], 74, "1 in housing");
  });

  test("rake rafters have their outer faces at the plates' ends", () => {
    const model = gable(
      {},
      { plate: "{kind: plate, section: 8x8, walls: [A, B], top: top, overhang: {from: 6 in, to: 1 ft}}" },
    );
    const ids = idsOf(model, "rafter").filter((id) => id.startsWith("rafter@A"));
    expectNear(boxOf(stick(model, ids[0]!)).x[0], -6, "first");
    expectNear(boxOf(stick(model, ids.at(-1)!)).x[1], 252, "last");
    // centers -5 to 251: 256 / 24 = 10.67, so 11 bays
    expect(ids).toHaveLength(12);
  });

  test("sit on the plate also where they end at its face", () => {
    const model = build({
      members: GABLE,
      roof: '{kind: gable, pitch: "12:12", rafters: {section: 2x6, seat: {kind: birds-mouth}, count: 2, overhang: {eave: 0}}}',
    });
    expect(joint(model, "rafter-seat@A.1").kind).toBe("birds-mouth");
    // 72 √2 on the center line, and 6 × tan 45° more from point to point
    expectNear(stick(model, "rafter@A.1").length, 72 * Math.SQRT2 + 6, "length");
  });

  test("centered walls, a spliced plate: from the plates' true faces and ends", () => {
    const model = gable(
      { walls: "{A: {at: 0, reference: center}, B: 12 ft}" },
      { plate: "{kind: plate, section: 8x8, walls: [A, B], top: top, splice: {at: 2}}" },
    );
    // plates -4 to 4 and 136 to 144: the middle of -4 and 144
    expectNear(stick(model, "rafter@A.1").head.point[1], 70, "peak");
    expectNear(boxOf(stick(model, "rafter@A.1")).x[0], 0, "rake");
  });

  test("what the planes lack is said once, at what asks for them", () => {
    const lacking = (members: Record<string, string>, roof: string, unreadable = false) =>
      problemsOf(modelOf(textOf({ members, roof }), unreadable));
    const ridge = { ridge: "{kind: ridge, section: 6x9}" };
    // the missing pitch is a finding of its own
    expect(lacking({ ...GABLE, ...ridge }, `{kind: gable, ${rafters()}}`, true)).toEqual([]);
    expect(lacking({ ...GABLE, ...ridge }, '{kind: gable, pitch: "6:12"}')).toEqual([
      "placement-missing /members/ridge",
    ]);
    const post = { post: "{kind: post, section: 8x8, at: [A1], from: base, to: top}" };
    expect(lacking(post, `{kind: gable, pitch: "6:12", ${rafters()}}`)).toEqual([
      "placement-missing /roof/rafters",
    ]);
    const garbled = { ...post, plate: "{kind: plate, section: 8x8x, walls: [A, B], top: top}" };
    expect(lacking(garbled, `{kind: gable, pitch: "6:12", ${rafters()}}`, true)).toEqual([]);
  });

  test("a ridge without a roof needs one", () => {
    const model = build({ members: { ...GABLE, ridge: "{kind: ridge, section: 6x9}" } });
    expect(problem(model, "placement-missing")).toMatchObject({ path: "/members/ridge", needs: ["roof"] });
  });
});

describe("king-posts", () => {
  test("stand under the ridge, from the tie to its underside", () => {
    const model = gable(
      {},
      {
        tie: "{kind: tie, section: 8x10, bents: [1, 3], top: tie-top}",
        king: "{kind: king-post, section: 6x8, bents: [1, 3], from: tie, to: ridge}",
        ridge: "{kind: ridge, section: 6x9}",
      },
    );
    expectBox(model, "king@1", [0, 6], [68, 76], [84, TOP0 + 69 - 9]);
    expectBox(model, "king@3", [234, 240], [68, 76], [84, TOP0 + 69 - 9]);
  });

  test("without a roof they stand midway between the outer walls", () => {
    const model = build({
      members: { king: "{kind: king-post, section: 6x8, bents: [2], from: tie-top, to: top}" },
    });
    expectBox(model, "king@2", [117, 123], [68, 76], [84, 96]);
  });
});

describe("shed: two of pitch, low plate and high plate", () => {
  // low plate on B, 136 to 144; high plate on A, 0 to 8: run 136 from outside face to inside face
  const shed = (low: string, high: string, pitch: string) =>
    build({
      members: {
        low: `{kind: plate, section: 8x8, walls: [B]${low}}`,
        high: `{kind: plate, section: 8x10, walls: [A]${high}}`,
      },
      roof: `{kind: shed, high: A${pitch}, rafters: {section: 2x6, seat: {kind: birds-mouth}, count: 2, overhang: {eave: 1 ft, high: 6 in}}}`,
    });
  const rise = (136 * 3) / 12; // 34

  test.each([
    ["the pitch follows from the plates", ", top: 8 ft", `, top: ${96 + rise} in`, ""],
    ["the low plate follows", "", `, top: ${96 + rise} in`, ', pitch: "3:12"'],
    ["the high plate follows", ", top: 8 ft", "", ', pitch: "3:12"'],
    ["all three agree", ", top: 8 ft", `, top: ${96 + rise} in`, ', pitch: "3:12"'],
  ])("%s", (_, low, high, pitch) => {
    const model = shed(low, high, pitch);
    expect(problemsOf(model)).toEqual([]);
    expectBox(model, "low@B", [0, 240], [136, 144], [88, 96]);
    expectBox(model, "high@A", [0, 240], [0, 8], [96 + rise - 10, 96 + rise]);
    expectNear(model.roof?.slopes[0]?.slope, 0.25, "3:12");
    const rafter = stick(model, "rafter@B.1");
    expectNear(rafter.origin[1], 156, "tail");
    expectNear(rafter.head.point[1], -6, "high end");
    // both seats 6 in: 1.5 / 0.2425 = 6.18
    expectNear(joint(model, "rafter-seat@B.1").solids.notches[0]!.base[1], 138, "low seat");
    expectNear(joint(model, "rafter-seat@B.1-A").solids.notches[0]!.base[1], 2, "high seat");
    expectNear(joint(model, "rafter-seat@B.1-A").solids.notches[0]!.base[2], 96 + rise, "on the high plate");
  });

  test.each([[""], [", to: high"], [", from: low, to: high"]])(
    "principal rafters%s run over both plates and sit on them",
    (ends) => {
      const model = build({
        members: {
          low: "{kind: plate, section: 8x8, walls: [B], top: 8 ft}",
          high: `{kind: plate, section: 8x10, walls: [A], top: ${96 + rise} in}`,
          principal: `{kind: rafter, section: 6x8, bents: [1, 3]${ends}, overhang: {from: 1 ft, to: 6 in}}`,
        },
        roof: "{kind: shed, high: A}",
      });
      const rafter = stick(model, "principal@B1");
      expectNear(rafter.origin[1], 156, "tail");
      expectNear(rafter.head.point[1], -6, "high end");
      const seats = model.joints.filter((j) => j.of === rafter).map((j) => `${j.kind} ${j.into.id}`);
      expect(seats.sort()).toEqual(["birds-mouth high@A", "birds-mouth low@B"]);
    },
  );

  test("all three apart is said", () => {
    const model = shed(", top: 8 ft", ", top: 11 ft", ', pitch: "4:12"');
    const differs = problem(model, "derived-differs");
    expect(differs).toMatchObject({ path: "/roof/pitch", what: "pitch" });
    expectNear(differs.typed, 1 / 3, "typed");
    expectNear(differs.derived, 36 / 136, "derived");
    // 1/16 in over the run is what anyone marks out
    expect(problemsOf(shed(", top: 8 ft", `, top: ${96 + rise + 1 / 32} in`, ', pitch: "3:12"'))).toEqual([]);
    expect(problemsOf(shed(", top: 8 ft", `, top: ${96 + rise + 1 / 8} in`, ', pitch: "3:12"'))).toHaveLength(
      1,
    );
  });

  test("two left out is said, not waited for", () => {
    expect(problemsOf(shed("", "", ', pitch: "3:12"'))[0]).toMatch(/^placement-(circular|missing)/);
    expect(problemsOf(shed(", top: 8 ft", "", ""))).toEqual(["placement-missing /members/high"]);
  });

  test("the high wall may be either", () => {
    const model = build({
      members: {
        low: "{kind: plate, section: 8x8, walls: [A], top: 8 ft}",
        high: "{kind: plate, section: 8x8, walls: [B], top: 10 ft}",
      },
      roof: "{kind: shed, high: B, rafters: {section: 2x6, seat: {kind: birds-mouth}, count: 2, overhang: {eave: 0, high: 0}}}",
    });
    expectNear(model.roof?.slopes[0]?.slope, 24 / 136, "slope");
    expect(idsOf(model, "rafter")).toEqual(["rafter@A.1", "rafter@A.2"]);
    expect(model.joints.map((j) => `${j.kind} ${j.into.id}`).sort()).toEqual([
      "birds-mouth high@B",
      "birds-mouth high@B",
      "birds-mouth low@A",
      "birds-mouth low@A",
    ]);
  });

  test("walls that coincide have no roof and no endless slope", () => {
    const model = build({
      walls: "{A: 0, B: 4 in}",
      members: {
        low: "{kind: plate, section: 8x8, walls: [B], top: 8 ft}",
        high: "{kind: plate, section: 8x8, walls: [A], top: 10 ft}",
      },
      roof: "{kind: shed, high: A, rafters: {section: 2x6, seat: {kind: birds-mouth}, count: 2}}",
    });
    expect(idsOf(model, "rafter")).toEqual([]);
    expect(model.roof).toBeUndefined();
  });
});

describe("rafter series", () => {
  test("fixed leaves the remainder in the last bay; a count goes before the spacing", () => {
    const xs = (keys: string) => {
      const model = build({
        members: GABLE,
        roof: `{kind: gable, pitch: "12:12", rafters: {section: 2x6, seat: {kind: birds-mouth}, ${keys}, overhang: {eave: 1 ft}}}`,
      });
      return idsOf(model, "rafter")
        .filter((id) => id.startsWith("rafter@A"))
        .map((id) => Math.round(stick(model, id).origin[0] * 1e6) / 1e6);
    };
    // centers 1 to 239
    expect(xs("spacing: 60 in, layout: fixed")).toEqual([1, 61, 121, 181, 239]);
    expect(xs("spacing: 60 in")).toEqual([1, 60.5, 120, 179.5, 239]);
    expect(xs("spacing: 60 in, count: 3")).toEqual([1, 120, 239]);
  });
});
