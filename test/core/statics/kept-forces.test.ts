/** Forces and checks of timbers serve again while nothing changes that they depend on: never longer. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Evaluation, evaluate } from "../../../server/core/evaluate.ts";
import { roofAreas } from "../../../server/core/statics/load-path.ts";
import { readFrame } from "../../../server/document/read.ts";

const read = (name: string, folder = "samples"): string =>
  readFileSync(new URL(`../../../${folder}/${name}.frame.yaml`, import.meta.url), "utf8");

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
    roof: frame && [...roofAreas(frame.model, frame.solution.loads.strips)],
  };
}

/** What is typed, and what serves again: all forces, the factorised frame under other loads, or nothing. */
const PAVILION: readonly (readonly [from: string, to: string, stays: "forces" | "frame" | "nothing"])[] = [
  ["frost-depth: 32 in", "frost-depth: 42 in", "forces"],
  ["radius: 100 in", "radius: 130 in", "forces"],
  ["diameter: 5/16 in, length: 8 in}}", "diameter: 5/16 in, length: 3 in}}", "forces"],
  ["diameter: 5/16 in, length: 10 in}}", "diameter: 5/16 in, length: 4 in}}", "forces"],
  [
    "of: king-post, into: tie, tenon: {thickness: 2 in",
    "of: king-post, into: tie, tenon: {thickness: 1 1/2 in",
    "forces",
  ],
  ["knee:       {kind: brace", "knee:       {kind: strut", "nothing"],
  ["grade: no-1", "grade: no-2", "nothing"],
  ["ground: 45 psf", "ground: 55 psf", "frame"],
  ["thermal: open", "thermal: heated", "frame"],
  ["speed: 107 mph", "speed: 117 mph", "frame"],
  ["loads: asce-7-16", "loads: asce-7-22", "frame"],
  ["flow: clear", "flow: obstructed", "frame"],
  ["  wind: {speed: 107 mph, exposure: C, flow: clear}\n", "", "frame"],
  ["kind: standing-seam", "kind: wood-shakes", "nothing"],
  ["tie:        {kind: tie, section: 8x12", "tie:        {kind: tie, section: 8x11", "nothing"],
];

const SHELTER: typeof PAVILION = [
  // its beam lies on piers: what holds it up must still be found in the new model
  ["of: post, into: plate, tenon: {thickness: 40", "of: post, into: plate, tenon: {thickness: 45", "forces"],
  [
    "B@2 m, B@4 m, B@5700], kind: tube, diameter: 350",
    "B@2 m, B@4 m, B@5700], kind: tube, diameter: 300",
    "nothing",
  ],
  ["depth: 100, flare", "depth: 110, flare", "forces"],
];

const GOATS: typeof PAVILION = [
  ["  B: {openings: 8 ft²}", "  B: {openings: 80 ft²}", "nothing"],
  ["  3: {}", "  3: {weight: 9 psf}", "nothing"],
  ["  1: {openings: 6 ft²}\n", "", "nothing"],
  ["live: 20 psf", "live: 30 psf", "nothing"],
];

describe.each([
  ["goat-shed", GOATS],
  ["cider-press-pavilion", PAVILION],
  ["kayak-shelter", SHELTER],
])("%s", (name, edits) => {
  const text = read(name);
  const before = evaluated(text);

  test.each(edits)("%s → %s", (from, to, stays) => {
    const typed = text.replace(from, to);
    expect(typed).not.toBe(text);
    const after = evaluated(typed, before);
    const [old, made] = [before.results.frame?.solution, after.results.frame?.solution];
    expect(made === old, "forces stay").toBe(stays === "forces");
    if (stays !== "forces")
      expect(made?.prepared === old?.prepared, "the frame stays").toBe(stays === "frame");
    expect(told(after)).toEqual(told(evaluated(typed)));
    // and back again
    expect(told(evaluated(text, after))).toEqual(told(before));
  });
});

test("the sag of a span that is scarfed, while the forces stay", () => {
  const text = read("purlins-on-principals", "test/frames");
  const typed = text.replace("diameter: 18 in", "diameter: 19 in");
  expect(typed).not.toBe(text);
  const before = evaluated(text);
  const after = evaluated(typed, before);
  expect(after.results.frame?.solution).toBe(before.results.frame?.solution);
  const spans = [...(after.results.frame?.members ?? [])].filter(([id]) => id.startsWith("plate@A."));
  expect(spans.length).toBeGreaterThan(1);
  expect(told(after)).toEqual(told(evaluated(typed)));
});

