/** Makes a timber whose faces lie square to the axes of space, or along a given slope. */
import type { Member, TimberClass } from "../frame/frame.ts";
import type { PlacementRule, ReferenceFaces, Timber } from "./model.ts";
import { along, scale, type Vec3 } from "./vec.ts";

export type Interval = readonly [number, number];

export const middleOf = (i: Interval): number => (i[0] + i[1]) / 2;
export const lengthOf = (i: Interval): number => i[1] - i[0];

/** Length that two intervals have in common. */
export function common(a: Interval, b: Interval): number {
  return Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
}

/** What every stick of an entry shares. */
export interface StickBase {
  readonly member: string;
  readonly kind: Timber["kind"];
  readonly path: string;
  readonly class: TimberClass | undefined;
}

export function baseOf(member: Member, timberClass: TimberClass | undefined): StickBase {
  return { member: member.name, kind: member.kind, path: member.path, class: timberClass };
}

export interface StickPlace {
  readonly id: string;
  readonly rule: PlacementRule;
  readonly reference: ReferenceFaces;
  readonly walls: readonly string[];
  readonly bents: readonly string[];
}

/** Axes of the three ways a timber stands: axis × widthDir = depthDir. */
const AXES = {
  up: { axis: [0, 0, 1], widthDir: [1, 0, 0], depthDir: [0, 1, 0] },
  x: { axis: [1, 0, 0], widthDir: [0, 1, 0], depthDir: [0, 0, 1] },
  y: { axis: [0, 1, 0], widthDir: [-1, 0, 0], depthDir: [0, 0, 1] },
} as const satisfies Record<string, { axis: Vec3; widthDir: Vec3; depthDir: Vec3 }>;

/** A timber that fills a box, its grain along `way`. Intervals in inches. */
export function boxTimber(
  base: StickBase,
  place: StickPlace,
  way: keyof typeof AXES,
  x: Interval,
  y: Interval,
  z: Interval,
): Timber {
  const axes = AXES[way];
  const span = way === "up" ? lengthOf(z) : way === "x" ? lengthOf(x) : lengthOf(y);
  const origin: Vec3 = [
    way === "x" ? x[0] : middleOf(x),
    way === "y" ? y[0] : middleOf(y),
    way === "up" ? z[0] : middleOf(z),
  ];
  return {
    ...base,
    ...place,
    ...axes,
    width: way === "y" || way === "up" ? lengthOf(x) : lengthOf(y),
    depth: way === "up" ? lengthOf(y) : lengthOf(z),
    origin,
    span,
    foot: { point: origin, normal: scale(axes.axis, -1) },
    head: { point: along(origin, axes.axis, span), normal: axes.axis },
    length: span,
    curve: undefined,
  };
}

/** Half the extent of a timber's section in a direction square to its grain, inches. */
export function halfExtent(timber: Timber, direction: Vec3): number {
  const d = (a: Vec3): number => Math.abs(a[0] * direction[0] + a[1] * direction[1] + a[2] * direction[2]);
  return (d(timber.widthDir) * timber.width + d(timber.depthDir) * timber.depth) / 2;
}
