/** Lengths read, printed and added as the outside cases of test/reference/geometry.yaml say; sources stand there. */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { fromInches, inches, type Length } from "../../../server/core/quantity/length.ts";
import { formatLength, type LengthOptions, parseLength } from "../../../server/core/quantity/quantity.ts";

interface Case {
  readonly id: string;
  readonly what: string;
  readonly given: Readonly<Record<string, string | number>>;
  readonly expect: Readonly<Record<string, string | number>>;
  readonly status: string;
  readonly agrees: boolean;
  readonly note?: string;
}

const file = new URL("../../reference/geometry.yaml", import.meta.url);
const { cases }: { cases: readonly Case[] } = parse(readFileSync(file, "utf8"));

function casesOf(prefix: string): readonly (readonly [string, Case])[] {
  return cases
    .filter((each) => each.agrees && each.id.startsWith(prefix))
    .map((each) => [`${each.id} (${each.status}): ${each.what}`, each] as const);
}

function lengthOf(text: string | number | undefined): Length {
  const read = parseLength(String(text), "inch");
  if (!read.ok) throw new Error(`${text}: ${read.reason}`);
  return read.value;
}

describe("reading feet and inches", () => {
  const found = casesOf("parse-");
  test("the file has such cases", () => expect(found.length).toBeGreaterThanOrEqual(17));
  test.each(found)("%s", (_title, { given, expect: expected }) => {
    const length = lengthOf(given.text);
    expect(length).toBe(fromInches(Number(expected.inches)));
    expect(formatLength(length, "trade")).toBe(expected.print_16);
  });
});

describe("printing feet and inches", () => {
  const found = casesOf("print-");
  test("the file has such cases", () => expect(found.length).toBeGreaterThanOrEqual(15));
  test.each(found)("%s", (_title, { given, expect: expected, note }) => {
    const length = fromInches(Number(given.inches));
    const denominator = given.denominator as NonNullable<LengthOptions["denominator"]>;
    expect(formatLength(length, "trade", { denominator })).toBe(expected.text);
    const even = note?.match(/round-half-even would print (\S.*)$/)?.[1];
    if (even !== undefined) {
      expect(formatLength(length, "trade", { denominator, halves: "to-even" })).toBe(even);
    }
  });
});

describe("adding lengths", () => {
  const found = casesOf("sum-");
  test("the file has such cases", () => expect(found.length).toBeGreaterThanOrEqual(2));
  test.each(found)("%s", (_title, { given, expect: expected }) => {
    const sum = (lengthOf(given.a) + lengthOf(given.b)) as Length;
    expect(inches(sum)).toBe(expected.inches);
    expect(formatLength(sum, "trade")).toBe(expected.text);
  });
});

describe("diagonals as a tape shows them", () => {
  const found = casesOf("diag-");
  test("the file has such cases", () => expect(found.length).toBeGreaterThanOrEqual(10));
  test.each(found)("%s", (_title, { given, expect: expected }) => {
    const diagonal = fromInches(Math.hypot(Number(given.a_in), Number(given.b_in)));
    expect(formatLength(diagonal, "trade")).toBe(expected.text);
    if (given.a_text !== undefined) expect(inches(lengthOf(given.a_text))).toBe(given.a_in);
    if (given.b_text !== undefined) expect(inches(lengthOf(given.b_text))).toBe(given.b_in);
  });
});

describe("rafter lengths whose text the notes give", () => {
  const found = casesOf("rafter-worked-").filter(([, each]) => each.note?.includes("by table figure"));
  test("the file has such cases", () => expect(found.length).toBeGreaterThanOrEqual(3));
  test.each(found)("%s", (_title, { expect: expected, note }) => {
    const text = note?.match(/text by table figure (\S+ [\d/]+")/)?.[1];
    expect(formatLength(fromInches(Number(expected.length_in)), "trade")).toBe(text);
  });
});