test("a joint as the program assumed it, written into the file: its timber hangs on what it names", () => {
  const text = read("market-stall", "test/frames").replace(/^joints:\n(?: {2}.*\n|#.*\n)*/m, "");
  const typed = `${text}joints:\n  post-a-end-sill: {kind: mortise-and-tenon, of: post-a, into: end-sill}\n`;
  const before = evaluated(text);
  expect(before.model.joints.some(({ id, assumed }) => assumed && id.startsWith("post-a-end-sill@"))).toBe(
    true,
  );
  expect(told(evaluated(typed, before))).toEqual(told(evaluated(typed)));
});

test("a girt in the same place that stands in a bent only by its name: it carries the siding there", () => {
  const girt = (a: string, b: string): string =>
    read("goat-shed").replace(
      "  king-post:",
      `  girt: {kind: girt, section: 6x6, ends: [{at: ${a}, level: 4 ft}, {at: ${b}, level: 4 ft}]}\n  king-post:`,
    );
  const [free, typed] = [girt("A@14 ft", "B@14 ft"), girt("A3", "B3")];
  const before = evaluated(free);
  expect(told(evaluated(typed, before))).toEqual(told(evaluated(typed)));
  expect(evaluated(typed).results.frame?.joints).not.toEqual(before.results.frame?.joints);
});

test("a grade that no table has is told with its timbers while only the loads change", () => {
  const text = read("cider-press-pavilion").replace("grade: no-1", "grade: no-9");
  const typed = text.replace("ground: 45 psf", "ground: 55 psf");
  expect(typed).not.toBe(text);
  const told = (e: Evaluation) => e.findings.find(({ check }) => check === "unknown-id")?.message;
  expect(told(evaluated(typed, evaluated(text)))).toBe(told(evaluated(typed)));
});

test("what presses on a timber knows it as it is now", () => {
  const text = read("king-post-truss", "test/frames");
  const typed = text.replace("housing: 1 1/2 in", "housing: 1 1/4 in");
  const before = evaluated(text);
  const { model, results } = evaluated(typed, before);
  expect(results.frame?.solution).toBe(before.results.frame?.solution);
  const pressed = [...results.frame!.basis.bearings.values()].flat();
  expect(pressed.length).toBeGreaterThan(0);
  for (const { timber, place } of pressed) expect(model.byId.get(timber.id) === timber, place).toBe(true);
});

test("one thing after another: what was kept of three steps is still true", () => {
  let [text, last] = [read("cider-press-pavilion"), evaluated(read("cider-press-pavilion"))];
  for (const [from, to] of [...PAVILION, ...PAVILION.map(([a, b]) => [b, a] as const)]) {
    if (from === "") continue;
    text = text.replace(from, to);
    last = evaluated(text, last);
  }
  expect(told(last)).toEqual(told(evaluated(text)));
});

test.each([
  ["a side without openings", "3: {}", "3: {openings: 8 f}"],
  ["and its bracket", "3: {}", "3: {openings: 8 f"],
  ["a weight", "coverage: 16 in}", "coverage: 16 in, weight: 4 pfs}"],
  ["a design value", "grade: no-1,", "grade: no-1, values: {Fb: 600},"],
])("what begins to be typed and cannot be read yet is no old answer: %s", (_, from, to) => {
  const goats = read("goat-shed");
  expect(goats).toContain(from);
  const about = ({ results: { frame } }: Evaluation): unknown => ({
    gaps: frame?.solution.loads.gaps,
    faces: frame?.solution.loads.enclosure?.faces.map(({ openingsKnown }) => openingsKnown),
    unchecked: frame?.unchecked.map(({ id }) => id),
  });
  const before = evaluated(goats);
  const typed = goats.replace(from, to);
  expect(about(evaluated(typed, before))).toEqual(about(evaluated(typed)));
  expect(about(evaluated(typed))).not.toEqual(about(before));
  expect(about(evaluated(goats, evaluated(typed)))).toEqual(about(before));
});

test("a strength that cannot be read leaves the forces: braces that pulled still do", () => {
  const text = read("loft", "test/frames");
  const typed = text.replace("grade: no-1", "grade: no-1, values: {Fb: 9x0 psi}");
  expect(typed).not.toBe(text);
  const { frame } = evaluated(typed).results;
  expect(frame?.unchecked.length).toBeGreaterThan(0);
  expect([...frame!.joints]).toEqual([...evaluated(text).results.frame!.joints]);
});
