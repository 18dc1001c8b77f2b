import { describe, expect, it } from "vitest";
import { readFrame } from "../../server/document/read.ts";
import { PAVILION } from "./samples.ts";

const TEXT = `a: 1
list:
  - x
  - {y: 2}
long:
  k/ey: a
  t~lde: b
empty:
flow: {p: 1, q: [A, B], r: }
note: |
  several
  lines
base: &base {u: 1}
used: *base
more: {<<: *base, v: 2}
`;

describe("the index", () => {
  const { index } = readFrame(TEXT);
  const at = (pointer: string): string => TEXT.slice(index.range(pointer).start, index.range(pointer).end);
  const key = (pointer: string): string =>
    TEXT.slice(index.keyRange(pointer).start, index.keyRange(pointer).end);

  it("points at a scalar, and at the key of everything longer", () => {
    expect(at("/a")).toBe("1");
    expect(at("/list")).toBe("list");
    expect(at("/list/0")).toBe("x");
    expect(at("/list/1")).toBe("{y: 2}");
    expect(at("/flow")).toBe("flow");
    expect(at("/flow/q/1")).toBe("B");
    expect(at("/note")).toBe("note");
    expect(at("/empty")).toBe("empty");
    expect(at("")).toBe("a");
  });

  it("reads escaped keys", () => {
    expect(at("/long/k~1ey")).toBe("a");
    expect(key("/long/t~0lde")).toBe("t~lde");
  });

  it("falls back to the nearest place that stands in the file", () => {
    expect(at("/list/7/x")).toBe("list");
    expect(at("/flow/nothing/deeper")).toBe("flow");
    expect(at("/a/b")).toBe("a");
    expect(key("/nowhere")).toBe("a");
    expect(index.fullRange("/nowhere")).toBeUndefined();
  });

  it("leads through aliases and merge keys to where the value is written", () => {
    expect(index.range("/used/u")).toEqual(index.range("/base/u"));
    expect(index.range("/more/u")).toEqual(index.range("/base/u"));
    expect(index.fullRange("/used")).toEqual({
      start: TEXT.indexOf("*base"),
      end: TEXT.indexOf("*base") + 5,
    });
  });

  it("knows what stands at an offset", () => {
    const place = (mark: string, plus = 0): readonly [string, boolean] => {
      const { pointer, onKey } = index.pathAt(TEXT.indexOf(mark) + plus);
      return [pointer, onKey];
    };
    expect(place("1")).toEqual(["/a", false]);
    expect(place("list", 2)).toEqual(["/list", true]);
    expect(place("y: 2")).toEqual(["/list/1/y", true]);
    expect(place("y: 2", 3)).toEqual(["/list/1/y", false]);
    expect(place("B]")).toEqual(["/flow/q/1", false]);
    expect(place("r: }", 2)).toEqual(["/flow/r", false]);
    expect(place("empty:", 6)).toEqual(["/empty", false]);
    expect(place("several")).toEqual(["/note", false]);
    expect(place("*base", 1)).toEqual(["/used", false]);
    expect(index.pathAt(TEXT.length + 10).pointer).toBe("");
    expect(index.pathAt(-1).pointer).toBe("");
  });

  it("finds every place of a whole frame again from its own range", () => {
    const reading = readFrame(PAVILION);
    const walk = (value: unknown): void => {
      if (typeof value !== "object" || value === null || value instanceof Set || value instanceof Map) return;
      const { path } = value as { path?: unknown };
      if (typeof path === "string" && path !== "" && reading.index.node(path) !== undefined) {
        const { start } = reading.index.range(path);
        expect(reading.index.pathAt(start).pointer.startsWith(path), path).toBe(true);
      }
      for (const each of Object.values(value)) walk(each);
    };
    walk(reading.frame);
  });

  it("tells how a map is written", () => {
    const style = (pointer: string) => {
      const node = index.node(pointer);
      return node && index.style(node);
    };
    expect(style("/long")).toEqual({ flow: false, indent: 2 });
    expect(style("/list")).toEqual({ flow: false, indent: 2 });
    expect(style("/flow")?.flow).toBe(true);
    expect(style("")).toEqual({ flow: false, indent: 0 });
  });
});
