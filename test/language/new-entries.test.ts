/** New entries: whole ones of every kind of timber, joint and pier, each value of them to be typed over. */
import { describe, expect, it } from "vitest";
import frameSchema from "../../schemas/frame.schema.json" with { type: "json" };
import usualEntries from "../../server/language/completion/new-entries.json" with { type: "json" };
import { linesOf } from "../document/facts.ts";
import { SHED } from "../shed.ts";
import { completed } from "./completion-text.ts";

const SECTIONS = { member: "members", joint: "joints", pier: "piers" } as const;
type What = keyof typeof SECTIONS;

/** `member post`, `joint pocket`: every kind that the schema lets stand in the three sections. */
const KINDS = (Object.keys(SECTIONS) as What[]).flatMap((what) =>
  frameSchema.$defs[what].oneOf.map(({ $ref }) => ({ what, kind: $ref.replace(`#/$defs/${what}-`, "") })),
);

/** What choosing the kind makes of its empty section, and the snippet. */
function inserted(what: What, kind: string): { readonly entry: string; readonly snippet: string } {
  const text = `frame: Try\n${SECTIONS[what]}:\n  `;
  const { items, choose } = completed(text, text.length);
  const item = items.find(({ label }) => label === kind);
  if (!item?.textEdit) throw new Error(`${kind} is not offered`);
  return { entry: choose(item).text.slice(text.length), snippet: item.textEdit.newText };
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

describe("whole entries", () => {
  it("begin from a sound frame", () => expect(linesOf(SHED)).toEqual([]));

  it("are there for every kind of the schema, and no other", () => {
    expect(KINDS.length).toBeGreaterThan(30);
    const own = Object.entries(usualEntries).flatMap(([path, kinds]) =>
      Object.keys(kinds).map((kind) => `${path} ${kind}`),
    );
    expect(own.sort()).toEqual(KINDS.map(({ what, kind }) => `/${SECTIONS[what]} ${kind}`).sort());
  });

  it("are offered once each", () => {
    for (const section of Object.values(SECTIONS)) {
      const text = `frame: Try\n${section}:\n  `;
      const labels = completed(text, text.length).items.map(({ label }) => label);
      expect(new Set(labels).size).toBe(labels.length);
    }
  });

  describe.each(KINDS)("$what $kind", ({ what, kind }) => {
    it("numbers its places from 1 without a gap", () => {
      const numbers = [...inserted(what, kind).snippet.matchAll(/\$\{(\d+)[:|]/g)].map(([, number]) =>
        Number(number),
      );
      expect(numbers.length).toBeGreaterThan(3);
      expect(numbers).toEqual(numbers.map((_, index) => index + 1));
    });

    it("reads without a finding in a sound frame", () => {
      const text = withEntry(what, inserted(what, kind).entry);
      expect(text).toContain(`kind: ${kind},`);
      expect(text.match(/^\S+:/gm)).toEqual(SHED.match(/^\S+:/gm));
      expect(linesOf(text)).toEqual([]);
      expect(linesOf(text.replaceAll("\n", "\r\n"))).toEqual([]);
    });
  });
});
