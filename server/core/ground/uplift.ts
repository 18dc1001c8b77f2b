/** What holds a post down: the weight of its pier and of what stands on it, by the combination 0.6 D + 0.6 W. */
import { concreteWeight, tubeVolume } from "./concrete.ts";

/** Share of the dead load that counts against uplift (ASCE 7 section 2.4, combination 0.6 D + 0.6 W; memory). */
const DEAD_SHARE = 0.6;

export interface UpliftHold {
  /** weight of the pier, lb */
  readonly pier: number;
  /** what the weight holds, lb: 0.6 (pier + dead load on the post) */
  readonly held: number;
  /** what is missing, lb; 0 where the weight holds it */
  readonly short: number;
}

/**
 * @param diameter of the round pier, inches
 * @param height of the concrete, feet
 * @param dead load on the post, lb
 * @param uplift at the post, lb, at the level of the combination (0.6 W already)
 */
export function upliftHold(diameter: number, height: number, dead: number, uplift: number): UpliftHold {
  const pier = concreteWeight(tubeVolume(diameter, height));
  const held = DEAD_SHARE * (pier + dead);
  return { pier, held, short: Math.max(0, uplift - held) };
}
