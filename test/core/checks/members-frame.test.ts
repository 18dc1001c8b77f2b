/** The frame as a whole: whether it stands. Statics, no table: a joint turns, a brace pushes. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { frameRacks } from "../../../server/core/checks/members/frame-racks.ts";
import { makeSay } from "../../../server/core/checks/speak.ts";
import { buildModel } from "../../../server/core/model/build.ts";
import { farEnds } from "../../../server/core/model/unsupported.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { SHED as SITED } from "../../shed.ts";
import { findingsOf, gate } from "./gate.ts";

/** The shed has no roof: snow given for it would be a finding of its own; so would ties that people strike their heads on. */
const SHED = SITED.replace(/ {2}snow: .*\n/, "").replace("tie-top: 7 ft", "tie-top: 7 ft 2 in");

const without = (...names: string[]): string =>
  SHED.split("\n")
    .filter((line) => !names.some((n) => line.trimStart().startsWith(`${n}:`)))
    .join("\n");

const mark = (text: string, ...marks: string[]): string =>
  text
    .split("\n")
    .flatMap((line) => (line.trimStart().startsWith("post:") ? [line, ...marks] : [line]))
    .join("\n");

test("a shed braced both ways stands", () => expectFindings(SHED, { whole: true }));

findingsFixture(
  "frame-racks: no brace in the bents",
  mark(
    without("tie-knee").replace("[knee, tie-knee], into: [post, plate, tie]", "knee, into: [post, plate]"),
    "# ^^^^ error frame-racks: across the bents: no brace holds post@A1, post@A2, post@B1 and post@B2",
  ),
  { whole: true },
);

findingsFixture(
  "frame-racks: no brace in the walls",
  mark(
    without("knee").replace("[knee, tie-knee], into: [post, plate, tie]", "tie-knee, into: [post, tie]"),
    "# ^^^^ error frame-racks: along the walls",
  ),
  { whole: true },
);

findingsFixture(
  "frame-racks: no brace at all, both ways said apart",
  mark(
    without("knee", "tie-knee", "knee-ends"),
    "# ^^^^ error frame-racks: along the walls",
    "# ^^^^ error frame-racks: across the bents",
  ),
  { whole: true },
);

findingsFixture(
  "frame-racks: an arch of one bent has nothing to brace it to along the walls",
  `
    frame: Arch
    format: 1
    site: {frost-depth: 30 in, soil: gravel}
    timber: {frame: {species: white-oak, grade: no-1, seasoning: green}, pegs: {species: white-oak}}
    grid:
      walls: {A: 0, B: 8 ft}
      bents: {1: 0}
      levels: {pier-top: 4 in, top: 8 ft}
    members:
      post: {kind: post, section: 6x6, at: [A1, B1], from: pier-top, to: beam}
    # ^^^^ error frame-racks: Bent 1 stands alone, with nothing to brace it to: set the posts as legs in the ground
      beam: {kind: beam, section: 6x8, bents: [1], from: A, to: B, top: top, overhang: 18 in}
      knee: {kind: brace, section: 4x7, between: [post, beam], leg: 30 in}
    joints:
      head: {kind: mortise-and-tenon, of: post, into: beam, tenon: {thickness: 2 in, length: 5 in}, pegs: {count: 2, diameter: 3/4 in}}
      knees: {kind: brace-tenon, of: knee, into: [post, beam], housing: 1/2 in, tenon: {thickness: 1 1/2 in}, pegs: {count: 1, diameter: 3/4 in}}
    piers:
      all: {under: post, kind: tube, diameter: 14 in, depth: 42 in, anchor: {kind: embedded-strap, stand-off: 1 in}}
  `,
  { whole: true, only: ["error"] },
);

/** The shed with a rail that begins at post@A1. */
const railed = (rail: string, ...marks: string[]): string =>
  SHED.replace("joints:\n", `${[`  rail: ${rail}`, ...marks].join("\n")}\njoints:\n`);
const JOINT_ASSUMED = "# ^^^^ note joint-assumed: rail meets post";

