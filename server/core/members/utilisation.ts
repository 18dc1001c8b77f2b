/**
 * One check of a member: what acts, what it may be, and everything the limit is made of.
 */
import type { Factor, Sourced } from "../sourced.ts";
import type { Adjusted } from "./adjust.ts";

export type CheckKind =
  | "bending"
  | "bending-at-seat"
  | "shear"
  | "shear-at-seat"
  | "live-deflection"
  | "total-deflection"
  | "tip-live-deflection"
  | "tip-total-deflection";

/** What a use was reckoned from, for whoever shows its formula: lb, in; of a deflection before creep. */
export type UseTerms =
  | { readonly kind: "bending"; readonly moment: number; readonly modulus: number }
  | {
      readonly kind: "shear";
      readonly shear: number;
      /** part of `shear` from the moment over a support past which it goes on; undefined or 0 = none */
      readonly inner?: number;
      readonly breadth: number;
      readonly depth: number;
    }
  | {
      readonly kind: "deflection";
      readonly permanent: number;
      readonly variable: number;
      readonly length: number;
      readonly divisor: number;
    };

export interface Utilisation {
  readonly what: CheckKind;
  readonly value: number;
  readonly limit: number;
  readonly unit: "psi" | "in";
  /** value ÷ limit; passes up to 1 */
  readonly ratio: number;
  /** the reference value of a stress; undefined for a deflection */
  readonly reference?: Sourced;
  /** factors on the reference value, or on the permanent part of a deflection */
  readonly factors: readonly Factor[];
  readonly terms?: UseTerms;
}

/** @param value psi */
export function stressUse(what: CheckKind, value: number, allowed: Adjusted, terms?: UseTerms): Utilisation {
  const { reference, factors, value: limit } = allowed;
  return {
    what,
    value,
    limit,
    unit: "psi",
    ratio: limit > 0 ? value / limit : Number.POSITIVE_INFINITY,
    reference,
    factors,
    ...(terms && { terms }),
  };
}

/** @param value in; @param length in, of which the limit is a share */
export function deflectionUse(
  what: CheckKind,
  value: number,
  length: number,
  divisor: number,
  factors: readonly Factor[],
): Utilisation {
  const limit = length / divisor;
  return { what, value, limit, unit: "in", ratio: value / limit, factors };
}

/** @returns the one nearest to or furthest over its limit; undefined for none */
export function worst<T extends Utilisation>(uses: readonly T[]): T | undefined {
  return uses.reduce<T | undefined>(
    (most, use) => (most === undefined || use.ratio > most.ratio ? use : most),
    undefined,
  );
}

/**
 * The largest length that passes, by halving: the ratio must grow with the length.
 * @param ratioAt governing value ÷ limit at a length, in
 * @param shortest in; @param longest in, where the search ends
 * @returns in, to 1/1000; undefined where even the shortest fails
 */
export function longestPassing(
  ratioAt: (length: number) => number,
  shortest: number,
  longest: number,
): number | undefined {
  if (!(ratioAt(shortest) <= 1)) return undefined;
  if (ratioAt(longest) <= 1) return longest;
  let passes = shortest;
  let fails = longest;
  while (fails - passes > 0.001) {
    const middle = (passes + fails) / 2;
    if (ratioAt(middle) <= 1) passes = middle;
    else fails = middle;
  }
  return passes;
}
