/**
 * The stresses of one timber under one combination, held against its values: the worst place of each kind is kept. This
 * runs for every place of every timber under every combination, so it is plain arithmetic on numbers; what the winners
 * are made of is put together afterwards (member-uses.ts).
 *
 * Signs: axial force positive in tension. A positive moment about z bends the side of +depth into compression. Where
 * something is cut out, axial force acts off the centroid of what is left and adds moment: M_z + N y_c, M_y − N z_c.
 *
 * NDS: bending 3.3, shear 3.4.2 (both directions as one resultant), notched ends 3.4.3.2, compression 3.6 and 3.7 (gross
 * section with C_P, net section without, 3.6.3), tension 3.8, combined 3.9.1 and 3.9.2. Bending about both axes enters
 * 3.9-1 and 3.9-2 as the sum of both (the standard prints them for one; derived).
 */
import type { Combined } from "../analysis/combined.ts";
import { at, int } from "../analysis/numbers.ts";
import { PER_SECTION } from "../analysis/sections.ts";
import { notchedTensionSide } from "../members/shear.ts";
import type { MemberPlan, ShearSpot } from "./member-plan.ts";
import type { DurationValues, Limits } from "./member-values.ts";
import type { NotchedEnd } from "./notched-ends.ts";
import { BOUNDS, boundStick, isBelow, mostBeside, mostStress, NONE, noMost } from "./stick-bounds.ts";
import { STRESSES, type Stress, type Worst } from "./worst-stress.ts";

const [BENDING, SHEAR, NOTCHED, TENSION, COMPRESSION, TENSION_BENDING, COMPRESSION_BENDING] = [
  0, 1, 2, 3, 4, 5, 6,
] as const;

/** A second stress that adds less than this share is not worth calling an interaction. */
const SIDE_SHARE = 0.01;

/** A limit of nought forbids what acts, not what does not: a timber too slender to bend on edge may still bend flat. */
const share = (stress: number, limit: number): number => (stress > 0 ? stress / limit : 0);

/** Offset of each force within a row: N, Vy, Vz, T, My, Mz. */
const [VY, VZ, MY, MZ, WIDTH] = [1, 2, 4, 5, 6] as const;

/** What acts at the place being judged: x (in), N (lb), M_y and M_z (lb·in). */
const [X, AXIAL, ABOUT_Y, ABOUT_Z] = [0, 1, 2, 3] as const;

/** The worst of each kind of one timber, over the combinations it has been shown. */
export class TimberStress {
  readonly #plan: MemberPlan;
  readonly #strongZ: boolean;
  readonly #ratios = new Float64Array(STRESSES.length);
  readonly #worst: (Worst | undefined)[] = STRESSES.map(() => undefined);
  /** numbers handed on as arguments would each become an object, a million at every keystroke */
  readonly #acts = new Float64Array(4);
  readonly #inner = new Float64Array(2 * PER_SECTION);
  readonly #bounds = new Float64Array(BOUNDS);
  /** by element, how far its shear in the plane of the depth lies off a straight line: the middle, and half of what is between */
  readonly #off: Float64Array;
  readonly #most = noMost();
  /** 1 for the elements of the timber that need a closer look */
  readonly #close: Uint8Array;

  constructor(plan: MemberPlan) {
    this.#plan = plan;
    this.#strongZ = plan.timber.depth >= plan.timber.width;
    this.#close = new Uint8Array(plan.elements.length);
    this.#off = new Float64Array(2 * plan.elements.length);
  }

  worst(stress: Stress): Worst | undefined {
    return this.#worst[STRESSES.indexOf(stress)];
  }

