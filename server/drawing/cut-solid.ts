/**
 * Wood as it is cut: straight solids put together and others taken away, asked by points and by rays. No surface is ever
 * computed, so that any kind of joint is drawn from its solids alone. Inches of the frame.
 */
import type { Prism } from "../core/joinery/joint.ts";
import type { Solid } from "../core/model/solid.ts";
import { along, cross, dot, sub, unit, type Vec2, type Vec3 } from "../core/model/vec.ts";

export type Interval = readonly [number, number];

/** A flat side of a block; its outline need not be convex. */
export interface Side {
  readonly normal: Vec3;
  /** dot(normal, p) of its points */
  readonly level: number;
  readonly polygon: readonly Vec3[];
}

/** One straight solid. */
export interface Block {
  readonly sides: readonly Side[];
  contains(p: Vec3): boolean;
  /** stretches of the line p + t·d inside the block */
  inside(p: Vec3, d: Vec3): readonly Interval[];
}

/** What is there of one piece of wood: all of `wood`, less all of `cut`. */
export interface CutSolid {
  readonly wood: readonly Block[];
  readonly cut: readonly Block[];
}

const NOWHERE: readonly Interval[] = [];

/** The stretch of a line between two parallel planes of one coordinate; undefined when it passes beside them. */
function between(at: number, speed: number, low: number, high: number): Interval | undefined {
  if (Math.abs(speed) < 1e-12) return at > low && at < high ? [-1e9, 1e9] : undefined;
  const [a, b] = [(low - at) / speed, (high - at) / speed];
  return a < b ? [a, b] : [b, a];
}

/** A convex solid by its faces' planes. */
export function convexBlock({ faces }: Pick<Solid, "faces">): Block {
  return {
    sides: faces,
    contains: (p) => faces.every((face) => dot(face.normal, p) < face.level),
    inside: (p, d) => {
      let [from, to] = [-1e9, 1e9];
      for (const face of faces) {
        const [at, speed] = [dot(face.normal, p) - face.level, dot(face.normal, d)];
        if (Math.abs(speed) < 1e-12) {
          if (at >= 0) return NOWHERE;
        } else if (speed > 0) to = Math.min(to, -at / speed);
        else from = Math.max(from, -at / speed);
      }
      return from < to ? [[from, to]] : NOWHERE;
    },
  };
}

/** Whether a point lies inside an outline: a ray from it crosses the outline an odd number of times. */
function within(outline: readonly Vec2[], [x, y]: Vec2): boolean {
  let odd = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) odd = !odd;
  });
  return odd;
}

/** The stretches of a flat line inside an outline. */
function insideOutline(outline: readonly Vec2[], p: Vec2, d: Vec2): Interval[] {
  if (Math.hypot(...d) < 1e-12) return within(outline, p) ? [[-1e9, 1e9]] : [];
  const side = (q: Vec2): number => d[0] * (q[1] - p[1]) - d[1] * (q[0] - p[0]);
  const way = (q: Vec2): number => ((q[0] - p[0]) * d[0] + (q[1] - p[1]) * d[1]) / (d[0] ** 2 + d[1] ** 2);
  const at: number[] = [];
  outline.forEach((a, i) => {
    const b = outline[(i + 1) % outline.length] ?? a;
    const [sa, sb] = [side(a), side(b)];
    if (sa > 0 === sb > 0) return;
    const share = sa / (sa - sb);
    at.push(way(a) + share * (way(b) - way(a)));
  });
  at.sort((a, b) => a - b);
  return pairs(at);
}

const pairs = (at: readonly number[]): Interval[] =>
  at.flatMap((from, i): Interval[] => {
    const to = at[i + 1];
    return i % 2 === 0 && to !== undefined && to > from ? [[from, to]] : [];
  });

/** A point of a prism: along u and v from its base, and along w. */
export const prismPoint = ({ base, u, v, w }: Prism, [a, b]: Vec2, c: number): Vec3 =>
  along(along(along(base, u, a), v, b), w, c);

/** A straight solid over any outline. */
export function prismBlock(prism: Prism): Block {
  const { base, u, v, w, outline } = prism;
  const [low, high] = [Math.min(prism.from, prism.to), Math.max(prism.from, prism.to)];
  const flat = (p: Vec3): Vec2 => [dot(sub(p, base), u), dot(sub(p, base), v)];
  const bottom = outline.map((o) => prismPoint(prism, o, low));
  const top = outline.map((o) => prismPoint(prism, o, high));
  const side = (normal: Vec3, polygon: readonly Vec3[]): Side => ({
    normal,
    level: dot(normal, polygon[0] ?? base),
    polygon,
  });
  const walls = bottom.flatMap((a, i): Side[] => {
    const j = (i + 1) % bottom.length;
    const [b, c, d] = [bottom[j], top[j], top[i]];
    if (!b || !c || !d) return [];
    const normal = unit(cross(sub(b, a), w));
    return dot(normal, normal) > 0.5 ? [side(normal, [a, b, c, d])] : [];
  });
  return {
    sides: [side(w, bottom), side(w, top), ...walls],
    contains: (p) => {
      const height = dot(sub(p, base), w);
      return height > low && height < high && within(outline, flat(p));
    },
    inside: (p, d) => {
      const stretch = between(dot(sub(p, base), w), dot(d, w), low, high);
      if (!stretch) return NOWHERE;
      return insideOutline(outline, flat(p), [dot(d, u), dot(d, v)]).flatMap(([from, to]): Interval[] => {
        const [a, b] = [Math.max(from, stretch[0]), Math.min(to, stretch[1])];
        return a < b ? [[a, b]] : [];
      });
    },
  };
}

/** @returns whether there is wood at a point */
export const isWood = ({ wood, cut }: CutSolid, p: Vec3): boolean =>
  wood.some((block) => block.contains(p)) && !cut.some((block) => block.contains(p));

/** @returns how much wood a ray from `p` meets, inches; counted up to `enough` */
export function woodAhead({ wood, cut }: CutSolid, p: Vec3, d: Vec3, enough: number): number {
  const ahead = wood.flatMap((block) => block.inside(p, d)).filter(([, to]) => to > 0);
  if (ahead.length === 0) return 0;
  const gone = cut.flatMap((block) => block.inside(p, d));
  const stops = [0, ...[...ahead, ...gone].flat().filter((t) => t > 0)].sort((a, b) => a - b);
  let sum = 0;
  for (let i = 0; i + 1 < stops.length && sum < enough; i++) {
    const [from = 0, to = 0] = [stops[i], stops[i + 1]];
    const middle = (from + to) / 2;
    const has = (all: readonly Interval[]): boolean => all.some(([a, b]) => a < middle && middle < b);
    if (has(ahead) && !has(gone)) sum += to - from;
  }
  return sum;
}
