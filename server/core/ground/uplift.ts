/** What holds a post down: the weight of its pier and of what stands on it, by the combination 0.6 D + 0.6 W. */
import type { Pier } from "../model/model.ts";
import { concreteWeight, tubeVolume } from "./concrete.ts";
import { footingWeight, shaftWeight, tiesFooting } from "./pier-concrete.ts";

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

function holdOf(pier: number, dead: number, uplift: number): UpliftHold {
  const held = DEAD_SHARE * (pier + dead);
  return { pier, held, short: Math.max(0, uplift - held) };
}

/**
 * @param diameter of the round pier, inches
 * @param height of the concrete, feet
 * @param dead load on the post, lb
 * @param uplift at the post, lb, at the level of the combination (0.6 W already)
 */
export function upliftHold(diameter: number, height: number, dead: number, uplift: number): UpliftHold {
  return holdOf(concreteWeight(tubeVolume(diameter, height)), dead, uplift);
}

/**
 * A pier of the frame against the reaction that lifts it. Soil that lies on a footing, or sticks to the shaft, is left out.
 * @param net uplift that is left of a combination after the dead load of the frame, lb
 */
export function pierHold(pier: Pier, net: number): UpliftHold {
  return holdOf(shaftWeight(pier) + (tiesFooting(pier) ? footingWeight(pier) : 0), 0, net);
}
