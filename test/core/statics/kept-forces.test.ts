/** Forces and checks of timbers serve again while nothing changes that they depend on: never longer. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Evaluation, evaluate } from "../../../server/core/evaluate.ts";
import { readFrame } from "../../../server/document/read.ts";

const read = (name: string): string =>
  readFileSync(new URL(`../../../samples/${name}.frame.yaml`, import.meta.url), "utf8");

function evaluated(text: string, previous?: Evaluation): Evaluation {
  const { frame, source } = readFrame(text);
  return evaluate(frame, source, previous);
}

/** Everything that the forces decide, as plain data. */
function told({ results, findings }: Evaluation): unknown {
  const { frame } = results;
  return {
    findings: findings.map((f) => JSON.stringify(f)),
    members: [...(frame?.members ?? [])].map(([id, { uses, wood }]) => ({ id, uses, wood })),
    joints: [...(frame?.joints ?? [])],
    piers: frame?.piers.map(({ pier, down, up, sideways }) => ({ id: pier.id, down, up, sideways })),
    racking: frame?.racking,
  };
}

/** What is typed, and whether the forces stay. */
const PAVILION: readonly (readonly [from: string, to: string, stay: boolean])[] = [
  ["frost-depth: 32 in", "frost-depth: 42 in", true],
  ["radius: 100 in", "radius: 130 in", true],
  [
    "of: king-post, into: tie, tenon: {thickness: 2 in",
    "of: king-post, into: tie, tenon: {thickness: 1 1/2 in",
    true,
  ],
  ["knee:       {kind: brace", "knee:       {kind: strut", false],
  ["grade: no-1", "grade: no-2", false],
  ["ground: 45 psf", "ground: 55 psf", false],
  ["tie:        {kind: tie, section: 8x12", "tie:        {kind: tie, section: 8x11", false],
];

const SHELTER: typeof PAVILION = [
  // its beam lies on piers: what holds it up must still be found in the new model
  ["of: post, into: plate, tenon: {thickness: 40", "of: post, into: plate, tenon: {thickness: 45", true],
  ["B@2 m, B@4 m, B4], kind: tube, diameter: 350", "B@2 m, B@4 m, B4], kind: tube, diameter: 300", false],
  ["depth: 100, flare", "depth: 110, flare", true],
];

describe.each([
  ["cider-press-pavilion", PAVILION],
  ["kayak-shelter", SHELTER],
])("%s", (name, edits) => {
  const text = read(name);
  const before = evaluated(text);

  test.each(edits)("%s → %s", (from, to, stay) => {
    const typed = text.replace(from, to);
    expect(typed).not.toBe(text);
    const after = evaluated(typed, before);
    const kept = after.results.frame?.solution === before.results.frame?.solution;
    expect(kept, "forces stay").toBe(stay);
    expect(told(after)).toEqual(told(evaluated(typed)));
  });
});
