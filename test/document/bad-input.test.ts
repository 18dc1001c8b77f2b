import { describe, expect, it } from "vitest";
import { toTextEdit } from "../../server/document/edits.ts";
import { readFrame } from "../../server/document/read.ts";
import { linesOf } from "./facts.ts";
import { SMALL } from "./samples.ts";

function timed(text: string): { readonly facts: readonly string[]; readonly milliseconds: number } {
  const start = performance.now();
  const facts = linesOf(text);
  return { facts, milliseconds: performance.now() - start };
}

/** The same noise in every run. */
function noise(length: number, alphabet: string): string {
  let seed = 1;
  let text = "";
  while (text.length < length) {
    seed = (seed * 48271) % 2147483647;
    text += alphabet[seed % alphabet.length];
  }
  return text;
}

describe("input that is no frame", () => {
  for (const text of ["", "\uFEFF", "\n\n", "# a comment\n", "---\n", "~", "null\n"]) {
    it(`calls ${JSON.stringify(text)} empty`, () => expect(linesOf(text)).toEqual(["empty"]));
  }

  it("names what stands there instead", () => {
    expect(readFrame("- a\n- b\n").source.facts).toEqual([{ kind: "not-a-frame", got: "list" }]);
    expect(readFrame("just words\n").source.facts).toEqual([{ kind: "not-a-frame", got: "text" }]);
    expect(readFrame("- a\n").frame.members).toEqual([]);
  });

  it("asks an empty map for what every frame has", () => {
    expect(linesOf("{}")).toEqual(["missing-key  grid", "missing-key  timber", "missing-key  members"]);
  });
});

describe("line ends", () => {
  const BAD = SMALL.replace(/\n(?=.)/, "\nnonsense: 1 # with a comment\n");

  it.each([
    ["carriage returns alone", "\r", 1],
    ["of two characters", "\r\n", 2],
  ])("%s read as any others do", (_, end, length) => {
    const [usual, other] = [readFrame(BAD), readFrame(BAD.replaceAll("\n", end))];
    expect(other.frame).toEqual(usual.frame);
    expect(other.source.facts.map(({ kind }) => kind)).toEqual(usual.source.facts.map(({ kind }) => kind));
    expect(usual.source.facts.length).toBeGreaterThan(0);
    const { start } = usual.index.keyRange("/members");
    const before = BAD.slice(0, start).split("\n").length - 1;
    expect(other.index.keyRange("/members").start).toBe(start + before * (length - 1));
  });

  it("edits a file with carriage returns alone on its own line", () => {
    const text = "members:\r  a: {}\rroof:\r  kind: gable\r";
    const file = readFrame(text);
    const edit = toTextEdit(file, { kind: "add", path: "/members", key: "b", text: "{}" });
    expect(edit).toMatchObject({ start: text.indexOf("\rroof"), end: text.indexOf("\rroof") });
  });
});

