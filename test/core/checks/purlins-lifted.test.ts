/** Purlins that wind lifts off what carries them: forces by statics of a simple beam (derived), withdrawal by NDS 12.2. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { dot, unit } from "../../../server/core/model/vec.ts";
import { analyseFrame } from "../../../server/core/statics/analyse-frame.ts";
import { totalOf } from "../../../server/core/statics/line-loads.ts";
import { purlinLifts } from "../../../server/core/statics/purlin-lifts.ts";
import { readFrame } from "../../../server/document/read.ts";
import { findingsFixture } from "../../fixtures.ts";
import { under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

/** One bay of 12 ft, 16 ft wide, 3:12: purlins over principal rafters. */
const bay = (purlin = "", joints = "", top = ""): string => `frame: Open hay barn
format: 1
units: inch
basis: {loads: asce-7-16, risk-category: ii}
site:
  snow: {ground: 0, exposure: partially-exposed, thermal: open}
  wind: {speed: 115 mph, exposure: C, flow: clear}
  frost-depth: 36 in
  soil: sand
timber:
  frame: {species: eastern-white-pine, grade: no-1, seasoning: green, surface: rough}
grid:
  walls: {A: 0, B: 16 ft}
  bents: {1: 0, 2: 12 ft}
  levels: {pt: 6 in, tie: 8 ft, eave: 9 ft 6 in}
members:
  post:  {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pt, to: plate}
  plate: {kind: plate, section: 8x10, walls: [A, B], from: 1, to: 2, top: eave}
  cross: {kind: tie, section: 8x12, bents: [1, 2], from: A, to: B, top: tie}
  king:  {kind: king-post, section: 8x8, bents: [1, 2], from: cross, to: ridge}
  ridge: {kind: ridge, section: 8x10, from: 1, to: 2}
  knee:  {kind: brace, section: 4x7, between: [post, plate], leg: 30 in}
  cross-knee: {kind: brace, section: 4x7, between: [post, cross], leg: 28 in}
  ridge-knee: {kind: brace, section: 4x7, between: [king, ridge], leg: 18 in}
  principal: {kind: rafter, section: 7x9, bents: [1, 2], from: plate, to: ridge}
  purlin: {kind: purlin, section: 4x6, from: 1, to: 2, spacing: 30 in${purlin}${top}}
${joints}roof:
  kind: gable
  pitch: 3:12
  deck: {kind: boards, thickness: 1 in}
  covering: {kind: standing-seam, coverage: 16 in}
piers:
  all: {under: post, kind: tube, diameter: 16 in, depth: 50 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
`;

const lifts = (text: string) => {
  const { frame, source } = readFrame(text);
  expect(source.facts, text).toEqual([]);
  const c = analyseFrame(buildModel(frame))!;
  return { c, found: purlinLifts(c) };
};
const lifted = (text: string) =>
  findingsOf(text, true).filter(({ finding }) => finding.check === "purlin-lifted");
const SCREWS = ", fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 9 in}";

