/**
 * Carpentry geometry against outside figures: rafters, bird's mouths, arcs, braces, diagonals, logs. Where the product
 * places timbers, the figure is read off a placed timber. Sources: keys of `sources` and `formulas` in geometry.yaml,
 * named in each case. Left out, as the product has no hips: hip-*, metric-hip, the hips of metric-unit and the hip columns of the rafter table.
 */
import { describe, expect, test } from "vitest";
import { arcLength, arcOrdinate, arcRadius, arcRise } from "../../server/core/joinery/arc.ts";
import { seatSizes } from "../../server/core/joinery/kinds/birds-mouth.ts";
import type { Timber } from "../../server/core/model/model.ts";
import { solidOf } from "../../server/core/model/solid.ts";
import { dot, length, sub } from "../../server/core/model/vec.ts";
import { diagonal, outOfSquare } from "../../server/core/shop/diagonals.ts";
import { largestSquare, smallestLog, stiffestSection, strongestSection } from "../../server/core/shop/log.ts";
import {
  decimalC,
  doyle,
  international,
  internationalExact,
  internationalSection,
  QUARTER_KERF,
  scribner,
} from "../../server/core/shop/log-rules.ts";
import { build, MM, stick } from "../core/model/frames.ts";
import { type Case, casesOf, check, tableOf, titleOf } from "./cases.ts";

const read = new Set<string>();
const cases = (...prefixes: string[]): Case[] => {
  const found = casesOf("geometry", ...prefixes);
  for (const c of found) read.add(c.id);
  expect(found.length, prefixes.join()).toBeGreaterThan(0);
  return found;
};

/** Registers a test for every case of some prefixes. */
function compare(
  prefixes: readonly string[],
  got: (given: Case["given"], c: Case) => Record<string, unknown>,
): void {
  for (const c of cases(...prefixes)) test(titleOf(c), () => check(c, got(c.given, c)));
}

/** A rafter from the plate's outside face to the middle of the roof, no overhang, no ridge: `run` inches, level. */
function rafter(pitch: string, run: number, unit: "inch" | "mm" = "inch"): Timber {
  const model = build({
    units: unit,
    walls: `{A: 0, B: ${2 * run}}`,
    bents: unit === "mm" ? "{1: 0, 2: 2400}" : "{1: 0, 2: 8 ft}",
    levels: unit === "mm" ? "{eave: 2400}" : "{eave: 8 ft}",
    members: {
      plate: `{kind: plate, section: ${unit === "mm" ? "150x150" : "6x6"}, walls: [A, B], top: eave}`,
    },
    roof: `{kind: gable, pitch: "${pitch}", rafters: {section: ${unit === "mm" ? "50x150" : "2x6"}, seat: {kind: birds-mouth}, count: 2}}`,
  });
  return stick(model, "rafter@A.1");
}

describe("rafters", () => {
  compare(["rafter-worked-"], ({ rise_per_12, run_ft }) => {
    const exact = rafter(`${rise_per_12}:12`, run_ft * 12).span;
    // the square prints hundredths for each foot of run
    const perFoot = Math.round((exact / run_ft) * 100) / 100;
    return { length_in: perFoot * run_ft, exact_in: exact };
  });

  compare(["metric-common"], ({ rise, run, total_run }) => ({
    line_length: rafter(`${rise}:${run}`, total_run, "mm").span / MM,
  }));

  const [unit] = cases("metric-unit");
  test(`${titleOf(unit!)}, common rafter only`, () => {
    const { rise, run } = unit!.given;
    const perUnit = rafter(`${rise}:${run}`, 10 * run, "mm").span / MM / 10;
    expect(Math.abs(perUnit - unit!.expect.common)).toBeLessThanOrEqual(unit!.absolute!.common! + 1e-9);
  });

  const table = tableOf("geometry", "rafter-table");
  test.each(table.records)("$rise_per_12 in 12 (common rafter: $status_common)", (row) => {
    const placed = rafter(`${row.rise_per_12}:12`, 120);
    expect(Math.abs(placed.span / 10 - row.common_per_ft)).toBeLessThanOrEqual(
      table.absolute!.lengths! + 1e-9,
    );
    const degrees = (Math.asin(placed.axis[2]) * 180) / Math.PI;
    expect(Math.abs(degrees - row.slope_deg)).toBeLessThanOrEqual(table.absolute!.slope_deg! + 1e-9);
  });
});

