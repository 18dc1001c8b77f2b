import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { walkTree } from "../../server/document/read-yaml.ts";
import { placeOf } from "./facts.ts";
import { PAVILION } from "./samples.ts";

/** Whatever the text: an answer in time, every fact and every place inside the text and on one line. */
function holds(text: string): void {
  const start = performance.now();
  const reading = readFrame(text);
  expect(performance.now() - start).toBeLessThan(20_000);
  const onOneLine = (range: { readonly start: number; readonly end: number }): void => {
    expect(range.start).toBeGreaterThanOrEqual(0);
    expect(range.end).toBeGreaterThanOrEqual(range.start);
    expect(range.end).toBeLessThanOrEqual(text.length);
    expect(text.slice(range.start, range.end)).not.toMatch(/[\r\n]/);
  };
  for (const fact of reading.source.facts) onOneLine(placeOf(reading, fact));
  for (const { pointer } of walkTree(reading.index.root)) {
    onOneLine(reading.index.range(pointer));
    onOneLine(reading.index.keyRange(pointer));
  }
  for (const offset of [0, text.length >> 1, text.length]) reading.index.pathAt(offset);
}

const SIGNS = [
  "{",
  "}",
  "[",
  "]",
  ",",
  ":",
  ": ",
  "#",
  " #",
  '"',
  "'",
  "\n",
  "\n  ",
  "\t",
  "-",
  "- ",
  "&a ",
  "*a",
  "|",
  ">",
  "!",
  "%",
  "@",
  "?",
  "<<: ",
  "\r\n",
  "\0",
  "\uD83E",
  "½",
  "~",
  "0",
  "e9",
  "\\",
];

describe("reading", () => {
  it("survives a file that ends anywhere", () => {
    fc.assert(
      fc.property(fc.nat(PAVILION.length), (length) => holds(PAVILION.slice(0, length))),
      { numRuns: 30 },
    );
  }, 60_000);

  it("survives signs put in and characters taken out", () => {
    const change = fc.record({
      at: fc.nat(PAVILION.length),
      sign: fc.constantFrom("", ...SIGNS),
      drop: fc.nat(3),
    });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 6 }), (changes) => {
        let text = PAVILION;
        for (const { at, sign, drop } of changes) text = text.slice(0, at) + sign + text.slice(at + drop);
        holds(text);
      }),
      { numRuns: 80 },
    );
  }, 60_000);

  it("survives any heap of signs", () => {
    const heap = fc.array(
      fc.oneof(fc.constantFrom(...SIGNS, "a", "post", "kind", " ", "  "), fc.string({ maxLength: 4 })),
      { maxLength: 60 },
    );
    fc.assert(
      fc.property(heap, (parts) => holds(parts.join(""))),
      { numRuns: 300 },
    );
  }, 60_000);

  it("survives lines that change places", () => {
    const rows = PAVILION.split("\n");
    fc.assert(
      fc.property(fc.shuffledSubarray(rows, { minLength: 5 }), (some) => holds(some.join("\n"))),
      { numRuns: 30 },
    );
  }, 60_000);

  it("gives the same answer twice", () => {
    fc.assert(
      fc.property(fc.nat(PAVILION.length), (at) => {
        const text = `${PAVILION.slice(0, at)}"${PAVILION.slice(at)}`;
        expect(readFrame(text).source).toEqual(readFrame(text).source);
      }),
      { numRuns: 20 },
    );
  }, 60_000);
});
