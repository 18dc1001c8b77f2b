import { describe, expect, it } from "vitest";
import { roofSnow } from "../../../server/core/loads/snow.ts";
import {
  checkRafter,
  longestRafterSpan,
  type RafterCheck,
  type RafterInput,
} from "../../../server/core/members/rafter.ts";

const pitch = { rise: 7, run: 12 };
const slope = Math.hypot(7, 12) / 12;
const snow = roofSnow({
  edition: "asce-7-16",
  riskCategory: "i",
  ground: 45,
  terrain: "C",
  exposure: "partially-exposed",
  thermal: "open",
  slides: false,
  roof: "gable",
  pitch,
  eaveToRidge: 8,
  simpleRafters: true,
});

/** 3x7 dry eastern hemlock-tamarack No.2 at 30 in, 72 in over the plate to the ridge, 18 in overhang. */
const RAFTER: RafterInput = {
  width: 3,
  depth: 7,
  species: "eastern-hemlock-tamarack",
  grade: "no-2",
  seasoning: "dry",
  own: new Map(),
  because: undefined,
  span: 72,
  overhang: 18,
  pitch,
  spacing: 30,
  count: 9,
  loadSharingDeck: true,
  topHeld: true,
  deadPsf: 4.26,
  density: 28,
  edition: "asce-7-16",
  snow,
  roofLivePsf: 17,
  notch: 1.5,
  limits: { live: 180, total: 120 },
};

function checked(changes: Partial<RafterInput> = {}): RafterCheck {
  const found = checkRafter({ ...RAFTER, ...changes });
  if (found.kind === "none") throw new Error(found.reason);
  return found;
}
const use = (found: RafterCheck, combination: string, what: string) =>
  found.combinations.find((c) => c.id === combination)!.uses.find((u) => u.what === what)!;

/** Dead plf of level run: (4.26 · 2.5 + 28 · 21/144)/cos θ. */
const DEAD = (4.26 * 2.5 + (28 * 21) / 144) * slope;

