import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Length, NM_PER_INCH, NM_PER_MM } from "../../../server/core/quantity/length.ts";
import {
  bothSystems,
  formatLength,
  parseLength,
  printExact,
  type Reason,
  type UnitSystem,
} from "../../../server/core/quantity/quantity.ts";

const SIXTEENTH = NM_PER_INCH / 16;
const inch = (count: number): Length => Math.round(count * NM_PER_INCH) as Length;
const mm = (count: number): Length => Math.round(count * NM_PER_MM) as Length;

function lengthOf(text: string, units: UnitSystem = "inch"): number | string {
  const read = parseLength(text, units);
  return read.ok ? read.value : `${read.reason} at ${read.at}`;
}

describe("lengths as the trade writes them", () => {
  test.each<[string, number]>([
    ["8 ft 6 1/2 in", 102.5],
    ["8ft6-1/2in", 102.5],
    ["8 feet 6 1/2 inches", 102.5],
    ["1 foot 1 inch", 13],
    ["8 FT 6 In", 102],
    ["8 ft. 6 in.", 102],
    ["8'-6 1/2\"", 102.5],
    ["8'-6-1/2\"", 102.5],
    ["8'6\"", 102],
    ["8' 6\"", 102],
    ["8' 6", 102],
    ["8'-6", 102],
    ["8' - 6\"", 102],
    ["8' 6''", 102],
    ["8′ 6½″", 102.5],
    ["8’ 6 ½”", 102.5],
    ["8‘-6“", 102],
    ["8′-½″", 96.5],
    ["5-1/2", 5.5],
    ["5–1/2", 5.5],
    ["5 1/2", 5.5],
    ["5½", 5.5],
    ["5 ½ in", 5.5],
    ["5-½", 5.5],
    ["½", 0.5],
    ["⅞ in", 0.875],
    ["1/2", 0.5],
    ["1 / 2", 0.5],
    ['15⁄16"', 0.9375],
    ["3/2 in", 1.5],
    [".5", 0.5],
    ["3.5 in", 3.5],
    ["5.", 5],
    ["0", 0],
    ["8 ft 14 in", 110],
    ["8.5 ft", 102],
    ["8\u00A0ft\u20096\u202F1/2\u00A0in", 102.5],
    ["  8 ft\t", 96],
    ["+4 in", 4],
  ])("%s", (text, expected) => {
    expect(lengthOf(text)).toBe(inch(expected));
  });

  test.each<[string, number]>([
    ["140 mm", 140],
    ["140mm", 140],
    ["14 cm", 140],
    ["1.2 m", 1200],
    ["0.000001 mm", 0.000001],
    ["12.5 millimetres", 12.5],
    ["2 meters", 2000],
  ])("%s", (text, expected) => {
    expect(lengthOf(text)).toBe(mm(expected));
    expect(lengthOf(text, "mm")).toBe(mm(expected));
  });

  test("a sign covers the whole length", () => {
    expect(lengthOf("-4' 6\"")).toBe(inch(-54));
    expect(lengthOf("−4 ft 6 in")).toBe(inch(-54));
    expect(lengthOf("–4 in")).toBe(inch(-4));
    expect(lengthOf("- 1/2")).toBe(inch(-0.5));
    expect(Object.is(lengthOf("-0 in"), 0)).toBe(true);
  });

  test("a bare number takes the units of the file; inches after feet stay inches", () => {
    expect(lengthOf("140", "mm")).toBe(mm(140));
    expect(lengthOf("1/2", "mm")).toBe(mm(0.5));
    expect(lengthOf("8' 6", "mm")).toBe(inch(102));
    expect(parseLength("140", "mm")).toMatchObject({ unit: "mm", system: "mm", assumed: true });
    expect(parseLength("8' 6\"", "mm")).toMatchObject({ unit: "ft", system: "inch", assumed: false });
  });

  test("fractions are exact, and the nearest nanometre where there is no exact one", () => {
    expect(lengthOf("1/64 in")).toBe(396_875);
    expect(lengthOf("0.1 mm")).toBe(100_000);
    expect(lengthOf("1/3 in")).toBe(8_466_667);
    expect(lengthOf("2/3 in")).toBe(16_933_333);
    expect(lengthOf("0.0000005 mm")).toBe(1);
    expect(lengthOf("-0.0000005 mm")).toBe(-1);
  });
});

