/** Thin air pushes less: the ground elevation factor of the wind. */
import type { Sourced } from "../sourced.ts";

/**
 * K_e = e^(−0.0000362 z_e), ASCE 7-16 and 7-22 Table 26.9-1, note 2 (memory); 1 at sea level and below.
 * @param height z_e of the ground above the sea, ft
 */
export function elevationFactor(height: number): Sourced {
  return {
    value: Math.exp(-0.0000362 * Math.max(0, height)),
    status: "memory",
    source: "ASCE 7 Table 26.9-1, note 2",
  };
}
