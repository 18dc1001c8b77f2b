import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { expectFindings, findingsFixture } from "../../fixtures.ts";
import { findingsOf, fixed, gate, idsOf } from "./gate.ts";

describe("not-a-frame", () => {
  test.each([
    ["nothing", "", "This file is empty"],
    ["a comment", "# soon\n", "This file is empty"],
    ["a list", "- post\n- plate\n", "This file is a list, not a map of keys"],
    ["a sentence", "eight posts and a roof\n", "This file is plain text, not a map of keys"],
  ])("%s", (_, text, words) => {
    const found = findingsOf(text).map(({ finding }) => finding);
    expect(found.map(({ check, level }) => [check, level])).toEqual([["not-a-frame", "error"]]);
    expect(found[0]?.message).toContain(words);
  });

  test("more than a frame can be is not read, with the number and the limit", () => {
    const [only, ...others] = findingsOf(`frame: ${"x".repeat(6_000_000)}\n`);
    expect(others).toEqual([]);
    expect(only?.finding.check).toBe("not-a-frame");
    expect(only?.finding.message).toMatch(
      /^This file has \d,\d{3},\d{3} characters, more than the [\d,]+ that/,
    );
    expect(only?.finding.value).toBeGreaterThan(only?.finding.limit ?? Number.POSITIVE_INFINITY);
  });
});

findingsFixture(
  "line-unreadable: a tab for indentation, and a reference to nothing; the rest is checked",
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: *far}
      #                  ^^^^ error line-unreadable: a reference to a name that is not defined
        levels: {pier-top: 8 in, eave: 8 ft}
    `,
  }),
);

findingsFixture(
  "line-unreadable: a directive",
  `
    %YAML 1.1
    #@0-9 error line-unreadable: Lines that begin with % have no meaning
    ---
    frame: Gate
    format: 1
    timber: {frame: {species: eastern-white-pine, grade: no-1}}
    grid: {walls: {A: 0, B: 9 ft}, bents: {1: 0, 2: 9 ft}}
    members:
      post: {kind: post, section: 8x8, at: [A1], from: 0, to: 8 ft}
    piers:
      all: {under: post, kind: tube, diameter: 14 in, depth: 40 in}
    site: {frost-depth: 30 in, soil: sand}
  `,
);

findingsFixture(
  "unclosed-quote: the value is left out, the rest is checked",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        stub:
          kind: post
          section: "6x6
      #            ^ error unclosed-quote: This " opens a text that is never closed
          at: [B1]
          from: pier-top
          to: eave
        float: {kind: post, section: 6x6, at: [B2], from: pier-top, to: eave}
      # ^^^^^ error timber-floating: float@B2
    `,
  }),
);

