/** Beams that rest on piers themselves, without posts, also between grid lines. */
import { describe, expect, test } from "vitest";
import { bearingReactions } from "../../../server/core/statics/balance.ts";
import { timberDensity } from "../../../server/core/wood/timber-weight.ts";
import { expectFindings } from "../../fixtures.ts";
import { checked } from "./members.ts";

const SPAN = 144;
const SECTION = { width: 6, depth: 8 };

const lone = (piers: string, length = "12 ft", section = "6x8"): string => `frame: Bench
format: 1
units: inch
site: {frost-depth: 20 in, soil: sand}
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green}
grid:
  walls: {A: 0}
  bents: {1: 0, 2: ${length}}
  levels: {top: 20 in}
members:
  bench: {kind: beam, section: ${section}, walls: [A], from: 1, to: 2, top: top}
piers:
  all: {${piers}, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
`;

/** Own weight in lb and what each pier holds up of it under D, by its place. */
function underOwnWeight(text: string) {
  const { model, solution } = checked(text);
  expect(solution.cases.map((c) => c.frameCase.id)).toEqual(["1"]);
  const holds = new Map(bearingReactions(solution.cases[0]!).map(({ at, force }) => [at, force[2]]));
  const density = timberDensity(model.timbers[0]!.class)!.value;
  return { weight: (density * SECTION.width * SECTION.depth * SPAN) / 1728, holds };
}

describe("a lone beam on piers [statics, derived]", () => {
  test("two between the grid lines, off the middle: moments about each of them", () => {
    const { weight, holds } = underOwnWeight(lone("under: bench, at: [A@2 ft, A@9 ft]"));
    // 24 and 108 in from its end, its weight at 72
    expect([...holds.keys()]).toEqual(["all@A@2-ft", "all@A@9-ft"]);
    expect(holds.get("all@A@2-ft")).toBeCloseTo((weight * (108 - 72)) / 84, 6);
    expect(holds.get("all@A@9-ft")).toBeCloseTo((weight * (72 - 24)) / 84, 6);
  });

  test("two at its ends, as wide in from them as posts would stand", () => {
    const { weight, holds } = underOwnWeight(lone("under: bench, at: [A1, A2]"));
    expect(holds.get("all@A1")).toBeCloseTo(weight / 2, 6);
    expect(holds.get("all@A2")).toBeCloseTo(weight / 2, 6);
  });

  test("three: as the theorem of three moments says", () => {
    // at 24, 72 and 120 in: alike spans of 48, tails of 24: M over the outer ones w 24² ÷ 2
    const { weight, holds } = underOwnWeight(lone("under: bench, at: [A@2 ft, A@6 ft, A@10 ft]"));
    const w = weight / SPAN;
    const [l, a] = [48, 24];
    const outer = (-w * a ** 2) / 2;
    // M₀ l + 4 M₁ l + M₂ l = −w l³ ÷ 2
    const middle = (-(w * l ** 2) / 2 - 2 * outer) / 4;
    const end = w * a + (w * l) / 2 + (middle - outer) / l;
    // shear gives way too, which the theorem leaves out
    expect(holds.get("all@A@2-ft")! / end).toBeCloseTo(1, 1);
    expect(holds.get("all@A@6-ft")! + 2 * holds.get("all@A@2-ft")!).toBeCloseTo(weight, 6);
  });

  test("a slender one has an answer too, however far it sags", () => {
    const { solution } = checked(lone("under: bench, at: [A1, A2]", "24 ft", "3x3"));
    expect(solution.cases.map((c) => c.combined.status)).toEqual(["sound"]);
  });

  test("it comes out clean", () => {
    expectFindings(lone("under: bench, at: [A@2 ft, A@10 ft]"), { whole: true });
  });
});
