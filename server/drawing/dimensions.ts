/** Chains of dimensions: a line with ticks where it is measured, and the length beside it. */
import type { DrawingElement } from "./drawing.ts";
import { type Layout, spread } from "./layout.ts";

/** lengths below this are the same place */
const SAME = 1 / 32;

/** @returns positions in order, those that fall together once */
export function distinct(positions: readonly number[]): number[] {
  const sorted = positions.filter(Number.isFinite).sort((a, b) => a - b);
  return sorted.filter((p, i) => i === 0 || p - (sorted[i - 1] ?? p) > SAME);
}

const pairs = (positions: readonly number[]): [number, number][] =>
  positions.slice(1).map((to, i) => [positions[i] ?? to, to]);

const line = (from: readonly [number, number], to: readonly [number, number]): DrawingElement => ({
  type: "line",
  from,
  to,
});

const group = (children: readonly DrawingElement[]): DrawingElement[] =>
  children.length === 0 ? [] : [{ type: "group", classes: ["dimension"], children }];

/**
 * Lengths along a level line, each written above its stretch, below it where the one beside it took the room.
 * @param y of the dimension line
 * @param reach where the lines that carry the measure up (or down) to the frame end, for each position
 */
export function levelChain(
  layout: Layout,
  positions: readonly number[],
  y: number,
  reach: (x: number) => number,
): DrawingElement[] {
  const at = distinct(positions);
  const [first, last] = [at[0], at.at(-1)];
  if (first === undefined || last === undefined || at.length < 2) return [];
  const s = layout.size;
  const tick = 0.35 * s;
  const texts = pairs(at)
    .map(([a, b]) => ({ a, b, text: layout.say.length(b - a) }))
    // the longest finds its place first, the shortest gives way
    .sort((p, q) => q.b - q.a - (p.b - p.a))
    .flatMap(({ a, b, text }) => {
      const x = (a + b) / 2;
      const places = [
        { x, y: y + 0.4 * s, anchor: "middle" as const },
        { x, y: y - 1.05 * s, anchor: "middle" as const },
      ];
      return layout.write(text, places, ["dimension"]);
    });
  return group([
    line([first - tick, y], [last + tick, y]),
    ...at.flatMap((x) => {
      const end = reach(x);
      const past = y + (end < y ? tick : -tick);
      return [line([x, end], [x, past]), line([x - tick, y - tick], [x + tick, y + tick])];
    }),
    ...texts,
  ]);
}

export interface UprightChain {
  readonly elements: DrawingElement[];
  /** right end of the widest text */
  readonly right: number;
}

/**
 * Heights along an upright line, each written at its right.
 * @param x of the dimension line
 * @param reach where the lines that carry the measure to the frame end, for each height
 */
export function uprightChain(
  layout: Layout,
  positions: readonly number[],
  x: number,
  reach: (z: number) => number,
): UprightChain {
  const at = distinct(positions);
  const [first, last] = [at[0], at.at(-1)];
  if (first === undefined || last === undefined || at.length < 2) return { elements: [], right: x };
  const s = layout.size;
  const tick = 0.35 * s;
  const stretches = pairs(at);
  const centers = spread(
    stretches.map(([a, b]) => (a + b) / 2),
    1.15 * s,
  );
  const words = stretches.map(([a, b]) => layout.say.length(b - a));
  const texts = stretches.flatMap(([a, b], i) => {
    const center = centers[i] ?? (a + b) / 2;
    // pushed far from what it measures, a number would be read as its neighbor's
    const astray = center < a - s || center > b + s;
    const place = { x: x + 0.6 * s, y: center - 0.3 * s, anchor: "start" as const };
    return astray ? [] : layout.write(words[i] ?? "", [place], ["dimension"]);
  });
  return {
    elements: group([
      line([x, first - tick], [x, last + tick]),
      ...at.flatMap((z) => [
        line([reach(z), z], [x + tick, z]),
        line([x - tick, z - tick], [x + tick, z + tick]),
      ]),
      ...texts,
    ]),
    right: x + 0.6 * s + Math.max(0, ...words.map((word) => layout.width(word))),
  };
}