findingsFixture(
  "unclosed-bracket: it ends with its line",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave
      #        ^ error unclosed-bracket: Add }
    `,
  }),
);

findingsFixture(
  "missing-separator: what an inline map needs",
  gate({
    site: `
      site:
        frost-depth: 30 in
        soil: sand
        ground: {1: 0, 2:-4 in}
      #                ^^^^^^^ error missing-separator: a space is missing after the colon, so there is no value here. Write “2: -4 in”
    `,
    timber: `
      timber:
        frame: {species: eastern-white-pine, grade: no-1, values: {Fb: 1,000 psi}, because: "a test"}
      #                                                                ^^^^^^^^^ error missing-separator: a comma ends the value here
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: A, B, from: 1, to: 2, top: eave}
      #                                    ^^^^^^^^^^^ error missing-separator: several values stand here without brackets
    `,
  }),
);

findingsFixture(
  "unknown-key: the nearest one, and the ones there are",
  gate({
    site: `
      site:
        frost-depth: 30 in
        soil: sand
        grund: {1: 0}
      # ^^^^^ error unknown-key: “grund” is not a key here, so it would be ignored. Did you mean “ground”?
        colour: red
      # ^^^^^^ error unknown-key: “colour” is not a key here, so it would be ignored. Known here: snow, wind,
    `,
  }),
);

test("unknown-key: its fix renames the key", () => {
  const site =
    "site: {frost-depth: 30 in, soil: sand, snwo: {ground: 30 psf, exposure: sheltered, thermal: open}}\n";
  expect(fixed(gate({ site }), "unknown-key")).toContain("snow: {ground");
});

findingsFixture(
  "missing-key: what an entry cannot do without",
  gate({
    piers: `
      piers:
        all: {under: post, kind: tube, depth: 40 in, anchor: {kind: embedded-strap}}
      # ^^^ error missing-key: “diameter” is missing here, and this entry cannot do without it. Add it, for example “diameter:
    `,
  }),
);

findingsFixture(
  "duplicate-id: a key twice in one map, and a name for two things",
  gate({
    grid: `
      grid:
        walls: {A: 0, B: 10 ft}
        bents: {1: 0, 2: 9 ft, "1": 8 ft}
      #                        ^^^ error duplicate-id: “1” is written twice in this map, and only the first counts
        levels: {pier-top: 8 in, eave: 8 ft, head: 9 ft}
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
      # ^^^^ error duplicate-id: “head” already names a level, a member or a joint
    `,
  }),
);

test("duplicate-id leads to the first one", () => {
  const grid =
    "grid: {walls: {A: 0, B: 9 ft}, bents: {1: 0, 2: 9 ft}, levels: {pier-top: 8 in, eave: 8 ft, eave: 9 ft}}\n";
  const [found] = findingsOf(gate({ grid }));
  expect(found?.finding.related).toEqual([{ path: "/grid/levels/eave", message: "first written here" }]);
});

findingsFixture(
  "wrong-shape: a list, a map or nothing where a value is expected, and a list too short",
  gate({
    site: `
      site:
        frost-depth: [30 in]
      # ^^^^^^^^^^^ error wrong-shape: Here stands a list, and a length is expected, so it is left out. Write it behind the colon.
        snow: 30 psf
      # ^^^^ error wrong-shape: Here stands a single value, and a map of keys is expected, so it is left out. Write it in braces: {key: value}.
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
        knee: {kind: brace, section: 4x6, between: [post], leg: 2 ft}
      #                                   ^^^^^^^ error wrong-shape: This list does not fit, so it is left out: a list with at least 2 entries is expected here.
    `,
  }),
  { only: ["error"] },
);

findingsFixture(
  "unknown-id: each name that nothing answers to",
  gate({
    timber: `
      timber:
        frame: {species: eastern-white-pin, grade: no-1}
      #                  ^^^^^^^^^^^^^^^^^ error unknown-id: “eastern-white-pin” is not a species that Bentwright knows, so what refers to it is left out. Did you mean “eastern-white-pine”?
        other: {species: eastern-white-pine, grade: no-7}
      #                                             ^^^^ error unknown-id: “no-7” is not a grade of this species
    `,
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eaves}
      #                                                                     ^^^^^ error unknown-id: “eaves” is not a level of this file, so what refers to it is left out. Did you mean “eave”?
        stub: {kind: post, section: 6x6, timber: oak, at: [B1], from: pier-top, to: eave}
      #                                          ^^^ error unknown-id: “oak” is not a timber class of this file, so what refers to it is left out. Known: frame, other.
        far: {kind: post, section: 6x6, at: Q1, from: pier-top, to: eave}
      #                                     ^^ error unknown-id: “Q1” is not a grid place of this frame
    `,
  }),
  { only: ["error"] },
);

