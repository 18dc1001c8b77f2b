/**
 * Span tables of the residential and building code, cell by cell: the longest span of our own check, to the nearest inch.
 * Values are those of our tables; sets that print older values (NDS 1991) take F_b C_F and E from the row.
 */
import { afterAll, describe, expect, it } from "vitest";
import { durationFactor } from "../../server/core/loads/combinations.ts";
import { repetitiveFactor, sizeFactors } from "../../server/core/members/factors.ts";
import { longestSpan } from "../../server/core/members/simple-span.ts";
import { given } from "../../server/core/sourced.ts";
import { designValues, overrideValues } from "../../server/core/wood/design-values.ts";
import { type Row, readReference, tableOf } from "./cases.ts";

const SETS: Record<string, Row> = readReference("spans").sets;
const ROWS = tableOf("spans", "span").records;
/** dressed depth of 2x lumber, in */
const DEPTH: Record<string, number> = { "2x4": 3.5, "2x6": 5.5, "2x8": 7.25, "2x10": 9.25, "2x12": 11.25 };
const GRADE: Record<string, string> = {
  "Select Structural": "select-structural",
  "No.1": "no-1",
  "No.1/No.2": "no-1",
  "No.2": "no-2",
  "No.3": "no-3",
};
const DURATION: Record<number, "S" | "Lr" | "L"> = { 1.15: "S", 1.25: "Lr", 1: "L" };

function span(row: Row): number {
  const set = SETS[row.set]!;
  const depth = DEPTH[row.size]!;
  const found = designValues(row.species.replaceAll("_", "-"), GRADE[row.grade], 1.5, depth);
  if (found.kind === "none") throw new Error(found.reason);
  const section = { sizeClass: found.sizeClass, group: found.group, breadth: 1.5, depth };
  const older = set.values !== "now";
  const size = sizeFactors(section);
  if (!older) {
    // Our table and size factor, not the row's: they must agree with what the printed table was made from.
    expect(found.values.Fb.value * size.Fb.value, "F_b C_F").toBeCloseTo(row.Fb_CF_psi, 6);
    expect(found.values.E.value, "E").toBe(row.E_psi);
  }
  const unit = { ...given(1), symbol: "C_F" };
  const longest = longestSpan({
    values: older
      ? overrideValues(
          found.values,
          new Map([
            ["Fb", row.Fb_CF_psi],
            ["E", row.E_psi],
          ]),
          "the row",
        )
      : found.values,
    conditions: {
      section,
      grade: found.grade,
      duration: durationFactor(DURATION[set.CD]!),
      wet: false,
      repetitive: repetitiveFactor({
        sizeClass: found.sizeClass,
        count: 10,
        spacing: row.spacing_in,
        loadSharingDeck: true,
      }),
      size: older ? { Fb: unit, Ft: unit, Fc: unit } : size,
    },
    deadPlf: (set.dead_psf * row.spacing_in) / 12,
    livePlf: (set.live_psf * row.spacing_in) / 12,
    unbraced: 0,
    seasoning: "dry",
    limits: { live: set.deflection_divisor },
  });
  return longest ?? Number.NaN;
}

describe("code span tables", () => {
  let reproduced = 0;
  const rows = ROWS.map((row) => {
    const set = SETS[row.set]!;
    const title = `row ${row.row} (${set.status}, ${set.source}): ${row.set}, ${row.size} ${row.species} ${row.grade} at ${row.spacing_in} in`;
    return [title, row] as const;
  });
  it.each(rows)("%s", (_title, row) => {
    const longest = span(row);
    // The tables stop at 26 ft; the search for the longest span ends within a thousandth of an inch.
    if (row.span_in === null) expect(longest).toBeGreaterThan(312);
    else
      expect(
        Math.abs(Math.min(longest, 312) - row.span_in),
        `${longest} against ${row.span_ft_in}`,
      ).toBeLessThanOrEqual(0.501);
    reproduced++;
  });
  afterAll(() => console.log(`code span tables: ${reproduced} of ${ROWS.length} cells reproduced`));
  it("are read whole", () => expect(ROWS.length).toBeGreaterThanOrEqual(680));
});
