/**
 * How far one timber bends under the combinations, as far as its limits go: the worst place under all load, and under what
 * comes and goes.
 *
 * What bends it is linear: the forces at the first end of each element, and for each basic load what that leads off the line
 * that follows from them. A sum of those says where a combination may bend further than all before, but for rounding; only there
 * is it worked out from the sections themselves.
 */
import type { Combined } from "../analysis/combined.ts";
import { at, int } from "../analysis/numbers.ts";
import { OWN, type SummedLoads } from "../analysis/unit-loads.ts";
import { totalDeflection } from "../members/deflection.ts";
import { alongChord, bentByEnds, bentLine, type DeflectionPlan, type Stretch, sunk } from "./deflections.ts";
import { rowOf } from "./force-table.ts";
import type { DurationValues } from "./member-values.ts";
import { beats, type ShownCase } from "./shown-case.ts";
import type { SolvedCase } from "./solve-frame.ts";

export interface DeflectionWorst {
  ratio: number;
  /** in */
  value: number;
  limit: number;
  /** index of the case; -1 = none */
  solved: number;
  /** axial position, in */
  x: number;
  /** of the value before creep: what lasts, and what comes and goes, in */
  long: number;
  short: number;
}

const noDeflection = (): DeflectionWorst => ({
  ratio: 0,
  value: 0,
  limit: 0,
  solved: -1,
  x: 0,
  long: 0,
  short: 0,
});

/** Two ways to the same deflection differ by less than this share of it, or of its limit where it is hardly one. */
const ROUNDED = 1e-9;
const HARDLY = 1e-12;

const surelyBelow = ({ ratio }: DeflectionWorst): number => ratio * (1 - ROUNDED) - HARDLY;

/**
 * How far a place counts as bent, in. A tail only down: one that its span bends up, or that wind lifts, does not sag, and
 * no covering suffers from it (judgment). A span bends either way between its supports.
 */
function counted(inches: number, down: number, tail: boolean): number {
  return tail ? Math.max(0, down * inches) : Math.abs(inches);
}

/** A stretch, and where its places begin among those of all. */
interface Part {
  readonly stretch: Stretch;
  readonly first: number;
  /** in */
  readonly all: number;
  readonly live: number;
}

export class TimberBend {
  readonly plan: DeflectionPlan;
  readonly live = noDeflection();
  readonly total = noDeflection();
  readonly #loads: readonly SummedLoads[];
  readonly #parts: readonly Part[];
  /** of every place of every stretch: its index in the bent line, those of the chord, the part of the way along that */
  readonly #place: Int32Array;
  readonly #from: Int32Array;
  readonly #to: Int32Array;
  readonly #along: Float64Array;
  /** under the load at hand: the bent line, and how far each place lies off its chord; EI times, lb·in³ */
  readonly #line: Float64Array;
  readonly #off: Float64Array;
  /** `#off` in inches, and with what a scarf sinks */
  readonly #bent: Float64Array;
  /** `#off` of each load between the ends of elements, by its index; null = it does not bend this timber */
  readonly #between: (Float64Array | null)[] = [];
  /** how far dead load bends each place, by the model of the seats, in */
  readonly #dead: Partial<Record<SolvedCase["seats"], Float64Array>> = {};
  /** cube of the depth, in³ */
  readonly #cube: number;
  /** the bent line runs along the depth, whichever way that points */
  readonly #down: 1 | -1;

