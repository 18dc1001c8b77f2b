import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Edit } from "../../server/core/checks/check.ts";
import { toTextEdit } from "../../server/document/edits.ts";
import { readFrame } from "../../server/document/read.ts";
import { walkTree } from "../../server/document/read-yaml.ts";
import { child, keysOf } from "../../server/document/tree.ts";
import { PAVILION } from "./samples.ts";

function apply(text: string, edit: Edit): string {
  const change = toTextEdit(readFrame(text), edit);
  if (change === undefined) return "no edit";
  return text.slice(0, change.start) + change.newText + text.slice(change.end);
}

const replace = (text: string, path: string, value: string): string =>
  apply(text, { kind: "replace", path, text: value });
const add = (text: string, path: string, key: string, value: string): string =>
  apply(text, { kind: "add", path, key, text: value });

describe("replacing a value", () => {
  it("changes nothing but the value", () => {
    expect(replace("a: 1 # why\nb: 2\n", "/a", "3")).toBe("a: 3 # why\nb: 2\n");
    expect(replace("a: {b: 1, c: 2}\n", "/a/b", "9 in")).toBe("a: {b: 9 in, c: 2}\n");
    expect(replace("a: [x, y]\n", "/a/1", "z")).toBe("a: [x, z]\n");
    expect(replace("a: 'x'\n", "/a", "y")).toBe("a: y\n");
  });

  it("fills in a missing value, and takes the place of a block", () => {
    expect(replace("a:\nb: 2\n", "/a", "1")).toBe("a: 1\nb: 2\n");
    expect(replace("a: {b: , c: 2}\n", "/a/b", "1")).toBe("a: {b: 1 , c: 2}\n");
    expect(replace("a:\n  b: 1\n  c: 2\nd: 3\n", "/a", "x")).toBe("a: x\nd: 3\n");
    expect(replace("a:\n  - 1\n  - 2\nd: 3\n", "/a", "[1]")).toBe("a: [1]\nd: 3\n");
    expect(replace("a: |\n  text\n  text\nd: 3\n", "/a", "x")).toBe("a: x\nd: 3\n");
    expect(replace("- \n- 2\n", "/0", "1")).toBe("- 1\n- 2\n");
  });

  it("puts in quotes what would not stay one value", () => {
    expect(replace("a: {b: 1}\n", "/a/b", "x, y")).toBe('a: {b: "x, y"}\n');
    expect(replace("a: 1\n", "/a", "x, y")).toBe("a: x, y\n");
    expect(replace("a: 1\n", "/a", "see: here")).toBe('a: "see: here"\n');
    expect(replace("a: 1\n", "/a", "#1")).toBe('a: "#1"\n');
    expect(replace("a: 1\n", "/a", "~")).toBe('a: "~"\n');
  });

  it("gives a merged value to the map itself, and an alias its own value", () => {
    expect(replace("a: &a {x: 1}\nb: {<<: *a, y: 2}\n", "/b/x", "5")).toBe(
      "a: &a {x: 1}\nb: {<<: *a, y: 2, x: 5}\n",
    );
    expect(replace("a: &a [1]\nb: *a\n", "/b", "[2]")).toBe("a: &a [1]\nb: [2]\n");
  });
});

describe("adding a key", () => {
  it("follows the hand of a block", () => {
    expect(add("a:\n   b: 1 # one\nc: 2\n", "/a", "d", "3")).toBe("a:\n   b: 1 # one\n   d: 3\nc: 2\n");
    expect(add("a:\r\n  b: 1\r\nc: 2\r\n", "/a", "d", "3")).toBe("a:\r\n  b: 1\r\n  d: 3\r\nc: 2\r\n");
    expect(add("a:\n  b:\n    c: 1\n\n\nd: 2", "/a", "e", "3")).toBe("a:\n  b:\n    c: 1\n  e: 3\n\n\nd: 2");
    expect(add("a: 1", "", "b", "2")).toBe("a: 1\nb: 2");
    expect(add("\uFEFFa: 1\n", "", "b", "2")).toBe("\uFEFFa: 1\nb: 2\n");
    expect(add("a:\n  - x: 1\n  - x: 2\n", "/a/0", "y", "3")).toBe("a:\n  - x: 1\n    y: 3\n  - x: 2\n");
    expect(add("a:\n  b: |\n    text\n\nc: 1\n", "/a", "d", "2")).toBe(
      "a:\n  b: |\n    text\n  d: 2\n\nc: 1\n",
    );
  });

  it("follows the hand of an inline map", () => {
    expect(add("a: {b: 1} # c\n", "/a", "d", "3")).toBe("a: {b: 1, d: 3} # c\n");
    expect(add("a: {}\n", "/a", "d", "3")).toBe("a: {d: 3}\n");
    expect(add("a: {b: 1,}\n", "/a", "d", "3")).toBe("a: {b: 1, d: 3}\n");
    expect(add("a: { b: 1 }\n", "/a", "d", "3")).toBe("a: { b: 1, d: 3 }\n");
    expect(add("a: {\n  b: 1, # one\n  c: 2 # two\n}\n", "/a", "d", "3")).toBe(
      "a: {\n  b: 1, # one\n  c: 2, d: 3 # two\n}\n",
    );
  });

  it("makes the maps on the way", () => {
    expect(add("site:\nb: 1\n", "/site", "soil", "sand")).toBe("site:\n  soil: sand\nb: 1\n");
    expect(add("site: # mine\nb: 1\n", "/site", "soil", "sand")).toBe("site: # mine\n  soil: sand\nb: 1\n");
    expect(add("b: 1\n", "/site/snow", "slides", "true")).toBe("b: 1\nsite: {snow: {slides: true}}\n");
    expect(add("a: {site: , b: 1}\n", "/a/site", "soil", "sand")).toBe("a: {site: {soil: sand} , b: 1}\n");
    expect(add("", "", "frame", "Shed")).toBe("frame: Shed\n");
    expect(add("# mine\n", "/site", "soil", "sand")).toBe("# mine\nsite: {soil: sand}\n");
    expect(replace("b: 1\n", "/site/soil", "sand")).toBe("b: 1\nsite: {soil: sand}\n");
  });

  it("appends to lists", () => {
    expect(add("a: [1]\n", "/a", "-", "2")).toBe("a: [1, 2]\n");
    expect(add("a: []\n", "/a", "-", "2")).toBe("a: [2]\n");
    expect(add("a:\n  - 1\n  - 2\nb: 1\n", "/a", "-", "3")).toBe("a:\n  - 1\n  - 2\n  - 3\nb: 1\n");
    expect(add("b: 1\n", "/accept", "-", "{check: x, because: y}")).toBe(
      "b: 1\naccept: [{check: x, because: y}]\n",
    );
    expect(add("accept:\nb: 1\n", "/accept", "-", "{check: x}")).toBe("accept:\n  - {check: x}\nb: 1\n");
  });

  it("does not write over what it cannot read", () => {
    expect(add("a: 1\n", "/a", "b", "2")).toBe("no edit");
    expect(add('site: "x\nb: 1\n', "/site", "soil", "sand")).toBe("no edit");
  });
});

