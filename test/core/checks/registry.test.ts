/** What every check must say of itself, whatever it looks at. */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { run } from "../../../server/cli/run.ts";
import { ACCEPT_IDLE, CHECK_FAILED } from "../../../server/core/checks/accepted.ts";
import { CHECKS } from "../../../server/core/checks/registry.ts";

const METAS = [...CHECKS.map(({ meta }) => meta), ACCEPT_IDLE, CHECK_FAILED];

test("ids are unique", () => {
  const ids = METAS.map(({ id }) => id);
  expect(ids.filter((id, i) => ids.indexOf(id) !== i)).toEqual([]);
});

test("titles are unique", () => {
  const titles = METAS.map(({ title }) => title);
  expect(titles.filter((title, i) => titles.indexOf(title) !== i)).toEqual([]);
});

describe.each(METAS.map((meta) => [meta.id, meta] as const))("%s", (id, meta) => {
  const { what, why, remedy, formula } = meta.explanation;

  test("has a kebab-case id", () => expect(id).toMatch(/^[a-z]+(-[a-z]+)+$/));

  test("explains itself in whole sentences", () => {
    for (const text of [what, why, remedy]) {
      expect(text).toMatch(/^[\p{Lu}“{√%]/u);
      expect(text).toMatch(/[.?!”]$/);
      expect(text).not.toMatch(/\s{2}|\bundefined\b|\bTODO\b/);
    }
    expect(formula ?? "x").not.toBe("");
  });

  test("has a title without a stop and a source with a status", () => {
    expect(meta.title).toMatch(/^\p{Lu}.*[^.]$/u);
    expect(meta.source.text.length).toBeGreaterThan(5);
    expect(["published", "derived", "memory", "common-practice", "file-format"]).toContain(
      meta.source.status,
    );
  });

  test("says common practice where there is no source", () => {
    if (/common practice/.test(meta.source.text)) expect(meta.source.status).toBe("common-practice");
  });
});

test("every check fires in a marked text, with words of its message", () => {
  const own = readdirSync(new URL("./", import.meta.url)).filter((name) => name.endsWith(".test.ts"));
  const texts = own.map((name) => readFileSync(new URL(name, import.meta.url), "utf8")).join("\n");
  const marked = (id: string): boolean =>
    new RegExp(`# *(\\^+|@\\d+-\\d+) ((error|warning|note) )?${id}: .`).test(texts);
  const elsewhere = ["not-a-frame", "check-failed"]; // have no line to mark: asserted in file.test.ts and run.test.ts
  expect(METAS.map(({ id }) => id).filter((id) => !marked(id) && !elsewhere.includes(id))).toEqual([]);
});

describe("bentwright explain", () => {
  const explain = (id: string): string => {
    let out = "";
    const fail = (): never => {
      throw new Error("nothing to read or to complain of");
    };
    expect(
      run(["explain", id], {
        out: (text) => (out += text),
        err: fail,
        read: fail,
        write: fail,
        color: false,
      }),
    ).toBe(0);
    return out;
  };

  test("pier-above-frost", () =>
    expect(explain("pier-above-frost")).toMatchInlineSnapshot(`
    "pier-above-frost (error, ground)
    A pier that ends above the frost

    What: The underside of a pier or of its footing is not as deep as the frost goes.

    Why: Ground that freezes under it lifts the post, every winter a little, and racks the frame.

    Formula: depth of the tube + footing, below the lowest ground that touches it ≥ max(frost depth, 12 in)

    What to do: Dig deeper; local code may know exceptions for small buildings, which this check does not apply. Piers on bedrock are left out: rock does not heave.

    Source: IRC 2021 R403.1.4: below the frost line, at least 12 in below undisturbed ground (seen in the publication)
    "
  `));
  test("tenon-long", () =>
    expect(explain("tenon-long")).toMatchInlineSnapshot(`
    "tenon-long (warning, joinery)
    A tenon too long for its timber

    What: A blind tenon is longer than the timber it enters leaves room for.

    Why: It would come out on the far side, meet another tenon, or leave a skin of wood that breaks out.

    Formula: length ≤ thickness of the timber − housing − 1 in; with an opposite joint at most half the wood between the housings

    What to do: Shorten the tenon, or make it a through tenon (through: true).

    Source: common practice, no source: a blind mortise keeps 1 in of wood behind it; opposite tenons share the wood (common practice of the trade)
    "
  `));
});