describe("the rafter of the pavilion, by hand (derived, NDS 3.3, 3.4, 3.5; statics of the level projection)", () => {
  const found = checked();
  it("has every combination", () => {
    expect(found.combinations.map((c) => c.id)).toEqual([
      "1",
      "3-S/balanced",
      "3-S/unbalanced-leeward",
      "3-Lr",
      "3-Lr/span-only",
    ]);
    expect(found.deadPlf).toBeCloseTo(DEAD, 9);
  });
  it("bends with the moment of its level projection", () => {
    const w = (DEAD + 36 * 2.5) / 12;
    const M = (w * 90 ** 2 * 54 ** 2) / (8 * 72 ** 2);
    const b = use(found, "3-S/unbalanced-leeward", "bending");
    expect(b.value).toBeCloseTo(M / ((3 * 49) / 6), 6);
    // 575 · C_D 1.15 · C_F 1.2 (nominal 8 in), C_r 1 because 30 in exceeds 24 in
    expect(b.limit).toBeCloseTo(575 * 1.15 * 1.2, 6);
    expect(b.factors.map((f) => [f.symbol, f.value])).toEqual([
      ["C_D", 1.15],
      ["C_F", 1.2],
      ["C_r", 1],
      ["C_t", 1],
      ["C_L", 1],
    ]);
    expect(b.reference).toMatchObject({ value: 575, status: "memory" });
  });
  it("hangs its overhang on what the bird’s mouth leaves", () => {
    const w = (DEAD + 36 * 2.5) / 12;
    const atSeat = use(found, "3-S/unbalanced-leeward", "bending-at-seat");
    expect(atSeat.value).toBeCloseTo((w * 18 ** 2) / 2 / ((3 * 5.5 ** 2) / 6), 6);
    const shear = use(found, "3-S/unbalanced-leeward", "shear-at-seat");
    expect(shear.value).toBeCloseTo((1.5 * w * 18) / slope / (3 * 5.5), 6);
    expect(shear.limit).toBeCloseTo(170 * 1.15, 6);
    expect(found.notch).toEqual({ depth: 1.5, limit: 1.75, allowed: true });
  });
  it("is sheared by the load between its depths", () => {
    const w = (DEAD + 36 * 2.5) / 12;
    // along the slope, square to it: reaction of the overhang, then load from d to L − d
    const [l, a, n] = [72 * slope, 18 * slope, w / slope ** 2];
    const reactionOfTail = (n * a ** 2) / (2 * l);
    expect(use(found, "3-S/unbalanced-leeward", "shear").value).toBeCloseTo(
      (1.5 * ((n * (l - 14)) / 2 + reactionOfTail)) / 21,
      6,
    );
  });
  it("deflects square to the slope, with creep on its dead load", () => {
    const EI = (1.1e6 * 3 * 7 ** 3) / 12;
    const [l, a] = [72 * slope, 18 * slope];
    // mid-span of a beam with overhang: 5wL⁴/384EI − wa²L²/32EI
    const middle = (plf: number) => {
      const w = plf / 12 / slope ** 2;
      return (5 * w * l ** 4) / (384 * EI) - (w * a ** 2 * l ** 2) / (32 * EI);
    };
    const live = use(found, "3-S/unbalanced-leeward", "live-deflection");
    expect(live.value / middle(90)).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(live.value / middle(90)).toBeLessThan(1.01);
    expect(live.limit).toBeCloseTo(l / 180, 9);
    const total = use(found, "3-S/unbalanced-leeward", "total-deflection");
    expect(total.value / (1.5 * middle(DEAD) + middle(90))).toBeCloseTo(live.value / middle(90), 6);
    expect(total.limit).toBeCloseTo(l / 120, 9);
  });
  it("stands on seat and head with its whole load", () => {
    const [seat, head] = found.combinations[2]!.reactions;
    const w = (DEAD + 90) / 12;
    expect(seat).toBeCloseTo((w * 90 ** 2) / (2 * 72), 6);
    expect(seat + head).toBeCloseTo(w * 90, 6);
  });
  it("passes, and the governing use is the worst of all", () => {
    const all = found.combinations.flatMap((c) => c.uses);
    expect(found.governing.ratio).toBe(Math.max(...all.map((u) => u.ratio)));
    expect(found.governing.ratio).toBeLessThan(1);
  });
});

