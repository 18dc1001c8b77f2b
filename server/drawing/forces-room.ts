/** Where a value is not crossed by lines of the diagrams. */
import { type Box, type DrawingElement, elementBox, textBox, type Vertex } from "./drawing.ts";
import type { TextPlace } from "./layout.ts";

/** Whether a straight line from a to b passes through a box (Liang and Barsky's clipping). */
function crosses(a: Vertex, b: Vertex, box: Box): boolean {
  let [from, to] = [0, 1];
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const sides: readonly (readonly [number, number])[] = [
    [-dx, a[0] - box.left],
    [dx, box.right - a[0]],
    [-dy, a[1] - box.bottom],
    [dy, box.top - a[1]],
  ];
  for (const [p, q] of sides) {
    if (p === 0 && q < 0) return false;
    if (p < 0) from = Math.max(from, q / p);
    if (p > 0) to = Math.min(to, q / p);
  }
  return from <= to;
}

/** An outline and the box round it. */
export interface Obstacle {
  readonly box: Box;
  readonly points: readonly Vertex[];
}

/** @returns outlines of all filled shapes; their hatching lies within */
export function obstaclesIn(elements: readonly DrawingElement[]): Obstacle[] {
  return elements.flatMap((element): Obstacle[] => {
    if (element.type === "group") return obstaclesIn(element.children);
    const box = element.type === "poly" && element.closed ? elementBox(element) : undefined;
    return box && element.type === "poly" ? [{ box, points: element.points }] : [];
  });
}

function touches({ box: own, points }: Obstacle, box: Box): boolean {
  if (own.left > box.right || own.right < box.left || own.bottom > box.top || own.top < box.bottom)
    return false;
  return points.some((p, i) => crosses(p, points[i + 1] ?? points[0] ?? p, box));
}

/**
 * @param text of letters of the given size
 * @returns the places, those that no outline runs through first, else in their order
 */
export function clearFirst(
  places: readonly TextPlace[],
  text: string,
  size: number,
  obstacles: readonly Obstacle[],
): TextPlace[] {
  const clear = places.map(({ x, y, anchor }) => {
    const box = textBox({ at: [x, y], text, size, anchor });
    return !obstacles.some((obstacle) => touches(obstacle, box));
  });
  return [...places.filter((_, i) => clear[i]), ...places.filter((_, i) => !clear[i])];
}
