/** What is advised where wind along the walls overtaxes a roof whose ridge nothing holds that way, and where it bends sideways otherwise. */
import { describe, expect, test } from "vitest";
import type { Finding } from "../../../server/core/checks/check.ts";
import { looseRidge } from "../../../server/core/checks/members/loose-ridge.ts";
import { timberOverstressed } from "../../../server/core/checks/members/timber-overstressed.ts";
import { anyCheck, runChecks } from "../../../server/core/checks/run.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { SHED } from "../../shed.ts";

const KNEES = "  ridge-knee: {kind: brace, section: 4x6, between: [king, ridge], leg: 20 in}\n";
const BOARDS = "{kind: boards, thickness: 1 in}";

/** The shed under a gable whose ridge stands on king-posts. */
const gabled = (knees: string, deck: string, ridge = "4x12"): string =>
  SHED.replace(
    "joints:\n",
    `  king: {kind: king-post, section: 8x8, bents: [1, 2], from: tie, to: ridge}
  ridge: {kind: ridge, section: ${ridge}, from: 1, to: 2, overhang: 12 in}
${knees}joints:
`,
  )
    .replace("100 mph", "150 mph")
    .replace(
      "piers:\n",
      `roof:
  kind: gable
  pitch: 9:12
  rafters: {section: 3x8, spacing: 30 in, seat: {kind: birds-mouth}, head: {kind: housed, into: ridge}, overhang: {eave: 6 in}}
  deck: ${deck}
  covering: {kind: standing-seam, coverage: 16 in}
piers:
`,
    );

function overstressed(text: string): readonly Finding[] {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const model = buildModel(frame);
  const inputs = { source, frame, model, results: computeResults(model), whole: { source, model } };
  return runChecks([anyCheck(timberOverstressed)], inputs, [], makeSay("inch")).findings;
}

describe("wind along the walls at a ridge without braces", () => {
  const found = overstressed(gabled("", BOARDS));
  const of = (stick: string): string => found.find((f) => f.places.includes(stick))?.message ?? "";

  test("ridge and rafters: it is the ridge that must be braced", () => {
    for (const stick of ["ridge", "rafter@A.1"]) {
      expect(of(stick)).toMatch(/wind toward [+-]x/);
      expect(of(stick)).toContain(
        "Nothing holds ridge along the walls, and the roof drags it that way. Brace ridge to king, or lay the deck of structural panels or diagonally.",
      );
      expect(of(stick)).not.toContain("A depth of");
    }
  });

  test("plates that bend sideways: the same", () => {
    expect(of("plate@A")).toContain("It bends sideways, because nothing holds ridge along the walls.");
    expect(of("plate@A")).toContain("Brace ridge to king");
  });

  test.each([
    ["knees at the ridge", gabled(KNEES, BOARDS)],
    ["panels", gabled("", "{kind: panels, thickness: 5/8 in}")],
    ["diagonal boards", gabled("", "{kind: boards, thickness: 1 in, laid: diagonal}")],
  ])("what is advised helps: %s", (_, text) => {
    expect(overstressed(text).filter((f) => /^(ridge|rafter|plate)/.test(f.places[0] ?? ""))).toEqual([]);
  });
});

describe("a loose ridge", () => {
  const loose = (text: string) => looseRidge(buildModel(readFrame(text).frame));
  test("is one that no brace and no deck holds along the walls", () => {
    expect(loose(gabled("", BOARDS))).toEqual({ ridge: "ridge", under: ["king"] });
    expect(loose(gabled(KNEES, BOARDS))).toBeUndefined();
    expect(loose(gabled("", "{kind: panels, thickness: 5/8 in}"))).toBeUndefined();
    expect(loose(SHED)).toBeUndefined();
  });
  test("is not held by braces that stand across the walls", () => {
    const strut = "  strut: {kind: brace, section: 4x6, between: [king, tie], leg: 20 in}\n";
    expect(loose(gabled(strut, BOARDS))).toMatchObject({ ridge: "ridge" });
  });
});

test("what snow overtaxes is not laid to the loose ridge", () => {
  const snowed = gabled("", BOARDS, "4x6").replace("30 psf", "250 psf").replace("150 mph", "60 mph");
  const found = overstressed(snowed).find((f) => f.places.includes("ridge"));
  expect(found?.message).toMatch(/under D \+ S/);
  expect(found?.message).toMatch(/A depth of about [\d/ ]+ in would carry it/);
  expect(found?.message).not.toContain("Nothing holds ridge");
});