describe("renaming a key", () => {
  it("changes nothing but the key", () => {
    expect(apply("a: {bb: 1}\n", { kind: "rename-key", path: "/a/bb", text: "c" })).toBe("a: {c: 1}\n");
    expect(apply("a: [1]\n", { kind: "rename-key", path: "/a/0", text: "c" })).toBe("no edit");
    expect(apply("a: 1\n", { kind: "rename-key", path: "/b", text: "c" })).toBe("no edit");
  });

  it("replaces characters where they stand", () => {
    expect(apply("a: #1\n", { kind: "characters", start: 3, end: 5, text: "no-1" })).toBe("a: no-1\n");
  });
});

describe("any edit", () => {
  const BLOCKS = "a:\n  b: 1\n  c:\n    - x\n    - y: 2\n      z: 3\n  d:\ne: {f: [1, {g: 2}], h: }\n";
  const hands = [PAVILION, PAVILION.replaceAll("\n", "\r\n"), `\uFEFF${PAVILION}`, BLOCKS, BLOCKS.trimEnd()];
  const value = fc.oneof(
    fc.constantFrom(
      "6 1/2 in",
      "8x8",
      "true",
      "A1",
      "8'-6\"",
      "reviewed by me, in May",
      "x: y",
      "#1",
      "- a",
      "[b",
      "½",
    ),
    fc.string({ maxLength: 12 }).filter((text) => !/^(?:\[.*\]|\{.*\}|".*"|'.*')$/.test(text)),
  );

  it("reads back at the place it was made for, and moves nothing else", () => {
    const all = hands.map((text) => ({ text, places: [...walkTree(readFrame(text).index.root)].slice(1) }));
    fc.assert(
      fc.property(fc.nat(all.length - 1), fc.nat(), value, (hand, pick, written) => {
        const { text, places } = all[hand]!;
        const { pointer } = places[pick % places.length] ?? { pointer: "" };
        const edited = replace(text, pointer, written);
        const after = readFrame(edited);
        const node = after.index.node(pointer);
        expect(node, edited).toMatchObject({ kind: "scalar", text: written });
        const untouched = (each: string): boolean => each !== pointer && !each.startsWith(`${pointer}/`);
        const before = places.map((each) => each.pointer).filter(untouched);
        const now = [...walkTree(after.index.root)].slice(1).map((each) => each.pointer);
        expect(now.filter(untouched)).toEqual(before);
      }),
      { numRuns: 300 },
    );
  });

  it("adds a key where it is wanted", () => {
    const all = hands.map((text) => {
      const places = [...walkTree(readFrame(text).index.root)];
      return { text, maps: places.filter(({ node }) => node.kind === "map" || node.kind === "blank") };
    });
    fc.assert(
      fc.property(fc.nat(all.length - 1), fc.nat(), value, (hand, pick, written) => {
        const { text, maps } = all[hand]!;
        const { pointer } = maps[pick % maps.length] ?? { pointer: "" };
        const after = readFrame(add(text, pointer, "new-key", written));
        expect(after.index.node(child(pointer, "new-key"))).toMatchObject({ kind: "scalar", text: written });
        for (const each of keysOf(pointer)) expect(each).not.toBe("new-key");
      }),
      { numRuns: 200 },
    );
  });
});