findingsFixture(
  "unknown-id: what nothing in space waits for",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave, hung-on: post@A3}
      #                                                                                    ^^^^^^^ error unknown-id: “post@A3” is not a stick of this frame, so what refers to it is left out. Did you mean “post@A1”?
    `,
    joints: `
      joints:
        head: {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 4 in}}
        half: {kind: wedged-half-dovetail, of: plate, into: post, wedge: {species: white-oke}}
      #                                                     ^^^^ error joint-apart: Swap
      #                                                                            ^^^^^^^^^ error unknown-id: “white-oke” is not a species that Bentwright knows, so what refers to it is left out. Did you mean “white-oak”?
      floors:
        loft: {on: plates, live: 20 psf}
      #            ^^^^^^ error unknown-id: “plates” is not a member of this file, so the load of floor loft is on no timber and in no check. Did you mean “plate”?
        deck: {on: xyz, live: 20 psf}
      #            ^^^ error unknown-id: “xyz” is not a member of this file, so the load of floor deck is on no timber and in no check. Known: post, plate.
    `,
  }),
  { only: ["error"] },
);

test.each(["joists", "joits", "xyz", "joist.9", "joist@1.1"])(
  "a floor on %s, which is no entry, is a finding and a gap, and takes no other finding with it",
  (on) => {
    const goats = readFileSync("samples/goat-shed.frame.yaml", "utf8");
    const typo = goats.replace("{on: joist, live", `{on: ${on}, live`);
    expect(typo).not.toBe(goats);
    expect([...idsOf(typo, true)].sort()).toEqual([...idsOf(goats, true), "unknown-id"].sort());
    const snapshot = createFrameService().open("file:///goats.frame.yaml", 1, typo);
    expect(snapshot.evaluation?.results.frame?.solution.loads.gaps).toMatchObject([{ what: "floor" }]);
  },
);

test.each(["{kind: joist", "{kind: joist, section: 4x"])(
  "nor is a floor's row unknown while its line is typed: %s",
  (line) => {
    const goats = readFileSync("samples/goat-shed.frame.yaml", "utf8");
    const typed = goats.replace(/^( {2}joist: ).*$/m, `$1${line}`);
    expect(idsOf(typed, true)).not.toContain("unknown-id");
  },
);

findingsFixture(
  "unknown-id: a place that the grid does not have, with those that it has, and a level for a line",
  gate({
    members: `
      members:
        post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
        plate: {kind: plate, section: 8x8, walls: [A, B], from: 1, to: 2, top: eave}
        joist: {kind: joist, section: 4x6, between: [plate@A, plate@B], from: eave, to: 2, spacing: 36 in, top: eave}
      #                                                                       ^^^^ error unknown-id: “eave” is not a bent of this frame, so what refers to it is left out. Known: 1, 2.
        free: {kind: beam, section: 6x6, ends: [{at: A1, level: 3 ft}, {at: D2, level: 3 ft}]}
      #                                                                     ^^ error unknown-id: “D2” is not a grid place of this frame, so what refers to it is left out. Known: A1, A2, B1, B2.
    `,
    piers: `
      piers:
        all: {under: post, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
        more: {under: plate, at: C2, kind: tube, diameter: 14 in, depth: 40 in, anchor: {kind: embedded-strap}}
      #                          ^^ error unknown-id: “C2” is not a grid place of this frame, so what refers to it is left out. Known: A1, A2, B1, B2.
    `,
  }),
  { only: ["error"] },
);

test("unknown-id: each finding mends its own place, also where one name is wrong twice", () => {
  const members = `
    members:
      post: {kind: post, section: 8x8, at: [A1, A2], from: pier-topp, to: plate}
      plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
      stub: {kind: post, section: 6x6, at: [B1], from: pier-topp, to: plate}
  `;
  const found = findingsOf(gate({ members })).filter(({ finding }) => finding.check === "unknown-id");
  const paths = found.map(({ finding }) => finding.path);
  expect(paths).toEqual(["/members/post/from", "/members/stub/from"]);
  expect(found.map(({ finding }) => finding.fixes()[0]?.edits[0])).toEqual(
    paths.map((path) => ({ kind: "replace", path, text: "pier-top" })),
  );
});

describe("a line half typed", () => {
  const stages = [
    "  k",
    "  knee",
    "  knee:",
    "  knee: {",
    "  knee: {kind: br",
    "  knee: {kind: brace, section: 4",
    "  knee: {kind: brace, between: [post",
  ];
  test.each(stages)("%s brings no finding about any other line, and hides none", (typed) => {
    const members = `members:
  post: {kind: post, section: 8x8, at: [A1, A2], from: pier-top, to: plate}
  plate: {kind: plate, section: 8x8, walls: [A], from: 1, to: 2, top: eave}
${typed}
  float: {kind: post, section: 6x6, at: [B2], from: pier-top, to: eave}
`;
    const text = gate({ members });
    const line = text.split("\n").indexOf(typed);
    const others = findingsOf(text).filter(({ range }) => range.start.line !== line);
    expect(others.map(({ finding }) => finding.check)).toEqual(["timber-floating"]);
  });
});

test("the marks of these tests are read as they are meant", () => {
  expect(() => expectFindings(gate({ site: "site: {frost-depth: 30 in, soil: sant}\n" }))).toThrow();
});