  /** @param loads that the combinations are made of */
  constructor(plan: DeflectionPlan, loads: readonly SummedLoads[]) {
    this.plan = plan;
    this.#loads = loads;
    const { stretches, limits, x } = plan;
    const { timber } = plan.plan;
    let count = 0;
    this.#parts = stretches.map((stretch) => {
      const first = count;
      count += stretch.places.length;
      return { stretch, first, all: stretch.length / limits.total, live: stretch.length / limits.live };
    });
    this.#place = new Int32Array(count);
    this.#from = new Int32Array(count);
    this.#to = new Int32Array(count);
    this.#along = new Float64Array(count);
    for (const { stretch, first } of this.#parts)
      stretch.places.forEach((place, n) => {
        this.#place[first + n] = place;
        this.#from[first + n] = stretch.chord[0];
        this.#to[first + n] = stretch.chord[1];
        this.#along[first + n] = alongChord(x, place, stretch.chord);
      });
    this.#line = new Float64Array(x.length);
    this.#off = new Float64Array(count);
    this.#bent = new Float64Array(count);
    this.#cube = timber.depth ** 3;
    this.#down = timber.depthDir[2] > 0 ? -1 : 1;
  }

  /** Dead load comes first: what other combinations bend is told from it. @param table is written to */
  keepDead(v: DurationValues, { seats, combined }: SolvedCase, table: Float64Array): void {
    if (this.#dead[seats]) return;
    this.#bySections(v, combined, table);
    this.#dead[seats] = this.#bent.slice();
  }

  /** @param table is written to */
  show(v: DurationValues, shown: ShownCase, table: Float64Array): void {
    const { share, solved } = shown;
    if (share === undefined) return;
    this.#byParts(v, shown, table);
    if (!this.#mayBeat(share, shown)) return;
    this.#bySections(v, solved.combined, table);
    this.#keep(share, shown);
  }

  /** Bends it by the sections along its elements. */
  #bySections(v: DurationValues, combined: Combined, table: Float64Array): void {
    const { plan, lengths } = this.plan;
    for (const element of plan.elements) combined.writeSections(element, table);
    bentLine(plan.elements, lengths, table, this.#line);
    this.#offChords(this.#off);
    this.#inInches(v, combined);
  }

  /** The same, as a sum. */
  #byParts(v: DurationValues, { solved, tips, loads, factors }: ShownCase, table: Float64Array): void {
    const { plan, lengths } = this.plan;
    const off = this.#off;
    // those of the loads first: they use the bent line too
    for (let t = 0; t < loads.length; t++) this.#loadBetween(int(loads, t), table);
    bentByEnds(plan.elements, lengths, tips, this.#line);
    this.#offChords(off);
    for (let t = 0; t < loads.length; t++) {
      const between = this.#between[int(loads, t)];
      if (!between) continue;
      const by = at(factors, t);
      for (let n = 0; n < off.length; n++) off[n] = at(off, n) + by * at(between, n);
    }
    this.#inInches(v, solved.combined);
  }

  #loadBetween(load: number, table: Float64Array): void {
    if (this.#between[load] !== undefined) return;
    const { plan, lengths } = this.plan;
    const { from, figures } = this.#loads[load] as SummedLoads;
    this.#between[load] = null;
    if (!plan.elements.some((element) => int(from, element) >= 0)) return;
    for (const element of plan.elements) {
      const own = int(from, element);
      const row = rowOf(element, 0);
      if (own < 0) table.fill(0, row, rowOf(element + 1, 0));
      else table.set(figures.subarray(own + OWN.inner, own + OWN.middle), row);
    }
    bentLine(plan.elements, lengths, table, this.#line);
    const between = new Float64Array(this.#off.length);
    this.#offChords(between);
    this.#between[load] = between;
  }

  #offChords(out: Float64Array): void {
    const line = this.#line;
    for (let n = 0; n < out.length; n++) {
      const part = at(this.#along, n);
      out[n] =
        at(line, int(this.#place, n)) -
        at(line, int(this.#from, n)) * (1 - part) -
        at(line, int(this.#to, n)) * part;
    }
  }

  #inInches({ E }: DurationValues, combined: Combined): void {
    const { timber } = this.plan.plan;
    const bent = this.#bent;
    const EI = (E.value * timber.width * this.#cube) / 12;
    for (let n = 0; n < bent.length; n++) bent[n] = at(this.#off, n) / EI;
    for (const { stretch, first } of this.#parts) {
      if (!stretch.sinks) continue;
      const down = sunk(stretch, timber.depthDir, (node) => combined.displacement(node));
      for (let n = first; n < first + stretch.places.length; n++)
        bent[n] = at(bent, n) + at(this.#along, n) * down;
    }
  }

  #mayBeat(share: number, { solved, comesAndGoes }: ShownCase): boolean {
    const bent = this.#bent;
    const dead = this.#dead[solved.seats];
    const creep = this.plan.creep.value;
    const total = surelyBelow(this.total);
    const live = surelyBelow(this.live);
    for (const { stretch, first, all, live: coming } of this.#parts) {
      for (let n = first; n < first + stretch.places.length; n++) {
        const long = dead ? share * at(dead, n) : 0;
        const short = at(bent, n) - long;
        const sum = counted(totalDeflection(creep, long, short), this.#down, stretch.tail);
        if (!(sum < total * all)) return true;
        if (comesAndGoes && dead && !(counted(short, this.#down, stretch.tail) < live * coming)) return true;
      }
    }
    return false;
  }

  #keep(share: number, { solved, comesAndGoes, index }: ShownCase): void {
    const { x, creep } = this.plan;
    const dead = this.#dead[solved.seats];
    for (const { stretch, first, all, live } of this.#parts) {
      for (let n = first; n < first + stretch.places.length; n++) {
        const long = dead ? share * at(dead, n) : 0;
        const short = at(this.#bent, n) - long;
        const along = x[int(this.#place, n)] as number;
        const sum = counted(totalDeflection(creep.value, long, short), this.#down, stretch.tail);
        if (beats(this.total, sum / all, index)) keepBent(this.total, sum, all, index, along, long, short);
        if (!comesAndGoes || !dead) continue;
        const coming = counted(short, this.#down, stretch.tail);
        if (beats(this.live, coming / live, index))
          keepBent(this.live, coming, live, index, along, long, short);
      }
    }
  }
}

function keepBent(
  kept: DeflectionWorst,
  value: number,
  limit: number,
  index: number,
  x: number,
  long: number,
  short: number,
): void {
  kept.ratio = value / limit;
  kept.value = value;
  kept.limit = limit;
  kept.solved = index;
  kept.x = x;
  kept.long = long;
  kept.short = short;
}