findingsFixture(
  "end-unsupported: a girt on one post swings, and the frame is not blamed for it",
  railed(
    "{kind: girt, section: 6x6, walls: [A], from: 1, to: 5 ft, top: 4 ft}",
    "# ^^^^ error end-unsupported: rail@A is held at post@A1 only: its other end, 56 5/8 in away, meets no timber",
    JOINT_ASSUMED,
  ),
  { whole: true },
);
test("end-unsupported: what it says of the forces is so with and without them", () => {
  const said = (text: string): { readonly failed: number; readonly words: string } => {
    const { findings, evaluation } = createFrameService().open("file:///end.frame.yaml", 1, text);
    const found = findings.find(({ finding }) => finding.check === "end-unsupported");
    return {
      failed: evaluation?.results.frame?.solution.failed.length ?? Number.NaN,
      words: found?.finding.message ?? "",
    };
  };
  const goats = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  // walls so near each other that the rafters hang on what they lie in
  const [held, loose] = [
    said(goats.replace("B: 12 ft", "B: 1 in")),
    said(railed("{kind: girt, section: 6x6, walls: [A], from: 1, to: 5 ft, top: 4 ft}")),
  ];
  expect(held.failed).toBe(0);
  expect(loose.failed).toBeGreaterThan(0);
  for (const { words } of [held, loose])
    expect(words).toContain("until then no forces of the frame can be found, or none to rely on.");
});

findingsFixture(
  "end-unsupported: carried on to the next post it is held",
  railed("{kind: girt, section: 6x6, walls: [A], from: 1, to: 2, top: 4 ft}", JOINT_ASSUMED),
  { whole: true },
);
findingsFixture(
  "end-unsupported: what goes on beyond that post is a stick of its own, on one joint",
  railed(
    "{kind: girt, section: 6x6, walls: [A], from: 1, to: 12 ft, top: 4 ft}",
    "# ^^^^ error end-unsupported: rail@A.2 is held at post@A2 only: its other end, 36 in away",
    JOINT_ASSUMED,
  ),
  { whole: true },
);

/** The sample pavilion of 13 by 18 ft, two bays, without some of its posts. */
const lacking = (...posts: readonly string[]): string[] => {
  const sample = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const text = posts.reduce((all, post) => all.replace(new RegExp(`(at: \\[.*?)${post}(, )`), "$1"), sample);
  return findingsOf(text, true).flatMap(({ finding: { check, path, message } }) =>
    check === "post-missing" ? [`${path} ${message}`] : [],
  );
};

describe("post-missing [common practice, no source]", () => {
  test("every post there: nothing to say", () => expect(lacking()).toEqual([]));

  test("one in the middle of a wall: the tie that ends there hangs, though a king-post stands on it", () => {
    // the tie is 13 ft; its knee at B2 has legs of 27 in and holds it there
    expect(lacking("A2")).toEqual([
      expect.stringMatching(
        /^\/members\/tie Nothing holds tie@2 at A2: it runs on 10'-5 13\/16" past tie-knee@B2-A2, the last that does, and is held over 27 1\/16 in only\. It is reckoned so\. Set a post at A2,/,
      ),
    ]);
  });

  test("one at a corner: the plate hangs over the last bay as well", () => {
    expect(lacking("A1").map((line) => line.split(": ")[0])).toEqual([
      "/members/plate Nothing holds plate@A at A1",
      "/members/tie Nothing holds tie@1 at A1",
    ]);
  });

  test("a tie written twice in one place is told as that alone, whichever of the two is deeper", () => {
    const sample = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
    const twice = (section: string, top: string) =>
      findingsOf(
        sample.replace(
          /^( {2}tie: .*)$/m,
          `$1\n  again: {kind: tie, section: ${section}, bents: [2], from: A, to: B, ${top}}`,
        ),
        true,
      ).map(({ finding }) => finding.check);
    for (const [section, top] of [
      ["8x12", "top: tie-top"],
      ["8x10", "top: tie-top"],
      ["8x14", "top: tie-top"],
    ] as const) {
      expect(twice(section, top)).toContain("timbers-overlap");
      expect(twice(section, top)).not.toContain("post-missing");
    }
  });

  test("what is held and what runs on lie within the timber", () => {
    const sample = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
    const without = sample.replace(/(at: \[.*?)A2(, )/, "$1");
    const model = buildModel(readFrame(without).frame);
    const far = farEnds(model);
    expect(far.length).toBeGreaterThan(0);
    // from wall to wall it is 13 ft: a post holds it at its own middle
    for (const { reach, back } of far) expect(reach + back).toBeLessThanOrEqual(13 * 12);
  });

  test("what the file calls an overhang is one", () => {
    const stall = readFileSync("test/frames/market-stall.frame.yaml", "utf8");
    expect(findingsOf(stall, true).filter(({ finding }) => finding.check === "post-missing")).toEqual([]);
  });
});

findingsFixture(
  "post-missing: a plate whose end has no post, and is not written as overhang",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 14 ft, top: eave}
      # ^^^^^ warning post-missing: Nothing holds the end of plate@A
    `,
  }),
  { whole: true, only: ["warning"] },
);

findingsFixture(
  "end-unsupported: a post that stands on no pier of a frame on piers, and nothing said of how that frame racks",
  mark(
    SHED.replace(
      /\{under: post, (.*)depth: 48 in/,
      // the three piers take what the fourth would
      "{under: post, at: [A1, A2, B1], $1depth: 54 in",
    ).replace(
      /^ {2}tie-end: .*$/m,
      // the tie holds the post that hangs
      (line) =>
        [
          line,
          ...["the tip of the tenon", `the edge of post@A2`].map(
            (where) =>
              `#${" ".repeat(line.indexOf("pegs:") - 1)}^^^^ note peg-distance-short: stand 2 in from ${where}`,
          ),
        ].join("\n"),
    ),
    "#                                                   ^^ error end-unsupported: post@B2 stands on nothing",
  ),
  { whole: true },
);
test("end-unsupported: without any pier the posts stand on the ground", () =>
  expectFindings(SHED.slice(0, SHED.indexOf("piers:")), { whole: true, only: ["error", "warning"] }));

