/** Which sticks are alike, so that what follows from length, section and joints is made once (derived). */
import { describe, expect, test } from "vitest";
import { StickKinds } from "../../../server/core/analysis/stick-kinds.ts";
import type { FrameElement } from "../../../server/core/analysis/structure.ts";

const POST: FrameElement = {
  id: "post",
  i: 0,
  j: 1,
  E: 1.2e6,
  G: 7.5e4,
  A: 64,
  Iy: 341,
  Iz: 341,
  J: 577,
  ydir: [1, 0, 0],
};
const like = (more: Partial<FrameElement>): FrameElement => ({ ...POST, id: "other", i: 4, j: 7, ...more });

describe("within one structure", () => {
  const kinds = new StickKinds();
  const kind = kinds.of(POST, 120);
  test("sticks are one kind wherever they stand, and where only rounding parts their lengths", () => {
    expect(kinds.of(like({ ydir: [0, 1, 0] }), 120)).toBe(kind);
    expect(kinds.of(like({}), 120 * (1 + 1e-13))).toBe(kind);
  });
  test.each<readonly [string, FrameElement, number]>([
    ["another length", like({}), 120 + 1e-6],
    ["another wood", like({ E: 1.3e6 }), 120],
    ["another section", like({ Iz: 342 }), 120],
    ["a joint that turns", like({ releaseJ: ["rz"] }), 120],
    ["a spring at its end", like({ endSpringI: { ux: 1e5 } }), 120],
    ["a brace that only pushes", like({ axialOnly: true, oneWay: "push" }), 120],
  ])("%s makes another", (_, element, length) => {
    expect(kinds.of(element, length)).not.toBe(kind);
  });
});

describe("from one structure to the next", () => {
  const before = new StickKinds();
  const kind = before.of(POST, 120);
  test("a kind serves again for the very same length, with what was worked out for it", () => {
    const after = new StickKinds();
    expect(after.of(like({}), 120, before)).toBe(kind);
    // the next one finds it without those before
    expect(after.of(like({}), 120)).toBe(kind);
  });
  test("but not for a length that rounding made another: figures are those that would be found anew", () => {
    const length = 120 * (1 + 1e-13);
    const anew = new StickKinds().of(like({}), length);
    const made = new StickKinds().of(like({}), length, before);
    expect(made).not.toBe(kind);
    expect(made.fast).toEqual(anew.fast);
    expect(made.fast).not.toEqual(kind.fast);
  });
  test("nor for another section", () => {
    expect(new StickKinds().of(like({ A: 72 }), 120, before)).not.toBe(kind);
  });
});
