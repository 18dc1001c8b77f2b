/**
 * Boards, purlins and panels of roof decks under snow, roof live load and a person, each figure by hand from the formulas
 * of a simple span (any beam table; mem-bend-004, mem-defl of `reference/members.yaml`) and the factors of the NDS.
 */
import { describe, expect, test } from "vitest";
import { spanFormula } from "../../../server/core/checks/roof/span-formula.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { panelByThickness, panelOf, panelReserve } from "../../../server/core/roof/deck-spans.ts";
import type { DeckLoad, DeckPanels, DeckStrip } from "../../../server/core/roof/deck-strip.ts";
import { loft } from "../statics/members.ts";
import { evaluated, roofOf } from "./roofs.ts";

const decksOf = (deck: string, spacing = "24 in", ground = 45) =>
  evaluated(roofOf({ deck, spacing, ground })).results.decks;

const strip = (deck: string, spacing?: string, ground?: number): DeckStrip => {
  const [first] = decksOf(deck, spacing, ground);
  if (!first || first.kind === "panels") throw new Error("no strip");
  return first;
};
const use = (of: DeckStrip, what: string) => of.uses.find((u) => u.what === what)!;

/** 8:12 */
const COS = 12 / Math.hypot(8, 12);
/** p_s = 0.7 C_e C_t I_s p_g: open roof in terrain C, partly exposed, category I [published, loads.yaml] */
const flat = (ground: number): number => 0.7 * 1.0 * 1.2 * 0.8 * ground;

describe("boards of 1 in on rafters 24 in apart at most: a strip 12 in wide", () => {
  const boards = strip("kind: boards, thickness: 1 in");
  const L = boards.span;
  const I = (12 * 1 ** 3) / 12;
  // standing seam 1 psf, one layer of felt 0.26, boards 3 psf for each inch, of the slope
  const dead = ((1 + 0.26 + 3) * COS) / 12;

  test("a person: 300 lb over 30 in by 30 in, 120 lb on the strip [memory, ASCE 7 Table 4.3-1 and 4.4]", () => {
    const bending = use(boards, "bending");
    expect(bending.load).toBe<DeckLoad>("person");
    // shorter than the 30 in of the load, so it lies on all of the span: w = 120 lb ÷ 30 in
    expect(L).toBeLessThan(30);
    const w = dead + (120 / 30) * COS;
    expect(bending.value).toBeCloseTo((w * L ** 2) / 8 / (12 / 6), 6);
  });
  test("F_b 575 psi of Eastern Hemlock-Tamarack No.2 × C_D 1.25 × C_F 1.0 × C_fu 1.2 [memory, Table 4A]", () => {
    const bending = use(boards, "bending");
    expect(boards.wood).toMatchObject({ group: "eastern-hemlock-tamarack", grade: "no-2" });
    expect(bending.limit).toBeCloseTo(575 * 1.25 * 1.0 * 1.2, 6);
    expect(bending.factors.some(({ symbol }) => symbol === "C_r")).toBe(false);
  });
  test("deflection: 5 w L⁴ ÷ (384 E I) of the worst snow square to the slope, L/180 [derived]", () => {
    const live = use(boards, "live-deflection");
    expect(live.load).toBe<DeckLoad>("snow");
    expect(live.limit).toBeCloseTo(L / 180, 9);
    // at least the balanced snow; a drift at the ridge is above it
    const E = boards.wood.values.E.value;
    const balanced = (5 * ((flat(45) * COS ** 2) / 12) * L ** 4) / (384 * E * I);
    expect(live.value).toBeGreaterThanOrEqual(balanced * 0.999);
    expect(live.value).toBeLessThan(3 * balanced);
  });
  test("shear: beside a support past which they run on, dead load 5/8 w L and a person's load 9/16 of it, less what lies within their depth [AWC DA6 and AISC Manual Table 3-23, memory; NDS 3.4.3.1]", () => {
    const shear = use(boards, "shear");
    expect(shear.load).toBe<DeckLoad>("person");
    const person = (120 / 30) * COS;
    const V = (5 / 8) * dead * L + (9 / 16) * person * L - (dead + person) * 1;
    expect(shear.value).toBeCloseTo((1.5 * V) / (12 * 1), 6);
  });
  test("its formula shows what running on adds to the shear", () => {
    const say = makeSay("inch");
    const formula = spanFormula(use(boards, "shear"), say);
    const inner = ((5 / 8 - 1 / 2) * dead + (9 / 16 - 1 / 2) * (120 / 30) * COS) * L;
    const simple = (dead + (120 / 30) * COS) * (L / 2 - 1);
    expect(formula).toContain(`1.5 × (${say.force(simple)} + ${say.force(inner)}) ÷ (`);
  });
  test("twice the spacing bends four times as far under the uniform load, and diagonal boards span √2 further", () => {
    const wide = strip("kind: boards, thickness: 1 in", "48 in");
    const ratio = wide.span / L;
    expect(use(wide, "live-deflection").value / use(boards, "live-deflection").value).toBeCloseTo(
      ratio ** 4,
      6,
    );
    expect(strip("kind: boards, thickness: 1 in, laid: diagonal").span).toBeCloseTo(L * Math.SQRT2, 9);
  });
});

