/**
 * How much a metal sheet grows and shrinks with the heat.
 */
import type { Sourced } from "../sourced.ts";

export type SheetMetal = "steel" | "aluminum";

/** Growth per length and degree Fahrenheit. */
export const EXPANSION: Readonly<Record<SheetMetal, Sourced>> = {
  steel: { value: 6.5e-6, status: "memory", source: "coefficients in common use" },
  aluminum: { value: 13e-6, status: "memory", source: "coefficients in common use" },
};

/** @param length ft; @param change °F, between the coldest and the hottest the sheet gets; @returns in */
export function thermalMovement(metal: SheetMetal, length: number, change: number): number {
  return length * 12 * change * EXPANSION[metal].value;
}
