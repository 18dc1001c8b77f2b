/** Nothing in joints.yaml is left out: its cases and tables are shared among joints-steel, joints-pegs and joints-wood. */
import { describe, expect, test } from "vitest";
import { type Case, casesOf, type Row, readReference, tableOf } from "./cases.ts";
import { TABLES, TOPICS } from "./joints-topics.ts";

const file = readReference("joints");

describe("joints.yaml", () => {
  test("every case that a second program reproduces belongs to one test", () => {
    const ids = casesOf("joints", "").map((c) => c.id);
    const shared = Object.values(TOPICS).flatMap((prefixes) =>
      casesOf("joints", ...prefixes).map((c) => c.id),
    );
    expect([...shared].sort()).toEqual([...ids].sort());
    expect(ids.length).toBeGreaterThan(40);
  });
  test("the cases that are not reproduced are these, and say why", () => {
    const left: Case[] = file.cases.filter((c: Case) => !c.agrees);
    expect(left.map((c) => c.id)).toEqual(["screw-double", "peg-test-1"]);
    for (const c of left) expect((c as Row).note).toBeTruthy();
  });
  test("every table is read, with every row", () => {
    const read: string[] = Object.values(TABLES).flat();
    expect(file.tables.map((t: Row) => t["id-prefix"])).toEqual(read);
    const rows = file.tables.map((t: Row) => t.rows.length);
    expect(read.map((name) => tableOf("joints", name).records.length)).toEqual(rows);
  });
});
