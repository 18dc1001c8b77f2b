/**
 * The pavilion's sticks at the sawhorses. Every distance by plane geometry from the numbers of the file (derived): pier
 * tops at 8 in with 1 in of stand-off, so that posts begin at 9 in; ties' tops at 94 in, eave at 112 in.
 */
import { describe, expect, test } from "vitest";
import { isSquare } from "../../../../server/core/shop/layout/ends.ts";
import { toMark } from "../../../../server/core/shop/layout/rounded.ts";
import { sample } from "../../model/frames.ts";
import { cutOn, expectRange, layoutOf, marksOf } from "./marks.ts";

const MODEL = sample("cider-press-pavilion");
const FOOT = 8 + 1;

describe("a post (derived: plane geometry)", () => {
  const post = layoutOf(MODEL, "post@A1");

  test("from its foot to the plate's underside, then the tenon", () => {
    const shoulder = 112 - 9 - FOOT;
    expect(post.foot.crosses).toEqual([0, 0, 0, 0]);
    for (const at of post.head.crosses) expect(at).toBeCloseTo(shoulder, 6);
    expect(post.length).toBeCloseTo(shoulder + 6.5, 6);
    const [tenon] = post.head.tenons;
    // set in 2 in from the outside face, which is face 1
    expect(tenon?.cheeksFrom).toBe(1);
    expectRange(tenon?.cheeks ?? [0, 0], 2, 4);
    expect(tenon?.full).toBe(true);
    expectRange(tenon?.rectangle?.along ?? [0, 0], shoulder, shoulder + 6.5);
  });

  test("the tie's housing is the tie with its drop above it, opposite the outside face", () => {
    const seated = 94 - FOOT;
    const housing = cutOn(post, "tie-end@A1", "housing");
    expect(housing.face).toBe(3);
    expectRange(housing.opening.along, seated - 12, seated + 1.25);
    expectRange(housing.opening.across, 0, 8);
    expect([housing.depth, housing.floor]).toEqual([0.75, 7.25]);
  });

  test("the wedge's mortise: neck and drop inside, full depth, drop and a tenth of the way outside", () => {
    const seated = 94 - FOOT;
    const mortise = cutOn(post, "tie-end@A1", "mortise");
    expect([mortise.face, mortise.through, mortise.from]).toEqual([3, true, 0.75]);
    expectRange(mortise.opening.along, seated - 10.75, seated + 1.25);
    expectRange(mortise.bottom?.along ?? [0, 0], seated - 12, seated + 1.25 + 7.25 / 10);
    expectRange(mortise.opening.across, 2, 4);
  });

  test("a brace's housing: its leg below the housed tie, its bearing up from there", () => {
    // 45°: the bearing is the depth times √2; at the unhoused face the upper edge stands the housing's depth higher
    const toe = 94 - 12 + 0.5 - 27 - FOOT;
    const housing = cutOn(post, "brace-ends@A1-B1.foot", "housing");
    expect(housing.face).toBe(3);
    expectRange(housing.opening.along, toe, toe + 6 * Math.SQRT2 + 0.5);
    // flush with the face that looks out of bent 1: face 2
    expectRange(housing.opening.across, 0, 4);
    const mortise = cutOn(post, "brace-ends@A1-B1.foot", "mortise");
    expectRange(mortise.opening.along, toe, toe + 6 * Math.SQRT2);
    expectRange(mortise.bottom?.along ?? [0, 0], toe, toe + 6 * Math.SQRT2 - 3);
    expectRange(mortise.opening.across, 1.5, 3);
    expect([mortise.from, mortise.depth]).toEqual([0.5, 3.75]);
  });

  test("peg holes in the tenon: where the cheek's come, and the draw beside", () => {
    const { holes } = marksOf(post, "post-head@A1");
    expect(holes.map((h) => [h.face, h.across, h.draw])).toEqual([
      [1, 2, 3 / 32],
      [1, 6, 3 / 32],
    ]);
    // halfway up the tenon of 6 1/2 in: four diameters of 7/8 in would leave less behind
    for (const hole of holes) expect(hole.along).toBeCloseTo(94 + 3.25, 6);
  });
});