describe("lengths that cannot be read say why and where", () => {
  test.each<[string, Reason, number]>([
    ["", "empty", 0],
    ["   ", "empty", 3],
    ["-", "empty", 1],
    ["about 4", "not-a-number", 0],
    ["ft 8", "not-a-number", 0],
    ["--4", "not-a-number", 1],
    ["1.2.3", "not-a-number", 3],
    ["8'-", "not-a-number", 3],
    [".inf", "not-finite", 0],
    ["-NaN", "not-finite", 1],
    ["8 fett", "unknown-unit", 2],
    ["1e3", "unknown-unit", 1],
    ["45 psf", "wrong-dimension", 3],
    ["8 ft 140 mm", "mixed-systems", 5],
    ["6 in 140 mm", "mixed-systems", 5],
    ["1 m 3 in", "mixed-systems", 4],
    ["6 in 8 ft", "two-numbers", 5],
    ["8 ft 6 ft", "two-numbers", 5],
    ["8 6 1/2", "two-numbers", 2],
    ["8-6", "two-numbers", 2],
    ["1 000", "two-numbers", 2],
    ["5.5 1/2", "two-numbers", 4],
    ["8 ft 6 in long", "trailing-text", 10],
    ["8x9", "unknown-unit", 1],
    ["1,000", "thousands-separator", 1],
    ["1,000 mm", "thousands-separator", 1],
    ["3,5 in", "decimal-comma", 1],
    ["3,5000", "decimal-comma", 1],
    ["1/0", "bad-fraction", 0],
    ["1/", "bad-fraction", 0],
    ["5 9/8", "bad-fraction", 2],
    ["1/2/3", "bad-fraction", 3],
    ["1.5/2", "bad-fraction", 3],
    ["1/2.5", "bad-fraction", 0],
    ["5 - 1/2", "ambiguous-dash", 2],
    ["10 ft - 1/2 in", "ambiguous-dash", 6],
    ["10' -1/2", "ambiguous-dash", 4],
    ["5 -1/2", "ambiguous-dash", 2],
    ["9e99", "unknown-unit", 1],
    ["99999999999 ft", "too-large", 0],
    ["1".repeat(41), "too-many-digits", 0],
    [`0.${"3".repeat(41)} mm`, "too-many-digits", 0],
  ])("%j: %s", (text, reason, at) => {
    expect(parseLength(text, "inch")).toMatchObject({ ok: false, reason, at });
  });
});

describe("printing lengths", () => {
  test("in every style", () => {
    expect(formatLength(inch(102.5), "trade")).toBe("8'-6 1/2\"");
    expect(formatLength(inch(102.5), "worded")).toBe("8 ft 6 1/2 in");
    expect(formatLength(inch(102.5), "inches")).toBe("102 1/2 in");
    expect(formatLength(inch(102.5), "mm")).toBe("2604 mm");
    expect(formatLength(inch(102.5), "mm", { decimals: 1 })).toBe("2603.5 mm");
    expect(formatLength(inch(102.5), "mm", { halves: "to-even" })).toBe("2604 mm");
    expect(formatLength(inch(96), "worded")).toBe("8 ft");
    expect(formatLength(inch(96.5), "worded")).toBe("8 ft 1/2 in");
    expect(formatLength(inch(0.5), "worded")).toBe("1/2 in");
    expect(formatLength(inch(0), "worded")).toBe("0 in");
    expect(formatLength(inch(-54), "worded")).toBe("-4 ft 6 in");
    expect(formatLength(inch(-0.01), "trade")).toBe("0'-0\"");
    expect(formatLength(mm(-0.4), "mm")).toBe("0 mm");
    expect(formatLength(inch(95.999), "inches")).toBe("96 in");
    expect(bothSystems(inch(102.5))).toBe("8'-6 1/2\" (2604 mm)");
    expect(bothSystems(mm(2604), "mm")).toBe("2604 mm (8'-6 1/2\")");
  });

  test("without loss, in the units of the file", () => {
    expect(printExact(inch(102.5), "inch")).toBe("8 ft 6 1/2 in");
    expect(printExact(inch(36), "inch")).toBe("36 in");
    expect(printExact(inch(3.375 + 1 / 64), "inch")).toBe("3 25/64 in");
    expect(printExact(inch(0.1), "inch")).toBe("0.1 in");
    expect(printExact(mm(140), "inch")).toBe("140 mm");
    expect(printExact(inch(0.5), "mm")).toBe("12.7 mm");
    expect(printExact(-1 as Length, "mm")).toBe("-0.000001 mm");
  });

  test("of a failed computation, without throwing or hanging", () => {
    for (const none of [Number.NaN, Number.POSITIVE_INFINITY]) {
      for (const style of ["trade", "worded", "inches", "mm"] as const) {
        expect(formatLength(none as Length, style)).toBe("?");
      }
      expect(printExact(none as Length, "inch")).toBe("?");
    }
  });
});

