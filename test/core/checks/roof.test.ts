import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { forcesText } from "../../../server/cli/forces-text.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { worstUse } from "../../../server/language/uses.ts";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, idsOf, pavilion } from "./gate.ts";

const roof = (rafters: string, pitch = "8:12"): string => `
  roof:
    kind: gable
    pitch: ${pitch}
    rafters:
${rafters}
      head: {kind: housed, into: ridge}
      overhang: {eave: 12 in, rake: 12 in}
    deck: {kind: boards, thickness: 1 1/2 in}
    covering: {kind: standing-seam}
`;

// 3x8 at 8:12: sin θ = 0.5547, a quarter of the depth is 2 in, so the longest seat is 3.606 in
findingsFixture(
  "birds-mouth-deep: a seat just too long",
  pavilion({
    roof: `
      roof:
        kind: gable
        pitch: 8:12
        rafters:
          section: 3x8
          spacing: 30 in
          seat: {kind: birds-mouth, length: 3 11/16 in}
      #                                     ^^^^^^^^^^ warning birds-mouth-deep: more than a quarter of its depth (2 in): it splits there. Seat at most 3 1/2 in.
          head: {kind: housed, into: ridge}
          overhang: {eave: 12 in, rake: 12 in}
        deck: {kind: boards, thickness: 1 1/2 in}
        covering: {kind: standing-seam}
    `,
  }),
);

findingsFixture(
  "birds-mouth-deep: a seat just short enough",
  pavilion({
    roof: roof(
      "      section: 3x8\n      spacing: 30 in\n      seat: {kind: birds-mouth, length: 3 9/16 in}",
    ),
  }),
);

test("birds-mouth-deep: its fix takes the quarter inch below", () => {
  const after = fixed(
    pavilion({
      roof: roof("      section: 3x8\n      spacing: 30 in\n      seat: {kind: birds-mouth, length: 5 in}"),
    }),
    "birds-mouth-deep",
  );
  expect(after).toContain("length: 3 1/2 in");
  expect(idsOf(after)).toEqual([]);
});

