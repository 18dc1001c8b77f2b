import { describe, expect, test } from "vitest";
import type { Drawing, DrawingElement } from "../../server/drawing/drawing.ts";
import { toSvg } from "../../server/drawing/svg.ts";
import { parseXml, walk, withId } from "./xml.ts";

const drawing = (elements: readonly DrawingElement[], title = "A frame"): Drawing => ({
  title,
  viewBox: { left: -10, right: 110, bottom: -20, top: 60 },
  elements,
  textSize: 4,
  scale: 1 / 48,
});

const page = (elements: readonly DrawingElement[], title?: string) =>
  parseXml(toSvg(drawing(elements, title), { standalone: false }));

test("y runs up in the drawing and down on the page", () => {
  const svg = page([{ type: "line", from: [0, 10], to: [5, -3.14189] }]);
  expect(svg.attributes.get("viewBox")).toBe("-10 -60 120 80");
  const line = [...walk(svg)].find((node) => node.name === "line")!;
  expect(Object.fromEntries(line.attributes)).toEqual({ x1: "0", y1: "-10", x2: "5", y2: "3.142" });
});

test("for paper it has a size at scale and a style; for a page neither", () => {
  const paper = toSvg(drawing([]), { standalone: true });
  const root = parseXml(paper);
  expect(root.attributes.get("width")).toBe("2.5in");
  expect(root.attributes.get("height")).toBe("1.667in");
  expect(paper).toContain("<style>");
  const bare = toSvg(drawing([]), { standalone: false });
  expect(bare).not.toMatch(/style|width=|fill|stroke|#[0-9a-f]{3}/);
});

test("neither kind runs a script or refers to anything outside", () => {
  for (const standalone of [true, false]) {
    const svg = toSvg(
      drawing([{ type: "text", text: "javascript:", at: [0, 0], size: 1, anchor: "start" }]),
      { standalone },
    );
    expect(svg).not.toMatch(/<script|href|url\(|@import|\son\w+=/);
  }
});

describe("what an element carries", () => {
  const group: DrawingElement = {
    type: "group",
    classes: ["timber", "kind-post"],
    id: "post@A1",
    path: "/members/post",
    title: "post@A1, 8 in × 8 in",
    children: [{ type: "circle", center: [1, 2], radius: 3 }],
  };
  test("can be reached by keyboard and read aloud, its title first", () => {
    const [node] = withId(page([group]), "post@A1");
    expect(Object.fromEntries(node!.attributes)).toEqual({
      class: "timber kind-post",
      "data-id": "post@A1",
      "data-path": "/members/post",
      tabindex: "0",
      role: "img",
      "aria-label": "post@A1, 8 in × 8 in",
    });
    expect(node!.children[0]).toMatchObject({ name: "title", text: "post@A1, 8 in × 8 in" });
  });
  test("is no stop for the keyboard where nothing of it can be seen", () => {
    const [node] = withId(page([{ ...group, covered: true }]), "post@A1");
    expect(node!.attributes.has("tabindex")).toBe(false);
    expect(node!.attributes.get("data-path")).toBe("/members/post");
  });
});

test("odd names come through unharmed", () => {
  const odd = `"<b>&'\t]]> ü 木\n--><script>`;
  const svg = page([{ type: "group", id: odd, path: `/members/${odd}`, title: odd, children: [] }], odd);
  const [node] = withId(svg, odd);
  expect(node!.attributes.get("data-path")).toBe(`/members/${odd}`);
  expect(node!.attributes.get("aria-label")).toBe(odd);
  expect(node!.children[0]!.text.replace(/\s/g, "")).toBe(odd.replace(/\s/g, ""));
  expect(svg.attributes.get("aria-label")).toBe(odd);
});

test("characters that XML cannot hold are replaced", () => {
  const svg = page([{ type: "text", text: "a\u0000b\ud800c\uffffd", at: [0, 0], size: 1, anchor: "start" }]);
  const text = [...walk(svg)].find((node) => node.name === "text")!;
  expect(text.text).toBe("a\ufffdb\ufffdc\ufffdd");
});

describe("arcs", () => {
  const arcOf = (bulge: number): RegExpExecArray => {
    const svg = page([
      {
        type: "poly",
        closed: true,
        points: [
          [0, 0, bulge],
          [8, 0],
          [8, 5],
          [0, 5],
        ],
      },
    ]);
    const path = [...walk(svg)].find((node) => node.name === "path")!;
    return /^M0,0A([\d.]+),([\d.]+) 0 ([01]) ([01]) 8,0L8,-5L0,-5Z$/.exec(path.attributes.get("d")!)!;
  };
  test("a half circle has half its chord for radius", () => {
    expect(arcOf(1).slice(1)).toEqual(["4", "4", "0", "0"]);
  });
  test("turning the other way flips the sweep, not the radius", () => {
    expect(arcOf(-1).slice(1)).toEqual(["4", "4", "0", "1"]);
  });
  test("rise 1 over chord 8 has radius 8.5: (c²/4 + r²) / 2r", () => {
    expect(arcOf((2 * 1) / 8).slice(1)).toEqual(["8.5", "8.5", "0", "0"]);
  });
  test("more than half a circle takes the long way", () => {
    expect(arcOf(2).slice(3)).toEqual(["1", "0"]);
  });
});
