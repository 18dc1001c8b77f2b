/**
 * One drawing, independent of what it is written as. Two dimensions in inches of the frame, x to the right, y up;
 * writers (SVG first) flip and scale. Elements later in the list cover the earlier ones.
 */
import type { Pointer } from "../core/frame/frame.ts";

/** x, y, and the bulge of the way to the next vertex: tan(arc angle / 4), positive bends counter-clockwise. */
export type Vertex = readonly [x: number, y: number, bulge?: number];

/** What every element may carry. */
export interface Shown {
  readonly classes?: readonly string[];
  /** id of what it shows: `post@A1` */
  readonly id?: string;
  /** where in the file that is decided */
  readonly path?: Pointer;
  /** plain words for the tooltip and the screen reader */
  readonly title?: string;
  /** nothing of it can be seen behind what is nearer: keyboards need not stop at it */
  readonly covered?: boolean;
}

interface LineElement extends Shown {
  readonly type: "line";
  readonly from: Vertex;
  readonly to: Vertex;
}

export interface PolyElement extends Shown {
  readonly type: "poly";
  readonly points: readonly Vertex[];
  readonly closed: boolean;
}

interface CircleElement extends Shown {
  readonly type: "circle";
  readonly center: Vertex;
  readonly radius: number;
}

export type Anchor = "start" | "middle" | "end";

export interface TextElement extends Shown {
  readonly type: "text";
  /** on the baseline */
  readonly at: Vertex;
  readonly text: string;
  /** height of the letters' em, inches of the frame */
  readonly size: number;
  readonly anchor: Anchor;
}

interface GroupElement extends Shown {
  readonly type: "group";
  readonly children: readonly DrawingElement[];
}

export type DrawingElement = LineElement | PolyElement | CircleElement | TextElement | GroupElement;

export interface Box {
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
  readonly top: number;
}

export interface Drawing {
  readonly title: string;
  readonly classes?: readonly string[];
  /** inches of the frame */
  readonly viewBox: Box;
  readonly elements: readonly DrawingElement[];
  /** em of the drawing's usual text, inches of the frame; line weights follow it */
  readonly textSize: number;
  /** inches on paper for one inch of the frame, at the drawing's own size */
  readonly scale: number;
}

/** Widest usual sans-serif letters come to about this share of the em, averaged over a dimension's text. */
const LETTER = 0.58;
/** beyond this (about 160 miles) a coordinate is an accident, not a frame */
const FARTHEST = 1e7;

/** @returns the room a text takes, estimated from its letters; inches of the frame */
export function textBox(text: Pick<TextElement, "at" | "text" | "size" | "anchor">): Box {
  const width = [...text.text].length * LETTER * text.size;
  const [x, y] = text.at;
  const left = text.anchor === "start" ? x : text.anchor === "end" ? x - width : x - width / 2;
  return { left, right: left + width, bottom: y - 0.22 * text.size, top: y + 0.78 * text.size };
}

/** @returns the smallest box round all boxes; undefined when there is none */
export function union(boxes: readonly Box[]): Box | undefined {
  const [first, ...rest] = boxes;
  return first === undefined
    ? undefined
    : rest.reduce(
        (a, b) => ({
          left: Math.min(a.left, b.left),
          bottom: Math.min(a.bottom, b.bottom),
          right: Math.max(a.right, b.right),
          top: Math.max(a.top, b.top),
        }),
        first,
      );
}

/** @returns the box round points; undefined when there is none */
export function boxOf(points: readonly Vertex[]): Box | undefined {
  let [left, bottom, right, top] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    bottom = Math.min(bottom, y);
    top = Math.max(top, y);
  }
  return left <= right && bottom <= top ? { left, bottom, right, top } : undefined;
}

/** @returns the box round what an element draws; arcs count by their ends */
export function elementBox(element: DrawingElement): Box | undefined {
  switch (element.type) {
    case "line":
      return boxOf([element.from, element.to]);
    case "poly":
      return boxOf(element.points);
    case "circle": {
      const [x, y] = element.center;
      const r = element.radius;
      return { left: x - r, right: x + r, bottom: y - r, top: y + r };
    }
    case "text":
      return textBox(element);
    case "group":
      return union(element.children.flatMap((child) => elementBox(child) ?? []));
  }
}

const sane = (value: number | undefined): boolean => value === undefined || Math.abs(value) <= FARTHEST;
const saneVertex = (v: Vertex): boolean => sane(v[0]) && sane(v[1]) && sane(v[2]);

/** The element where all of it has a place; a group without those of its parts that have none. */
function soundElement(element: DrawingElement): DrawingElement | undefined {
  switch (element.type) {
    case "line":
      return saneVertex(element.from) && saneVertex(element.to) ? element : undefined;
    case "poly":
      return element.points.length > 1 && element.points.every(saneVertex) ? element : undefined;
    case "circle":
      return saneVertex(element.center) && sane(element.radius) && element.radius > 0 ? element : undefined;
    case "text":
      return saneVertex(element.at) && sane(element.size) && element.text !== "" ? element : undefined;
    case "group":
      return { ...element, children: sound(element.children) };
  }
}

/**
 * Leaves out what has no place on paper (not a number, without end), which a half-typed frame can bring about.
 * Groups stay, even empty, so that what they carry can still be found.
 */
export function sound(elements: readonly DrawingElement[]): DrawingElement[] {
  return elements.flatMap((element) => soundElement(element) ?? []);
}
