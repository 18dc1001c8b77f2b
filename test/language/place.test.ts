import { describe, expect, test } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { placeOfFinding } from "../../server/language/place.ts";

const text = [
  "# a shed",
  "frame: Shed",
  "members:",
  "  post: {kind: post, section: 8x8}",
  "  tie:",
  "    kind: tie",
  '    section: "8x12"',
  "    curve:",
  "joints: [one,",
  "  two]",
  "",
].join("\n");

const { index } = readFrame(text);

function shown(
  path: string,
  more: { onKey?: boolean; part?: { from: number; to: number }; span?: { start: number; end: number } } = {},
): string {
  const { start, end } = placeOfFinding(text, index, { path, onKey: false, ...more });
  return text.slice(start, end);
}

describe("where a finding stands", () => {
  test("a value", () => expect(shown("/members/post/section")).toBe("8x8"));
  test("its key", () => expect(shown("/members/post/section", { onKey: true })).toBe("section"));
  test("a part of it", () => expect(shown("/members/post/section", { part: { from: 2, to: 3 } })).toBe("8"));
  test("a part of a value in quotes", () =>
    expect(shown("/members/tie/section", { part: { from: 2, to: 4 } })).toBe("12"));
  test("a value of several lines is shown by its key", () => expect(shown("/members/tie")).toBe("tie"));
  test("a value that is missing, by its key", () => expect(shown("/members/tie/curve")).toBe("curve"));
  test("a key that is missing, by what it is missing in", () =>
    expect(shown("/members/tie/top")).toBe("tie"));
  test("what lies deeper than anything in the text", () =>
    expect(shown("/members/tie/curve/radius/x")).toBe("curve"));
  test("the whole file, by its first key", () => expect(shown("")).toBe("frame"));
  test("characters of the file", () => expect(shown("", { span: { start: 2, end: 8 } })).toBe("a shed"));
  test("characters past a line's end stop there", () =>
    expect(shown("", { span: { start: 2, end: 20 } })).toBe("a shed"));
  test("characters outside the file", () => expect(shown("", { span: { start: 9e9, end: 1e10 } })).toBe("]"));
  test("a text that could not be read", () =>
    expect(placeOfFinding(text, undefined, { path: "/members", onKey: false })).toEqual({
      start: 9,
      end: 20,
    }));
  test("an empty text", () =>
    expect(placeOfFinding("", undefined, { path: "", onKey: false })).toEqual({ start: 0, end: 0 }));
});
