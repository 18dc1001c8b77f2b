/**
 * Every row of the adjustment factors that the program holds, against the collected data in `design-values.yaml`, each with
 * its status there: verified = seen in the named source, memory = remembered and not seen.
 */
import { describe, expect, test } from "vitest";
import { durationFactor, type LoadKind } from "../../server/core/loads/combinations.ts";
import { bearingAreaFactor } from "../../server/core/members/bearing.ts";
import { lateralStability } from "../../server/core/members/bending.ts";
import { eulerStress, MOST_COLUMN_SLENDERNESS } from "../../server/core/members/compression.ts";
import {
  flatUseFactors,
  incisingFactors,
  repetitiveFactor,
  type SizedSection,
  sizeFactors,
  wetServiceFactors,
} from "../../server/core/members/factors.ts";
import type { Factor } from "../../server/core/sourced.ts";
import { minimumModulus } from "../../server/core/wood/design-values.ts";
import { sizeClass } from "../../server/core/wood/size-class.ts";
import { type Row, readReference } from "./cases.ts";

const { adjustment_factors: FACTORS, size_classes: CLASSES } = readReference("design-values");

const STATUS: Readonly<Record<string, string>> = { verified: "published", memory: "memory" };
const shown = ({ value, status }: Pick<Factor, "value" | "status">): string => `${value} ${status}`;
const wanted = ({ value, status }: Row): string => `${value} ${STATUS[status]}`;

const lumber = (breadth: number, depth: number, group = "douglas-fir-larch"): SizedSection => ({
  sizeClass: "dimension-lumber",
  group,
  breadth,
  depth,
});
const timber = (breadth: number, depth: number, group = "douglas-fir-larch"): SizedSection => ({
  sizeClass: "beams-and-stringers",
  group,
  breadth,
  depth,
});

/** `2 to 4` → [2, 4]; `5` → [5, 5]; `14 and wider` → [14, 24] */
function widths(text: string): readonly number[] {
  const [first = 0, second] = (text.match(/\d+/g) ?? []).map(Number);
  if (text.includes("wider")) return [first, 24];
  return [first, second ?? first];
}

describe("C_F of dimension lumber, Table 4A", () => {
  const rows: readonly Row[] = FACTORS.CF_table_4A.rows;
  test.each(rows.map((row) => [row.nominal_width_in, row.status, row] as const))(
    "nominal %s in wide [%s]",
    (name, _, row) => {
      for (const width of widths(name))
        for (const [thick, key] of [
          [1.5, "Fb_2in_and_3in_thick"],
          [2.5, "Fb_2in_and_3in_thick"],
          [3.5, "Fb_4in_thick"],
        ] as const) {
          if (thick > width) continue;
          const { Fb, Ft, Fc } = sizeFactors(lumber(thick, width));
          expect([Fb, Ft, Fc].map(shown), `${thick} × ${width}`).toEqual(
            [row[key], row.Ft, row.Fc].map((value) => wanted({ value, status: row.status })),
          );
        }
    },
  );
  test("of Southern Pine, Table 4B notes [memory]", () => {
    const { over_12_wide: over, thick_4_wide_8_plus_Fb: thick } = FACTORS.CF_table_4B;
    const wide = sizeFactors(lumber(1.5, 13.25, "southern-pine"));
    for (const factor of [wide.Fb, wide.Ft, wide.Fc]) expect(shown(factor)).toBe(wanted(over));
    const four = sizeFactors(lumber(3.5, 7.25, "southern-pine"));
    expect([four.Fb, four.Ft, four.Fc].map(shown)).toEqual([wanted(thick), "1 memory", "1 memory"]);
    expect(sizeFactors(lumber(3.5, 5.5, "southern-pine")).Fb.value).toBe(1);
    expect(sizeFactors(lumber(1.5, 11.25, "southern-pine")).Fb.value).toBe(1);
  });
  test("of timbers, Table 4D [verified]", () => {
    const { exponent_denominator: root, threshold_in: from } = FACTORS.CF_timbers;
    for (const depth of [from.value, from.value + 1, 2 * from.value]) {
      const { Fb, Ft, Fc } = sizeFactors(timber(8, depth));
      expect(Fb.value).toBeCloseTo((from.value / depth) ** (1 / root.value), 12);
      expect([Fb.status, Ft.value, Fc.value]).toEqual([STATUS[root.status], 1, 1]);
    }
  });
});

