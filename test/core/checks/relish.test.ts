/** Relish beyond rafters' feet: numbers in test/core/joinery/rafter-heel.test.ts (statics, derived; F_v from memory). */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { readFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { findingsOf } from "./gate.ts";

const TRUSS = readFileSync(new URL("../../frames/king-post-truss.frame.yaml", import.meta.url), "utf8");

test("relish-short: a tie with a short tail under deep snow is marked at its joint, whatever else is wrong there", () => {
  const text = under(
    TRUSS.replace("overhang: 12 in}\n  low-tie", "overhang: 4 in}\n  low-tie")
      .replace("rafter, section: 8x8", "rafter, section: 4x8")
      .replace("ground: 40 psf", "ground: 240 psf"),
    "  heel:",
    "#@2-6 error relish-short: that block splits off and the rafters spread",
  );
  const [marker] = readFixture(text).markers;
  const own = findingsOf(text, true).filter(({ finding }) => finding.check === "relish-short");
  expect(own).toHaveLength(1);
  expect(own[0]!.range).toEqual({
    start: { line: marker!.line, character: marker!.from },
    end: { line: marker!.line, character: marker!.to },
  });
  expect(own[0]!.finding.message).toContain(marker!.words);
});
