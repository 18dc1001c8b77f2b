/** How deep a footing must go (IRC 2021 R403.1.4; published: the rule as quoted there, not the exceptions). */

/** Least depth of any footing below undisturbed ground, inches (IRC R403.1.4; published). */
const LEAST_FOOTING_DEPTH = 12;

/**
 * Least depth of a footing's underside below undisturbed ground: the frost line, and never less than 12 in.
 * Exceptions for small detached buildings are not applied: local codes often strike them.
 * @param frostDepth of the place, inches: set by the jurisdiction, it has no default
 * @returns inches
 */
export function leastFootingDepth(frostDepth: number): number {
  return Math.max(LEAST_FOOTING_DEPTH, frostDepth);
}
