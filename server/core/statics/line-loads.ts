/**
 * Loads as they lie along the center lines of timbers: from areas of roof and floor to the timbers that carry them.
 * Inches and pounds: a line load is lb per inch of the timber's own length.
 */

import { type Interval, lengthOf } from "../model/box.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { along, dot, type Vec3 } from "../model/vec.ts";
import { deckCarriers, upSlope } from "../roof/deck-carriers.ts";

/** A load along a timber from one axial position to another, straight between its two ends. */
export interface LineLoad {
  readonly timber: Timber;
  readonly from: number;
  readonly to: number;
  /** lb per inch of the timber's length, in global axes */
  readonly startForce: Vec3;
  readonly endForce: Vec3;
}

/** Roof that one timber carries: square inches of slope per inch of its own length, and the slope it belongs to. */
export interface Strip {
  readonly timber: Timber;
  readonly slope: RoofSlope;
  /** width of sloped roof carried, square to the timber, inches */
  readonly width: number;
  /** what it carries from and to: x for what runs up the slope, inches up the slope from the plate’s outside face for purlins */
  readonly reach: Interval;
  /** up the slope from the plate’s outside face to the roof’s peak, inches */
  readonly peak: number;
  /** axial position up to which the roof over it reaches: past a rafter's head to the middle of the ridge */
  readonly to: number;
}

/** Half the way to each neighbor; the outer ones carry to the edge. */
export function halves(centers: readonly number[], low: number, high: number): Interval[] {
  return centers.map((c, i) => {
    const before = i === 0 ? low : ((centers[i - 1] ?? c) + c) / 2;
    const after = i === centers.length - 1 ? high : (c + (centers[i + 1] ?? c)) / 2;
    return [before, Math.max(before, after)];
  });
}

/** Length that two intervals have in common. */
export function common(a: Interval, b: Interval): number {
  return Math.max(0, Math.min(a[1], b[1]) - Math.max(a[0], b[0]));
}

/** y of a gable's peak, midway between its plates' outside faces. */
export function ridgeLine(model: Model): number | undefined {
  const [a, b] = model.roof?.slopes ?? [];
  return a && b ? (a.plane.point[1] + b.plane.point[1]) / 2 : undefined;
}

/** Level, from the plate’s outside face to the roof’s peak: the middle of a gable, the upper edge of a shed’s run. */
export function eaveToPeak(model: Model, slope: RoofSlope): number {
  const middle = ridgeLine(model);
  return middle === undefined ? slope.run : Math.abs(middle - slope.plane.point[1]);
}

function headOf(timber: Timber): Vec3 {
  return along(timber.origin, timber.axis, timber.span);
}

/** Rafters carry by their spacing along the walls, purlins by theirs up the slope. */
function stripsOf(model: Model, slope: RoofSlope): Strip[] {
  const carriers = deckCarriers(model, slope);
  const purlins = carriers.filter((t) => t.kind === "purlin");
  const rafters = carriers.filter((t) => t.kind !== "purlin");
  const middle = ridgeLine(model);
  const peak = eaveToPeak(model, slope) / Math.cos(slope.angle);
  if (rafters.length > 0) {
    const sorted = [...rafters].sort((a, b) => a.origin[0] - b.origin[0]);
    const own = halves(
      sorted.map((t) => t.origin[0]),
      slope.deckFrom,
      slope.deckTo,
    );
    return sorted.map((timber, i) => {
      const rest = middle === undefined ? 0 : Math.abs(middle - headOf(timber)[1]) / Math.cos(slope.angle);
      const reach = own[i] ?? [0, 0];
      return { timber, slope, width: lengthOf(reach), reach, peak, to: timber.span + rest };
    });
  }
  const at = purlins.map((t) => upSlope(slope, t.origin));
  const order = purlins.map((_, i) => i).sort((a, b) => (at[a] ?? 0) - (at[b] ?? 0));
  const own = halves(
    order.map((i) => at[i] ?? 0),
    -slope.eaveOverhang / Math.cos(slope.angle),
    peak,
  );
  return order.flatMap((index, i) => {
    const timber = purlins[index];
    const reach = own[i] ?? [0, 0];
    return timber ? [{ timber, slope, width: lengthOf(reach), reach, peak, to: timber.span }] : [];
  });
}

