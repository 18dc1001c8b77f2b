/** What the drawings of single joints share: captions, titles, lines of text below, and the size of their letters. */
import { type Box, type Drawing, type DrawingElement, elementBox, textBox, union } from "./drawing.ts";

/** Width of the drawing in ems of its text: 320 px wide, its letters are still 9 px high. */
const WIDE = 36;
/** Height in ems at which the text rather grows no more: a tall joint is read in a tall picture. */
const TALL = 46;
/** No text smaller than this, inches of the frame. */
const LEAST_TEXT = 0.2;
export const EMPTY: Box = { left: 0, right: 10, bottom: 0, top: 10 };

export const boxOfAll = (elements: readonly DrawingElement[]): Box =>
  union(elements.flatMap((element) => elementBox(element) ?? [])) ?? EMPTY;

/** A caption under what is drawn, in the middle of its wood. */
export function captioned(
  text: string,
  elements: readonly DrawingElement[],
  wood: Box,
  size: number,
): DrawingElement[] {
  const low = boxOfAll(elements).bottom;
  return [
    ...elements,
    {
      type: "text",
      text,
      at: [(wood.left + wood.right) / 2, low - 1.2 * size],
      size,
      anchor: "middle",
      classes: ["label"],
    },
  ];
}

/** A line of text that fits the width, its end left out where it does not. */
export function fitted(text: string, size: number, width: number): string {
  const wide = (some: string): number => {
    const box = textBox({ at: [0, 0], text: some, size, anchor: "start" });
    return box.right - box.left;
  };
  if (wide(text) <= width) return text;
  const letters = [...text];
  while (letters.length > 1 && wide(`${letters.join("")}…`) > width) letters.pop();
  return `${letters.join("").trimEnd()}…`;
}

/** Words broken into lines of a width. */
export function inLines(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && fitted(longer, size, width) === longer) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines.map((line) => fitted(line, size, width));
}

/** Lines of text below each other. */
export function texts(lines: readonly string[], left: number, top: number, size: number): DrawingElement[] {
  return lines.map((text, i) => ({
    type: "text",
    text,
    at: [left, top - (i + 1) * 1.35 * size],
    size,
    anchor: "start",
    classes: ["label"],
  }));
}

/** The title of a sheet and a line below it. */
export function sheetHead(
  title: string,
  below: string,
  left: number,
  top: number,
  size: number,
): DrawingElement[] {
  return [
    {
      type: "text",
      text: title,
      at: [left, top + 2.9 * size],
      size: 1.1 * size,
      anchor: "start",
      classes: ["label", "title"],
    },
    {
      type: "text",
      text: below,
      at: [left, top + 1.5 * size],
      size,
      anchor: "start",
      classes: ["label"],
    },
  ];
}

/** A box round a sheet that is so wide, with a margin. */
export function withMargin(shown: Box, left: number, width: number, size: number): Box {
  const margin = 0.8 * size;
  return {
    left: Math.min(shown.left, left) - margin,
    right: Math.max(shown.right, left + width) + margin,
    bottom: shown.bottom - margin,
    top: shown.top + margin,
  };
}

/**
 * The text grows with the drawing it makes larger: a few rounds find the size that gives the wanted width.
 * @param start of the text, in
 */
export function grownText(start: number, draw: (size: number) => Drawing): Drawing {
  let size = Math.max(LEAST_TEXT, start);
  let sheet = draw(size);
  for (let round = 0; round < 4; round++) {
    const { left, right, top, bottom } = sheet.viewBox;
    const want = Math.max((right - left) / WIDE, (top - bottom) / TALL);
    if (Math.abs(want - size) < 0.01 * size) break;
    size = Math.max(LEAST_TEXT, Math.min(20, want));
    sheet = draw(size);
  }
  return sheet;
}
