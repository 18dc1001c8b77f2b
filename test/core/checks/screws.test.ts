/** Screws of braces against the forces on them. Forces by statics (derived), screws by NDS 12 (memory). */
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { jointHolds } from "../../../server/core/statics/joint-holds.ts";
import { memberForces } from "../../../server/core/statics/member-forces.ts";
import { screwLoads } from "../../../server/core/statics/screw-forces.ts";
import { readFrame } from "../../../server/document/read.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ERRORS = { whole: true, only: ["error"] } as const;

/** The shed on screwed knees. */
const screwed = (keys: string): string =>
  SHED.replace("seasoning: green", "seasoning: dry").replace(
    /^ {2}knee-ends: .*$/m,
    `  knee-ends: {kind: screwed-brace, of: [knee, tie-knee], into: [post, plate, tie]${keys}}`,
  );

test("screws-overloaded: housed ends with two long screws hold, and nothing is said", () =>
  expectFindings(screwed(", housing: 1/2 in, screws: {count: 2, diameter: 5/16 in, length: 10 in}"), ERRORS));

const BUTTED = screwed(", screws: {count: 1, diameter: 1/4 in, length: 6 in}");
test("screws-overloaded: butted ends push along the face on one thin screw, or draw it", () => {
  const [found, ...more] = findingsOf(BUTTED, true).filter(
    ({ finding }) => finding.check === "screws-overloaded",
  );
  expect(more).toEqual([]);
  expect(found?.finding.path).toBe("/joints/knee-ends/screws");
  expect(found?.finding.message).toMatch(
    /^knee-ends@\S+ is (?:drawn out of the face with [\d,]+ lb and along it|pushed along the face) with [\d,]+ lb under .*, more than the [\d,]+ lb that its screws hold that way \(\d+ %\): 1 of 1\/4 in, with .* of thread in the timber\. \d screws of/,
  );
  expect(found?.finding.value ?? 0).toBeGreaterThan(found?.finding.limit ?? 0);
});

test("screws-overloaded: screws written by the fix hold", () => {
  const mended = fixed(BUTTED, "screws-overloaded", 0, true);
  expect(mended).toMatch(/screws: \{count: \d, diameter: [^,]+, length: \d+ in\}\}/);
  expectFindings(mended, ERRORS);
});

findingsFixture(
  "screws-overloaded: screws that end in the brace hold nothing",
  under(
    screwed(", screws: {count: 2, diameter: 5/16 in, length: 4 in}"),
    "screws: ",
    "#@83-89 error screws-overloaded: and its screws hold nothing: 2 of 5/16 in, with 0 in of thread in the timber.",
  ),
  ERRORS,
);

test("screws-overloaded: nothing is said of screws that cannot be read", () => {
  const half = screwed(", screws: {count: 2, diameter: 5/16 inx, length: 8 in}");
  expect(findingsOf(half, true).map(({ finding }) => finding.check)).not.toContain("screws-overloaded");
});

describe("the forces on them", () => {
  const solved = (text: string) => {
    const { frame } = computeResults(buildModel(readFrame(text).frame));
    if (!frame) throw new Error("no forces");
    return frame;
  };
  const SCREWS = ", screws: {count: 2, diameter: 5/16 in, length: 10 in}";

  test("a screwed brace pulls and pushes; butted, F cos θ of a push goes along the face (statics, derived)", () => {
    const frame = solved(screwed(SCREWS));
    const loads = screwLoads(frame);
    for (const { id, of } of frame.model.joints.filter((j) => j.kind === "screwed-brace")) {
      const own = loads.get(id) ?? [];
      const pushes = own.filter(({ pull }) => pull === 0);
      const pulls = own.filter(({ pull }) => pull > 0);
      expect(pushes.length, id).toBeGreaterThan(0);
      const forces = memberForces(frame.solution.cases, of.id);
      const most = (all: typeof own): number => Math.max(0, ...all.map(({ along }) => along * Math.SQRT2));
      // braces at 45°; their own weight is all that differs
      expect(Math.abs(most(pushes) - (forces?.compression.value ?? 0)), id).toBeLessThan(30);
      expect(Math.abs(most(pulls) - (forces?.tension.value ?? 0)), id).toBeLessThan(30);
    }
  });

  test("housed, only what pulls goes on the screws", () => {
    for (const all of screwLoads(solved(screwed(`, housing: 1/2 in${SCREWS}`))).values())
      for (const { pull, along } of all) expect(pull > 0 || along === 0).toBe(true);
  });

  test("the hold tells which way: a butted brace that mostly pushes has screws that carry along the face", () => {
    const frame = solved(screwed(SCREWS));
    const holdOf = jointHolds(frame);
    const holds = frame.model.joints.flatMap((j) => (j.kind === "screwed-brace" ? (holdOf(j) ?? []) : []));
    expect(holds.length).toBe(16);
    for (const { by, ratio, capacity } of holds) {
      expect(by).toBe("screws");
      expect(ratio).toBeGreaterThan(0);
      expect(capacity?.value).toBeGreaterThan(0);
    }
    expect(holds.some(({ along }) => along)).toBe(true);
  });
});
