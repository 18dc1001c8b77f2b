import { describe, expect, it } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { readYaml } from "../../server/document/read-yaml.ts";
import { type Tree, valueAt } from "../../server/document/tree.ts";
import { lines, placeOf } from "./facts.ts";
import { PAVILION, SMALL } from "./samples.ts";

/** A tree as plain data: maps as lists of pairs, so that order and odd keys show. */
function shape(tree: Tree | undefined): unknown {
  switch (tree?.kind) {
    case "map":
      return tree.entries.map(({ key, value }) => [key, shape(value)]);
    case "list":
      return { list: tree.items.map(({ value }) => shape(value)) };
    case "scalar":
      return tree.text;
    default:
      return null;
  }
}

const read = (text: string): unknown => shape(readYaml(text).root);

describe("the syntax tree", () => {
  it("keeps keys in the order of the file, also numbers", () => {
    expect(read("b: 1\n2: x\n1: y\n")).toEqual([
      ["b", "1"],
      ["2", "x"],
      ["1", "y"],
    ]);
  });

  it("keeps scalars as they are written", () => {
    expect(read("{a: 1.50, b: 0x1F, c: 1e999, d: yes, e: 7:12, f: '12', g: NaN}")).toEqual([
      ["a", "1.50"],
      ["b", "0x1F"],
      ["c", "1e999"],
      ["d", "yes"],
      ["e", "7:12"],
      ["f", "12"],
      ["g", "NaN"],
    ]);
  });

  it("reads feet and inches without quotes", () => {
    expect(read('{a: 8\'-6 1/2", b: 6"}\n')).toEqual([
      ["a", "8'-6 1/2\""],
      ["b", '6"'],
    ]);
  });

  it("knows where every value stands, behind a byte order mark, carriage returns and characters beyond the first plane", () => {
    for (const mark of ["", "\uFEFF"]) {
      for (const end of ["\n", "\r\n"]) {
        const text = `${mark}a: 🪵 x${end}b: {c: ½, d: [x, "🪵"]}${end}`;
        const { root } = readYaml(text);
        const at = (node: Tree | undefined): string => text.slice(node?.range.start, node?.range.end);
        expect(at(valueAt(root, "a"))).toBe("🪵 x");
        const b = valueAt(root, "b");
        expect(at(b)).toBe('{c: ½, d: [x, "🪵"]}');
        expect(at(valueAt(b, "c"))).toBe("½");
        const d = valueAt(b, "d");
        expect(d?.kind === "list" && d.items.map((item) => at(item.value))).toEqual(["x", '"🪵"']);
      }
    }
  });

  it("takes values through aliases, with their ranges where they are written", () => {
    const text = "a: &places [A1, A2]\nb: *places\n";
    const { root, facts } = readYaml(text);
    const b = valueAt(root, "b");
    expect(facts).toEqual([]);
    expect(shape(b)).toEqual({ list: ["A1", "A2"] });
    expect(b?.range).toEqual(valueAt(root, "a")?.range);
  });

  it("takes keys through merge keys; a map's own keys win, then the first of a list", () => {
    expect(read("a: &a {x: 1, y: 2}\nb: &b {y: 3, z: 4}\nc: {<<: [*a, *b], x: 9}\nd: {<<: *a}\n")).toEqual([
      [
        "a",
        [
          ["x", "1"],
          ["y", "2"],
        ],
      ],
      [
        "b",
        [
          ["y", "3"],
          ["z", "4"],
        ],
      ],
      [
        "c",
        [
          ["x", "9"],
          ["y", "2"],
          ["z", "4"],
        ],
      ],
      [
        "d",
        [
          ["x", "1"],
          ["y", "2"],
        ],
      ],
    ]);
  });

  it("reports what cannot be merged, an unknown alias, and an alias to what holds it", () => {
    const codes = (text: string): unknown =>
      readYaml(text).facts.map((fact) => (fact.kind === "yaml" ? fact.code : fact.kind));
    expect(codes("a: 1\n<<: [1, 2]\n")).toContain("BAD_MERGE");
    expect(codes("a: *b\n")).toEqual(["BAD_ALIAS"]);
    expect(codes("a: &a [*a]\n")).toEqual(["BAD_ALIAS"]);
    expect(codes("a: {[x]: 1}\n")).toEqual(["NON_STRING_KEY"]);
  });

  it('treats 1 and "1" as the same key', () => {
    const { facts, root } = readYaml('1: a\n"1": b\n');
    expect(facts).toEqual([{ kind: "duplicate-key", path: "/1", key: "1", first: "/1", start: 5, end: 8 }]);
    expect(shape(root)).toEqual([["1", "a"]]);
  });

  it("knows nothing of prototypes", () => {
    const text = `${SMALL}__proto__: {frame: x}\nconstructor: 1\ntoString: 2\n`;
    const facts = readFrame(text).source.facts;
    expect(facts.map((fact) => fact.kind === "unknown-key" && fact.key)).toEqual([
      "__proto__",
      "constructor",
      "toString",
    ]);
    expect(({} as Record<string, unknown>).frame).toBeUndefined();
    const own = readFrame(SMALL.replace("post: {", "constructor: {"));
    expect(own.source.facts).toEqual([]);
    expect(own.frame.members[0]?.name).toBe("constructor");
  });
});

describe("line ends and marks", () => {
  const BROKEN = PAVILION.replace("soil: sand", "soil: sannd")
    .replace("section: 8x9", "section: 8y9")
    .replace("leg: 27 in", "leg: 27 inn")
    .replace("grade: no-1", "grade: #1")
    .replace("draw: 3/32 in", 'draw: "3/32 in')
    .replace("size: 4}}", "size: 4}")
    .replace("kerf: 3/32 in", "kerff: 3/32 in");

  it("change no fact and no place", () => {
    const plain = readFrame(BROKEN);
    const words = lines(plain).map((line) => line.replace(/ \d+( |$)/g, " "));
    expect(words).toHaveLength(7);
    const marked = (reading: ReturnType<typeof readFrame>): readonly string[] =>
      reading.source.facts.map((fact) => {
        const { start, end } = placeOf(reading, fact);
        return reading.text.slice(start, end);
      });
    for (const text of [
      BROKEN.replaceAll("\n", "\r\n"),
      `\uFEFF${BROKEN}`,
      `\uFEFF${BROKEN.replaceAll("\n", "\r\n")}`,
      `# 🪵🪵\n${BROKEN}`,
    ]) {
      const other = readFrame(text);
      expect(lines(other).map((line) => line.replace(/ \d+( |$)/g, " "))).toEqual(words);
      expect(marked(other)).toEqual(marked(plain));
      expect(other.frame).toEqual(plain.frame);
    }
  });

  it("points at the very characters", () => {
    const reading = readFrame(`\uFEFF${BROKEN.replaceAll("\n", "\r\n")}`);
    const marked = reading.source.facts.map((fact) => {
      const { start, end } = placeOf(reading, fact);
      return reading.text.slice(start, end);
    });
    expect(marked.sort()).toEqual(['"', "#1", "27 inn", "8y9", "kerff", "sannd", "{"].sort());
  });
});

describe("tabs", () => {
  it("get a fact of their own for each line, and stand for a step of indentation", () => {
    const text = SMALL.replace(/^ {2}/gm, "\t");
    const reading = readFrame(text);
    expect(lines(reading)).toEqual(Array(3).fill('yaml TAB_AS_INDENT "\t"'));
    expect(reading.frame).toEqual(readFrame(SMALL).frame);
  });
});
