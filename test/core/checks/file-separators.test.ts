/** Slips of a single colon, comma or bracket: one finding at the slip, in its words, and a fix that leaves nothing behind. */
import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { fixed, gate, idsOf } from "./gate.ts";

const POST = "post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}";
const PLATE = "plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}";

function members(post: string, plate = PLATE): string {
  return gate({ members: `\n  members:\n    ${post}\n    ${plate}\n  ` });
}

findingsFixture(
  "missing-separator: a colon between a key and its value",
  gate({
    members: `
      members:
        post: {kind: post, section 8x8, at: [A1, A2], from: pier-top, to: plate}
      #                    ^^^^^^^^^^^ error missing-separator: A colon is missing after “section”. Write “section: 8x8”.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

findingsFixture(
  "missing-separator: a colon on a line of its own",
  gate({
    site: `
      site:
        frost-depth 30 in
      # ^^^^^^^^^^^^^^^^^ error missing-separator: A colon is missing after “frost-depth”. Write “frost-depth: 30 in”.
        soil: sand
    `,
  }),
);

findingsFixture(
  "missing-separator: a colon before braces and before brackets",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at [A1, A2], from: pier-top, to: plate}
      #                                  ^^ error missing-separator: A colon is missing after “at”. Write “at:”.
        plate {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      # ^^^^^ error missing-separator: A colon is missing after “plate”. Write “plate:”.
    `,
  }),
);

findingsFixture(
  "missing-separator: a colon behind a heading and behind a level",
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 9 ft}
        levels: {pier-top: 8 in, eave 8 ft}
      #                          ^^^^^^^^^ error missing-separator: A colon is missing after “eave”. Write “eave: 8 ft”.
    `,
    joints: `
      joints
      #@0-6 error missing-separator: A colon is missing after “joints”. Write “joints:”.
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
    `,
  }),
);

findingsFixture(
  "missing-separator: a comma between entries, behind a list and between items",
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 9 ft}
        levels: {pier-top: 8 in eave: 8 ft}
      #                    ^^^^^^^^^ error missing-separator: A comma is missing before “eave”. Write “8 in, eave”.
    `,
    members: `
      members:
        post: {kind: post section: 8x8, at: [A1 A2], from: pier-top, to: plate}
      #              ^^^^^^^^^^^^ error missing-separator: A comma is missing before “section”. Write “post, section”.
      #                                      ^^^^^ error missing-separator: A comma is missing before “A2”. Write “A1, A2”.
        plate: {kind: plate, section: 8x8, walls: [A] from: 1, to: 2, top: eave}
      #                                             ^^^^^^ error missing-separator: A comma is missing before “from”. Write “], from”.
    `,
  }),
);

findingsFixture(
  "missing-separator: a list that is closed and was never opened",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: A1, A2], from: pier-top, to: plate}
      #                                  ^^^^^^^^^^^ error missing-separator: several values stand here without brackets
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

findingsFixture(
  "unclosed-bracket: a list ends before the next key",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, from: pier-top, to: plate}
      #                                      ^ error unclosed-bracket: it is read as if it ended before “from”. Add ] there.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
  }),
);

findingsFixture(
  "unclosed-bracket: a key of the outer map is no unknown key of the inner one",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in, pegs: {count: 1, diameter: 3/4 in}}
      #       ^ error unclosed-bracket: Add }
    `,
  }),
);

describe("the fix of one slip leaves a sound frame", () => {
  test.each([
    ["a colon before a value", POST.replace("section:", "section"), "section: 8x8", "missing-separator"],
    ["a colon before braces", POST.replace("post:", "post"), "post: {kind", "missing-separator"],
    ["a colon before brackets", POST.replace("at:", "at"), "at: [A1", "missing-separator"],
    [
      "a comma between entries",
      POST.replace("post, section", "post section"),
      "post, section",
      "missing-separator",
    ],
    ["a comma behind a list", POST.replace("], from", "] from"), "], from", "missing-separator"],
    ["a comma between items", POST.replace("A1, A2", "A1 A2"), "A1, A2", "missing-separator"],
    ["an opening bracket", POST.replace("[A1", "A1"), "[A1, A2]", "missing-separator"],
    ["a closing bracket", POST.replace("A2]", "A2"), "A2], from", "unclosed-bracket"],
    ["a closing brace", POST.replace(/\}$/, ""), "to: plate}", "unclosed-bracket"],
    ["the wrong bracket", POST.replace(/\}$/, "]"), "to: plate}", "unclosed-bracket"],
  ])("%s", (_, post, expected, check) => {
    const slip = members(post);
    expect(idsOf(slip)).toEqual([check]);
    const after = fixed(slip, check);
    expect(after).toContain(expected);
    expect(idsOf(after)).toEqual([]);
  });

  test("two brackets at the end of a line are closed the inner one first", () => {
    const slip = gate({
      joints:
        "joints:\n  head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in\n",
    });
    const after = fixed(slip, "unclosed-bracket");
    expect(after).toContain("length: 4 in}}");
    expect(idsOf(after)).toEqual([]);
  });
});

test.each(["because: graded by me, section by section", "because: tie it down, to be sure"])(
  "a sentence cut off by a comma is no key without its colon: %s",
  (because) => {
    const timber = `timber: {frame: {species: eastern-white-pine, grade: no-1, ${because}}}\n`;
    expect(fixed(gate({ timber }), "missing-separator")).toContain(`"${because.replace("because: ", "")}"`);
  },
);
