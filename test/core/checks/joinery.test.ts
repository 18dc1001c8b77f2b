import { describe, expect, test } from "vitest";
import { findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, idsOf, pavilion, THREE_BENTS } from "./gate.ts";

findingsFixture(
  "joint-assumed: one place, several places, at the key of the timber that joins",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
      # ^^^^ note joint-assumed: post meets plate at 2 places without a named joint; a mortise and tenon of usual sizes is assumed there.
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        stub: {kind: post, section: 6x6, at: [A@4 ft], from: pier-top, to: plate}
      # ^^^^ note joint-assumed: stub meets plate at one place without
      #                                       ^^^^^^ error end-unsupported: stub@A@4-ft stands on nothing
    `,
    joints: "",
  }),
);

describe("joint-assumed", () => {
  test("its fix writes the joint, also where the file has no joints yet", () => {
    const after = fixed(gate({ joints: "" }), "joint-assumed");
    expect(after).toContain("post-to-plate: {kind: mortise-and-tenon, of: post, into: plate}");
    expect(idsOf(after)).toEqual([]);
  });

  test("its fix takes a name that is free", () => {
    const joints = "joints: {post-to-plate: {kind: brace-tenon, of: post, into: post}}\n";
    const found = findingsOf(gate({ joints })).find(({ finding }) => finding.check === "joint-assumed");
    expect(found?.finding.fixes()[0]?.edits[0]).toMatchObject({ key: "post-to-plate-2" });
  });
});

findingsFixture(
  "joint-twice: two entries with equal right",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
      # ^^^^ error joint-twice: head and other both hold at head@A1 with equal right, and only one can be cut; head is drawn. Name the stick (post@A1) in one of them. The same holds at head@A2.
        other: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 1/2 in, length: 4 in}}
    `,
  }),
);

findingsFixture(
  "joint-twice: the entry that names the stick has the better right",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        first: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 1 1/2 in, length: 4 in}}
    `,
  }),
);

findingsFixture(
  "joint-apart: an entry whose places are all taken by better ones is not called apart",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        first: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 1 1/2 in, length: 4 in}}
        second: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 1 1/2 in, length: 4 in}}
    `,
  }),
);

findingsFixture(
  "kind-unfit: a bird's mouth on the heads of posts, and only that",
  gate({
    joints: `
      joints:
        head: {kind: birds-mouth, of: post, into: plate, seat: 3 in}
      #              ^^^^^^^^^^^ error kind-unfit: head: a bird’s mouth cannot be cut where post@A1 meets plate@A. It is cut for a timber that slopes as a rafter does, and post@A1 stands upright. A mortise and tenon of usual sizes is taken there instead, and nothing of the entry is used. Kinds that fit here: mortise and tenon, housed end and stub tenon. The same holds at head@A2.
    `,
  }),
);

test("kind-unfit: a timber that does not slope lies level, and is not said to stand at 0°", () => {
  const tied = gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        girt: {kind: girt, section: 6x8, walls: [A], from: 1, to: 2, top: 6 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        girt-end: {kind: birds-mouth, of: girt, into: post, seat: 3 in}
    `,
  });
  const told = findingsOf(tied)
    .filter(({ finding }) => finding.check === "kind-unfit")
    .map(({ finding }) => finding.message);
  expect(told).toHaveLength(1);
  expect(told[0]).toContain(
    "It is cut for a timber that slopes as a rafter does, and girt@A1-A2 lies level.",
  );
});

findingsFixture(
  "kind-unfit: a bridle needs two ends, where the end of one does meet the other",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        mid: {kind: post, section: 8x8, at: [A@4 ft], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        mid-head: {kind: corner-bridle, of: mid, into: plate}
      #                  ^^^^^^^^^^^^^ error kind-unfit: It joins two ends, and only one of the two timbers ends here.
    `,
    piers: `
      piers:
        all: {under: [post, mid], kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
    `,
  }),
);

findingsFixture(
  "tenon-thin: a sixteenth short, at the size that the file gives, two places in one finding",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 3/16 in, length: 4 in}}
      #                                                                           ^^^^^^^^^ warning tenon-thin: The tenon at head@A1 is 1 3/16 in thick, less than 1 1/4 in: it splits at the peg and breaks in raising. Make it 1 1/2 in or more. The same holds at head@A2.
    `,
  }),
);

findingsFixture(
  "tenon-thin: 1 1/4 in is enough",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 1 1/4 in, length: 4 in}}
    `,
  }),
);

findingsFixture(
  "tenon-long: no inch of wood behind it",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 7 1/16 in}}
      #                                                                                         ^^^^^^^^^ warning tenon-long: The tenon at head@A1 is 7 1/16 in long, and plate@A has room for 7 in
    `,
  }),
);

findingsFixture(
  "tenon-long: through the timber it is an error",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 8 in}}
      #                                                                                         ^^^^ error tenon-long: it comes out on the far side. Shorten it to 7 in, or make it a through tenon.
    `,
  }),
);

