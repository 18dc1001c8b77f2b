/**
 * Everything of a timber that its checks need and that no load changes: where its forces are read, what is left of its
 * section there, where shear near a support may be left out, its notched ends. Forces are read from a table by row and
 * weight, so that a combination costs arithmetic only.
 */
import { lagrange } from "../analysis/inner-sections.ts";
import { evaluate } from "../analysis/polynomial.ts";
import { groupBy } from "../collect.ts";
import type { Model, Timber } from "../model/model.ts";
import type { Factor } from "../sourced.ts";
import type { TimberValues } from "../wood/stated-values.ts";
import type { TimberLengths } from "./effective-length.ts";
import { PLACES, rowOf, tipOf } from "./force-table.ts";
import type { Support } from "./member-supports.ts";
import { type DurationValues, repetitiveOf } from "./member-values.ts";
import { type NetPlace, NetSections, type TimberCuts } from "./net-section.ts";
import { type NotchedEnd, notchedEnds } from "./notched-ends.ts";
import { type Station, type StationTable, type StickTable, stickTable, tableOf } from "./station-table.ts";
import type { FrameStructure } from "./structure.ts";
import { sideGrainOf } from "./timber-wood.ts";

/** Shear at the distance of the depth from a support, with near single loads in proportion (NDS 3.4.3.1(a)). */
export interface ShearSpot {
  readonly x: number;
  readonly place: string;
  /** indices in the table, and what each counts */
  readonly index: readonly number[];
  readonly share: readonly number[];
  /**
   * The same from the forces at the ends of elements alone: all but how far the load of one of the timber's elements, by its
   * place among them, leads off the straight line between its ends
   */
  readonly ends: {
    readonly index: readonly number[];
    readonly share: readonly number[];
    readonly off: number;
  };
  readonly area: number;
}

export interface MemberPlan {
  readonly timber: Timber;
  readonly wood: TimberValues;
  readonly lengths: TimberLengths;
  readonly elements: readonly number[];
  readonly stations: readonly Station[];
  readonly table: StationTable;
  readonly sticks: StickTable;
  readonly shearSpots: readonly ShearSpot[];
  readonly notches: readonly NotchedEnd[];
  /** section for buckling, in²: the whole one, of a curved brace what is left at its middle */
  readonly area: number;
  /** C_r, where it may apply */
  readonly repetitive: Factor | undefined;
  /** by value of C_D; equal timbers share it */
  readonly values: Map<number, DurationValues>;
}

const WEIGHTS = PLACES.map((_, place) => lagrange(place));

/** Lagrange weights of a share of an element on its places: exact for loads that vary linearly along it. */
function weightsAt(share: number): number[] {
  return WEIGHTS.map((weight) => evaluate(weight, share));
}

const NEAR = 1e-6;
/** Sections may be read this far past the ends that the shoulders give, in. */
const PAST = 1e-3;

interface Reading {
  /** which of the timber's elements, and how far along it as a share of its length */
  readonly stick: number;
  readonly share: number;
  readonly row: number;
  readonly weights: readonly number[] | undefined;
}

/** Where forces at x stand in the table. */
function reading(frame: FrameStructure, elements: readonly number[], x: number): Reading | undefined {
  const last = elements.at(-1);
  for (let stick = 0; stick < elements.length; stick++) {
    const element = elements[stick] as number;
    const piece = frame.pieces[element];
    if (!piece || (x > piece.to && element !== last)) continue;
    const share = Math.min(Math.max((x - piece.from) / (piece.to - piece.from), 0), 1);
    const own = PLACES.findIndex((s) => Math.abs(s - share) < NEAR);
    return own >= 0
      ? { stick, share: PLACES[own] as number, row: rowOf(element, own), weights: undefined }
      : { stick, share, row: rowOf(element, 0), weights: weightsAt(share) };
  }
  return undefined;
}

/**
 * Whether shear counts at a place: not within the depth of a support that it bears on, where its far end stands for the
 * stretch, unless something is cut out there; never right over such a support.
 */
function shearCounts(
  timber: Timber,
  supports: readonly Support[],
  whole: number,
): (place: NetPlace) => boolean {
  const zones = supports.filter((s) => s.bears);
  return ({ x, section }) => {
    const reach = section.A < whole - NEAR ? 0 : timber.depth;
    return !zones.some((s) => Math.abs(x - s.at) < s.half + reach - NEAR);
  };
}

function stationsOf(
  frame: FrameStructure,
  timber: Timber,
  elements: readonly number[],
  sections: NetSections,
  loud: (place: NetPlace) => boolean,
): Station[] {
  const stations: Station[] = [];
  for (let stick = 0; stick < elements.length; stick++) {
    const element = elements[stick] as number;
    const piece = frame.pieces[element];
    if (!piece) continue;
    let next = -1;
    for (let place = PLACES.length - 1; place >= 0; place--) {
      const x = piece.from + (PLACES[place] ?? 0) * (piece.to - piece.from);
      // past its own end a timber is only a line to the middle of the next: what acts there acts on its end
      const isTip =
        (place === 0 && element === elements[0]) ||
        (place === PLACES.length - 1 && element === elements.at(-1));
      if (!isTip && (x < -PAST || x > timber.span + PAST)) {
        next = -1;
        continue;
      }
      const at = sections.at(Math.min(Math.max(x, 0), timber.span));
      const row = rowOf(element, place);
      next = stations.push({ place: at, stick, row, weights: undefined, shear: loud(at), next }) - 1;
    }
  }
  for (const place of [...sections.places(), sections.at(0), sections.at(timber.span)]) {
    const read = reading(frame, elements, place.x);
    if (!read) continue;
    const { stick, row, weights } = read;
    stations.push({ place, stick, row, weights, shear: loud(place), next: -1 });
  }
  return stations;
}

