/** Joints that meet inside one timber. Figures by plane geometry; the limits are common practice but where a title says more. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, pavilion, spliced, THREE_BENTS } from "./gate.ts";

const GIRT = "{kind: mortise-and-tenon, of: girt, into: post, tenon: {thickness: 1 1/2 in, length: 5 in}";

/**
 * Two girts that enter a corner post from two sides. Both tenons lie 2 1/4 to 3 3/4 in from the outer faces of the 8 in post
 * and reach in to 3 in from them, so that in plan they stand 3/4 in in each other; their heights decide.
 */
const corner = (top: string, pegs = "", rail = "length: 5 in", marker = ""): string =>
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 4 ft}
        rail: {kind: girt, section: 6x6, bents: [1], from: A, to: B, top: ${top}}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        girt-end: ${GIRT}, pegs: {count: ${pegs || 0}}}
        rail-end: {kind: mortise-and-tenon, of: rail, into: post, tenon: {thickness: 1 1/2 in, ${rail}}, pegs: {count: ${pegs || 0}}}
      ${marker}
    `,
  });

const found = (text: string): string[] =>
  findingsOf(text).map(({ finding }) => `${finding.level} ${finding.check} ${finding.value?.toFixed(4)}`);

findingsFixture(
  "mortises-collide: two tenons in one place",
  corner(
    "4 ft",
    "",
    "length: 5 in",
    "#@2-10 error mortises-collide: rail-end@A1 want the same wood in post@A1, 36 in along it: they stand 3/4 in deep in each other, so only one of them can be put together. Shorten the tenon at",
  ),
);

describe("mortises-collide at two girts, the lower one moved down", () => {
  test.each([
    // the upper girt's tenon ends at 3 ft 6 in
    ["3 ft 6 1/4 in", ["error mortises-collide 0.2500"]],
    ["3 ft 6 1/16 in", ["error mortises-collide 0.0625"]],
    ["3 ft 6 in", ["warning mortises-collide 0.0000"]],
    ["3 ft 5 15/16 in", ["warning mortises-collide 0.0625"]],
    ["3 ft 5 5/8 in", ["warning mortises-collide 0.3750"]],
    ["3 ft 5 1/2 in", []],
  ])("its top at %s", (top, expected) => {
    expect(found(corner(top))).toEqual(expected);
  });

  test("what is said of touching mortises and of a thin wall differs", () => {
    const said = (top: string): string => findingsOf(corner(top))[0]!.finding.message;
    expect(said("3 ft 6 in")).toContain("touch in post@A1, 33 in along it: no wood is left between them");
    expect(said("3 ft 5 15/16 in")).toContain("Only 1/16 in of wood is left between the mortises of");
    expect(said("3 ft 5 15/16 in")).toContain("less than 1/2 in");
  });
});

describe("mortises-collide", () => {
  test("mortises that come near with their edges alone need no wall", () => {
    // with 4 1/4 in both mortises reach to 3 1/2 in from the outer faces, 1/4 in past each other's cheek
    const both = (length: string): string =>
      corner("4 ft", "", `length: ${length}`).replace("length: 5 in", `length: ${length}`);
    expect(found(both("4 1/4 in"))).toEqual([]);
    // the tenons themselves stand 1/4 in in each other
    expect(found(both("4 1/2 in"))).toEqual(["error mortises-collide 0.2500"]);
  });

  test("its fix shortens the tenon as far as it must, to the half inch", () => {
    // 4 in make a mortise of 4 1/4 in, which ends at the other's cheek; 3 1/2 in leave 1/2 in of wood
    const after = fixed(corner("4 ft"), "mortises-collide");
    expect(after.match(/length: [\d/ ]+ in/g)).toEqual(["length: 4 in", "length: 3 1/2 in", "length: 5 in"]);
  });

  test("through tenons cannot be shortened, so only another height is proposed", () => {
    const text = corner("4 ft", "", "through: true").replace("length: 5 in}", "through: true}");
    const [one, ...more] = findingsOf(text).filter(({ finding }) => finding.check === "mortises-collide");
    expect(more).toEqual([]);
    expect(one!.finding.message).toMatch(
      /cut|put together\. Set one of the two 6 1\/2 in farther along post@A1\.$/,
    );
    expect(one!.finding.fixes()).toEqual([]);
  });

  test("tenons from opposite sides may meet end to end in one mortise", () => {
    const opposed = (length: string): string =>
      gate({
        grid: THREE_BENTS,
        members: `
          members:
            post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
            plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
            left: {kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 4 ft}
            right: {kind: girt, section: 6x6, walls: [A], from: 2, to: 3, top: 3 ft 11 in}
        `,
        joints: `
          joints:
            head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
            ends: {kind: mortise-and-tenon, of: [left, right], into: post, tenon: {thickness: 1 1/2 in, length: ${length}}, pegs: {count: 0}}
        `,
      });
    expect(found(opposed("4 in"))).toEqual([]);
    // 4 1/2 in are too long for their half of the post, which is said once
    expect(found(opposed("4 1/2 in"))).toEqual(["warning tenon-long 4.5000"]);
  });
});

findingsFixture(
  "peg-in-other-joint: the girt's peg, 2 1/2 in from the face, in a tenon set in 4 1/2 to 6 in from the other",
  corner("4 ft", "1", "length: 4 in, set-in: 4 1/2 in").replace(
    "length: 5 in}, pegs: {count: 1}}",
    `length: 5 in}, pegs: {count: 1}}