  /**
   * Holds every place against the values under one combination. Elements on which nothing can be worse than what is known
   * already are passed over.
   * @param table is written to: forces along the timber, as far as they are looked at
   * @param solved index of the case, kept with what it makes worst
   */
  show(v: DurationValues, combined: Combined, table: Float64Array, solved: number): void {
    const { elements } = this.#plan;
    const places = this.#look(v.limits, combined);
    const spots = this.#lookBeside(v.limits, combined.tips);
    if (places || spots)
      for (let k = 0; k < elements.length; k++)
        if (spots || this.#close[k] === 1) combined.writeSections(elements[k] as number, table);
    if (places) this.#places(v, table, solved);
    if (spots) this.#spots(v, table, solved);
    if (this.#plan.notches.length > 0) this.#notched(v, combined.tips, solved);
  }

  /** Marks the elements that need a closer look. @returns whether there are any */
  #look(F: Limits, combined: Combined): boolean {
    const { elements, sticks, area } = this.#plan;
    const [bounds, most, ratios] = [this.#bounds, this.#most, this.#ratios];
    let close = false;
    for (let k = 0; k < elements.length; k++) {
      boundStick(combined, elements[k] as number, this.#inner, bounds);
      this.#off[2 * k] = at(this.#inner, VY);
      this.#off[2 * k + 1] = at(this.#inner, VY + PER_SECTION);
      mostStress(bounds, sticks, k, F, area, this.#strongZ, most);
      const below =
        isBelow(most.bending, at(ratios, BENDING)) &&
        isBelow(most.shear, at(ratios, SHEAR)) &&
        isBelow(most.tension, at(ratios, TENSION)) &&
        isBelow(most.tensionAndBending, at(ratios, TENSION_BENDING)) &&
        isBelow(most.compression, at(ratios, COMPRESSION)) &&
        isBelow(most.compressionAndBending, at(ratios, COMPRESSION_BENDING));
      this.#close[k] = below ? 0 : 1;
      close ||= !below;
    }
    return close;
  }

  /** Whether the shear beside some support needs a closer look. */
  #lookBeside({ Fv }: Limits, tips: Float64Array): boolean {
    const { shearSpots } = this.#plan;
    for (let n = 0; n < shearSpots.length; n++) {
      const spot = shearSpots[n] as ShearSpot;
      const V = mostBeside(spot, tips, this.#off);
      if (!isBelow((1.5 * V) / spot.area / Fv, at(this.#ratios, SHEAR))) return true;
    }
    return false;
  }

  /** Whether a ratio is worse than what is known; of equal ones the earlier case counts, in whatever order they come. */
  #beats(kind: number, ratio: number, solved: number): boolean {
    const most = at(this.#ratios, kind);
    return ratio > most || (ratio === most && ratio > 0 && solved < (this.#worst[kind]?.solved ?? 0));
  }

  #places(v: DurationValues, table: Float64Array, solved: number): void {
    const t = this.#plan.table;
    const F = v.limits;
    const count = t.row.length;
    for (let i = 0; i < count; i++) {
      if (this.#close[int(t.stick, i)] === 0) continue;
      const row = int(t.row, i);
      const mix = int(t.mix, i);
      let N = 0;
      let Vy = 0;
      let Vz = 0;
      let My = 0;
      let Mz = 0;
      if (mix < 0) {
        N = at(table, row);
        Vy = at(table, row + VY);
        Vz = at(table, row + VZ);
        My = at(table, row + MY);
        Mz = at(table, row + MZ);
      } else {
        for (let k = 0; k < 5; k++) {
          const w = at(t.weights, mix + k);
          const r = row + k * WIDTH;
          N += w * at(table, r);
          Vy += w * at(table, r + VY);
          Vz += w * at(table, r + VZ);
          My += w * at(table, r + MY);
          Mz += w * at(table, r + MZ);
        }
      }
      const acts = this.#acts;
      acts[X] = at(t.x, i);
      acts[AXIAL] = N;
      acts[ABOUT_Y] = My;
      acts[ABOUT_Z] = Mz;
      this.#judge(v, F, i, solved);
      const A = at(t.A, i);
      const y = int(t.shear, i) * Vy;
      const V = Math.sqrt(y * y + Vz * Vz);
      const fv = V > 0 && A > 0 ? (1.5 * V) / A : 0;
      if (this.#beats(SHEAR, fv / F.Fv, solved))
        this.#keep(SHEAR, fv / F.Fv, fv, F.Fv, v, i, at(t.x, i), solved, V, A);
      const j = int(t.next, i);
      // where shear crosses nought between two places
      if (j >= 0 && (Vy * at(table, int(t.row, j) + VY) < 0 || Vz * at(table, int(t.row, j) + VZ) < 0))
        this.#between(v, F, table, i, j, solved);
    }
  }

  /**
   * Where shear crosses nought between two places the moment peaks: dM_z/dx = −V_y, dM_y/dx = V_z, shear and axial force
   * linear.
   * Stations with a next one are places of an element, their forces stand in the table as they are.
   */
  #between(v: DurationValues, F: Limits, table: Float64Array, i: number, j: number, solved: number): void {
    const t = this.#plan.table;
    const acts = this.#acts;
    const [first, second] = [int(t.row, i), int(t.row, j)];
    const [N, N2] = [at(table, first), at(table, second)];
    const [Vy, Vz] = [at(table, first + VY), at(table, first + VZ)];
    const [My, Mz] = [at(table, first + MY), at(table, first + MZ)];
    const [Vy2, Vz2] = [at(table, second + VY), at(table, second + VZ)];
    const x = at(t.x, i);
    const length = at(t.x, j) - x;
    if (Vy * Vy2 < 0) {
      const s = Vy / (Vy - Vy2);
      acts[X] = x + s * length;
      acts[AXIAL] = N + s * (N2 - N);
      acts[ABOUT_Y] = My + s * (at(table, second + MY) - My);
      acts[ABOUT_Z] = Mz - (Vy * s * length) / 2;
      this.#judge(v, F, i, solved);
    }
    if (Vz * Vz2 < 0) {
      const s = Vz / (Vz - Vz2);
      acts[X] = x + s * length;
      acts[AXIAL] = N + s * (N2 - N);
      acts[ABOUT_Y] = My + (Vz * s * length) / 2;
      acts[ABOUT_Z] = Mz + s * (at(table, second + MZ) - Mz);
      this.#judge(v, F, i, solved);
    }
  }

  /** What acts, on what is left at station i. */
  #judge(v: DurationValues, F: Limits, i: number, solved: number): void {
    const t = this.#plan.table;
    const x = at(this.#acts, X);
    const N = at(this.#acts, AXIAL);
    const My = at(this.#acts, ABOUT_Y);
    const Mz = at(this.#acts, ABOUT_Z);
    const A = at(t.A, i);
    if (A <= 0) {
      // nothing is left here: whatever acts is too much
      if (
        Math.abs(N) + Math.abs(My) + Math.abs(Mz) > 1 &&
        this.#beats(BENDING, Number.POSITIVE_INFINITY, solved)
      )
        this.#keep(BENDING, Number.POSITIVE_INFINITY, 0, 0, v, i, x, solved, 0, 0);
      return;
    }
    const mz = Mz + N * at(t.yc, i);
    const my = My - N * at(t.zc, i);
    const sz = mz / at(t.Sz, i);
    const sy = my / at(t.Sy, i);
    const strong = this.#strongZ ? sz : sy;
    const weak = this.#strongZ ? sy : sz;
    const f1 = Math.abs(strong);
    const f2 = Math.abs(weak);
    const F1 = strong >= 0 ? F.plus1 : F.minus1;
    const F2 = weak >= 0 ? F.plus2 : F.minus2;
    const lateral = share(f1, strong >= 0 ? F.criticalPlus : F.criticalMinus);
    if (f1 + f2 > NONE) {
      // 3.9-3 without axial force
      const both =
        lateral < 1 ? share(f1, F1) + share(f2, F2 * (1 - lateral * lateral)) : Number.POSITIVE_INFINITY;
      if (this.#beats(BENDING, both, solved)) {
        const [leads, limit] = f1 * F2 >= f2 * F1 ? [f1, F1] : [f2, F2];
        if (both > (leads / limit) * (1 + SIDE_SHARE))
          this.#keepBent(BENDING, both, both, 1, true, v, i, x, solved, sz, sy, F);
        else this.#keepBent(BENDING, both, leads, limit, false, v, i, x, solved, sz, sy, F);
      }
    }
    if (N > 0) {
      const ft = N / at(t.At, i);
      if (!(ft > NONE)) return;
      if (this.#beats(TENSION, ft / F.Ft, solved))
        this.#keep(TENSION, ft / F.Ft, ft, F.Ft, v, i, x, solved, N, at(t.At, i));
      const most = Math.max(
        ft / F.Ft + share(f1, F.Fb1) + share(f2, F.Fb2),
        (f1 === ft ? 0 : (f1 - ft) / F1) + share(f2, F2),
      );
      if (this.#beats(TENSION_BENDING, most, solved))
        this.#keepBent(TENSION_BENDING, most, most, 1, true, v, i, x, solved, sz, sy, F);
      return;
    }
    const fc = -N / this.#plan.area;
    if (!(fc > NONE)) return;
    const whole = fc / F.Fc;
    const net = -N / A;
    const local = net / F.FcStar;
    const axial = Math.max(whole, local);
    if (this.#beats(COMPRESSION, axial, solved)) {
      if (whole >= local) this.#keep(COMPRESSION, whole, fc, F.Fc, v, i, x, solved, -N, this.#plan.area);
      else this.#keep(COMPRESSION, local, net, F.FcStar, v, i, x, solved, -N, A);
    }
    const left1 = 1 - fc / F.FcE1;
    const left2 = 1 - fc / F.FcE2 - lateral * lateral;
    const ratio =
      left1 > 0 && left2 > 0 && lateral < 1
        ? axial * axial + share(f1, F1 * left1) + share(f2, F2 * left2)
        : Number.POSITIVE_INFINITY;
    if (this.#beats(COMPRESSION_BENDING, ratio, solved))
      this.#keepBent(COMPRESSION_BENDING, ratio, ratio, 1, true, v, i, x, solved, sz, sy, F);
  }

  /** Shear beside the supports that the timber bears on. */
  #spots(v: DurationValues, table: Float64Array, solved: number): void {
    const { Fv } = v.limits;
    for (const spot of this.#plan.shearSpots) {
      let V = 0;
      for (let k = 0; k < spot.index.length; k++)
        V += (spot.share[k] as number) * at(table, spot.index[k] as number);
      const fv = (1.5 * Math.abs(V)) / spot.area;
      if (this.#beats(SHEAR, fv / Fv, solved))
        this.#keep(SHEAR, fv / Fv, fv, Fv, v, undefined, spot.x, solved, Math.abs(V), spot.area, spot.place);
    }
  }

  #notched(v: DurationValues, tips: Float64Array, solved: number): void {
    const { notches, timber } = this.#plan;
    const { Fv } = v.limits;
    for (const end of notches) {
      const pressed = end.down * at(tips, end.index);
      const V = pressed > 0 ? Math.max(0, pressed - end.housed) : -pressed;
      const ratio = V / notchedTensionSide(Fv, end.breadth, timber.depth, end.left);
      if (this.#beats(NOTCHED, ratio, solved))
        this.#keep(
          NOTCHED,
          ratio,
          ratio * Fv,
          Fv,
          v,
          undefined,
          end.x,
          solved,
          V,
          end.breadth * end.left,
          end.joint,
          end,
        );
    }
  }

  #keep(
    kind: number,
    ratio: number,
    value: number,
    limit: number,
    values: DurationValues,
    i: number | undefined,
    x: number,
    solved: number,
    force: number,
    area: number,
    place?: string,
    notch?: NotchedEnd,
  ): void {
    this.#ratios[kind] = ratio;
    const station = i === undefined ? undefined : this.#plan.stations[i];
    this.#worst[kind] = {
      ratio,
      value,
      limit,
      mixed: false,
      solved,
      x,
      station,
      values,
      place,
      axis: "z",
      positive: true,
      force,
      area,
      sz: 0,
      sy: 0,
      notch,
    };
  }

  #keepBent(
    kind: number,
    ratio: number,
    value: number,
    limit: number,
    mixed: boolean,
    values: DurationValues,
    i: number,
    x: number,
    solved: number,
    sz: number,
    sy: number,
    F: Limits,
  ): void {
    this.#ratios[kind] = ratio;
    const [Fz, Fy] = this.#strongZ ? [F.Fb1, F.Fb2] : [F.Fb2, F.Fb1];
    const zLeads = Math.abs(sz) / Fz >= Math.abs(sy) / Fy;
    this.#worst[kind] = {
      ratio,
      value,
      limit,
      mixed,
      solved,
      x,
      station: this.#plan.stations[i],
      values,
      place: undefined,
      axis: zLeads ? "z" : "y",
      positive: (zLeads ? sz : sy) >= 0,
      force: at(this.#acts, AXIAL),
      area: this.#plan.area,
      sz,
      sy,
      notch: undefined,
    };
  }
}
