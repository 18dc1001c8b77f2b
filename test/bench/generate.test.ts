import { describe, expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { type FrameShape, frameText, shapeOf, timbersOf } from "./generate.ts";
import { KEYSTROKES, keystrokes, measure, WHERE } from "./measure.ts";

const shapes: readonly (readonly [string, FrameShape])[] = [
  ["of size 30", shapeOf(30)],
  ["of size 100", shapeOf(100)],
  ["of size 300", shapeOf(300)],
  [
    "with inner walls and joists, without braces",
    { bents: 4, walls: 4, braces: false, joists: 3, rafters: 14 },
  ],
  [
    "with bents half as far apart and a second floor",
    { bents: 5, walls: 2, braces: true, joists: 14, rafters: 9, dense: true },
  ],
];

describe("a generated frame", () => {
  test.each(shapes)("%s is free of errors and warnings and has the timbers it says", (_, shape) => {
    const { findings, faults, evaluation } = createFrameService().open("file:///a", 1, frameText(shape));
    // a hall without braces is drawn and measured, but it racks
    const excused = (check: string): boolean => !shape.braces && check === "frame-racks";
    const wrong = findings.filter(({ finding }) => finding.level !== "note" && !excused(finding.check));
    expect(wrong.map(({ finding }) => finding.message)).toEqual([]);
    expect(faults).toEqual([]);
    expect(evaluation?.model.timbers).toHaveLength(timbersOf(shape));
  });

  test.each([30, 100, 300, 1000, 3000])("of size %i is of about that size", (size) => {
    const { bents, joists } = shapeOf(size);
    expect(Math.abs(timbersOf(shapeOf(size)) / size - 1)).toBeLessThanOrEqual(0.11);
    expect(Number.isInteger(bents) && Number.isInteger(joists)).toBe(true);
  });
});

describe("measuring", () => {
  test.each(WHERE)("a keystroke (%s) changes one character", (where) => {
    const [before, after] = keystrokes(frameText(shapeOf(30)), KEYSTROKES[where]);
    const differ = [...before].filter((char, i) => char !== after[i]);
    expect([before.length, differ.length]).toEqual([after.length, 1]);
  });

  test.each([
    ["depth", "forces"],
    ["loads", "frame"],
    ["section", "nothing"],
  ] as const)("after a keystroke (%s) what serves again: %s", (where, leaves) => {
    const service = createFrameService();
    const [before, after] = keystrokes(frameText(shapeOf(30)), KEYSTROKES[where]).map(
      (text, version) => service.open("file:///a", version, text).evaluation?.results.frame?.solution,
    );
    expect(before).toBeDefined();
    expect(after === before).toBe(leaves === "forces");
    expect(after?.prepared === before?.prepared).toBe(leaves !== "nothing");
  });

  test("a text with no such number cannot be measured", () => {
    expect(() => keystrokes("frame: Shed\n", KEYSTROKES.depth)).toThrow("nothing of that kind");
  });

  test("a row holds the name, the timbers and the times", () => {
    const shape = shapeOf(30);
    const row = measure("small", frameText(shape), {
      warm: 1,
      warmFor: 0,
      warmMost: 5000,
      count: 3,
      budget: 5000,
    });
    expect(row).toEqual({
      name: "small",
      timbers: timbersOf(shape),
      ms: { depth: expect.any(Number), loads: expect.any(Number), section: expect.any(Number) },
    });
    expect(row.ms.depth).toBeGreaterThan(0);
    expect(row.ms.section).toBeGreaterThan(row.ms.depth ?? 0);
  });
});
