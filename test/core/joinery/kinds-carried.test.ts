/** Sizes and solids of the joints on which timbers are carried, by hand (joint rules of the manual, plane geometry; derived). */
import { describe, expect, test } from "vitest";
import { build, expectNear, joint, stick } from "../model/frames.ts";
import { cut, expectPrism } from "./prisms.ts";

describe("housed dovetails", () => {
  const beams = (keys: string, top = "4 ft") =>
    build({
      members: {
        carrier: "{kind: beam, section: 8x10, walls: [A, B], top: 4 ft, overhang: 12 in}",
        joist: `{kind: beam, section: 6x8, bents: [2], top: ${top}}`,
      },
      joints: { drop: `{kind: housed-dovetail, of: joist, into: carrier, housing: 1/2 in${keys}}` },
    });

  test("default sizes: half the depth, one in six of flare, at most 3 in long", () => {
    const { dovetail } = joint(beams(""), "drop@2.foot").sizes;
    expect(dovetail?.length.value).toBe(3); // (8 - 1/2) / 2 = 3.75
    expect(dovetail?.depth.value).toBe(4);
    expect(dovetail?.flare.value).toBe(0.5);
    expect(dovetail?.tip).toBe(6);
    expect(dovetail?.neck).toBe(5);
  });

  test("flush: tail and socket from the top down", () => {
    const model = beams(", dovetail: {length: 3 in, depth: 5 in, flare: 1/2 in}");
    const drop = joint(model, "drop@2.foot");
    expectPrism(drop.solids.tenons[0], [117, 4.5, 43], [123, 7.5, 48]);
    expectPrism(drop.solids.mortises[0], [117, 4.5, 43], [123, 7.5, 48]);
    // housing as deep as the joist, open on top
    expectPrism(drop.solids.housings[0], [117, 7.5, 40], [123, 8, 48]);
    expectNear(stick(model, "joist@2").length, 129 + 2 * 3, "7.5 to 136.5, and the tails");
  });

  test("below the carrier's top: the socket is open to the top, the tail is not", () => {
    const drop = joint(
      beams(", dovetail: {length: 3 in, depth: 5 in, flare: 1/2 in}", "47 in"),
      "drop@2.foot",
    );
    expectPrism(drop.solids.tenons[0], [117, 4.5, 42], [123, 7.5, 47]);
    expectPrism(drop.solids.mortises[0], [117, 4.5, 42], [123, 7.5, 48]);
  });
});

describe("pockets", () => {
  test("bear 2 in, never more than a third of the carrier, as deep as the joist", () => {
    const pocket = (section: string) =>
      build({
        members: {
          tie: `{kind: tie, section: ${section}, bents: [1, 2], from: A, to: B, top: tie-top}`,
          joist: "{kind: joist, section: 4x6, between: [tie@1, tie@2], count: 1}",
        },
      });
    const wide = pocket("8x10");
    const [first] = wide.joints;
    expect(first?.sizes.pocket).toEqual({ bearing: { value: 2, from: "default" }, depth: 6, width: 4 });
    expectNear(stick(wide, "joist").length, 108 + 2 * 2, "faces 8 and 116");
    const narrow = pocket("4x10").joints[0];
    expectNear(narrow?.sizes.pocket?.bearing.value, 1.25, "the eighth below a third of 4");
  });
});

describe("bird's mouths", () => {
  test("the cut sheet tells the tail's level run from the plumb cut", () => {
    const model = build({
      members: { plate: "{kind: plate, section: 8x8, walls: [A, B], top: top}" },
      roof: '{kind: gable, pitch: "9:12", rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 14 in}}}',
    });
    const seat = joint(model, "rafter-seat@A.2");
    expectNear(cut(seat, "plumb cut to tail, level"), 14, "the eave overhang");
    expectNear(cut(seat, "plumb (heel) cut"), 2.5 * 0.75, "2 1/2 × 3/4");
    expectNear(cut(seat, "notch square to the rafter"), 1.5, "2 1/2 × 0.6");
    // triangle below the plate's top: seat inward from the outside face, plumb cut on it
    expectPrism(
      seat.solids.notches[0],
      [stick(model, "rafter@A.2").origin[0] - 1.5, 0, 96 - 1.875],
      [stick(model, "rafter@A.2").origin[0] + 1.5, 2.5, 96],
    );
  });
});