describe("what lifts a purlin [derived]", () => {
  const { c, found } = lifts(bay());

  test("a simple beam: its two ends together take all that acts on it square to the roof, less 0.6 of its dead load", () => {
    expect(found.length).toBeGreaterThan(4);
    const slope = Math.atan(3 / 12);
    for (const { upper, pull } of found) {
      const both = found.filter((one) => one.upper.id === upper.id);
      expect(both.map(({ lower }) => lower.id.slice(-1)).sort()).toEqual(["1", "2"]);
      if (both.some((one) => one.pull.caseId !== pull.caseId)) continue;
      const { frameCase } = c.solution.cases.find((s) => s.frameCase.id === pull.caseId)!;
      const side = upper.origin[1] < 96 ? -1 : 1;
      const up = unit([0, side * Math.sin(slope), Math.cos(slope)]);
      const acts = frameCase.parts.reduce(
        (sum, { load, factor }) =>
          sum + factor * dot(totalOf(load.loads.filter((l) => l.timber.id === upper.id)), up),
        0,
      );
      expect(acts).toBeGreaterThan(0);
      expect((both[0]!.pull.most + both[1]!.pull.most) / acts).toBeCloseTo(1, 2);
    }
    expect(
      found.some(({ upper, pull }, i) =>
        found.some((o, k) => k !== i && o.upper === upper && o.pull.caseId === pull.caseId),
      ),
    ).toBe(true);
  });

  test("nothing named: a finding with the fewest and shortest screws, which hold once written", () => {
    const [one, ...more] = lifted(bay());
    expect(more).toEqual([]);
    expect(one!.finding.message).toMatch(
      /^purlin@[AB]\.\d is lifted off principal@[AB][12] with [\d,]+ lb under 0\.6 D \+ 0\.6 W \(.*\), and nothing is named that holds it down\. 2 screws of 5\/16 in, 8 in long, hold it\. The same holds at /,
    );
    expect(one!.finding.path).toBe("/members/purlin");
    const mended = fixed(bay(), "purlin-lifted", 0, true);
    expect(mended).toContain("fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}");
    expect(lifted(mended)).toEqual([]);
  });

  // 7 in of purlin over 2 in: of the lengths on sale only 8 in reaches the principal and stays inside 9 in (plane geometry)
  test("over a principal of 2 in a third screw of 8 in, not two of 10 in that would come out below", () => {
    const shallow = bay()
      .replace("section: 7x9", "section: 7x2")
      .replace("section: 4x6", "section: 4x7")
      .replace("spacing: 30 in", "spacing: 48 in")
      .replace("115 mph", "170 mph");
    const mended = fixed(shallow, "purlin-lifted", 0, true);
    expect(mended).toContain("fasten: {kind: screws, count: 3, diameter: 5/16 in, length: 8 in}}");
  });

  test("more dead load than wind lifts: no finding", () => {
    expect(lifted(bay().replace("thickness: 1 in", "thickness: 4 in").replace("115 mph", "70 mph"))).toEqual(
      [],
    );
  });

  test("without wind nothing lifts", () => expect(lifted(bay().replace(/ {2}wind: .*\n/, ""))).toEqual([]));
});

findingsFixture(
  "purlin-lifted: nothing named",
  under(
    readFileSync("test/frames/king-post-truss.frame.yaml", "utf8").replace(/, fasten: \{[^}]*\}/, ""),
    "  purlin: ",
    "#@2-8 error purlin-lifted: with 107 lb under 0.6 D + 0.6 W (wind toward -y, case B), and nothing is named that holds it down. 2 screws of 5/16 in, 8 in long, hold it.",
  ),
  { whole: true, only: ["error"] },
);

describe("what holds a purlin, by hand", () => {
  const holdOf = (text: string) => {
    const values = lifts(text).found.map(({ hold }) => hold!.uplift.value);
    expect(values.length).toBeGreaterThan(0);
    return values;
  };

  test("two screws through 6 in of purlin (published): n × 1,800 G^1.5 D^0.75 × thread × C_D", () => {
    const thread = 9 - 6 - 3 / 16;
    const one = 1800 * 0.36 ** 1.5 * 0.3125 ** 0.75 * thread * 1.6;
    for (const value of holdOf(bay(SCREWS))) expect(value).toBeCloseTo(2 * one, 6);
    expect(lifted(bay(SCREWS))).toEqual([]);
  });

  test("three 16d nails on the slant, driven green (memory): n × 1,380 G^2.5 D × reach × C_D × C_M × C_tn", () => {
    const reach = 3.5 * Math.cos(Math.PI / 6) - 3.5 / 3;
    const one = 1380 * 0.36 ** 2.5 * 0.162 * reach * 1.6 * 0.25 * 0.67;
    const text = bay(", fasten: {kind: nails, count: 3, diameter: 0.162 in, length: 3 1/2 in}");
    for (const value of holdOf(text)) expect(value).toBeCloseTo(3 * one, 6);
    const [found] = lifted(text);
    expect(found!.finding.limit).toBeCloseTo(3 * one, 6);
    expect(found!.finding.path).toBe("/members/purlin/fasten");
    expect(found!.finding.message).toContain("that its nails hold");
  });

  test.each([
    [
      "{kind: screws, count: 2, diameter: 5/16 in, length: 6 in}",
      "its screws hold nothing: 2 of 5/16 in, they end in the purlin, 6 in deep",
    ],
    ["{kind: screws, count: 2}", "is named without a diameter and a length, and counts for nothing"],
  ])("%s", (fasten, words) => {
    expect(lifted(bay(`, fasten: ${fasten}`)).map(({ finding }) => finding.message)).toEqual([
      expect.stringContaining(words),
    ]);
  });

  test("a slip among the screws is one finding, and none of this kind", () => {
    expect(lifted(bay(SCREWS.replace("count: 2", "count: two")))).toEqual([]);
  });

  test("screws in wood whose stated strength cannot be read are not told as unsized", () => {
    const text = bay(SCREWS).replace("grade: no-1", "grade: no-1, values: {Fb: 9x0 psi}");
    expect(findingsOf(text, true).map(({ finding }) => finding.check)).toContain("unreadable-quantity");
    expect(lifted(text)).toEqual([]);
  });
});

