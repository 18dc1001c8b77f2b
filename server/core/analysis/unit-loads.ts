/**
 * What loads do to single sticks, summed from unit loads: many basic loads lie on the same lengths of the same sticks, and
 * differ only in how hard they press.
 */
import { loadedStick } from "./case-loads.ts";
import { readLoad, type StickLoads } from "./element-loads.ts";
import type { InputFault } from "./faults.ts";
import { innerSections } from "./inner-sections.ts";
import { at } from "./numbers.ts";
import { PER_SECTION, SHARES } from "./sections.ts";
import { SAME_LENGTH } from "./stick-kinds.ts";
import type { PointLoad, SpreadLoad, Vec3 } from "./structure.ts";
import type { Stick } from "./system.ts";
import { ZERO } from "./vec3.ts";

/**
 * Where each kind of figures begins in what a load does to a stick: forces of its ends with the nodes at rest, and when it
 * has let go and only hangs in its joints; its first and last section, end forces aside; all its sections as far as they do
 * not follow from the first; between which bounds these lie off the straight line, as the middle and half of what is between.
 */
export const OWN = { ends: 0, hung: 12, tips: 24, inner: 36, middle: 66, half: 72, size: 78 } as const;

/** What the loads of a case do to the sticks they lie on. */
export interface SummedLoads {
  /** by stick, where its figures begin; −1 = it has no load */
  readonly from: Int32Array;
  readonly figures: Float64Array;
  readonly sticks: readonly number[];
}

export const NO_LOADS = (sticks: number): SummedLoads => ({
  from: new Int32Array(sticks).fill(-1),
  figures: new Float64Array(0),
  sticks: [],
});

/** A length of a stick, or a point of it, with what unit loads there do. */
interface Place {
  readonly from: number;
  readonly to: number;
  /** along x, y and z: even and rising from nought, at a point force and moment */
  readonly units: (Float64Array | undefined)[];
}

type Fault = (kind: InputFault["kind"], detail: string) => void;

/** Made once for the sticks of a structure. */
export class UnitLoads {
  readonly #sticks: readonly Stick[];
  readonly #kinds: readonly Kind[];

  constructor(sticks: readonly Stick[]) {
    this.#sticks = sticks;
    this.#kinds = kindsOf(sticks);
  }

  /** @returns without the loads that cannot be read: `fault` is told of them */
  sum(loads: readonly (PointLoad | SpreadLoad)[], fault: Fault): SummedLoads {
    const from = new Int32Array(this.#sticks.length).fill(-1);
    const sticks: number[] = [];
    for (const { element } of loads)
      if (from[element] === -1) {
        from[element] = OWN.size * sticks.length;
        sticks.push(element);
      }
    const figures = new Float64Array(OWN.size * sticks.length);
    for (const given of loads) {
      const stick = this.#sticks[given.element];
      if (!stick) fault("unknown-element", String(given.element));
      else this.#add(stick, given, figures, from[given.element] as number, fault);
    }
    return { from, figures, sticks };
  }

  #add(stick: Stick, given: PointLoad | SpreadLoad, figures: Float64Array, row: number, fault: Fault): void {
    const read: StickLoads = { points: [], spreads: [], elongation: 0 };
    const wrong = readLoad(given, stick.axes, stick.element.axialOnly, read);
    if (wrong) fault(wrong.kind, `${wrong.detail} (${stick.id})`);
    const kind = this.#kinds[stick.index];
    if (!kind) return;
    const { first, places } = kind;
    const { spreads, points } = places;
    for (const { from, to, start, end } of read.spreads) {
      const place = placeIn(spreads, evened(from, stick, first), evened(to, stick, first));
      for (let c = 0; c < 3; c++) {
        const even = start[c] as number;
        if (even !== 0) addRow(figures, row, even, unitOf(first, place, c, spreadUnit));
        const rise = (end[c] as number) - even;
        if (rise !== 0) addRow(figures, row, rise, unitOf(first, place, c + 3, spreadUnit));
      }
    }
    for (const { at: x, force, moment } of read.points) {
      const even = evened(x, stick, first);
      const place = placeIn(points, even, even);
      for (let c = 0; c < 3; c++) {
        if (force[c] !== 0) addRow(figures, row, force[c] as number, unitOf(first, place, c, pointUnit));
        if (moment[c] !== 0)
          addRow(figures, row, moment[c] as number, unitOf(first, place, c + 3, pointUnit));
      }
    }
  }
}

