import { describe, expect, test } from "vitest";
import type { Finding } from "../../server/core/checks/check.ts";
import { evaluate } from "../../server/core/evaluate.ts";
import { countsOf, diagnosticsOf } from "../../server/language/diagnostics.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { expectFindings, findingsFixture, readFixture } from "../fixtures.ts";
import { SHED } from "../shed.ts";

const URI = "file:///shed.frame.yaml";

const finding = (more: Partial<Finding>): Finding => ({
  check: "some-check",
  level: "warning",
  path: "/members/tie/section",
  onKey: false,
  message: "It is thin.",
  places: [],
  related: [],
  fixes: () => [],
  ...more,
});

/** The diagnostics of the shed when its checks find just these. */
function published(...findings: readonly Finding[]) {
  const service = createFrameService(undefined, {
    evaluate: (...args) => ({ ...evaluate(...args), findings }),
  });
  const snapshot = service.open(URI, 1, SHED);
  return { diagnostics: diagnosticsOf(snapshot), counts: countsOf(snapshot) };
}

const shown = (
  range: { start: { line: number; character: number }; end: { character: number } } | undefined,
) => range && SHED.split("\n")[range.start.line]?.slice(range.start.character, range.end.character);

describe("a finding as a diagnostic", () => {
  test("severity, name, source, words and range", () => {
    const levels = ["error", "warning", "note"] as const;
    const { diagnostics, counts } = published(...levels.map((level) => finding({ level })));
    expect(diagnostics.map(({ severity }) => severity)).toEqual([1, 2, 3]);
    expect(diagnostics[0]).toMatchObject({
      code: "some-check",
      source: "bentwright",
      message: "It is thin.",
    });
    expect(diagnostics.map(({ range }) => shown(range))).toEqual(["8x10", "8x10", "8x10"]);
    expect(counts).toEqual({ errors: 1, warnings: 1, notes: 1 });
  });

  test("on the key, on a part", () => {
    const { diagnostics } = published(finding({ onKey: true }), finding({ part: { from: 2, to: 4 } }));
    expect(diagnostics.map(({ range }) => shown(range))).toEqual(["section", "10"]);
  });

  test("other places that have a part in it", () => {
    const { diagnostics } = published(
      finding({ related: [{ path: "/members/plate/section", message: "against this" }] }),
    );
    const [related] = diagnostics[0]?.relatedInformation ?? [];
    expect(related).toMatchObject({ message: "against this", location: { uri: URI } });
    expect(shown(related?.location.range)).toBe("8x8");
  });

  test("none when it is accepted", () => {
    const { diagnostics, counts } = published(finding({ accepted: "looked over" }));
    expect(diagnostics).toEqual([]);
    expect(counts).toEqual({ errors: 0, warnings: 0, notes: 0 });
  });

  test("in the order of the text", () => {
    const { diagnostics } = published(finding({}), finding({ path: "/site/soil", level: "note" }));
    expect(diagnostics.map(({ range }) => shown(range))).toEqual(["sand", "8x10"]);
  });
});

/** A small file with two findings, marked. */
const SMALL = `
  grid: {walls: {A: 0}, bents: {1: 0}}
  timber: {frame: {species: eastern-white-pine, grade: no-1}}
  sizes: {}
  #@0-5 error unknown-key: sizes
  members:
    post: {kind: post, section: 8x8, at: A1, from: floor, to: 7 ft}
    #                                              ^^^^^ error unknown-id: floor
`;

describe("the fixtures themselves", () => {
  findingsFixture("a marked text", SMALL, { only: ["error"] });

  test("markers and cursor are taken out", () => {
    expect(readFixture("\n  a: b$0\n  #  ^ error some-check: words here\n  c: d\n")).toEqual({
      text: "a: b\nc: d\n",
      markers: [{ line: 0, from: 3, to: 4, check: "some-check", level: "error", words: "words here" }],
      cursor: { line: 0, character: 4 },
    });
  });

  test.each([
    ["a finding without a marker", SMALL.replace(/ *#@0-5.*\n/, "")],
    ["a marker without a finding", SMALL.replace("7 ft}", "7 ft}\n    #     ^^^^ error some-check: words")],
    ["a range that is too long", SMALL.replace("^^^^^", "^^^^^^")],
    ["a range that begins elsewhere", SMALL.replace(" ^^^^^", "^^^^^")],
    ["another check", SMALL.replace("unknown-id:", "unknown-key:")],
    ["other words", SMALL.replace("unknown-id: floor", "unknown-id: ceiling")],
    ["another level", SMALL.replace("error unknown-id", "warning unknown-id")],
  ])("%s fails", (_, text) => {
    expect(text).not.toBe(SMALL);
    expect(() => expectFindings(text, { only: ["error"] })).toThrow(/unexpected|missing/);
  });

  test("an ordinary comment is no marker", () => {
    expect(readFixture("a: b\n# ^ see above\n# note: this\n").markers).toEqual([]);
  });
});
