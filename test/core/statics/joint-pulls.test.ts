/** What pulls a joint is what its timber carries in tension (statics, derived). */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { jointPulls } from "../../../server/core/statics/joint-pulls.ts";
import { memberForces } from "../../../server/core/statics/member-forces.ts";
import { readFrame } from "../../../server/document/read.ts";
import { ROOFED } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";

function solved(text: string) {
  const { frame } = computeResults(buildModel(readFrame(text).frame));
  if (!frame) throw new Error("no forces");
  return { frame, pullOf: jointPulls(frame) };
}

/** The shed on knees whose pegs keep their distances, so that they pull too. */
const LONG_TENONS = SHED.replace(
  "housing: 1/2 in, tenon: {thickness: 1 1/2 in}",
  "housing: 1/2 in, tenon: {thickness: 1 1/2 in, length: 6 3/4 in}",
);

describe("a pegged brace", () => {
  const { frame, pullOf } = solved(LONG_TENONS);
  const ends = frame.model.joints.filter(({ kind }) => kind === "brace-tenon");
  test.each(ends.map((joint) => [joint.id, joint] as const))(
    "pulls at %s along its own length",
    (_, joint) => {
      const pull = pullOf(joint);
      const axial = memberForces(frame.solution.cases, joint.of.id)?.tension.value ?? Number.NaN;
      // the brace leans 45°: its weight, across and along it, is all that differs
      expect(Math.abs((pull?.most ?? Number.NaN) - axial)).toBeLessThan(0.03 * axial);
      expect(pull?.hold.kind).toBe("pegs");
    },
  );
});

test("a brace that only pushes pulls at nothing", () => {
  const { frame, pullOf } = solved(SHED);
  const ends = frame.model.joints.filter(({ kind }) => kind === "brace-tenon");
  expect(ends.length).toBe(16);
  for (const joint of ends) expect(pullOf(joint), joint.id).toBeUndefined();
});

test("of several load durations the one counts that asks most of the pegs", () => {
  const { frame, pullOf } = solved(ROOFED);
  for (const joint of frame.model.joints) {
    const { hold, ratio } = pullOf(joint) ?? {};
    if (hold?.kind !== "pegs") continue;
    const capacity = hold.pegs.one.reference.value * (joint.sizes.pegs?.count ?? 0);
    const asked = (frame.joints.get(joint.id)?.pulls ?? []).map(
      (p) => p.most / (p.duration.value * capacity),
    );
    expect(ratio, joint.id).toBeGreaterThanOrEqual(Math.max(...asked) - 1e-9);
    expect(asked.length).toBeGreaterThan(0);
  }
  const tie = frame.joints.get("tie-end@A1");
  expect(new Set(tie?.pulls.map(({ duration }) => duration.value))).toEqual(new Set([0.9, 1.15, 1.25, 1.6]));
});

test("a scarf is pulled by what its timber carries in tension, not by what passes across it", () => {
  const text = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
  const { frame, pullOf } = solved(text.replace("kind: half-lap-scarf", "kind: bladed-scarf"));
  const scarf = frame.model.joints.find(({ id }) => id === "plate-scarf@A.1");
  const pull = scarf && pullOf(scarf);
  // the plate's end past its last brace: the same force all along
  const axial = memberForces(frame.solution.cases, "plate@A.1")?.tension.value ?? Number.NaN;
  expect(Math.abs((pull?.most ?? Number.NaN) - axial)).toBeLessThan(0.001 * axial);
  expect(pull?.hold.kind).toBe("pegs");
});