#                                                                                                       ^^^^ warning peg-in-other-joint: A peg of girt-end@A1 goes 7/8 in deep through the tenon of rail-end@A1 in post@A1, 36 in along it: it pins and splits a tenon that is not its own. Set one of the two 4 in farther along post@A1.`,
  ),
);

describe("peg-in-other-joint", () => {
  test("two pegs that cross are a note: the holes are easily bored beside their places", () => {
    // both tenons are 3 in long and pegged midway, at the same height
    const crossed = (top: string): string[] =>
      found(corner(top, "1", "length: 3 in").replace("length: 5 in", "length: 3 in"));
    expect(crossed("4 ft")).toEqual(["note peg-in-other-joint 0.7500"]);
    expect(crossed("3 ft 11 5/8 in")).toEqual(["note peg-in-other-joint 0.3750"]);
    // 3/4 in pegs clear each other
    expect(crossed("3 ft 11 1/4 in")).toEqual([]);
  });
});

findingsFixture(
  "mortise-in-lap: a post's mortise, 4 1/4 in deep, in the lower half of a lap of 4 in",
  spliced(
    "8 ft",
    "half-lap-scarf",
    "#                                                                                      ^^^^ warning mortise-in-lap: head@A2 goes 1/4 in into the scarf plate-scarf@A.1 in plate@A.2, 28 in along it: it takes wood by which the two lengths hold each other. Shorten the tenon at head@A2 to 3 in, or set one of the two 8 1/2 in farther along plate@A.2.",
  ),
);

describe("mortise-in-lap", () => {
  test.each(["half-lap-scarf", "bladed-scarf", "stop-splayed-scarf"])(
    "%s: over a post that is joined to both lengths, and clear of it, nothing is said",
    (kind) => {
      const ids = (at: string): string[] => findingsOf(spliced(at, kind)).map(({ finding }) => finding.check);
      expect(ids("9 ft")).toEqual([]);
      expect(ids("7 ft")).toEqual([]);
      expect(ids("8 ft 3 in")).toEqual(["mortise-in-lap"]);
    },
  );

  test("the lap of two sills under a post is a note; half-lapped plates over one are cut once", () => {
    const stall = readFileSync(new URL("../../frames/market-stall.frame.yaml", import.meta.url), "utf8");
    const said = findingsOf(stall).filter(({ finding }) => finding.check === "mortise-in-lap");
    expect(said.map(({ finding }) => `${finding.level} ${finding.path} ${finding.value}`)).toEqual([
      "note /joints/foot 1.5",
    ]);
    const lapped = gate({
      members: `
        members:
          post: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}
          plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
          end-plate: {kind: plate, section: 8x8, bents: [1, 2], from: A, to: B, top: eave}
      `,
      joints: `
        joints:
          head: {kind: mortise-and-tenon, of: post, into: [plate, end-plate], tenon: {thickness: 2 in, length: 4 in}}
          corner: {kind: corner-half-lap, of: end-plate, into: plate}
      `,
    });
    expect(found(lapped).filter((f) => !f.includes("joint-assumed"))).toEqual([]);
  });
});

const pulled = (length: string, foot: string, marker = ""): string =>
  pavilion({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        tie-end: {kind: mortise-and-tenon, of: tie, into: post, tenon: {thickness: 2 in, length: ${length}}}
      ${marker}
        king-foot: {kind: mortise-and-tenon, of: king, into: tie, tenon: {thickness: 2 in, length: ${foot}}}
        king-head: {kind: mortise-and-tenon, of: king, into: ridge, tenon: {thickness: 2 in, length: 4 in}}
    `,
  });

findingsFixture(
  "peg-distance-short: a pulled tie whose pegs stand midway in a tenon of 2 3/4 in, to the eighth",
  pulled(
    "2 3/4 in",
    "4 in",
    `#@2-9 warning peg-distance-short: and its pegs of 3/4 in stand 1 3/8 in from the tip of the tenon, less than 1 1/2 in (2 diameters)
      #@2-9 warning peg-distance-short: and its pegs of 3/4 in stand 1 3/8 in from the edge of post@A1, less than 1 1/2 in (2 diameters)`,
  ),
  { whole: true, only: ["warning"] },
);

test("peg-distance-short: a note short of the tests of its own wood, 1 1/2 diameters where nothing pulls; no second word on tenons that split", () => {
  const said = (length: string, foot: string): string[] =>
    findingsOf(pulled(length, foot), true).flatMap(({ finding: { check, level, path, value, limit } }) =>
      check === "peg-distance-short" ? [`${level} ${path} ${value} of ${limit}`] : [],
    );
  // 2 diameters at the tip and at the edge; eastern white pine had 4 (commentary of TFEC 1, memory)
  const tie = ["note /joints/tie-end 1.5 of 3", "note /joints/tie-end 1.5 of 3"];
  expect(said("3 in", "4 in")).toEqual(tie);
  expect(said("6 in", "4 in")).toEqual([]);
  // 2 in leave 1 in on both sides of a 3/4 in peg, 1 1/3 diameters
  expect(said("3 in", "2 in")).toEqual([...tie, "note /joints/king-foot 1 of 1.125"]);
  expect(said("3 in", "2 1/4 in")).toEqual(tie);
  // pegs-crowded has it
  expect(said("3 in", "1 1/4 in")).toEqual(tie);
});
