import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromInches, fromMillimetres } from "../../../server/core/quantity/length.ts";
import {
  type Dimension,
  examplesOf,
  formatQuantity,
  parseQuantity,
  type Reason,
  type UnitSystem,
} from "../../../server/core/quantity/quantity.ts";

const DIMENSIONS: readonly Dimension[] = [
  "length",
  "section",
  "pitch",
  "pressure",
  "stress",
  "density",
  "force",
  "speed",
  "angle",
];
const UNITS: readonly UnitSystem[] = ["inch", "mm"];
type Scalar = Exclude<Dimension, "length" | "section" | "pitch">;

/** Expected figures by the definitions in NIST SP 811 (2008), appendix B, worked apart from the code. */
describe("one number and one unit (memory: NIST SP 811, appendix B)", () => {
  test.each<[string, Scalar, number]>([
    ["40 ft²", "area", 40],
    ["40ft2", "area", 40],
    ["40 sqft", "area", 40],
    ["3.7 m²", "area", 39.826469],
    ["1 m^2", "area", 10.7639104],
    ["45 psf", "pressure", 45],
    ["45psf", "pressure", 45],
    ["40 lb/ft2", "pressure", 40],
    ["1 psi", "pressure", 144],
    ["1.9 kPa", "pressure", 39.682325],
    ["1000 Pa", "pressure", 20.88543],
    ["-20 psf", "pressure", -20],
    ["875 psi", "stress", 875],
    ["1.5 ksi", "stress", 1500],
    ["6 MPa", "stress", 870.2264],
    ["6 N/mm²", "stress", 870.2264],
    ["9 GPa", "stress", 1_305_339.6],
    ["100 kPa", "stress", 14.503774],
    ["35 pcf", "density", 35],
    ["35 lb/ft3", "density", 35],
    ["35 lb/ft³", "density", 35],
    ["35 lb/ft^3", "density", 35],
    ["560 kg/m3", "density", 34.959658],
    ["1500 lb", "force", 1500],
    ["1500 lbs", "force", 1500],
    ["80 lbf", "force", 80],
    ["1 1/2 kip", "force", 1500],
    ["6.5 kN", "force", 1461.258],
    ["100 N", "force", 22.480894],
    ["100 kg", "force", 220.46226],
    ["107 mph", "speed", 107],
    ["48 m/s", "speed", 107.37294],
    ["100 km/h", "speed", 62.137119],
    ["45 deg", "angle", 45],
    ["45°", "angle", 45],
    ["45 degrees", "angle", 45],
    ["1 rad", "angle", 57.29578],
  ])("%s", (text, dimension, expected) => {
    const read = parseQuantity(text, dimension, "inch");
    expect(read.ok && Math.abs(read.value / expected - 1)).toBeLessThan(1e-6);
    expect(parseQuantity(text, dimension, "mm")).toEqual(read);
  });

  test("customary values come through untouched", () => {
    expect(parseQuantity("0.1 psf", "pressure", "inch")).toMatchObject({ value: 0.1 });
    expect(parseQuantity("1500.7 lb", "force", "inch")).toMatchObject({ value: 1500.7 });
  });

  test("zero needs no unit", () => {
    expect(parseQuantity("0", "pressure", "mm")).toMatchObject({ ok: true, value: 0, assumed: true });
  });

  test.each<[string, Scalar, Reason, number]>([
    ["45", "pressure", "no-unit", 2],
    ["45 mph", "pressure", "wrong-dimension", 3],
    ["45 ft", "force", "wrong-dimension", 3],
    ["45 psg", "pressure", "unknown-unit", 3],
    ["6 mPa", "stress", "unknown-unit", 2],
    ["1,000 psi", "stress", "thousands-separator", 1],
    ["1,9 kPa", "pressure", "decimal-comma", 1],
    ["45 psf 30", "pressure", "two-numbers", 7],
    ["45 30 psf", "pressure", "two-numbers", 3],
    ["45 psf live", "pressure", "trailing-text", 7],
    ["psf", "pressure", "not-a-number", 0],
    ["inf", "speed", "not-finite", 0],
    ["", "speed", "empty", 0],
    ["99999999999999999 lb", "force", "too-large", 0],
  ])("%j as %s: %s", (text, dimension, reason, at) => {
    expect(parseQuantity(text, dimension, "inch")).toMatchObject({ ok: false, reason, at });
  });
});