/** Every strip of every slope. */
export function roofStrips(model: Model): Strip[] {
  return (model.roof?.slopes ?? []).flatMap((slope) => stripsOf(model, slope));
}

const down = (w: number): Vec3 => [0, 0, -w];

/** Own weight of a timber: density × section. @param density lb/ft³ */
export function ownWeight(timber: Timber, density: number): LineLoad {
  const w = (density * timber.width * timber.depth) / 1728;
  return { timber, from: 0, to: timber.span, startForce: down(w), endForce: down(w) };
}

/** Dead load on a strip. @param psf of the sloped surface */
export function onSlopeArea(strip: Strip, psf: number): LineLoad {
  const w = (psf * strip.width) / 144;
  return { timber: strip.timber, from: 0, to: strip.to, startForce: down(w), endForce: down(w) };
}

/** Wind on a strip, square to the slope, positive onto it. @param psf */
export function squareToSlope(strip: Strip, psf: number, from = 0, to = strip.to): LineLoad {
  const w = (psf * strip.width) / 144;
  const [nx, ny, nz] = strip.slope.plane.normal;
  const f: Vec3 = [-nx * w, -ny * w, -nz * w];
  return { timber: strip.timber, from, to, startForce: f, endForce: f };
}

/** Axial position of a rafter at a level run from the plate's outside face; 0 for one that begins inside of it. */
function axialAtRun(strip: Strip, run: number): number {
  const { timber, slope } = strip;
  const inward = -Math.sign(slope.plane.normal[1]);
  const start = inward * (timber.origin[1] - slope.plane.point[1]);
  return Math.max(0, run - start) / Math.max(0.05, Math.abs(dot(timber.axis, [0, 1, 0])));
}

/**
 * Snow or roof live load on a strip, psf of the level projection: one value between plate and ridge, one on the overhang,
 * and a drift from the ridge down. A purlin takes of each the part that lies over the roof it carries.
 * @param drift psf on top, over so many feet of level run from the ridge
 */
export function onLevelArea(
  strip: Strip,
  span: number,
  overhang: number,
  drift?: { readonly psf: number; readonly width: number },
): LineLoad[] {
  const { timber, slope, width } = strip;
  const flat = Math.cos(slope.angle);
  const per = (psf: number): Vec3 => down((psf * width * flat) / 144);
  if (timber.kind === "purlin") {
    const tail = common(strip.reach, [Number.NEGATIVE_INFINITY, 0]);
    const piled = drift ? drift.psf * common(strip.reach, driftReach(strip, drift.width)) : 0;
    const psf = width > 0 ? (overhang * tail + span * (width - tail) + piled) / width : 0;
    return [{ timber, from: 0, to: timber.span, startForce: per(psf), endForce: per(psf) }];
  }
  const seat = axialAtRun(strip, 0);
  const loads: LineLoad[] = [
    { timber, from: 0, to: seat, startForce: per(overhang), endForce: per(overhang) },
    { timber, from: seat, to: strip.to, startForce: per(span), endForce: per(span) },
  ];
  if (drift && drift.psf > 0) {
    const start = Math.max(seat, strip.to - (drift.width * 12) / flat);
    loads.push({
      timber,
      from: start,
      to: strip.to,
      startForce: per(drift.psf),
      endForce: per(drift.psf),
    });
  }
  return loads.filter((l) => l.to - l.from > 1e-6);
}

/** Up the slope, from where a drift of so many level feet begins to the ridge; it ends at the eave at the latest. */
function driftReach({ slope, peak }: Strip, feet: number): Interval {
  return [Math.max(0, peak - (feet * 12) / Math.cos(slope.angle)), peak];
}

/** Sum of forces of some loads, lb. */
export function totalOf(loads: readonly LineLoad[]): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  for (const l of loads)
    for (const k of [0, 1, 2] as const) sum[k] += ((l.startForce[k] + l.endForce[k]) / 2) * (l.to - l.from);
  return sum;
}
