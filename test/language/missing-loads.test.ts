/**
 * While the file lacks a load, or it cannot be read, no figure stands without a word about it (rule of the design: never a
 * wrong number in a hover). What the figures would be with the load is the analysis' own, of the sound sample.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { codeLenses } from "../../server/language/code-lens.ts";
import { createFrameService, type Snapshot } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";
import { hintDetails, inlayHints } from "../../server/language/inlay-hints.ts";

const [PAVILION = "", GOATS = "", KAYAKS = ""] = ["cider-press-pavilion", "goat-shed", "kayak-shelter"].map(
  (name) => readFileSync(`samples/${name}.frame.yaml`, "utf8"),
);
const ALL = { start: { line: 0, character: 0 }, end: { line: 10_000, character: 0 } };
const LACK = "Not in these figures, since the file lacks it or it cannot be read: ";

const open = (text: string): Snapshot => createFrameService().open("file:///f.frame.yaml", 1, text);

function over(snapshot: Snapshot, path: string): string {
  const { document, reading } = snapshot;
  const range = reading?.index.keyRange(path);
  if (!range) throw new Error(path);
  return hoverAt(snapshot, document.positionAt(range.start + 1))?.contents.value ?? "";
}

/** The text with one slip in it. */
function slipped(text: string, from: string, to: string): Snapshot {
  expect(text).toContain(from);
  return open(text.replace(from, to));
}

const hintsOf = (snapshot: Snapshot): string[] => inlayHints(snapshot, ALL).map(({ label }) => String(label));
const lensesOf = (snapshot: Snapshot): string[] =>
  codeLenses(snapshot).map(({ command }) => command?.title ?? "");

/** Everything that shows a figure of the frame says what is not in it. */
function expectMarked(snapshot: Snapshot, without: string, sentence: string): void {
  const hints = hintsOf(snapshot);
  expect(hints.length).toBeGreaterThan(3);
  for (const hint of hints) expect(hint).toMatch(new RegExp(`^\\d\\.\\d\\d .*D.*, ${without}$`));
  const lenses = lensesOf(snapshot);
  expect(lenses.length).toBeGreaterThan(3);
  for (const lens of lenses) expect(lens).toMatch(new RegExp(` · ${without}$`));
  const pier = snapshot.evaluation?.frame.piers[0]?.path ?? "";
  for (const path of ["/members/post", "/roof/rafters", "/joints/post-head", pier]) {
    const text = over(snapshot, path);
    expect(text, path).toContain(sentence);
    // before the figures, not somewhere behind them
    const figures = text.search(/^Used to|^\| (force|pier) /m);
    expect(figures, path).toBeGreaterThan(text.indexOf(sentence));
  }
  expect(hintDetails(snapshot, "/members/post")?.value).toContain(sentence);
}

test.each([
  ["inches", PAVILION],
  ["inches, with a floor", GOATS],
  ["millimetres", KAYAKS],
])("a sound frame in %s is marked nowhere", (_, text) => {
  const snapshot = open(text);
  expect([...hintsOf(snapshot), ...lensesOf(snapshot)].join("\n")).not.toContain("without");
  for (const path of ["/members/post", "/roof/rafters", "/roof/deck", "/roof"])
    expect(over(snapshot, path)).not.toContain("Not in these figures");
});

describe("snow", () => {
  const sentence = `${LACK}snow (mend “ground” under “snow”).`;
  test.each([
    ["cannot be read, in inches", PAVILION, "45 psf", "45 pfs"],
    ["makes no sense, in inches", PAVILION, "45 psf", "-45 psf"],
    ["is missing, in inches", PAVILION, "ground: 45 psf, ", ""],
    ["is misspelt, in inches", PAVILION, "ground: 45 psf", "grond: 45 psf"],
    ["cannot be read, in millimetres", KAYAKS, "2.0 kPa", "2.0 kPaa"],
    ["makes no sense, in millimetres", KAYAKS, "2.0 kPa", "-2.0 kPa"],
    ["is missing, in millimetres", KAYAKS, "ground: 2.0 kPa, ", ""],
  ])("%s", (_, text, from, to) => {
    expectMarked(slipped(text, from, to), "without snow", sentence);
  });

  test("what the edition of the standard decides is missing with it", () => {
    const snapshot = slipped(PAVILION, "loads: asce-7-16, ", "");
    expect(hintsOf(snapshot)[0]).toMatch(/, without snow and wind$/);
    expect(over(snapshot, "/members/post")).toContain(
      `${LACK}snow (mend “loads” under “basis”); wind (mend “loads” under “basis”).`,
    );
  });
});

