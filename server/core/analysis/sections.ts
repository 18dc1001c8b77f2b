/** Forces inside sticks at fixed shares of their length: the same as `Curves`, no more. */
import type { StickLoads } from "./element-loads.ts";
import { at, bump } from "./numbers.ts";
import type { Vec3 } from "./structure.ts";

/** Places along each stick, as shares of its length: both ends and three between. */
export const SHARES = [0, 0.25, 0.5, 0.75, 1] as const;

/** N Vy Vz T My Mz. */
export const PER_SECTION = 6;

/** Offset of each within a section. */
const [VY, VZ, T, MY, MZ] = [1, 2, 3, 4, 5] as const;

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

/** @returns sections of a stick under its own loads, by place, with nothing at its first end */
export function loadSections(loads: StickLoads, length: number): Float64Array {
  const rows = new Float64Array(SHARES.length * PER_SECTION);
  const sums = new Float64Array(9);
  for (let place = 0; place < SHARES.length; place++) {
    const share = SHARES[place] ?? 0;
    sumBefore(loads, share * length, share === 1, sums);
    const start = place * PER_SECTION;
    rows[start] = -at(sums, FORCE);
    rows[start + VY] = -at(sums, FORCE + 1);
    rows[start + VZ] = -at(sums, FORCE + 2);
    rows[start + T] = -at(sums, MOMENT);
    rows[start + MY] = -at(sums, LEVER + 2) - at(sums, MOMENT + 1);
    rows[start + MZ] = at(sums, LEVER + 1) - at(sums, MOMENT + 2);
  }
  return rows;
}

/** The section further along a stick, as far as it follows from one before it: everything but the loads in between. */
export function runOn(sections: Float64Array, from: number, by: number, out: Float64Array, to: number): void {
  out[to] = at(sections, from);
  out[to + VY] = at(sections, from + VY);
  out[to + VZ] = at(sections, from + VZ);
  out[to + T] = at(sections, from + T);
  out[to + MY] = at(sections, from + MY) + at(sections, from + VZ) * by;
  out[to + MZ] = at(sections, from + MZ) - at(sections, from + VY) * by;
}
