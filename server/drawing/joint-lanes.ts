/** Dimensions in lanes beside a view: the shortest nearest to it, each number with room of its own. */
import type { Say } from "../core/checks/say.ts";
import type { Box, DrawingElement, TextElement } from "./drawing.ts";
import { textBox } from "./drawing.ts";

/** A stretch on paper to be measured. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Lanes {
  readonly elements: readonly DrawingElement[];
  /** how far they reach from the view */
  readonly reach: number;
}

/** Which side of the view they stand on: 1 above or to the right of it. */
export type LaneSide = -1 | 1;

/** From one level lane to the next, in ems. */
const LANE = 1.7;

const NONE: Lanes = { elements: [], reach: 0 };

/** The file's length without its unit, which the drawing names once. */
const sizeText = (value: number, say: Say): string => say.length(value).replace(/ (?:in|mm)$/, "");

interface Placed {
  readonly stretch: Stretch;
  readonly text: string;
  readonly lane: number;
}

/** Puts each stretch, the shortest first, into the nearest lane that has room for it and its number. */
function packed(
  stretches: readonly Stretch[],
  say: Say,
  room: (stretch: Stretch, text: string) => Stretch,
): Placed[] {
  const lanes: Stretch[][] = [];
  return [...stretches]
    .sort((a, b) => a.to - a.from - (b.to - b.from))
    .map((stretch) => {
      const text = sizeText(stretch.to - stretch.from, say);
      const needs = room(stretch, text);
      const free = lanes.findIndex((taken) =>
        taken.every((other) => needs.to < other.from || other.to < needs.from),
      );
      const lane = free < 0 ? lanes.push([]) - 1 : free;
      lanes[lane]?.push(needs);
      return { stretch, text, lane };
    });
}

const widthOf = (text: string, size: number): number => {
  const box = textBox({ at: [0, 0], text, size, anchor: "start" });
  return box.right - box.left;
};

const line = (from: readonly [number, number], to: readonly [number, number]): DrawingElement => ({
  type: "line",
  from,
  to,
});

const words = (
  text: string,
  at: readonly [number, number],
  anchor: TextElement["anchor"],
  size: number,
): DrawingElement => ({ type: "text", text, at, anchor, size });

/** Numbers over all lines: those of outer lanes pass under them. */
function group(children: readonly DrawingElement[]): DrawingElement[] {
  const isText = (element: DrawingElement): boolean => element.type === "text";
  const ordered = [...children.filter((one) => !isText(one)), ...children.filter(isText)];
  return [{ type: "group", classes: ["dimension"], children: ordered }];
}

/**
 * Level dimensions above or below a view. A number that does not fit into its stretch stands to the right of it.
 * @param box of the view; @param size em of the text, inches of the frame
 */
export function levelLanes(
  stretches: readonly Stretch[],
  box: Box,
  side: LaneSide,
  size: number,
  say: Say,
): Lanes {
  if (stretches.length === 0) return NONE;
  const tick = 0.3 * size;
  const fits = ({ from, to }: Stretch, text: string): boolean => widthOf(text, size) + 0.7 * size < to - from;
  const placed = packed(stretches, say, (stretch, text) => ({
    from: stretch.from - 0.4 * size,
    to: fits(stretch, text) ? stretch.to + 0.4 * size : stretch.to + widthOf(text, size) + 0.9 * size,
  }));
  const first = side > 0 ? 0.8 * size : 1.5 * size;
  const edge = side > 0 ? box.top : box.bottom;
  const elements = placed.flatMap(({ stretch, text, lane }) => {
    const { from, to } = stretch;
    const y = edge + side * (first + lane * LANE * size);
    const inside = fits(stretch, text);
    return [
      line([from - tick, y], [to + tick, y]),
      ...[from, to].flatMap((x) => [
        line([x, edge + side * 0.25 * size], [x, y + side * tick]),
        line([x - tick, y - tick], [x + tick, y + tick]),
      ]),
      inside
        ? words(text, [(from + to) / 2, y + 0.28 * size], "middle", size)
        : words(text, [to + 0.6 * size, y - 0.28 * size], "start", size),
    ];
  });
  const lanes = Math.max(...placed.map(({ lane }) => lane));
  return { elements: group(elements), reach: first + lanes * LANE * size + (side > 0 ? 1.15 : 0.4) * size };
}

/** Upright dimensions to the left or right of a view, each number beside its line. */
export function uprightLanes(
  stretches: readonly Stretch[],
  box: Box,
  side: LaneSide,
  size: number,
  say: Say,
): Lanes {
  if (stretches.length === 0) return NONE;
  const tick = 0.3 * size;
  const placed = packed(stretches, say, ({ from, to }) => {
    const half = Math.max((to - from) / 2 + 0.4 * size, 0.65 * size);
    return { from: (from + to) / 2 - half, to: (from + to) / 2 + half };
  });
  const edge = side > 0 ? box.right : box.left;
  const count = Math.max(...placed.map(({ lane }) => lane)) + 1;
  const wide = Array.from({ length: count }, (_, lane) =>
    Math.max(...placed.filter((one) => one.lane === lane).map((one) => widthOf(one.text, size))),
  );
  const offset = (lane: number): number =>
    wide.slice(0, lane).reduce((sum, each) => sum + each + 1.1 * size, 0.8 * size);
  const elements = placed.flatMap(({ stretch: { from, to }, text, lane }) => {
    const x = edge + side * offset(lane);
    return [
      line([x, from - tick], [x, to + tick]),
      ...[from, to].flatMap((y) => [
        line([edge + side * 0.25 * size, y], [x + side * tick, y]),
        line([x - tick, y - tick], [x + tick, y + tick]),
      ]),
      words(text, [x + side * 0.5 * size, (from + to) / 2 - 0.28 * size], side > 0 ? "start" : "end", size),
    ];
  });
  return { elements: group(elements), reach: offset(count - 1) + (wide.at(-1) ?? 0) + 0.6 * size };
}
