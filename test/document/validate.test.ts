import { describe, expect, it } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { linesOf } from "./facts.ts";
import { PAVILION, SMALL } from "./samples.ts";

/** One change of the pavilion, and all that may be said about it. */
function change(from: string, to: string): readonly string[] {
  expect(PAVILION).toContain(from);
  return linesOf(PAVILION.replace(from, to));
}

it("accepts a frame that uses the whole language", () => {
  expect(linesOf(PAVILION)).toEqual([]);
  expect(linesOf(SMALL)).toEqual([]);
});

describe("keys", () => {
  it("that are unknown are reported with the one that was meant", () => {
    expect(change("frost-depth", "frost-dept")).toEqual(["unknown-key /site/frost-dept (frost-depth)"]);
    expect(change("site:", "sites:")).toEqual(["unknown-key /sites (site)"]);
    expect(change("{thickness: 2 in, length", "{thicknes: 2 in, length")).toEqual([
      "unknown-key /joints/post-head/tenon/thicknes (thickness)",
    ]);
  });

  it("that are known elsewhere are unknown for another kind", () => {
    expect(change("section: 8x8, at:", "section: 8x8, curve: {rise: 1 in}, at:")).toEqual([
      expect.stringMatching(/^unknown-key \/members\/post\/curve /),
    ]);
  });

  it("of walls and bents follow their pattern", () => {
    expect(change("{A: 0, B: 13 ft}", "{A: 0, b: 13 ft}")).toEqual(["unknown-key /grid/walls/b (B)"]);
    expect(change("{1: 0, 2: 9 ft,", "{1: 0, 2: 9 ft, x: 0,")).toEqual([
      expect.stringMatching(/^unknown-key \/grid\/bents\/x /),
    ]);
    expect(change("{1: 0, 2: -4 in,", "{1: 0, A2: -4 in,")).toEqual([]);
    expect(change("{1: 0, 2: -4 in,", "{1: 0, 2b: -4 in,")).toEqual([
      expect.stringMatching(/^unknown-key \/site\/ground\/2b /),
    ]);
  });

  it("that define names have the form of a name", () => {
    expect(change("  post: ", "  my post: ")).toEqual(["unknown-key /members/my post (my-post)"]);
    expect(change("eave: 9 ft", "1st-eave: 9 ft")).toEqual([
      "unknown-key /grid/levels/1st-eave (a name that begins with a letter, of letters, digits and hyphens)",
    ]);
    expect(change("  knee: ", "  Büge: ")).toEqual([]);
  });

  it("that must be there are missed", () => {
    expect(change("kind: plate, section: 8x9", "kind: plate")).toEqual([
      "missing-key /members/plate section",
    ]);
    expect(change("kind: post, ", "")).toEqual(["missing-key /members/post kind"]);
    expect(change("{kind: housed, into: ridge}", "{into: ridge}")).toEqual([
      "missing-key /roof/rafters/head kind",
    ]);
    expect(change("{species: white-oak}\nmill", "{species: white-oak, values: {Fb: 900 psi}}\nmill")).toEqual(
      ["missing-key /timber/pegs because"],
    );
  });

  it("show an example of what is missed", () => {
    const { source } = readFrame(PAVILION.replace("kind: plate, section: 8x9", "kind: plate"));
    expect(source.facts).toEqual([
      { kind: "missing-key", path: "/members/plate", key: "section", example: "8x9" },
    ]);
  });
});

describe("values", () => {
  it("outside a choice are reported with the nearest", () => {
    expect(change("soil: sand", "soil: sannd")).toEqual(['wrong-value /site/soil "sannd" (sand)']);
    expect(change("exposure: C", "exposure: E")).toEqual(['wrong-value /site/wind/exposure "E" (B, C, D)']);
    expect(change("format: 1", "format: 2")).toEqual(['wrong-value /format "2" (1)']);
    expect(change("asce-7-16", "asce-7-2")).toEqual([
      expect.stringMatching(/^wrong-value \/basis\/loads "asce-7-2" /),
    ]);
  });

  it("of `kind` are one fact, whatever else the entry holds", () => {
    expect(change("kind: brace, section: 4x8", "kind: brase, section: 4x8")).toEqual([
      'wrong-value /members/knee/kind "brase" (brace)',
    ]);
    expect(change("kind: brace, section: 4x8", "kind: [brace], section: 4x8")).toEqual([
      expect.stringMatching(/^wrong-shape \/members\/knee\/kind list, not post, plate/),
    ]);
    expect(change("kind: brace, section: 4x8", "kind: , section: 4x8")).toEqual([
      expect.stringMatching(/^wrong-shape \/members\/knee\/kind nothing/),
    ]);
    expect(change("  kind: gable", "  kind: gabel")).toEqual(['wrong-value /roof/kind "gabel" (gable)']);
  });

  it("that are to be numbers, or true or false, are checked as such", () => {
    expect(change("count: 9", "count: nine")).toEqual([
      'wrong-value /mill/logs/0/count "nine" (a whole number from 1 to 1000)',
    ]);
    expect(change("count: 9", "count: 0")).toEqual([
      'wrong-value /mill/logs/0/count "0" (a whole number from 1 to 1000)',
    ]);
    expect(change("count: 9", "count: 1.5")).toEqual([
      'wrong-value /mill/logs/0/count "1.5" (a whole number from 1 to 1000)',
    ]);
    expect(change("size: 4}", "size: 40}")).toEqual([
      'wrong-value /piers/all/rebar/size "40" (a whole number from 3 to 11)',
    ]);
    expect(change("thermal: open", "thermal: open, slides: yes")).toEqual([
      'wrong-value /site/snow/slides "yes" (true, false)',
    ]);
    expect(change("peg: 1.80", "peg: cheap")).toEqual(['wrong-value /prices/peg "cheap" (a number from 0)']);
  });

  it("that are places of the grid have their form", () => {
    expect(change("[A1, A2, A3,", "[a1, A2, A3,")).toEqual(['wrong-value /members/post/at/0 "a1" (A1)']);
    expect(change("[A1, A2, A3,", "[A, A2, A3,")).toEqual([
      'wrong-value /members/post/at/0 "A" (A1, B@4 ft 9 in)',
    ]);
    expect(change("at: [A1, A2, A3, B1, B2, B3]", "at: A1")).toEqual([]);
    expect(change("at: [A1, A2, A3, B1, B2, B3]", "at: [A1, B@4 ft 9 in]")).toEqual([]);
  });

  it("of another shape say what is expected", () => {
    expect(change("soil: sand", "soil: [sand]")).toEqual([
      expect.stringMatching(/^wrong-shape \/site\/soil list, not sand/),
    ]);
    expect(change("frost-depth: 32 in", "frost-depth: {x: 1}")).toEqual([
      "wrong-shape /site/frost-depth map, not a length",
    ]);
    expect(change("frost-depth: 32 in", "frost-depth:")).toEqual([
      "wrong-shape /site/frost-depth nothing, not a length",
    ]);
    expect(change("[post, plate]", "[post]")).toEqual([
      "wrong-shape /members/knee/between list, not a list with at least 2 entries",
    ]);
    expect(change("{radius: 100 in}", "{}")).toEqual([
      "wrong-shape /members/knee/curve nothing, not a map with at least 1 entry",
    ]);
    expect(linesOf(`${SMALL}joints: none\n`)).toEqual(["wrong-shape /joints text, not a map of keys"]);
  });
});
