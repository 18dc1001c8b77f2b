/** What the tests look for in a drawing: its parts, its texts, and texts that lie over one another. */
import {
  type Box,
  type Drawing,
  type DrawingElement,
  type PolyElement,
  type TextElement,
  textBox,
} from "../../server/drawing/drawing.ts";

/** Every element, those in groups too. */
export function* each(elements: readonly DrawingElement[]): Generator<DrawingElement> {
  for (const element of elements) {
    yield element;
    if (element.type === "group") yield* each(element.children);
  }
}

export const textsOf = (drawing: Drawing): TextElement[] =>
  [...each(drawing.elements)].filter((element) => element.type === "text");

const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/** Pairs of texts that lie over one another. */
export function overlapping(drawing: Drawing): string[] {
  const texts = textsOf(drawing);
  return texts.flatMap((a, i) =>
    texts.slice(i + 1).flatMap((b) => (overlap(textBox(a), textBox(b)) ? [`${a.text} over ${b.text}`] : [])),
  );
}

/** The group of an id. */
export function groupOf(drawing: Drawing, id: string): Extract<DrawingElement, { type: "group" }> {
  const group = drawing.elements.find((element) => element.id === id);
  if (group?.type !== "group") throw new Error(`no group ${id}`);
  return group;
}

export function outlineOf(drawing: Drawing, id: string): PolyElement {
  const [first] = groupOf(drawing, id).children;
  if (first?.type !== "poly") throw new Error(`no outline of ${id}`);
  return first;
}