/** Index of the shear in the plane of the depth, within a row. */
const VY = 1;

/** Shear functional on one side of a support. @param way +1 toward the head, −1 toward the foot */
function shearSpot(
  frame: FrameStructure,
  timber: Timber,
  elements: readonly number[],
  support: Support,
  way: 1 | -1,
  far: number,
  sections: NetSections,
): ShearSpot | undefined {
  const face = support.at + way * support.half;
  const room = way * (far - face);
  if (room < NEAR) return undefined;
  const reach = Math.min(timber.depth, room);
  const x = face + way * reach;
  const read = reading(frame, elements, x);
  if (!read) return undefined;
  const index: number[] = [];
  const share: number[] = [];
  if (read.weights)
    read.weights.forEach((w, place) => {
      index.push(read.row + place * (rowOf(0, 1) - rowOf(0, 0)) + VY);
      share.push(w);
    });
  else {
    index.push(read.row + VY);
    share.push(1);
  }
  const element = elements[read.stick] as number;
  const ends = {
    index: [tipOf(element, "i") + VY, tipOf(element, "j") + VY],
    share: [1 - read.share, read.share],
    off: read.stick,
  };
  // single loads between the face and x: the jump of the shear where two elements meet, times distance ÷ depth
  elements.forEach((element, k) => {
    const piece = frame.pieces[element];
    const after = elements[k + 1];
    if (!piece || after === undefined) return;
    const away = way * (piece.to - face);
    if (away <= NEAR || away >= reach - NEAR) return;
    const part = (way * away) / timber.depth;
    index.push(rowOf(element, PLACES.length - 1) + VY, rowOf(after, 0) + VY);
    share.push(part, -part);
    ends.index.push(tipOf(element, "j") + VY, tipOf(after, "i") + VY);
    ends.share.push(part, -part);
  });
  return { x, place: support.place, index, share, ends, area: sections.at(x).section.A };
}

function shearSpots(
  frame: FrameStructure,
  timber: Timber,
  elements: readonly number[],
  supports: readonly Support[],
  sections: NetSections,
): ShearSpot[] {
  return supports.flatMap((s, i) => {
    if (!s.bears) return [];
    const [before, after] = [supports[i - 1], supports[i + 1]];
    // between two supports near each other: no further than half way
    const low = before ? (before.at + before.half + s.at - s.half) / 2 : 0;
    const high = after ? (after.at - after.half + s.at + s.half) / 2 : timber.span;
    return [
      shearSpot(frame, timber, elements, s, -1, low, sections) ?? [],
      shearSpot(frame, timber, elements, s, 1, high, sections) ?? [],
    ].flat();
  });
}

/** Timbers of the same wood, section and lengths have the same values. */
function likeness(timber: Timber, lengths: TimberLengths, repetitive: Factor | undefined): string {
  return [
    timber.class?.path,
    timber.width,
    timber.depth,
    timber.curve?.rise,
    timber.depthDir[2] >= 0,
    lengths.depth.effective.toFixed(3),
    lengths.width.effective.toFixed(3),
    lengths.unbraced.toFixed(3),
    lengths.decked,
    repetitive?.value,
  ].join(" ");
}

export interface PlanInput {
  readonly model: Model;
  readonly frame: FrameStructure;
  readonly wood: (timber: Timber) => TimberValues | undefined;
  readonly lengths: ReadonlyMap<string, TimberLengths>;
  readonly cuts: ReadonlyMap<string, TimberCuts>;
}

/** @returns plans of the timbers whose wood is known and that are part of the frame, and those whose wood is not */
export function memberPlans(input: PlanInput): {
  readonly plans: readonly MemberPlan[];
  readonly unchecked: readonly Timber[];
} {
  const { model, frame } = input;
  const unchecked: Timber[] = [];
  const joined = groupBy(model.joints, (j) => j.of.id);
  const received = groupBy(model.joints, (j) => j.into.id);
  const elementsOf = (timber: Timber): readonly number[] => frame.elementsOf.get(timber.id) ?? [];
  const sideGrain = (timber: Timber): number | undefined => {
    const wood = input.wood(timber);
    return wood && sideGrainOf(timber, wood);
  };
  const shared = new Map<string, Map<number, DurationValues>>();
  const plans = model.timbers.flatMap((timber): MemberPlan[] => {
    const lengths = input.lengths.get(timber.id);
    const elements = elementsOf(timber);
    const wood = input.wood(timber);
    if (!wood) unchecked.push(timber);
    if (!wood || !lengths || elements.length === 0) return [];
    const sections = new NetSections(timber, input.cuts.get(timber.id) ?? { cuts: [], pegs: [] });
    const { supports } = lengths;
    const counts = shearCounts(timber, supports, sections.whole.A);
    const stations = stationsOf(frame, timber, elements, sections, counts);
    const table = tableOf(stations);
    const repetitive = repetitiveOf(model, timber, wood, lengths.decked);
    const key = likeness(timber, lengths, repetitive);
    const values = shared.get(key) ?? new Map<number, DurationValues>();
    shared.set(key, values);
    return [
      {
        timber,
        wood,
        lengths,
        elements,
        stations,
        table,
        sticks: stickTable(elements, table),
        shearSpots: shearSpots(frame, timber, elements, supports, sections),
        notches: notchedEnds({
          timber,
          supports,
          joined: joined.get(timber.id) ?? [],
          received: received.get(timber.id) ?? [],
          elementsOf,
          sideGrain,
        }),
        area: timber.width * Math.max(timber.depth - (timber.curve?.rise ?? 0), 0),
        repetitive,
        values,
      },
    ];
  });
  return { plans, unchecked };
}
