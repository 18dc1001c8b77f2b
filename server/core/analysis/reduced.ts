/** The factor that stands for the one-way members out of action: see one-way.ts for the equations. */
import { addScaled } from "./mechanism.ts";
import { at } from "./numbers.ts";
import type { OneWayMembers, Start, Trial } from "./one-way.ts";

/** A reduced pivot below this is looked at closely. */
const SUSPECT = 1e-5;

/** Factor of I − G_DD for the members dropped, grown by one member at a time. */
export class Reduced {
  readonly #members: OneWayMembers;
  readonly dropped: number[] = [];
  readonly #strains: number[] = [];
  readonly #rows: number[][] = [];
  readonly #inverse: number[] = [];

  constructor(members: OneWayMembers) {
    this.#members = members;
  }

  has(unit: number): boolean {
    return this.dropped.includes(unit);
  }

  copy(): Reduced {
    const made = new Reduced(this.#members);
    made.dropped.push(...this.dropped);
    made.#strains.push(...this.#strains);
    made.#rows.push(...this.#rows);
    made.#inverse.push(...this.#inverse);
    return made;
  }

  /** The same with a member back in action. */
  without(unit: number): Reduced {
    const made = new Reduced(this.#members);
    for (const n of this.dropped) if (n !== unit) made.append(n);
    return made;
  }

  /** Drops a member. @returns the motion (more than a turning joint) that nothing resists without it, if there is one */
  append(unit: number): Float64Array | undefined {
    const found = this.#members.units[unit];
    this.dropped.push(unit);
    let free: Float64Array | undefined;
    for (let m = 0; m < (found?.modes.length ?? 0); m++) {
      const strain = (found?.first ?? 0) + m;
      const column = this.#members.column(strain);
      const row: number[] = [];
      let pivot = 1 - at(column, strain);
      this.#strains.forEach((s, k) => {
        // Row of L times D so far, by forward substitution.
        let value = -at(column, s);
        const earlier = this.#rows[k] ?? [];
        for (let q = 0; q < k; q++) value -= (earlier[q] ?? 0) * (row[q] ?? 0);
        row.push(value);
      });
      const scaled = row.map((v, k) => v * (this.#inverse[k] ?? 0));
      row.forEach((v, k) => {
        pivot -= v * (scaled[k] ?? 0);
      });
      let inverse = 1 / pivot;
      if (!(pivot > SUSPECT)) {
        const motion = this.#weakMotion(scaled, strain);
        const verdict = this.#members.judge(motion, this.dropped);
        if (verdict !== "stiff" || !(pivot > 0)) inverse = 0;
        if (verdict === "free") free ??= motion;
      }
      this.#strains.push(strain);
      this.#rows.push(scaled);
      this.#inverse.push(inverse);
    }
    return free;
  }

  /** Motion for the reduced vector that the last row leaves without resistance. */
  #weakMotion(lastRow: readonly number[], strain: number): Float64Array {
    const v = this.#backward([...lastRow.map((x) => -x)]);
    const x = new Float64Array(this.#members.size);
    x[strain] = 1;
    this.#strains.forEach((s, k) => {
      x[s] = v[k] ?? 0;
    });
    return this.#members.flex(this.#members.load(x, this.dropped));
  }

  #backward(v: number[]): number[] {
    for (let k = v.length - 1; k >= 0; k--) {
      const row = this.#rows[k] as readonly number[];
      const value = v[k] as number;
      for (let q = 0; q < k; q++) v[q] = (v[q] as number) - (row[q] as number) * value;
    }
    return v;
  }

  /** (I − G_DD)⁻¹ applied to what is given by strain. @param x where it is written, by strain */
  apply(
    given: (strain: number) => number,
    x: Float64Array = new Float64Array(this.#members.size),
  ): Float64Array {
    const count = this.#strains.length;
    const v = new Array<number>(count).fill(0);
    for (let k = 0; k < count; k++) {
      const row = this.#rows[k] as readonly number[];
      let value = given(this.#strains[k] as number);
      for (let q = 0; q < k; q++) value -= (row[q] as number) * (v[q] as number);
      v[k] = value;
    }
    for (let k = 0; k < count; k++) v[k] = (v[k] as number) * (this.#inverse[k] as number);
    this.#backward(v);
    x.fill(0);
    for (let k = 0; k < count; k++) x[this.#strains[k] as number] = v[k] as number;
    return x;
  }

  /** Writes μ, and the strains of all one-way members with it. */
  solve(start: Start, { mu, strains }: Pick<Trial, "mu" | "strains">): void {
    this.apply((s) => at(start.strains, s) + at(start.hang, s), mu);
    strains.set(start.strains);
    for (const s of this.#strains)
      if (at(mu, s) !== 0) addScaled(strains, at(mu, s), this.#members.column(s));
  }
}
