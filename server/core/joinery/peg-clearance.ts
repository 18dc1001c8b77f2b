/** How close the peg holes of a joint stand to each other and to the edges of their tenon. Plane geometry, inches. */
import { dot, sub, type Vec2 } from "../model/vec.ts";
import type { Joint, Prism } from "./joint.ts";

export interface PegClearance {
  /** least distance between the centers of two holes; undefined for a single peg */
  readonly spacing: number | undefined;
  /** least distance of a hole's center from the tenon's outline, shoulder and tip included, negative outside; undefined without tenon */
  readonly edge: number | undefined;
}

const least = (all: readonly number[]): number | undefined =>
  all.length === 0 ? undefined : Math.min(...all);

export function pegClearance({ sizes, solids }: Joint): PegClearance {
  const [tenon] = solids.tenons;
  const { pegs } = solids;
  const apart = pegs.flatMap((a, i) => pegs.slice(i + 1).map((b) => Math.hypot(...sub(a.from, b.from))));
  const edges =
    (sizes.tenon || sizes.pair) && tenon
      ? pegs.map((peg) => depthInside(tenon, inPlane(tenon, peg.from)))
      : [];
  return { spacing: least(apart), edge: least(edges) };
}

/** A point in the plane of a prism's outline. */
function inPlane({ base, u, v }: Prism, point: Joint["face"]["origin"]): Vec2 {
  const from = sub(point, base);
  return [dot(from, u), dot(from, v)];
}

/** Distance of a point from an outline, negative where it lies outside. */
function depthInside({ outline }: Prism, [x, y]: Vec2): number {
  let nearest = Number.POSITIVE_INFINITY;
  let inside = false;
  outline.forEach(([ax, ay], i) => {
    const [bx, by] = outline[(i + 1) % outline.length] ?? [ax, ay];
    const length2 = (bx - ax) ** 2 + (by - ay) ** 2;
    const t =
      length2 === 0 ? 0 : Math.max(0, Math.min(1, ((x - ax) * (bx - ax) + (y - ay) * (by - ay)) / length2));
    nearest = Math.min(nearest, Math.hypot(x - ax - t * (bx - ax), y - ay - t * (by - ay)));
    if (ay > y !== by > y && x < ax + ((y - ay) * (bx - ax)) / (by - ay)) inside = !inside;
  });
  return inside ? nearest : -nearest;
}
