/** Grid lines with their names in a circle, and the levels with theirs. */
import type { Body } from "./body.ts";
import type { Box, DrawingElement } from "./drawing.ts";
import { type Layout, spread } from "./layout.ts";
import type { GridAt, Sight } from "./views.ts";

export interface GridDrawing {
  readonly elements: DrawingElement[];
  /** lower end of the lowest circle */
  readonly bottom: number;
  /** left end of the leftmost circle */
  readonly left: number;
}

/**
 * Grid lines seen end-on, through the height of the frame, with their names in circles below it.
 * @param word what a line is called: `wall` or `bent`
 */
export function drawGrid(layout: Layout, lines: readonly GridAt[], around: Box, word: string): GridDrawing {
  const s = layout.size;
  const longest = Math.max(1, ...lines.map((line) => [...line.id].length));
  const radius = Math.max(0.95 * s, (longest * 0.58 * s) / 2 + 0.35 * s);
  const y = around.bottom - 1.2 * s - radius;
  const shifted = spread(
    lines.map((line) => line.at),
    2.2 * radius,
  );
  const elements = lines.flatMap((line, i): DrawingElement[] => {
    const x = shifted[i] ?? line.at;
    const knee = y + radius + 0.8 * s;
    return [
      {
        type: "group",
        id: line.id,
        path: line.path,
        title: layout.say.text("{word} {name}", { word: layout.say.text(word), name: line.id }),
        classes: ["grid"],
        children: [
          { type: "line", from: [line.at, around.top + s], to: [line.at, knee], classes: ["grid-line"] },
          { type: "line", from: [line.at, knee], to: [x, y + radius], classes: ["grid-line"] },
          { type: "circle", center: [x, y], radius, classes: ["grid-bubble"] },
          ...layout.write(line.id, [{ x, y: y - 0.3 * s, anchor: "middle" }], ["label"]),
        ],
      },
    ];
  });
  return {
    elements,
    bottom: lines.length > 0 ? y - radius : around.bottom,
    left: Math.min(around.left, ...shifted.map((x) => x - radius)),
  };
}

/** The center line of a ridge seen end-on, down through the king-post that stands under it. */
export function drawCenter(
  sight: Sight,
  bodies: readonly Body[],
  around: Box,
  size: number,
): DrawingElement[] {
  const ridge = bodies.find((body) => body.timber.kind === "ridge" && sight.across === 1);
  if (ridge === undefined) return [];
  const x = (ridge.box.left + ridge.box.right) / 2;
  const kings = bodies.filter(
    (body) => body.timber.kind === "king-post" && body.box.left < x && body.box.right > x,
  );
  const foot = Math.min(ridge.box.bottom, ...kings.map((king) => king.box.bottom));
  return [{ type: "line", from: [x, around.top + size], to: [x, foot - size], classes: ["centre-line"] }];
}

export interface LevelAt {
  readonly name: string;
  readonly height: number;
  readonly id?: string;
  readonly path?: string;
}

/** Names and heights of the levels at the left, moved apart where they would touch. */
export function drawLevels(layout: Layout, levels: readonly LevelAt[], left: number): DrawingElement[] {
  const s = layout.size;
  const sorted = [...levels].sort((a, b) => a.height - b.height);
  const places = spread(
    sorted.map((level) => level.height),
    1.25 * s,
  );
  return sorted.map((level, i) => {
    const y = places[i] ?? level.height;
    const words = layout.say.text("{name} {height}", {
      name: level.name,
      height: layout.say.length(level.height),
    });
    return {
      type: "group",
      classes: ["level"],
      ...(level.id === undefined ? {} : { id: level.id }),
      ...(level.path === undefined ? {} : { path: level.path }),
      title: words,
      children: [
        {
          type: "poly",
          closed: false,
          classes: ["dimension"],
          points: [
            [left, level.height],
            [left - 1.5 * s, level.height],
            [left - 2.5 * s, y],
            [left - 3 * s, y],
          ],
        },
        ...layout.write(words, [{ x: left - 3.3 * s, y: y - 0.3 * s, anchor: "end" }], ["label"]),
      ],
    };
  });
}
