/**
 * Reads the files of outside figures beside this one: cases with inputs, expected results, tolerance, status, source.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { parse } from "yaml";

export interface Case {
  readonly id: string;
  readonly what: string;
  readonly edition?: string;
  // biome-ignore lint/suspicious/noExplicitAny: inputs differ from case to case; each test reads its own
  readonly given: Record<string, any>;
  // biome-ignore lint/suspicious/noExplicitAny: as above
  readonly expect: Record<string, any>;
  readonly tolerance: number | { readonly absolute: number };
  readonly absolute?: Record<string, number>;
  readonly status: string;
  readonly source: string;
  readonly agrees: boolean;
}

export interface Table {
  readonly "id-prefix": string;
  readonly what: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (string | number | boolean)[])[];
  readonly tolerance: number | { readonly absolute: number };
  readonly absolute?: Record<string, number>;
  readonly status: string;
  readonly source: string;
}

/** One row of a table, by column name. */
// biome-ignore lint/suspicious/noExplicitAny: columns differ from table to table
export type Row = Record<string, any>;

// biome-ignore lint/suspicious/noExplicitAny: the files differ at their heads
export function readReference(name: string): any {
  return parse(readFileSync(fileURLToPath(new URL(`./${name}.yaml`, import.meta.url)), "utf8"));
}

/** Cases that an independent recomputation reproduces, of the id prefixes named. */
export function casesOf(name: string, ...prefixes: readonly string[]): Case[] {
  const all: Case[] = readReference(name).cases;
  return all.filter((c) => c.agrees && prefixes.some((p) => c.id.startsWith(p)));
}

export function tableOf(name: string, prefix: string): Table & { readonly records: readonly Row[] } {
  const file = readReference(name);
  const tables: Table[] = [...(file.tables ?? []), ...(file.table ? [file.table] : [])];
  const table = tables.find((t) => t["id-prefix"] === prefix)!;
  const records = table.rows.map((row) => Object.fromEntries(table.columns.map((c, i) => [c, row[i]])));
  return { ...table, records: records.filter((r) => r.agrees !== false) };
}

/** Compares every expected figure of a case: nothing may be left out, nothing may be made up. */
// biome-ignore lint/suspicious/noExplicitAny: results differ from case to case
export function check(c: Case, got: Record<string, any>): void {
  expect(Object.keys(got).sort(), `${c.id}: which figures are expected`).toEqual(
    Object.keys(c.expect).sort(),
  );
  for (const [key, want] of Object.entries(c.expect)) {
    if (typeof want === "object" && want !== null && !Array.isArray(want)) {
      check({ ...c, id: `${c.id} ${key}`, expect: want }, got[key]);
      continue;
    }
    if (typeof want !== "number") {
      expect(got[key], `${c.id} ${key}`).toEqual(want);
      continue;
    }
    const common = typeof c.tolerance === "number" ? c.tolerance * Math.abs(want) : c.tolerance.absolute;
    const allowed = Math.max(c.absolute?.[key] ?? 0, common, roundingOfPrint(want)) + 1e-9;
    const off = Math.abs(got[key] - want);
    expect(
      off,
      `${c.id} ${key}: got ${got[key]}, want ${want} ± ${allowed} (${c.source})`,
    ).toBeLessThanOrEqual(allowed);
  }
}

export const titleOf = (c: Case): string => `${c.id} (${c.status}): ${c.what}`;

type FiguresOf = (given: Case["given"], want: Case["expect"]) => Case["expect"];

/**
 * Registers a test for each case. `figures` is found by the longest of its keys that the case's id begins with; a case
 * without figures fails, and so does a key that no case uses.
 */
export function compareCases(cases: readonly Case[], figures: Readonly<Record<string, FiguresOf>>): void {
  const keyOf = (id: string): string | undefined =>
    Object.keys(figures)
      .filter((key) => id.startsWith(key))
      .sort((a, b) => b.length - a.length)[0];
  test.each(cases.map((c) => [titleOf(c), c] as const))("%s", (_title, c) => {
    check(c, figures[keyOf(c.id)!]!(c.given, c.expect));
  });
  test("every way to figures is used", () => {
    const used = new Set(cases.map((c) => keyOf(c.id)));
    expect(Object.keys(figures).filter((key) => !used.has(key))).toEqual([]);
  });
}

/** The files print at most nine significant digits: half a unit of the ninth. */
function roundingOfPrint(want: number): number {
  return want === 0 ? 0 : 0.5 * 10 ** (Math.floor(Math.log10(Math.abs(want))) - 8);
}