/** One purlin that ends in a pocket of a principal, 2 in deep, and hangs over past a prop. */
const pocketed = (fasten = ""): string => {
  const place = (x: number, level: string): string =>
    `{at: A1, level: ${level}, offset: [${x} in, 48 in, 0]}`;
  return bay().replace(
    / {2}purlin: .*\n/,
    `  purlin: {kind: purlin, section: 4x6, ends: [${place(7, "10 ft 10 in")}, ${place(135, "10 ft 10 in")}]${fasten}}\n` +
      `  beam: {kind: beam, section: 6x8, ends: [${place(8, "7 ft 8 in")}, ${place(136, "7 ft 8 in")}]}\n` +
      `  prop: {kind: post, section: 4x4, ends: [${place(50, "8 ft")}, ${place(50, "10 ft 7 in")}]}\n`,
  );
};

test("an end in a pocket is lifted out by what hangs over past a prop: w L (L/2 − a) ÷ a [derived]", () => {
  const { c, found } = lifts(pocketed());
  const [end] = c.model.joints.filter(({ of }) => of.kind === "purlin");
  expect(end!.kind).toBe("pocket");
  const own = c.solution.loads.all
    .find(({ id }) => id === "D")!
    .loads.filter(({ timber }) => timber.kind === "purlin");
  const weight = -totalOf(own)[2];
  // square to the slope, by leverage about the prop: the end hangs between its tip, 2 in inside, and the principal's middle
  const lift = (at: number): number => (weight * (70 - 50) * Math.cos(Math.atan(1 / 4))) / (50 - at);
  expect(found.map(({ lower, joint }) => [lower.id, joint?.kind])).toEqual([["principal@A1", "pocket"]]);
  expect(found[0]!.pull.most).toBeGreaterThan(lift(3.5));
  expect(found[0]!.pull.most).toBeLessThan(lift(5));
});

