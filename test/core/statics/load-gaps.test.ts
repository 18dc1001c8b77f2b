/** Every load that a frame should carry either acts, or is a gap that names the keys which bring it. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { type BasicLoads, basicLoads } from "../../../server/core/statics/basic-loads.ts";
import { readFrame } from "../../../server/document/read.ts";

const GOATS = readFileSync("samples/goat-shed.frame.yaml", "utf8");
const OPEN = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");

const loadsOf = (text: string): BasicLoads => basicLoads(buildModel(readFrame(text).frame));
const acts = (loads: BasicLoads, kind: string): boolean => loads.all.some((load) => load.kind === kind);

/** Kind of the load and the keys that it waits for. */
const gapsOf = (text: string): Record<string, readonly string[]> =>
  Object.fromEntries(loadsOf(text).gaps.map(({ what, lacks }) => [what, lacks]));

test("a whole frame has none", () => {
  expect(loadsOf(GOATS).gaps).toEqual([]);
  expect(loadsOf(OPEN).gaps).toEqual([]);
});

// what the formulas of ASCE 7 chapters 7 and 26 to 28 ask of the site, and the floor's own keys
describe.each([
  ["/site/snow/ground", GOATS, "ground: 30 psf, ", ["snow"]],
  ["/site/snow/exposure", GOATS, "exposure: partially-exposed, ", ["snow"]],
  ["/site/snow/thermal", GOATS, ", thermal: unheated", ["snow"]],
  ["/site/wind/speed", GOATS, "speed: 105 mph, ", ["wind"]],
  ["/site/wind/exposure", GOATS, "exposure: B, ", ["snow", "wind"]],
  ["/site/wind/flow", OPEN, ", flow: clear", ["wind"]],
  ["/basis/loads", GOATS, "loads: asce-7-16, ", ["snow", "wind"]],
  ["/basis/risk-category", GOATS, ", risk-category: i", ["snow"]],
  ["/floors/loft/live", GOATS, "live: 20 psf, ", ["floor"]],
  ["/floors/loft/on", GOATS, "on: joist, ", ["floor"]],
])("without %s", (key, text, part, waiting) => {
  const SYMBOL: Readonly<Record<string, string>> = { snow: "S", wind: "W", floor: "L" };
  const without = text.replace(part, "");

  test("each load that waits for it is a gap with that key, and does not act", () => {
    expect(without).not.toBe(text);
    expect(gapsOf(without)).toEqual(Object.fromEntries(waiting.map((what) => [what, [key]])));
    for (const what of waiting) expect(acts(loadsOf(without), SYMBOL[what] ?? "")).toBe(false);
  });
  test("with it they act", () => {
    for (const what of waiting) expect(acts(loadsOf(text), SYMBOL[what] ?? "")).toBe(true);
  });
});

test("by asce-7-22 a gable waits for the winter wind too", () => {
  // of more than 20 ft from eave to ridge: section 7.6.1
  const wide = OPEN.replace("asce-7-16", "asce-7-22").replace(
    /walls: \{A: 0, B: .*?\}/,
    "walls: {A: 0, B: 44 ft}",
  );
  expect(gapsOf(wide)).toEqual({ snow: ["/site/snow/winter-wind"] });
});

test("a floor on something that is no row of joists is on no timber", () => {
  expect(gapsOf(GOATS.replace("{on: joist, live", "{on: post, live"))).toEqual({
    floor: ["/floors/loft/on"],
  });
});

test.each([
  ["/floors/loft/dead", GOATS, "live: 20 psf,", "live: 20 psf, dead: 9 pfs,"],
  ["/floors/loft/deck/thickness", GOATS, "thickness: 1 in}}", "thickness: 1 inn}}"],
  ["/floors/loft", GOATS, /loft: \{on.*/, "loft: 20 psf"],
  ["/floors", GOATS, "floors:", "florrs:"],
  ["/siding/B/weight", GOATS, "B: {openings: 8 ft²}", "B: {openings: 8 ft², weight: 4 pfs}"],
  ["/siding/B/openings", GOATS, "B: {openings: 8 ft²}", "B: {openings: *door}"],
  ["/roof/covering/kind", OPEN, "kind: standing-seam", "kind: salte"],
  ["/roof/covering/weight", OPEN, "standing-seam,", "standing-seam, wieght: 12 psf,"],
  ["/timber/rafters/weight", OPEN, "grade: no-2,", "grade: no-2, weight: 30 pcff,"],
  ["/site/elevation", OPEN, "  soil: sand", "  soil: sand\n  elevation: 900 fft"],
])("%s that cannot be read is a gap of its own", (key, text, from, to) => {
  expect(gapsOf(text.replace(from, to))).toEqual({ stated: [key] });
});

describe("what a bracket that is never closed takes with it", () => {
  test.each([
    ["/siding/B/openings", GOATS, "B: {openings: 8 ft²}", "B: {openings: 8 f"],
    ["/siding/B/openings", GOATS, "B: {openings: 8 ft²}", "B: {openings: 8 ft²"],
    ["/siding/B/openings", GOATS, "B: {openings: 8 ft²}", "B: {openings:"],
    ["/siding/B", GOATS, "B: {openings: 8 ft²}", "B: {"],
    ["/siding/B/weight", GOATS, "B: {openings: 8 ft²}", "B: {openings: 8 ft², weight: 4"],
    [
      "/roof/covering/coverage",
      GOATS,
      "covering: {kind: standing-seam, coverage: 16 in}",
      "covering: {kind: standing-seam, coverage: 16",
    ],
    ["/floors/loft/deck/thickness", GOATS, "thickness: 1 in}}\nsiding", "thickness: 1\nsiding"],
    ["/timber/rafters/weight", GOATS, "surface: rough}\n  pegs", "surface: rough, weight: 30\n  pegs"],
  ])("%s", (key, text, from, to) => {
    expect(text).toContain(from);
    const loads = key.endsWith("coverage") ? {} : { stated: [key] };
    expect(gapsOf(text.replace(from, to))).toEqual(loads);
  });
  test("a key that waits for it anyway is one gap", () => {
    expect(gapsOf(GOATS.replace(/live: 20 psf.*$/m, "live: 20"))).toEqual({ floor: ["/floors/loft/live"] });
  });
});

test("a frame without a roof misses no snow", () => {
  const bare = OPEN.replace("45 psf", "45 pfs").replace(/^roof:\n( {2}.*\n)+/m, "");
  expect(bare).not.toContain("rafters: {section");
  expect(gapsOf(bare)).toEqual({});
});