describe("flat use", () => {
  const rows: readonly Row[] = FACTORS.Cfu_table_4A.rows;
  test.each(rows.map((row) => [row.nominal_width_in, row.status, row] as const))(
    "C_fu of nominal %s in wide [%s], Table 4A",
    (name, _, row) => {
      for (const width of widths(name))
        for (const [thick, key] of [
          [1.5, "thick_2_or_3"],
          [3.5, "thick_4"],
        ] as const) {
          if (row[key] === undefined || thick >= width) continue;
          const found = flatUseFactors(lumber(width, thick), "no-2")!;
          expect(found.Fb.value, `${thick} × ${width}`).toBe(row[key]);
          expect(found.E.value).toBe(1);
          expect(found.Fb.status).toBe(STATUS[row.status]);
        }
    },
  );
  test("of beams and stringers, Table 4D [memory]", () => {
    const { Fb_select, Fb_no1, Fb_no2, E_no1 } = FACTORS.flat_use_timbers;
    const of = (grade: "select-structural" | "no-1" | "no-2") => flatUseFactors(timber(12, 8), grade)!;
    expect(shown(of("select-structural").Fb)).toBe(wanted(Fb_select));
    expect(shown(of("no-1").Fb)).toBe(wanted(Fb_no1));
    expect(shown(of("no-2").Fb)).toBe(wanted(Fb_no2));
    expect(shown(of("no-1").E)).toBe(wanted(E_no1));
    expect([of("select-structural").E.value, of("no-2").E.value]).toEqual([1, 1]);
  });
});

describe("C_M", () => {
  const KEYS = [
    ["Fb", "Fb"],
    ["Ft", "Ft"],
    ["Fv", "Fv"],
    ["Fc-perp", "Fc_perp"],
    ["Fc", "Fc"],
    ["E", "E_Emin"],
    ["E-min", "E_Emin"],
  ] as const;
  test.each(KEYS)("on %s of dimension lumber [verified], Tables 4A and 4B", (key, row) => {
    const found = wetServiceFactors(lumber(1.5, 7.25), 1200, 1600)[key];
    expect(shown(found)).toBe(wanted(FACTORS.CM_table_4A_4B[row]));
  });
  test.each(KEYS)("on %s of timbers [verified], Table 4D", (key, row) => {
    const found = wetServiceFactors(timber(8, 12), 1350, 925)[key];
    expect(shown(found)).toBe(wanted(FACTORS.CM_table_4D[row]));
  });
  test("spares bending and compression up to the stresses of the notes [verified]", () => {
    const stress = (text: string): number => Number(/(\d+) psi/.exec(text)?.[1]);
    const [bending, pressing] = [FACTORS.CM_table_4A_4B.Fb.note, FACTORS.CM_table_4A_4B.Fc.note].map(stress);
    expect([bending, pressing]).toEqual([1150, 750]);
    const at = (more: number) => wetServiceFactors(lumber(1.5, 7.25), bending! + more, pressing! + more);
    expect([at(0).Fb.value, at(0).Fc.value]).toEqual([1, 1]);
    expect(at(1).Fb.value).toBe(FACTORS.CM_table_4A_4B.Fb.value);
    expect(at(1).Fc.value).toBe(FACTORS.CM_table_4A_4B.Fc.value);
  });
});

