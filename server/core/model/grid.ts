/**
 * Grid lines in order, and the rule that a line is a reference face: outer lines are the outside faces of what stands
 * on them, inner lines the centers; `reference:` on a line says otherwise.
 */
import type { Frame, GridLine, GridPlace, GridReference } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";

export interface Line {
  readonly id: string;
  /** inches from the first line of its kind */
  readonly at: number;
  readonly reference: "outward" | "center" | "toward-first";
  /** -1 the first line, 1 the last, 0 an inner one */
  readonly side: -1 | 0 | 1;
}

export interface GridLines {
  /** in order of y and x, not of the file */
  readonly walls: readonly Line[];
  readonly bents: readonly Line[];
  readonly wall: ReadonlyMap<string, Line>;
  readonly bent: ReadonlyMap<string, Line>;
}

function referenceOf(given: GridReference, side: -1 | 0 | 1): Line["reference"] {
  if (given === "center") return "center";
  if (given === "outward") return side === 0 ? "center" : "outward";
  if (given === "toward-1" || given === "toward-a") return "toward-first";
  return side === 0 ? "center" : "outward";
}

function order(lines: readonly GridLine[]): Line[] {
  const sorted = [...lines].sort((p, q) => p.at - q.at);
  return sorted.map((line, index) => {
    const side = index === 0 ? -1 : index === sorted.length - 1 ? 1 : 0;
    return { id: line.id, at: inches(line.at), reference: referenceOf(line.reference, side), side };
  });
}

export function gridLines(frame: Frame): GridLines {
  const walls = order(frame.grid.walls);
  const bents = order(frame.grid.bents);
  return {
    walls,
    bents,
    wall: new Map(walls.map((w) => [w.id, w])),
    bent: new Map(bents.map((b) => [b.id, b])),
  };
}

/**
 * Where a timber of this breadth lies across a grid line.
 * @param breadth size across the line, inches
 * @returns the lower and the higher face, inches
 */
export function spanAcross(line: Line, breadth: number): readonly [number, number] {
  if (line.reference === "center") return [line.at - breadth / 2, line.at + breadth / 2];
  if (line.reference === "outward" && line.side === 1) return [line.at - breadth, line.at];
  return [line.at, line.at + breadth];
}

/**
 * Which face of a timber on this line is its reference face: outward at outer lines, toward the first at inner ones and
 * where the line says so (then that face lies on the line).
 */
export function referenceSign(line: Line | undefined): -1 | 1 {
  return line?.side === 1 && line.reference !== "toward-first" ? 1 : -1;
}

/** The next line after `line` in the given direction, if there is one. */
export function neighbor(lines: readonly Line[], at: number, direction: -1 | 1): Line | undefined {
  const beyond = lines.filter((l) => (l.at - at) * direction > 1e-6);
  return direction === 1 ? beyond[0] : beyond[beyond.length - 1];
}

/** Plan position of a place: the line itself for `A1`, so far along the wall for `B@4 ft 9 in`; undefined when unknown. */
export function placeLines(
  grid: GridLines,
  place: GridPlace,
): { readonly wall: Line; readonly bent: Line | undefined; readonly x: number | undefined } | undefined {
  const wall = grid.wall.get(place.wall);
  if (!wall) return undefined;
  if (place.along !== undefined)
    return { wall, bent: undefined, x: (grid.bents[0]?.at ?? 0) + inches(place.along) };
  const bent = place.bent === undefined ? undefined : grid.bent.get(place.bent);
  return bent ? { wall, bent, x: undefined } : undefined;
}
