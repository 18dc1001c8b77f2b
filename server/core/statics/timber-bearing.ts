/** How hard the wood of one timber is pressed where it bears, the worst place of all combinations. */
import { type Bearing, endPressing, pressing } from "./bearing-force.ts";
import { bearingStress } from "./member-bearing.ts";
import type { DurationValues } from "./member-values.ts";
import { beats, type ShownCase } from "./shown-case.ts";

/** The worst of one bearing. */
export interface BearingWorst {
  readonly bearing: Bearing;
  readonly ratio: number;
  /** psi */
  readonly value: number;
  readonly limit: number;
  /** lb */
  readonly force: number;
  /** index of the case */
  readonly solved: number;
}

/** @param values of the timber by the index of C_D; @returns undefined where nothing presses */
function worstOf(
  bearing: Bearing,
  cases: readonly ShownCase[],
  values: (duration: number) => DurationValues,
): BearingWorst | undefined {
  const { source, area } = bearing;
  const limits: number[] = [];
  const most = { ratio: 0, value: 0, limit: 0, force: 0, solved: -1 };
  for (const { solved, tips, index, duration, reaction } of cases) {
    const force = source.kind === "end" ? endPressing(source, tips) : pressing(source, solved, reaction);
    if (!(force > 0)) continue;
    let limit = limits[duration];
    if (limit === undefined) {
      limit = bearingStress(bearing, values(duration));
      limits[duration] = limit;
    }
    const value = force / area;
    if (!beats(most, value / limit, index)) continue;
    most.ratio = value / limit;
    most.value = value;
    most.limit = limit;
    most.force = force;
    most.solved = index;
  }
  return most.solved < 0 ? undefined : { bearing, ...most };
}

/** @returns the worst of a timber's bearings, of equal ones the first; undefined where nothing presses */
export function worstBearing(
  bearings: readonly Bearing[],
  cases: readonly ShownCase[],
  values: (duration: number) => DurationValues,
): BearingWorst | undefined {
  let most: BearingWorst | undefined;
  for (const bearing of bearings) {
    const own = worstOf(bearing, cases, values);
    if (own && own.ratio > (most?.ratio ?? 0)) most = own;
  }
  return most;
}
