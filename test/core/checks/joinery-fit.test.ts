/** Cuts that their timbers cannot give, and cuts out of proportion. Rules: common practice but where a title names more. */
import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { DRY, dovetailed, findingsOf, fixed, gate, pavilion, THREE_BENTS } from "./gate.ts";

/** The gate with another joint at the posts' heads. */
const head = (joint: string): string =>
  gate({ joints: `joints: {head: {kind: mortise-and-tenon, of: post, into: plate, ${joint}}}\n` });

const checksOf = (text: string): string[] =>
  findingsOf(text).map(({ finding }) => `${finding.level} ${finding.check}`);

findingsFixture(
  "tenon-wide: wider and thicker than the post it is cut on",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 2 in, length: 4 in, width: 12 in}}
      #                                                                                                         ^^^^^ error tenon-wide: The tenon at head@A1 is 12 in wide, and the end of post@A1 that it is cut on has 8 in of wood that way: it cannot be cut. Make it 8 in or less.
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 2 in, length: 4 in, width: 8 in}}
    `,
  }),
);

findingsFixture(
  "tenon-wide: thicker than a slim timber in a broad one",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 2x6, walls: [A], from: 1, to: 2, top: 4 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        girt-end: {kind: mortise-and-tenon, of: girt, into: post, tenon: {thickness: 2 1/2 in, length: 3 in}}
      #                                                                              ^^^^^^^^ error tenon-wide: is 2 1/2 in thick, and girt@A1-A2 that it is cut on is 2 in thick there
      #                                                                              ^^^^^^^^ error mortise-wall-thin: breaks out of post@A1’s side
    `,
  }),
);

describe("tenon-wide", () => {
  test("its fix takes the timber's own size", () => {
    expect(fixed(head("tenon: {length: 4 in, width: 12 in}"), "tenon-wide")).toContain("width: 8 in}");
  });

  test("a brace has its depth ÷ the sine of its angle: 6 in at 45° give 8.485 in (trigonometry, derived)", () => {
    const braced = (width: string): string =>
      gate({
        members: `
          members:
            post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
            plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
            knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}
        `,
        joints: `
          joints:
            head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
            knees: {kind: brace-tenon, of: knee, into: [post, plate], tenon: {width: ${width}}}
        `,
      });
    expect(checksOf(braced("8 7/16 in"))).toEqual([]);
    expect(checksOf(braced("8 5/8 in"))).toEqual(["error tenon-wide"]);
  });
});

findingsFixture(
  "tenon-short: a stub below an inch; an inch is enough",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 2 in, length: 15/16 in}, pegs: {count: 0}}
      #                                                                                            ^^^^^^^^ warning tenon-short: The tenon at head@A1 is 15/16 in long, less than 1 in
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 2 in, length: 1 in}, pegs: {count: 0}}
    `,
  }),
);

test("a pegged tenon of 1/4 in is too short, and its pegs break out", () => {
  expect(checksOf(head("tenon: {length: 1/4 in}")).sort()).toEqual([
    "error pegs-crowded",
    "warning tenon-short",
  ]);
});

const HOUSED = (housing: string): string =>
  gate({
    joints: `joints: {head: {kind: mortise-and-tenon, of: post, into: plate, housing: ${housing}, tenon: {length: 3 in}}}\n`,
  });

findingsFixture(
  "housing-deep: more than a quarter, from half on an error, through the timber an error of its own words",
  gate({
    grid: THREE_BENTS,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
    `,
    joints: `
      joints:
        first: {kind: mortise-and-tenon, of: post@A1, into: plate, housing: 2 1/16 in, tenon: {length: 3 in}}
      #                                                                     ^^^^^^^^^ warning housing-deep: The housing at first@A1 is 2 1/16 in deep, more than usual for plate@A, which is 8 in thick there: it is weakened more than the bearing gains. Make it 2 in or less.
        second: {kind: mortise-and-tenon, of: post@A2, into: plate, housing: 4 in, tenon: {length: 3 in}}
      #                                                                      ^^^^ error housing-deep: takes half or more of plate@A
        third: {kind: mortise-and-tenon, of: post@A3, into: plate, housing: 8 in, tenon: {length: 1 in}, pegs: {count: 0}}
      #                                                                     ^^^^ error housing-deep: it would cut the timber through
      #                                                                                           ^^^^ error tenon-long: it comes out on the far side
    `,
  }),
);

