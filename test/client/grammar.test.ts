import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { describe, expect, it } from "vitest";
import { createOnigScanner, createOnigString, loadWASM } from "vscode-oniguruma";
import { INITIAL, parseRawGrammar, Registry } from "vscode-textmate";
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import { unitOf } from "../../server/core/quantity/units.ts";

const GRAMMAR = new URL("../../client/syntax/frame.tmLanguage.json", import.meta.url);
const SAMPLES = new URL("../../samples/", import.meta.url);

await loadWASM(
  new Uint8Array(readFileSync(createRequire(import.meta.url).resolve("vscode-oniguruma/release/onig.wasm"))),
);
const registry = new Registry({
  onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
  loadGrammar: async () => parseRawGrammar(readFileSync(GRAMMAR, "utf8"), "frame.tmLanguage.json"),
});
const grammar = (await registry.loadGrammar("source.bentwright-frame"))!;

interface Token {
  readonly text: string;
  readonly scopes: readonly string[];
}

/** Every token of every line that is not blank. */
function tokens(text: string): Token[] {
  let state = INITIAL;
  return text
    .replace(/^\uFEFF/, "")
    .split(/\r\n|\n/)
    .flatMap((line) => {
      const { tokens: found, ruleStack } = grammar.tokenizeLine(line, state);
      state = ruleStack;
      return found.map(({ startIndex, endIndex, scopes }) => ({
        text: line.slice(startIndex, endIndex),
        scopes,
      }));
    })
    .filter(({ text }) => text.trim() !== "");
}

const SHORT = [
  ["constant.numeric", "number"],
  ["keyword.other.unit", "unit"],
  ["keyword.other.section", "section"],
  ["entity.name.tag", "key"],
  ["support.type.kind", "kind"],
  ["constant.other.place", "place"],
  ["variable.other.timber", "timber"],
  ["constant.language", "constant"],
  ["keyword.operator", "operator"],
  ["constant.character.escape", "escape"],
  ["string", "text"],
  ["comment", "comment"],
  ["punctuation", "mark"],
  ["entity", "other"],
  ["keyword", "other"],
] as const;

/** `8 number`, `in unit`; punctuation left out. */
function words(text: string): string[] {
  return tokens(text)
    .map(({ text, scopes }) => {
      const found = SHORT.find(([scope]) =>
        scopes.slice(1).some((one) => one.split(" ").some((name) => name.startsWith(scope))),
      );
      return `${text.trim()} ${found?.[1] ?? "nothing"}`;
    })
    .filter((word) => !word.endsWith(" mark"));
}

const units = (...pairs: readonly (readonly [string, string])[]) =>
  pairs.flatMap(([number, unit]) => [`${number} number`, `${unit} unit`]);

const QUANTITIES: readonly (readonly [string, readonly string[]])[] = [
  ["8 in", units(["8", "in"])],
  ["3/4 in", units(["3/4", "in"])],
  ["12 ft 6 in", units(["12", "ft"], ["6", "in"])],
  ["8 ft 6 1/2 in", units(["8", "ft"], ["6 1/2", "in"])],
  [`8'-6 1/2"`, units(["8", "'"], ["-6 1/2", '"'])],
  ["5-1/2", ["5-1/2 number"]],
  ["½", ["½ number"]],
  ["5½ in", units(["5½", "in"])],
  ["-4 in", units(["-4", "in"])],
  ["30 psf", units(["30", "psf"])],
  ["2.4 m", units(["2.4", "m"])],
  [".5 in", units([".5", "in"])],
  ["140mm", units(["140", "mm"])],
  ["2.0 kPa", units(["2.0", "kPa"])],
  ["8 ft²", units(["8", "ft²"])],
  ["480 kg/m³", units(["480", "kg/m³"])],
  ["47 m/s", units(["47", "m/s"])],
  ["107 mph", units(["107", "mph"])],
  ["1100000 psi", units(["1100000", "psi"])],
  ["30 deg", units(["30", "deg"])],
  ["30°", units(["30", "°"])],
  ["0", ["0 number"]],
  ["7.10", ["7.10 number"]],
  ["8x9", ["8 number", "x operator", "9 number"]],
  ["5 1/2 x 7 1/4", ["5 1/2 number", "x operator", "7 1/4 number"]],
  ["2x8 nominal", ["2 number", "x operator", "8 number", "nominal unit"]],
  ["140x190 mm", ["140 number", "x operator", "190 number", "mm unit"]],
  ["7:12", ["7 number", ": operator", "12 number"]],
  ["7 in 12", ["7 number", "in operator", "12 number"]],
];

/** The examples of every quantity in the schema: those that are words (`eave`, `center`) name something else. */
function quantityExamples(node: unknown): string[] {
  if (typeof node !== "object" || node === null) return [];
  const own: string[] =
    "x-quantity" in node && "examples" in node && Array.isArray(node.examples)
      ? node.examples.map(String).filter((example) => !/eave|reference/.test(example))
      : [];
  return [...own, ...Object.values(node).flatMap(quantityExamples)];
}