describe("pitches", () => {
  test.each<[string, number, number]>([
    ["7:12", 7, 12],
    ["7 : 12", 7, 12],
    ["7/12", 7, 12],
    ["7 in 12", 7, 12],
    ['7" in 12"', 7, 12],
    ["7in12", 7, 12],
    ["4 1/2:12", 4.5, 12],
    ["4½ in 12", 4.5, 12],
    ["4 1/2/12", 4.5, 12],
    ["7.5/12", 7.5, 12],
    ["1:10", 1, 10],
    ["0:12", 0, 12],
    ["45 deg", 1, 1],
    ["0°", 0, 1],
  ])("%s", (text, rise, run) => {
    expect(parseQuantity(text, "pitch", "inch")).toMatchObject({ ok: true, value: { rise, run } });
  });

  test("an angle is its tangent over 1", () => {
    for (const text of ["30 deg", "30°", "0.5235987755982988 rad"]) {
      const read = parseQuantity(text, "pitch", "mm");
      expect(read.ok && read.value.run).toBe(1);
      expect(read.ok && read.value.rise).toBeCloseTo(1 / Math.sqrt(3), 14);
    }
  });

  test.each<[string, Reason, number]>([
    ["7", "missing-part", 1],
    ["7:", "missing-part", 2],
    ["7:0", "bad-fraction", 0],
    ["-7:12", "negative-not-allowed", 0],
    ["90 deg", "too-large", 0],
    ["7 ft", "wrong-dimension", 2],
    ["7 slope", "unknown-unit", 2],
    ["7:12:3", "trailing-text", 4],
    ["7 12", "two-numbers", 2],
    ["7:x", "not-a-number", 2],
    ["", "empty", 0],
  ])("%j: %s", (text, reason, at) => {
    expect(parseQuantity(text, "pitch", "inch")).toMatchObject({ ok: false, reason, at });
  });

  test("are printed as they were written", () => {
    expect(formatQuantity({ rise: 7, run: 12 }, "pitch", "inch")).toBe("7:12");
    expect(formatQuantity({ rise: 4.5, run: 12 }, "pitch", "inch")).toBe("4.5:12");
    expect(formatQuantity({ rise: Math.tan(Math.PI / 6), run: 1 }, "pitch", "mm")).toBe("30°");
  });
});

describe("printing for people", () => {
  test.each<[number, Scalar, UnitSystem, string]>([
    [45, "pressure", "inch", "45 psf"],
    [12.46, "pressure", "inch", "12.5 psf"],
    [45, "pressure", "mm", "2.15 kPa"],
    [792.6, "stress", "inch", "793 psi"],
    [1_100_000, "stress", "inch", "1,100,000 psi"],
    [793, "stress", "mm", "5.47 MPa"],
    [1280.4, "force", "inch", "1,280 lb"],
    [12.4, "force", "inch", "12 lb"],
    [1280.4, "force", "mm", "5.7 kN"],
    [10, "force", "mm", "44.5 N"],
    [35, "density", "inch", "35 lb/ft³"],
    [35, "density", "mm", "561 kg/m³"],
    [107, "speed", "inch", "107 mph"],
    [107, "speed", "mm", "47.8 m/s"],
    [30.256, "angle", "inch", "30.3°"],
    [45, "angle", "mm", "45°"],
    [-0.0001, "pressure", "inch", "0 psf"],
    [-20, "pressure", "inch", "-20 psf"],
    [Number.NaN, "stress", "inch", "?"],
    [Number.POSITIVE_INFINITY, "force", "mm", "?"],
  ])("%d %s in a file in %s: %s", (value, dimension, units, text) => {
    expect(formatQuantity(value, dimension, units)).toBe(text);
  });

  test("lengths and sections in the units of the file", () => {
    expect(formatQuantity(fromInches(102.5), "length", "inch")).toBe("8 ft 6 1/2 in");
    expect(formatQuantity(fromInches(102.5), "length", "mm")).toBe("2604 mm");
    const eight = { width: fromInches(8), depth: fromInches(9), nominal: false };
    expect(formatQuantity(eight, "section", "inch")).toBe("8x9");
    expect(formatQuantity(eight, "section", "mm")).toBe("203.2x228.6");
    const sawn = { width: fromInches(5.5), depth: fromInches(7.25), nominal: true };
    expect(formatQuantity(sawn, "section", "inch")).toBe("5 1/2 x 7 1/4");
    const metric = { width: fromMillimetres(200), depth: fromMillimetres(225), nominal: false };
    expect(formatQuantity(metric, "section", "inch")).toBe("200x225 mm");
    expect(formatQuantity(metric, "section", "mm")).toBe("200x225");
  });
});

