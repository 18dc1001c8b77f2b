import fc from "fast-check";
import { expect, test } from "vitest";
import { same } from "../../server/language/same.ts";

test.each([
  ["numbers", 1, 1, true],
  ["not a number", Number.NaN, Number.NaN, true],
  ["texts", "a", "b", false],
  ["nothing and null", undefined, null, false],
  ["lists", [1, [2]], [1, [2]], true],
  ["lists of other length", [1], [1, 2], false],
  ["objects", { a: 1, b: { c: 2 } }, { b: { c: 2 }, a: 1 }, true],
  ["a key more", { a: 1 }, { a: 1, b: undefined }, false],
  ["another key with nothing in it", { a: undefined }, { b: undefined }, false],
  ["a list and an object", [], {}, false],
  ["sets", new Set(["a", "b"]), new Set(["a", "b"]), true],
  ["sets that differ", new Set(["a"]), new Set(["b"]), false],
  ["maps", new Map([["a", { x: 1 }]]), new Map([["a", { x: 1 }]]), true],
  ["maps that differ", new Map([["a", { x: 1 }]]), new Map([["a", { x: 2 }]]), false],
  ["a map and a set", new Map(), new Set(), false],
])("%s", (_, a, b, expected) => {
  expect(same(a, b)).toBe(expected);
  expect(same(b, a)).toBe(expected);
});

test("a copy is the same, whatever it holds", () => {
  fc.assert(
    fc.property(fc.object({ withMap: true, withSet: true }), (value) => same(value, structuredClone(value))),
  );
});
