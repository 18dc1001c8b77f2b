/** One slip, one finding: what follows from it in the model and its forces is not said again. */
import { describe, expect, test } from "vitest";
import { createFrameService, type Snapshot } from "../../../server/language/frame-service.ts";
import { readFixture } from "../../fixtures.ts";
import { pavilion } from "./gate.ts";

const JOINTS = `
  joints:
    head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
    tie-end: {kind: mortise-and-tenon, of: tie, into: post, tenon: {thickness: 2 in, length: 4 in}}
    king-foot: {kind: mortise-and-tenon, of: king, into: tie, tenon: {thickness: 2 in, length: 4 in}}
    king-head: {kind: mortise-and-tenon, of: king, into: ridge, tenon: {thickness: 2 in, length: 4 in}}
    knees: {kind: brace-tenon, of: [knee, tie-knee, ridge-knee], into: [post, plate, tie, king, ridge], tenon: {thickness: 1 1/2 in}}
`;

/** Braced each way, so that it stands. */
const BRACED = pavilion({
  members: `
    members:
      post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
      plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave, overhang: 12 in}
      tie: {kind: tie, section: 8x10, bents: [1, 2], from: A, to: B, top: 7 ft}
      king: {kind: king-post, section: 6x6, bents: [1, 2], from: tie, to: ridge}
      ridge: {kind: ridge, section: 6x8, from: 1, to: 2, overhang: 12 in}
      knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}
      tie-knee: {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}
      ridge-knee: {kind: brace, section: 4x6, between: [king, ridge], leg: 18 in}
  `,
  joints: JOINTS,
})
  .replace(/^( *)seat: .*$/m, "$&\n$1fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}")
  .replace("diameter: 14 in, depth: 40 in", "diameter: 16 in, depth: 42 in");

type Slip = readonly [string, string];

/** The frame with slips in it. */
function slipped(...slips: readonly Slip[]): Snapshot {
  let { text } = readFixture(BRACED);
  for (const [from, to] of slips) {
    expect(text).toContain(from);
    text = text.replace(from, to);
  }
  return createFrameService().open("file:///slip.frame.yaml", 1, text);
}

/** Checks and messages of all errors and of the findings that a slip would bring about. */
function after(...slips: readonly Slip[]): readonly string[] {
  return slipped(...slips)
    .findings.filter(({ finding }) => finding.level === "error" || finding.check === "timber-unchecked")
    .map(({ finding }) => `${finding.check} ${finding.path}: ${finding.message}`);
}

test("the frame that the slips are made in has none of their findings", () => {
  expect(after()).toEqual([]);
});

test("a wood that is not known: one finding, with the timbers whose strength it leaves unchecked", () => {
  expect(after(["species: eastern-white-pine", "species: eastern-white-pin"])).toEqual([
    expect.stringMatching(
      /^unknown-id \/timber\/frame\/species: “eastern-white-pin” is not a species that Bentwright knows, so the strength of \d+ timbers \(post@A1, post@A2, post@B1, post@B2 and others\) is not checked\. Did you mean/,
    ),
  ]);
});

describe("a stated design value that cannot be read: the table's does not stand in its place", () => {
  test.each([
    ["without a unit", "{Fb: 600}", "unreadable-quantity"],
    ["too large", "{Fb: 60000 psi}", "value-out-of-range"],
    ["no map", "600 psi", "wrong-shape"],
    ["nothing", "{Fb: , Ft: 400 psi}", "wrong-shape"],
    ["a key that is mistyped", "{Fbb: 600 psi}", "unknown-key"],
  ])("%s", (_, values, check) => {
    const { evaluation, findings } = slipped(["grade: no-1", `grade: no-1, values: ${values}, because: x`]);
    expect(findings.map(({ finding }) => finding.check)).toContain(check);
    const { frame } = evaluation!.results;
    const named = evaluation!.model.timbers.filter((t) => t.class?.name === "frame").map(({ id }) => id);
    expect(named.length).toBeGreaterThan(3);
    expect(frame?.unchecked.map(({ id }) => id)).toEqual(expect.arrayContaining(named));
    expect(findings.map(({ finding }) => finding.check)).not.toContain("timber-unchecked");
    // what it is stiff by has nothing to do with it
    const whole = slipped(["grade: no-1", "grade: no-1, because: x"]).evaluation!.results.frame!;
    const moduli = ({ solution }: typeof whole) => solution.hold.structure.elements.map(({ E }) => E);
    expect(moduli(frame!)).toEqual(moduli(whole));
  });
});

test("a grade that is not known", () => {
  expect(after(["grade: no-1", "grade: no-7"])).toEqual([
    expect.stringMatching(/^unknown-id \/timber\/frame\/grade: “no-7” .* timbers \(.*\) is not checked/),
  ]);
});

test("a wood of a few timbers names them all", () => {
  const own = "spare: {species: white-oax, grade: no-1}\n  rafters: {";
  expect(after(["rafters: {", own], ["kind: ridge, ", "kind: ridge, timber: spare, "])).toEqual([
    expect.stringContaining("so the strength of ridge is not checked. Did you mean “white-oak”?"),
  ]);
});

test("a class that states its own values needs no table", () => {
  const values = 'species: my-elm, values: {Fb: 900 psi}, because: "tested"';
  expect(after(["species: eastern-white-pine", values])[0]).toContain("so what refers to it is left out");
});

test.each([
  ["a level that is not known", "top: 7 ft}", "top: tietop}", "unknown-id /members/tie/top"],
  [
    "a bent that is not known",
    "bents: [1, 2], from: A",
    "bents: [1, 3], from: A",
    "unknown-id /members/tie/bents/1",
  ],
  ["a timber that is not known", "into: tie,", "into: ties,", "unknown-id /joints/king-foot/into"],
  ["an entry written twice", "  tie-knee:", "  knee:", "duplicate-id /members/knee"],
  ["a timber and a joint of one name", "  knees:", "  knee:", "duplicate-id /joints/knee"],
  ["a level written twice", "eave: 8 ft", "pier-top: 8 ft", "duplicate-id /grid/levels/pier-top"],
])("%s: nothing that judges the whole", (_, from, to, expected) => {
  expect(after([from, to]).map((line) => line.split(": ")[0])).toEqual([expected]);
});
