import { describe, expect, test } from "vitest";
import { amountWords, noteWords } from "../../../server/core/checks/amount-words.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { lateralStability } from "../../../server/core/members/bending.ts";
import { sizeFactors, TEMPERATURE, wetServiceFactors } from "../../../server/core/members/factors.ts";
import type { AmountUnit, Note } from "../../../server/core/note.ts";

const inch = makeSay("inch");
const mm = makeSay("mm");
const both = (note: Note | undefined): string[] => [noteWords(note ?? "", inch), noteWords(note ?? "", mm)];

describe("amounts in the units of the file (exact definitions)", () => {
  test.each<[number, AmountUnit, string, string]>([
    [97.83, "in", `8'-1 13/16"`, "2485 mm"],
    [20, "ft", `20'-0"`, "6096 mm"],
    [6.588, "in2", "6.6 in²", "4,250 mm²"],
    [63, "ft2", "63 ft²", "5.9 m²"],
    [1150, "psi", "1,150 psi", "7.93 MPa"],
    [20, "psf", "20 psf", "0.958 kPa"],
    [105, "mph", "105 mph", "46.9 m/s"],
    [28, "lb/ft3", "28 lb/ft³", "449 kg/m³"],
    [100, "degF", "100 °F", "38 °C"],
    [59.74, "degree", "59.7°", "59.7°"],
  ])("%d %s", (value, unit, inches, metric) => {
    expect(amountWords({ value, unit }, inch)).toBe(inches);
    expect(amountWords({ value, unit }, mm)).toBe(metric);
  });
});

describe("notes of factors hold no figure with a unit of one system", () => {
  const section = (
    sizeClass: "dimension-lumber" | "beams-and-stringers",
    breadth: number,
    depth: number,
  ) => ({
    sizeClass,
    group: "spruce-pine-fir",
    breadth,
    depth,
  });

  test("size, temperature, wet service, lateral stability", () => {
    expect(both(sizeFactors(section("dimension-lumber", 2, 5.5)).Fb.note)).toEqual([
      "up to 6 in wide",
      "up to 152 mm wide",
    ]);
    expect(both(sizeFactors(section("beams-and-stringers", 8, 14)).Fb.note)).toEqual([
      "(12 in/d)^(1/9) over 12 in deep",
      "(305 mm/d)^(1/9) over 305 mm deep",
    ]);
    expect(both(TEMPERATURE.note)).toEqual(["up to 100 °F", "up to 38 °C"]);
    expect(both(wetServiceFactors(section("dimension-lumber", 2, 5.5), 875, 700).Fb.note)).toEqual([
      "F_b C_F is at most 1,150 psi",
      "F_b C_F is at most 7.93 MPa",
    ]);
    expect(both(lateralStability(1000, 4e5, 2, 6, 72, "other").factor.note)).toEqual([
      // R_B = √(l_e d/b²), l_e = 1.63 × 72 + 3 × 6 in (NDS 3.3-5, Table 3.3.3)
      `unbraced over 6'-0", R_B = 14.2`,
      "unbraced over 1829 mm, R_B = 14.2",
    ]);
  });

  test("what a hole names is said in words too", () => {
    const note: Note = {
      text: "{why}, {length}",
      parts: { why: { words: "nothing holds it that way" }, length: { value: 97.83, unit: "in" } },
    };
    expect(both(note)).toEqual([
      `nothing holds it that way, 8'-1 13/16"`,
      "nothing holds it that way, 2485 mm",
    ]);
  });
});