findingsFixture(
  "tenon-long: where the wood is an inch thick, no length is proposed",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, housing: 7 in, tenon: {thickness: 2 in, length: 3 in}}
      #                                                                 ^^^^ housing-deep: half
      # ^^^^ pegs-crowded: splits out
      #                                                                                                        ^^^^ error tenon-long: No blind tenon has room there: make it a through tenon, or take thicker wood for plate@A
    `,
  }),
);

findingsFixture(
  "tenon-long: with an inch behind it, and as a through tenon, it is silent",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {thickness: 2 in, length: 7 in}}
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {thickness: 2 in, length: 8 in, through: true}}
    `,
  }),
);

findingsFixture(
  "tenon-long: tenons from both sides share the wood between their housings",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2, A3], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 3, top: eave}
        girt: {kind: girt, section: 6x6, walls: [A], from: 1, to: 3, top: 5 ft}
    `,
    grid: THREE_BENTS,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        girt-end: {kind: mortise-and-tenon, of: girt, into: post, housing: 1/2 in, tenon: {thickness: 2 in, length: 4 in}}
      #                                                                                                             ^^^^ warning tenon-long: another tenon is in the way
    `,
  }),
);

describe("tenon-long", () => {
  const long = (length: string, head = "frame: Gate\nformat: 1\n"): string =>
    gate({
      head,
      joints: `joints: {head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: ${length}}}}\n`,
    });

  test("its fix shortens the tenon to the half inch below", () => {
    const after = fixed(long("8 in"), "tenon-long");
    expect(after).toContain("length: 7 in}");
    expect(idsOf(after)).toEqual([]);
  });

  test("its fix shortens to whole 5 mm in a file of millimetres", () => {
    const metric = long("200 mm", "frame: Gate\nformat: 1\nunits: mm\n")
      .replaceAll("8x8", "200x200")
      .replace("14 in", "400");
    expect(fixed(metric, "tenon-long")).toContain("length: 170 mm}");
  });

  test("there is none where the file gives no length to shorten", () => {
    const thin = gate({ joints: "joints: {head: {kind: mortise-and-tenon, of: post, into: plate}}\n" });
    expect(idsOf(thin)).toEqual([]);
  });
});

findingsFixture(
  "mortise-wall-thin: a wall thinner than the tenon, at the thickness",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 1/16 in, length: 4 in}}
      #                                                                           ^^^^^^^^^ warning mortise-wall-thin: A wall of the mortise at head@A1 is 2 in thick in plate@A, thinner than the 2 1/16 in tenon
    `,
  }),
);

findingsFixture(
  "mortise-wall-thin: at the set-in where only that is given, an error where there is no wall",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post@A1, into: plate, tenon: {set-in: 1 in, length: 4 in}}
      #                                                                           ^^^^ warning mortise-wall-thin: is 1 in thick
        other: {kind: mortise-and-tenon, of: post@A2, into: plate, tenon: {set-in: 0 in, length: 4 in}}
      #                                                                            ^^^^ error mortise-wall-thin: breaks out of plate@A’s side
    `,
  }),
);

findingsFixture(
  "mortise-wall-thin: walls as thick as the tenon are enough",
  gate({
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, set-in: 2 in, length: 4 in}}
    `,
  }),
);

test("sizes that nobody wrote are shown at the entry's key", () => {
  const members = `
    members:
      post: {kind: post, section: 3x3, at: [A1, A2], from: pier-top, to: plate}
      plate: {kind: plate, section: 3x8, walls: [A], from: 1, to: 2, top: eave}
  `;
  const joints = "joints: {head: {kind: mortise-and-tenon, of: post, into: plate}}\n";
  const thin = findingsOf(gate({ members, joints })).map(({ finding }) => finding);
  expect(thin.map(({ check, path, onKey }) => [check, path, onKey])).toEqual([
    ["mortise-wall-thin", "/joints/head", true],
  ]);
});

test("the roof's own joints are not assumed", () => {
  expect(idsOf(pavilion({}))).toEqual([]);
});

test("kind-unfit: its fix writes the usual kind, and the finding is gone", () => {
  const text = gate({ joints: "joints:\n  head: {kind: pocket, of: post, into: plate}\n" });
  const after = fixed(text, "kind-unfit");
  expect(after).toContain("  head: {kind: mortise-and-tenon, of: post, into: plate}");
  expect(idsOf(after)).not.toContain("kind-unfit");
});

test("a wedge at a tenon and a lap at a corner, which nothing would be cut by, are no keys there", () => {
  const joints =
    "joints:\n  head: {kind: mortise-and-tenon, of: post, into: plate, wedge: {species: white-oak}}\n";
  expect(idsOf(gate({ joints }))).toContain("unknown-key");
  const corner = joints.replace("mortise-and-tenon", "corner-half-lap").replace(/wedge: .*\}/, "lap: 20 in}");
  expect(idsOf(gate({ joints: corner }))).toContain("unknown-key");
});
