/**
 * What hovers say, as text to read: the whole of each under `hovers/`, and beside that the numbers that can be worked
 * out by hand.
 */
import { describe, expect, test } from "vitest";
import { createFrameService } from "../../server/language/frame-service.ts";
import { type FrameHover, hoverAt } from "../../server/language/hover.ts";
import { readFixture } from "../fixtures.ts";
import { SHED_IN_SNOW } from "../shed.ts";

/** The shed with a roof. */
const ROOFED = `${SHED_IN_SNOW}roof:
  kind: gable
  pitch: 8:12
  rafters: {section: 3x6, spacing: 30 in, seat: {kind: birds-mouth}, overhang: {eave: 12 in, rake: 8 in}}
`;

/** @param marked a text with `$0` where the mouse rests */
function hover(marked: string): FrameHover | undefined {
  const { text, cursor } = readFixture(marked);
  if (!cursor) throw new Error("no cursor in the fixture");
  return hoverAt(createFrameService().open("file:///hover.frame.yaml", 1, text), cursor);
}

/** The text of a hover, the mouse resting at the end of some words of the shed (before their colon). */
function over(words: string, source = ROOFED): string {
  expect(source.split(words).length, `${words} is there once`).toBe(2);
  const marked = words.endsWith(":") ? `${words.slice(0, -1)}$0:` : `${words}$0`;
  return hover(source.replace(words, () => marked))?.contents.value ?? "";
}

/** The cell of the first table row that holds all the words. */
function row(markdown: string, ...words: readonly string[]): string[] {
  const found = markdown
    .split("\n")
    .filter((line) => line.startsWith("| "))
    .map((line) =>
      line
        .slice(1, -1)
        .split("|")
        .map((cell) => cell.trim()),
    )
    .find((cells) => words.every((word) => cells.includes(word)));
  expect(found, `${words.join(", ")} in\n${markdown}`).toBeDefined();
  return found ?? [];
}

describe("whole hovers", () => {
  test.each([
    ["timber", "\n  tie:"],
    ["one stick of it", "[A1"],
    ["brace", "\n  knee:"],
    ["rafters", "\n  rafters"],
    ["joint", "\n  post-head"],
    [
      "joint size",
      "pegs: {count: 2, diameter: 3/4 in}}\n  tie-end: {kind: mortise-and-tenon, of: tie, into: post, housing: 1/2",
    ],
    ["birds-mouth", "seat: {kind: birds"],
    ["piers", "\n  all"],
    ["species", "eastern-white"],
    ["length", "overhang: 12"],
    ["section", "kind: tie, section: 8x1"],
    ["load", "ground: 30"],
    ["pitch", "pitch: 8:1"],
    ["level", "from: pier"],
    ["key", "\n  frost"],
    ["choice", "exposure: partially"],
  ])("%s", async (name, words) => {
    await expect(`${over(words)}\n`).toMatchFileSnapshot(`hovers/${name.replaceAll(" ", "-")}.txt`);
  });
});

test("a section stays in inches, also where a side has a foot of them", () => {
  expect(over("kind: tie, section: 8x1", ROOFED.replace("section: 8x10", "section: 8x12"))).toContain(
    "**8 × 12 in (203 × 305 mm)**",
  );
});

describe("a timber", () => {
  // Between walls 10 ft apart, outside to outside: 120 - 2 x 8 between the posts, 1/2 in housings, 4 in tenons.
  test("its true length and its wood (worked by hand)", () => {
    const length = 120 - 16 + 2 * 0.5 + 2 * 4;
    expect(length).toBe(113);
    const cells = row(over("\n  tie:"), "1, 2");
    expect(cells[1]).toBe(`9'-5" (2870 mm)`);
    expect(cells[2]).toBe(`8'-9"`);
    // Board feet: thickness x width x length / 12 (published: BFTAB of test/reference/geometry.yaml).
    expect(cells[3]).toBe(((8 * 10 * (length / 12)) / 12).toFixed(1));
  });

  test("in a file of millimetres", () => {
    const metric = ROOFED.replace("units: inch", "units: mm").replaceAll(
      /section: (\d+x\d+)/g,
      "section: $1 in",
    );
    const text = over("\n  tie:", metric);
    expect(text).toContain(`2870 mm (9'-5")`);
    expect(row(text, "1, 2")[3]).toBe((0.2032 * 0.254 * 2.8702).toFixed(3));
    expect(text).toMatch(/\d kg +\|/);
    expect(text).not.toMatch(/\d lb/);
  });

  test("a planed one is sold by its nominal size", () => {
    const planed = ROOFED.replace("section: 3x6, spacing", "section: 2x6 nominal, spacing");
    const cells = row(over("\n  rafters", planed), "all 12");
    const feet = /^(\d+)'-([\d /]+)"/.exec(cells[1] ?? "");
    const [whole = "0", part = "0/1"] = (feet?.[2] ?? "").split(" ");
    const [above = 0, below = 1] = part.split("/").map(Number);
    const length = Number(feet?.[1]) * 12 + Number(whole) + above / below;
    expect(Number(cells[3])).toBeCloseTo((2 * 6 * (length / 12)) / 12, 1);
  });

  test("names its reference faces in one line", () => {
    expect(over("\n  tie:")).toMatch(/\nReference faces: 1 looks outward, .*; 2 is the top\.\n/);
    expect(over("\n  tie:", ROOFED.replace("bents: [1, 2], from: A", "bents: [1], from: A"))).toContain(
      "\nReference faces: face 1 looks out of bent 1, face 2 is the top.\n",
    );
  });

  test("left long to scribe: longer to cut by an inch at each end, and it says so", () => {
    const cutLength = (text: string): string =>
      / \| ([^|]*?) +\| /.exec(text.split("\n")[4] ?? "")?.[1] ?? "";
    const scribed = ROOFED.replace("kind: brace-tenon,", "kind: brace-tenon, rule: scribe,");
    expect(scribed).not.toBe(ROOFED);
    const [was, now] = [over("\n  knee:"), over("\n  knee:", scribed)];
    expect(was).not.toContain("scribe");
    expect(now).toContain("with tenons and what is left long to scribe.");
    const inch = (text: string): number => Number(/\((\d+) mm\)/.exec(cutLength(text))?.[1]) / 25.4;
    expect(Math.abs(inch(now) - inch(was) - 2)).toBeLessThan(0.05);
    const joint = over("\n  knee-ends", scribed);
    expect(row(joint, "left long at this end")[2]).toBe("1 in");
    expect(joint).toContain("scribed: hold it in its place, mark both timbers there, then cut");
  });

  test("the same wherever it is named", () => {
    const whole = over("\n  tie:");
    expect(over("of: tie")).toBe(whole);
    expect(over("\n  knee: {kind: brace, section: 4x6, between: [post")).toBe(over("\n  post:"));
  });

  test("without a wood it has no weight, and says so", () => {
    const text = over("\n  tie:", ROOFED.replace("species: eastern-white-pine, ", ""));
    expect(text).toContain("No weight is recorded for this wood.");
    expect(text).toContain(`9'-5"`);
  });

  test("with a weight of its own", () => {
    const text = over("\n  tie:", ROOFED.replace("seasoning: green}", "seasoning: green, weight: 40 pcf}"));
    const cubicFeet = (8 * 10 * 113) / 12 ** 3;
    expect(row(text, "1, 2").at(-1)).toBe(`${Math.round(40 * cubicFeet)} lb`);
    expect(text).toContain("given in the file");
  });
});

