/** The box that says what a layer shows: layer, combination, scale, what each pattern means. */
import { type DrawingElement, textBox, type Vertex } from "./drawing.ts";
import { strokes } from "./forces-diagram.ts";
import type { Layout } from "./layout.ts";

export type Swatch = "positive" | "negative" | "slack" | "deflected";

export interface LegendRow {
  readonly text: string;
  /** a sample of the pattern, or a bar of this length (inches) for the scale */
  readonly sample?: Swatch | number;
  readonly heading?: boolean;
}

/** ems: letters, from row to row, width of a sample, and of the widest line of words */
const LETTERS = 0.85;
const ROW = 1.35;
const SAMPLE = 3;
const WIDEST = 44;

/** Breaks words into lines no wider than the room. */
function wrapped(text: string, size: number, room: number): string[] {
  const width = (line: string): number => {
    const box = textBox({ at: [0, 0], text: line, size, anchor: "start" });
    return box.right - box.left;
  };
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const longer = `${lines.at(-1) ?? ""} ${word}`;
    if (lines.length > 0 && width(longer) <= room) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function swatch(kind: Swatch | number, x: number, y: number, s: number): DrawingElement[] {
  if (typeof kind === "number") {
    const [tick, end] = [0.3 * s, x + kind];
    const bar = (from: Vertex, to: Vertex): DrawingElement => ({ type: "line", from, to });
    return [bar([x, y], [end, y]), bar([x, y - tick], [x, y + tick]), bar([end, y - tick], [end, y + tick])];
  }
  const end = x + SAMPLE * s;
  if (kind === "slack" || kind === "deflected")
    return [{ type: "line", from: [x, y], to: [end, y], classes: [kind] }];
  const [low, high] = [y - 0.4 * s, y + 0.4 * s];
  const inner = strokes(0, SAMPLE * s, 0.5 * s, kind === "positive", (at) => [
    [x + at, low],
    [x + at, high],
  ]);
  const outline: Vertex[] = [
    [x, low],
    [end, low],
    [end, high],
    [x, high],
  ];
  return [
    { type: "poly", points: outline, closed: true, classes: [kind] },
    { type: "poly", points: inner, closed: false, classes: ["strokes", kind] },
  ];
}

/**
 * @param left and @param top corner of the box, inches
 * @param room how wide it may be at most
 */
export function drawLegend(
  layout: Layout,
  rows: readonly LegendRow[],
  left: number,
  top: number,
  room: number,
): DrawingElement {
  const s = layout.size;
  const size = LETTERS * s;
  const pad = 0.8 * s;
  const longest = Math.max(
    SAMPLE * s,
    ...rows.map(({ sample }) => (typeof sample === "number" ? sample : 0)),
  );
  const words = left + pad + longest + 0.8 * s;
  const most = Math.max(12 * s, Math.min(room, WIDEST * s) - (words - left) - pad);
  const children: DrawingElement[] = [];
  let [y, right] = [top - pad, words];
  for (const { text, sample, heading } of rows) {
    const x = sample === undefined ? left + pad : words;
    const lines = wrapped(text, size, heading || sample !== undefined ? most : most + (words - left) - pad);
    if (sample !== undefined) children.push(...swatch(sample, left + pad, y - 0.5 * ROW * s, s));
    for (const line of lines) {
      const at: Vertex = [x, y - 0.5 * ROW * s - 0.28 * size];
      const classes = heading ? ["label", "title"] : ["label"];
      const element = { type: "text", at, text: line, size, anchor: "start", classes } as const;
      right = Math.max(right, textBox(element).right);
      children.push(element);
      y -= ROW * s;
    }
  }
  const [end, bottom] = [right + pad, y - pad];
  const box: Vertex[] = [
    [left, bottom],
    [end, bottom],
    [end, top],
    [left, top],
  ];
  return {
    type: "group",
    classes: ["legend"],
    children: [{ type: "poly", points: box, closed: true, classes: ["legend-box"] }, ...children],
  };
}
