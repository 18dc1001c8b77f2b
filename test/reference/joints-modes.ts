/** Yield modes as joints.yaml lists them. */
import type { Yield } from "../../server/core/fasteners/yield.ts";
import type { Case } from "./cases.ts";

/** A figure for each mode, and which governs. */
export function modesOf(yields: Yield): Case["expect"] {
  const each = Object.fromEntries(yields.modes.map(({ mode, Z }) => [`Z_${mode}`, Z]));
  return { ...each, Z: yields.governs.Z, mode: yields.governs.mode };
}
