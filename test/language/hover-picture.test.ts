/** The drawing in a joint's hover: a picture as data, for editors that show it, of one place that it names. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { atCursor } from "../../server/language/at-cursor.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { hoverAt } from "../../server/language/hover.ts";
import { jointDrawingOf } from "../../server/language/joint-drawing.ts";
import { parseXml } from "../drawing/xml.ts";
import { SHED_IN_SNOW } from "../shed.ts";

/** The Markdown of a hover at the first place of some words. */
function over(text: string, words: string, pictures: boolean): string {
  const snapshot = createFrameService().open("file:///picture.frame.yaml", 1, text);
  const at = text.indexOf(words);
  expect(at, words).toBeGreaterThan(0);
  const position = snapshot.document.positionAt(at + 1);
  return hoverAt(snapshot, position, { pictures })?.contents.value ?? "";
}

const PICTURE = /!\[([^\]]*)\]\(data:image\/svg\+xml;base64,([A-Za-z0-9+/=]+)\|width=\d+\)/;
const svgIn = (markdown: string): string =>
  new TextDecoder().decode(Uint8Array.from(atob(PICTURE.exec(markdown)?.[2] ?? ""), (c) => c.charCodeAt(0)));

const PAVILION = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");

/** The same with ties that only stand in their posts. */
const UNHELD = PAVILION.replace(
  /^ {2}tie-end: .*$/m,
  "  tie-end: {kind: housed, of: tie, into: post, housing: 1 in}",
);

describe("a joint's picture", () => {
  test("is an SVG of the place that is used most, which the hover names", () => {
    const markdown = over(PAVILION, "tie-end:", true);
    const svg = svgIn(markdown);
    expect(() => parseXml(svg)).not.toThrow();
    const [, place = "", ratio = ""] =
      /Drawn at (tie-end@\S+), where it is used most \((\d\.\d\d)\)\./.exec(markdown) ?? [];
    expect(svg).toContain(`${place} · Wedged half-dovetail`);
    // the very place and ratio that the line of forces names
    expect(markdown).toMatch(new RegExp(`Pulls [\\d,]+ lb at ${place} under .*: ${ratio}\\.`));
    expect(markdown.indexOf("![")).toBeLessThan(markdown.indexOf("| on "));
  });
  test("of the first place, where forces are not known", () => {
    const unbraced = SHED_IN_SNOW.replace(/^ {2}(?:knee|tie-knee|knee-ends): .*\n/gm, "");
    expect(over(unbraced, "post-head:", true)).toContain("Drawn at post-head@A1, the first of 4 places.");
  });
  test("of the place where nothing holds a pull, rather than the first", () => {
    const markdown = over(UNHELD, "tie-end:", true);
    const [, place = "", pull = ""] =
      /Drawn at (tie-end@\S+), where ([\d,]+) lb pulls and nothing holds\./.exec(markdown) ?? [];
    expect(svgIn(markdown)).toContain(`${place} · `);
    expect(Number(pull.replace(",", ""))).toBeGreaterThan(50);
    expect(markdown).toContain(`Pulls ${pull} lb at ${place} under `);
  });
  test("also where a size of the joint or the roof's seat stands", () => {
    expect(svgIn(over(PAVILION, "drop: 1 1/4 in", true))).toContain("Wedged half-dovetail");
    expect(svgIn(over(PAVILION, "birds-mouth", true))).toContain("Bird’s mouth");
  });
  test("stays far below the length at which editors cut Markdown off", () => {
    for (const entry of ["tie-end:", "brace-ends:", "post-head:"])
      expect(over(PAVILION, entry, true).length, entry).toBeLessThan(50_000);
  });
  test("stays out where the reader shows none", () => {
    expect(over(PAVILION, "tie-end:", false)).not.toContain("data:");
    expect(over(PAVILION, "tie-end:", false)).not.toContain("Drawn at");
  });
});

describe("a post's foot on its anchor", () => {
  const BOLTED = SHED_IN_SNOW.replace(
    "stand-off: 1 in}",
    "stand-off: 1 in, strap: {thickness: 3/16 in, width: 2 1/2 in, place: in-kerf}, bolts: {count: 2, diameter: 1/2 in}}",
  );
  test("shows its cuts, its picture and what holds, over the pier and over a key of the anchor", () => {
    for (const words of ["all: {", "stand-off: 1 in, strap", "diameter: 1/2 in}}"]) {
      const markdown = over(BOLTED, words, true);
      expect(markdown, words).toContain("**Post foot on a metal anchor**");
      expect(() => parseXml(svgIn(markdown))).not.toThrow();
      expect(markdown).toMatch(/\| post +\| kerf width +\| 1\/4 in/);
      expect(markdown).toMatch(/\| sideways, along its bolts +\|/);
      expect(markdown).toContain("post@A1 goes in straight down.");
      expect(markdown).not.toMatch(/NaN|undefined|Infinity/);
    }
  });
  test("is the joint that the preview draws at the pier", () => {
    const snapshot = createFrameService().open("file:///picture.frame.yaml", 1, BOLTED);
    const position = snapshot.document.positionAt(BOLTED.indexOf("\n  all:") + 4);
    expect(atCursor(snapshot, position).joint).toBe("post-foot@A1");
    const service = createFrameService();
    service.open("file:///picture.frame.yaml", 1, BOLTED);
    const drawn = jointDrawingOf(service, { uri: "file:///picture.frame.yaml", id: "post-foot@A1" });
    expect(drawn?.title).toBe("post-foot@A1 · Post foot on a metal anchor");
  });
});
