/**
 * Wood pressed by other wood (NDS 3.10): under shoulders, on the floors of housings and pockets and the edges of tenons, at
 * the toes of braces and leaning ends, under rafters' seats and timbers that lie across others, and on piers.
 *
 * The area is what really touches, from the sizes to which the joint is cut. Each surface is looked at twice, in the wood
 * that presses and in the wood that is pressed, each at the angle of the force to its own grain: across it F_c⊥′ without
 * C_D, with C_b where 3.10.4 allows; along it 0.75 F_c*, since no joint here has a metal plate (3.10.1.3); between them by
 * Hankinson's formula (3.10.3). C_M of green wood is in all of them.
 */

import { groupBy } from "../collect.ts";
import type { Joint } from "../joinery/joint.ts";
import { type Adjusted, withFactor } from "../members/adjust.ts";
import { bearingAreaFactor, END_GRAIN } from "../members/bearing.ts";
import { hankinson } from "../members/compression.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, sub, type Vec3 } from "../model/vec.ts";
import { contactBearings, groundBearings, toEnd } from "./bearing-contacts.ts";
import { type Bearing, pressAt, tiesByJoint } from "./bearing-force.ts";
import { bearingSurfaces } from "./end-surfaces.ts";
import type { Ground } from "./member-supports.ts";
import type { DurationValues } from "./member-values.ts";
import type { FrameStructure } from "./structure.ts";

/** Between a force and a timber's grain, degrees. */
const angleTo = (timber: Timber, toward: Vec3): number =>
  (Math.acos(Math.min(1, Math.abs(dot(timber.axis, toward)))) * 180) / Math.PI;

const within = (timber: Timber, at: number): number => Math.min(Math.max(at, 0), timber.span);

/** Where on the joined timber the joint is, in from its foot. */
function axialOf({ of, end, meeting }: Joint): number {
  if (end !== "side") return end === "head" ? of.span : 0;
  return within(of, dot(sub(meeting.point, of.origin), of.axis));
}

/** What a timber presses where it is joined: on each surface its own wood and the other's. */
function jointBearings(frame: FrameStructure, ties: ReadonlyMap<string, number>, joint: Joint): Bearing[] {
  const { of, into, face } = joint;
  const at = within(into, -face.ends[0]);
  const atOf = axialOf(joint);
  return bearingSurfaces(joint).flatMap((surface): Bearing[] => {
    const source = pressAt(frame, ties, joint, surface.toward, surface.bothWays);
    if (!source) return [];
    const { area, growth, note, lengthOf, lengthInto, pastOf } = surface;
    const made = { note, status: "derived" as const };
    const pressed = (timber: Timber, at: number, length: number, fromEnd: number): Bearing => ({
      timber,
      at,
      place: joint.id,
      joint,
      area,
      length,
      fromEnd,
      angle: angleTo(timber, surface.toward),
      source,
      made,
      growth,
    });
    return [pressed(into, at, lengthInto, toEnd(into, at, lengthInto)), pressed(of, atOf, lengthOf, pastOf)];
  });
}

/** @returns every place where wood is pressed by wood or by a pier, and the wood that presses */
export function bearingsOf(model: Model, frame: FrameStructure, grounds: readonly Ground[]): Bearing[] {
  const ties = tiesByJoint(frame);
  return [
    ...model.joints.flatMap((j) => jointBearings(frame, ties, j)),
    ...contactBearings(model, frame),
    ...groundBearings(grounds),
  ].filter((b) => b.area > 1e-6);
}

/** Whether the force goes with the grain, so that F_c takes it; degrees that are only rounding count as none. */
function isAlongGrain({ angle }: Pick<Bearing, "angle">): boolean {
  return angle < 0.5;
}

/** What a bearing may take; between the grains with the two values and the angle that Hankinson's formula mixes. */
export interface BearingLimit extends Adjusted {
  readonly angled?: { readonly along: Adjusted; readonly across: Adjusted; readonly angle: number };
}

/**
 * Near the grain Hankinson's formula starts from F_c* itself: there the end grain's share still limits it, or a surface
 * that leans a degree would be allowed a third more than one that is square.
 * @returns psi that the bearing may take under a load duration, with every factor
 */
export function bearingLimit(bearing: Bearing, values: DurationValues): BearingLimit {
  const { angle, length, fromEnd } = bearing;
  if (angle > 89.5) return withFactor(values.FcPerp, bearingAreaFactor(length, fromEnd));
  const endGrain = withFactor(values.FcStar, END_GRAIN);
  const value = hankinson(values.FcStar.value, values.FcPerp.value, angle);
  if (isAlongGrain(bearing) || value > endGrain.value) return endGrain;
  return {
    ...values.FcPerp,
    factors: [
      ...values.FcPerp.factors,
      {
        symbol: "F_θ/F_c⊥",
        value: value / values.FcPerp.value,
        status: "derived",
        source: "NDS 3.10-1",
        note: { text: "{angle} to the grain", parts: { angle: { value: angle, unit: "degree" } } },
      },
    ],
    value,
    angled: { along: values.FcStar, across: values.FcPerp, angle },
  };
}

/** @returns the figure of {@link bearingLimit} alone, psi */
export function bearingStress(bearing: Bearing, { FcPerp, FcStar }: DurationValues): number {
  const { angle, length, fromEnd } = bearing;
  if (angle > 89.5) return FcPerp.value * bearingAreaFactor(length, fromEnd).value;
  const endGrain = FcStar.value * END_GRAIN.value;
  const value = hankinson(FcStar.value, FcPerp.value, angle);
  return isAlongGrain(bearing) || value > endGrain ? endGrain : value;
}

/** Grouped by the timber whose wood is looked at. */
export function byTimber(bearings: readonly Bearing[]): Map<string, Bearing[]> {
  return groupBy(bearings, (b) => b.timber.id);
}
