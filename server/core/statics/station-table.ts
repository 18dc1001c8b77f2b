/** The places of a timber where its forces are read, as numbers side by side for the loop over all combinations. */
import { at, int } from "../analysis/numbers.ts";
import type { NetPlace } from "./net-section.ts";

/** A place where forces are read. */
export interface Station {
  readonly place: NetPlace;
  /** which of the timber's elements it is on */
  readonly stick: number;
  /** first row of its element in the table */
  readonly row: number;
  /** one for each place of the element; undefined = it is one of the places, and `row` its own */
  readonly weights: readonly number[] | undefined;
  /** shear in the plane of the depth counts here: it is not near a support that it bears on */
  readonly shear: boolean;
  /** index of the station at the next place of the same element: a moment may peak in between; −1 = none */
  readonly next: number;
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

export function tableOf(stations: readonly Station[]): StationTable {
  const count = stations.length;
  const table: StationTable = {
    row: new Int32Array(count),
    mix: new Int32Array(count).fill(-1),
    weights: Float64Array.from(stations.flatMap((s) => s.weights ?? [])),
    x: new Float64Array(count),
    A: new Float64Array(count),
    At: new Float64Array(count),
    yc: new Float64Array(count),
    zc: new Float64Array(count),
    Sz: new Float64Array(count),
    Sy: new Float64Array(count),
    shear: new Int32Array(count),
    next: new Int32Array(count),
    stick: new Int32Array(count),
  };
  let mixed = 0;
  stations.forEach((s, i) => {
    const { section, x, tensionArea } = s.place;
    table.row[i] = s.row;
    if (s.weights) {
      table.mix[i] = mixed;
      mixed += s.weights.length;
    }
    table.x[i] = x;
    table.A[i] = section.A;
    table.At[i] = tensionArea;
    table.yc[i] = section.y;
    table.zc[i] = section.z;
    table.Sz[i] = section.Sz;
    table.Sy[i] = section.Sy;
    table.shear[i] = s.shear ? 1 : 0;
    table.next[i] = s.next;
    table.stick[i] = s.stick;
  });
  return table;
}
