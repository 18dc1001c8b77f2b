/** A timber as a convex solid: corners from its four long edges cut by its end planes, faces, and contact with another. */
import type { EndPlane, Timber } from "./model.ts";
import { add, along, cross, dot, length, scale, sub, type Vec3 } from "./vec.ts";

export interface Solid {
  /** four corners at the foot, then four at the head, in the same turning order */
  readonly corners: readonly Vec3[];
  /** the foot, the head, then the four long faces; outward normals */
  readonly faces: readonly Face[];
  readonly low: Vec3;
  readonly high: Vec3;
}

interface Face {
  readonly normal: Vec3;
  /** dot(normal, p) on the face */
  readonly level: number;
  readonly polygon: readonly Vec3[];
}

const SIGNS: readonly (readonly [number, number])[] = [
  [-1, -1],
  [1, -1],
  [1, 1],
  [-1, 1],
];

/** Where the line through `p` along `direction` crosses a plane; `p` itself when it runs along the plane. */
function cut(p: Vec3, direction: Vec3, plane: EndPlane): Vec3 {
  const slant = dot(direction, plane.normal);
  return Math.abs(slant) < 1e-9 ? p : along(p, direction, dot(sub(plane.point, p), plane.normal) / slant);
}

/**
 * The wood of a timber between its end planes, without tenons and before any notch.
 * @returns eight corners and six faces; inches
 */
export function solidOf(timber: Timber): Solid {
  const edge = (s: readonly [number, number]): Vec3 =>
    add(
      timber.origin,
      add(
        scale(timber.widthDir, (s[0] * timber.width) / 2),
        scale(timber.depthDir, (s[1] * timber.depth) / 2),
      ),
    );
  const feet = SIGNS.map((s) => cut(edge(s), timber.axis, timber.foot));
  const heads = SIGNS.map((s) => cut(edge(s), timber.axis, timber.head));
  const corners = [...feet, ...heads];
  const face = (normal: Vec3, polygon: readonly Vec3[]): Face => ({
    normal,
    level: dot(normal, polygon[0] ?? timber.origin),
    polygon,
  });
  const side = (i: number, j: number, normal: Vec3): Face =>
    face(normal, [feet[i], feet[j], heads[j], heads[i]] as Vec3[]);
  const w = timber.widthDir;
  const d = timber.depthDir;
  const axes = [0, 1, 2] as const;
  return {
    corners,
    faces: [
      face(timber.foot.normal, feet),
      face(timber.head.normal, heads),
      side(0, 1, scale(d, -1)),
      side(1, 2, w),
      side(2, 3, d),
      side(3, 0, scale(w, -1)),
    ],
    low: axes.map((k) => Math.min(...corners.map((c) => c[k]))) as unknown as Vec3,
    high: axes.map((k) => Math.max(...corners.map((c) => c[k]))) as unknown as Vec3,
  };
}

/** The part of a polygon inside a half space `normal · p ≤ level` (Sutherland–Hodgman); the polygon itself when all is. */
export function clip(polygon: readonly Vec3[], normal: Vec3, level: number): readonly Vec3[] {
  let outside = 0;
  for (const p of polygon) if (dot(normal, p) > level) outside++;
  if (outside === 0) return polygon;
  if (outside === polygon.length) return [];
  const kept: Vec3[] = [];
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i] as Vec3;
    const b = polygon[(i + 1) % polygon.length] as Vec3;
    const da = dot(normal, a) - level;
    const db = dot(normal, b) - level;
    if (da <= 0) kept.push(a);
    if (da < 0 !== db < 0 && da !== db) {
      const t = da / (da - db);
      if (t > 0 && t < 1) kept.push(along(a, sub(b, a), t));
    }
  }
  return kept;
}

interface Patch {
  readonly area: number;
  readonly center: Vec3;
}

/** Area, center and narrowness of a flat polygon in space; strips thinner than `least` count as nothing. */
function patch(polygon: readonly Vec3[], least: number): Patch | undefined {
  const p0 = polygon[0];
  if (!p0 || polygon.length < 3) return undefined;
  let area = 0;
  let sum: Vec3 = [0, 0, 0];
  let longest = 0;
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i] as Vec3;
    const b = polygon[(i + 1) % polygon.length] as Vec3;
    longest = Math.max(longest, length(sub(a, b)));
    if (i === 0 || i === polygon.length - 1) continue;
    const piece = length(cross(sub(a, p0), sub(b, p0))) / 2;
    area += piece;
    sum = add(sum, scale(add(add(p0, a), b), piece / 3));
  }
  if (area <= 0 || area / longest < least) return undefined;
  return { area, center: scale(sum, 1 / area) };
}

/** How near two faces must come to touch (design: 1/16 in), and the thinnest strip of contact that counts. */
export const TOUCH = 1 / 16;
const LEAST_STRIP = 1 / 8 + 1e-6;
const LEAST_CONTACT = 1;

export interface Contact {
  readonly area: number;
  readonly center: Vec3;
  /** areas of the end faces of the first solid that take part: foot, head */
  readonly ends: readonly [number, number];
}

/** Contact seen from `a`: which parts of its surface lie in or within 1/16 in of `b`. */
function contactFrom(a: Solid, b: Solid): Contact | undefined {
  let area = 0;
  let sum: Vec3 = [0, 0, 0];
  const ends: [number, number] = [0, 0];
  a.faces.forEach((face, index) => {
    let { polygon } = face;
    for (const other of b.faces) {
      polygon = clip(polygon, other.normal, other.level + TOUCH);
      if (polygon.length < 3) return;
    }
    const found = patch(polygon, LEAST_STRIP);
    if (!found) return;
    area += found.area;
    sum = add(sum, scale(found.center, found.area));
    if (index < 2) ends[index] = found.area;
  });
  return area >= LEAST_CONTACT ? { area, center: scale(sum, 1 / area), ends } : undefined;
}

/**
 * Whether two solids come within 1/16 in over at least one square inch.
 * @returns the contact as seen from each; undefined when they stay apart
 */
export function contact(a: Solid, b: Solid): { readonly a: Contact; readonly b: Contact } | undefined {
  for (const k of [0, 1, 2] as const)
    if (a.low[k] > b.high[k] + TOUCH || b.low[k] > a.high[k] + TOUCH) return undefined;
  const fromA = contactFrom(a, b);
  const fromB = contactFrom(b, a);
  const any = fromA ?? fromB;
  if (!any) return undefined;
  const none: Contact = { area: 0, center: any.center, ends: [0, 0] };
  return { a: fromA ?? none, b: fromB ?? none };
}

/** Least distance between the boxes that enclose two solids, inches; 0 when they overlap. */
export function boxGap(a: Solid, b: Solid): number {
  const gaps = ([0, 1, 2] as const).map((k) => Math.max(0, a.low[k] - b.high[k], b.low[k] - a.high[k]));
  return Math.hypot(...gaps);
}
