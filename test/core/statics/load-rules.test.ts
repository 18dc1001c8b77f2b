/** Which timbers wind and snow find, by rule: drag on what stands in the open, props, partial snow (derived, and ASCE 7 as remembered). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { Timber } from "../../../server/core/model/model.ts";
import type { BasicLoad } from "../../../server/core/statics/basic-loads.ts";
import { type LineLoad, totalOf } from "../../../server/core/statics/line-loads.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { checked } from "./members.ts";

const GOATS = readFileSync("samples/goat-shed.frame.yaml", "utf8");
const PRINCIPALS = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
const LOFT = readFileSync("test/frames/loft.frame.yaml", "utf8");

const loadsOf = (text: string) => checked(text).solution.loads;
function loadOf(all: readonly BasicLoad[], id: string): BasicLoad {
  const found = all.find((l) => l.id === id);
  if (!found) throw new Error(`${id} of ${all.map((l) => l.id)}`);
  return found;
}
/** Force along x (0) or y (1) on the timbers wanted, lb. */
const push = (loads: readonly LineLoad[], axis: 0 | 1, wanted: (t: Timber) => boolean): number =>
  totalOf(loads.filter(({ timber }) => wanted(timber)))[axis];

describe("drag of the wind", () => {
  test("the same sticks catch the same wind whether they are called ties or beams", () => {
    const ties = loadsOf(ROOFED).wind;
    const beams = loadsOf(ROOFED.replace("tie: {kind: tie,", "tie: {kind: beam,")).wind;
    expect(ties).toBeDefined();
    for (const id of ["W/+x/A", "W/+y/A"])
      expect(
        totalOf(loadOf(loadsOf(ROOFED.replace("tie: {kind: tie,", "tie: {kind: beam,")).all, id).loads),
      ).toEqual(totalOf(loadOf(loadsOf(ROOFED).all, id).loads));
    expect(beams?.members.value).toBe(ties?.members.value);
  });

  test("along the ridge the first pair of rafters stands in it with its sides, the others in its lee", () => {
    const { all, wind } = loadsOf(ROOFED);
    const { loads } = loadOf(all, "W/+x/A");
    const rafters = checked(ROOFED).model.timbers.filter((t) => t.kind === "rafter");
    const first = rafters.filter((t) => t.origin[0] === Math.min(...rafters.map((r) => r.origin[0])));
    expect(first).toHaveLength(2);
    const psf = wind?.members.value ?? Number.NaN;
    // 6 in deep over their whole length, square to the wind
    const area = first.reduce((sum, t) => sum + (6 * t.span) / 144, 0);
    expect(push(loads, 0, (t) => first.some(({ id }) => id === t.id))).toBeCloseTo(psf * area, 6);
    expect(push(loads, 0, (t) => t.kind === "rafter" && !first.some(({ id }) => id === t.id))).toBeCloseTo(
      0,
      6,
    );
    // from the other side it is the last pair
    const back = loadOf(all, "W/-x/A").loads;
    expect(push(back, 0, (t) => first.some(({ id }) => id === t.id))).toBeCloseTo(0, 6);
    expect(push(back, 0, (t) => t.kind === "rafter")).toBeCloseTo(-psf * area, 6);
  });

  test("end principals under purlins stand in it as the roof's own rafters do", () => {
    const { all, wind } = loadsOf(PRINCIPALS);
    const { loads } = loadOf(all, "W/+x/A");
    const rafters = checked(PRINCIPALS).model.timbers.filter((t) => t.member === "principal");
    const first = rafters.filter((t) => t.bents.includes("1"));
    expect(first).toHaveLength(2);
    const psf = wind?.members.value ?? Number.NaN;
    const area = first.reduce((sum, t) => sum + (t.depth * t.span) / 144, 0);
    expect(push(loads, 0, (t) => t.member === "principal")).toBeCloseTo(psf * area, 6);
  });

  test("behind three closed sides only what stands in the open one meets it", () => {
    const { all, wind, enclosure } = loadsOf(GOATS);
    expect(enclosure?.class).toBe("partially-enclosed");
    const psf = wind?.members.value ?? Number.NaN;
    // toward wall B the wind blows into the open side A: its posts stand in it over their whole length, 8 in wide
    const { loads } = loadOf(all, "W/+y/pressure/pressure-inside");
    const posts = checked(GOATS).model.timbers.filter((t) => t.kind === "post" && t.walls.includes("A"));
    expect(posts).toHaveLength(3);
    for (const post of posts)
      expect(push(loads, 1, ({ id }) => id === post.id)).toBeGreaterThanOrEqual(
        (psf * 8 * post.span) / 144 - 1e-6,
      );
    // king-posts inside meet none of it
    expect(push(loads, 1, ({ id }) => id === "king-post@2")).toBeCloseTo(0, 6);
  });

  test("of a row of joists under an open loft only the first meets it", () => {
    const { all, wind } = loadsOf(LOFT);
    const { loads } = loadOf(all, "W/+y/A");
    const [first, ...others] = checked(LOFT)
      .model.timbers.filter((t) => t.kind === "joist")
      .sort((a, b) => a.origin[1] - b.origin[1]);
    if (!first) throw new Error("no joists");
    expect(others.length).toBeGreaterThan(3);
    const psf = wind?.members.value ?? Number.NaN;
    expect(push(loads, 1, (t) => t.id === first.id)).toBeCloseTo((psf * first.depth * first.span) / 144, 6);
    expect(push(loads, 1, (t) => others.some(({ id }) => id === t.id))).toBeCloseTo(0, 6);
  });
});

describe("snow on some spans only (ASCE 7-16 section 7.5, memory: rafters of gables from 1/2:12 to 7:12 are spared)", () => {
  const upSlope = (pitch: string): string[] =>
    loadsOf(
      ROOFED.replace("pitch: 9:12", `pitch: ${pitch}`).replace(
        "overhang: {eave: 6 in}",
        "overhang: {eave: 18 in}",
      ),
    )
      .all.map((l) => l.id)
      .filter((id) => id.startsWith("S/balanced/slope"));
  test.each([
    ["6:12", false],
    ["7:12", false],
    ["7.1:12", true],
    ["9:12", true],
  ])("%s: %s", (pitch, partial) => {
    expect(upSlope(pitch).length > 0).toBe(partial);
  });
});

describe("what props a rafter between plate and ridge", () => {
  // plates on posts of their own at a quarter of the span, under the rafters
  const propped = (kind: string): string =>
    LOFT.replace("walls: {A: 0, B: 16 ft}", "walls: {A: 0, Q: 4 ft, R: 12 ft, B: 16 ft}").replace(
      "  ridge: {kind: ridge",
      `  inner: {kind: ${kind}, section: 6x8, walls: [Q, R], from: 1, to: 2, top: 170 in}\n  ridge: {kind: ridge`,
    );
  const rule = (text: string): string | undefined => {
    const snow = [...(loadsOf(text).snow?.values() ?? [])][0];
    return snow?.unbalanced?.rule;
  };
  test("a purlin plate does, as a beam does: then the snow drifts over the ridge", () => {
    expect(rule(LOFT.replace("pitch: 8:12", "pitch: 6:12"))).toBe("short-roof");
    for (const kind of ["beam", "plate"]) {
      const text = propped(kind).replace("pitch: 8:12", "pitch: 6:12");
      const { model } = checked(text);
      const met = model.meetings.filter(
        ({ a, b }) => [a, b].some((t) => t.member === "inner") && [a, b].some((t) => t.kind === "rafter"),
      );
      expect(met.length, kind).toBeGreaterThan(0);
      expect(rule(text), kind).toBe("drift");
    }
  });
});
