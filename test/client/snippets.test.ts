import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import { linesOf } from "../document/facts.ts";
import { SHED } from "../shed.ts";

interface Snippet {
  readonly prefix: readonly string[];
  readonly body: readonly string[];
  readonly description: string;
}

const SNIPPETS: Readonly<Record<string, Snippet>> = JSON.parse(
  readFileSync(new URL("../../client/syntax/frame.snippets.json", import.meta.url), "utf8"),
);

const SECTIONS = { member: "members", joint: "joints", pier: "piers" } as const;
type What = keyof typeof SECTIONS;

/** `member post`, `joint pocket`: every kind that the schema lets stand in the three sections. */
const KINDS = (Object.keys(SECTIONS) as What[]).flatMap((what) =>
  frameSchema.$defs[what].oneOf.map(({ $ref }) => ({ what, kind: $ref.replace(`#/$defs/${what}-`, "") })),
);

/** The text that is inserted when every placeholder is left as it is. */
function asInserted({ body }: Snippet): string {
  return body
    .join("\n")
    .replace(/\$\{\d+\|([^,|]*)[^|]*\|\}/g, "$1")
    .replace(/\$\{\d+:([^}]*)\}/g, "$1")
    .replace(/\$\d+/g, "");
}

/** The shed with the entry in its section, in place of the one of that name. */
function withEntry(what: What, entry: string): string {
  const section = SECTIONS[what];
  const name = entry.slice(0, entry.indexOf(":"));
  const [before = "", after = ""] = SHED.split(new RegExp(`^${section}:\\n`, "m"));
  const [own = "", rest = ""] = after.split(/^(?=\S)/m, 1).concat(after.replace(/^(?: .*\n)*/, ""));
  const others = own
    .split("\n")
    .filter((line) => line !== "" && !line.startsWith(`  ${name}:`))
    .map((line) => `${line}\n`);
  return `${before}${section}:\n  ${entry}\n${others.join("")}${rest}`;
}

describe("snippets", () => {
  it("begin from a sound frame", () => expect(linesOf(SHED)).toEqual([]));

  it("are there for every kind of the schema, and no other", () => {
    expect(KINDS.length).toBeGreaterThan(30);
    expect(Object.keys(SNIPPETS).sort()).toEqual(KINDS.map(({ what, kind }) => `${what} ${kind}`).sort());
  });

  it("are found by words of their own", () => {
    const prefixes = Object.values(SNIPPETS).flatMap(({ prefix }) => prefix);
    expect(new Set(prefixes).size).toBe(prefixes.length);
  });

  describe.each(KINDS)("$what $kind", ({ what, kind }) => {
    const snippet = SNIPPETS[`${what} ${kind}`]!;

    it("is found by its kind and says what it is", () => {
      expect(snippet.prefix).toEqual([kind, `${what}-${kind}`]);
      expect(snippet.description).not.toBe("");
    });

    it("numbers its placeholders from 1 without a gap", () => {
      const numbers = [...snippet.body.join("\n").matchAll(/\$\{(\d+)[:|]/g)].map(([, number]) =>
        Number(number),
      );
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    });

    it("reads without a finding in a sound frame", () => {
      const text = withEntry(what, asInserted(snippet));
      expect(text).toContain(`kind: ${kind},`);
      expect(text.match(/^\S+:/gm)).toEqual(SHED.match(/^\S+:/gm));
      expect(linesOf(text)).toEqual([]);
      expect(linesOf(text.replaceAll("\n", "\r\n"))).toEqual([]);
    });
  });
});