test("housing-deep: a quarter is enough wood", () => {
  expect(checksOf(HOUSED("2 in"))).toEqual([]);
});

test("housing-deep: the roof's own rafter heads are judged where the file gives their housing", () => {
  const text = pavilion({}).replace(
    "head: {kind: housed, into: ridge, fasten",
    "head: {kind: housed, into: ridge, housing: 3 in, fasten",
  );
  const [found] = findingsOf(text).map(({ finding }) => finding);
  expect(found).toMatchObject({
    check: "housing-deep",
    level: "error",
    path: "/roof/rafters/head/housing",
    onKey: false,
  });
});

/** The gate with a girt 8 in deep that stands on wedged half-dovetails. */
const wedged = (drop: string): string =>
  gate({
    timber: DRY,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x8, walls: [A], from: 1, to: 2, top: 4 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        end: {kind: wedged-half-dovetail, of: girt, into: post, drop: ${drop}
    `,
  });

findingsFixture(
  "dovetail-drop: half the timber",
  wedged(`4 in}
      #                                                               ^^^^ error dovetail-drop: The drop at end@A1 is 4 in, half or more of the 8 in of girt@A1-A2: the neck of 4 in that is left breaks at the shoulder. Take about 1 in. The same holds at end@A2.`),
);

findingsFixture(
  "dovetail-drop: more than a quarter",
  wedged(`2 1/16 in}
      #                                                               ^^^^^^^^^ warning dovetail-drop: more than a quarter of the 8 in of girt@A1-A2: it leaves a neck of 5 15/16 in at the shoulder`),
);

findingsFixture(
  "wedge-blind: a tenon that ends in the post",
  wedged(`1 in, tenon: {length: 4 in}, pegs: {count: 1}}
      #                                                                                     ^^^^ error wedge-blind: The tenon at end@A1 is 4 in long and ends inside post@A1, which has 7 1/4 in of wood there`),
);

findingsFixture(
  "joint-key-ignored: a width for the tenon of a half-dovetail",
  wedged(`1 in, tenon: {width: 4 in}}
      #                                                                             ^^^^^ warning joint-key-ignored: The tenon width of 4 in at end is ignored`),
);

test.each([
  ["8 in", ["error dovetail-drop"]],
  ["2 in", []],
  ["1/2 in", []],
  ["7/16 in", ["warning dovetail-drop"]],
  ["0 in", ["warning dovetail-drop"]],
])("dovetail-drop: %s of 8 in", (drop, expected) => {
  expect(checksOf(wedged(`${drop}}`))).toEqual(expected);
});

findingsFixture(
  "dovetail-unfit: deeper than the joist, through the plate, and without a neck",
  dovetailed(
    `depth: 6 1/2 in, length: 7 1/2 in, flare: 2 in}}
      #                                                                        ^^^^^^^^ error dovetail-unfit: is 6 1/2 in deep, and joist.1 is 6 in: it cannot be cut
      #                                                                                          ^^^^^^^^ error dovetail-unfit: has 7 1/2 in of wood behind the housing: it comes out on the far side
      #                                                                                                           ^^^^ error dovetail-unfit: no neck is left`,
    DRY,
  ),
);

test.each([
  // 6 in from the top meet the 4 in tenon of the post below in the 8 in plate
  ["depth: 6 in, length: 4 in, flare: 1 in", ["error mortises-collide"]],
  ["flare: 1 1/8 in", ["warning dovetail-unfit"]],
])("dovetail-unfit: %s", (sizes, expected) => {
  expect(checksOf(dovetailed(`${sizes}}}`, DRY))).toEqual(expected);
});

findingsFixture(
  "peg-size: as thick as the tenon, thicker than the rule of TFEC 1 knows (memory), and too thin",
  gate({
    grid: THREE_BENTS,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
    `,
    joints: `
      joints:
        first: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 2 in}}
      #                                                                                                                               ^^^^ error peg-size: The pegs at first@A1 are 2 in thick, and the tenon is 2 in: their holes cut it off. Take pegs of 3/4 in.
        second: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 1 3/8 in}}
      #                                                                                                                                ^^^^^^^^ warning peg-size: are 1 3/8 in thick, more than 1 1/4 in
        third: {kind: mortise-and-tenon, of: post@A3, into: plate, tenon: {thickness: 2 in, length: 6 in}, pegs: {count: 1, diameter: 7/16 in}}
      #                                                                                                                               ^^^^^^^ warning peg-size: are 7/16 in thick, less than 1/2 in
    `,
  }),
);

test.each(["1 1/4 in", "1/2 in"])("peg-size: %s is within the range", (diameter) => {
  expect(checksOf(head(`tenon: {length: 6 in}, pegs: {count: 1, diameter: ${diameter}}`))).toEqual([]);
});

findingsFixture(
  "pegs-crowded: holes that run into one another, and a tenon that splits from hole to hole",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 20, diameter: 3/4 in}}
      #                                                                                                   ^^^^ error pegs-crowded: At head@A1 20 pegs of 3/4 in stand 3/8 in apart: their holes run into one another. Take fewer pegs; 1 1/2 in between their centers is the least.
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 2 in, length: 4 in}, pegs: {count: 5, diameter: 3/4 in}}
      #                                                                                                    ^^^^ warning pegs-crowded: less than 1 1/2 in: the tenon splits from hole to hole
    `,
  }),
);

