/** Fasteners pulled and pushed sideways at once, NDS 12.4. */
import { hankinson } from "../members/compression.ts";
import type { Sourced } from "../sourced.ts";

export interface CombinedUse {
  /** lb: sideways and outward parts together */
  readonly force: number;
  /** degrees between the force and the wood’s face: 0 all sideways, 90 all outward */
  readonly angle: number;
  /** Z_α′, lb, along that direction */
  readonly allowed: Sourced;
  /** force ÷ allowed; passes up to 1 */
  readonly ratio: number;
}

/**
 * Lag and wood screws: Z_α′ = W′Z′/(W′ cos² α + Z′ sin² α) (NDS 12.4-1); nails W′Z′/(W′ cos α + Z′ sin α) (NDS 12.4-2).
 * @param lateral Z′, lb; @param withdrawal W′ of the whole embedment, lb; both with their factors
 * @param sideways lb; @param outward lb
 */
export function combinedUse(
  kind: "screw" | "nail",
  lateral: number,
  withdrawal: number,
  sideways: number,
  outward: number,
): CombinedUse {
  const [s, o] = [Math.abs(sideways), Math.max(0, outward)];
  const force = Math.hypot(s, o);
  const radians = Math.atan2(o, s);
  const angle = (radians * 180) / Math.PI;
  const value = along(kind, lateral, withdrawal, radians);
  return {
    force,
    angle,
    allowed: {
      value,
      status: "memory",
      source:
        kind === "screw"
          ? "W′Z′/(W′ cos² α + Z′ sin² α), NDS 12.4-1"
          : "W′Z′/(W′ cos α + Z′ sin α), NDS 12.4-2",
    },
    ratio: force === 0 ? 0 : value > 0 ? force / value : Number.POSITIVE_INFINITY,
  };
}

function along(kind: "screw" | "nail", Z: number, W: number, radians: number): number {
  if (radians === 0) return Math.max(0, Z);
  if (radians >= Math.PI / 2) return Math.max(0, W);
  if (!(Z > 0 && W > 0)) return 0;
  return kind === "screw"
    ? hankinson(Z, W, (radians * 180) / Math.PI)
    : (W * Z) / (W * Math.cos(radians) + Z * Math.sin(radians));
}