describe("bird's mouths", () => {
  compare(["bird-"], ({ rise_per_12, rafter_depth, seat }) => {
    const sizes = seatSizes(rafter_depth, Math.atan(rise_per_12 / 12), seat);
    return {
      plumb_depth: sizes.heightAbovePlate + sizes.plumb,
      plumb_cut: sizes.plumb,
      heel_above_plate: sizes.heightAbovePlate,
      notch_square: sizes.depth,
      wood_left: sizes.woodLeft,
      notch_share: sizes.depth / rafter_depth,
    };
  });
});

describe("arcs", () => {
  compare(["arc-"], ({ chord, rise, x, blank_width }) => {
    const radius = arcRadius(chord, rise);
    expect(arcRise(chord, radius)).toBeCloseTo(rise, 9);
    return {
      radius,
      ordinate_at_x: arcOrdinate(radius, rise, x),
      arc_length: arcLength(chord, radius),
      ...(blank_width === undefined ? {} : { wood_left_at_middle: blank_width - rise }),
    };
  });
});

describe("braces, as the model places them", () => {
  function brace(legA: number, legB: number, depth: number): { long: number; short: number; angle: number } {
    const model = build({
      levels: "{base: 0, top: 12 ft}",
      members: {
        post: "{kind: post, section: 8x8, at: [A1], from: base, to: plate}",
        plate: "{kind: plate, section: 8x8, walls: [A], top: top}",
        knee: `{kind: brace, section: 3x${depth}, between: [post, plate], legs: {post: ${legA}, plate: ${legB}}}`,
      },
    });
    const placed = stick(model, "knee@A1-A2");
    const { corners } = solidOf(placed);
    const edges = [0, 1, 2, 3].map((i) => length(sub(corners[i + 4]!, corners[i]!)));
    const post = stick(model, "post@A1");
    return {
      long: Math.max(...edges),
      short: Math.min(...edges),
      angle: (Math.acos(dot(placed.axis, post.axis)) * 180) / Math.PI,
    };
  }

  compare(["brace-table-"], ({ leg_a, leg_b }) => ({ length: brace(leg_a, leg_b, 2).long }));

  compare(["brace-edge-"], ({ leg_a, leg_b, brace_width }) => {
    const { long, short, angle } = brace(leg_a, leg_b, brace_width);
    return { long_edge: long, short_edge: short, angle_to_a_deg: angle };
  });
});

describe("squaring", () => {
  // how the diagonal is written in feet and inches is proved with the quantities
  compare(["diag-"], ({ a_in, b_in }, c) => ({ diagonal_in: diagonal(a_in, b_in), text: c.expect.text }));
  compare(["square-"], ({ a, b }) => ({ hypotenuse: diagonal(a, b) }));
  compare(["skew-"], ({ a_in, b_in, diagonal_difference }) => {
    const skew = outOfSquare(a_in, b_in, diagonal_difference)!;
    return {
      long_diagonal: skew.longDiagonal,
      short_diagonal: skew.shortDiagonal,
      offset_at_end_of_b: skew.offset,
      angle_deg: skew.angle,
    };
  });

  test("square sides have equal diagonals; no layout differs by more than its sides allow", () => {
    expect(outOfSquare(3, 4, 0)).toEqual({ longDiagonal: 5, shortDiagonal: 5, offset: 0, angle: 90 });
    expect(outOfSquare(144, 192, -0.5)).toEqual(outOfSquare(144, 192, 0.5));
    expect(outOfSquare(3, 4, 20)).toBeUndefined();
    expect(outOfSquare(0, 4, 1)).toBeUndefined();
  });
});