/** Where unit loads lie on sticks of one kind, and what they do there. */
export interface UnitPlaces {
  readonly spreads: Place[];
  readonly points: Place[];
}

/** Sticks that are alike share what unit loads do to the first of them. */
interface Kind {
  readonly first: Stick;
  readonly places: UnitPlaces;
}

function kindsOf(sticks: readonly Stick[]): readonly Kind[] {
  const shared = new Map<Stick["joint"], Kind>();
  return sticks.map((stick) => {
    const kind = shared.get(stick.joint) ?? { first: stick, places: stick.unitPlaces };
    shared.set(stick.joint, kind);
    return kind;
  });
}

/** Places of a load on a stick are counted in this part of an inch: rounding does not make two of one. */
const GRAIN = 2 ** -32;

/** A place on a stick as one on the first of its kind, whose length may be rounded otherwise. */
function evened(x: number, { axes }: Stick, first: Stick): number {
  if (Math.abs(x - axes.length) <= SAME_LENGTH * axes.length) return first.axes.length;
  return Math.round(x / GRAIN) * GRAIN;
}

/** Places that are kept of one kind: drifts of snow end elsewhere with every load that is typed, for hours on one frame. */
const MOST_PLACES = 64;

function placeIn(places: Place[], from: number, to: number): Place {
  const known = places.find((p) => p.from === from && p.to === to);
  if (known) return known;
  const made: Place = { from, to, units: [] };
  if (places.length >= MOST_PLACES) places.length = 0;
  places.push(made);
  return made;
}

const unit = (axis: number): Vec3 => [axis === 0 ? 1 : 0, axis === 1 ? 1 : 0, axis === 2 ? 1 : 0];

const spreadUnit = ({ from, to }: Place, c: number): StickLoads => ({
  points: [],
  spreads: [{ from, to, start: c < 3 ? unit(c) : ZERO, end: unit(c % 3) }],
  elongation: 0,
});

const pointUnit = ({ from }: Place, c: number): StickLoads => ({
  points: [{ at: from, force: c < 3 ? unit(c) : ZERO, moment: c < 3 ? ZERO : unit(c % 3) }],
  spreads: [],
  elongation: 0,
});

function unitOf(
  stick: Stick,
  place: Place,
  c: number,
  loads: (place: Place, c: number) => StickLoads,
): Float64Array {
  const known = place.units[c];
  if (known) return known;
  const { ends, hung, sections: made } = loadedStick(stick, loads(place, c));
  const sections = made();
  const { rows, middle, half } = innerSections(sections, stick.axes.length);
  const figures = new Float64Array(OWN.size);
  figures.set(ends, OWN.ends);
  figures.set(hung, OWN.hung);
  figures.set(sections.subarray(0, PER_SECTION), OWN.tips);
  figures.set(sections.subarray(PER_SECTION * (SHARES.length - 1)), OWN.tips + PER_SECTION);
  figures.set(rows, OWN.inner);
  figures.set(middle, OWN.middle);
  figures.set(half, OWN.half);
  place.units[c] = figures;
  return figures;
}

/** into[row …] += by × unit; what lies between bounds adds up whatever its sense. */
function addRow(into: Float64Array, row: number, by: number, figures: Float64Array): void {
  for (let k = 0; k < OWN.half; k++) into[row + k] = at(into, row + k) + by * at(figures, k);
  const size = Math.abs(by);
  for (let k = OWN.half; k < OWN.size; k++) into[row + k] = at(into, row + k) + size * at(figures, k);
}
