/** What the drawings of single joints share: captions, titles, lines of text below, and the size of their letters. */
import type { Say } from "../core/checks/say.ts";
import { type Box, type Drawing, type DrawingElement, elementBox, sound, textBox, union } from "./drawing.ts";
import { paperScale } from "./paper.ts";

/** Width of the drawing in ems of its text: 320 px wide, its letters are still 9 px high. */
const WIDE = 36;
/** Height in ems at which the text rather grows no more: a tall joint is read in a tall picture. */
const TALL = 46;
/** A sheet is at least so wide in ems, whatever it shows. */
const LEAST_WIDE = 34.4;
/** No text smaller than this, inches of the frame. */
const LEAST_TEXT = 0.2;
const EMPTY: Box = { left: 0, right: 10, bottom: 0, top: 10 };

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
function fitted(text: string, size: number, width: number): string {
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
function inLines(text: string, size: number, width: number): string[] {
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
function texts(lines: readonly string[], left: number, top: number, size: number): DrawingElement[] {
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
function sheetHead(title: string, below: string, left: number, top: number, size: number): DrawingElement[] {
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
function withMargin(shown: Box, left: number, width: number, size: number): Box {
  const margin = 0.8 * size;
  return {
    left: Math.min(shown.left, left) - margin,
    right: Math.max(shown.right, left + width) + margin,
    bottom: shown.bottom - margin,
    top: shown.top + margin,
  };
}

/** In what its numbers count and what broken lines mean. */
export const sizesIn = (say: Say): string =>
  `${say.metric ? say.text("Sizes in mm.") : say.text("Sizes in inches.")} ${say.text("Dashed: hidden.")}`;

/**
 * The sheet of one joint: its views where they lie, a head over them and words below.
 * @param below line under the title
 * @param words each broken into lines of the sheet's width
 * @param size of the text, in
 */
export function jointSheet(
  {
    title,
    below,
    words,
    views,
  }: {
    readonly title: string;
    readonly below: string;
    readonly words: readonly string[];
    readonly views: readonly { readonly id: string; readonly elements: readonly DrawingElement[] }[];
  },
  size: number,
  say: Say,
): Drawing {
  const drawn = union(views.map(({ elements }) => boxOfAll(elements))) ?? EMPTY;
  const width = Math.max(drawn.right - drawn.left, LEAST_WIDE * size);
  const left = (drawn.left + drawn.right - width) / 2;
  const head = sheetHead(fitted(title, 1.1 * size, width), fitted(below, size, width), left, drawn.top, size);
  const lines = words.flatMap((one) => inLines(one, size, width));
  const foot = texts(lines, left, drawn.bottom - 0.3 * size, size);
  const shown = boxOfAll([...head, ...foot, ...views.flatMap(({ elements }) => elements)]);
  const viewBox = withMargin(shown, left, width, size);
  return {
    title,
    classes: ["joint-sheet"],
    viewBox,
    elements: sound([
      ...head,
      ...views.map(
        ({ id, elements }): DrawingElement => ({
          type: "group",
          classes: ["joint-view", `view-${id}`],
          children: elements,
        }),
      ),
      ...foot,
    ]),
    textSize: size,
    scale: paperScale(viewBox.right - viewBox.left, viewBox.top - viewBox.bottom, say.metric).ratio,
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
