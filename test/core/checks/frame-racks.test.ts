/** What frame-racks says of frames that little holds upright. Statics, no table: a joint turns, a brace pushes. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { buildModel } from "../../../server/core/model/build.ts";
import { computeResults } from "../../../server/core/results.ts";
import { readFrame } from "../../../server/document/read.ts";
import { createFrameService } from "../../../server/language/frame-service.ts";
import { SHED } from "../../shed.ts";
import { findingsOf } from "./gate.ts";

/** The pavilion without some of its braces: what is wrong is said once, and no forces of a frame that folds up. */
const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
const unbraced = (drop: RegExp): { ids: string[]; along: string[] } => {
  const text = PAVILION.split("\n")
    .filter((line) => !drop.test(line))
    .join("\n");
  const { frame } = computeResults(buildModel(readFrame(text).frame));
  const racking = frame?.racking ?? [];
  return {
    ids: createFrameService()
      .open("file:///pavilion.frame.yaml", 1, text)
      .findings.flatMap(({ finding }) => (finding.level === "note" ? [] : [finding.check])),
    along: racking.filter((r) => !r.stands).map((r) => r.toward),
  };
};

describe("a pavilion that nothing braces", () => {
  test("across the bents: racks that way alone, and no timber is blamed for what that does", () => {
    expect(unbraced(/tie-knee/)).toEqual({ ids: ["frame-racks"], along: ["+y", "-y"] });
  });
  test("either way: both are said", () => {
    expect(unbraced(/kind: brace/)).toEqual({
      ids: ["frame-racks", "frame-racks"],
      along: ["+x", "-x", "+y", "-y"],
    });
  });
});

const racksOf = (text: string): string[] =>
  findingsOf(text, true).flatMap(({ finding }) => (finding.check === "frame-racks" ? [finding.message] : []));

describe("frame-racks: what it says of a pavilion", () => {
  const racks = (edit: (text: string) => string): string[] => racksOf(edit(PAVILION));
  test("braces between king posts and ridge hold no post: none does, not one that is too soft", () => {
    const found = racks((text) =>
      text
        .replace(/^ {2}knee: .*\n/m, "")
        .replace("[knee, tie-knee, ridge-knee], into: [post, plate,", "[tie-knee, ridge-knee], into: [post,"),
    );
    expect(found).toHaveLength(1);
    expect(found[0]).toMatch(/^The frame racks along the walls: no brace holds post@A1, .* upright that way/);
    expect(found[0]).not.toContain("soft");
  });
  test("without ties it says that ties are missing", () => {
    const found = racks((text) =>
      text
        .replace(/^ {2}(tie|king-post|tie-knee|ridge-knee|tie-end|king-foot|king-head):.*\n/gm, "")
        .replace(
          "[knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge]",
          "knee, into: [post, plate]",
        ),
    );
    expect(
      found.some((m) =>
        /^The frame racks across .* no tie joins them .* Set a tie from wall to wall in each of bents 1, 2 and 3/.test(
          m,
        ),
      ),
    ).toBe(true);
  });
  test("with ties it asks for knees, and says once how many combinations have no answer", () => {
    const found = racks((text) =>
      text
        .split("\n")
        .filter((line) => !/kind: brace/.test(line))
        .join("\n"),
    );
    expect(found).toHaveLength(2);
    expect(found.join()).not.toContain("tie joins");
    const said = found.map((m) => /Under (\d+) of (\d+) load combinations it has no answer/.exec(m));
    expect(said.filter(Boolean)).toHaveLength(1);
    const [, failed, count] = (said.find(Boolean) ?? []).map(Number);
    const frame = computeResults(buildModel(readFrame(PAVILION).frame)).frame;
    expect(count).toBe(frame?.solution.cases.length);
    expect(failed).toBeGreaterThan(0);
    expect(failed).toBeLessThanOrEqual(count ?? 0);
  });
});

test("frame-racks: a lean past the frame's own height is no length to tell", () => {
  // one knee for two walls: the posts of the other turn with the roof
  const one = PAVILION.replace("between: [post, plate], leg: 36 in", "between: [post@A1, plate], leg: 36 in");
  expect(one).not.toBe(PAVILION);
  const racks = racksOf(one);
  expect(racks).toHaveLength(1);
  expect(racks[0]).toMatch(
    /^The frame racks along the walls: nothing stiff enough to count braces post@A1, post@A2, post@A3, post@B1 and 2 more that way, /,
  );
  expect(racks[0]).not.toMatch(/lean|\d'/);
});

test("frame-racks: braced, but on posts far too slim: the braces are not blamed", () => {
  const slim = SHED.replace("post: {kind: post, section: 8x8", "post: {kind: post, section: 1x1");
  const racks = racksOf(slim);
  expect(
    racks.some((words) =>
      words.startsWith(
        "The frame is too soft across the bents: under two hundredths of the weight on them post@",
      ),
    ),
  ).toBe(true);
  expect(racks.filter((words) => words.includes("no brace"))).toEqual([]);
});
