import { describe, expect, test } from "vitest";
import { boardFeet, nominalOf } from "../../../server/core/shop/board-feet.ts";
import { tableOf } from "../../reference/cases.ts";

// Source: lumber scale in board feet, BFTAB of test/reference/geometry.yaml.
const scale = tableOf("geometry", "board-feet");

describe(`board feet of nominal sizes (${scale.status})`, () => {
  test("the scale has rows", () => expect(scale.records.length).toBeGreaterThan(10));

  test.each(scale.records)("$thickness x $width", (record) => {
    const lengths = Object.keys(record).filter((column) => /^ft\d+$/.test(column));
    expect(lengths.length).toBeGreaterThan(5);
    for (const column of lengths) {
      const found = boardFeet(record.thickness, record.width, Number(column.slice(2)) * 12);
      expect(Math.abs(found - record[column]), column).toBeLessThanOrEqual(
        scale.absolute!.board_feet! + 1e-9,
      );
    }
  });
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
