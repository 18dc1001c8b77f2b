/** Outline and folding: what they show, and that their ranges lie in one another. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { DocumentSymbol, Range } from "vscode-languageserver-types";
import { foldingRangesOf } from "../../server/language/folding.ts";
import { flatSymbols, symbolsOf } from "../../server/language/symbols.ts";
import { dedent, VARIANTS } from "../fixtures.ts";
import { readText } from "./moving.ts";

const FRAME = dedent(`
  # A frame for the outline,
  # with a comment of two lines.
  frame: Small one
  site:
    snow: {ground: 45 psf}
    soil: sand

  timber:
    frame: {species: white-oak, grade: no-1}
  grid:
    walls: {A: 0, B: {at: 10 ft}}
    bents: {"1": 0}
    levels:
      eave: 9 ft
  members:
    post: {kind: post, section: 8x8, at: A1}
    half: {kind: bra
    # region braces
    knee:
      kind: brace
      section: 4x6 # in the plane of the two
      between:
        - post
        - plate
    # endregion
  joints:
    head: {
      kind: brace-tenon,
      of: [knee, post],
      into: plate
    }
  roof: {kind: gable, rafters: {section: 3x7}}
  piers:
    all: {under: post, kind: tube, diameter: 12 in}
  accept:
    - {check: tenon-thin, at: head@A1, because: "one
        # no comment
        # at all"}
    - check: site-value-missing
      because: "two
        # lines"
`);

/** `name · detail`, and what the selection holds. */
function outline(symbols: readonly DocumentSymbol[], textOf: (range: Range) => string): readonly unknown[] {
  return symbols.map(({ name, detail, selectionRange, children = [] }) => {
    expect(textOf(selectionRange).replaceAll('"', "")).toBe(name);
    const line = detail === undefined ? name : `${name} · ${detail}`;
    return children.length > 0 ? { [line]: outline(children, textOf) } : line;
  });
}

describe.each(VARIANTS)("with $name", (variant) => {
  const text = readText(variant.text(FRAME));
  const down = variant.name.startsWith("an emoji") ? 1 : 0;

  test("the outline names sections and entries with what they are", () => {
    expect(outline(symbolsOf(text), (range) => text.document.getText(range))).toEqual([
      "frame · Small one",
      { site: ["snow", "soil · sand"] },
      { timber: ["frame · white-oak no-1"] },
      { grid: [{ walls: ["A · 0", "B · 10 ft"] }, { bents: ["1 · 0"] }, { levels: ["eave · 9 ft"] }] },
      { members: ["post · post 8x8", "half", "knee · brace 4x6"] },
      { joints: ["head · brace-tenon knee, post → plate"] },
      { "roof · gable": ["rafters · 3x7"] },
      { piers: ["all · tube 12 in post"] },
      { accept: ["tenon-thin · head@A1", "site-value-missing"] },
    ]);
  });

  test("an editor that knows no tree gets a list", () => {
    const list = flatSymbols(symbolsOf(text), text.uri);
    expect(list.map(({ name, containerName }) => [containerName, name])).toContainEqual(["walls", "A"]);
    expect(list.find(({ name }) => name === "frame")?.containerName).toBeUndefined();
  });

  test("sections, entries, comments and regions fold; a bracket that closes stays in sight", () => {
    const lines = text.document.getText().split(/\r?\n/);
    const folds = foldingRangesOf(text).map(({ startLine, endLine, kind }) => [
      (lines[startLine] ?? "").replace("\uFEFF", "").trim(),
      endLine - startLine,
      ...(kind === undefined ? [] : [kind]),
    ]);
    expect(folds).toEqual([
      [down ? "# 🪵 cut in winter 🪓" : "# A frame for the outline,", down ? 2 : 1, "comment"],
      ["site:", 2],
      ["timber:", 1],
      ["grid:", 4],
      ["levels:", 1],
      ["members:", 10],
      ["# region braces", 7, "region"],
      ["knee:", 5],
      ["between:", 2],
      ["joints:", 5],
      ["head: {", 3],
      ["piers:", 1],
      ["accept:", 6],
      ['- {check: tenon-thin, at: head@A1, because: "one', 2],
      ["- check: site-value-missing", 2],
      ['because: "two', 1],
    ]);
  });
});

const within = (inner: Range, outer: Range): boolean =>
  before(outer.start, inner.start) && before(inner.end, outer.end);
const before = (a: Range["start"], b: Range["start"]): boolean =>
  a.line < b.line || (a.line === b.line && a.character <= b.character);

function expectNested(symbols: readonly DocumentSymbol[], outer: Range): void {
  for (const { name, range, selectionRange, children = [] } of symbols) {
    expect(name).not.toBe("");
    expect(within(range, outer), `${name} within what holds it`).toBe(true);
    expect(within(selectionRange, range), `the name of ${name} within it`).toBe(true);
    expectNested(children, range);
  }
}

test.each(readdirSync("samples").filter((file) => file.endsWith(".yaml")))(
  "in %s all ranges nest",
  (file) => {
    const text = readText(readFileSync(`samples/${file}`, "utf8"));
    const { lineCount } = text.document;
    const symbols = symbolsOf(text);
    expect(symbols.map(({ name }) => name)).toContain("members");
    expectNested(symbols, { start: { line: 0, character: 0 }, end: { line: lineCount, character: 0 } });
    const folds = foldingRangesOf(text);
    expect(folds.length).toBeGreaterThan(4);
    for (const a of folds) {
      expect(a.endLine).toBeGreaterThan(a.startLine);
      for (const b of folds)
        if (b.startLine > a.startLine && b.startLine <= a.endLine)
          expect(b.endLine).toBeLessThanOrEqual(a.endLine);
    }
  },
);
