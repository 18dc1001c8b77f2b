/** What screws or nails hold against wind that lifts a timber off what it lies on: a rafter off its plate, a purlin off its rafter. */
import { adjust, type FastenerMoisture, toeNail, wetWithdrawal } from "../fasteners/connection-factors.ts";
import { nailWithdrawal, toeNailReach } from "../fasteners/nail.ts";
import { NAIL_LEAST } from "../fasteners/nail-room.ts";
import { structuralScrew } from "../fasteners/structural-screw.ts";
import type { Joint } from "../joinery/joint.ts";
import { plumbThrough } from "../joinery/seat.ts";
import type { Adjusted } from "../members/adjust.ts";
import type { Timber } from "../model/model.ts";
import type { Factor, Sourced } from "../sourced.ts";
import { woodOf } from "../statics/timber-wood.ts";
import type { SizedFasteners } from "./sized-fasteners.ts";

export interface UpliftHold {
  readonly fasteners: SizedFasteners;
  /** in, of the upper timber along the fasteners: of a rafter plumb through the middle of its seat */
  readonly wood: number;
  /** in, of thread, or of the nail, in the lower timber */
  readonly held: number;
  /** of one, lb for each inch that holds */
  readonly perInch: number;
  /** nails too short for that wood go in from the side, on the slant */
  readonly toeNailed: boolean;
  /** all of them, lb, with C_D, C_M and C_tn */
  readonly uplift: Adjusted;
}

/**
 * Whether nails are too short to reach the plate through the rafter by their least, so that they go in from the side.
 * @param wood in, of the rafter over its plate, plumb through the middle of the seat
 */
export function isToeNailed(wood: number, { length, diameter }: SizedFasteners): boolean {
  return length - wood < NAIL_LEAST * diameter;
}

/** Two timbers of which fasteners hold the upper one down. */
export interface Lying {
  readonly upper: Timber;
  readonly lower: Timber;
  /** in, of each along the fasteners */
  readonly wood: number;
  readonly under: number;
}

/** Withdrawal of one, lb, with how much of it holds. @param under in, depth of the lower timber along a screw */
function withdrawalOf(
  fasteners: SizedFasteners,
  below: number,
  above: number,
  wood: number,
  under: number,
): { readonly one: Sourced; readonly perInch: number; readonly held: number; readonly toeNailed: boolean } {
  const { kind, diameter, length } = fasteners;
  if (kind === "screws") {
    const screw = structuralScrew({
      diameter,
      length,
      main: { kind: "wood", G: below, angle: 90 },
      mainThickness: under,
      side: { kind: "wood", G: above, angle: 90, thickness: wood },
    });
    const { length: held, perInch } = screw.withdrawal;
    return { one: screw.W, perInch: perInch.value, held, toeNailed: false };
  }
  // what is past the lower timber holds nothing
  const straight = Math.min(length - wood, under);
  const toeNailed = isToeNailed(wood, fasteners);
  const reach = toeNailed ? toeNailReach(length).reach : straight;
  const { reference, perInch, length: held } = nailWithdrawal(below, diameter, reach);
  return { one: reference, perInch: perInch.value, held, toeNailed };
}

/**
 * Withdrawal from the side grain of the lower timber, NDS 12.2. Screws stand straight through the upper one; a head that
 * pulls through is left out, since the file does not size it.
 * @param duration C_D of the combination
 * @returns undefined without the woods' values
 */
export function upliftHold(
  { upper, lower, wood, under }: Lying,
  fasteners: SizedFasteners,
  duration: Factor,
): UpliftHold | undefined {
  const [above, below] = [woodOf(upper), woodOf(lower)];
  if (!above || !below) return undefined;
  const { one, perInch, held, toeNailed } = withdrawalOf(
    fasteners,
    below.values.G.value,
    above.values.G.value,
    wood,
    under,
  );
  // under its roof the wood dries in the end; green wood lets go of nails as it does
  const moisture: FastenerMoisture = { placed: lower.class?.seasoning ?? "green", service: "dry" };
  const all: Sourced = {
    ...one,
    value: fasteners.count * one.value,
    source: `${fasteners.count} × ${one.source}`,
  };
  return {
    fasteners,
    wood,
    held,
    perInch,
    toeNailed,
    uplift: adjust(all, [
      duration,
      wetWithdrawal(moisture, fasteners.kind === "nails" ? "nail" : "screw"),
      ...(toeNailed ? [toeNail("withdrawal")] : []),
    ]),
  };
}

/** @returns what holds a rafter on its seat; undefined without a seat or without the woods' values */
export function seatHold(joint: Joint, fasteners: SizedFasteners, duration: Factor): UpliftHold | undefined {
  const plumb = plumbThrough(joint);
  if (!plumb) return undefined;
  const lying = { upper: joint.of, lower: joint.into, wood: plumb.rafter, under: plumb.plate };
  return upliftHold(lying, fasteners, duration);
}