test("pegs-crowded: a hole that breaks out of a short tenon", () => {
  const [found] = findingsOf(head("tenon: {length: 1 in}, pegs: {count: 1, diameter: 1 in}")).map(
    (f) => f.finding,
  );
  expect(found).toMatchObject({ check: "pegs-crowded", level: "error", value: 0.5, limit: 1, unit: "in" });
  expect(found?.message).toContain("do not fit");
});

test("pegs-crowded: four pegs in a post's head fit, in a narrow tenon they do not", () => {
  expect(checksOf(head("tenon: {length: 6 in}, pegs: {count: 4, diameter: 3/4 in}"))).toEqual([]);
  expect(checksOf(head("tenon: {length: 6 in, width: 3 in}, pegs: {count: 4, diameter: 3/4 in}"))).toContain(
    "error pegs-crowded",
  );
});

findingsFixture(
  "drawbore-out-of-range: more than a peg bends around, and half of it",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {length: 6 in}, pegs: {count: 1, diameter: 3/4 in, draw: 5/32 in}}
      #                                                                                                                           ^^^^^^^ warning drawbore-out-of-range: The holes at head@A1 are drawn by 5/32 in, more than the 9/64 in that a 3/4 in peg bends around
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {length: 6 in}, pegs: {count: 1, diameter: 3/4 in, draw: 1 in}}
      #                                                                                                                            ^^^^ error drawbore-out-of-range: are drawn by 1 in, half the 3/4 in peg or more: it does not find the hole in the tenon. Take 1/16 to 1/8 in.
    `,
  }),
);

test.each(["1/8 in", "1/16 in", "0 in"])("drawbore-out-of-range: %s is usual or none", (draw) => {
  expect(checksOf(head(`tenon: {length: 6 in}, pegs: {count: 1, diameter: 3/4 in, draw: ${draw}}`))).toEqual(
    [],
  );
});
