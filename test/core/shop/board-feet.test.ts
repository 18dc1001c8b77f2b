import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parse } from "yaml";
import { boardFeet, nominalOf } from "../../../server/core/shop/board-feet.ts";

interface Table {
  readonly "id-prefix": string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly (number | boolean)[])[];
  readonly absolute: { readonly board_feet: number };
  readonly status: string;
}

const text = readFileSync(new URL("../../reference/geometry.yaml", import.meta.url), "utf8");
const tables = (parse(text) as { readonly tables: readonly Table[] }).tables;
const scale = tables.find((table) => table["id-prefix"] === "board-feet");

// Source: lumber scale in board feet, BFTAB of test/reference/geometry.yaml.
describe("board feet of nominal sizes", () => {
  const rows = (scale?.rows ?? []).filter((row) => row[scale?.columns.indexOf("agrees") ?? -1] === true);

  test("the scale has rows", () => expect(rows.length).toBeGreaterThan(10));

  test.each(rows.map((row) => ({ row, thickness: Number(row[0]), width: Number(row[1]) })))(
    `$thickness x $width (${scale?.status})`,
    ({ row, thickness, width }) => {
      scale?.columns.forEach((column, index) => {
        const feet = /^ft(\d+)$/.exec(column)?.[1];
        if (feet === undefined) return;
        const difference = boardFeet(thickness, width, Number(feet) * 12) - Number(row[index]);
        expect(Math.abs(difference), column).toBeLessThanOrEqual(scale.absolute.board_feet + 1e-9);
      });
    },
  );
});

test.each([
  [1.5, 2],
  [3.5, 4],
  [5.5, 6],
  [7.25, 8],
  [7.5, 8],
  [8, 8],
])("a dressed %d in was nominally %d in (memory: PS 20)", (dressed, nominal) => {
  expect(nominalOf(dressed)).toBe(nominal);
});
