/** Ends on less than their section against NDS 3.4-3 by hand: V ≤ ⅔ F_v′ b d_n (d_n/d)². */
import { describe, expect, test } from "vitest";
import { jointForces } from "../../../server/core/statics/joint-forces.ts";
import { SHED } from "../../shed.ts";
import { type Checked, checked, loft, use } from "./members.ts";

const force = (c: Checked, joint: string) => jointForces(c.solution.cases).get(joint)!;

/** lb per in² across the grain of green Eastern White Pine: 350 psi × C_M 0.67. */
const CRUSHES = 350 * 0.67;

/** Without wind: what lifts and sways an end is none of these figures. */
const calm = (text: string): string => text.replace(/ {2}wind: .*\n/, "");

/** The shed's loft, loaded until its ties press their posts hard. */
const laden = (housing: string): Checked =>
  checked(
    calm(loft("4x6", "150 psf"))
      .replace("tie, into: post, housing: 1/2 in", `tie, into: post${housing}`)
      .replace("between: [post, tie], leg: 30 in", "between: [post, tie], leg: 14 in"),
  );

describe("a tie on its tenon, 2 in thick and as deep as the tie", () => {
  test("without housing all shear goes through it: 1.5 V/(2 × 10) [published]", () => {
    const c = laden("");
    const V = force(c, "tie-end@A1").alongGrain.most;
    expect(V).toBeGreaterThan(300);
    expect(use(c, "tie@1", "notched-shear").value).toBeCloseTo((1.5 * V) / 20, 3);
  });

  test("a line of a housing, 1/8 in, bears 8 × 1/8 in² × 234.5 psi, the tenon the rest [derived]", () => {
    const c = laden(", housing: 1/8 in");
    const V = force(c, "tie-end@A1").alongGrain.most;
    const notched = use(c, "tie@1", "notched-shear");
    expect(notched.value).toBeCloseTo((1.5 * (V - CRUSHES)) / 20, 3);
    // both ends are pressed alike: which is named is rounding
    expect(force(c, "tie-end@B1").alongGrain.most).toBeCloseTo(V, 6);
    expect(notched.place).toMatch(/^tie-end@[AB]1$/);
  });

  test("a housing of 1/2 in bears 938 lb, the whole end: nothing is left to the tenon [derived]", () => {
    const c = laden(", housing: 1/2 in");
    expect(force(c, "tie-end@A1").alongGrain.most).toBeLessThan(4 * CRUSHES);
    expect(c.members.get("tie@1")!.uses.map((u) => u.what)).not.toContain("notched-shear");
  });
});

/** The loft's joists, let into the ties by a joint of this kind. */
const joists = (joint: string): Checked =>
  checked(loft("4x6").replace("joints:\n", `joints:\n  joist-end: {of: joist, into: tie, ${joint}}\n`));

describe("a joist of 4 × 6 in on less than its section", () => {
  test("housed dovetail 2 in deep, neck 3 1/2 in: the housing bears 4 × 1/8 in², the neck the rest [published]", () => {
    const c = joists(
      "kind: housed-dovetail, housing: 1/8 in, dovetail: {length: 2 in, depth: 2 in, flare: 1/4 in}",
    );
    const V = force(c, "joist-end@1.foot.2").across.most || force(c, "joist-end@1.foot.2").alongGrain.most;
    const notched = use(c, "joist.2", "notched-shear");
    expect(notched.ratio).toBeCloseTo(
      (V - 0.5 * CRUSHES) / ((2 / 3) * notched.limit * 3.5 * 2 * (2 / 6) ** 2),
      4,
    );
    expect(notched.ratio).toBeGreaterThan(2);
  });

  test("its housing of 1/2 in bears 469 lb, more than the 254 lb there are [derived]", () => {
    const c = joists(
      "kind: housed-dovetail, housing: 1/2 in, dovetail: {length: 2 in, depth: 2 in, flare: 1/4 in}",
    );
    expect(c.members.get("joist.2")!.uses.map((u) => u.what)).not.toContain("notched-shear");
  });

  test("a tenon that lies flat in the tie's side leaves its thickness of the depth, not its width [published]", () => {
    const c = joists("kind: mortise-and-tenon, tenon: {thickness: 2 in, length: 3 in, set-in: 3 in}");
    const V = force(c, "joist-end@1.foot.2").across.most;
    const notched = use(c, "joist.2", "notched-shear");
    expect(notched.ratio).toBeCloseTo(V / ((2 / 3) * notched.limit * 4 * 2 * (2 / 6) ** 2), 4);
  });

  test("flush with the underside it is cut from above only: 3.4-5 with e = 0, the whole depth [published]", () => {
    const c = joists("kind: mortise-and-tenon, tenon: {thickness: 2 in, length: 3 in, set-in: 4 in}");
    const V = force(c, "joist-end@1.foot.2").across.most;
    const notched = use(c, "joist.2", "notched-shear");
    expect(notched.ratio).toBeCloseTo(V / ((2 / 3) * notched.limit * 4 * 6), 4);
  });
});

test("both halves of a scarf carry what passes through it on half their depth: (4/8)² [published]", () => {
  const c = checked(
    calm(SHED).replace(
      "top: eave, overhang: 12 in}",
      "top: eave, overhang: 12 in, splice: {at: 5 ft, kind: half-lap-scarf}}",
    ),
  );
  const V = force(c, "plate-scarf@A.1").across.most;
  for (const half of ["plate@A.1", "plate@A.2"]) {
    const notched = use(c, half, "notched-shear");
    expect(notched.place).toBe("plate-scarf@A.1");
    expect(notched.ratio).toBeCloseTo(V / ((2 / 3) * notched.limit * 8 * 4 * (4 / 8) ** 2), 4);
  }
});

test("over a post the lower half of a scarf bears where it is; the upper one still hangs on its half [derived]", () => {
  const posts = SHED.replace("bents: {1: 0, 2: 9 ft}", "bents: {1: 0, 2: 6 ft, 3: 12 ft}")
    .replace("[A1, A2, B1, B2]", "[A1, A2, A3, B1, B2, B3]")
    .replace("bents: [1, 2]", "bents: [1, 2, 3]")
    .replace("from: 1, to: 2, top: eave", "from: 1, to: 3, top: eave")
    .replace("leg: 30 in}\n  tie-knee", "leg: 12 in}\n  tie-knee")
    .replace(
      "top: eave, overhang: 12 in}",
      "top: eave, overhang: 12 in, splice: {at: 2, kind: half-lap-scarf}}",
    );
  const c = checked(posts);
  const notched = ["plate@A.1", "plate@A.2"].filter((half) =>
    c.members.get(half)!.uses.some((u) => u.what === "notched-shear"),
  );
  expect(notched).toHaveLength(1);
});
