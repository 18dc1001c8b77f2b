/** Checks of step-lap seats: limits by plane geometry and statics (derived), F_v and its third in rolling shear from memory. */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { readFrame } from "../../../server/document/read.ts";
import { findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { expectNear } from "../model/frames.ts";
import { findingsOf, fixed } from "./gate.ts";

const SHED = readFileSync(new URL("../../frames/wagon-shed.frame.yaml", import.meta.url), "utf8");
const seated = (keys: string, text = SHED): string => {
  expect(text).toContain("seat: {kind: step-lap}");
  return text.replace("seat: {kind: step-lap}", `seat: {kind: step-lap${keys}}`);
};
const level = (text: string): number | undefined =>
  buildModel(readFrame(text).frame).joints.find(({ kind }) => kind === "step-lap")?.sizes.seat?.level.value;

// 9:12 is the 3-4-5 triangle
const [SIN, COS, TAN] = [0.6, 0.8, 0.75];

const of = (text: string, check: string) =>
  findingsOf(text, true)
    .map(({ finding }) => finding)
    .filter((finding) => finding.check === check);
const SNOWY = SHED.replace("ground: 25 psf", "ground: 90 psf");

test("the shed is clean", () =>
  expect(findingsOf(SHED, true).map(({ finding }) => `${finding.level} ${finding.check}`)).toEqual([]));
test("step-rim-short: a short rim under deep snow, with its numbers", () => {
  const [found, ...more] = of(seated(", length: 2 in", SNOWY), "step-rim-short");
  expect(more).toEqual([]);
  expect(found).toMatchObject({ level: "error", path: "/roof/rafters/seat", unit: "psi" });
  expect(found!.value!).toBeGreaterThan(found!.limit!);
  expect(found!.message).toMatch(
    /^rafter-seat@[AB]\.\d pushes out of plate@[AB] with [\d,]+ lb under .*, which shears the 1 in of wood beyond its step across the grain with \d+ psi, more than 65\.2 psi \(F_v′ ÷ 3, C_D 1\.15\)/,
  );
});
test("step-rim-short: the longer seat of its fix mends it", () => {
  const short = seated(", length: 2 in", SHED.replace("ground: 25 psf", "ground: 75 psf"));
  const [found] = of(short, "step-rim-short");
  // the rim is half of every seat
  const length = Math.ceil((4 * 2 * found!.value!) / found!.limit!) / 4;
  expect(length).toBeLessThanOrEqual(5);
  const mended = fixed(short, "step-rim-short", 0, true);
  expect(level(mended)).toBeCloseTo(length, 9);
  expect(of(mended, "step-rim-short")).toEqual([]);
});
test("step-rim-short: where no seat is long enough, none is offered", () => {
  const [found] = of(seated("", SHED.replace("ground: 25 psf", "ground: 240 psf")), "step-rim-short");
  expect(found!.message).toContain("No longer seat has room there");
  expect(found!.fixes()).toEqual([]);
});
test("birds-mouth-deep: a sole far below the rafter's underside, and the length that its fix writes is clean", () => {
  const long = seated(", length: 7 in, housing: 1/4 in");
  const [found] = of(long, "birds-mouth-deep");
  // (7 ÷ 2 × 3/4 − 1/4) × 0.8 = 1.9 in of 6 ÷ 4
  expectNear(found?.value, 1.9, "notch");
  expect(found?.path).toBe("/roof/rafters/seat/length");
  const mended = fixed(long, "birds-mouth-deep", 0, true);
  expect(mended).toContain("length: 5 1/2 in");
  expect(of(mended, "birds-mouth-deep")).toEqual([]);
  expect(of(mended.replace("5 1/2 in", "5 3/4 in"), "birds-mouth-deep")).not.toEqual([]);
});
test("birds-mouth-deep: a heel cut that leaves less than a quarter of the rafter, under a step of either form", () => {
  for (const form of ["", ", form: square"]) {
    expect(of(seated(`, length: 7 1/2 in${form}`), "birds-mouth-deep")).toEqual([]);
    const text = seated(`, length: 9 1/2 in${form}`);
    const [found] = of(text, "birds-mouth-deep");
    expect(found).toMatchObject({ level: "error", path: "/roof/rafters/seat/length", limit: 1.5 });
    expectNear(found?.value, 6 - 9.5 * SIN, "left");
    const mended = fixed(text, "birds-mouth-deep", 0, true);
    expect(mended).toContain("length: 7 1/2 in");
    expect(of(mended, "birds-mouth-deep")).toEqual([]);
    const [through] = of(seated(`, length: 10 in${form}`), "birds-mouth-deep");
    expect(through?.message).toContain("through at");
  }
});
test("step-deep: deeper than the rafter reaches, and the depth that its fix writes is clean", () => {
  for (const [keys, most, text] of [
    [", housing: 2 in", 2 * TAN, "housing: 1 1/2 in"],
    [", form: square, housing: 2 in", 4 * SIN * COS, "housing: 1 7/8 in"],
  ] as const) {
    const [found] = of(seated(keys), "step-deep");
    expectNear(found?.limit, most, keys);
    expect(found).toMatchObject({ level: "warning", path: "/roof/rafters/seat/housing" });
    const mended = fixed(seated(keys), "step-deep", 0, true);
    expect(mended).toContain(text);
    expect(of(mended, "step-deep")).toEqual([]);
  }
});
test("a step square to the rafter leaves its whole depth", () =>
  expect(of(seated(", length: 7 in, form: square"), "birds-mouth-deep")).toEqual([]));
test("rafter-lifted: without screws the wind lifts them, and the fix fastens them", () => {
  const loose = SHED.replace(/, fasten: \{kind: screws[^}]*\}/, "").replace(
    "speed: 100 mph",
    "speed: 140 mph",
  );
  expect(of(loose, "rafter-lifted").length).toBeGreaterThan(0);
  expect(of(fixed(loose, "rafter-lifted", 0, true), "rafter-lifted")).toEqual([]);
});
test("screw-comes-out and fasteners-crowded look at the rafter over its housing", () => {
  const screws = (count: number, length: string) =>
    SHED.replace(
      "count: 2, diameter: 5/16 in, length: 10 in",
      `count: ${count}, diameter: 5/16 in, length: ${length}`,
    );
  const through = 6 / COS + 8 - 0.75;
  expectNear(of(screws(2, "16 in"), "screw-comes-out")[0]?.limit, through, "limit");
  expect(of(screws(2, "14 1/2 in"), "screw-comes-out")).toEqual([]);
  // three abreast in 4 in, and one row in a housing of 2 in
  const most = 3 * 1;
  expect(of(screws(most, "10 in"), "fasteners-crowded")).toEqual([]);
  expect(of(screws(most + 1, "10 in"), "fasteners-crowded")[0]).toMatchObject({ limit: most });
});
test("bearing-crushed: on the sole, and a longer seat carries it", () => {
  const soft = seated(", length: 2 in", SHED.replace("ground: 25 psf", "ground: 150 psf"));
  const found = of(soft, "bearing-crushed").filter(({ path }) => path.startsWith("/roof/rafters/seat"));
  expect(found.length).toBeGreaterThan(0);
});
test("housing-deep: a step that takes more than a quarter of the plate", () =>
  expect(of(seated(", length: 7 in, housing: 2 1/4 in"), "housing-deep")[0]).toMatchObject({
    path: "/roof/rafters/seat/housing",
  }));

const WHOLE = { whole: true, only: ["error", "warning"] } as const;
findingsFixture(
  "step-rim-short: a rim of 1 in, all else strong enough",
  under(
    seated(", length: 2 in, housing: 1/2 in", SHED.replace("ground: 25 psf", "ground: 32 psf")).replace(
      /count: 2, diameter: 3\/4 in/g,
      "count: 2, diameter: 1 in",
    ),
    "  rafters: {section",
    "#@42-46 error step-rim-short: and the rafter slides",
  ),
  WHOLE,
);
findingsFixture(
  "step-deep: 2 in where the rafter reaches 1 1/2 in into the plate",
  under(
    seated(", housing: 2 in"),
    "  rafters: {section",
    "#@74-78 warning step-deep: written 2 in deep, and rafter@A.1 reaches only 1 1/2 in into plate@A there",
  ),
  WHOLE,
);
