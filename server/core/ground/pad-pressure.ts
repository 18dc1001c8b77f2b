/**
 * What a square pad presses its soil with where the load stands off its middle both ways: a plane of pressure that cannot
 * pull (derived; the three cases with a closed form are those of handbooks on footings, from memory).
 */
import type { Vec2 } from "../model/vec.ts";

/** Where the pad presses, from which its pressure under the corner next to the load follows; all in inches. */
export type PadContact =
  /** with all of its base */
  | { readonly kind: "whole" }
  /** but for the corner across from the load, cut off so far along x and y */
  | { readonly kind: "corner-off"; readonly legs: Vec2 }
  /** from one side to as far as this at the end next to the load, and at the other */
  | { readonly kind: "strip"; readonly near: number; readonly far: number }
  /** with a triangle at the corner next to the load */
  | { readonly kind: "corner" };

export interface PadPressure {
  readonly contact: PadContact;
  /** psf, under the corner or edge next to the load */
  readonly most: number;
}

/** A load nearer to the edge than this share of the side is over it: it presses with 600,000 times the even pressure. */
const AT_EDGE = 1e-6;

/**
 * Most pressure under a square pad.
 * @param load N, lb, above zero
 * @param side B, inches
 * @param off how far the load stands off the middle along each side, inches, at least zero
 * @returns undefined where it stands over an edge: the pad tips
 */
export function padPressure(load: number, side: number, off: Vec2): PadPressure | undefined {
  const [x, y] = [off[0] / side, off[1] / side];
  const [more, less] = [Math.max(x, y), Math.min(x, y)];
  if (!(load > 0 && more < 0.5 - AT_EDGE)) return undefined;
  const contact = contactOf(x, y, more, less);
  const most = (load / (side / 12) ** 2) * shareOf(contact, x, y);
  return { contact: scaled(contact, side), most };
}

/**
 * Sums of both shares up to this much past a sixth count as a sixth: rounding parts them, and the corner that lifts there is
 * so small that the plane leaves it no legs, while the pressure is the same in eleven figures.
 */
const AT_SIXTH = 1e-6;

/** On a pad whose side is 1. */
function contactOf(x: number, y: number, more: number, less: number): PadContact {
  if (x + y <= 1 / 6 + AT_SIXTH) return { kind: "whole" };
  // the pyramid over a triangle has its middle a quarter of each leg from the corner
  if (less >= 1 / 4) return { kind: "corner" };
  // a strip as wide as m (1 + r s) at s off the middle: the load is r/(6 + r²/2) off it along the strip
  const r = (12 * less) / (1 + Math.sqrt(1 - 12 * less ** 2));
  const m = (3 * (0.5 - more) * (1 + r ** 2 / 12)) / (1 + r ** 2 / 4);
  const near = m * (1 + r / 2);
  if (near <= 1) return { kind: "strip", near, far: m * (1 - r / 2) };
  const [a, b, c] = planeUnder(x, y);
  const low = (b + c) / 2 - a;
  return { kind: "corner-off", legs: [low / b, low / c] };
}

/** The most pressure in shares of the even one. */
function shareOf(contact: PadContact, x: number, y: number): number {
  switch (contact.kind) {
    case "whole":
      return 1 + 6 * (x + y);
    case "corner":
      return 3 / (8 * (0.5 - x) * (0.5 - y));
    case "strip": {
      const { near, far } = contact;
      return (6 * near) / (near ** 2 + near * far + far ** 2);
    }
    case "corner-off": {
      const [s, t] = contact.legs;
      return (1 / s + 1 / t - 1) / (1 / (2 * s) + 1 / (2 * t) - 1 + (s * t) / 6);
    }
  }
}

function scaled(contact: PadContact, side: number): PadContact {
  switch (contact.kind) {
    case "strip":
      return { ...contact, near: contact.near * side, far: contact.far * side };
    case "corner-off":
      return { ...contact, legs: [contact.legs[0] * side, contact.legs[1] * side] };
    default:
      return contact;
  }
}

