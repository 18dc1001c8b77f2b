/** Joints that the frame pulls apart, and what holds them. Forces by statics (derived), pegs by TFEC 1 (memory). */
import { expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { ROOFED, under } from "../../roofed-shed.ts";
import { SHED } from "../../shed.ts";
import { findingsOf, fixed } from "./gate.ts";

const ERRORS = { whole: true, only: ["error"] } as const;

test("joint-pulled: two pegs in each joint hold, and nothing is said", () => expectFindings(ROOFED, ERRORS));

/** The shed under rafters without a ridge, the ends of its ties made another way. */
const tied = (spec: string): string => ROOFED.replace(/^ {2}tie-end: .*$/m, `  tie-end: ${spec}`);

const UNPEGGED = tied(
  "{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 0}}",
);
findingsFixture(
  "joint-pulled: a tie without pegs, pulled by the thrust of rafters",
  under(
    UNPEGGED,
    "pegs: {count: 0}",
    "#@115-119 error joint-pulled: tie-end@A1 is pulled apart with 949 lb under D + 0.75 S + 0.45 W (wind toward -y, case least; balanced snow), and nothing holds it: its tenon has no pegs and slides out. Peg it",
  ),
  ERRORS,
);
test("joint-pulled: pegs written by the fix hold it", () => {
  const mended = fixed(UNPEGGED, "joint-pulled", 0, true);
  expect(mended).toContain("pegs: {count: 2}}");
  expectFindings(mended, ERRORS);
});

findingsFixture(
  "joint-pulled: a tie in housings",
  under(
    tied("{kind: housed, of: tie, into: post, housing: 1 in}"),
    "tie-end: ",
    "#@2-9 error joint-pulled: an end that stands in a housing only bears there. Take a pegged tenon",
  ),
  ERRORS,
);
findingsFixture(
  "joint-pulled: a half-dovetail with a wedge alone, whose capacity nobody has stated",
  under(
    tied(
      "{kind: wedged-half-dovetail, of: tie, into: post, tenon: {thickness: 2 in}, wedge: {species: white-oak}, pegs: {count: 0}}",
    ),
    "pegs: {count: 0}",
    "#@116-120 error joint-pulled: it has no pegs, and a wedge counts for nothing without a stated capacity",
  ),
  ERRORS,
);

findingsFixture(
  "joint-pulled: a tie whose ends are housed, in a frame without a roof",
  under(
    SHED.replace(/^ {2}tie-end: .*$/m, "  tie-end: {kind: housed, of: tie, into: post}"),
    "tie-end: ",
    "#@2-9 error joint-pulled: tie-end@A1 is pulled apart with 383 lb under D + 0.6 W (wind toward -y), and nothing holds it: an end that stands in a housing only bears there",
  ),
  ERRORS,
);
findingsFixture(
  "joint-pulled: posts without pegs, whose heads the knees lift off",
  under(
    SHED.replace(
      "{thickness: 2 in, length: 4 in}, pegs: {count: 2, diameter: 3/4 in}",
      "{thickness: 2 in, length: 4 in}, pegs: {count: 0}",
    ),
    "pegs: {count: 0}",
    "#@102-106 error joint-pulled: post-head@A1 is pulled apart with 268 lb under 0.6 D + 0.6 W (wind toward -x)",
  ),
  ERRORS,
);

test("joint-pulled: braces without pegs only push, and are not blamed", () =>
  expectFindings(SHED.replace("{count: 1, diameter: 3/4 in}", "{count: 0}"), ERRORS));

/** A tie on one thin peg at each end. */
const ONE_PEG = tied(
  "{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 1, diameter: 3/4 in}}",
);
findingsFixture(
  "peg-overloaded: one peg where rafters push the walls out",
  under(
    ONE_PEG,
    "pegs: {count: 1, diameter: 3/4 in}}",
    "#@115-119 error peg-overloaded: tie-end@A1 is pulled apart with 770 lb under D + S (balanced snow), more than the 478 lb that its peg of 3/4 in holds there (162 %, C_D 1.15): the pegs shear off at the faces of the tenon. 2 of 3/4 in hold it.",
  ),
  ERRORS,
);
test("peg-overloaded: the limit is that of one peg of the joint, times C_D (derived)", () => {
  const found = findingsOf(ONE_PEG, true).find(({ finding }) => finding.check === "peg-overloaded")?.finding;
  // 415.5 lb: π D² F_vy/(2 × 3.5), F_vy = 4,850 × 0.73 × 0.36^0.75 psi, D = 0.75 in (memory)
  const one = (Math.PI * 0.75 ** 2 * 4850 * 0.73 * 0.36 ** 0.75) / 7;
  expect(found?.limit).toBeCloseTo(1.15 * one, 6);
  expect(found?.unit).toBe("lb");
});
test("peg-overloaded: pegs as thick as their tenon leave nothing of it, which words say, not a percentage", () => {
  const thick = ONE_PEG.replace(/(tie-end: .*pegs: )\{[^}]*\}/, "$1{count: 2, diameter: 6 in}");
  const found = findingsOf(thick, true).find(({ finding }) => finding.check === "peg-overloaded")?.finding;
  expect(found?.limit).toBe(0);
  expect(found?.message).toMatch(
    /^tie-end@A1 is pulled apart with [\d,]+ lb under .*, and its 2 pegs of 6 in hold nothing there: the tenon tears off beside its pegs\./,
  );
  for (const { finding } of findingsOf(thick, true)) expect(finding.message).not.toMatch(/(^|[ (])\?/);
});

test("peg-overloaded: pegs written by the fix hold", () => {
  const mended = fixed(ONE_PEG, "peg-overloaded", 0, true);
  expect(mended).toContain("pegs: {count: 2, diameter: 3/4 in}}\n  knee-ends");
  expectFindings(mended, ERRORS);
});

const HEAVY = tied(
  "{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 5 in}}",
).replace("ground: 30 psf", "ground: 60 psf");
test("peg-overloaded: pegs that the file leaves to the rule are written, thicker", () => {
  expect(fixed(HEAVY, "peg-overloaded", 0, true)).toMatch(
    /tie-end: .*length: 5 in\}, pegs: \{count: 2, diameter: [^}]+\}\}/,
  );
});

