/**
 * What is marked on braces and rafters against outside figures: sources by the keys of geometry.yaml, in each title.
 */
import { describe, expect, test } from "vitest";
import type { Model } from "../../server/core/model/model.ts";
import { build } from "../core/model/frames.ts";
import { cutOn, layoutOf } from "../core/shop/layout/marks.ts";
import { casesOf, check, titleOf } from "./cases.ts";

function braced(legA: number, legB: number, depth: number): Model {
  return build({
    levels: "{base: 0, top: 12 ft}",
    members: {
      post: "{kind: post, section: 8x8, at: [A1], from: base, to: plate}",
      plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
      knee: `{kind: brace, section: 3x${depth}, between: [post, plate], legs: {post: ${legA}, plate: ${legB}}}`,
    },
  });
}

describe("a brace: shoulder to shoulder on face 2, its long edge, and on face 4", () => {
  const along = (legA: number, legB: number, depth: number) => {
    const { foot, head } = layoutOf(braced(legA, legB, depth), "knee@A1-A2");
    const edge = (i: 0 | 1 | 2 | 3): number => head.crosses[i] - foot.crosses[i];
    // the shoulder falls back from the leg by the section over the tangent of its angle to the leg
    const back = foot.crosses[2] - foot.crosses[1];
    return { long: edge(0), same: edge(1), short: edge(2), angle: (Math.atan(depth / back) * 180) / Math.PI };
  };

  for (const c of casesOf("geometry", "brace-table-"))
    test(titleOf(c), () => check(c, { length: along(c.given.leg_a, c.given.leg_b, 2).long }));

  for (const c of casesOf("geometry", "brace-edge-"))
    test(titleOf(c), () => {
      const { long, same, short, angle } = along(c.given.leg_a, c.given.leg_b, c.given.brace_width);
      expect(same).toBeCloseTo(long, 9);
      check(c, { long_edge: long, short_edge: short, angle_to_a_deg: angle });
    });
});

describe("a bird’s mouth on face 4 of its rafter", () => {
  const cases = casesOf("geometry", "bird-");
  expect(cases.length).toBeGreaterThan(5);
  for (const c of cases)
    test(titleOf(c), () => {
      const { rise_per_12, rafter_depth, seat } = c.given;
      const model = build({
        bents: "{1: 0, 2: 8 ft}",
        levels: "{eave: 8 ft}",
        members: { plate: "{kind: plate, section: 8x8, walls: [A, B], top: eave}" },
        roof: `{kind: gable, pitch: "${rise_per_12}:12", rafters: {section: 2 x ${rafter_depth}, seat: {kind: birds-mouth, length: ${seat} in}, overhang: {eave: 24 in, rake: 0}, count: 2}}`,
      });
      const cut = cutOn(layoutOf(model, "rafter@A.1"), "rafter-seat@A.1", "seat");
      const theta = Math.atan(rise_per_12 / 12);
      const mouth = cut.opening.along[1] - cut.opening.along[0];
      const [corner] = cut.bottom?.along ?? [Number.NaN];
      const plumb = (corner - cut.opening.along[0]) / Math.sin(theta);
      expect(cut.face).toBe(4);
      expect(mouth * Math.cos(theta)).toBeCloseTo(seat, 6);
      check(c, {
        plumb_depth: rafter_depth / Math.cos(theta),
        plumb_cut: plumb,
        heel_above_plate: rafter_depth / Math.cos(theta) - plumb,
        notch_square: cut.depth,
        wood_left: cut.floor,
        notch_share: cut.depth / rafter_depth,
      });
    });
});
