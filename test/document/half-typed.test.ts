import { describe, expect, it } from "vitest";
import type { Frame } from "../../server/core/frame/frame.ts";
import { type Reading, readFrame } from "../../server/document/read.ts";
import { lines, placeOf } from "./facts.ts";
import { PAVILION } from "./samples.ts";

const ROWS = PAVILION.split("\n");
const SOUND = readFrame(PAVILION).frame;

/** Facts that do not lie on the line, as text. */
function elsewhere(reading: Reading, row: number, line: string): readonly string[] {
  const start = row === 0 ? 0 : ROWS.slice(0, row).join("\n").length + 1;
  return lines(reading).filter((_, i) => {
    const fact = reading.source.facts[i];
    const place = fact && placeOf(reading, fact);
    return place === undefined || place.start < start || place.end > start + line.length + 1;
  });
}

const ENTRIES = new Set([...SOUND.members, ...SOUND.joints].map((entry) => entry.name));

/** Everything of the frame but the entry of that name. */
function without(frame: Frame, name: string): unknown {
  const others = <T extends { readonly name: string }>(list: readonly T[]): readonly T[] =>
    list.filter((each) => each.name !== name);
  return {
    ...frame,
    classes: others(frame.classes),
    members: others(frame.members),
    joints: others(frame.joints),
    unread: new Set(),
    joinsWhole: true,
  };
}

describe("a line that is being typed", () => {
  it("is the only one with findings, wherever it is cut off", () => {
    for (const [row, whole] of ROWS.entries()) {
      if (row >= ROWS.length - 2) continue;
      for (let end = whole.search(/\S/) + 1; end < whole.length; end += 9) {
        const line = whole.slice(0, end);
        const reading = readFrame([...ROWS.slice(0, row), line, ...ROWS.slice(row + 1)].join("\n"));
        expect(elsewhere(reading, row, line), `${row + 1}: ${line}`).toEqual([]);
      }
    }
  }, 60_000);

  it("takes only its own entry with it", () => {
    for (const [row, whole] of ROWS.entries()) {
      const name = /^ {2}([\w-]+): +\{kind/.exec(whole)?.[1];
      if (name === undefined || !ENTRIES.has(name)) continue;
      for (let end = 4; end < whole.length; end += 11) {
        const line = whole.slice(0, end);
        const { frame } = readFrame([...ROWS.slice(0, row), line, ...ROWS.slice(row + 1)].join("\n"));
        expect(without(frame, name), line).toEqual(without(SOUND, name));
      }
    }
  }, 60_000);

  const BEGUN = [
    "x",
    "xy:",
    "x:1",
    "x: {",
    "x: [",
    'x: "',
    "x: '",
    "- a",
    "-",
    "{",
    "}",
    "[",
    "]",
    "&a",
    "*a",
    "!t",
    "x: *a",
    "x: @",
    "x: {a: ",
    "x: {a",
    "x: {a: 1,",
    "x: {kind: post, at: [A1, ",
    "x: a: b",
    'x: {a: "b}',
    "x y",
    "8'-6\"",
    "x: }",
    "x: ]",
    "…",
    "x: {{",
    "x: [[",
    "x: #1",
    "x: {a: #1}",
    ",",
    "x,",
    "<<: 1",
    "<<",
    "<<: {",
    "\tx: 1",
    '"',
    "'",
  ];

  it("changes nothing else when it is begun between two members", () => {
    const row = ROWS.findIndex((line) => line.startsWith("  tie:"));
    for (const begun of BEGUN) {
      for (const indent of ["  ", "    "]) {
        const line = indent + begun;
        const reading = readFrame([...ROWS.slice(0, row), line, ...ROWS.slice(row)].join("\n"));
        expect(elsewhere(reading, row, line), JSON.stringify(line)).toEqual([]);
        expect({ ...reading.frame, unread: new Set(), joinsWhole: true }, JSON.stringify(line)).toEqual(
          SOUND,
        );
        expect(reading.source.facts.length, JSON.stringify(line)).toBeGreaterThan(0);
      }
    }
  });

  it("changes nothing else when a new heading is begun between two sections", () => {
    const row = ROWS.findIndex((line) => line.startsWith("joints:"));
    for (const begun of BEGUN) {
      const reading = readFrame([...ROWS.slice(0, row), begun, ...ROWS.slice(row)].join("\n"));
      expect(elsewhere(reading, row, begun), begun).toEqual([]);
      expect({ ...reading.frame, unread: new Set(), joinsWhole: true }, begun).toEqual(SOUND);
    }
  });

  it("keeps quiet about the names that it may be about to define", () => {
    const { frame } = readFrame(PAVILION.replace(/^ {2}plate: .*$/m, "  pla"));
    expect(frame.unread).toEqual(new Set(["pla", "plate"]));
    expect(readFrame(PAVILION.replace(/^ {2}plate: .*$/m, "  xy")).frame.unread).toEqual(new Set(["xy"]));
  });

  it("keeps the lines below a heading that has lost its colon", () => {
    const reading = readFrame(PAVILION.replace("members:", "members"));
    expect(lines(reading)).toEqual(['missing-separator /members colon "members" → members:']);
    expect(reading.frame.members).toEqual(SOUND.members);
  });

  it("keeps the lines below a heading that was given a value", () => {
    const reading = readFrame(PAVILION.replace("members:", "members: x"));
    expect(elsewhere(reading, ROWS.indexOf("members:"), "members: x")).toEqual([]);
    expect(reading.frame.members).toEqual(SOUND.members);
  });

  it("keeps a section whose heading was moved in by a blank", () => {
    const reading = readFrame(PAVILION.replace("members:", " members:"));
    expect(lines(reading)).toHaveLength(1);
    expect(reading.frame.members).toEqual(SOUND.members);
  });
});
