/**
 * Loads as they lie along the center lines of timbers: from areas of roof and floor to the timbers that carry them.
 * Inches and pounds: a line load is lb per inch of the timber's own length.
 */

import { type Interval, lengthOf } from "../model/box.ts";
import type { Model, RoofSlope, Timber } from "../model/model.ts";
import { scale, type Vec3 } from "../model/vec.ts";
import { type DeckField, deckFields, deckUp, footPlace, liesAlong } from "../roof/deck-carriers.ts";

/** A load along a timber from one axial position to another, straight between its two ends. */
export interface LineLoad {
  readonly timber: Timber;
  readonly from: number;
  readonly to: number;
  /** lb per inch of the timber's length, in global axes */
  readonly startForce: Vec3;
  readonly endForce: Vec3;
}

/** Roof that one timber carries over a stretch of its length: square inches of slope per inch, and the slope. */
export interface Strip {
  readonly timber: Timber;
  readonly slope: RoofSlope;
  /** width of sloped roof carried, square to the timber, inches */
  readonly width: number;
  /** what it carries from and to: x for what runs up the slope, inches up the slope from the plate’s outside face for purlins */
  readonly reach: Interval;
  /** axial positions between which the roof lies over it: past a rafter's head to the middle of the ridge too */
  readonly from: number;
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

/** y of a gable's peak, midway between its plates' outside faces. */
export function ridgeLine(model: Model): number | undefined {
  const [a, b] = model.roof?.slopes ?? [];
  return a && b ? (a.plane.point[1] + b.plane.point[1]) / 2 : undefined;
}

/** Every carrier of a field takes half the way to each neighbor, the outer ones up to the edge. */
function stripsIn(slope: RoofSlope, { stretch, across, carriers }: DeckField): Strip[] {
  const [low, high] = across;
  // a carrier may stand past the edge and still bear on it with its side
  const inside = (v: number): number => Math.min(high, Math.max(low, v));
  const own = halves(
    carriers.map(({ at }) => at),
    low,
    high,
  );
  return carriers.map(({ timber }, i) => {
    const foot = footPlace(slope, timber);
    const [start, end] = own[i] ?? [low, low];
    const reach: Interval = [inside(start), inside(end)];
    return { timber, slope, width: lengthOf(reach), reach, from: stretch[0] - foot, to: stretch[1] - foot };
  });
}

const alike = (a: Interval, b: Interval): boolean =>
  Math.abs(a[0] - b[0]) < 1e-6 && Math.abs(a[1] - b[1]) < 1e-6;

/** Strips of a slope; those of one timber that follow each other with the same reach are one. */
function stripsOf(model: Model, slope: RoofSlope): Strip[] {
  const strips: Strip[] = [];
  const last = new Map<Timber, number>();
  for (const strip of deckFields(model, slope).flatMap((field) => stripsIn(slope, field))) {
    const at = last.get(strip.timber) ?? strips.length;
    const before = strips[at];
    if (before && Math.abs(before.to - strip.from) < 1e-6 && alike(before.reach, strip.reach)) {
      strips[at] = { ...before, to: strip.to };
    } else {
      last.set(strip.timber, strips.length);
      strips.push(strip);
    }
  }
  return strips;
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

/** A part of a slope: x along the walls, and inches up the slope from the plate’s outside face; all of it where one is missing. */
export interface Patch {
  readonly x?: Interval;
  readonly up?: Interval;
}

const EVERYWHERE: Interval = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];

const overlap = (a: Interval, b: Interval): Interval => [Math.max(a[0], b[0]), Math.min(a[1], b[1])];

/** @returns what a strip carries of a part of its slope; undefined for nothing */
export function within(strip: Strip, { x = EVERYWHERE, up = EVERYWHERE }: Patch): Strip | undefined {
  const [along, across] = liesAlong(strip.timber) ? [x, up] : [up, x];
  const foot = footPlace(strip.slope, strip.timber);
  const reach = overlap(strip.reach, across);
  const [from, to] = overlap([strip.from, strip.to], [along[0] - foot, along[1] - foot]);
  const width = lengthOf(reach);
  return width > 1e-6 && to - from > 1e-6 ? { ...strip, width, reach, from, to } : undefined;
}

function evenly({ timber, from, to }: Strip, force: Vec3): LineLoad {
  return { timber, from, to, startForce: force, endForce: force };
}

/** Dead load on a strip. @param psf of the sloped surface */
export function onSlopeArea(strip: Strip, psf: number): LineLoad {
  return evenly(strip, down((psf * strip.width) / 144));
}

/** Wind on a strip, square to the slope, positive onto it. @param psf */
export function squareToSlope(strip: Strip, psf: number): LineLoad {
  return evenly(strip, scale(strip.slope.plane.normal, (-psf * strip.width) / 144));
}

/**
 * Snow or roof live load on a strip, psf of the level projection: one value between plate and peak, one on the overhang,
 * and a drift from the peak down, at most to the eave. A purlin takes of each the part that lies over the roof it carries.
 * @param drift psf on top, over so many feet of level run from the peak
 */
export function onLevelArea(
  strip: Strip,
  span: number,
  overhang: number,
  drift?: { readonly psf: number; readonly width: number },
): LineLoad[] {
  const { slope } = strip;
  const flat = Math.cos(slope.angle);
  const [, peak] = deckUp(slope);
  const layers = [
    { psf: overhang, part: within(strip, { up: [Number.NEGATIVE_INFINITY, 0] }) },
    { psf: span, part: within(strip, { up: [0, Number.POSITIVE_INFINITY] }) },
    ...(drift && drift.psf > 0
      ? [{ psf: drift.psf, part: within(strip, { up: [peak - (drift.width * 12) / flat, peak] }) }]
      : []),
  ];
  const parts = layers.flatMap(({ psf, part }) =>
    part ? [{ part, force: (psf * part.width * flat) / 144 }] : [],
  );
  // over a purlin they lie side by side, on the same stretch of it
  if (liesAlong(strip.timber)) return [evenly(strip, down(parts.reduce((sum, { force }) => sum + force, 0)))];
  return parts.map(({ part, force }) => evenly(part, down(force)));
}

/** Sum of forces of some loads, lb. */
export function totalOf(loads: readonly LineLoad[]): Vec3 {
  const sum: [number, number, number] = [0, 0, 0];
  for (const l of loads)
    for (const k of [0, 1, 2] as const) sum[k] += ((l.startForce[k] + l.endForce[k]) / 2) * (l.to - l.from);
  return sum;
}
