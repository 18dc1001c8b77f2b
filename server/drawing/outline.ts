/** Flat geometry of outlines: hulls, notches, hatching. Inches, counter-clockwise. */
import type { Vec2 } from "../core/model/vec.ts";

const NEAR = 1e-6;

const turn = (o: Vec2, a: Vec2, b: Vec2): number =>
  (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0]);

/** @returns the convex hull, counter-clockwise, without points on its edges (Andrew's monotone chain) */
export function hull(points: readonly Vec2[]): Vec2[] {
  const sorted = [...points].sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (from: readonly Vec2[]): Vec2[] => {
    const chain: Vec2[] = [];
    for (const p of from) {
      for (;;) {
        const [a, b] = [chain.at(-2), chain.at(-1)];
        if (b !== undefined && Math.hypot(p[0] - b[0], p[1] - b[1]) < NEAR) chain.pop();
        else if (a !== undefined && b !== undefined && turn(a, b, p) <= NEAR) chain.pop();
        else break;
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  const ring = [...half(sorted), ...half(sorted.reverse())];
  return ring.length > 0 ? ring : sorted.slice(0, 1);
}

/** @returns area, square inches; positive when counter-clockwise */
export function area(ring: readonly Vec2[]): number {
  let sum = 0;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length] ?? a;
    sum += a[0] * b[1] - a[1] * b[0];
  });
  return sum / 2;
}

/** @returns whether the point lies in or on a convex counter-clockwise ring */
export function inside(ring: readonly Vec2[], p: Vec2, tolerance = 1e-3): boolean {
  return (
    ring.length > 2 &&
    ring.every((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      return turn(a, b, p) >= -tolerance * Math.hypot(b[0] - a[0], b[1] - a[1]);
    })
  );
}

const mix = (a: Vec2, b: Vec2, t: number): Vec2 => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];

/** @returns the part of a convex ring inside another convex ring (Sutherland and Hodgman) */
function clip(ring: readonly Vec2[], by: readonly Vec2[]): Vec2[] {
  let left = [...ring];
  by.forEach((a, i) => {
    const b = by[(i + 1) % by.length] ?? a;
    const kept: Vec2[] = [];
    left.forEach((p, j) => {
      const q = left[(j + 1) % left.length] ?? p;
      const [tp, tq] = [turn(a, b, p), turn(a, b, q)];
      if (tp >= 0) kept.push(p);
      if (tp > NEAR !== tq > NEAR && Math.abs(tp - tq) > NEAR && tp * tq < 0)
        kept.push(mix(p, q, tp / (tp - tq)));
    });
    left = kept;
  });
  return left;
}

/** How far round the ring a point on it lies: edge number plus share of the edge; undefined when it is not on it. */
function round(ring: readonly Vec2[], p: Vec2): number | undefined {
  for (const [i, a] of ring.entries()) {
    const b = ring[(i + 1) % ring.length] ?? a;
    const edge = Math.hypot(b[0] - a[0], b[1] - a[1]);
    if (edge < NEAR || Math.abs(turn(a, b, p)) / edge > 1e-4) continue;
    const t = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / (edge * edge);
    if (t >= -1e-6 && t < 1 - 1e-6) return i + Math.max(0, t);
  }
  return undefined;
}

interface EdgeCut {
  /** how far round the ring the cut begins and ends */
  readonly from: number;
  readonly to: number;
  readonly through: Vec2[];
}

/** A straight cut across a corner: of all its edges only one goes through the wood. */
function cornerCut(ring: readonly Vec2[], part: readonly Vec2[]): EdgeCut[] {
  const inner = part.flatMap((p, i): EdgeCut[] => {
    const q = part[(i + 1) % part.length] ?? p;
    const [from, to] = [round(ring, q), round(ring, p)];
    if (from === undefined || to === undefined || round(ring, mix(p, q, 1 / 2)) !== undefined) return [];
    return [{ from, to, through: [q, p] }];
  });
  return inner.length === 1 ? inner : [];
}

/**
 * Cuts notches out of the edge of a convex ring. Notches are simple rings, turned either way. A notch that does not reach the edge in one stretch is left out:
 * it is no notch in this view.
 */
export function notched(ring: readonly Vec2[], notches: readonly (readonly Vec2[])[]): Vec2[] {
  const cuts = notches.flatMap((notch): EdgeCut[] => {
    const part = clip(area(notch) < 0 ? [...notch].reverse() : notch, ring);
    const n = part.length;
    if (n < 3 || area(part) < 1e-3) return [];
    const places = part.map((p) => round(ring, p));
    if (places.every((s) => s !== undefined)) return cornerCut(ring, part);
    const entries = part
      .map((_, i) => i)
      .filter((i) => places[i] !== undefined && places[(i + n - 1) % n] === undefined);
    const first = entries[0];
    if (first === undefined || entries.length !== 1) return [];
    // walking the notch counter-clockwise from `first`, it lies on the ring's edge, then goes through the wood
    let last = first;
    while (places[(last + 1) % n] !== undefined) last = (last + 1) % n;
    const from = places[first];
    const to = places[last];
    if (from === undefined || to === undefined || first === last) return [];
    const through: Vec2[] = [];
    for (let i = first; through.length < n; i = (i + n - 1) % n) {
      const p = part[i];
      if (p !== undefined) through.push(p);
      if (i === last) break;
    }
    return [{ from, to, through }];
  });
  const wraps = (cut: EdgeCut): boolean => cut.from > cut.to;
  const gone = (s: number): boolean =>
    cuts.some((cut) => (wraps(cut) ? s >= cut.from || s <= cut.to : s >= cut.from && s <= cut.to));
  const stops = [
    ...ring.map((p, s) => ({ s, points: gone(s) ? [] : [p] })),
    ...cuts.map((cut) => ({ s: cut.from, points: cut.through })),
  ];
  return stops.sort((a, b) => a.s - b.s).flatMap((stop) => stop.points);
}

/** @returns lines at 45° across a convex ring, `spacing` apart square to them, placed alike for every ring */
export function hatch(ring: readonly Vec2[], spacing: number): (readonly [Vec2, Vec2])[] {
  if (!(spacing > 0) || ring.length < 3) return [];
  const step = spacing * Math.SQRT2;
  const offsets = ring.map((p) => p[1] - p[0]);
  const [low, high] = [Math.min(...offsets), Math.max(...offsets)];
  if (!((high - low) / step < 200)) return [];
  const lines: (readonly [Vec2, Vec2])[] = [];
  for (let c = Math.ceil(low / step + NEAR) * step; c < high - NEAR; c += step) {
    const ends: Vec2[] = [];
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      const [da, db] = [a[1] - a[0] - c, b[1] - b[0] - c];
      if (da < 0 !== db < 0) ends.push(mix(a, b, da / (da - db)));
    });
    const [a, b] = ends;
    if (a !== undefined && b !== undefined) lines.push([a, b]);
  }
  return lines;
}
