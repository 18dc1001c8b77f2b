/** "Size this timber" on whole frames: what it finds passes when it is written into the file, and the next smaller does not. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { type Evaluation, evaluate } from "../../../server/core/evaluate.ts";
import { MOST_ANALYSES, type Sizing, sizeTimber } from "../../../server/core/sizing/size-timber.ts";
import { readFrame } from "../../../server/document/read.ts";
import { type Row, readReference, tableOf } from "../../reference/cases.ts";

const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const PURLINS = readFileSync("test/frames/purlins-on-principals.frame.yaml", "utf8");
const SHELTER = readFileSync("samples/kayak-shelter.frame.yaml", "utf8");

function judge(text: string): Evaluation {
  const { frame, source } = readFrame(text);
  return evaluate(frame, source);
}

interface Asked {
  readonly sizing: Sizing | undefined;
  readonly analyses: number;
}

function sizeIn(text: string, check: string, entry: string): Asked {
  const { frame, source } = readFrame(text);
  const evaluation = evaluate(frame, source);
  const finding = evaluation.findings.find((f) => f.check === check && f.path === `${entry}/section`);
  if (!finding)
    throw new Error(`no ${check} at ${entry}: ${evaluation.findings.map((f) => `${f.check} ${f.path}`)}`);
  const work = sizeTimber(evaluation, source, finding, makeSay(frame.units));
  let analyses = 0;
  let step = work.next();
  while (!step.done) {
    analyses++;
    step = work.next();
  }
  return { sizing: step.value, analyses };
}

/** Errors and warnings, one for each place. */
function faults(text: string): string[] {
  return judge(text).findings.flatMap((f) =>
    f.level === "note"
      ? []
      : (f.places.length === 0 ? [""] : f.places).map((p) => `${f.check} ${f.path} ${p}`),
  );
}

interface Broken {
  readonly name: string;
  readonly text: string;
  /** the entry's line with the section that breaks it */
  readonly line: string;
  readonly weak: string;
  readonly check: string;
  readonly entry: string;
  /** what the sides have in common with the weak section, or with one another */
  readonly to: RegExp;
  /** a step of the series */
  readonly step: number;
  readonly square?: true;
  /** the most that it may take, where it is more than usual */
  readonly analyses?: number;
}

const BROKEN: readonly Broken[] = [
  {
    name: "rafters of full inches",
    text: PAVILION,
    line: "rafters: {section: 3x7",
    weak: "2x3",
    check: "rafter-overspanned",
    entry: "/roof/rafters",
    to: /^2x\d+$/,
    step: 1,
  },
  {
    name: "a tie of full inches",
    text: PAVILION,
    line: "kind: tie, section: 8x12",
    weak: "6x6",
    check: "timber-overstressed",
    entry: "/members/tie",
    // with 6 in the walls beside the king-posts' mortises are thinner than their tenons: 6 − 2 × 2 in
    to: /^7x\d+$/,
    step: 1,
    // every depth of 6 in has to be refused first
    analyses: 18,
  },
  {
    name: "posts, which stay square",
    text: PAVILION,
    line: "kind: post, section: 8x8",
    weak: "5x5",
    check: "timber-overstressed",
    entry: "/members/post",
    to: /^(\d+)x\1$/,
    step: 1,
    square: true,
  },
  {
    name: "rafters in millimetres",
    text: SHELTER,
    line: "rafters: {section: 50x150",
    weak: "50x75",
    check: "rafter-overspanned",
    entry: "/roof/rafters",
    to: /^50x\d+$/,
    step: 25,
  },
];

