/** Piers that wind lifts: the frame's reactions by statics, weights by plane geometry and 150 lb/ft³ (derived). */
import { describe, expect, test } from "vitest";
import { pierHold } from "../../../server/core/ground/uplift.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ERRORS = { whole: true, only: ["error"] } as const;
const STRAP = "anchor: {kind: embedded-strap, stand-off: 1 in}";

/** The shed where the wind lifts it, on piers of its own; in rock, which carries and holds them all. */
const windy = (pier: string): string =>
  ROOFED.replace("speed: 100 mph, exposure: B", "speed: 115 mph, exposure: C")
    .replace("soil: sand", "soil: sedimentary-rock")
    .replace(/^ {2}all: .*$/m, `  all: {under: post, ${pier}}`);

const HEAVY = windy(`kind: tube, diameter: 16 in, depth: 50 in, ${STRAP}`);
test("pier-lifted: piers of enough weight", () => expectFindings(HEAVY, ERRORS));

const LIGHT = windy(`kind: tube, diameter: 12 in, depth: 34 in, ${STRAP}`);
findingsFixture(
  "pier-lifted: too light",
  under(
    LIGHT,
    "  all: ",
    "#@43-48 error pier-lifted: all@A1 is lifted with 454 lb under 0.6 D + 0.6 W (wind toward +x, case A), more than the 247 lb that its weight of 412 lb holds with 0.6 of it. A tube of 18 in, or a depth of 5'-10\", holds it. Its anchor must hold 454 lb too.",
  ),
  ERRORS,
);
test("pier-lifted: both fixes hold it", () => {
  expect(fixed(LIGHT, "pier-lifted", 0, true)).toContain("diameter: 18 in, depth: 34 in");
  expect(fixed(LIGHT, "pier-lifted", 1, true)).toContain("diameter: 12 in, depth: 5'-10\"");
});

const BELOW = windy(
  `kind: tube, diameter: 12 in, depth: 34 in, footing: {diameter: 24 in, thickness: 12 in}, ${STRAP}`,
);
findingsFixture(
  "pier-lifted: a footing that nothing ties on stays in the ground",
  under(BELOW, "  all: ", "#@43-48 error pier-lifted: without bars the footing stays in the ground"),
  ERRORS,
);
test("pier-lifted: bars take the footing along", () =>
  expectFindings(BELOW.replace(`${STRAP}}`, `${STRAP}, rebar: {count: 3, size: 4}}`), ERRORS));

findingsFixture(
  "pier-lifted: nothing ties the post down",
  under(
    windy("kind: tube, diameter: 18 in, depth: 50 in"),
    "  all: ",
    "#@2-5 error pier-lifted: post@A1 pulls at all@A1 with 454 lb under 0.6 D + 0.6 W (wind toward +x, case A), and nothing ties it down. Say what does, as “anchor: {kind: embedded-strap}”",
  ),
  ERRORS,
);
findingsFixture(
  "pier-lifted: a dowel holds nothing down",
  under(
    windy("kind: tube, diameter: 18 in, depth: 50 in, anchor: {kind: dowel}"),
    "  all: ",
    "#@79-84 error pier-lifted: and a dowel holds nothing down",
  ),
  ERRORS,
);
test("pier-lifted: a pad is told to grow, without a size", () => {
  const pad = findingsOf(windy(`kind: pad, width: 10 in, depth: 34 in, ${STRAP}`), true);
  const found = pad.find(({ finding }) => finding.check === "pier-lifted")?.finding;
  expect(found?.message).toMatch(/Make the pad larger or thicker/);
  expect(found?.fixes()).toEqual([]);
});

describe("the weight of a pier (derived)", () => {
  const pierOf = (text: string) => {
    const model = createFrameService().open("file:///p.frame.yaml", 1, text).evaluation?.model;
    const pier = model?.piers.find(({ id }) => id === "all@A1");
    if (!pier) throw new Error("no pier");
    return pier;
  };
  test("tube: π/4 × (12 in)² × (34 + 8) in", () =>
    expect(pierHold(pierOf(LIGHT), 0).pier).toBeCloseTo((Math.PI / 4) * 3.5 * 150, 6));
  test("with its footing where bars tie it on: π/4 × (24 in)² × 12 in more", () =>
    expect(
      pierHold(pierOf(BELOW.replace(`${STRAP}}`, `${STRAP}, rebar: {count: 3, size: 4}}`)), 0).pier,
    ).toBeCloseTo((Math.PI / 4) * 3.5 * 150 + Math.PI * 150, 6));
  test("pad: (10 in)² × (34 + 8) in", () =>
    expect(pierHold(pierOf(windy("kind: pad, width: 10 in, depth: 34 in")), 0).pier).toBeCloseTo(
      (10 / 12) ** 2 * 3.5 * 150,
      6,
    ));
});
