import { describe, expect, it } from "vitest";
import { buildModel } from "../../server/core/model/build.ts";
import { readFrame } from "../../server/document/read.ts";
import { lines } from "./facts.ts";
import { PAVILION } from "./samples.ts";

const change = (from: string | RegExp, to: string): ReturnType<typeof readFrame> => {
  const text = PAVILION.replace(from, to);
  expect(text).not.toBe(PAVILION);
  return readFrame(text);
};

describe("numbers and lists without sense", () => {
  it("a place named twice is said at its second place", () => {
    expect(change("at: [A1, A2", "at: [A1, A1").source.facts).toMatchObject([
      { kind: "wrong-value", path: "/members/post/at/1", text: "A1" },
    ]);
  });

  it("a series of more sticks than are placed has no count", () => {
    const reading = change(/spacing: 30 in/, "count: 1000000000");
    expect(lines(reading)).toEqual([expect.stringMatching(/^wrong-value \/roof\/rafters\/count/)]);
    expect(reading.frame.roof?.rafters).toBeUndefined();
  });

  it("pegs: none is a joint without pegs, more than two dozen are a slip", () => {
    const without = change("pegs: {count: 2,", "pegs: {count: 0,");
    expect(lines(without)).toEqual([]);
    const joint = buildModel(without.frame).joints.find((each) => each.entry?.pegs?.count === 0);
    expect(joint?.sizes.pegs).toBeUndefined();
    expect(joint?.sizes.tenon).toBeDefined();
    expect(lines(change("pegs: {count: 2,", "pegs: {count: 100000,"))).toEqual([
      expect.stringContaining("from 0 to 24"),
    ]);
  });

  it.each([
    ["people", "people: 2", "people: 99999999999999999999", "/crew/people", "from 1 to 200"],
    ["logs", "length: 22 ft, count: 9", "length: 22 ft, count: 9000", "/mill/logs/0/count", "from 1 to 1000"],
    ["screws", "screws, count: 2", "screws, count: 25", "/roof/rafters/fasten/count", "from 1 to 24"],
    ["bars", "rebar: {count: 3", "rebar: {count: 1000", "/piers/all/rebar/count", "from 1 to 24"],
    ["the size of bars", "count: 3, size: 4", "count: 3, size: 12", "/piers/all/rebar/size", "from 3 to 11"],
  ])("more %s than anyone has are said, not left out silently", (_, from, to, path, range) => {
    const [fact, ...others] = lines(change(from, to));
    expect(others).toEqual([]);
    expect(fact).toContain(`wrong-value ${path}`);
    expect(fact).toContain(range);
  });

  it("a pier deeper than 12 ft is most likely feet for inches", () => {
    expect(lines(change("depth: 50 in,", "depth: 50 ft,"))).toEqual([
      expect.stringMatching(/^value-out-of-range \/piers\/all\/depth/),
    ]);
  });

  it("a comma inside a number is said to be one, with the point in its place", () => {
    expect(change("diameter: 16 in", "diameter: 3,5 in").source.facts).toMatchObject([
      { kind: "missing-separator", reason: "comma-number", proposals: ["3.5 in"] },
    ]);
  });
});

describe("piers under a list of timbers", () => {
  it("stand under the posts of each, as they do under one", () => {
    const piersOf = (under: string): readonly string[] =>
      buildModel(change("under: post", `under: ${under}`).frame).piers.map(({ id }) => id);
    expect(piersOf("[post]")).toEqual(buildModel(readFrame(PAVILION).frame).piers.map(({ id }) => id));
    expect(piersOf("[post@A1, post@B2]")).toEqual(["all@A1", "all@B2"]);
  });
});
