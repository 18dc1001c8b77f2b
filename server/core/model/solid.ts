/** A timber as a convex solid: corners from its four long edges cut by its end planes, faces, and contact with another. */
import type { EndPlane, Timber } from "./model.ts";
import { add, along, dot, scale, sub, type Vec3 } from "./vec.ts";

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

/** Where a long edge of a timber, given by the signs of its corner, crosses the plane that ends it; at the foot where it runs along the plane. */
function corner(timber: Timber, [w, d]: readonly [number, number], { point, normal }: EndPlane): Vec3 {
  const { origin, axis, widthDir, depthDir } = timber;
  const x = (w * timber.width) / 2;
  const y = (d * timber.depth) / 2;
  const edge: Vec3 = [
    origin[0] + (widthDir[0] * x + depthDir[0] * y),
    origin[1] + (widthDir[1] * x + depthDir[1] * y),
    origin[2] + (widthDir[2] * x + depthDir[2] * y),
  ];
  const slant = dot(axis, normal);
  return Math.abs(slant) < 1e-9 ? edge : along(edge, axis, dot(sub(point, edge), normal) / slant);
}

/** @returns the corners of a timber's wood between its end planes, inches: four at the foot, then four at the head */
export function cornersOf(timber: Timber): Vec3[] {
  return [
    ...SIGNS.map((s) => corner(timber, s, timber.foot)),
    ...SIGNS.map((s) => corner(timber, s, timber.head)),
  ];
}

/** The box around some points: its low and its high corner. */
function boxAround(points: readonly Vec3[]): Pick<Solid, "low" | "high"> {
  const low: [number, number, number] = [...FAR];
  const high: [number, number, number] = [-FAR[0], -FAR[1], -FAR[2]];
  for (const p of points)
    for (const k of AXES) {
      if (p[k] < low[k]) low[k] = p[k];
      if (p[k] > high[k]) high[k] = p[k];
    }
  return { low, high };
}

const AXES = [0, 1, 2] as const;
const FAR: Vec3 = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];

/**
 * The wood of a timber between its end planes, without tenons and before any notch.
 * @returns eight corners and six faces; inches
 */
export function solidOf(timber: Timber): Solid {
  const corners = cornersOf(timber);
  const face = (normal: Vec3, polygon: readonly Vec3[]): Face => ({
    normal,
    level: dot(normal, polygon[0] ?? timber.origin),
    polygon,
  });
  const side = (i: number, j: number, normal: Vec3): Face =>
    face(normal, [corners[i], corners[j], corners[j + 4], corners[i + 4]] as Vec3[]);
  const w = timber.widthDir;
  const d = timber.depthDir;
  return {
    corners,
    faces: [
      face(timber.foot.normal, corners.slice(0, 4)),
      face(timber.head.normal, corners.slice(4)),
      side(0, 1, scale(d, -1)),
      side(1, 2, w),
      side(2, 3, d),
      side(3, 0, scale(w, -1)),
    ],
    ...boxAround(corners),
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
  let longest = 0;
  // before the pieces are weighed: most patches are strips
  for (let i = 0; i < polygon.length; i++) {
    const a = polygon[i] as Vec3;
    const b = polygon[(i + 1) % polygon.length] as Vec3;
    longest = Math.max(longest, squared(a, b));
    if (i > 0 && i < polygon.length - 1) area += pieceOf(p0, a, b);
  }
  if (area <= 0 || area / Math.sqrt(longest) < least) return undefined;
  let x = 0;
  let y = 0;
  let z = 0;
  for (let i = 1; i < polygon.length - 1; i++) {
    const a = polygon[i] as Vec3;
    const b = polygon[i + 1] as Vec3;
    const third = pieceOf(p0, a, b) / 3;
    x += (p0[0] + a[0] + b[0]) * third;
    y += (p0[1] + a[1] + b[1]) * third;
    z += (p0[2] + a[2] + b[2]) * third;
  }
  return { area, center: scale([x, y, z], 1 / area) };
}

function squared(a: Vec3, b: Vec3): number {
  return (a[0] - b[0]) ** 2 + (a[1] - b[1]) ** 2 + (a[2] - b[2]) ** 2;
}

/** Area of a triangle. */
function pieceOf(p: Vec3, a: Vec3, b: Vec3): number {
  const ax = a[0] - p[0];
  const ay = a[1] - p[1];
  const az = a[2] - p[2];
  const bx = b[0] - p[0];
  const by = b[1] - p[1];
  const bz = b[2] - p[2];
  return Math.hypot(ay * bz - az * by, az * bx - ax * bz, ax * by - ay * bx) / 2;
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

/** The polygon itself, unless all of it lies beyond one face of the solid: then nothing of it is near, and none is cut. */
function within(polygon: readonly Vec3[], { faces }: Solid): readonly Vec3[] | undefined {
  const beyond = faces.some(({ normal, level }) => polygon.every((p) => dot(normal, p) > level + TOUCH));
  return beyond ? undefined : polygon;
}

/** Contact seen from `a`: which parts of its surface lie in or within 1/16 in of `b`. */
function contactFrom(a: Solid, b: Solid): Contact | undefined {
  let area = 0;
  let sum: Vec3 = [0, 0, 0];
  const ends: [number, number] = [0, 0];
  a.faces.forEach((face, index) => {
    let polygon = within(face.polygon, b);
    if (!polygon) return;
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

/** Whether the boxes around two solids are further apart than what touches. */
function areApart(a: Solid, b: Solid): boolean {
  return AXES.some((k) => a.low[k] > b.high[k] + TOUCH || b.low[k] > a.high[k] + TOUCH);
}

/** Whether two solids have a contact at all: as `contact` tells it, without working out where. */
export function touch(a: Solid, b: Solid): boolean {
  return !areApart(a, b) && (contactFrom(a, b) ?? contactFrom(b, a)) !== undefined;
}

/**
 * Whether two solids come within 1/16 in over at least one square inch.
 * @returns the contact as seen from each; undefined when they stay apart
 */
export function contact(a: Solid, b: Solid): { readonly a: Contact; readonly b: Contact } | undefined {
  if (areApart(a, b)) return undefined;
  const fromA = contactFrom(a, b);
  const fromB = contactFrom(b, a);
  const any = fromA ?? fromB;
  if (!any) return undefined;
  const none: Contact = { area: 0, center: any.center, ends: [0, 0] };
  return { a: fromA ?? none, b: fromB ?? none };
}

/** Least distance between the boxes that enclose two solids, inches; 0 when they overlap. */
export function boxGap(a: Solid, b: Solid): number {
  const gaps = AXES.map((k) => Math.max(0, a.low[k] - b.high[k], b.low[k] - a.high[k]));
  return Math.hypot(...gaps);
}
