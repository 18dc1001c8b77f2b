/** The concrete of a pier of the frame: what it weighs and what it stands on (derived: plane geometry, 150 lb/ft³). */
import type { Pier } from "../model/model.ts";
import { concreteWeight, roundArea } from "./concrete.ts";

/** Plan area of a pier above its footing, ft². */
function shaftArea({ entry, diameter }: Pier): number {
  return entry.kind === "pad" ? (diameter / 12) ** 2 : roundArea(diameter);
}

/** Plan area of what stands on the soil: of the footing where there is one, ft². */
export function baseArea(pier: Pier): number {
  return pier.footing ? roundArea(pier.footing.diameter) : shaftArea(pier);
}

/** Whether bars tie the pier to its footing, so that it takes the footing along when it is lifted or pushed (common practice). */
export function tiesFooting({ entry, footing }: Pier): boolean {
  return footing !== undefined && entry.rebar !== undefined;
}

/** Weight of the pier above its footing, lb. */
export function shaftWeight(pier: Pier): number {
  return concreteWeight(Math.max(0, (shaftArea(pier) * (pier.top[2] - pier.tubeBottom)) / 12));
}

/** Weight of its footing, lb; 0 where there is none. */
export function footingWeight({ footing }: Pier): number {
  return footing ? concreteWeight((roundArea(footing.diameter) * footing.thickness) / 12) : 0;
}