/** The shed under a gable: pairs of rafters, or rafters let into a ridge on king-posts. */
const gabled = (deck: string, ridge: boolean, ...marks: string[]): string =>
  SITED.replace(
    "joints:\n",
    ridge
      ? `${[
          "  king: {kind: king-post, section: 8x8, bents: [1, 2], from: tie, to: ridge}",
          ...marks,
          "  ridge: {kind: ridge, section: 8x10, from: 1, to: 2, overhang: 12 in}",
        ].join("\n")}\njoints:\n`
      : "joints:\n",
  ).replace(
    "piers:\n",
    `${[
      "roof:",
      "  kind: gable",
      "  pitch: 9:12",
      `  rafters: {section: 4x6, spacing: 30 in, seat: {kind: birds-mouth}, ${ridge ? "head: {kind: housed, into: ridge, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 8 in}}, " : ""}overhang: {eave: 6 in}, fasten: {kind: screws, count: 2, diameter: 5/16 in, length: 10 in}}`,
      ...(ridge ? [] : marks),
      `  deck: ${deck}`,
      "  covering: {kind: standing-seam, coverage: 16 in}",
    ].join("\n")}\npiers:\n`,
  );
const ERRORS = { whole: true, only: ["error"] } as const;
const ACROSS = "{kind: boards, thickness: 1 in}";

findingsFixture(
  "frame-racks: a ridge without braces under boards that lie across the rafters",
  gabled(
    ACROSS,
    true,
    "# ^^^^ error frame-racks: The roof racks along the walls: nothing holds king@1, king@2, ridge, rafter@A.1 and",
  ),
  ERRORS,
);
findingsFixture(
  "frame-racks: pairs of rafters without a ridge",
  gabled(ACROSS, false, "#@2-9 error frame-racks: like a row of cards. Lay the deck"),
  ERRORS,
);
for (const deck of ["{kind: panels, thickness: 5/8 in}", "{kind: boards, thickness: 1 in, laid: diagonal}"])
  for (const ridge of [true, false])
    test(`a deck of ${deck} holds rafters ${ridge ? "at a ridge" : "in pairs"}`, () =>
      expectFindings(gabled(deck, ridge), ERRORS));

describe("a half-typed brace", () => {
  test("does not make the frame look as if it racked", () => {
    const text = SHED.replace("leg: 30 in}\njoints", "leg: 3");
    const frame = readFrame(
      text.replace("tie-knee: {kind: brace, section: 4x6", "tie-knee: {kind: brace, section: 4x"),
    ).frame;
    const results = computeResults(buildModel(frame));
    expect(results.complete).toBe(false);
    expect([...frameRacks.find(results)]).toEqual([]);
  });
});

test("a combination without an answer is named, so that its silence is no pass", () => {
  const results = computeResults(buildModel(readFrame(SHED).frame));
  const { frame } = results;
  if (!frame) throw new Error("the shed has a frame");
  const failed = [
    {
      caseId: "5:W/+x/A",
      faults: [
        {
          kind: "mechanism" as const,
          dropped: [],
          modes: [{ nodes: [], elements: ["post@B1#2"], direction: [1, 0, 0] as const, driven: true }],
        },
      ],
    },
  ];
  const [found] = [
    ...frameRacks.find({ ...results, frame: { ...frame, solution: { ...frame.solution, failed } } }),
  ];
  expect(found?.place).toBe("post@B1");
  expect(found && frameRacks.words(found.data, makeSay("inch"))).toMatch(
    /5:W\/\+x\/A first.*gives way at post@B1/,
  );
});