describe("a joint", () => {
  test("shows sizes of the file and what follows from them", () => {
    const text = over("\n  tie-end");
    expect(row(text, "tie", "tenon thickness")[2]).toBe("2 in");
    expect(row(text, "tie", "tenon length")[2]).toBe("4 in");
    expect(row(text, "post", "housing depth")[2]).toBe("1/2 in");
    expect(row(text, "post", "reference face to far cheek")[2]).toBe("4 in");
  });

  test("a size finer than a sixteenth stays what it is", () => {
    const text = over(
      "\n  tie-end",
      ROOFED.replace("of: tie, into: post, housing: 1/2 in", "of: tie, into: post, housing: 15/32 in"),
    );
    expect(row(text, "post", "housing depth")[2]).toBe("15/32 in");
  });

  test("one table where all places are equal, else one for each kind of place", () => {
    expect(over("\n  post-head").match(/^\| on /gm)).toHaveLength(1);
    expect(over("\n  post-head")).toContain("The same at A1, A2, B1 and B2:");
    const two = ROOFED.replace("leg: 30 in", "legs: {post: 30 in, plate: 24 in}");
    expect(over("\n  knee-ends", two).match(/^\| on /gm)).toHaveLength(3);
  });

  test("every size in it leads to the cut sizes, the timbers it names do not", () => {
    const sheet = over("\n  post-head");
    const table = sheet.slice(sheet.indexOf("| on "), sheet.lastIndexOf("|"));
    expect(over("into: plate, tenon")).toContain(table);
    expect(over("of: post, into")).not.toContain(table);
  });

  // Seat and slope by plane trigonometry (derived: BIRD of test/reference/geometry.yaml).
  test("a bird's mouth", () => {
    const text = over("seat: {kind: birds");
    const angle = Math.atan(8 / 12);
    const seat = Math.floor((6 / 4 / Math.sin(angle)) * 4) / 4;
    expect(row(text, "level seat")[2]).toBe("2 1/2 in");
    expect(seat).toBe(2.5);
    expect(row(text, "slope")[2]).toBe(`${((angle * 180) / Math.PI).toFixed(1)}°`);
    expect(row(text, "plumb (heel) cut")[2]).toBe("1 11/16 in");
    expect(Math.round(seat * (8 / 12) * 16)).toBe(27);
  });
});

describe("where there is nothing to say", () => {
  test.each([
    ["a comment", "# a shed$0\nframe: Shed\n"],
    ["between entries", "frame: Shed\n$0\nunits: inch\n"],
    ["an empty file", "$0"],
    ["a bracket", "grid: {walls: {A: 0}$0}\n"],
    ["a key that the language does not know", "nonsense$0: 3\n"],
    ["noise", "\u0000\u0001$0\u0002"],
  ])("%s", (_, text) => expect(hover(text)).toBeUndefined());
});

test("the range is that of the key or value under the mouse", () => {
  const at = (marked: string) => hover(marked)?.range;
  expect(at("frame: Shed\nunits: in$0ch\n")).toEqual({
    start: { line: 1, character: 7 },
    end: { line: 1, character: 11 },
  });
  expect(at("frame: Shed\nun$0its: inch\n")).toEqual({
    start: { line: 1, character: 0 },
    end: { line: 1, character: 5 },
  });
});

test("the caution stands once, and only where something is engineered", () => {
  const caution = /licensed engineer/g;
  expect(over("\n  tie:").match(caution)).toHaveLength(1);
  expect(over("into: plate, tenon").match(caution)).toHaveLength(1);
  expect(over("overhang: 12")).not.toMatch(caution);
});

test("names of the file cannot write Markdown", () => {
  const text = over("\n  t_i_e:", ROOFED.replace("\n  tie: {", "\n  t_i_e: {"));
  expect(text).toContain("**t\\_i\\_e**");
});
