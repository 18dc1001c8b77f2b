/**
 * Deflection over time, and its usual limits.
 */
import type { Factor } from "../sourced.ts";

/** K_cr on what the permanent load does, NDS 3.5.2: 1.5 for seasoned lumber, 2.0 for timber framed green. */
export function creepFactor(seasoning: "green" | "dry"): Factor {
  return {
    symbol: "K_cr",
    value: seasoning === "green" ? 2 : 1.5,
    status: "published",
    source: "NDS 3.5.2",
    note: seasoning === "green" ? "framed green" : "seasoned",
  };
}

/** K_cr × long-term + short-term, NDS 3.5-1; in. */
export function totalDeflection(creep: number, longTerm: number, shortTerm: number): number {
  return creep * longTerm + shortTerm;
}

/** Span divisors; undefined = not limited. */
export interface DeflectionLimits {
  /** of live, snow or wind load alone */
  readonly live?: number;
  /** of all load, with creep */
  readonly total?: number;
}
