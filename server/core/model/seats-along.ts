/** The seats of each receiving timber in their order along it, and which of them face each other. */
import { groupBy } from "../collect.ts";
import type { Meeting } from "./model.ts";
import type { Seat } from "./resolve-joints.ts";
import { dot } from "./vec.ts";

/** A seat and how far along the receiving timber it lies. */
export interface SeatAlong {
  readonly seat: Seat;
  readonly at: number;
}

const positionOf = (seat: Seat): number => dot(seat.meeting.point, seat.into.axis);

/** The seats of each receiving timber, by its id, in order along it. */
export function seatsAlong(seats: readonly Seat[]): ReadonlyMap<string, readonly SeatAlong[]> {
  const groups = groupBy(
    seats.map((seat) => ({ seat, at: positionOf(seat) })),
    (s) => s.seat.into.id,
  );
  for (const group of groups.values()) group.sort((a, b) => a.at - b.at);
  return groups;
}

/** Index of the first seat at or past a position. */
function firstAt(along: readonly SeatAlong[], at: number): number {
  let low = 0;
  let high = along.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((along[middle]?.at ?? 0) < at) low = middle + 1;
    else high = middle;
  }
  return low;
}

/** Whether another brace or tenon enters the opposite face of the same timber at about the same place. */
export function opposedBy(
  seat: Seat,
  along: readonly SeatAlong[],
  inward: Meeting["point"],
  reach: number,
): boolean {
  const at = positionOf(seat);
  for (let i = firstAt(along, at - reach); i < along.length; i++) {
    const other = along[i];
    if (!other || other.at >= at + reach) return false;
    const { of, end } = other.seat;
    if (end === "side" || of.id === seat.of.id) continue;
    if (dot(of.axis, inward) * (end === "head" ? 1 : -1) < -0.3) return true;
  }
  return false;
}