describe("input that is too much", () => {
  const ENDLESS: readonly (readonly [string, string, string])[] = [
    ["deep lists", "[".repeat(100_000), "entries"],
    ["deep maps", "{a: ".repeat(20_000), "depth"],
    ["lists a little too deep", `${"[".repeat(65)}${"]".repeat(65)}`, "depth"],
    ["deep dashes", "- ".repeat(20_000), "depth"],
    ["deep questions", "? ".repeat(20_000), "depth"],
    ["steps of indentation", Array.from({ length: 300 }, (_, i) => `${" ".repeat(i)}a:`).join("\n"), "depth"],
    ["a megabyte and more", "a".repeat(1_000_001), "characters"],
    ["a megabyte of noise", noise(1_000_000, "abc: []{}\"'\n,#-|>&*!%@`?"), "entries"],
    ["a megabyte of entries", "a: 1\n".repeat(200_000), "entries"],
    ["a megabyte of quotes", '"'.repeat(1_000_000), "entries"],
    ["deep lists behind a quote", `"${"[".repeat(50_000)}`, "depth"],
  ];
  for (const [what, text, limit] of ENDLESS) {
    it(`refuses ${what} at once`, () => {
      const { facts, milliseconds } = timed(text);
      expect(facts).toEqual([`too-large ${limit}`]);
      expect(milliseconds).toBeLessThan(20_000);
    });
  }

  for (const [what, text] of [
    ["a megabyte in one word", "x".repeat(1_000_000)],
    ["a megabyte of words", noise(1_000_000, "abcdefgh    ")],
    ["a long unclosed quote", `a: "${"x ".repeat(400_000)}`],
    ["a long block of text", `a: |\n${" x\n".repeat(50_000)}`],
    ["noise just below the limit", noise(100_000, "abcdefghi: []{}\"'\n,#-|>&*!%@`?")],
    ["many broken lines", "a b\n".repeat(10_000)],
    ["many unclosed brackets", "a: {b\n".repeat(2_000)],
    ["many unclosed quotes", 'a: "b\n'.repeat(2_000)],
    ["many tabs", "\ta: 1\n".repeat(5_000)],
    ["many number signs", "a: {b: #1}\n".repeat(2_000)],
    ["many blanks", `a: ${" ".repeat(900_000)}b`],
    ["many stray brackets", "}\n".repeat(10_000)],
  ] as const) {
    it(`reads ${what} within a second`, () => {
      expect(timed(text).milliseconds).toBeLessThan(20_000);
    });
  }

  it("caps how far aliases expand", () => {
    const bomb = ["a0: &a0 [x, x, x, x, x, x, x, x, x, x]"];
    for (let i = 1; i < 12; i++)
      bomb.push(
        `a${i}: &a${i} [${Array(10)
          .fill(`*a${i - 1}`)
          .join(", ")}]`,
      );
    const { facts, milliseconds } = timed(`${SMALL}${bomb.join("\n")}\n`);
    expect(facts.filter((fact) => fact.startsWith("alias-limit"))).toHaveLength(1);
    expect(milliseconds).toBeLessThan(20_000);
  });

  it("caps how often aliases are used", () => {
    const { facts } = timed(`a: &a x\nb: [${Array(101).fill("*a").join(", ")}]\n`);
    expect(facts.filter((fact) => fact.startsWith("alias-limit"))).toHaveLength(1);
    expect(timed(`a: &a x\nb: [${Array(100).fill("*a").join(", ")}]\n`).facts.join()).not.toContain(
      "alias-limit",
    );
  });
});

describe("odd characters and numbers", () => {
  it("reads past NUL, lone surrogates and other oddities", () => {
    for (const odd of ["\0", "\uD800", "\uDFFF", "\u2028", "\u200B", "\u0085", "\r", "\uFFFE", "\u202E"]) {
      const reading = readFrame(SMALL.replace("frame:", `fr${odd}me:`));
      expect(reading.frame.grid.walls).toHaveLength(2);
    }
  });

  const post = (from: string): readonly string[] =>
    linesOf(
      SMALL.replace("from: 0", `from: 0, top: ${from}`)
        .replace("kind: post", "kind: beam")
        .replace(/at: \[.*?\]/, "bents: 1"),
    );

  it("reports numbers that are none", () => {
    expect(post("1e999")).toEqual([
      expect.stringMatching(/^unreadable-quantity \/members\/post\/top "1e999"/),
    ]);
    expect(post("-.inf")).toEqual([expect.stringMatching(/^unreadable-quantity/)]);
    expect(linesOf(`${SMALL}prices: {peg: NaN, bag: .inf, tie: 1e999}\n`)).toEqual([
      'wrong-value /prices/peg "NaN" (a number from 0)',
      'wrong-value /prices/bag ".inf" (a number from 0)',
      'wrong-value /prices/tie "1e999" (a number from 0)',
    ]);
  });

  it("keeps quotes of other languages as text", () => {
    expect(linesOf(`frame: “Arbor”\n${SMALL}`)).toEqual([]);
    expect(readFrame(`frame: “Arbor”\n${SMALL}`).frame.name).toBe("“Arbor”");
  });
});