describe("what changes a rafter", () => {
  it("the longest span just passes", () => {
    const longest = longestRafterSpan(RAFTER)!;
    expect(checked({ span: longest }).governing.ratio).toBeLessThanOrEqual(1);
    expect(checked({ span: longest + 0.1 }).governing.ratio).toBeGreaterThan(1);
  });
  it("green timber takes the wet-service factors of dimension lumber and creep 2.0 (published, Table 4A; NDS 3.5.2)", () => {
    const green = checked({ seasoning: "green" });
    const b = use(green, "3-S/balanced", "shear");
    expect(b.limit).toBeCloseTo(170 * 1.15 * 0.97, 6);
    expect(use(green, "3-S/balanced", "total-deflection").factors.map((f) => [f.symbol, f.value])).toEqual([
      ["C_M", 0.9],
      ["C_t", 1],
      ["K_cr", 2],
    ]);
    // F_b C_F = 690 psi is under 1150 psi
    expect(use(green, "3-S/balanced", "bending").limit).toBeCloseTo(575 * 1.15 * 1.2, 6);
  });
  it("at most 24 in apart under a deck shares its load (published, NDS 4.3.9)", () => {
    expect(checked({ spacing: 24 }).repetitive).toMatchObject({ value: 1.15 });
    expect(checked({ spacing: 24, count: 2 }).repetitive).toMatchObject({
      value: 1,
      note: "fewer than three",
    });
    expect(checked({ spacing: 24, loadSharingDeck: false }).repetitive.value).toBe(1);
    expect(checked({ width: 6, depth: 8, spacing: 24 }).repetitive).toMatchObject({
      value: 1,
      note: "not for timbers",
    });
  });
  it("without a deck buckles sideways", () => {
    const free = checked({ topHeld: false, width: 2, depth: 9.25 });
    expect(use(free, "3-S/balanced", "bending").factors.at(-1)!.value).toBeLessThan(1);
  });
  it("a deep notch is more than a quarter of the depth (memory, NDS 4.4.3)", () => {
    expect(checked({ notch: 2 }).notch).toMatchObject({ allowed: false, limit: 1.75 });
    expect(checked({ notch: 7 }).governing.ratio).toBe(Number.POSITIVE_INFINITY);
  });
  it("a 7-22 snow enters at 0.7 (published, section 2.4.1)", () => {
    const strength = roofSnow({
      edition: "asce-7-22",
      riskCategory: "ii",
      ground: 60,
      terrain: "C",
      exposure: "partially-exposed",
      thermal: "open",
      slides: false,
      roof: "gable",
      pitch,
      eaveToRidge: 8,
      simpleRafters: true,
    });
    const found = checked({ edition: "asce-7-22", snow: strength });
    const [seat, head] = found.combinations.find((c) => c.id === "3-S/balanced")!.reactions;
    expect(seat + head).toBeCloseTo(((DEAD + 0.7 * 50.4 * 2.5) / 12) * 90, 6);
  });
  it("steeper than 7 on 12 the snow may lie in the span alone (ASCE 7 section 7.5)", () => {
    const steep = checked({ pitch: { rise: 9, run: 12 }, snow: { ...snow, cases: snow.cases.slice(0, 1) } });
    expect(steep.combinations.map((c) => c.id)).toContain("3-S/balanced/span-only");
  });
  it("a drift lies against the ridge", () => {
    const drifted = roofSnow({
      edition: "asce-7-16",
      riskCategory: "ii",
      ground: 45,
      terrain: "C",
      exposure: "partially-exposed",
      thermal: "open",
      slides: false,
      roof: "gable",
      pitch,
      eaveToRidge: 24,
      simpleRafters: false,
    });
    const width = drifted.cases[1]!.drift!.width;
    const psf = drifted.cases[1]!.drift!.psf;
    const found = checked({ snow: drifted, span: 270 });
    const [seat, head] = found.combinations.find((c) => c.id === "3-S/unbalanced-leeward")!.reactions;
    const uniform = (DEAD + drifted.sloped * 2.5) * (288 / 12);
    expect(seat + head).toBeCloseTo(uniform + psf * 2.5 * width, 6);
  });
});

describe("without values", () => {
  it("says why", () => {
    expect(checkRafter({ ...RAFTER, species: "ironbark" })).toMatchObject({
      kind: "none",
      reason: "unknown-species",
    });
    expect(checkRafter({ ...RAFTER, width: 1 })).toMatchObject({ kind: "none", reason: "too-thin" });
    expect(longestRafterSpan({ ...RAFTER, species: "ironbark" })).toBeUndefined();
  });
  it("the file may state all of them", () => {
    const own = new Map([
      ["Fb", 1500],
      ["Ft", 900],
      ["Fv", 200],
      ["Fc-perp", 1000],
      ["Fc", 1200],
      ["E", 1800000],
    ] as const);
    const found = checked({ species: "black-locust", own, because: "tested" });
    expect(found.wood).toMatchObject({ table: undefined, status: "given" });
    expect(use(found, "1", "bending").reference).toEqual({ value: 1500, status: "given", source: "tested" });
    expect(found.wood.values["E-min"].value).toBeCloseTo((1.03 * 1.8e6 * (1 - 1.645 * 0.25)) / 1.66, 6);
  });
  it("nonsense sizes do not crash", () => {
    for (const span of [0, -5, Number.NaN]) expect(checkRafter({ ...RAFTER, span }).kind).toBe("checked");
    expect(checkRafter({ ...RAFTER, depth: Number.NaN }).kind).toBe("none");
  });
});
