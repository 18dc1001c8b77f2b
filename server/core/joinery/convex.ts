/** Convex solids that joints cut or fill, and how far two of them are apart or stand in each other. Plane geometry, inches. */
import { add, along, cross, dot, length, scale, sub, unit, type Vec2, type Vec3 } from "../model/vec.ts";
import type { Peg, Prism } from "./joint.ts";

/** All points within `radius` of the convex hull of `points`: a prism with radius 0, or a peg as its axis with its radius. */
export interface Convex {
  readonly points: readonly Vec3[];
  /** outward unit normals with their corners, in turning order */
  readonly faces: readonly { readonly normal: Vec3; readonly corners: readonly Vec3[] }[];
  readonly edges: readonly (readonly [Vec3, Vec3])[];
  /** unit vectors; each way of an edge once */
  readonly ways: readonly Vec3[];
  readonly radius: number;
}

const SMALL = 1e-9;

/** Twice the area of an outline, positive where it turns from u to v. */
function turning(outline: readonly Vec2[]): number {
  return outline.reduce((sum, [x, y], i) => {
    const [nx, ny] = outline[(i + 1) % outline.length] ?? [x, y];
    return sum + x * ny - nx * y;
  }, 0);
}

const turn = (a: Vec2, b: Vec2, c: Vec2): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** An outline in convex pieces: itself, or triangles cut off ear by ear where it has a re-entrant corner. */
export function convexParts(outline: readonly Vec2[]): readonly (readonly Vec2[])[] {
  const left = turning(outline) < 0 ? [...outline].reverse() : [...outline];
  const at = (i: number): Vec2 => left[(i + left.length) % left.length] ?? [0, 0];
  const isConvex = (): boolean => left.every((_, i) => turn(at(i - 1), at(i), at(i + 1)) >= -SMALL);
  const parts: Vec2[][] = [];
  while (left.length > 3 && !isConvex()) {
    const ear = left.findIndex((_, i) => {
      const [a, b, c] = [at(i - 1), at(i), at(i + 1)];
      if (turn(a, b, c) <= SMALL) return false;
      return left.every(
        (p) =>
          p === a ||
          p === b ||
          p === c ||
          turn(a, b, p) < -SMALL ||
          turn(b, c, p) < -SMALL ||
          turn(c, a, p) < -SMALL,
      );
    });
    // an outline that crosses itself has no ears: what is left of it counts as one piece
    if (ear < 0) break;
    parts.push([at(ear - 1), at(ear), at(ear + 1)]);
    left.splice(ear, 1);
  }
  return [...parts, left];
}

/** A prism as convex solids: one, or several where its outline has a re-entrant corner. */
export function convexOf(prism: Prism): Convex[] {
  const { base, u, v, w, from, to } = prism;
  if (!(to > from)) return [];
  return convexParts(prism.outline).flatMap((outline) => {
    if (outline.length < 3 || turning(outline) < SMALL) return [];
    const ring = (at: number): Vec3[] =>
      outline.map(([x, y]) => along(along(along(base, u, x), v, y), w, at));
    const [low, high] = [ring(from), ring(to)];
    const faces = [
      { normal: scale(w, -1), corners: [...low].reverse() },
      { normal: w, corners: high },
    ];
    const edges: (readonly [Vec3, Vec3])[] = [];
    const ways: Vec3[] = [w];
    low.forEach((a, i) => {
      const next = (i + 1) % low.length;
      const [b, c, d] = [low[next], high[next], high[i]];
      if (!b || !c || !d) return;
      edges.push([a, b], [d, c], [a, d]);
      const way = unit(sub(b, a));
      if (!ways.some((known) => length(cross(known, way)) < SMALL)) ways.push(way);
      faces.push({ normal: cross(way, w), corners: [a, b, c, d] });
    });
    return [{ points: [...low, ...high], faces, edges, ways, radius: 0 }];
  });
}