describe("lying timbers (derived: plane geometry)", () => {
  test("a tie runs to the posts' outside faces, its shoulders in their housings", () => {
    const tie = layoutOf(MODEL, "tie@2");
    expect(tie.length).toBeCloseTo(13 * 12, 6);
    for (const at of tie.foot.crosses) expect(at).toBeCloseTo(8 - 0.75, 6);
    for (const at of tie.head.crosses) expect(at).toBeCloseTo(156 - 8 + 0.75, 6);
    // cut up by the drop at the shoulder, the full depth at the tip
    const corners = tie.foot.tenons[0]?.outline.map(({ along, across }) => [toMark(along, false), across]);
    expect(corners).toEqual([
      [7.25, 0],
      [7.25, 10.75],
      [0, 12],
      [0, 0],
    ]);
  });

  test("a plate's mortises lie on the posts, the overhang from its end", () => {
    const plate = layoutOf(MODEL, "plate@A");
    expect(plate.length).toBeCloseTo(12 + 216 + 12, 6);
    const at = [12, 12 + 108 - 4, 12 + 216 - 8];
    for (const [i, bent] of ["A1", "A2", "A3"].entries()) {
      const mortise = cutOn(plate, `post-head@${bent}`, "mortise");
      expect(mortise.face).toBe(4);
      expectRange(mortise.opening.along, at[i] ?? 0, (at[i] ?? 0) + 8);
      expectRange(mortise.opening.across, 2, 4);
      expect(mortise.depth).toBe(6.75);
    }
  });

  test("rafters stand evenly in both sides of the ridge, open on top", () => {
    const ridge = layoutOf(MODEL, "ridge");
    const step = (240 - 3) / 8;
    for (let n = 1; n <= 9; n++) {
      const [near, far] = (["A", "B"] as const).map((wall) =>
        cutOn(ridge, `rafter-head@${wall}.${n}`, "housing"),
      );
      expect([near?.face, far?.face]).toEqual([1, 3]);
      for (const cut of [near, far]) {
        expectRange(cut?.opening.along ?? [0, 0], (n - 1) * step, (n - 1) * step + 3);
        expect(cut?.opening.across[0]).toBeCloseTo(0, 6);
        expect(cut?.depth).toBe(0.5);
      }
    }
  });
});

describe("sloping timbers (derived: plane geometry)", () => {
  const theta = Math.atan(7 / 12);

  test("a rafter: plumb cuts, the seat where the plate's outside face crosses its underside", () => {
    const rafter = layoutOf(MODEL, "rafter@A.4");
    // level from the tail to the floor of the housing in the ridge, which stands 3 in off the middle
    const run = 18 + (156 / 2 - 3 + 0.5);
    const back = 7 * Math.tan(theta);
    expect(rafter.length).toBeCloseTo(run / Math.cos(theta) + back, 6);
    expect(isSquare(rafter.foot)).toBe(false);
    expect(rafter.foot.crosses.map((at) => toMark(at, false))).toEqual(
      [back, back, 0, 0].map((at) => toMark(at, false)),
    );
    const seat = cutOn(rafter, "rafter-seat@A.4", "seat");
    const level = MODEL.joints.find((j) => j.id === "rafter-seat@A.4")?.sizes.seat?.level.value ?? 0;
    expect(level).toBeGreaterThan(2);
    expect(seat.face).toBe(4);
    expectRange(seat.opening.along, 18 / Math.cos(theta), (18 + level) / Math.cos(theta));
    const inner = 18 / Math.cos(theta) + level * Math.tan(theta) * Math.sin(theta);
    expectRange(seat.bottom?.along ?? [0, 0], inner, inner);
    expect(seat.depth).toBeCloseTo(level * Math.sin(theta), 6);
  });

  test("a brace: shoulders at 45°, toes square to the timber they enter", () => {
    const knee = layoutOf(MODEL, "tie-knee@A2-B2");
    // long edge between the ends of the legs; each tenon reaches 3 in square past its shoulder, its corner 3/√2 along
    const past = 3 * Math.SQRT1_2;
    expect(knee.length).toBeCloseTo(27 * Math.SQRT2 + 2 * past, 6);
    expect(knee.foot.crosses.map((at) => toMark(at, false))).toEqual(
      [past, past, past + 6, past + 6].map((at) => toMark(at, false)),
    );
    const [tenon] = knee.foot.tenons;
    expect(tenon?.rectangle).toBeUndefined();
    const toe = tenon?.outline.reduce((low, c) => (c.along < low.along ? c : low));
    expect(toe?.along).toBeCloseTo(0, 6);
    expect(toe?.across).toBeCloseTo(past, 6);
  });
});