describe("for every dimension", () => {
  test("every example can be read, the first one in the units of the file", () => {
    for (const dimension of DIMENSIONS) {
      for (const units of UNITS) {
        const examples = examplesOf(dimension, units);
        expect(examples.length).toBeGreaterThan(0);
        examples.forEach((example, index) => {
          const read = parseQuantity(example, dimension, units);
          expect(read, `${example} as ${dimension}`).toMatchObject({ ok: true });
          if (index === 0 && read.ok) expect(["either", units]).toContain(read.system);
        });
      }
    }
  });

  const pieces = fc.constantFrom(
    ...["8", "1/2", "½", "-", "−", " ", "'", '"', " ft ", " in", "mm", "x", "×", ":", "/", ".", ",", "°"],
    ...["nominal", "psf", "kN/m", "^", "²", "inf", "0", "99999999999999999999", "\u2009", "\ud83d", "é"],
  );
  const anything = fc.oneof(
    fc.string({ unit: "binary", maxLength: 60 }),
    fc.string({ unit: "grapheme", maxLength: 60 }),
    fc.array(pieces, { maxLength: 12 }).map((parts) => parts.join("")),
  );

  test("any text gives a finite value or a place inside the text", () => {
    fc.assert(
      fc.property(
        anything,
        fc.constantFrom(...DIMENSIONS),
        fc.constantFrom(...UNITS),
        (text, dimension, units) => {
          const read = parseQuantity(text, dimension, units);
          if (!read.ok) {
            expect(read.at).toBeGreaterThanOrEqual(0);
            expect(read.end).toBeGreaterThanOrEqual(read.at);
            expect(read.end).toBeLessThanOrEqual(text.length);
            return;
          }
          const value = read.value;
          const numbers =
            typeof value === "number"
              ? [value]
              : "rise" in value
                ? [value.rise, value.run]
                : [value.width, value.depth];
          expect(numbers.every(Number.isFinite)).toBe(true);
        },
      ),
      { numRuns: 3000 },
    );
  });

  test("a megabyte of anything takes no longer than a megabyte should", () => {
    const size = 1_000_000;
    const noises = [
      "1",
      " ",
      "1 ",
      "1/",
      "-",
      "- ",
      "'",
      "1'",
      "1-1",
      "a",
      "a/",
      ".",
      "½",
      ",1",
      "x",
      "8x",
      ":",
      "\ud83d\ude00",
    ]
      .flatMap((noise) => [noise.repeat(size / noise.length), `8${noise.repeat(size / noise.length)}`])
      .concat(
        `8 ft${" ".repeat(size)}6 in`,
        `${"0".repeat(size)}8 in`,
        `1${" ".repeat(size)}1${" ".repeat(size)}/2`,
      );
    for (const text of noises) {
      for (const dimension of DIMENSIONS) {
        const start = performance.now();
        parseQuantity(text, dimension, "inch");
        expect(performance.now() - start, `${text.slice(0, 8)}… as ${dimension}`).toBeLessThan(20_000);
      }
    }
  }, 60_000);
});