describe("purlins, 2x4 laid flat, 24 in apart", () => {
  const purlins = strip("kind: purlins, spacing: 24 in", "36 in");
  test("take 24/30 of a person on the middle: P/2 (L/2 − 30/4) [derived]", () => {
    const { span: L } = purlins;
    expect(L).toBeGreaterThan(30);
    const P = 300 * (24 / 30) * COS;
    // boards 3 psf for each inch of 1 1/2 in, 3 1/2 in wide every 24 in; standing seam 1 psf
    const dead = (((1 + 3 * 1.5 * (3.5 / 24)) * COS) / 12) * (24 / 12);
    const M = (dead * L ** 2) / 8 + (P / 2) * (L / 2 - 30 / 4);
    const bending = use(purlins, "bending");
    expect(bending.load).toBe<DeckLoad>("person");
    expect(bending.value).toBeCloseTo(M / ((3.5 * 1.5 ** 2) / 6), 6);
  });
  test("F_b × C_D 1.25 × C_F 1.5 × C_fu 1.1 [C_F published, C_fu memory]", () => {
    expect(use(purlins, "bending").limit).toBeCloseTo(575 * 1.25 * 1.5 * 1.1, 6);
  });
});

describe("panels", () => {
  test.each([
    ["16/0", 40, 30],
    ["20/0", 40, 30],
    ["24/0", 40, 30],
    ["24/16", 50, 40],
    ["32/16", 40, 30],
    ["40/20", 40, 30],
    ["48/24", 45, 35],
  ])("rated %s: %s psf in all, %s psf live [memory, IRC Table R503.2.1.1(1)]", (rating, total, live) => {
    expect(panelOf(rating)?.load).toEqual({ total, live });
  });
  test("carry (widest ÷ spacing)² of that at a narrower spacing [derived]", () => {
    expect(panelReserve(panelByThickness(15 / 32)!, 16)).toBe(4);
  });
  test("take snow and dead load square to the slope", () => {
    const [deck] = decksOf("kind: panels, thickness: 7/16 in", "24 in", 100) as DeckPanels[];
    expect(deck?.rule.rating).toBe("24/16");
    expect(deck!.live).toBeGreaterThanOrEqual(flat(100) * COS ** 2 - 1e-9);
    // standing seam 1, felt 0.26, panels 3.2 psf for each inch
    expect(deck!.total - deck!.live).toBeCloseTo((1 + 0.26 + 3.2 * (7 / 16)) * COS, 9);
  });
});

test("nothing is told of a deck whose snow, supports or wood nobody knows", () => {
  const text = roofOf({ deck: "kind: boards, thickness: 1 in" });
  expect(evaluated(text.replace(/ {2}snow: .*\n/, "")).results.decks).toEqual([]);
  expect(
    evaluated(text.replace("species: eastern-hemlock-tamarack", "species: ironbark")).results.decks,
  ).toEqual([]);
});

describe("boards of a floor over joists", () => {
  const floor = (live: string, deck = "{kind: boards, thickness: 1 in}"): DeckStrip | undefined => {
    const [first] = evaluated(loft("4x6", `${live}, deck: ${deck}`)).results.decks.filter(
      ({ on }) => "floor" in on,
    );
    return first?.kind === "boards" ? first : undefined;
  };
  test("span from joist to joist: four of them from 2 ft to 8 ft", () => {
    expect(floor("40 psf")?.span).toBeCloseTo((96 - 24) / 3, 9);
  });
  test("bend by 5 w L⁴ ÷ (384 E I) under live load, L/360, and take C_D 1.0 [derived; IBC Table 1604.3, memory]", () => {
    const boards = floor("40 psf")!;
    const L = boards.span;
    const live = use(boards, "live-deflection");
    // E of Table 4A, with C_M 0.9 where the joists are green
    const E = boards.wood.values.E.value * live.factors.reduce((product, f) => product * f.value, 1);
    expect(live.value / ((5 * (40 / 12) * L ** 4) / (384 * E))).toBeCloseTo(1, 3);
    expect(live.limit).toBeCloseTo(L / 360, 9);
    expect(use(boards, "bending").factors.find(({ symbol }) => symbol === "C_D")?.value).toBe(1);
    expect(use(boards, "bending")).toMatchObject({ load: "floor", combination: "D + L" });
  });
  test("are told nothing of where the file names panels, or a weight and no deck", () => {
    expect(floor("40 psf", "{kind: panels, thickness: 3/4 in}")).toBeUndefined();
    expect(evaluated(loft("4x6", "40 psf, dead: 4 psf")).results.decks).toEqual([]);
    // neither: it weighs as boards of 1 in, and is held against its load as such
    expect(evaluated(loft("4x6", "40 psf")).results.decks).toHaveLength(1);
  });
});
