/** Height of the ground from what the file gives along bents, along walls, or at single places. */
import type { Frame } from "../frame/frame.ts";
import { inches } from "../quantity/length.ts";
import { type GridLines, placeLines, spanAcross } from "./grid.ts";
import type { ModelProblem } from "./problems.ts";

export type Ground = (x: number, y: number) => number | undefined;

interface Station {
  readonly at: number;
  readonly z: number;
}

/** Straight between stations, level beyond the outer ones. */
function between(stations: readonly Station[], at: number): number | undefined {
  const first = stations[0];
  if (!first) return undefined;
  if (at <= first.at) return first.z;
  for (let i = 1; i < stations.length; i++) {
    const a = stations[i - 1];
    const b = stations[i];
    if (a && b && at <= b.at) return b.at === a.at ? b.z : a.z + ((b.z - a.z) * (at - a.at)) / (b.at - a.at);
  }
  return stations.at(-1)?.z;
}

/** A line's own position: the middle of a post on it would be nearer the truth than its face by half a post, no more. */
function stationsFor(frame: Frame, lines: GridLines["bents"]): Station[] {
  return lines.flatMap((line) => {
    const given = frame.site.ground.find((g) => g.key === line.id);
    return given ? [{ at: line.at, z: inches(given.height) }] : [];
  });
}

export interface GroundPlan {
  readonly ground: Ground;
  /** a place's own height, where the file gives one */
  readonly atPlace: (place: string) => number | undefined;
  readonly problems: readonly ModelProblem[];
}

/**
 * Reads the ground heights. By bent or by wall; a place's own key (`A3`) goes before both at that place.
 * Where bents and walls are both given, a place without a key of its own has two readings, and that is said.
 */
export function groundPlan(frame: Frame, grid: GridLines): GroundPlan {
  const byBent = stationsFor(frame, grid.bents);
  const byWall = stationsFor(frame, grid.walls);
  const known = new Set([...grid.bents, ...grid.walls].map((l) => l.id));
  const own = new Map<string, number>();
  const problems: ModelProblem[] = [];
  for (const given of frame.site.ground) {
    if (known.has(given.key)) continue;
    const place = placeOf(given.key, grid);
    if (place) own.set(given.key, inches(given.height));
    else if (!mayBeDefined(frame, given.key))
      problems.push({
        kind: "unknown-id",
        path: given.path,
        text: given.key,
        sort: "reference",
        known: [...known],
      });
  }
  if (byBent.length > 0 && byWall.length > 0) {
    const first = frame.site.ground[0];
    problems.push({
      kind: "two-readings",
      path: first ? first.path.slice(0, first.path.lastIndexOf("/")) : frame.site.path,
      what: "ground",
      readings: [byBent.length, byWall.length].map((n, i) => `${n} ${i === 0 ? "bents" : "walls"}`),
    });
  }
  const points = [...own].flatMap(([key, z]) => {
    const p = placeOf(key, grid);
    return p ? [{ ...p, z }] : [];
  });
  return {
    ground: (x, y) =>
      byBent.length > 0 ? between(byBent, x) : byWall.length > 0 ? between(byWall, y) : nearest(points, x, y),
    atPlace: (place) => own.get(place),
    problems,
  };
}

/** What a line that is lost may define is not called unknown. */
function mayBeDefined({ lost, unread }: Frame, key: string): boolean {
  const parts = [key, ...key.split(/(?<=\D)(?=\d)/)];
  return (
    lost.has("/grid") ||
    (/\d/.test(key) && lost.has("/grid/bents")) ||
    (/^\D/.test(key) && lost.has("/grid/walls")) ||
    parts.some((part) => unread.has(part))
  );
}

function placeOf(key: string, grid: GridLines): { readonly x: number; readonly y: number } | undefined {
  const match = /^([A-Za-z]+)(\d+)$/.exec(key);
  const lines =
    match?.[1] && match[2]
      ? placeLines(grid, { path: "", text: key, wall: match[1], bent: match[2], along: undefined })
      : undefined;
  if (!lines?.bent) return undefined;
  return { x: spanAcross(lines.bent, 0)[0], y: spanAcross(lines.wall, 0)[0] };
}

/** With single places only: weighted by nearness (inverse square), exact at each place. */
function nearest(
  points: readonly { x: number; y: number; z: number }[],
  x: number,
  y: number,
): number | undefined {
  let sum = 0;
  let weight = 0;
  for (const p of points) {
    const d2 = (p.x - x) ** 2 + (p.y - y) ** 2;
    if (d2 < 1e-6) return p.z;
    sum += p.z / d2;
    weight += 1 / d2;
  }
  return weight > 0 ? sum / weight : undefined;
}
