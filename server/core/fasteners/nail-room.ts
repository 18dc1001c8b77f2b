/**
 * Room round nails, in diameters, from the commentary to NDS 12.1.6.6 (Table C12.1.6.6; memory): driven without and with
 * prebored holes. The standard itself only asks that the wood must not split.
 */
export interface NailRoom {
  /** from nail to nail in a row along the grain, and in a row across it */
  readonly along: number;
  readonly across: number;
  /** to an edge */
  readonly edge: number;
}

export const DRIVEN: NailRoom = { along: 15, across: 10, edge: 2.5 };
export const PREBORED: NailRoom = { along: 10, across: 5, edge: 2.5 };

/** Least penetration of a nail into the timber that it holds in, diameters (NDS 12.1.6.5; memory). */
export const NAIL_LEAST = 6;

/** What a size may fall short, in: less than a hammer is true to. */
const SLACK = 1 / 32;

/**
 * @param room in, of wood along the row; @param apart diameters from nail to nail; @param edge diameters to either edge
 * @param diameter in
 * @returns the most nails that stand in one row, at least none
 */
export function mostNails(room: number, apart: number, edge: number, diameter: number): number {
  const most = Math.floor((room + SLACK - 2 * edge * diameter) / (apart * diameter)) + 1;
  return Number.isFinite(most) ? Math.max(0, most) : 0;
}
