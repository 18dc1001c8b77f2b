/** The samples tell the truth: the good ones run clean, the wrong one fires every check at its marked line. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { CHECKS } from "../server/core/checks/registry.ts";
import { createFrameService } from "../server/language/frame-service.ts";
import { findingsFixture, readFixture } from "./fixtures.ts";

const FOLDER = new URL("../samples/", import.meta.url);
const WRONG = "wrong-on-purpose.frame.yaml";
const files = readdirSync(FOLDER).filter((name) => name.endsWith(".frame.yaml"));
const read = (name: string): string => readFileSync(new URL(name, FOLDER), "utf8");

/** The checks that the first set promises. */
const FIRST_SET = [
  "unreadable-quantity",
  "unknown-key",
  "unknown-id",
  "duplicate-id",
  "missing-separator",
  "unclosed-quote",
  "joint-apart",
  "joint-assumed",
  "timber-floating",
  "tenon-thin",
  "tenon-long",
  "mortise-wall-thin",
  "side-cover-short",
  "pier-above-frost",
  "rafter-overspanned",
  "birds-mouth-deep",
  "brace-angle",
  "longer-than-mill",
  "larger-than-logs",
  "site-value-missing",
];

/** What a sound frame is told for its own good, by sample; elsewhere nothing. */
const NOTES: Readonly<Record<string, readonly string[]>> = {
  // wind works the pegs of its post heads hard; wedges of green ties are to be driven on
  "cider-press-pavilion.frame.yaml": [
    ...Array<string>(2).fill("note peg-distance-short"),
    "note dovetail-draws-out",
    ...Array<string>(2).fill("note peg-distance-short"),
  ],
  "goat-shed.frame.yaml": ["note dovetail-draws-out", "note enclosure-found"],
  // wedged girts between posts, and dovetailed ones that open by 15 mm
  "kayak-shelter.frame.yaml": ["note dovetail-draws-out", "note dovetail-draws-out"],
};

describe("the good samples", () => {
  test.each(files.filter((name) => name !== WRONG))("%s has no finding but its notes", (name) => {
    const { findings, faults } = createFrameService().open(`file:///${name}`, 1, read(name));
    expect(findings.map(({ finding }) => `${finding.level} ${finding.check}`)).toEqual(NOTES[name] ?? []);
    expect(faults).toEqual([]);
  });
});

test("the frame that the README shows has no finding at all", () => {
  const readme = readFileSync(new URL("../README.md", import.meta.url), "utf8");
  const [shown, ...others] = [...readme.matchAll(/^```yaml\n(.*?)^```$/gms)].map(([, text]) => text!);
  expect(others).toEqual([]);
  const { findings } = createFrameService().open("file:///readme.frame.yaml", 1, shown!);
  expect(findings.map(({ finding }) => `${finding.check} ${finding.path}: ${finding.message}`)).toEqual([]);
});

findingsFixture("the frame that is wrong on purpose", read(WRONG), { whole: true });

test("the frame that is wrong on purpose marks every check of the first set", () => {
  const marked = new Set(readFixture(read(WRONG)).markers.map((m) => m.check));
  expect(FIRST_SET.filter((id) => !marked.has(id))).toEqual([]);
  const known = CHECKS.map((c) => c.meta.id);
  expect(FIRST_SET.filter((id) => !known.includes(id))).toEqual([]);
});