describe("always", () => {
  const length = fc.maxSafeInteger().map((value) => value as Length);

  test("what is printed in sixteenths is read back the same", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -1_000_000, max: 1_000_000 }),
        fc.constantFrom("trade" as const, "worded" as const, "inches" as const),
        fc.constantFrom("inch" as const, "mm" as const),
        (count, style, units) => {
          const value = (count * SIXTEENTH + 0) as Length;
          expect(lengthOf(formatLength(value, style), units)).toBe(value);
        },
      ),
    );
  });

  test("whole millimetres are read back the same", () => {
    fc.assert(
      fc.property(fc.integer({ min: -1e8, max: 1e8 }), (count) => {
        expect(lengthOf(formatLength(mm(count), "mm"))).toBe(mm(count) + 0);
      }),
    );
  });

  test("a length printed without loss is read back the same", () => {
    const fine = fc.integer({ min: -1e7, max: 1e7 });
    const steps = [1, 2540, 396_875, SIXTEENTH, NM_PER_INCH, NM_PER_MM];
    fc.assert(
      fc.property(
        fc.oneof(
          length,
          fc.tuple(fine, fc.constantFrom(...steps)).map(([n, step]) => (n * step) as Length),
        ),
        fc.constantFrom("inch" as const, "mm" as const),
        fc.constantFrom("inch" as const, "mm" as const),
        (value, written, file) => {
          expect(lengthOf(printExact(value, written), file)).toBe(value + 0);
        },
      ),
      { numRuns: 1000 },
    );
  });

  test("a minus in front gives the opposite length, and nothing else changes", () => {
    const part = fc.constantFrom("8", "1/2", "5 1/2", "½", "3.25", "0", "7-3/8", "1/3", "11 31/32");
    const unit = fc.constantFrom("", " in", '"', "'", " ft", " mm", " m");
    const more = fc.constantFrom("", " 6 1/2 in", '-6"', " psf", "/2", " 3 mm");
    fc.assert(
      fc.property(part, unit, more, fc.constantFrom("-", "−", "– "), (number, written, rest, minus) => {
        const plain = parseLength(number + written + rest, "inch");
        const negative = parseLength(minus + number + written + rest, "inch");
        if (plain.ok) expect(negative).toEqual({ ...plain, value: 0 - plain.value + 0 });
        else expect(negative).toMatchObject({ ok: false, reason: plain.reason, at: plain.at + minus.length });
      }),
    );
  });

  test("a printed length is within half a step of the length", () => {
    const modest = fc.integer({ min: -1e13, max: 1e13 }).map((value) => value as Length);
    fc.assert(
      fc.property(
        modest,
        fc.constantFrom(1, 2, 4, 8, 16, 32, 64),
        fc.boolean(),
        (value, denominator, even) => {
          const options = { denominator, halves: even ? ("to-even" as const) : ("away-from-zero" as const) };
          const text = formatLength(value, "trade", options as Parameters<typeof formatLength>[2]);
          expect(Math.abs(Number(lengthOf(text)) - value) * 2 * denominator).toBeLessThanOrEqual(NM_PER_INCH);
        },
      ),
    );
  });
});
