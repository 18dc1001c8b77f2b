/**
 * Adjusted design values: reference value times the factors that apply to it, NDS Table 4.3.1. The stability factors C_L
 * and C_P and the bearing factor C_b depend on the place and are added with `withFactor`.
 */
import { type Factor, lessCertain, type Sourced, type ValueStatus } from "../sourced.ts";
import type { DesignValues, GradeId } from "../wood/types.ts";
import {
  flatUseFactors,
  incisingFactors,
  type SizedSection,
  type SizeFactors,
  type StressKey,
  sizeFactors,
  TEMPERATURE,
  wetServiceFactors,
} from "./factors.ts";

export interface Conditions {
  readonly section: SizedSection;
  readonly grade: GradeId;
  /** C_D of the load combination */
  readonly duration: Factor;
  /** service, or a green timber until it has dried, above 19 percent moisture */
  readonly wet: boolean;
  /** C_r, from `repetitiveFactor`; undefined = a single member */
  readonly repetitive?: Factor;
  readonly incised?: boolean;
  /** undefined = by the section; given where values already hold their size */
  readonly size?: SizeFactors;
}

export interface Adjusted {
  readonly reference: Sourced;
  readonly factors: readonly Factor[];
  /** psi */
  readonly value: number;
  readonly status: ValueStatus;
}

export type AdjustedValues = Readonly<Record<StressKey, Adjusted>>;

/**
 * @returns psi: F_b without C_L (the NDS's F_b*), F_c without C_P (F_c*), F_c⊥ without C_b. C_D does not act on F_c⊥, E
 * and E_min.
 */
export function adjustValues(values: DesignValues, conditions: Conditions): AdjustedValues {
  const { section, grade, duration, wet, repetitive } = conditions;
  const size = conditions.size ?? sizeFactors(section);
  const flat = flatUseFactors(section, grade);
  const moist = wet
    ? wetServiceFactors(section, values.Fb.value * size.Fb.value, values.Fc.value * size.Fc.value)
    : undefined;
  const incised = conditions.incised ? incisingFactors() : undefined;
  const one = (key: StressKey, factors: readonly (Factor | undefined)[]): Adjusted =>
    adjusted(
      values[key],
      [...factors, moist?.[key], TEMPERATURE, incised?.[key]].filter((factor) => factor !== undefined),
    );
  return {
    Fb: one("Fb", [duration, size.Fb, flat?.Fb, repetitive]),
    Ft: one("Ft", [duration, size.Ft]),
    Fv: one("Fv", [duration]),
    "Fc-perp": one("Fc-perp", []),
    Fc: one("Fc", [duration, size.Fc]),
    E: one("E", [flat?.E]),
    "E-min": one("E-min", [flat?.E]),
  };
}

/** @returns the value with one more factor */
export function withFactor(value: Adjusted, factor: Factor): Adjusted {
  return adjusted(value.reference, [...value.factors, factor]);
}

function adjusted(reference: Sourced, factors: readonly Factor[]): Adjusted {
  let { value, status } = reference;
  for (const factor of factors) {
    value *= factor.value;
    status = lessCertain(status, factor.status);
  }
  return { reference, factors, value, status };
}
