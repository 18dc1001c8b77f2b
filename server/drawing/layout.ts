/** Room for words: what is placed keeps its room, and a word that finds none stands elsewhere or not at all. */
import type { Say } from "../core/checks/say.ts";
import { type Anchor, type Box, type DrawingElement, type TextElement, textBox } from "./drawing.ts";

export interface TextPlace {
  readonly x: number;
  readonly y: number;
  readonly anchor: Anchor;
}

export class Layout {
  readonly size: number;
  readonly say: Say;
  readonly #taken: Box[] = [];

  /** @param size em of the usual text, inches of the frame */
  constructor(size: number, say: Say) {
    this.size = size;
    this.say = say;
  }

  /**
   * Writes a text at the first place with room for it.
   * @returns the text, or nothing when no place has room
   */
  write(
    text: string,
    places: readonly TextPlace[],
    classes: readonly string[],
    size = this.size,
  ): DrawingElement[] {
    for (const { x, y, anchor } of places) {
      const element: TextElement = { type: "text", text, at: [x, y], anchor, size, classes };
      const box = textBox(element);
      if (this.#taken.some((other) => overlaps(box, other))) continue;
      this.#taken.push(box);
      return [element];
    }
    return [];
  }

  /** @returns the width a text of the usual size takes */
  width(text: string): number {
    const box = textBox({ at: [0, 0], text, size: this.size, anchor: "start" });
    return box.right - box.left;
  }
}

const overlaps = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

/**
 * Moves positions apart as little as needed (least squares, pooling neighbors that push each other).
 * @param wanted in ascending order
 * @returns positions in the same order, at least `gap` apart
 */
export function spread(wanted: readonly number[], gap: number): number[] {
  interface Pool {
    first: number;
    mean: number;
    count: number;
  }
  const pools: Pool[] = [];
  for (const want of wanted) {
    let pool: Pool = { first: want, mean: want, count: 1 };
    for (;;) {
      const before = pools.at(-1);
      if (before === undefined || pool.first - before.first >= before.count * gap - 1e-9) break;
      pools.pop();
      // what the pool's first wants, every later member counted back by its gaps
      const mean =
        (before.mean * before.count + (pool.mean - before.count * gap) * pool.count) /
        (before.count + pool.count);
      pool = { first: mean, mean, count: before.count + pool.count };
    }
    pools.push(pool);
  }
  return pools.flatMap((pool) => Array.from({ length: pool.count }, (_, i) => pool.mean + i * gap));
}
