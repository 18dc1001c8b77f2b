/** Forces inside sticks at fixed shares of their length, from their end forces and loads: the same as `Curves`, no more. */
import type { StickLoads } from "./element-loads.ts";
import { at } from "./numbers.ts";
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

/** Force of the loads between end i and x, and its moment about x: ∫ p and ∫ (x − x′) p. */
function before(
  loads: StickLoads | undefined,
  x: number,
  last: boolean,
): { force: number[]; lever: number[]; moment: number[] } {
  const force = [0, 0, 0];
  const lever = [0, 0, 0];
  const moment = [0, 0, 0];
  const add = (into: number[], v: Vec3, by: number): void => {
    for (let c = 0; c < 3; c++) into[c] = (into[c] ?? 0) + (v[c] ?? 0) * by;
  };
  for (const p of loads?.points ?? []) {
    // at the far end a force there belongs to the joint, not to the section just before it
    if (p.at > x || (last && p.at >= x)) continue;
    add(force, p.force, 1);
    add(lever, p.force, x - p.at);
    add(moment, p.moment, 1);
  }
  for (const s of loads?.spreads ?? []) {
    const h = Math.min(s.to, x) - s.from;
    if (h <= 0) continue;
    const rate = 1 / (s.to - s.from);
    const [first, second] = [h, (h * h) / 2];
    const third = (h * h * h) / 3;
    const reach = x - s.from;
    // intensity start + (end − start) t/(to − from), t from `from`
    add(force, s.start, first - second * rate);
    add(force, s.end, second * rate);
    add(lever, s.start, reach * (first - second * rate) - (second - third * rate));
    add(lever, s.end, reach * second * rate - third * rate);
  }
  return { force, lever, moment };
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
  SHARES.forEach((share, place) => {
    const x = share * stick.axes.length;
    const { force, lever, moment } = before(loads, x, share === 1);
    const start = row + place * PER_SECTION;
    out[start] = N - (force[0] ?? 0);
    out[start + 1] = Vy - (force[1] ?? 0);
    out[start + 2] = Vz - (force[2] ?? 0);
    out[start + 3] = T - (moment[0] ?? 0);
    out[start + 4] = My + Vz * x - (lever[2] ?? 0) - (moment[1] ?? 0);
    out[start + 5] = Mz - Vy * x + (lever[1] ?? 0) - (moment[2] ?? 0);
  });
}
