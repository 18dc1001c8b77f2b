/** Rafters that wind lifts off: forces by statics (derived), withdrawal by NDS 12.2. */
import { describe, expect, test } from "vitest";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ERRORS = { whole: true, only: ["error"] } as const;
const FASTEN = "fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}";

/** The shed where wind lifts its rafters, and what holds them. */
const held = (fasten: string): string =>
  ROOFED.replace("speed: 100 mph, exposure: B", "speed: 115 mph, exposure: C")
    .replace("diameter: 14 in, depth: 48 in", "diameter: 16 in, depth: 54 in")
    .replace(`, ${FASTEN}`, fasten);

test("rafter-lifted: two long screws hold", () => expectFindings(held(`, ${FASTEN}`), ERRORS));

const LOOSE = held("");
findingsFixture(
  "rafter-lifted: nothing named",
  under(
    LOOSE,
    "  rafters: ",
    "#@2-9 error rafter-lifted: rafter-seat@A.1 is lifted with 109 lb under 0.6 D + 0.6 W (wind toward +x, case A), and nothing is named that holds it down. 2 screws of 5/16 in, 8 in long, hold it.",
  ),
  ERRORS,
);
test("rafter-lifted: screws written by the fix hold", () => {
  const mended = fixed(LOOSE, "rafter-lifted", 0, true);
  expect(mended).toContain("fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}");
  expectFindings(mended, ERRORS);
});

const SHORT = held(", fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 6 in}");
findingsFixture(
  "rafter-lifted: screws that end in the rafter",
  under(
    SHORT,
    "  rafters: ",
    "#@93-99 error rafter-lifted: and its screws hold nothing: 2 of 5/16 in, they end in the rafter, which stands",
  ),
  ERRORS,
);
test("rafter-lifted: the fix writes longer ones", () =>
  expect(fixed(SHORT, "rafter-lifted", 0, true)).toContain("diameter: 5/16 in, length: 8 in}"));

findingsFixture(
  "rafter-lifted: screws without a size",
  under(
    held(", fasten: {kind: screws, count: 2}"),
    "  rafters: ",
    "#@93-99 error rafter-lifted: what holds it is named without a diameter and a length, and counts for nothing",
  ),
  ERRORS,
);
findingsFixture(
  "rafter-lifted: nails on the slant in green wood",
  under(
    held(", fasten: {kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in}"),
    "  rafters: ",
    "#@93-99 error rafter-lifted: more than the",
  ),
  ERRORS,
);

describe("what holds a seat, by hand", () => {
  const limitOf = (fasten: string): number | undefined =>
    findingsOf(held(fasten), true).find(({ finding }) => finding.check === "rafter-lifted")?.finding.limit;
  test("three 16d nails on the slant (memory): n × 1,380 G^2.5 D × reach × C_D × C_M × C_tn", () => {
    const reach = 3.5 * Math.cos(Math.PI / 6) - 3.5 / 3;
    const one = 1380 * 0.36 ** 2.5 * 0.162 * reach;
    expect(limitOf(", fasten: {kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in}")).toBeCloseTo(
      3 * one * 1.6 * 0.25 * 0.67,
      6,
    );
  });
  test("one screw that barely reaches the plate (published): 1,800 G^1.5 D^0.75 × thread × C_D", () => {
    // 4x6 at 9:12: 6/cos θ = 7.5 in plumb, less half the plumb cut of a 2 1/2 in seat (2.5 × 0.75 / 2); tip 3/16 in
    const thread = 7 - (7.5 - (2.5 * 0.75) / 2) - 3 / 16;
    expect(limitOf(", fasten: {kind: screws, count: 1, diameter: 5/16 in, length: 7 in}")).toBeCloseTo(
      1800 * 0.36 ** 1.5 * 0.3125 ** 0.75 * thread * 1.6,
      6,
    );
  });
});

test.each([
  ["5/16 in", "5/16x in"],
  ["count: 2", "count: two"],
  ["screws", "screwz"],
])("rafter-lifted: one slip among the screws, one finding: %s → %s", (from, to) => {
  const text = held(`, ${FASTEN}`).replace(FASTEN, FASTEN.replace(from, to));
  expect(findingsOf(text, true).filter(({ finding }) => finding.level !== "note")).toHaveLength(1);
});