// 3x8 at 8:12, square to the edge: 8 in less seat × 0.5547
test.each([
  ["10 3/4 in", "warning", "cuts 5 15/16 in into the rafter"],
  [
    "11 in",
    "error",
    /^A seat of 11 in cuts rafter@A\.1 almost through at rafter-seat@A\.1: of its depth of 8 in the heel cut leaves 1 7\/8 in, less than a quarter, .* Seat at most 3 1\/2 in\./,
  ],
  [
    "14 1/2 in",
    "error",
    /^A seat of 14 1\/2 in cuts rafter@A\.1 through at .*: its heel cut goes 8 1\/16 in deep, square to the rafter, and the rafter is 8 in deep\. Nothing is left over the plate/,
  ],
] as const)("birds-mouth-deep: a seat of %s is an %s", (length, level, words) => {
  const text = pavilion({
    roof: roof(
      `      section: 3x8\n      spacing: 30 in\n      seat: {kind: birds-mouth, length: ${length}}`,
    ),
  });
  const found = findingsOf(text, true).map(({ finding }) => finding);
  const seats = found.filter(({ check }) => check === "birds-mouth-deep");
  expect(seats.map((finding) => finding.level)).toEqual([level]);
  expect(seats[0]?.message).toMatch(words);
  const inches = { "10 3/4 in": 10.75, "11 in": 11, "14 1/2 in": 14.5 }[length];
  const cut = inches * Math.sin(Math.atan(8 / 12));
  expect(seats[0]?.value).toBeCloseTo(level === "error" ? 8 - cut : cut, 6);
  expect(idsOf(fixed(text, "birds-mouth-deep"))).not.toContain("birds-mouth-deep");
  // what the seat cuts through has one finding, and no message has a hole where a number failed
  if (inches > 14) expect(found.map(({ check }) => check)).not.toContain("rafter-overspanned");
  for (const { message } of found) expect(message).not.toMatch(/(^|[ (])\?/);
});

test("rafter-overspanned: a seat so long that no joint is left says that no wood is, not a stress", () => {
  const text = pavilion({
    roof: roof("      section: 3x8\n      spacing: 30 in\n      seat: {kind: birds-mouth, length: 30 in}"),
  });
  const found = findingsOf(text, true).map(({ finding }) => finding);
  expect(found.map(({ check }) => check)).not.toContain("birds-mouth-deep");
  expect(found.find(({ check }) => check === "rafter-overspanned")?.message).toMatch(
    /is cut through by its seat: no wood is left over the plate, .* Make the seat shorter, or the rafter deeper\./,
  );
});

test("birds-mouth-deep: the seat that is taken when none is given is never too deep", () => {
  for (const pitch of ["3:12", "7:12", "12:12", "18:12"]) {
    const text = pavilion({
      roof: roof("      section: 3x9\n      spacing: 24 in\n      seat: {kind: birds-mouth}", pitch),
    });
    expect(idsOf(text)).not.toContain("birds-mouth-deep");
  }
});

findingsFixture(
  "rafter-overspanned: it can break, at the section",
  pavilion({
    roof: `
      roof:
        kind: gable
        pitch: 8:12
        rafters:
          section: 2x3
      #            ^^^ error rafter-overspanned: It can break under that load.
          spacing: 48 in
          seat: {kind: birds-mouth}
          head: {kind: housed, into: ridge}
          overhang: {eave: 12 in, rake: 12 in}
        deck: {kind: boards, thickness: 1 1/2 in}
        covering: {kind: standing-seam}
    `,
  }),
);

describe("rafter-overspanned", () => {
  const spaced = (section: string, spacing: string): string =>
    pavilion({
      roof: roof(`      section: ${section}\n      spacing: ${spacing}\n      seat: {kind: birds-mouth}`),
    });
  const over = (text: string) =>
    findingsOf(text).filter(({ finding }) => finding.check === "rafter-overspanned");

  test("names section, span, spacing, stress, limit, ratio and combination, and how far this section goes", () => {
    const [found] = over(spaced("2x3", "48 in"));
    expect(found?.finding.message).toMatch(
      /^A 2 in × 3 in rafter spanning .+ at [\d/ ]+ in has [\d,]+ psi of .+ against [\d,]+ psi allowed \(\d+ %\), governed by .+\. It can break under that load\. This section goes .+ under these loads; make it deeper or set the rafters closer\./,
    );
    expect(found?.finding.value).toBeGreaterThan(found?.finding.limit ?? Number.POSITIVE_INFINITY);
    expect(found?.finding.unit).toBe("psi");
  });

  test("both slopes are one finding with their places", () => {
    const found = over(spaced("2x3", "48 in"));
    expect(found.map(({ finding }) => finding.places)).toEqual([["rafter@A", "rafter@B"]]);
  });

  test("closer rafters of the same section are silent, so the load and not the section decides", () => {
    expect(over(spaced("2x3", "48 in"))).toHaveLength(1);
    expect(over(spaced("2x3", "8 in"))).toEqual([]);
  });

  test("what only sags is a warning", () => {
    const stiff = pavilion({
      roof: roof("      section: 2x3\n      spacing: 30 in\n      seat: {kind: birds-mouth}"),
      timber: `
        timber:
          frame: {species: eastern-white-pine, grade: no-1}
          rafters: {species: eastern-hemlock-tamarack, grade: no-2, seasoning: dry, values: {Fb: 9000 psi, Fv: 900 psi, E: 250000 psi}, because: "strong and soft, for a test"}
      `,
    });
    const [found] = over(stiff);
    expect(found?.finding.level).toBe("warning");
    expect(found?.finding.message).toContain("It sags more than a roof of this kind may.");
    expect(found?.finding.unit).toBe("in");
  });
});

test("rafter-overspanned names the rafter that the tables of forces name, where the frame uses one more [derived]", () => {
  const text = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8").replace(
    "section: 3x7",
    "section: 3x3",
  );
  const snapshot = createFrameService().open("file:///f.frame.yaml", 1, text);
  const { results } = snapshot.evaluation!;
  const { model } = results;
  const all = model.timbers
    .filter(({ kind }) => kind === "rafter")
    .flatMap((timber) => worstUse([timber], results) ?? []);
  const worst = all.reduce((most, one) => (one.ratio > most.ratio + 1e-6 ? one : most));
  const [found, ...more] = snapshot.findings.filter(({ finding }) =>
    finding.path.startsWith("/roof/rafters/section"),
  );
  expect(more).toEqual([]);
  const percent = Math.ceil(worst.ratio * 100);
  expect(found!.finding.message).toContain(
    `In the frame ${worst.timber.id} is used more still: to ${percent} % by compression and bending together`,
  );
  // the table of `bentwright forces` has the same figure in the row of that rafter
  const table = forcesText(results, results.frame!, snapshot.say);
  expect(table).toMatch(
    new RegExp(`^ *${worst.timber.id} +${(percent / 100).toFixed(2)} +compression with bending`, "m"),
  );
});