/** a + b x + c y */
type Plane = readonly [number, number, number];

const at = ([a, b, c]: Plane, [x, y]: Vec2): number => a + b * x + c * y;

const CORNERS: readonly Vec2[] = [
  [-0.5, -0.5],
  [0.5, -0.5],
  [0.5, 0.5],
  [-0.5, 0.5],
];

/** What of the pad is pressed, as a polygon. */
function pressed(plane: Plane): Vec2[] {
  return CORNERS.flatMap((from, i) => {
    const to = CORNERS[(i + 1) % 4] ?? from;
    const [p, q] = [at(plane, from), at(plane, to)];
    const own = p > 0 ? [from] : [];
    if (p > 0 === q > 0) return own;
    const share = p / (p - q);
    return [...own, [from[0] + share * (to[0] - from[0]), from[1] + share * (to[1] - from[1])] as const];
  });
}

/** 1, x, y, x², x y, y² summed over a polygon: each triangle of it by the middles of its sides, exact up to squares. */
function sums(polygon: readonly Vec2[]): readonly [number, number, number, number, number, number] {
  const all: [number, number, number, number, number, number] = [0, 0, 0, 0, 0, 0];
  const [p] = polygon;
  for (let i = 1; p && i + 1 < polygon.length; i++) {
    const [q, r] = [polygon[i] ?? p, polygon[i + 1] ?? p];
    const third = ((q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0])) / 6;
    for (const [a, b] of [
      [p, q],
      [q, r],
      [r, p],
    ] as const) {
      const [x, y] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
      [1, x, y, x * x, x * y, y * y].forEach((value, k) => {
        all[k] = (all[k] ?? 0) + third * value;
      });
    }
  }
  return all;
}

/**
 * The plane that carries a load of 1 at (x, y) and counts only where it presses. It makes half of the sum of its squares,
 * less itself at the load, least; that is convex, so that Newton's step, halved until it goes down, comes to it from anywhere.
 */
function planeUnder(x: number, y: number): Plane {
  const least = (p: Plane): number => {
    const [o, u, v, uu, uv, vv] = sums(pressed(p));
    const [a, b, c] = p;
    const squares = a * a * o + b * b * uu + c * c * vv + 2 * (a * b * u + a * c * v + b * c * uv);
    return squares / 2 - at(p, [x, y]);
  };
  let plane: Plane = [1, 12 * x, 12 * y];
  let now = least(plane);
  for (let i = 0; i < STEPS; i++) {
    const aim = solved(sums(pressed(plane)), x, y);
    let share = 1;
    let next = between(plane, aim, share);
    let then = least(next);
    while (then > now && share > 1e-6) {
      share /= 2;
      next = between(plane, aim, share);
      then = least(next);
    }
    const moved = Math.max(...next.map((value, k) => Math.abs(value - (plane[k] ?? value))));
    [plane, now] = [next, then];
    if (moved < 1e-12) break;
  }
  return plane;
}

/** It takes fewer than ten. */
const STEPS = 50;

const between = ([a, b, c]: Plane, [d, e, f]: Plane, share: number): Plane => [
  a + share * (d - a),
  b + share * (e - b),
  c + share * (f - c),
];

/** The plane over what is pressed that has the load's sum and moments, by Cramer's rule. */
function solved([o, u, v, uu, uv, vv]: ReturnType<typeof sums>, x: number, y: number): Plane {
  const [A, B, C] = [uu * vv - uv * uv, uv * v - u * vv, u * uv - uu * v];
  const [D, E, F] = [o * vv - v * v, u * v - o * uv, o * uu - u * u];
  const all = o * A + u * B + v * C;
  return [(A + B * x + C * y) / all, (B + D * x + E * y) / all, (C + E * x + F * y) / all];
}
