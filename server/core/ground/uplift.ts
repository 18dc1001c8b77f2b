/** What holds a post down: the weight of its pier and of what stands on it, by the combination 0.6 D + 0.6 W. */
import type { Pier } from "../model/model.ts";
import { concreteWeight, roundArea, tubeVolume } from "./concrete.ts";

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

/** Plan area of a pier above its footing, ft². */
function shaftArea({ entry, diameter }: Pier): number {
  return entry.kind === "pad" ? (diameter / 12) ** 2 : roundArea(diameter);
}

/** Whether bars tie the pier to its footing, so that it takes the footing along when it is lifted (common practice). */
export function liftsFooting({ entry, footing }: Pier): boolean {
  return footing !== undefined && entry.rebar !== undefined;
}

/**
 * A pier of the frame against the reaction that lifts it. Soil that lies on a footing, or sticks to the shaft, is left out.
 * @param net uplift that is left of a combination after the dead load of the frame, lb
 */
export function pierHold(pier: Pier, net: number): UpliftHold {
  const shaft = (shaftArea(pier) * (pier.top[2] - pier.tubeBottom)) / 12;
  const { footing } = pier;
  const below = footing && liftsFooting(pier) ? (roundArea(footing.diameter) * footing.thickness) / 12 : 0;
  return holdOf(concreteWeight(Math.max(0, shaft) + below), 0, net);
}
