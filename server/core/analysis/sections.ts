/** Forces inside sticks at fixed shares of their length, from their end forces and loads: the same as `Curves`, no more. */
import type { StickLoads } from "./element-loads.ts";
import { at, bump } from "./numbers.ts";
import type { Vec3 } from "./structure.ts";
import type { Stick } from "./system.ts";

/** Places along each stick, as shares of its length: both ends and three between. */
export const SHARES = [0, 0.25, 0.5, 0.75, 1] as const;

/** N Vy Vz T My Mz. */
export const PER_SECTION = 6;

/** Where the forces of a stick at a place begin in a table. */
export function sectionRow(stick: number, place: number): number {
  return (stick * SHARES.length + place) * PER_SECTION;
}

/** In what is summed up to a place: force, its moment about the place, moments of their own; three numbers each. */
const [FORCE, LEVER, MOMENT] = [0, 3, 6] as const;

function addTo(sums: Float64Array, what: number, v: Vec3, by: number): void {
  bump(sums, what, v[0] * by);
  bump(sums, what + 1, v[1] * by);
  bump(sums, what + 2, v[2] * by);
}

/** Sums the loads between end i and x: ∫ p, ∫ (x − x′) p, and moments. */
function sumBefore(loads: StickLoads, x: number, last: boolean, sums: Float64Array): void {
  sums.fill(0);
  for (const p of loads.points) {
    // at the far end a force there belongs to the joint, not to the section just before it
    if (p.at > x || (last && p.at >= x)) continue;
    addTo(sums, FORCE, p.force, 1);
    addTo(sums, LEVER, p.force, x - p.at);
    addTo(sums, MOMENT, p.moment, 1);
  }
  for (const s of loads.spreads) {
    const h = Math.min(s.to, x) - s.from;
    if (h <= 0) continue;
    const rate = 1 / (s.to - s.from);
    const [first, second] = [h, (h * h) / 2];
    const third = (h * h * h) / 3;
    const reach = x - s.from;
    // intensity start + (end − start) t/(to − from), t from `from`
    addTo(sums, FORCE, s.start, first - second * rate);
    addTo(sums, FORCE, s.end, second * rate);
    addTo(sums, LEVER, s.start, reach * (first - second * rate) - (second - third * rate));
    addTo(sums, LEVER, s.end, reach * second * rate - third * rate);
  }
}

/**
 * Sections of one stick, written to `out` from `row` on.
 * @param ends forces of both ends on the stick, local axes, from `from` on
 */
export function stickSections(
  stick: Stick,
  loads: StickLoads | undefined,
  ends: Float64Array,
  from: number,
  out: Float64Array,
  row: number,
): void {
  const N = -at(ends, from);
  const Vy = -at(ends, from + 1);
  const Vz = -at(ends, from + 2);
  const T = -at(ends, from + 3);
  const My = -at(ends, from + 4);
  const Mz = -at(ends, from + 5);
  if (!loads) {
    for (let place = 0; place < SHARES.length; place++) {
      const x = (SHARES[place] ?? 0) * stick.axes.length;
      const start = row + place * PER_SECTION;
      out[start] = N;
      out[start + 1] = Vy;
      out[start + 2] = Vz;
      out[start + 3] = T;
      out[start + 4] = My + Vz * x;
      out[start + 5] = Mz - Vy * x;
    }
    return;
  }
  const sums = new Float64Array(9);
  for (let place = 0; place < SHARES.length; place++) {
    const share = SHARES[place] ?? 0;
    const x = share * stick.axes.length;
    sumBefore(loads, x, share === 1, sums);
    const start = row + place * PER_SECTION;
    out[start] = N - at(sums, FORCE);
    out[start + 1] = Vy - at(sums, FORCE + 1);
    out[start + 2] = Vz - at(sums, FORCE + 2);
    out[start + 3] = T - at(sums, MOMENT);
    out[start + 4] = My + Vz * x - at(sums, LEVER + 2) - at(sums, MOMENT + 1);
    out[start + 5] = Mz - Vy * x + at(sums, LEVER + 1) - at(sums, MOMENT + 2);
  }
}
