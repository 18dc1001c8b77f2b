/** A timber as it looks from the eye: its solid, laid on paper. */
import type { Timber } from "../core/model/model.ts";
import { solidOf } from "../core/model/solid.ts";
import { along, sub, type Vec2, type Vec3 } from "../core/model/vec.ts";
import { type Box, boxOf } from "./drawing.ts";
import { hull } from "./outline.ts";
import { nearness, project, type Sight } from "./views.ts";

export interface Body {
  readonly timber: Timber;
  /** of the solid: four at the foot, four at the head; of a cut: its four */
  readonly corners: readonly Vec3[];
  readonly flat: readonly Vec2[];
  /** convex outline on paper, counter-clockwise */
  readonly outline: readonly Vec2[];
  readonly box: Box;
  /** how near its nearest corner is to the eye */
  readonly near: number;
  /** the outline is a cut through the timber, not a look at it */
  readonly cut: boolean;
}

/** Beyond this (about 160 miles) a corner is an accident of a half-typed value. */
const FARTHEST = 1e7;
const placed = (points: readonly Vec3[]): boolean =>
  points.every((p) => p.every((c) => Math.abs(c) < FARTHEST));

function bodyFrom(sight: Sight, timber: Timber, corners: readonly Vec3[], cut: boolean): Body | undefined {
  if (!placed(corners)) return undefined;
  const flat = corners.map((p) => project(sight, p));
  const box = boxOf(flat);
  if (box === undefined) return undefined;
  const near = Math.max(...corners.map((p) => nearness(sight, p)));
  return { timber, corners, flat, outline: hull(flat), box, near, cut };
}

/** @returns the timber as it is seen; undefined when it has no place (not a number) */
export function bodyOf(sight: Sight, timber: Timber): Body | undefined {
  return bodyFrom(sight, timber, solidOf(timber).corners, false);
}

/** @returns the timber cut by the plane square to the view at `depth` toward the eye; undefined when it does not cross it */
export function cutOf(sight: Sight, timber: Timber, depth: number): Body | undefined {
  const { corners } = solidOf(timber);
  if (!placed(corners)) return undefined;
  const cut: Vec3[] = [];
  for (let i = 0; i < 4; i++) {
    const [foot, head] = [corners[i], corners[i + 4]];
    if (foot === undefined || head === undefined) return undefined;
    const [a, b] = [nearness(sight, foot) - depth, nearness(sight, head) - depth];
    if (a * b >= 0) return undefined;
    cut.push(along(foot, sub(head, foot), a / (a - b)));
  }
  return bodyFrom(sight, timber, cut, true);
}
