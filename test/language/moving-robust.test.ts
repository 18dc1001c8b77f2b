/** Moving about in whatever is typed, at every place of it: an answer, never a fault, and never outside of the text. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import type { DocumentSymbol, Range } from "vscode-languageserver-types";
import { definitionsAt } from "../../server/language/definition.ts";
import { foldingRangesOf } from "../../server/language/folding.ts";
import { createFrameService, type ReadText } from "../../server/language/frame-service.ts";
import { namesIn } from "../../server/language/names.ts";
import { highlightsAt, referencesAt } from "../../server/language/references.ts";
import { renamableAt, renameEdits } from "../../server/language/rename.ts";
import { symbolsOf } from "../../server/language/symbols.ts";
import { readText } from "./moving.ts";

const SAMPLES = readdirSync("samples")
  .filter((file) => file.endsWith(".yaml"))
  .map((file) => readFileSync(`samples/${file}`, "utf8"));

/** Asks everything at an offset. */
function ask(text: ReadText, offset: number): void {
  const { document } = text;
  const at = document.positionAt(offset);
  const able = renamableAt(text, at);
  const ranges: Range[] = [
    ...definitionsAt(text, at).flatMap((one) => [
      one.originSelectionRange ?? one.targetRange,
      one.targetRange,
    ]),
    ...referencesAt(text, at, true).map(({ range }) => range),
    ...highlightsAt(text, at).map(({ range }) => range),
    ...("range" in able ? [able.range] : []),
  ];
  const end = document.getText().length;
  for (const range of ranges) {
    const [from, to] = [document.offsetAt(range.start), document.offsetAt(range.end)];
    expect(from < to && to <= end).toBe(true);
  }
}

function expectNested(symbols: readonly DocumentSymbol[], text: ReadText, from: number, to: number): void {
  for (const { name, range, selectionRange, children = [] } of symbols) {
    const { document } = text;
    const [start, end] = [document.offsetAt(range.start), document.offsetAt(range.end)];
    expect(name).not.toBe("");
    expect(from <= start && end <= to).toBe(true);
    expect(start <= document.offsetAt(selectionRange.start)).toBe(true);
    expect(document.offsetAt(selectionRange.end) <= end).toBe(true);
    expectNested(children, text, start, end);
  }
}

test("in the samples, at every offset", () => {
  for (const sample of SAMPLES) {
    const text = readText(sample);
    for (let offset = 0; offset <= sample.length; offset += 1)
      definitionsAt(text, text.document.positionAt(offset));
    for (let offset = 0; offset <= sample.length; offset += 17) ask(text, offset);
  }
});

test("an entry whose value is a bracket too many lies in its section all the same", () => {
  const frame = [
    "frame: Goat sunits: inch",
    "  knee: }     {kind: brace, section: 4x6, between: [post, plate], leg: 24 in}",
    "  tie-knee:  {kind: brace, section: 4x6, between: [post, tie], leg: 30 in}",
    "  ridge-knee: {kind: brace, section: 4x6, between: [king-post, ridge], leg: 24 in}",
    "  post-head:   {kind: mortise-and-tenon, of: post, into: plate, tenon: {thickness: 2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 3/4 in, draw: 3/32 in}}",
    "  tie-end:     {kind: wedged-half-dovetail, of: tie, into: post, housing: 3/4 in, tenon: {thickness: 2 in}, drop: 1 1/4 in, wedge: {species: white-oak}, pegs: {count: 3, diameter: 3/4 in}}",
    "  king-foot:   {kind: mortise-and-tenon, of: king-post, into: tie, tenon: {thickness: 2 in, length: 6 1/2 in}, pegs: {count: 2, diameter: 3/4 in}}",
  ].join("\n");
  const read = readText(frame);
  expectNested(symbolsOf(read), read, 0, frame.length);
});

test("in a frame with anything cut out or put in", () => {
  const whole = SAMPLES.join("\n");
  const service = createFrameService();
  const typed = fc.constantFrom(
    "",
    " ",
    "\n",
    ":",
    ",",
    "[",
    "{",
    "}",
    '"',
    "'",
    "#",
    "- ",
    "@",
    "A1@",
    "&a ",
    "*a",
    "<<: ",
    "\t",
    "😀",
    "/~",
    "? ",
  );
  fc.assert(
    fc.property(
      fc.constantFrom(...SAMPLES),
      fc.array(fc.tuple(fc.nat(whole.length), fc.nat(40), typed), { minLength: 1, maxLength: 4 }),
      fc.array(fc.nat(whole.length), { minLength: 2, maxLength: 6 }),
      (sample, cuts, offsets) => {
        let text = sample;
        for (const [at, length, put] of cuts) {
          const from = at % (text.length + 1);
          text = text.slice(0, from) + put + text.slice(from + length);
        }
        const read = service.read("file:///robust.frame.yaml", 1, text);
        if (!read.reading) throw new Error("reading broke down");
        for (const name of namesIn(read.reading)) {
          expect(text.slice(name.range.start, name.range.end)).toBe(name.text);
          expect(name.definitions.length).toBeGreaterThan(0);
        }
        for (const offset of offsets) ask(read, offset);
        renameEdits(read, read.document.positionAt(offsets[0] ?? 0), "leg");
        expectNested(symbolsOf(read), read, 0, text.length);
        const folds = foldingRangesOf(read);
        for (const { startLine, endLine } of folds) {
          expect(startLine).toBeLessThan(endLine);
          expect(endLine).toBeLessThan(read.document.lineCount);
          for (const other of folds)
            if (other.startLine > startLine && other.startLine <= endLine)
              expect(other.endLine).toBeLessThanOrEqual(endLine);
        }
      },
    ),
    { numRuns: 150 },
  );
});

test("in a large file, where each of many words stands for each of many timbers", () => {
  const members = Array.from({ length: 2500 }, (_, i) => `  m${i}: {kind: post}\n`).join("");
  const uses = Array.from({ length: 20_000 }, () => "post").join(", ");
  const written = `members:\n  post: {kind: post}\n${members}joints:\n  head: {of: [${uses}]}\n`;
  const text = readText(written);
  const at = text.document.positionAt(written.lastIndexOf("post"));
  expect(definitionsAt(text, at)).toHaveLength(2501);
  expect(referencesAt(text, at, false)).toHaveLength(20_000);
  const other = text.document.positionAt(written.indexOf("m7:"));
  expect(highlightsAt(text, other)).toHaveLength(20_001);
  expect(renameEdits(text, other, "leg")).toEqual({ edits: [expect.objectContaining({ newText: "leg" })] });
  expect(symbolsOf(text)).toHaveLength(2);
  expect(foldingRangesOf(text)).toHaveLength(2);
});

test.each([
  "",
  "\uFEFF",
  "#",
  "# region",
  "- a\n- b",
  "members",
  "members:\n",
  "members: [a, b]",
  "a: &a [*a]",
  "grid: {walls: {A: {}}, bents: }",
  '"": 1\nmembers: {"": {}, "/~": {kind: post}}',
  "\r",
  "accept: [[], {check: ''}]",
])("in %j", (written) => {
  const text = readText(written);
  for (let offset = 0; offset <= written.length; offset++) ask(text, offset);
  expectNested(symbolsOf(text), text, 0, written.length);
  expect(foldingRangesOf(text).length).toBeLessThan(2);
});