describe("wind", () => {
  test.each([
    ["in inches", PAVILION, "107 mph", "107 mhp"],
    ["in millimetres", KAYAKS, "47 m/s", "47 m/ s s"],
  ])("cannot be read, %s", (_, text, from, to) => {
    expectMarked(slipped(text, from, to), "without wind", `${LACK}wind (mend “speed” under “wind”).`);
  });
});

test.each([
  [
    "a row that is no entry",
    "{on: joist, live",
    "{on: joists, live",
    "/floors/loft",
    "load of floor loft (mend “on” under “loft”)",
  ],
  ["snow", "30 psf", "30 pfs", "/site/snow", "snow (mend “ground” under “snow”)"],
  [
    "snow, for want of what stands under the wind",
    "exposure: B, ",
    "",
    "/site/snow",
    "snow (mend “exposure” under “wind”)",
  ],
])("a key whose load is in no figure says so, without figures beside it: %s", (_, from, to, path, words) => {
  expect(over(slipped(GOATS, from, to), path)).toContain(
    "In no check, since the file lacks it or it cannot be read: ",
  );
  expect(over(slipped(GOATS, from, to), path)).toContain(words);
  expect(over(open(GOATS), path)).not.toContain("In no check");
});

describe("a floor", () => {
  const sentence = `${LACK}the load of floor loft (mend “live” under “loft”).`;
  test.each([
    ["cannot be read", "live: 20 psf", "live: 20 pfs"],
    ["makes no sense", "live: 20 psf", "live: -20 psf"],
    ["is missing", "live: 20 psf, ", ""],
    ["lacks the blank behind its colon", "live: 20 psf", "live:20 psf"],
  ])("%s", (_, from, to) => {
    expectMarked(slipped(GOATS, from, to), "without the load of floor loft", sentence);
  });

  test("in millimetres", () => {
    const floor = (live: string): string => `${KAYAKS}\nfloors:\n  rack: {on: girt, live: ${live}}\n`;
    expect(hintsOf(open(floor("0.95 kPa"))).join("\n")).not.toContain("without");
    expectMarked(
      open(floor("0.95 kPaa")),
      "without the load of floor rack",
      `${LACK}the load of floor rack (mend “live” under “rack”).`,
    );
  });

  test("that names nothing to lie on is on no timber", () => {
    const snapshot = slipped(GOATS, "on: joist, ", "");
    expect(over(snapshot, "/members/tie")).toContain("the load of floor loft (mend “on” under “loft”).");
  });

  test("that is given as nothing carries nothing, and is not marked", () => {
    const snapshot = slipped(GOATS, "live: 20 psf", "live: 0 psf");
    expect(hintsOf(snapshot).join("\n")).not.toContain("without");
  });
});

describe("a weight that the file gives and nobody can read", () => {
  const covering = slipped(
    PAVILION,
    "covering: {kind: standing-seam,",
    "covering: {kind: slate, weight: 12 pfs,",
  );
  const sentence = `${LACK}the given weight, in place of which the usual counts (mend “weight” under “covering”).`;
  test("marks every figure of the frame", () => expectMarked(covering, "without the given weight", sentence));
  test.each(["/roof", "/roof/deck"])("and the figures under %s", (path) => {
    expect(over(covering, path)).toContain(sentence);
  });
  test("a width of sheets loads nothing", () => {
    const snapshot = slipped(PAVILION, "coverage: 16 in", "coverage: 16 inn");
    expect(hintsOf(snapshot).join("\n")).not.toContain("without");
  });
  test("in millimetres", () => {
    const snapshot = slipped(KAYAKS, "covering: {", "covering: {weight: 0.6 kPaa, ");
    expectMarked(snapshot, "without the given weight", sentence);
  });
});

test("timbers of a wood that nobody knows are told once, with their number", () => {
  const snapshot = slipped(
    PAVILION,
    "species: eastern-white-pine, grade",
    "species: eastern-wite-pine, grade",
  );
  expect(lensesOf(snapshot)[0]).toMatch(/ · without the weight of 33 timbers$/);
  expect(over(snapshot, "/members/tie")).toContain(
    `${LACK}the weight of 33 timbers (mend “species” under “frame”).`,
  );
});

test("a roof without a pitch is in no figure", () => {
  const snapshot = open(PAVILION.replace(/^ *pitch:.*\n/m, ""));
  expect(over(snapshot, "/members/tie")).toContain(`${LACK}the roof (mend “roof”).`);
});
