import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromInches, inches, millimetres } from "../../../server/core/quantity/length.ts";
import {
  dressedSection,
  formatSection,
  type Length,
  parseSection,
  type Reason,
  type UnitSystem,
} from "../../../server/core/quantity/quantity.ts";

function sizeOf(text: string, units: UnitSystem = "inch"): readonly number[] | string {
  const read = parseSection(text, units);
  if (!read.ok) return read.reason;
  const measure = read.system === "mm" ? millimetres : inches;
  return [measure(read.value.width), measure(read.value.depth)];
}

describe("sections", () => {
  test.each<[string, number, number]>([
    ["8x9", 8, 9],
    ["8×9", 8, 9],
    ["8 x 9", 8, 9],
    ["8X9", 8, 9],
    ["8*9", 8, 9],
    ["8x9 in", 8, 9],
    ["8 in x 9", 8, 9],
    ['8"x9"', 8, 9],
    ["8″ × 9″", 8, 9],
    ["8 inches x 9 inches", 8, 9],
    ["5 1/2 x 7 1/4", 5.5, 7.25],
    ["5-1/2x7-1/4", 5.5, 7.25],
    ["5½×7¼", 5.5, 7.25],
    ["7.5x7.5", 7.5, 7.5],
    ["9x8", 9, 8],
    ["200x225 mm", 200, 225],
    ["200 mm x 22.5 cm", 200, 225],
  ])("%s", (text, width, depth) => {
    expect(sizeOf(text)).toEqual([width, depth]);
    expect(parseSection(text, "inch")).toMatchObject({ value: { nominal: false } });
  });

  test("without a unit they take those of the file, and say so", () => {
    expect(sizeOf("200x225", "mm")).toEqual([200, 225]);
    expect(parseSection("8x9", "mm")).toMatchObject({ system: "mm", assumed: true });
    expect(parseSection("8x9 in", "mm")).toMatchObject({ system: "inch", assumed: false });
  });

  /** PS 20 as remembered; NDS Supplement table 1A prints the sizes of dimension lumber. */
  test.each<[string, number, number]>([
    ["1x4 nominal", 0.75, 3.5],
    ["1x8 nominal", 0.75, 7.25],
    ["2x4 nominal", 1.5, 3.5],
    ["2x5 nominal", 1.5, 4.5],
    ["2x6 nominal", 1.5, 5.5],
    ["2 x 8 nominal", 1.5, 7.25],
    ["2x8 in nominal", 1.5, 7.25],
    ["2x10 nom", 1.5, 9.25],
    ["2x12 nom.", 1.5, 11.25],
    ["8x2 Nominal", 7.25, 1.5],
    ["3x7 nominal", 2.5, 6.5],
    ["4x12 nominal", 3.5, 11.25],
    ["5x7 nominal", 4.5, 6.5],
    ["6x6 nominal", 5.5, 5.5],
    ["8x12 nominal", 7.5, 11.5],
    ["1 1/4 x 6 nominal", 1, 5.5],
  ])("%s (memory: PS 20)", (text, width, depth) => {
    expect(sizeOf(text)).toEqual([width, depth]);
    expect(sizeOf(text, "mm")).toEqual([width, depth]);
    expect(parseSection(text, "inch")).toMatchObject({ system: "inch", value: { nominal: true } });
  });

  test("a planed section is dressed once, and only from a size of the standard (memory: PS 20)", () => {
    const section = (width: number, depth: number, nominal = false) => ({
      width: fromInches(width),
      depth: fromInches(depth),
      nominal,
    });
    expect(dressedSection(section(8, 8))).toEqual(section(7.5, 7.5));
    expect(dressedSection(section(3, 8))).toEqual(section(2.5, 7.25));
    expect(dressedSection(section(5.5, 7.25))).toEqual(section(5.5, 7.25));
    expect(dressedSection(section(6, 6, true))).toEqual(section(6, 6, true));
  });

  test.each<[string, Reason, number]>([
    ["", "empty", 0],
    ["8", "missing-part", 1],
    ["8x", "missing-part", 2],
    ["8 in", "missing-part", 4],
    ["x9", "not-a-number", 0],
    ["8xx9", "not-a-number", 2],
    ["-8x9", "negative-not-allowed", 0],
    ["8x-9", "negative-not-allowed", 2],
    ["8 9", "two-numbers", 2],
    ["8x9x10", "trailing-text", 3],
    ["8x9 x 10", "trailing-text", 4],
    ["8x9 rough", "unknown-unit", 4],
    ["8x9 in rough", "trailing-text", 7],
    ["8x9 psf", "wrong-dimension", 4],
    ["8 in x 225 mm", "mixed-systems", 7],
    ["200x225 mm nominal", "bad-nominal", 0],
    ["2x4.7 nominal", "bad-nominal", 0],
    ["2x40 nominal", "bad-nominal", 0],
    ["1,000x9", "thousands-separator", 1],
  ])("%j: %s", (text, reason, at) => {
    expect(parseSection(text, "inch")).toMatchObject({ ok: false, reason, at });
  });

  test("what is printed is read back the same", () => {
    const side = fc.oneof(
      fc.integer({ min: 1, max: 64 * 30 }).map((count) => (count * 396_875) as Length),
      fc.integer({ min: 1, max: 1e9 }).map((count) => count as Length),
    );
    fc.assert(
      fc.property(side, side, fc.constantFrom("inch" as const, "mm" as const), (width, depth, units) => {
        const read = parseSection(formatSection({ width, depth }, units), units);
        expect(read).toMatchObject({ ok: true, value: { width, depth, nominal: false } });
      }),
    );
  });
});