describe("a section that is too small", () => {
  test.each(BROKEN)("$name", ({ text, line, weak, check, entry, to, step, square, analyses: most }) => {
    const withSection = (section: string): string => {
      const changed = text.replace(line, line.replace(/\d+x\d+$/, section));
      expect(changed.includes(`section: ${section}`)).toBe(true);
      return changed;
    };
    const { sizing, analyses } = sizeIn(withSection(weak), check, entry);
    expect(sizing).toMatchObject({ kind: "sized", smallest: true, leaves: [] });
    const found = sizing?.kind === "sized" ? sizing.to.text : "";
    expect(found).toMatch(to);
    expect(analyses).toBeLessThanOrEqual(most ?? 12);
    const before = faults(withSection(weak));
    const after = faults(withSection(found));
    expect(after.filter((f) => !before.includes(f))).toEqual([]);
    expect(after.filter((f) => f.includes(` ${entry}/section `))).toEqual([]);
    const [width = 0, depth = 0] = found.split("x").map(Number);
    const smaller = `${square ? width - step : width}x${depth - step}`;
    const short = smaller === weak ? before : faults(withSection(smaller));
    expect(short.filter((f) => !after.includes(f))).not.toEqual([]);
  });

  describe("with faults at joints in the timber", () => {
    const tie = (section: string, pegs = 4): string =>
      PAVILION.replace("kind: tie, section: 8x12", `kind: tie, section: ${section}`).replace(
        /(tie-end: .*count: )4/,
        `$1${pegs}`,
      );

    test("is made large enough for these too, where that mends them", () => {
      const before = faults(tie("6x8"));
      expect(before.map((f) => f.split(" ")[0])).toEqual(
        expect.arrayContaining(["peg-overloaded", "mortise-wall-thin"]),
      );
      const { sizing } = sizeIn(tie("6x8"), "timber-overstressed", "/members/tie");
      expect(sizing).toMatchObject({ kind: "sized", smallest: true, leaves: [] });
      const found = sizing?.kind === "sized" ? sizing.to : undefined;
      expect(faults(tie(found?.text ?? ""))).toEqual([]);
      // what has less wood leaves something
      for (const smaller of ["6x9", "7x9", "8x8"]) {
        const [width = 0, depth = 0] = smaller.split("x").map(Number);
        expect(width * depth).toBeLessThan(found?.area ?? 0);
        expect(faults(tie(smaller))).not.toEqual([]);
      }
    });

    test("mends of them what a size mends, and names what none does", () => {
      // one peg of 3/4 in cannot hold a tie of any section
      const { sizing, analyses } = sizeIn(tie("6x8", 1), "timber-overstressed", "/members/tie");
      expect(sizing).toMatchObject({ kind: "sized", leaves: ["peg-overloaded"] });
      expect(analyses).toBeLessThanOrEqual(MOST_ANALYSES);
      const after = faults(tie(sizing?.kind === "sized" ? sizing.to.text : "", 1));
      expect(new Set(after.map((f) => f.split(" ")[0]))).toEqual(new Set(["peg-overloaded"]));
    });
  });

  test("is found within the logs, or not at all", () => {
    const logs = (text: string, end: string): string => text.replace("small-end: 19 in", `small-end: ${end}`);
    const weak = PAVILION.replace("kind: tie, section: 8x12", "kind: tie, section: 6x6");
    const sizedFor = (end: string): Sizing | undefined =>
      sizeIn(logs(weak, end), "timber-overstressed", "/members/tie").sizing;
    const first = sizedFor("16 in");
    const needs = first?.kind === "sized" ? Math.hypot(first.to.width, first.to.depth) : Number.NaN;
    expect(needs).toBeGreaterThan(Math.hypot(6, 6));
    expect(sizedFor(`${Math.ceil(needs * 8) / 8} in`)).toMatchObject({
      to: { text: first?.kind === "sized" ? first.to.text : "" },
    });
    const tight = sizedFor(`${Math.floor(needs * 8 - 0.01) / 8} in`);
    expect(tight?.kind === "sized" ? Math.hypot(tight.to.width, tight.to.depth) : 0).toBeLessThan(needs);
    // 6 × 6 itself needs 8 1/2 in
    expect(sizedFor("8 1/2 in")).toMatchObject({ kind: "none", because: "none-larger" });
  });

  test("is not found where the timber is too long for the mill", () => {
    const weak = PAVILION.replace("kind: tie, section: 8x12", "kind: tie, section: 6x6").replace(
      "longest-cut: 21 ft",
      "longest-cut: 10 ft",
    );
    const { sizing } = sizeIn(weak, "timber-overstressed", "/members/tie");
    expect(sizing).toMatchObject({ kind: "none", because: "spoils" });
    expect(sizing?.kind === "none" && sizing.by.map((f) => f.check)).toContain("longer-than-mill");
  });

  test("mends what was asked where another finding of the section stays at any size, and says so", () => {
    // purlins of a wood so soft across the grain that their rafters crush them, however large they are
    const soft = PURLINS.replace("kind: purlin, section: 5x7", "kind: purlin, section: 3x4, timber: soft")
      // purlins that carry weigh more than principals of 8x10 bear, whose seats may slide
      .replace("kind: rafter, section: 8x10", "kind: rafter, section: 8x11")
      .replace(
        "timber:\n",
        'timber:\n  soft: {species: douglas-fir-larch, grade: no-1, seasoning: green, surface: rough, values: {Fc-perp: 25 psi}, because: "for a test"}\n',
      );
    expect(sizeIn(soft, "bearing-crushed", "/members/purlin").sizing).toMatchObject({
      kind: "none",
      because: "too-weak",
    });
    expect(sizeIn(soft, "timber-overstressed", "/members/purlin").sizing).toMatchObject({
      kind: "sized",
      leaves: ["bearing-crushed"],
    });
  });

  test("ends where no size helps", () => {
    const heavy = leanTo("2x6", 150, 24, "spruce-pine-fir, grade: no-2").replace("59.52 psf", "500 psf");
    const { sizing, analyses } = sizeIn(heavy, "rafter-overspanned", "/roof/rafters");
    expect(sizing).toMatchObject({ kind: "none", because: "too-weak", largest: { text: "3x16" } });
    expect(analyses).toBeLessThanOrEqual(8);
    expect(analyses).toBeLessThan(MOST_ANALYSES);
  });

  test("does not pass for want of values: no table has this wood in timbers of 5 in", () => {
    const text = PAVILION.replace("kind: tie, section: 8x12", "kind: tie, section: 3x4, timber: thin")
      // with a tie that bends more, post heads are lifted a little more than 3/4 in pegs hold
      .replaceAll(/(post-head|tie-end): (.*)diameter: 3\/4 in/g, "$1: $2diameter: 7/8 in")
      .replace(
        "timber:\n",
        "timber:\n  thin: {species: northern-species, grade: no-2, seasoning: green, surface: rough}\n",
      );
    const six = judge(text.replace("section: 3x4", "section: 6x12")).findings;
    expect(six.map((f) => f.check)).toContain("timber-unchecked");
    const { sizing } = sizeIn(text, "timber-overstressed", "/members/tie");
    expect(sizing).toMatchObject({ kind: "sized", to: { width: expect.toSatisfy((w: number) => w <= 4) } });
  });
});