/** A peg, screw or bolt: its hole. */
export function roundOf({ from, to, diameter }: Peg): Convex {
  return {
    points: [from, to],
    faces: [],
    edges: [[from, to]],
    ways: [unit(sub(to, from))],
    radius: diameter / 2,
  };
}

/** Where a solid lies along a direction: its lowest and its highest place. */
export function extent({ points, radius }: Convex, way: Vec3): readonly [number, number] {
  let low = Number.POSITIVE_INFINITY;
  let high = Number.NEGATIVE_INFINITY;
  for (const p of points) {
    const at = dot(p, way);
    if (at < low) low = at;
    if (at > high) high = at;
  }
  return [low - radius, high + radius];
}

/**
 * Separating axis test: two convex bodies are apart exactly if they are apart along a face normal of either, or along the
 * cross of an edge of each.
 * @returns the widest gap found, in; where there is none the negative of the least way by which one must move to be clear
 */
function widestGap(a: Convex, b: Convex): number {
  let widest = Number.NEGATIVE_INFINITY;
  const across = (way: Vec3): void => {
    const [lowA, highA] = extent(a, way);
    const [lowB, highB] = extent(b, way);
    widest = Math.max(widest, lowA - highB, lowB - highA);
  };
  for (const { normal } of a.faces) across(normal);
  for (const { normal } of b.faces) across(normal);
  for (const own of a.ways)
    for (const other of b.ways) {
      const way = cross(own, other);
      if (length(way) > 1e-6) across(unit(way));
    }
  return widest;
}

/** Distance of two stretches of line. */
function betweenEdges([p, p1]: readonly [Vec3, Vec3], [q, q1]: readonly [Vec3, Vec3]): number {
  const [d, e, r] = [sub(p1, p), sub(q1, q), sub(p, q)];
  const [a, b, c] = [dot(d, d), dot(e, e), dot(d, e)];
  const [f, g] = [dot(d, r), dot(e, r)];
  const unit01 = (t: number): number => Math.min(1, Math.max(0, t));
  const square = a * b - c * c;
  const s = square > SMALL * a * b ? unit01((c * g - b * f) / square) : 0;
  const t = unit01(b > 0 ? (c * s + g) / b : 0);
  // once more from the point found: the first may have been cut off at the other's end
  const back = unit01(a > 0 ? (c * t - f) / a : 0);
  return length(sub(add(r, scale(d, back)), scale(e, t)));
}

/** Distance from a point to the inside of a face, straight down on it; none where it stands beside the face. */
function ontoFace(p: Vec3, { normal, corners }: Convex["faces"][number]): number | undefined {
  const [first] = corners;
  if (!first) return undefined;
  const inside = corners.every((a, i) => {
    const b = corners[(i + 1) % corners.length] ?? a;
    return dot(cross(normal, sub(b, a)), sub(p, a)) >= -SMALL;
  });
  return inside ? Math.abs(dot(sub(p, first), normal)) : undefined;
}

/** Nearest points of two convex bodies that are apart: an edge of each, or a corner of one and a face of the other. */
function distance(a: Convex, b: Convex): number {
  let least = Number.POSITIVE_INFINITY;
  for (const own of a.edges) for (const other of b.edges) least = Math.min(least, betweenEdges(own, other));
  for (const [points, { faces }] of [
    [a.points, b],
    [b.points, a],
  ] as const)
    for (const p of points)
      for (const face of faces) least = Math.min(least, ontoFace(p, face) ?? Number.POSITIVE_INFINITY);
  return least - a.radius - b.radius;
}

/**
 * How far two solids are apart.
 * @param enough answers beyond this need not be exact, in
 * @returns inches of wood between them; negative: the least way by which one must move to be clear of the other
 */
export function clearance(a: Convex, b: Convex, enough: number): number {
  if (a.faces.length === 0 && b.faces.length === 0) return distance(a, b);
  const gap = widestGap(a, b);
  if (gap >= enough) return gap;
  // without their radii; as soon as these are apart the nearest points tell
  return gap + a.radius + b.radius > SMALL ? distance(a, b) : gap;
}
