/** Distances that fasteners must keep, for hovers and checks. */
import type { ValueStatus } from "../sourced.ts";

/** A distance that must be kept, for a hover or a check. */
export interface Requirement {
  readonly what: string;
  /** in, or without unit */
  readonly have: number;
  readonly need: number;
  readonly sense: "least" | "most";
  readonly ok: boolean;
  readonly status: ValueStatus;
  readonly source: string;
}

/** @returns whether `have` keeps the limit, sizes cut to 1/1000 in counting as equal */
export function requirement(
  what: string,
  have: number,
  need: number,
  known: { readonly status: ValueStatus; readonly source: string },
  sense: Requirement["sense"] = "least",
): Requirement {
  const ok = sense === "least" ? have >= need - 1e-3 : have <= need + 1e-3;
  return { what, have, need, sense, ok, status: known.status, source: known.source };
}
