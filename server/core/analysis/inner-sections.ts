/**
 * What the loads of a stick give between its ends: sections along it are those that follow from its first one, and this.
 */
import { at } from "./numbers.ts";
import { PER_SECTION, runOn, SHARES } from "./sections.ts";

export interface InnerSections {
  /** by place, six numbers each; nought at the first place */
  readonly rows: Float64Array;
  /**
   * by number of a section: how far it lies at most off the straight line between its values at both ends, wherever it is
   * read from the places by interpolation
   */
  readonly most: Float64Array;
}

const COUNT = SHARES.length;
const DEGREE = COUNT - 1;

/** Coefficients (constant term first) of the polynomial that is 1 at one of the places and 0 at the others. */
export function lagrange(place: number): number[] {
  let p = [1];
  SHARES.forEach((o, k) => {
    if (k === place) return;
    const scale = 1 / ((SHARES[place] ?? 0) - o);
    const q = new Array<number>(p.length + 1).fill(0);
    p.forEach((c, n) => {
      q[n] = (q[n] ?? 0) - c * o * scale;
      q[n + 1] = (q[n + 1] ?? 0) + c * scale;
    });
    p = q;
  });
  return p;
}

const choose = (n: number, k: number): number => (k === 0 ? 1 : (choose(n - 1, k - 1) * n) / k);

/**
 * Weight of the value at each place (inner index) in the Bernstein coefficients on the first half of a stick: a polynomial
 * lies between the least and the greatest of them (Farin, Curves and Surfaces for CAGD, from memory).
 */
const FIRST_HALF = Float64Array.from({ length: COUNT * COUNT }, (_, n) => {
  const k = Math.floor(n / COUNT);
  return lagrange(n % COUNT).reduce(
    (sum, c, m) => (m > k ? sum : sum + ((choose(k, m) / choose(DEGREE, m)) * c) / 2 ** m),
    0,
  );
});

/** @param sections of a stick under its own loads, without forces at its ends beyond those of its first section */
export function innerSections(sections: Float64Array, length: number): InnerSections {
  const rows = new Float64Array(sections.length);
  const line = new Float64Array(PER_SECTION);
  for (let place = 1; place < COUNT; place++) {
    runOn(sections, 0, (SHARES[place] ?? 0) * length, line, 0);
    for (let m = 0; m < PER_SECTION; m++) {
      const k = place * PER_SECTION + m;
      rows[k] = at(sections, k) - at(line, m);
    }
  }
  const most = new Float64Array(PER_SECTION);
  const off = new Float64Array(COUNT);
  for (let m = 0; m < PER_SECTION; m++) {
    const last = at(rows, DEGREE * PER_SECTION + m);
    let any = false;
    for (let place = 1; place < DEGREE; place++) {
      off[place] = at(rows, place * PER_SECTION + m) - (SHARES[place] ?? 0) * last;
      any ||= off[place] !== 0;
    }
    // most loads act in one plane
    if (any) most[m] = bound(off);
  }
  return { rows, most };
}

/** Largest size of the polynomial through five values between the first and the last place, or a little more. */
function bound(values: Float64Array): number {
  let most = 0;
  for (let k = 0; k < COUNT; k++) {
    let [first, second] = [0, 0];
    for (let i = 0; i < COUNT; i++) {
      const w = at(FIRST_HALF, k * COUNT + i);
      first += w * at(values, i);
      second += w * at(values, DEGREE - i);
    }
    most = Math.max(most, Math.abs(first), Math.abs(second));
  }
  return most;
}
