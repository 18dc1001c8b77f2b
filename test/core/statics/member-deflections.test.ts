/** Which limits of deflection hold for a timber: IBC Table 1604.3, from memory; the spans by hand. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { deflectionRule } from "../../../server/core/members/deflection-limits.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { rafterShare } from "../../../server/core/roof/rafter-results.ts";
import { floorTimbers } from "../../../server/core/statics/deflections.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";
import { checked, loft, use } from "./members.ts";

const PAVILION = readFileSync(
  new URL("../../../samples/cider-press-pavilion.frame.yaml", import.meta.url),
  "utf8",
);

test.each([
  [undefined, false, 180, 120, "roof members without a ceiling"],
  ["open", false, 180, 120, "roof members without a ceiling"],
  ["unheated", false, 180, 120, "roof members without a ceiling"],
  ["heated", false, 240, 180, "roof members with a ceiling that is not plaster"],
  ["cold-ventilated", false, 240, 180, "roof members with a ceiling that is not plaster"],
  ["freezer", false, 240, 180, "roof members with a ceiling that is not plaster"],
  ["greenhouse", false, 180, 120, "greenhouses"],
  ["open", true, 360, 240, "floor members"],
  ["heated", true, 360, 240, "floor members"],
] as const)("roof %s, floor %s: L/%d live, L/%d in all [memory]", (thermal, floor, live, total, line) => {
  const rule = deflectionRule(thermal, undefined, floor);
  expect([rule.live.value, rule.total.value]).toEqual([live, total]);
  for (const divisor of [rule.live, rule.total]) {
    expect(divisor.source).toContain(`IBC Table 1604.3, ${line}`);
    expect(divisor.status).toBe("memory");
  }
});

test.each([
  ["plaster", 360, 240],
  ["plasterboard", 240, 180],
  ["boards", 240, 180],
  ["none", 180, 120],
] as const)("a ceiling of %s over a heated room: L/%d live, L/%d in all [memory]", (ceiling, live, total) => {
  const rule = deflectionRule("heated", ceiling, false);
  expect([rule.live.value, rule.total.value]).toEqual([live, total]);
  expect(deflectionRule("heated", ceiling, true).live.value).toBe(360);
});

test("a plaster ceiling: rafters bend under its weight and may bend half as far as bare ones [derived]", () => {
  const bare = checked(PAVILION);
  const lined = checked(PAVILION.replace("\n  kind: gable", "\n  kind: gable\n  ceiling: {kind: plaster}"));
  const [a, b] = [bare, lined].map((c) => use(c, "rafter@A.2", "live-deflection"));
  expect(b!.limit / a!.limit).toBeCloseTo(180 / 360, 6);
  // snow and wind bend them as before, but for braces that let go at another load
  expect(Math.abs(b!.value / a!.value - 1)).toBeLessThan(0.01);
  const dead = [bare, lined].map(({ solution }) => solution.loads.roof!.total);
  expect(dead[1]! - dead[0]!).toBeCloseTo(8, 9);
  const bent = [bare, lined].map((c) => use(c, "rafter@A.2", "total-deflection").value);
  expect(bent[1]).toBeGreaterThan(bent[0]!);
});

describe("a loft's joists and the ties that they hang in are floor members", () => {
  const c = checked(loft("4x6"));

  test("joist: 96 in between the ties' faces, /360 live and /240 in all [memory]", () => {
    const live = use(c, "joist.2", "live-deflection");
    expect(live.limit).toBeCloseTo(96 / 360);
    expect(live.share).toMatchObject({ use: "floor", divisor: { value: 360 }, note: "carries a floor" });
    expect(live.share!.length).toBeCloseTo(96);
    expect(use(c, "joist.2", "total-deflection").share!.divisor.value).toBe(240);
  });

  test("tie: floor; plate: not [derived]", () => {
    expect(use(c, "tie@1", "live-deflection").share!.use).toBe("floor");
    expect([...floorTimbers(c.model)].sort()).toEqual([
      "joist.1",
      "joist.2",
      "joist.3",
      "joist.4",
      "tie@1",
      "tie@2",
    ]);
  });
});

test("what carries the carriers is of the floor too: joists between girders that hang in the ties [derived]", () => {
  const girders = SHED.replace(
    "joints:\n",
    [
      "  girder: {kind: beam, section: 6x8, between: [tie@1, tie@2], from: 3 ft, to: 7 ft, count: 2}",
      "  joist: {kind: joist, section: 4x6, between: [girder, girder], from: 2 ft, to: 7 ft, count: 3}",
      "joints:",
      "",
    ].join("\n"),
  );
  const { frame } = readFrame(`${girders}floors:\n  loft: {on: joist, live: 30 psf}\n`);
  expect([...floorTimbers(buildModel(frame))].sort()).toEqual([
    "girder.1",
    "girder.2",
    "joist.1",
    "joist.2",
    "joist.3",
    "tie@1",
    "tie@2",
  ]);
});

describe("the pavilion under a heated roof", () => {
  const text = PAVILION.replace("thermal: open", "thermal: heated");

  test("plates, ties and ridge: L/240 live, L/180 in all [memory]", () => {
    const c = checked(text);
    for (const id of ["plate@A", "tie@2", "ridge"]) {
      const live = use(c, id, "live-deflection");
      expect(live.share).toMatchObject({ use: "ceiling", divisor: { value: 240 } });
      expect(live.share!.length / live.limit).toBeCloseTo(240);
      expect(use(c, id, "total-deflection").share!.divisor.value).toBe(180);
    }
  });

  test("rafters as single beams too [memory]", () => {
    const { rafters } = computeResults(buildModel(readFrame(text).frame));
    const [result] = rafters;
    const live = result!.check.worst.find((u) => u.what === "live-deflection")!;
    const open = computeResults(buildModel(readFrame(text.replace("heated", "open")).frame)).rafters[0]!;
    const before = open.check.worst.find((u) => u.what === "live-deflection")!;
    expect(live.limit / before.limit).toBeCloseTo(180 / 240);
    expect(rafterShare(result!, live)).toMatchObject({ use: "ceiling", divisor: { value: 240 } });
  });
});