test("peg-overloaded: a tenon that shears out behind its pegs is told as such", () => {
  const short = tied(
    "{kind: mortise-and-tenon, of: tie, into: post, housing: 1/2 in, tenon: {thickness: 1 1/4 in, length: 2 1/2 in}, pegs: {count: 2, diameter: 3/4 in}}",
  ).replace("ground: 30 psf", "ground: 60 psf");
  const found = findingsOf(short, true).find(({ finding }) => finding.check === "peg-overloaded")?.finding;
  expect(found?.message).toMatch(
    /the tenon shears out behind its pegs\. No pegs that fit its tenon hold that/,
  );
  expect(found?.fixes()).toEqual([]);
});

const joists = (kind: string): string =>
  ROOFED.replace(
    "joints:\n",
    `  joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], from: 2 ft, to: 7 ft, count: 3}\njoints:\n  joist-end: {kind: ${kind}, of: joist, into: plate}\n`,
  );
const pulled = (text: string) =>
  findingsOf(text, true).filter(({ finding }) => finding.check === "joint-pulled");

test("joint-pulled: a joist in housings is a warning, since others may take over from it", () => {
  const found = pulled(joists("housed"));
  expect(found.map(({ finding }) => finding.level)).toEqual(["warning"]);
  expect(found[0]?.finding.path).toBe("/joints/joist-end");
  expect(found[0]?.finding.places).toHaveLength(6);
});

test("a joist in pockets ties nothing together: the frame stands without its pull, and the ties take all of it", () => {
  expect(pulled(joists("pocket"))).toEqual([]);
  const tension = (text: string, joint: string): number => {
    const joints = createFrameService().open("file:///a", 1, text).evaluation?.results.frame?.joints;
    const force = joints?.get(joint);
    if (!force) throw new Error([...(joints?.keys() ?? [])].join(", "));
    return force.tension.most;
  };
  const [pocket, housed] = [joists("pocket"), joists("housed")];
  expect(tension(pocket, "joist-end@A.foot.2")).toBeLessThan(1);
  expect(tension(housed, "joist-end@A.foot.2")).toBeGreaterThan(50);
  expect(tension(pocket, "tie-end@A1")).toBeGreaterThan(tension(housed, "tie-end@A1"));
});
