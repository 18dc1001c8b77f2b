/** Tenons on ends that lean: as wide as the slanted cut, and cut from wood that is there (plane geometry; derived). */
import { describe, expect, test } from "vitest";
import { endBreadth } from "../../../server/core/joinery/end-breadth.ts";
import type { Joint, Prism } from "../../../server/core/joinery/joint.ts";
import { along, dot, sub, type Vec3 } from "../../../server/core/model/vec.ts";
import { build, expectNear, joint } from "../model/frames.ts";
import { cut } from "./prisms.ts";

/** A strut of 6 × 8 in from the tie's top up to the king-post's side, rising so many inches in 40. */
const strut = (rise: number, keys = ""): Joint => {
  const model = build({
    bents: "{1: 0, 2: 10 ft}",
    levels: "{base: 0, tie-top: 7 ft}",
    members: {
      tie: "{kind: tie, section: 8x12, bents: [1], from: A, to: B, top: tie-top}",
      king: "{kind: king-post, section: 8x8, bents: [1], from: tie, to: 14 ft}",
      strut: `{kind: strut, section: 6x8, ends: [{at: A1, level: tie-top, offset: [4 in, 25 in, 0]}, {at: A1, level: tie-top, offset: [4 in, 65 in, ${rise} in]}]}`,
    },
    joints: { foot: `{kind: mortise-and-tenon, of: strut, into: tie${keys}}` },
  });
  return joint(model, "foot@1");
};

const corners = (p: Prism): Vec3[] => p.outline.map(([u, v]) => along(along(p.base, p.u, u), p.v, v));

function areaOf({ outline }: Prism): number {
  const twice = outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length]!;
    return sum + x * ny - nx * y;
  }, 0);
  return Math.abs(twice) / 2;
}

describe.each([15, 24, 40, 69])("a strut that rises %i in 40", (rise) => {
  const alpha = Math.atan2(rise, 40);

  test("tenon as wide as the slanted cut: depth ÷ sine [derived]", () => {
    const foot = strut(rise);
    expectNear(foot.sizes.tenon?.width.value, 8 / Math.sin(alpha), "8 ÷ sin α");
    expectNear(endBreadth(foot, foot.face.grain), 8 / Math.sin(alpha), "the end itself");
    expectNear(cut(foot, "mortise length along the grain"), 8 / Math.sin(alpha), "cut sheet");
    expectNear(cut(foot, "angle to the timber"), (alpha * 180) / Math.PI, "angle");
  });

  test.each(["", ", housing: 1/2 in"])(
    "tenon lies within the strut's own wood, from edge to edge%s [derived]",
    (keys) => {
      const { of, solids } = strut(rise, keys);
      const across = corners(solids.tenons[0]!).map((p) => dot(sub(p, of.origin), of.depthDir));
      for (const d of across) expect(Math.abs(d)).toBeLessThanOrEqual(4 + 1e-9);
      // the shoulder ends at both edges
      expectNear(Math.max(...across), 4, "upper edge");
      expectNear(Math.min(...across), -4, "lower edge");
    },
  );

  test("the tenon's cheek is a trapezoid between square toe and slanting edge [derived]", () => {
    const { solids, sizes } = strut(rise);
    const length = sizes.tenon!.length.value;
    const [root, tip] = [8 / Math.sin(alpha), 8 / Math.sin(alpha) - length / Math.tan(alpha)];
    expect(tip).toBeGreaterThan(0);
    expectNear(areaOf(solids.tenons[0]!), ((root + tip) / 2) * length, "area");
  });

  test("a housing admits it: from the toe on its floor to the other edge on the face [derived]", () => {
    const { solids } = strut(rise, ", housing: 1/2 in");
    const vs = solids.housings[0]!.outline.map(([, v]) => v);
    expectNear(Math.max(...vs) - Math.min(...vs), 8 / Math.sin(alpha) + 0.5 / Math.tan(alpha), "length");
  });
});

test("a square tenon stays the rectangle it was [derived]", () => {
  const model = build({
    bents: "{1: 0, 2: 10 ft}",
    members: {
      post: "{kind: post, section: 8x8, at: [A1, A2], from: base, to: plate}",
      plate: "{kind: plate, section: 8x10, walls: [A], top: top, overhang: 12 in}",
    },
    joints: {
      head: "{kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 in}}",
    },
  });
  const [tenon] = joint(model, "head@A1").solids.tenons;
  expectNear(areaOf(tenon!), 48, "8 × 6");
});