describe("the grammar", () => {
  describe.each(QUANTITIES)("marks the quantity %s", (written, expected) => {
    it.each([
      ["in a block", `x: ${written}`, ["x section"]],
      ["before a comment", `x: ${written}  # that 🪵`, ["x section"]],
      ["in a mapping", `x: {y: ${written}}`, ["x section", "y key"]],
      ["in a list", `x: [${written}, ${written}]`, ["x section"]],
      ["in an entry", `x:\n  y: ${written}`, ["x section", "y key"]],
      ["in an item", `x:\n  - ${written}`, ["x section"]],
    ])("%s", (_, text, before) => {
      const found = words(text).filter((word) => !word.endsWith("comment"));
      const times = text.includes("[") ? 2 : 1;
      expect(found).toEqual([...before, ...Array.from({ length: times }, () => expected).flat()]);
    });
  });

  it.each(["asce-7-16", "Shed 8 in", "8 in of snow", "no-1", "3rd shed", "2 inner walls", "O'Brien"])(
    "leaves %s a text",
    (text) => expect(words(`x: ${text}`)).toEqual(["x section", `${text} text`]),
  );

  it("knows the units that the language knows, and no other", () => {
    const { patterns } = JSON.parse(readFileSync(GRAMMAR, "utf8")).repository.quantity;
    const [, listed = ""] = /\(\?i:([^)]*)\)/.exec(patterns[1].match) ?? [];
    const spellings = listed.split("|");
    expect(spellings.length).toBeGreaterThan(60);
    expect(spellings.filter((unit) => unitOf(unit === "mpa" ? "MPa" : unit) === undefined)).toEqual([]);
  });

  it.each([...new Set(quantityExamples(frameSchema))])("marks the schema's example %s", (example) => {
    const found = words(`x: ${example}`);
    expect(found.length).toBeGreaterThan(1);
    expect(found.filter((word) => word.endsWith(" text"))).toEqual([]);
  });

  const schemaKinds = (["member", "joint", "pier"] as const).flatMap((what) =>
    frameSchema.$defs[what].oneOf.map(({ $ref }) => $ref.replace(`#/$defs/${what}-`, "")),
  );

  it.each(schemaKinds)("marks the kind %s", (kind) => {
    const expected = ["x section", "y key", "kind key", `${kind} kind`];
    expect(words(`x:\n  y: {kind: ${kind}, section: 8x8}`).slice(0, 4)).toEqual(expected);
    expect(words(`x:\n  y:\n    kind: ${kind}  # so`).slice(0, 4)).toEqual(expected);
  });

  it("tells sections, ids, places and sticks apart", () => {
    expect(words("members:\n  post: {at: [A1, B@4 ft 9 in], of: tie@1, on: post@A1, into: post}")).toEqual([
      "members section",
      "post key",
      "at key",
      "A1 place",
      "B@ place",
      ...units(["4", "ft"], ["9", "in"]),
      "of key",
      "tie timber",
      "@ operator",
      "1 place",
      "on key",
      "post timber",
      "@ operator",
      "A1 place",
      "into key",
      "post text",
    ]);
  });

  it("marks keys that are numbers, words and comments", () => {
    expect(words("grid: {1: 0, 2: 9 ft, ok: true}  # 8 in")).toEqual([
      "grid section",
      "1 key",
      "0 number",
      "2 key",
      ...units(["9", "ft"]),
      "ok key",
      "true constant",
      "# comment",
      "8 in comment",
    ]);
  });

  it("leaves quoted and block texts alone, and goes on behind them", () => {
    expect(words("a: \"8 in # no\"\nb: 'it''s'\nc: |\n  8 in\n\n  x: 1\nd: 8 in")).toEqual([
      "a section",
      '" text',
      "8 in # no text",
      '" text',
      "b section",
      "' text",
      "it text",
      "'' escape",
      "s text",
      "' text",
      "c key",
      "| other",
      "8 in text",
      "x: 1 text",
      "d section",
      ...units(["8", "in"]),
    ]);
  });

  it("finds its feet at the next section after a forgotten bracket or quote", () => {
    for (const open of ["{kind: post", "[A1", '"text', "'text"])
      expect(words(`a:\n  b: ${open}\nc: 8 in`).slice(-3)).toEqual(["c section", ...units(["8", "in"])]);
  });

  it.each([
    ["marks of feet", `5${"'".repeat(80)}z`],
    ["blanks in a size", `8${" ".repeat(3000)}z`],
    ["blanks behind a size", `8x9${" ".repeat(3000)}z`],
    ["blanks in a pitch", `7 in${" ".repeat(3000)}z`],
    ["digits", `${"1 ".repeat(2000)}z`],
    ["units", `1${" in".repeat(1000)}z`],
  ])("gets past a long run of %s", (_, text) => {
    expect(words(`x: ${text}\ny: 8 in`).slice(-3)).toEqual(["y section", ...units(["8", "in"])]);
  });

  const samples = readdirSync(SAMPLES).filter((name) => name.endsWith(".frame.yaml"));

  it.each(samples)("leaves no word of %s without a scope", (name) => {
    const text = readFileSync(new URL(name, SAMPLES), "utf8");
    expect(words(text).filter((word) => word.endsWith(" nothing"))).toEqual([]);
    expect(words(`\uFEFF${text.replaceAll("\n", "\r\n")}`)).toEqual(words(text));
  });
});