describe("timbers from a log", () => {
  const modulus = (s: { width: number; depth: number }): number => (s.width * s.depth ** 2) / 6;

  compare(["inscribed-"], ({ diameter = 1 }, c) => {
    const square = largestSquare(diameter);
    const strong = strongestSection(diameter);
    const stiff = stiffestSection(diameter);
    const all: Record<string, number> = {
      side: square.width,
      area: square.width ** 2,
      width: strong.width,
      depth: strong.depth,
      width_over_depth: strong.width / strong.depth,
      square_side: square.width,
      strongest_width: strong.width,
      strongest_depth: strong.depth,
      stiffest_width: stiff.width,
      stiffest_depth: stiff.depth,
      square_S: modulus(square),
      strongest_S: modulus(strong),
      square_share_of_circle: square.width ** 2 / ((Math.PI * diameter ** 2) / 4),
    };
    return Object.fromEntries(Object.keys(c.expect).map((key) => [key, all[key]]));
  });

  compare(["log-for-"], ({ b, d }) => ({ diameter: smallestLog(b, d) }));

  test("no section of the log is stronger or stiffer than the one it is said of (derived)", () => {
    for (let width = 0.5; width < 12; width += 0.5) {
      const depth = Math.sqrt(144 - width ** 2);
      expect(width * depth ** 2).toBeLessThanOrEqual(6 * modulus(strongestSection(12)) + 1e-9);
      const stiff = stiffestSection(12);
      expect(width * depth ** 3).toBeLessThanOrEqual(stiff.width * stiff.depth ** 3 + 1e-9);
    }
  });
});

describe("log rules", () => {
  compare(["log-dc-print-"], ({ diameter, length_ft }) => ({ board_feet: decimalC(diameter, length_ft) }));
  compare(["log-doyle-print"], ({ diameter, length_ft }) => ({ board_feet: doyle(diameter, length_ft) }));
  compare(["log-int14-factor"], () => ({ ratio: QUARTER_KERF }));
  compare(["log-int-section-"], ({ diameter }) => ({
    kerf_1_8: internationalSection(diameter) / QUARTER_KERF,
    kerf_1_4: internationalSection(diameter),
  }));

  for (const [prefix, rule] of [
    ["log-doyle", doyle],
    ["log-scribner", scribner],
    ["log-decimal-c", decimalC],
    ["log-int14", international],
  ] as const) {
    const table = tableOf("geometry", prefix);
    test.each(table.records)(`${prefix} (${table.status}): $diameter in`, (row) => {
      const lengths = Object.keys(row).flatMap((key) => {
        const feet = /^ft(\d+)$/.exec(key)?.[1];
        return feet && row[key] !== null ? [[Number(feet), Number(row[key])] as const] : [];
      });
      expect(lengths.length).toBeGreaterThan(1);
      for (const [feet, want] of lengths)
        expect(Math.abs((rule(row.diameter, feet) ?? Number.NaN) - want), `${feet} ft`).toBeLessThanOrEqual(
          table.absolute!.board_feet! + 1e-9,
        );
      if (row.ft16_unrounded !== undefined)
        expect(Math.abs(internationalExact(row.diameter, 16) - row.ft16_unrounded)).toBeLessThanOrEqual(
          table.absolute!.ft16_unrounded! + 1e-9,
        );
    });
  }

  test("hold nothing of a pole, and say so outside of a table", () => {
    expect(doyle(3, 16)).toBe(0);
    expect(scribner(2, 16)).toBe(0);
    expect(international(2, 16)).toBe(0);
    expect(decimalC(0.5, 16)).toBeUndefined();
    expect(decimalC(61, 16)).toBeUndefined();
    expect(decimalC(20, 41)).toBeUndefined();
  });
});

test("leaves out only hips and what the tests of quantities read", () => {
  const left = casesOf("geometry", "").filter((c) => !read.has(c.id));
  const groups = left.map(({ id }) => (id === "metric-hip" ? id : id.replace(/-[^-]*$/, "")));
  expect([...new Set(groups)].sort()).toEqual(["hip-worked", "metric-hip", "parse", "print", "sum"]);
});