describe("room of what fastens a purlin of 4 in over a principal of 7 by 9 in", () => {
  const ROOM = /^(nails-crowded|nails-reach|fasteners-crowded|screw-comes-out|screws-short)$/;
  const nails = (count: number, diameter: string, length: string): string =>
    bay(`, fasten: {kind: nails, count: ${count}, diameter: ${diameter}, length: ${length}}`);
  const screws = (count: number, length: string): string =>
    bay(`, fasten: {kind: screws, count: ${count}, diameter: 5/16 in, length: ${length}}`);
  const told = (text: string): string[] =>
    findingsOf(text, true).flatMap(({ finding: { check, level, path, value, limit } }) =>
      ROOM.test(check)
        ? [
            `${level} ${check} ${path?.replace("/members/purlin/fasten", "") ?? ""} ${value?.toFixed(3)} ${limit?.toFixed(3)}`,
          ]
        : [],
    );

  // rows along the grain of the purlin over 7 in: ⌊(7 − 5 D) ÷ (15 D)⌋ + 1 = 3 driven, ⌊(7 − 5 D) ÷ (10 D)⌋ + 1 = 4 bored, on both sides
  test("toe-nails of 0.162 in [memory, NDS commentary Table C12.1.6.6]", () => {
    expect(told(nails(6, "0.162 in", "3 1/2 in"))).toEqual([]);
    expect(told(nails(7, "0.162 in", "3 1/2 in"))).toEqual(["note nails-crowded /count 7.000 6.000"]);
    expect(told(nails(8, "0.162 in", "3 1/2 in"))).toEqual(["note nails-crowded /count 8.000 6.000"]);
    expect(told(nails(24, "0.162 in", "3 1/2 in"))).toEqual(["warning nails-crowded /count 24.000 8.000"]);
    expect(told(fixed(nails(24, "0.162 in", "3 1/2 in"), "nails-crowded", 0, true))).toEqual([]);
  });

  test("spikes of 1/2 in by 14 in: one of them, and of 15 1/4 in it comes out under the principal", () => {
    expect(told(nails(24, "1/2 in", "14 in"))).toEqual(["warning nails-crowded /count 24.000 1.000"]);
    expect(told(fixed(nails(24, "1/2 in", "14 in"), "nails-crowded", 0, true))).toEqual([]);
    expect(told(nails(1, "1/2 in", "15 in"))).toEqual([]);
    expect(told(nails(1, "1/2 in", "15 1/4 in"))).toEqual(["warning nails-reach /length 9.250 9.000"]);
  });

  // of a toe-nail L × cos 30° − L ÷ 3, six diameters at least [memory, NDS 12.1.6.3 and 12.1.6.5]
  test("toe-nails that reach too little", () => {
    expect(told(nails(2, "0.162 in", "1 7/8 in"))).toEqual([]);
    expect(told(nails(2, "0.162 in", "1 13/16 in"))).toEqual(["warning nails-reach /length 0.966 0.972"]);
  });

  // 4 D from center to center and 1.5 D to the edges: 3 abreast in 4 in, 5 behind each other in 7 in [memory, NDS Table 12.5.1E]
  test("screws of 5/16 in: 15 stand there, 16 do not, and the fix takes what stands", () => {
    expect(told(screws(15, "9 in"))).toEqual([]);
    expect(told(screws(16, "9 in"))).toEqual(["warning fasteners-crowded  16.000 15.000"]);
    expect(told(fixed(screws(16, "9 in"), "fasteners-crowded", 0, true))).toEqual([]);
  });

  test("screws that come out below 6 in of purlin and 9 in of principal, or never reach it [derived]", () => {
    expect(told(screws(2, "15 in"))).toEqual([]);
    expect(told(screws(2, "15 1/4 in"))).toEqual(["warning screw-comes-out /length 15.250 15.000"]);
    expect(told(fixed(screws(2, "15 1/4 in"), "screw-comes-out", 0, true))).toEqual([]);
    // four diameters past 6 in, the tip left out (NDS Table 12J; memory)
    for (const [length, reach] of [
      ["6 1/4 in", "0.063"],
      ["1 in", "0.000"],
    ] as const) {
      expect(told(screws(1, length))).toEqual([`warning screws-short /length ${reach} 1.250`]);
      expect(told(fixed(screws(1, length), "screws-short", 0, true))).toEqual([]);
    }
  });

  // one row of three: ⌊(2 ÷ 5/16 − 3) ÷ 4⌋ + 1 = 1 behind each other in 2 in
  test("in a pocket they stand in what the end bears on", () => {
    const of = (count: number): string =>
      pocketed(`, fasten: {kind: screws, count: ${count}, diameter: 5/16 in, length: 9 in}`);
    expect(told(of(3))).toEqual([]);
    expect(told(of(4))).toEqual(["warning fasteners-crowded  4.000 3.000"]);
  });
});
