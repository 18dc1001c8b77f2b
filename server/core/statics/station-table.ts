/** The places of a timber where its forces are read, as numbers side by side for the loop over all combinations. */
import { at, int } from "../analysis/numbers.ts";
import { rowOf } from "./force-table.ts";
import type { NetPlace } from "./net-section.ts";

/** A place where forces are read. */
export interface Station {
  readonly place: NetPlace;
  /** first row of its element in the table */
  readonly row: number;
  /** one for each place of the element; undefined = it is one of the places, and `row` its own */
  readonly weights: readonly number[] | undefined;
  /** shear in the plane of the depth counts here: it is not near a support that it bears on */
  readonly shear: boolean;
  /** the next station is the next place of the same element: a moment may peak in between */
  readonly next: Station | undefined;
}

/** The stations' numbers side by side, for the loop over all combinations. */
export interface StationTable {
  readonly row: Int32Array;
  /** where the weights of a station begin; −1 = it is one of the places */
  readonly mix: Int32Array;
  readonly weights: Float64Array;
  /** axial position from the foot, in */
  readonly x: Float64Array;
  /** area, area in tension (in²), centroid (in) and section moduli (in³) of what is left */
  readonly A: Float64Array;
  readonly At: Float64Array;
  readonly yc: Float64Array;
  readonly zc: Float64Array;
  readonly Sz: Float64Array;
  readonly Sy: Float64Array;
  /** 1 where shear in the plane of the depth counts, else 0 */
  readonly shear: Int32Array;
  /** index of the next station of the same element; −1 = none */
  readonly next: Int32Array;
  /** which of the timber's elements it is on */
  readonly stick: Int32Array;
}

/** The least that is left anywhere along each element of a timber, and the farthest centroid; units as of the stations. */
export interface StickTable {
  readonly A: Float64Array;
  readonly At: Float64Array;
  readonly yc: Float64Array;
  readonly zc: Float64Array;
  readonly Sz: Float64Array;
  readonly Sy: Float64Array;
  /** 1 where shear in the plane of the depth counts somewhere, else 0 */
  readonly shear: Float64Array;
}

export function stickTable(elements: readonly number[], t: StationTable): StickTable {
  const over = (start: number, of: Float64Array | Int32Array, take: (a: number, b: number) => number) => {
    const out = new Float64Array(elements.length).fill(start);
    for (let i = 0; i < of.length; i++) {
      const k = int(t.stick, i);
      out[k] = take(at(out, k), of[i] as number);
    }
    return out;
  };
  // where nothing is left the least is nought, and nothing that is divided by it passes for small
  const least = (of: Float64Array): Float64Array =>
    over(Number.POSITIVE_INFINITY, of, (a, b) => Math.max(0, Math.min(a, b)));
  const farthest = (of: Float64Array): Float64Array => over(0, of, (a, b) => Math.max(a, Math.abs(b)));
  return {
    A: least(t.A),
    At: least(t.At),
    yc: farthest(t.yc),
    zc: farthest(t.zc),
    Sz: least(t.Sz),
    Sy: least(t.Sy),
    shear: over(0, t.shear, Math.max),
  };
}

export function tableOf(stations: readonly Station[], elements: readonly number[]): StationTable {
  const index = new Map(stations.map((s, i) => [s, i]));
  const count = stations.length;
  const mix = new Int32Array(count).fill(-1);
  const weights: number[] = [];
  stations.forEach((s, i) => {
    if (!s.weights) return;
    mix[i] = weights.length;
    weights.push(...s.weights);
  });
  const filled = <T extends Float64Array | Int32Array>(out: T, of: (s: Station) => number): T => {
    stations.forEach((s, i) => {
      out[i] = of(s);
    });
    return out;
  };
  const numbers = (of: (s: Station) => number): Float64Array => filled(new Float64Array(count), of);
  const whole = (of: (s: Station) => number): Int32Array => filled(new Int32Array(count), of);
  return {
    row: whole((s) => s.row),
    mix,
    weights: Float64Array.from(weights),
    x: numbers((s) => s.place.x),
    A: numbers((s) => s.place.section.A),
    At: numbers((s) => s.place.tensionArea),
    yc: numbers((s) => s.place.section.y),
    zc: numbers((s) => s.place.section.z),
    Sz: numbers((s) => s.place.section.Sz),
    Sy: numbers((s) => s.place.section.Sy),
    shear: whole((s) => (s.shear ? 1 : 0)),
    next: whole((s) => (s.next ? (index.get(s.next) ?? -1) : -1)),
    stick: whole((s) => elements.indexOf(Math.floor(s.row / rowOf(1, 0)))),
  };
}
