/** Where a roof ends, what its sheets lie on, and which wall of a shed is high. */
import { expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, idsOf, pavilion } from "./gate.ts";

const raked = (rake: string): string => pavilion({}).replace("rake: 12 in", `rake: ${rake}`);
const wordsOf = (text: string, check: string): string[] =>
  findingsOf(text).flatMap(({ finding }) =>
    finding.check === check ? [`${finding.level} ${finding.message}`] : [],
  );

findingsFixture(
  "rake-overhang-long: boards of 1 in carry 19 1/5 in, the plates run 12 in past the bents (half the span, derived)",
  pavilion({
    roof: `
      roof:
        kind: gable
        pitch: 8:12
        rafters:
          section: 3x7
          spacing: 30 in
          seat: {kind: birds-mouth}
          head: {kind: housed, into: ridge}
          overhang: {eave: 12 in, rake: 6 ft}
      #                                 ^^^^ error rake-overhang-long: The deck hangs 5'-0" past the last rafter, and it carries 19 in at most by itself
        deck: {kind: boards, thickness: 1 in}
        covering: {kind: standing-seam}
    `,
  }),
);

test("rake-overhang-long: up to the limit nothing, beyond it a warning, at twice the limit still one", () => {
  expect(idsOf(raked("31 in"))).not.toContain("rake-overhang-long");
  expect(wordsOf(raked("32 in"), "rake-overhang-long")[0]).toMatch(/^warning/);
  expect(wordsOf(raked("50 in"), "rake-overhang-long")[0]).toMatch(/^warning/);
  expect(wordsOf(raked("51 in"), "rake-overhang-long")[0]).toMatch(/^error/);
});

const SHED = gate({
  head: "frame: Shed\nformat: 1\n",
  grid: "grid: {walls: {A: 0, B: 8 ft}, bents: {1: 0, 2: 8 ft}, levels: {pier-top: 8 in, high: 10 ft, low: 8 ft}}\n",
  members: `
    members:
      post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: high-plate}
      low-post: {kind: post, section: 8x8, at: [B1, B2], from: pier-top, to: low-plate}
      high-plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: high}
      low-plate: {kind: plate, section: 8x8, walls: [B], from: 1, to: 2, top: low}
  `,
  joints: `
    joints:
      head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
  `,
  piers: `
    piers:
      all: {under: [post, low-post], kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
  `,
});
const shed = (high: string): string =>
  `${SHED}${[
    "roof:",
    "  kind: shed",
    `  high: ${high}`,
    "  rafters: {section: 3x7, spacing: 24 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, high: 12 in, rake: 0 in}}",
    "  deck: {kind: boards, thickness: 1 in}",
    "  covering: {kind: ribbed-steel}",
  ].join("\n")}\n`;

findingsFixture(
  "shed-high-lower: said of the wall, and not as floating rafters or a covering too flat",
  shed(
    "B\n  #     ^ error shed-high-lower: The roof names wall B as its high one, and the plate of wall A is 24 in higher: the rafters would rest on nothing. Write “high: A”, or raise the plate of wall B.",
  ),
  { only: ["error"] },
);

test("shed-high-lower: its fix names the other wall", () => {
  expect(fixed(shed("B"), "shed-high-lower")).toContain("high: A");
  expect(idsOf(shed("A"))).not.toContain("shed-high-lower");
});

/** Purlins of their own over principal rafters. */
const purlins = (spacing: string): string =>
  pavilion({
    grid: "grid: {walls: {A: 0, B: 12 ft}, bents: {1: 0, 2: 9 ft}, levels: {pier-top: 8 in, eave: 8 ft}}\n",
    roof: `
      roof:
        kind: gable
        pitch: 8:12
        deck: {kind: purlins}
        covering: {kind: ribbed-steel}
    `,
  }).replace(
    "joints:\n",
    [
      "  principal: {kind: rafter, section: 6x8, bents: [1, 2], from: plate, to: ridge, overhang: 12 in}",
      `  purlin: {kind: purlin, section: 4x6, from: 1, to: 2, spacing: ${spacing}, overhang: 12 in}`,
      "joints:\n",
    ].join("\n"),
  );

test("deck-overspanned: sheets on purlins of their own are judged by where these lie", () => {
  const found = findingsOf(purlins("42 in")).map(({ finding }) => finding);
  expect(found.find(({ check }) => check === "deck-overspanned")).toMatchObject({
    path: "/members/purlin/spacing",
    limit: 36,
    unit: "in",
  });
  expect(idsOf(purlins("24 in"))).not.toContain("deck-overspanned");
});
