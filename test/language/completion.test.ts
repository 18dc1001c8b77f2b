/** What is offered where, with the cursor at `$0`, in every way that a text can reach us. */
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { gradeIds } from "../../server/core/wood/design-values.ts";
import { speciesIds } from "../../server/core/wood/species.ts";
import { completionsAt } from "../../server/language/completion.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { ROOFED } from "../roofed-shed.ts";
import { completed, PLAIN, SNIPPETS, variantsOf } from "./completion-text.ts";

const HEAD = `frame: Try
timber: {frame: {species: white-oak}}
grid: {walls: {A: 0, B: 9 ft}, bents: {1: 0, 2: 9 ft}, levels: {low: 1 ft, eave: 8 ft}}
`;
const POSTS = "  post: {kind: post, section: 8x8, at: [A1, A2], from: low, to: eave}\n";

/** The labels, the same in every variant. */
function labels(written: string, trigger?: string): readonly string[] {
  const all = variantsOf(written).map(({ text, offset }) =>
    completed(text, offset, SNIPPETS, trigger).items.map(({ label }) => label),
  );
  for (const one of all) expect(one, written).toEqual(all[0]);
  return all[0] ?? [];
}

/** What choosing a label makes of the text, with `$0` where the cursor is then. */
function chosen(written: string, label: string, able = SNIPPETS): string {
  const all = variantsOf(written).map(({ text, offset }, i) => {
    const { items, choose } = completed(text, offset, able);
    const item = items.find((each) => each.label === label);
    if (!item) throw new Error(`${label} is not among ${items.map((each) => each.label)}`);
    const { text: made, cursor } = choose(item);
    const whole = `${made.slice(0, cursor)}$0${made.slice(cursor)}`;
    return i === 1 ? whole.replaceAll("\r\n", "\n") : whole.replace(/^\uFEFF|^# 🪵 🪓\n/, "");
  });
  for (const one of all) expect(one).toEqual(all[0]);
  return all[0] ?? "";
}

describe("keys", () => {
  test("those that must be there come first, those that are there do not come", () => {
    expect(labels("$0").slice(0, 4)).toEqual(["timber", "grid", "members", "frame"]);
    expect(labels("members:\n  knee: {kind: brace, leg: 24 in, $0}").slice(0, 3)).toEqual([
      "section",
      "between",
      "turned",
    ]);
    expect(labels("members:\n  knee: {kind: brace, $0leg: 24 in}")).not.toContain("leg");
    expect(labels("timber:\n  oak:\n    species: white-oak\n    values: {Fb: 900 psi}\n    $0")[0]).toBe(
      "because",
    );
  });

  test("follow the kind, which comes first; before it, what all kinds share", () => {
    expect(labels("piers:\n  all: {$0}")).toEqual([
      "kind",
      "under",
      "at",
      "depth",
      "top",
      "lateral",
      "anchor",
      "rebar",
    ]);
    const tube = labels("piers:\n  all:\n    kind: tube\n    $0\n");
    expect(tube[0]).toBe("diameter");
    expect(tube).toContain("footing");
    expect(labels("piers:\n  all:\n    $0\n    kind: pad\n")).not.toContain("footing");
  });

  test("by the lines of the grid, the legs of a brace and the sticks that can be measured", () => {
    expect(labels(`${HEAD}site:\n  ground:\n    A: 0\n    $0`)).toEqual([
      "B",
      "1",
      "2",
      "A1",
      "A2",
      "B1",
      "B2",
    ]);
    expect(labels(`${HEAD}members:\n${POSTS}  knee: {kind: brace, legs: {$0}}`)).toEqual(["post", "brace"]);
    const text = `${HEAD}members:\n${POSTS}`;
    const service = createFrameService();
    service.open("file:///a", 1, text);
    const typed = text.replace("to: eave}", "to: eave, measured: {}}");
    const document = TextDocument.create("file:///a", "yaml", 2, typed);
    const at = document.positionAt(typed.indexOf("measured: {") + 11);
    const known = service.drawable("file:///a");
    expect(completionsAt(document, at, PLAIN, known).map(({ label }) => label)).toContain("post@A1");
  });

  test("the roof's own rafters, one by one, where they can be measured", () => {
    const service = createFrameService();
    service.open("file:///r", 1, ROOFED);
    const typed = ROOFED.replace("rafters: {section: 4x6,", "rafters: {section: 4x6, measured: {},");
    const document = TextDocument.create("file:///r", "yaml", 2, typed);
    const at = document.positionAt(typed.indexOf("measured: {") + 11);
    const offered = completionsAt(document, at, PLAIN, service.drawable("file:///r")).map(
      ({ label }) => label,
    );
    expect(offered).toContain("rafter@A.1");
    expect(offered).toContain("width");
    expect(offered.filter((label) => label.startsWith("post@"))).toEqual([]);
  });

  test("kinds of seats, and what each takes", () => {
    const seat = (keys: string) => labels(`${HEAD}roof:\n  kind: gable\n  rafters:\n    seat: {${keys}$0}`);
    expect(seat("kind: ")).toEqual(["birds-mouth", "step-lap"]);
    expect(seat("kind: step-lap, ")).toEqual(expect.arrayContaining(["length", "form", "housing", "rule"]));
    expect(seat("kind: birds-mouth, ")).not.toContain("form");
    expect(seat("kind: step-lap, form: ")).toEqual(["plumb", "square"]);
  });

  test.each([
    ["a scalar", "site:\n  $0", "soil", "site:\n  soil: $0"],
    ["a map, one step of the file’s own in", "site:\n    so$0", "snow", "site:\n    snow:\n        $0"],
    ["a list of maps", "mill:\n  $0", "logs", "mill:\n  logs:\n    - $0"],
    ["in an item of a list", "mill:\n  logs:\n    - $0", "count", "mill:\n  logs:\n    - count: $0"],
    [
      "in the second line of an item",
      "mill:\n  logs:\n    - count: 3\n      le$0",
      "length",
      "mill:\n  logs:\n    - count: 3\n      length: $0",
    ],
    [
      "a list of names",
      "members:\n  knee:\n    kind: brace\n    $0\n    leg: 2 ft",
      "between",
      "members:\n  knee:\n    kind: brace\n    between: [$0]\n    leg: 2 ft",
    ],
    [
      "in braces",
      "members: {knee: {kind: brace, $0}}",
      "curve",
      "members: {knee: {kind: brace, curve: {$0}}}",
    ],
    [
      "before others",
      "members: {knee: {$0kind: brace}}",
      "section",
      "members: {knee: {section: $0, kind: brace}}",
    ],
    [
      "in braces over several lines",
      "members: {knee: {kind: brace,\n  $0\n  leg: 2 ft}}",
      "curve",
      "members: {knee: {kind: brace,\n  curve: {$0},\n  leg: 2 ft}}",
    ],
    [
      "in braces that are still open",
      "members:\n  knee: {kind: brace, $0\n  tie: {kind: tie}",
      "leg",
      "members:\n  knee: {kind: brace, leg: $0\n  tie: {kind: tie}",
    ],
    ["before a note", "site:\n  $0 # here", "snow", "site:\n  snow: $0 # here"],
    ["in place of another", "site:\n  so$0il: sand", "elevation", "site:\n  elevation$0: sand"],
    ["over lines that wait for it", "memb$0\n  a: {}\n", "members", "members:$0\n  a: {}\n"],
  ])("%s", (_, written, label, expected) => {
    expect(chosen(written, label)).toBe(expected);
  });

  const KNEE = "  knee:\n    kind: brace\n    leg: 2 ft\n";
  test.each([
    [
      "of a section, at column 0",
      `members:\n$0\n${POSTS}`,
      "king-post",
      `members:\n  king-post: {kind: king-post, section: 8x8, bents: [1, 2], from: tie, to: ridge}$0\n${POSTS}`,
    ],
    [
      "under a name that is free",
      `members:\n${POSTS}  $0\njoints: {}`,
      "post",
      `members:\n${POSTS}  post-2: {kind: post, section: 8x8, at: [A1, A2, B1, B2], from: pier-top, to: plate}$0\njoints: {}`,
    ],
    [
      "with what it usually has",
      `members:\n  $0\n${POSTS}`,
      "brace",
      `members:\n  knee: {kind: brace, section: 4x6, between: [post, plate], leg: 30 in}$0\n${POSTS}`,
    ],
    [
      "in lines, as the others are",
      `members:\n${KNEE}$0\n  tie: {}`,
      "brace",
      `members:\n${KNEE}  knee-2:\n    kind: brace\n    section: 4x6\n    between: [post, plate]\n    leg: 30 in$0\n  tie: {}`,
    ],
    [
      "of an empty section",
      "joints:\n  $0\n",
      "pocket",
      "joints:\n  joist-end: {kind: pocket, of: joist, into: tie, housing: 1 1/2 in}$0\n",
    ],
    [
      "in braces",
      "piers: {$0}",
      "pad",
      "piers: {all: {kind: pad, under: post, width: 24 in, depth: 48 in, anchor: {kind: embedded-strap, stand-off: 1 in}}$0}",
    ],
    [
      "in braces before others",
      "piers: {$0all: {kind: tube}}",
      "pad",
      "piers: {all-2: {kind: pad, under: post, width: 24 in, depth: 48 in, anchor: {kind: embedded-strap, stand-off: 1 in}}, $0all: {kind: tube}}",
    ],
    ["of the grid", "grid:\n  walls: {A: 0, B: 9 ft, $0}", "C", "grid:\n  walls: {A: 0, B: 9 ft, C: $0}"],
    ["of a list, with its dash", "accept:\n  $0\n", "check", "accept:\n  - check: $0\n"],
    [
      "of a list, where its dashes stand",
      "mill:\n  logs:\n    - count: 3\n$0\n    - count: 2\n",
      "length",
      "mill:\n  logs:\n    - count: 3\n    - length: $0\n    - count: 2\n",
    ],
    [
      "of a list, but not within one of its items",
      "mill:\n  logs:\n    - count: 3\n    $0\n      length: 9 ft\n",
      "small-end",
      "mill:\n  logs:\n    - count: 3\n      small-end: $0\n      length: 9 ft\n",
    ],
  ])("a new entry %s", (_, written, label, expected) => {
    expect(chosen(written, label)).toBe(expected);
  });

  test("a new entry has the name typed over first, then each of its values; without snippets it has what it must have", () => {
    const text = "members:\n  ";
    const item = completed(text, text.length).items.find(({ label }) => label === "brace");
    expect(item?.textEdit?.newText).toBe(
      `\${1:knee}: {kind: brace, section: \${2:4x6}, between: [\${3:post}, \${4:plate}], leg: \${5:30 in}\\}`,
    );
    expect(item?.detail).toBe("new brace");
    expect(chosen("members:\n  $0\n", "brace", PLAIN)).toBe(
      "members:\n  knee: {kind: brace, section: , between: []}$0\n",
    );
  });

  test("of the sections, those come first that follow the one above", () => {
    const whole = `${HEAD}members:\n${POSTS}$0\npiers:\n  all: {}\n`;
    expect(labels(whole).slice(0, 2)).toEqual(["joints", "roof"]);
    expect(labels(whole).at(-1)).toBe("mill");
  });

  test("without snippets the brackets come closed", () => {
    const made = chosen("members: {knee: {kind: brace, $0}}", "between", PLAIN);
    expect(made).toBe("members: {knee: {kind: brace, between: []$0}}");
  });

  test("say what they mean, as Markdown where that is shown", () => {
    const text = "site:\n  ";
    const [marked, plain] = [SNIPPETS, PLAIN].map((able) =>
      completed(text, text.length, able).items.find(({ label }) => label === "frost-depth"),
    );
    expect(marked?.documentation).toEqual({
      kind: "markdown",
      value: "**frost-depth** · How deep the ground freezes.\n\nExample: `frost-depth: 32 in`",
    });
    expect(plain?.documentation).toBe("How deep the ground freezes.");
  });
});

describe("values", () => {
  const members = (line: string): string => `${HEAD}members:\n${POSTS}${line}\n`;
  test.each<readonly [string, string, readonly string[]]>([
    ["choices", "site: {soil: $0}", ["sand", "gravel", "clay", "sedimentary-rock", "bedrock"]],
    ["true and false", members("  tie: {kind: tie, turned: $0}"), ["true", "false"]],
    ["timber classes", members("  tie: {kind: tie, timber: $0}"), ["frame"]],
    ["levels", members("  tie: {kind: tie, top: $0}"), ["low", "eave"]],
    ["walls", members("  tie: {kind: tie, walls: [A, $0]}"), ["B"]],
    ["bents, in a block", members("  tie:\n    kind: tie\n    bents:\n      - 1\n      - $0"), ["2"]],
    ["places that are not listed yet", members("  p: {kind: post, at: [A1, $0, B2]}"), ["A2", "B1"]],
    ["timbers", `${members("  tie: {kind: tie}")}joints: {j: {kind: housed, of: $0}}`, ["post", "tie"]],
    ["units", "site:\n  snow: {ground: 30 $0}", ["psf", "kPa"]],
    ["units without a blank", "site:\n  wind: {speed: 100$0}", ["mph", "m/s", "km/h"]],
    ["units of the file first", "units: mm\nsite:\n  elevation: 5 $0", ["mm", "m", "cm", "ft", "in"]],
    [
      "units behind a fraction",
      "joints: {j: {kind: housed, housing: 1 1/2 $0}}",
      ["ft", "in", "mm", "m", "cm"],
    ],
    ["units of a density", "timber: {f: {weight: 47 1/2 $0}}", ["pcf", "kg/m³"]],
    ["units of a stress", "timber: {f: {values: {Fb: 900 $0}}}", ["psi", "ksi", "MPa", "GPa"]],
    ["units of a load", "floors: {loft: {live: 20 $0}}", ["psf", "kPa"]],
    ["units of a force", "crew: {each: 80 $0, people: 2}", ["lb", "kip", "kg", "kN", "N"]],
    ["units of an area", "siding: {A: {openings: 8½ $0}}", ["ft²", "m²"]],
    ["inches behind feet", "site:\n  elevation: 5 ft 6 1/2 $0", ["in"]],
    ["units along a wall", members("  p: {kind: post, at: A@4 $0}"), ["ft", "in", "mm", "m", "cm"]],
    ["what a section is", members("  p: {kind: post, section: 2x8 $0}"), ["nominal", "in", "mm"]],
    ["in braces that are still open", "site:\n  wind: {flow: cl$0\n  soil: sand", ["clear", "obstructed"]],
    ["nothing in a comment", "site:\n  soil: sand # $0", []],
    ["nothing in a comment of its own", "site:\n  # $0\n  soil: sand", []],
    ["nothing in quotes", 'site:\n  soil: "$0"', []],
    ["nothing in free words", "frame: My $0", []],
    ["nothing behind a whole value", "site: {soil: sand $0}", []],
    ["nothing that would take lines away", `members:\n$0 # a note\n${POSTS}`, []],
    ["nothing in a text of several lines", "accept:\n  - because: |\n      one\n$0\n      two\n", []],
    ["nothing in quotes over several lines", 'accept:\n  - because: "one\n  $0\n  two"\n', []],
  ])("%s", (_, written, expected) => {
    expect(labels(written)).toEqual(expected);
  });

  test("grades are those of the species, all of them where none is known", () => {
    const oak = labels("timber: {f: {species: white-oak, grade: $0}}");
    expect(oak).toEqual(gradeIds("white-oak"));
    expect(labels("timber: {f: {grade: $0}}").length).toBeGreaterThan(oak.length);
    expect(labels("timber: {f: {species: $0}}")).toEqual(speciesIds());
  });

  test("kinds say what each is", () => {
    const text = "roof:\n  kind: ";
    const items = completed(text, text.length, PLAIN).items;
    expect(items.map(({ label, documentation }) => [label, documentation])).toEqual([
      ["gable", "Two slopes that meet at a ridge."],
      ["shed", "One slope, from a high wall to a low one."],
    ]);
  });

  test("what stands ends at levels and timbers, what lies at the other lines", () => {
    expect(labels(members("  p: {kind: post, to: $0}"))[0]).toBe("low");
    expect(labels(members("  t: {kind: tie, bents: [1], from: $0}"))[0]).toBe("A");
    expect(labels(members("  t: {kind: plate, walls: [A], from: $0}"))[0]).toBe("1");
  });

  test.each([
    [
      "a word with hyphens",
      "timber: {f: {species: eastern-wh$0ite-pine}}",
      "white-oak",
      "timber: {f: {species: white-oak$0}}",
    ],
    ["a missing blank", "site:\n  soil:$0", "clay", "site:\n  soil: clay$0"],
    ["a unit", "site:\n  elevation: 500$0", "ft", "site:\n  elevation: 500 ft$0"],
    [
      "an item before others",
      `${HEAD}members: {p: {kind: post, at: [$0B1]}}`,
      "A2",
      `${HEAD}members: {p: {kind: post, at: [A2$0, B1]}}`,
    ],
  ])("%s", (_, written, label, expected) => {
    expect(chosen(written, label)).toBe(expected);
  });

  test("single sticks behind an @, from the frame that was placed last", () => {
    const text = `${HEAD}members:\n${POSTS}`;
    const service = createFrameService();
    service.open("file:///a", 1, text);
    const typed = `${text}  leaf: {kind: post, hung-on: }\n  knee: {kind: brace, between: [post@, p]}\n`;
    const document = TextDocument.create("file:///a", "yaml", 2, typed);
    const at = (words: string): string[] =>
      completionsAt(
        document,
        document.positionAt(typed.indexOf(words) + words.length),
        SNIPPETS,
        service.drawable("file:///a"),
      ).map(({ label }) => label);
    expect(at("hung-on: ")).toEqual(["post@A1", "post@A2"]);
    expect(at("between: [post@")).toEqual(expect.arrayContaining(["post@A1", "post@A2"]));
    expect(at("[post@, p")).toEqual(["post", "leaf", "brace"]);
  });
});

test("a blank opens the list behind a colon, a comma, a dash and a number, not in the indentation", () => {
  expect(labels("site:\n  soil: $0", " ")).toContain("sand");
  expect(labels("site: {soil: sand, $0}", " ")).toContain("snow");
  expect(labels("mill:\n  logs:\n    - $0", " ")).toContain("count");
  expect(labels("site:\n  $0", " ")).toEqual([]);
  expect(labels("site:\n  $0")).not.toEqual([]);
});
