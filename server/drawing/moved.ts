/** A drawn element at another place. */
import type { DrawingElement, Vertex } from "./drawing.ts";

/** @param dx to the right, @param dy up; inches of the frame */
export function moved(element: DrawingElement, dx: number, dy: number): DrawingElement {
  const to = ([x, y, bulge]: Vertex): Vertex =>
    bulge === undefined ? [x + dx, y + dy] : [x + dx, y + dy, bulge];
  switch (element.type) {
    case "line":
      return { ...element, from: to(element.from), to: to(element.to) };
    case "poly":
      return { ...element, points: element.points.map(to) };
    case "circle":
      return { ...element, center: to(element.center) };
    case "text":
      return { ...element, at: to(element.at) };
    case "group":
      return { ...element, children: element.children.map((child) => moved(child, dx, dy)) };
  }
}
