/** How hard the wood of one timber is pressed where it bears, the worst place of all combinations. */
import { at } from "../analysis/numbers.ts";
import { type Bearing, endPressing, pressing, type Source } from "./bearing-force.ts";
import { bearingStress } from "./member-bearing.ts";
import type { DurationValues } from "./member-values.ts";
import type { ShownCase } from "./shown-case.ts";

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

/** @returns lb, 0 when it lifts */
const press = (source: Source, { solved, tips, reaction }: ShownCase): number =>
  source.kind === "end" ? endPressing(source, tips) : pressing(source, solved, reaction);

/**
 * Of equal cases the first.
 * @param cases in their order; @param values of the timber by the index of C_D; @returns undefined where nothing presses
 */
function worstOf(
  bearing: Bearing,
  cases: readonly ShownCase[],
  values: readonly DurationValues[],
): BearingWorst | undefined {
  const { source, area } = bearing;
  const limits = Float64Array.from(values, (v) => bearingStress(bearing, v));
  let most = 0;
  let worst: ShownCase | undefined;
  for (const shown of cases) {
    const force = press(source, shown);
    if (!(force > 0)) continue;
    const ratio = force / area / at(limits, shown.duration);
    if (!(ratio > most)) continue;
    most = ratio;
    worst = shown;
  }
  if (!worst) return undefined;
  const force = press(source, worst);
  const limit = at(limits, worst.duration);
  return { bearing, ratio: most, value: force / area, limit, force, solved: worst.index };
}

/** @returns the worst of a timber's bearings, of equal ones the first; undefined where nothing presses */
export function worstBearing(
  bearings: readonly Bearing[],
  cases: readonly ShownCase[],
  values: readonly DurationValues[],
): BearingWorst | undefined {
  let most: BearingWorst | undefined;
  for (const bearing of bearings) {
    const own = worstOf(bearing, cases, values);
    if (own && own.ratio > (most?.ratio ?? 0)) most = own;
  }
  return most;
}
