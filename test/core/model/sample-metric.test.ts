/**
 * The sample in millimetres, timber by timber, against figures worked by hand from the placement rules. The arithmetic stands
 * beside each figure. Source of all: placement rules of the manual, plane geometry (derived).
 */
import { describe, expect, test } from "vitest";
import {
  expectBox,
  expectLength,
  expectNear,
  expectPoint,
  expectTenon,
  idsOf,
  joint,
  jointCounts,
  MM,
  problemsOf,
  sample,
  stick,
} from "./frames.ts";

const ROOT2 = Math.SQRT2;

describe("kayak shelter, millimetres (derived)", () => {
  const model = sample("kayak-shelter");
  // rise 2700 - 1650 over 2250 from the beam's outside face to the plate's inside face: 7 in 15
  const slope = 7 / 15;
  const cos = 15 / Math.sqrt(274); // √(7² + 15²)
  const sin = 7 / Math.sqrt(274);
  const box = (
    id: string,
    x: readonly [number, number],
    y: readonly [number, number],
    z: readonly [number, number],
  ): void => expectBox(model, id, x, y, z, MM);

  test("has its sticks and no problem", () => {
    expect(problemsOf(model)).toEqual([]);
    // 4 posts, plate, beam, 2 girts, 6 + 2 braces, 12 rafters
    expect(model.timbers).toHaveLength(28);
    expect(idsOf(model, "knee")).toHaveLength(6);
    expect(idsOf(model, "girt-knee").sort()).toEqual(["girt-knee@A1-B1", "girt-knee@A4-B4"]);
  });

  test("posts, plate, beam and girts", () => {
    box("post@A1", [0, 150], [0, 150], [175, 2475]); // 150 + 25; 2700 - 225
    box("post@A2", [1925, 2075], [0, 150], [175, 2475]);
    box("post@A4", [5850, 6000], [0, 150], [175, 2475]);
    expectLength(model, "post@A2", (2300 + 125) * MM);
    box("plate@A", [-300, 6300], [0, 150], [2475, 2700]);
    box("beam@B", [-300, 6300], [2250, 2400], [1450, 1650]);
    // from 15 into the post's face 150 to 15 into the beam's face 2250
    box("girt@A1-B1", [0, 125], [135, 2265], [1450, 1650]);
    box("girt@A4-B4", [5875, 6000], [135, 2265], [1450, 1650]);
    // through the post 135, dovetail 60
    expectLength(model, "girt@A1-B1", (2130 + 135 + 60) * MM);
  });

  test("braces", () => {
    // 150 - 12 and 2475 + 12, legs 600, flush with the outside of wall A
    box("knee@A1-A2", [138, 738], [0, 75], [1887, 2487]);
    expectLength(model, "knee@A1-A2", (600 * ROOT2 + 2 * (60 / ROOT2)) * MM);
    // post 150 and girt 125 share x 0 to 125: centered on 62.5; 1450 + 12
    box("girt-knee@A1-B1", [25, 100], [138, 738], [862, 1462]);
    box("girt-knee@A4-B4", [5900, 5975], [138, 738], [862, 1462]);
  });

  test("rafters: twelve, from 300 beyond the beam to 300 beyond the plate's outside face", () => {
    // centers -275 to 6275: 6550 / 600 = 10.9, so 11 bays
    expect(idsOf(model, "rafter")).toHaveLength(12);
    const rafter = stick(model, "rafter@B.2");
    expectNear(rafter.origin[0], (-275 + 6550 / 11) * MM, "second rafter");
    expectNear(rafter.origin[1], 2700 * MM, "tail");
    expectNear(rafter.head.point[1], -300 * MM, "high end");
    expectLength(model, "rafter@B.2", (3000 / cos + 150 * slope) * MM); // 3310.6 + 70
    const side = model.roof?.slopes[0];
    expectNear(side?.slope, slope, "slope");
    expectNear(side?.spacing, (6550 / 11) * MM, "spacing");
    expectNear(side?.span, 2250 * MM, "seat to seat");
  });

  test("joints, kind by kind", () => {
    expect(jointCounts(model)).toEqual({
      "post-head mortise-and-tenon": 4,
      "girt-wedge wedged-half-dovetail": 2,
      "girt-drop housed-dovetail": 2,
      "knee-ends brace-tenon": 16,
      "rafter-seat birds-mouth": 24, // on the beam and on the plate
    });
    expectTenon(
      joint(model, "post-head@A1").sizes,
      // set-in 50; room: 1 in kept behind
      { thickness: 40, width: 150, length: 125, setIn: 50, walls: [50, 60], room: 225 - 25.4 },
      MM,
    );
  });

  test("girts: wedged into the posts, dropped into the beam", () => {
    const wedged = joint(model, "girt-wedge@A4").sizes;
    expectTenon(
      wedged,
      // centered on the girt: its middle lies 62.5 from the post's outside face
      { thickness: 40, width: 175, length: 135, setIn: 42.5, walls: [42.5, 67.5], room: 135 },
      MM,
    );
    expectNear(wedged.wedge?.heightInner, 25 * MM, "the drop");
    expectNear(wedged.wedge?.heightOuter, 38.5 * MM, "25 + 135 / 10");
    const drop = joint(model, "girt-drop@A1-B1").sizes.dovetail!;
    expectNear(drop.length.value, 60 * MM, "length");
    expectNear(drop.depth.value, 100 * MM, "depth");
    expectNear(drop.tip, 125 * MM, "full width at the tip");
    expectNear(drop.neck, 105 * MM, "125 - 2 × 10");
  });

  test("brace tenons: in the brace's middle at both ends where widths differ", () => {
    const bearing = 150 * ROOT2;
    const inner = joint(model, "knee-ends@A2-A1.foot").sizes;
    expectTenon(
      inner,
      { thickness: 35, width: bearing, length: 60, setIn: 40, walls: [40, 75], room: 63 }, // (150 - 24) / 2
      MM,
    );
    const foot = joint(model, "knee-ends@A1-B1.foot").sizes;
    const head = joint(model, "knee-ends@A1-B1.head").sizes;
    expectNear(foot.tenon?.setIn.value, 45 * MM, "in the post: 62.5 - 17.5");
    expectNear(head.tenon?.setIn.value, 45 * MM, "in the girt: (125 - 35) / 2");
  });

  test("seats: the same on the beam and on the plate", () => {
    // 150 / 4 ÷ 0.42288 = 88.7, in steps of 5: 85
    for (const id of ["rafter-seat@B.4", "rafter-seat@B.4-A"]) {
      const seat = joint(model, id).sizes.seat!;
      expectNear(seat.level.value, 85 * MM, "level seat");
      expectNear(seat.plumb, 85 * slope * MM, "plumb cut");
      expectNear(seat.depth, 85 * sin * MM, "notch");
      expectNear(seat.heightAbovePlate, (150 / cos - 85 * slope) * MM, "above the plate");
    }
    // plumb cut on the beam's outside face and on the plate's inside face, seats uphill of them
    expectNear(joint(model, "rafter-seat@B.4").solids.notches[0]!.base[1], (2400 - 85) * MM, "on the beam");
    expectNear(joint(model, "rafter-seat@B.4-A").solids.notches[0]!.base[1], (150 - 85) * MM, "on the plate");
  });

  test("piers: posts at the foot of the slope, the beam's in the bank", () => {
    expect(model.piers.map((p) => p.id)).toEqual([
      ...["front@A1", "front@A2", "front@A3", "front@A4"],
      ...["bank@B@300", "bank@B@2-m", "bank@B@4-m", "bank@B@5700"],
    ]);
    const at = (id: string) => model.piers.find((p) => p.id === id)!;
    expectPoint(at("front@A1").top, [75 * MM, 75 * MM, 150 * MM], "front");
    expectNear(at("front@A1").tubeBottom, -1150 * MM, "level in front of wall A");
    expectNear(at("front@A1").groundHigh, (1150 / 2400) * 275 * MM, "200 uphill of 75");
    expectPoint(at("bank@B@300").top, [300 * MM, 2325 * MM, 1425 * MM], "under the beam, 25 of stand-off");
    expectPoint(at("bank@B@2-m").top, [2000 * MM, 2325 * MM, 1425 * MM], "between lines");
    expectPoint(at("bank@B@5700").top, [5700 * MM, 2325 * MM, 1425 * MM], "last");
    expectNear(at("bank@B@300").groundLow, (1150 / 2400) * 2150 * MM, "175 downhill of 2325");
    expectNear(at("bank@B@300").tubeBottom, ((1150 / 2400) * 2150 - 1050) * MM, "bottom");
  });
});