describe("other factors", () => {
  test("C_r [verified]", () => {
    const { value, max_spacing_in: spacing, min_count: count } = FACTORS.Cr;
    const use = {
      sizeClass: "dimension-lumber",
      count: count.value,
      spacing: spacing.value,
      loadSharingDeck: true,
    } as const;
    expect(shown(repetitiveFactor(use))).toBe(wanted(value));
    for (const less of [
      { count: count.value - 1 },
      { spacing: spacing.value + 0.1 },
      { loadSharingDeck: false },
      { sizeClass: "beams-and-stringers" },
      { sizeClass: "posts-and-timbers" },
    ] as const)
      expect(repetitiveFactor({ ...use, ...less }).value, JSON.stringify(less)).toBe(1);
  });
  test.each([
    ["D", "permanent"],
    ["L", "ten_years_occupancy"],
    ["S", "two_months_snow"],
    ["Lr", "seven_days_construction"],
    ["W", "ten_minutes_wind_quake"],
  ] as const)("C_D of %s is that of %s [verified]", (kind: LoadKind, row) =>
    expect(durationFactor(kind).value).toBe(FACTORS.CD[row].value),
  );
  test("C_i [verified]", () => {
    const found = incisingFactors();
    const row = FACTORS.Ci_incising;
    for (const key of ["Fb", "Ft", "Fv", "Fc"] as const)
      expect(shown(found[key])).toBe(wanted(row.Fb_Ft_Fc_Fv));
    expect(shown(found["Fc-perp"])).toBe(wanted(row.Fc_perp));
    for (const key of ["E", "E-min"] as const) expect(shown(found[key])).toBe(wanted(row.E_Emin));
  });
  test("C_b [verified], its limits [memory]", () => {
    const { extra_length_in: more, limits } = FACTORS.Cb_bearing;
    expect(bearingAreaFactor(4, limits.min_from_end_in).value).toBe((4 + more.value) / 4);
    expect(bearingAreaFactor(4, limits.min_from_end_in - 0.1).value).toBe(1);
    expect(bearingAreaFactor(limits.max_length_in, 12).value).toBe(1);
    expect(bearingAreaFactor(limits.max_length_in - 0.01, 12).value).toBeGreaterThan(1.06);
  });
  test("E_min ÷ E [derived from the COV of memory]", () => {
    const { COV, ratio } = FACTORS.Emin_relation;
    expect(minimumModulus(1, COV.value)).toBeCloseTo(ratio.value, 4);
    expect(minimumModulus(1_600_000)).toBeCloseTo(minimumModulus(1_600_000, COV.value), 6);
  });
  test("F_cE and F_bE [verified, memory], and the most slenderness of columns and beams", () => {
    expect(eulerStress(1_000_000, 10)).toBeCloseTo(FACTORS.column_CP.k.value * 10_000, 6);
    expect(MOST_COLUMN_SLENDERNESS).toBe(FACTORS.column_CP.max_le_over_d.value);
    const bent = lateralStability(1000, 500_000, 1.5, 11.25, 120, "uniform");
    expect(bent.criticalStress).toBeCloseTo((FACTORS.beam_CL.k.value * 500_000) / bent.slenderness ** 2, 6);
    const slender = (length: number) => lateralStability(1000, 500_000, 1.5, 11.25, length, "uniform");
    // l_e = 1.63 l_u + 3 d; R_B² = l_e d/b²
    const most = ((FACTORS.beam_CL.max_RB.value ** 2 * 1.5 ** 2) / 11.25 - 3 * 11.25) / 1.63;
    expect([slender(most - 0.1).allowed, slender(most + 0.1).allowed]).toEqual([true, false]);
  });
});

test("size classes set in at the thickness and the excess of the grading rules [verified]", () => {
  const { min_thickness_in: thick, width_excess_in: excess } = CLASSES;
  // nominal 5 in is dressed 4 1/2 in
  expect(sizeClass(thick.value, thick.value)).toBe("posts-and-timbers");
  expect(sizeClass(4, thick.value + 3)).toBe("dimension-lumber");
  expect(sizeClass(8, 8 + excess.value)).toBe("posts-and-timbers");
  expect(sizeClass(8, 8 + excess.value + 0.1)).toBe("beams-and-stringers");
});
