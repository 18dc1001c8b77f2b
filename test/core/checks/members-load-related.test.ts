/** Where the load of an overtaxed timber is from: told beside its finding, and only where it explains it. */
import { describe, expect, test } from "vitest";
import type { Finding } from "../../../server/core/checks/check.ts";
import { bearingCrushed } from "../../../server/core/checks/members/bearing-crushed.ts";
import { timberOverstressed } from "../../../server/core/checks/members/timber-overstressed.ts";
import { timberSags } from "../../../server/core/checks/members/timber-sags.ts";
import { anyCheck, runChecks } from "../../../server/core/checks/run.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

/** The shed with a loft of four joists, 24 in apart, on its ties. */
const loft = (joist: string, live: string): string =>
  SHED.replace("kind: tie, section: 8x10", "kind: tie, section: 8x7")
    .replace(
      "joints:\n",
      `  joist: {kind: joist, section: ${joist}, between: [tie@1, tie@2], from: 2 ft, to: 8 ft, count: 4}\njoints:\n`,
    )
    .concat(`floors:\n  loft: {on: joist, live: ${live}}\n`);

/** Under a gable in a storm. */
const gabled = SHED.replace(
  "joints:\n",
  `  king: {kind: king-post, section: 8x8, bents: [1, 2], from: tie, to: ridge}
  ridge: {kind: ridge, section: 4x8, from: 1, to: 2, overhang: 12 in}
joints:
`,
)
  .replace("100 mph", "250 mph")
  .replace("section: 8x8, at", "section: 4x4, at")
  .replace(
    "piers:\n",
    `roof:
  kind: gable
  pitch: 9:12
  rafters: {section: 2x6, spacing: 30 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 6 in}}
  deck: {kind: panels, thickness: 1 in}
piers:
`,
  );

function found(text: string, units: "inch" | "mm" = "inch"): readonly Finding[] {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const model = buildModel(frame);
  const inputs = { source, frame, model, results: computeResults(model), whole: { source, model } };
  const checks = [timberOverstressed, timberSags].map((c) => anyCheck(c));
  return runChecks([...checks, anyCheck(bearingCrushed)], inputs, [], makeSay(units)).findings;
}

const related = (findings: readonly Finding[], check: string, path: string): Finding["related"] =>
  findings.find((f) => f.check === check && f.path.startsWith(path))?.related ?? [];

describe("related information of a timber that carries too much", () => {
  const findings = found(loft("2x8", "400 psf"));

  test("a tie under joists: what the joists of the floor bring, in the units of the file", () => {
    const [first] = related(findings, "timber-overstressed", "/members/tie");
    expect(first?.path).toBe("/members/joist");
    expect(first?.message).toMatch(/^tie@[12] takes [\d,]+ lb from 4 × joist under D \+ L/);
    const metric = related(found(loft("2x8", "400 psf"), "mm"), "timber-overstressed", "/members/tie");
    expect(metric[0]?.message).toMatch(/^tie@[12] takes [\d.]+ kN from 4 × joist under D \+ L/);
  });

  test("the force is the floor's: half of each joist's load [derived]", () => {
    const [first] = related(findings, "timber-overstressed", "/members/tie");
    const force = Number(/takes ([\d,]+) lb/.exec(first?.message ?? "")?.[1]?.replace(",", ""));
    // 400 psf on at least 3 × 24 in and at most 10 ft of width, over half of at most 9 ft
    expect(force).toBeGreaterThan(400 * 6 * 3.5);
    expect(force).toBeLessThan(410 * 10 * 4.5);
  });

  test("a joist carries the floor alone: nothing is set down on it, so nothing is told", () => {
    expect(findings.some((f) => f.path.startsWith("/members/joist"))).toBe(true);
    expect(related(findings, "timber-overstressed", "/members/joist")).toEqual([]);
  });

  test("what presses where wood is crushed", () => {
    const crushed = findings.filter((f) => f.check === "bearing-crushed");
    const told = crushed.flatMap((f) => f.related);
    expect(told.length).toBeGreaterThan(0);
    for (const { message } of told) expect(message).toMatch(/^\S+ presses \S+ there with [\d,]+ lb under /);
  });

  test("wind brings nothing from above", () => {
    const windy = found(gabled).filter(
      ({ check, message }) => check === "timber-overstressed" && / W \(wind/.test(message),
    );
    expect(windy.length).toBeGreaterThan(0);
    for (const f of windy) expect(f.related, f.message).toEqual([]);
  });

  test("at most three lines", () => {
    for (const f of findings) expect(f.related.length).toBeLessThanOrEqual(3);
  });
});
