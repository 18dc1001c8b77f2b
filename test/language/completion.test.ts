/** What is offered where, with the cursor at `$0`, in every way that a text can reach us. */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { TextDocument } from "vscode-languageserver-textdocument";
import { gradeIds } from "../../server/core/wood/design-values.ts";
import { speciesIds } from "../../server/core/wood/species.ts";
import { completionsAt } from "../../server/language/completion.ts";
import { createFrameService } from "../../server/language/frame-service.ts";
import { completed, PLAIN, SNIPPETS } from "./completion-text.ts";

const HEAD = `frame: Try
timber: {frame: {species: white-oak}}
grid: {walls: {A: 0, B: 9 ft}, bents: {1: 0, 2: 9 ft}, levels: {low: 1 ft, eave: 8 ft}}
`;
const POSTS = "  post: {kind: post, section: 8x8, at: [A1, A2], from: low, to: eave}\n";

interface At {
  readonly text: string;
  readonly offset: number;
}

/** The fixture with LF, CRLF, a byte order mark and an emoji in the line above. */
function variantsOf(written: string): readonly At[] {
  const whole = (text: string): At => ({ text: text.replace("$0", ""), offset: text.indexOf("$0") });
  return [
    whole(written),
    whole(written.replaceAll("\n", "\r\n")),
    whole(`\uFEFF${written}`),
    whole(`# 🪵 🪓\n${written}`),
  ];
}

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
      `members:\n  king-post: {kind: king-post, section: $0}\n${POSTS}`,
    ],
    [
      "under a name that is free",
      `members:\n${POSTS}  $0\njoints: {}`,
      "post-2",
      `members:\n${POSTS}  post-2: {kind: post, section: $0}\njoints: {}`,
    ],
    [
      "with all that it must have",
      `members:\n  $0\n${POSTS}`,
      "brace",
      `members:\n  brace: {kind: brace, section: , between: [$0]}\n${POSTS}`,
    ],
    [
      "in lines, as the others are",
      `members:\n${KNEE}$0\n  tie: {}`,
      "brace",
      `members:\n${KNEE}  brace:\n    kind: brace\n    section: \n    between: [$0]\n  tie: {}`,
    ],
    [
      "of an empty section",
      "joints:\n  $0\n",
      "pocket",
      "joints:\n  pocket: {kind: pocket, of: , into: $0}\n",
    ],
    ["in braces", "piers: {$0}", "pad", "piers: {pad: {kind: pad, width: $0}}"],
    [
      "in braces before others",
      "piers: {$0all: {kind: tube}}",
      "pad",
      "piers: {pad: {kind: pad, width: $0}, all: {kind: tube}}",
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

  test("a new entry has the name typed over first, then what it must have", () => {
    const text = "members:\n  ";
    const item = completed(text, text.length).items.find(({ label }) => label === "brace");
    expect(item?.textEdit?.newText).toBe("$" + "{1:brace}: {kind: brace, section: $2, between: [$0]\\}");
    expect(item?.detail).toBe("new brace");
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

describe("what fits comes first, with the reason", () => {
  const GOATS = readFileSync("samples/goat-shed.frame.yaml", "utf8");
  const WRONG = readFileSync("samples/wrong-on-purpose.frame.yaml", "utf8");
  const service = createFrameService();

  /** Labels with their details, the same in every variant; the frame as it was before the change is known. */
  function offered(
    before: string,
    from: string,
    to: string,
  ): readonly (readonly [string, string | undefined])[] {
    expect(before).toContain(from);
    service.open(before, 1, before);
    const all = variantsOf(before.replace(from, () => to)).map(({ text, offset }) => {
      const document = TextDocument.create("file:///a", "yaml", 2, text);
      const items = completionsAt(document, document.positionAt(offset), PLAIN, service.drawable(before));
      expect(items.map(({ sortText }) => sortText)).toEqual(items.map(({ sortText }) => sortText).toSorted());
      return items.map(({ label, detail }) => [label, detail] as const);
    });
    for (const one of all) expect(one).toEqual(all[0]);
    return all[0] ?? [];
  }

  // what touches what is read off the drawing of the sample: joists end at ties, posts at plates, ties at posts
  test.each<readonly [string, string, string, readonly string[], string, string]>([
    [
      "let in",
      "of: joist, into: tie",
      "of: $0, into: tie",
      ["joist", "king-post", "tie-knee", "brace"],
      "touches tie",
      "no end of it touches tie",
    ],
    [
      "receives a joist",
      "of: joist, into: tie",
      "of: joist, into: $0",
      ["tie"],
      "touches joist",
      "no end of joist touches it",
    ],
    [
      "receives a post",
      "of: post, into: plate",
      "of: post, into: $0",
      ["plate"],
      "touches post",
      "no end of post touches it",
    ],
    [
      "receives a tie",
      "of: tie, into: post",
      "of: tie, into: $0",
      ["post"],
      "touches tie",
      "no end of tie touches it",
    ],
    [
      "a brace’s tenons",
      "of: [knee, tie-knee, ridge-knee], into: [post, plate, tie, king-post, ridge]",
      "of: $0",
      ["knee", "tie-knee", "ridge-knee", "brace"],
      "its ends are joined so",
      "",
    ],
    ["a pocket", "of: joist, into: tie", "of: $0", ["joist"], "usually joined so", ""],
    ["under a pier", "under: post", "under: $0", ["post"], "stands on piers", ""],
    ["a king post’s foot", "from: tie, to: ridge", "from: $0, to: ridge", ["tie"], "usual here", ""],
    ["a king post’s head", "from: tie, to: ridge", "from: tie, to: $0", ["ridge"], "usual here", ""],
    [
      "a post’s head",
      "from: pier-top, to: plate",
      "from: pier-top, to: $0",
      ["plate", "tie", "ridge"],
      "usual here",
      "",
    ],
    [
      "the heads of rafters",
      "into: ridge, fasten",
      "into: $0, fasten",
      ["ridge"],
      "touches rafter",
      "does not touch rafter",
    ],
    [
      "a brace between",
      "between: [post, plate]",
      "between: [post, $0]",
      ["plate", "tie"],
      "touches post",
      "does not touch post",
    ],
    ["a floor", "on: joist", "on: $0", ["joist"], "usual here", ""],
  ])("%s", (_, from, to, fitting, why, whyNot) => {
    const all = offered(GOATS, from, to);
    expect(all.filter(([, detail]) => detail?.endsWith(`, ${why}`)).map(([label]) => label)).toEqual(fitting);
    expect(all.slice(0, fitting.length).map(([label]) => label)).toEqual(fitting);
    expect(all.length).toBeGreaterThan(fitting.length);
    if (whyNot !== "") for (const [, detail] of all.slice(fitting.length)) expect(detail).toContain(whyNot);
  });

  test("checks that this file has findings of, and the places that have them", () => {
    const open = service.open(WRONG, 1, WRONG).findings.map(({ finding }) => finding);
    const entry = (text: string): readonly (readonly [string, string | undefined])[] =>
      offered(WRONG, "members:\n", `accept:\n  - {${text}}\nmembers:\n`);
    const checks = entry("check: $0");
    const counted = checks.filter(([, detail]) => /: (?:one|\d+) findings? here$/.test(detail ?? ""));
    expect(counted.length).toBeGreaterThan(10);
    expect(checks.slice(0, counted.length)).toEqual(counted);
    for (const [id] of counted) expect(open.map(({ check }) => check)).toContain(id);
    expect(checks.length).toBeGreaterThan(counted.length + 20);

    const thin = open.filter(({ check }) => check === "tenon-thin");
    const places = entry("check: tenon-thin, at: $0");
    const having = places.filter(([, detail]) => detail === "has a finding of tenon-thin");
    expect(having.map(([id]) => id)).toEqual([...thin.flatMap((each) => each.places), "post-head"]);
    expect(places.slice(0, having.length)).toEqual(having);
    expect(places.map(([id]) => id)).toEqual(expect.arrayContaining(["post@A1", "plate@A"]));
    const flat = entry("check: brace-angle, at: $0").map(([id]) => id);
    expect(flat.slice(0, 5)).toContain("knee");
    // before the check is written, the places of all of them
    expect(entry("at: $0").map(([, detail]) => detail)).toEqual(
      expect.arrayContaining(["has a finding of brace-angle", "has a finding of longer-than-mill"]),
    );
  });
});

test("a blank opens the list behind a colon, a comma, a dash and a number, not in the indentation", () => {
  expect(labels("site:\n  soil: $0", " ")).toContain("sand");
  expect(labels("site: {soil: sand, $0}", " ")).toContain("snow");
  expect(labels("mill:\n  logs:\n    - $0", " ")).toContain("count");
  expect(labels("site:\n  $0", " ")).toEqual([]);
  expect(labels("site:\n  $0")).not.toEqual([]);
});

test("offsets all over every sample, whole and garbled, have an answer", () => {
  const texts = readdirSync("samples")
    .filter((name) => name.endsWith(".frame.yaml"))
    .map((name) => readFileSync(`samples/${name}`, "utf8"));
  let offered = 0;
  for (const [i, whole] of texts.entries()) {
    const third = Math.floor(whole.length / 3);
    const ways = [
      whole,
      whole.slice(0, third) + whole.slice(third + 37),
      whole.replace(/[}\]]/, "").replace(/"?\n/, '"\n'),
      whole.replaceAll(": ", " "),
    ];
    for (const [j, text] of ways.entries()) {
      for (let offset = i + j; offset <= text.length + 1; offset += j === 0 ? 41 : 307) {
        const { items } = completed(text, offset);
        for (const { label } of items) expect(label).not.toBe("");
        if (j === 0 && items.length > 0) offered++;
      }
    }
  }
  expect(offered).toBeGreaterThan(50);
});

test("a frame with anything cut out or put in", () => {
  const whole = readFileSync("samples/cider-press-pavilion.frame.yaml", "utf8");
  const put = [
    "",
    " ",
    "\n",
    "\n  ",
    ":",
    ",",
    "[",
    "{",
    '"',
    "#",
    "-",
    "8x",
    "A1",
    "&a",
    "*a",
    "\t",
    "😀",
    "zqx",
  ];
  fc.assert(
    fc.property(fc.nat(whole.length), fc.nat(60), fc.constantFrom(...put), (at, length, typed) => {
      const text = whole.slice(0, at) + typed + whole.slice(at + length);
      for (const item of completed(text, at + typed.length).items)
        expect(JSON.stringify(item)).not.toMatch(/NaN|undefined|\[object|Infinity|zqxzq/);
    }),
    { numRuns: 150 },
  );
});
