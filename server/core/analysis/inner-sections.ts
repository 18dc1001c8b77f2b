/**
 * What the loads of a stick give between its ends: sections along it are those that follow from its first one, and this.
 */
import { at } from "./numbers.ts";
import { PER_SECTION, runOn, SHARES } from "./sections.ts";

export interface InnerSections {
  /** by place, six numbers each; nought at the first place */
  readonly rows: Float64Array;
  /**
   * By number of a section, how far it lies off the straight line between its values at both ends: the middle between the
   * least and the most, and half the way from the one to the other. Holds wherever it is read from the places by
   * interpolation, and for moments also where they peak between two places by the shears at these.
   */
  readonly middle: Float64Array;
  readonly half: Float64Array;
}

const COUNT = SHARES.length;
const DEGREE = COUNT - 1;

/** Offset of each within a section. */
const [VY, VZ, MY, MZ] = [1, 2, 4, 5] as const;

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
  const middle = new Float64Array(PER_SECTION);
  const half = new Float64Array(PER_SECTION);
  const range = new Float64Array(2);
  const off = new Float64Array(COUNT);
  for (let m = 0; m < PER_SECTION; m++) {
    const last = at(rows, DEGREE * PER_SECTION + m);
    let any = false;
    for (let place = 1; place < DEGREE; place++) {
      off[place] = at(rows, place * PER_SECTION + m) - (SHARES[place] ?? 0) * last;
      any ||= off[place] !== 0;
    }
    range.fill(0);
    // most loads act in one plane
    if (any) widen(off, range);
    if (m === MY || m === MZ) widenToPeaks(rows, m, off, length, range);
    middle[m] = (at(range, 0) + at(range, 1)) / 2;
    half[m] = (at(range, 1) - at(range, 0)) / 2;
  }
  return { rows, middle, half };
}

/** Widens a range to the polynomial through five values between the first and the last place, or a little beyond. */
function widen(values: Float64Array, range: Float64Array): void {
  for (let k = 0; k < COUNT; k++) {
    let [first, second] = [0, 0];
    for (let i = 0; i < COUNT; i++) {
      const w = at(FIRST_HALF, k * COUNT + i);
      first += w * at(values, i);
      second += w * at(values, DEGREE - i);
    }
    reach(range, first);
    reach(range, second);
  }
}

function reach(range: Float64Array, value: number): void {
  range[0] = Math.min(at(range, 0), value);
  range[1] = Math.max(at(range, 1), value);
}

/**
 * Between two places a moment is also taken for the parabola that starts at the first with the shears at both
 * (dM_z/dx = −V_y, dM_y/dx = V_z), to find its peak; that lies between its own Bernstein coefficients too.
 * @param off the line, by place
 */
function widenToPeaks(
  rows: Float64Array,
  m: typeof MY | typeof MZ,
  off: Float64Array,
  length: number,
  range: Float64Array,
): void {
  const slope = at(rows, DEGREE * PER_SECTION + m) / length;
  const turn = (place: number): number =>
    (m === MZ ? -at(rows, place * PER_SECTION + VY) : at(rows, place * PER_SECTION + VZ)) - slope;
  for (let place = 0; place < DEGREE; place++) {
    const step = ((SHARES[place + 1] ?? 0) - (SHARES[place] ?? 0)) * length;
    const [first, second] = [turn(place), turn(place + 1)];
    reach(range, at(off, place) + (first * step) / 2);
    reach(range, at(off, place) + ((first + second) * step) / 2);
  }
}
