/** Screwed braces: where their screws stand (plane geometry; derived) and what they hold (NDS 12, memory and derived). */
import { describe, expect, test } from "vitest";
import { screwHold, screwStiffness, screwUse } from "../../../server/core/joinery/screw-hold.ts";
import type { Factor } from "../../../server/core/sourced.ts";
import { build, expectNear, joint, stick } from "../model/frames.ts";
import { collisions } from "./clearance.ts";
import { cut, expectPrism } from "./prisms.ts";

const WIND: Factor = { symbol: "C_D", value: 1.6, status: "published", source: "NDS Table 2.3.2" };

const braced = (keys: string, seasoning = "dry", leg = "leg: 30 in") =>
  build({
    bents: "{1: 0, 2: 10 ft}",
    timber: `{frame: {species: douglas-fir-larch, grade: no-1, seasoning: ${seasoning}, surface: rough}}`,
    members: {
      post: "{kind: post, section: 8x8, at: [A1, A2], from: base, to: plate}",
      plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
      knee: `{kind: brace, section: 4x6, between: [post, plate], ${leg}}`,
    },
    joints: { ends: `{kind: screwed-brace, of: knee, into: [post, plate]${keys}}` },
  });
const foot = (keys: string, seasoning?: string) => joint(braced(keys, seasoning), "ends@A1-A2.foot");
const SCREWS = ", screws: {count: 2, diameter: 5/16 in, length: 8 in}";

describe("where the screws stand", () => {
  test("square to the face through the middle of the bearing: wood of depth ÷ 2 cos θ under the head", () => {
    const end = foot(SCREWS);
    const wood = 3 * Math.SQRT2;
    for (const w of end.sizes.screws?.wood ?? []) expectNear(w, wood, "wood");
    // plate's underside 88, leg 30: the bearing runs from 58 up by 6 √2; flush with wall A's face, 4 in thick
    const [one, two] = end.solids.screws ?? [];
    expectNear(one?.from[0], 8 + wood, "head of the first");
    expectNear(one?.to[0], 8 + wood - 8, "point of the first");
    expectNear(one?.from[2], 58 + 3 * Math.SQRT2, "height");
    expect([one?.from[1], two?.from[1]].sort()).toEqual([1, 3]);
    expectNear(cut(end, "screw in the timber"), 8 - wood, "in the post");
    expect(collisions(end).hits).toEqual([]);
  });

  test("more stand in pairs along the bearing, each under its own wood", () => {
    const { screws } = foot(", screws: {count: 4, diameter: 5/16 in, length: 10 in}").sizes;
    // a quarter of the depth nearer to, and farther from, the long edge: (3 ∓ 1.5) ÷ cos 45°
    [1.5, 1.5, 4.5, 4.5].forEach((across, i) => {
      expectNear(screws?.wood[i], across * Math.SQRT2, `wood of screw ${i + 1}`);
    });
    expect(screws?.columns).toBe(2);
  });

  test("a housing takes the end as that of a tenoned brace", () => {
    const end = foot(`, housing: 1/2 in${SCREWS}`);
    // toe at 88.5 - 30, the other edge at the face half an inch nearer the corner
    expectPrism(end.solids.housings[0], [7.5, 0, 58.5], [8, 4, 58.5 + 6 * Math.SQRT2 + 0.5]);
    expect(collisions(end).hits).toEqual([]);
  });

  test("two of 5/16 in, as long as eight diameters ask, where the file says nothing (common practice)", () => {
    const { screws } = foot("").sizes;
    // 4.24 in of wood and 8 × 5/16 in: 6.74, on sale 8 in
    expect(screws).toMatchObject({
      count: 2,
      diameter: { value: 5 / 16, from: "default" },
      length: { value: 8, from: "default" },
    });
  });

  test("a flat brace has less wood under its heads than a steep one", () => {
    const model = braced(SCREWS, "dry", "legs: {post: 36 in, plate: 24 in}");
    const [low, high] = [joint(model, "ends@A1-A2.foot"), joint(model, "ends@A1-A2.head")];
    const angle = Math.atan2(24, 36);
    expectNear(low.sizes.screws?.wood[0], 3 / Math.cos(angle), "at the post");
    expectNear(high.sizes.screws?.wood[0], 3 / Math.sin(angle), "at the plate");
    expectNear(stick(model, "knee@A1-A2").depth, 6, "depth");
  });
});

describe("what they hold", () => {
  test("lateral: mode IV of two 5/16 in lag screws, brace at 45° on a post loaded along its grain (NDS 12.3.1; derived)", () => {
    const hold = screwHold(foot(SCREWS), WIND);
    // G 0.50: F_e 5,600 psi along, 4,000 across (rounded); Hankinson at 45° in the brace
    const side = (2 * 5600 * 4000) / (5600 + 4000);
    const Re = 5600 / side;
    // root 0.227 in, F_yb 60,000 psi (NDS Appendix L, Table I1, memory); K_D = 10 D + 0.5, K_θ = 1 + 45/360
    const Rd = (10 * 0.227 + 0.5) * (1 + 45 / 360);
    const Z = (0.227 ** 2 / Rd) * Math.sqrt((2 * 5600 * 60000) / (3 * (1 + Re)));
    expect(hold?.lateral.value).toBeCloseTo(2 * Z * 1.6, 6);
  });

  test("withdrawal: 1,800 G^1.5 D^0.75 for each inch of thread without its tip (NDS 12.2-1, published)", () => {
    const hold = screwHold(foot(SCREWS), WIND);
    // half the length and 1/2 in of thread, of which 8 - 4.24 in stand in the post, less a tip of 3/16 in
    const thread = 8 - 3 * Math.SQRT2 - 3 / 16;
    const W = 1800 * 0.5 ** 1.5 * (5 / 16) ** 0.75 * thread;
    expectNear(hold?.held, thread, "thread");
    expect(hold?.withdrawal.value).toBeCloseTo(2 * W * 1.6, 6);
  });

  test("both at once by NDS 12.4-1: at 45° 2 W′Z′ ÷ (W′ + Z′) (derived)", () => {
    const hold = screwHold(foot(SCREWS), WIND);
    if (!hold) throw new Error("no hold");
    const [W, Z] = [hold.withdrawal.value, hold.lateral.value];
    const use = screwUse(hold, { pull: 300, along: 300 });
    expect(use.allowed.value).toBeCloseTo((2 * W * Z) / (W + Z), 6);
    expect(use.ratio).toBeCloseTo((300 * Math.SQRT2) / use.allowed.value, 9);
  });

  test("two in green wood keep two fifths of their lateral value as it dries, one keeps it all (NDS Table 11.3.3, memory)", () => {
    const dry = screwHold(foot(SCREWS), WIND)?.lateral.value ?? 0;
    expect(screwHold(foot(SCREWS, "green"), WIND)?.lateral.value).toBeCloseTo(0.4 * dry, 6);
    const one = screwHold(foot(SCREWS.replace("2", "1"), "green"), WIND);
    expect(one?.lateral.value).toBeCloseTo(dry / 2, 6);
  });

  test("screws that end in the brace hold nothing", () => {
    const hold = screwHold(foot(", screws: {count: 2, diameter: 5/16 in, length: 4 in}"), WIND);
    expect([hold?.lateral.value, hold?.withdrawal.value]).toEqual([0, 0]);
  });

  test("slip 180,000 D^1.5 for each (NDS 11.3.6, memory), seen along the brace over cos² θ (derived)", () => {
    expectNear(screwStiffness(foot(SCREWS)), (2 * 180_000 * (5 / 16) ** 1.5) / 0.5, "lb/in", 1e-3);
  });
});