/**
 * A lean-to whose rafters lie as the rafters of the code's tables do: 50 psf of snow on the slope (0.7 × 1.2 × 59.52 psf of
 * ground snow), 10 psf of dead load with their own weight, no ceiling.
 * @param span about the level span from seat to seat, in
 */
function leanTo(section: string, span: number, spacing: number, wood: string): string {
  const walls = Math.round(span) + 6;
  return `frame: Lean-to
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: ii}
site:
  snow: {ground: 59.52 psf, exposure: partially-exposed, thermal: open}
  wind: {speed: 60 mph, exposure: B, flow: clear}
  frost-depth: 32 in
  soil: sand
timber:
  frame: {species: douglas-fir-larch, grade: no-1, seasoning: dry}
  rafters: {species: ${wood}, seasoning: dry, surface: planed}
grid:
  walls: {A: 0, B: ${walls} in}
  bents: {1: 0, 2: 8 ft}
  levels: {pier-top: 8 in, tie-top: 6 ft 6 in, low: 8 ft, high: ${96 + walls / 4} in}
members:
  post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
  high-post: {kind: post, section: 8x8, at: [B1, B2], from: pier-top, to: high-plate}
  plate: {kind: plate, section: 8x10, walls: [A], from: 1, to: 2, top: low}
  high-plate: {kind: plate, section: 8x10, walls: [B], from: 1, to: 2, top: high}
  tie: {kind: tie, section: 8x12, bents: [1, 2], from: A, to: B, top: tie-top}
  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 24 in}
  high-knee: {kind: brace, section: 4x6, between: [high-post, high-plate], leg: 24 in}
  tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 24 in}
roof:
  kind: shed
  high: B
  rafters: {section: ${section}, spacing: ${spacing} in, seat: {kind: birds-mouth}, fasten: {kind: screws, count: 4, diameter: 5/16 in, length: 14 in}}
  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, weight: 5.2 psf}
piers:
  low: {under: post, kind: tube, diameter: 16 in, depth: 48 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
  high: {under: high-post, kind: tube, diameter: 16 in, depth: 48 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;
}

describe("rafters between two printed spans get the larger size of the table, with the whole frame analysed", () => {
  const SET = "rafter-s50-d10-irc2021";
  const { status, source } = readReference("spans").sets[SET];
  const rows: readonly Row[] = tableOf("spans", "span").records.filter((row: Row) => row.set === SET);
  const spanOf = (size: string, spacing: number, grade: string): number =>
    rows.find((row) => row.size === size && row.spacing_in === spacing && row.grade === grade)?.span_in;

  test.each([
    ["2x6", "2x4", 16, "Select Structural"],
    ["2x8", "2x6", 12, "Select Structural"],
    ["2x8", "2x6", 24, "Select Structural"],
    ["2x10", "2x8", 24, "Select Structural"],
    ["2x12", "2x10", 24, "Select Structural"],
    ["2x8", "2x6", 24, "No.1/No.2"],
    ["2x10", "2x8", 12, "No.1/No.2"],
  ] as const)(
    `%s, longer than %s reaches, at %d in, spruce_pine_fir %s (${status}, ${source})`,
    (size, smaller, spacing, grade) => {
      const [from, to] = [spanOf(smaller, spacing, grade), spanOf(size, spacing, grade)];
      const wood = `spruce-pine-fir, grade: ${grade === "Select Structural" ? "select-structural" : "no-1"}`;
      const text = leanTo("2x3", (from + to) / 2, spacing, wood);
      const span = judge(text).results.rafters[0]!.slope.span;
      expect(span).toBeGreaterThan(from);
      expect(span).toBeLessThan(to);
      const { sizing } = sizeIn(text, "rafter-overspanned", "/roof/rafters");
      expect(sizing).toMatchObject({ kind: "sized", smallest: true, leaves: [], to: { text: size } });
    },
  );
});
