/** From where one looks at the frame: the views that a frame has, and how a view lays space on paper. */

import type { Say } from "../core/checks/say.ts";
import type { GridLine, Pointer } from "../core/frame/frame.ts";
import type { Model } from "../core/model/model.ts";
import { dot, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { inches } from "../core/quantity/length.ts";

export interface GridAt {
  readonly id: string;
  readonly path: Pointer;
  /** inches along x (bents) or y (walls) */
  readonly at: number;
}

export interface Sight {
  readonly kind: "front" | "side" | "bent" | "wall";
  /** `front`, `side`, the bent or the wall */
  readonly id: string;
  readonly title: string;
  /** the axis of space that runs to the right on paper: 0 along the walls, 1 across the bents */
  readonly across: 0 | 1;
  /** unit vector from the frame to the eye */
  readonly toward: Vec3;
  /** grid lines seen end-on, in order across the page */
  readonly lines: readonly GridAt[];
  /** grid lines that lie in the page, the nearest first */
  readonly layers: readonly GridAt[];
  /** the bent or wall that is drawn alone */
  readonly only: GridAt | undefined;
}

const sorted = (lines: readonly GridLine[]): GridAt[] =>
  lines.map((line) => ({ id: line.id, path: line.path, at: inches(line.at) })).sort((a, b) => a.at - b.at);

type Fill = (pattern: string, values: Readonly<Record<string, string>>) => string;
const plain: Fill = (pattern, values) =>
  pattern.replace(/\{(\w+)\}/g, (hole, name: string) => values[name] ?? hole);

function sights(model: Model, fill: Fill): Sight[] {
  const walls = sorted(model.frame.grid.walls);
  const bents = sorted(model.frame.grid.bents);
  const [firstWall, firstBent, lastBent] = [walls[0]?.id, bents[0]?.id, bents.at(-1)?.id];
  const end = { across: 1, toward: [1, 0, 0], lines: walls, layers: [...bents].reverse() } as const;
  const long = { across: 0, toward: [0, -1, 0], lines: bents, layers: walls } as const;
  const fromEnd = bents.length < 2 ? "Front" : "Front, seen from bent {last} toward bent {first}";
  const fromWall = firstWall === undefined ? "Side" : "Side, seen from outside wall {wall}";
  const names = { first: firstBent ?? "", last: lastBent ?? "", wall: firstWall ?? "" };
  const all: Sight[] = [
    { ...end, kind: "front", id: "front", title: fill(fromEnd, names), only: undefined },
    { ...long, kind: "side", id: "side", title: fill(fromWall, names), only: undefined },
    ...bents.map((bent): Sight => {
      const title =
        bent.id === lastBent
          ? "Bent {bent}, seen from outside"
          : "Bent {bent}, seen from the side of bent {last}";
      return {
        ...end,
        kind: "bent",
        id: bent.id,
        title: fill(title, { ...names, bent: bent.id }),
        layers: [bent],
        only: bent,
      };
    }),
    ...walls.map((wall): Sight => {
      const title =
        wall.id === firstWall
          ? "Wall {id}, seen from outside"
          : "Wall {id}, seen from the side of wall {wall}";
      return {
        ...long,
        kind: "wall",
        id: wall.id,
        title: fill(title, { ...names, id: wall.id }),
        layers: [wall],
        only: wall,
      };
    }),
  ];
  // a grid line named like a view, or twice, is drawn once: the first keeps the name
  return all.filter((sight, i) => all.findIndex((other) => other.id === sight.id) === i);
}

/** The views that a frame has, in order: `front`, `side`, each bent, each wall. */
export function viewsOf(model: Model, say?: Say): { readonly id: string; readonly title: string }[] {
  const fill: Fill = say === undefined ? plain : (pattern, values) => say.text(pattern, values);
  return sights(model, fill).map(({ id, title }) => ({ id, title }));
}

/** @returns the view of that name, or the front where there is none */
export function sightOf(model: Model, view: string, say: Say): Sight {
  const all = sights(model, (pattern, values) => say.text(pattern, values));
  const found = all.find((sight) => sight.id === view) ?? all[0];
  if (found === undefined) throw new Error("a frame always has a front");
  return found;
}

/** @returns where a point of space lies on paper */
export const project = (sight: Sight, p: Vec3): Vec2 => [p[sight.across], p[2]];

/** @returns how near a point is to the eye; larger is nearer */
export const nearness = (sight: Sight, p: Vec3): number => dot(p, sight.toward);

/** @returns a plan point: so far to the right on paper, in the layer at `depth` along the axis that runs away */
export const planPoint = (sight: Sight, right: number, depth: number): Vec2 =>
  sight.across === 0 ? [right, depth] : [depth, right];
