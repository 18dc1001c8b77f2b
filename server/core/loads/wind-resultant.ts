/**
 * Forces of a pressure on a sloped plane, by its geometry.
 */
import type { Pitch } from "./snow-factors.ts";

export interface PlaneForces {
  /** lb, square to the plane, into its top */
  readonly normal: number;
  /** lb, down; negative lifts */
  readonly down: number;
  /** lb, level, away from the eave toward the ridge; negative pulls toward the eave */
  readonly sideways: number;
}

/**
 * A pressure acts on the sloped area A/cos θ, square to it: p A down and p A tan θ sideways.
 * @param psf plus on the top; @param area ft² of level projection
 */
export function planeForces(psf: number, pitch: Pitch, area: number): PlaneForces {
  const down = psf * area;
  return {
    normal: (down * Math.hypot(pitch.rise, pitch.run)) / pitch.run,
    down,
    sideways: (down * pitch.rise) / pitch.run,
  };
}
