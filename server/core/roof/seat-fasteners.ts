/** What the screws or nails of a rafter's seat hold against wind that lifts it off its plate. */
import { adjust, type FastenerMoisture, toeNail, wetWithdrawal } from "../fasteners/connection-factors.ts";
import { nailWithdrawal, toeNailReach } from "../fasteners/nail.ts";
import { NAIL_LEAST } from "../fasteners/nail-room.ts";
import { structuralScrew } from "../fasteners/structural-screw.ts";
import type { Joint } from "../joinery/joint.ts";
import { plumbThrough } from "../joinery/seat.ts";
import type { Adjusted } from "../members/adjust.ts";
import type { Factor, Sourced } from "../sourced.ts";
import { woodOf } from "../statics/timber-wood.ts";
import type { SizedFasteners } from "./sized-fasteners.ts";

export interface SeatHold {
  readonly fasteners: SizedFasteners;
  /** in, of the rafter over its plate, plumb through the middle of the seat */
  readonly wood: number;
  /** in, of thread, or of the nail, in the plate */
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

/** Withdrawal of one, lb, with how much of it holds. @param plumb in, depth of the plate along a screw */
function withdrawalOf(
  fasteners: SizedFasteners,
  plate: number,
  rafter: number,
  wood: number,
  plumb: number,
): { readonly one: Sourced; readonly perInch: number; readonly held: number; readonly toeNailed: boolean } {
  const { kind, diameter, length } = fasteners;
  if (kind === "screws") {
    const screw = structuralScrew({
      diameter,
      length,
      main: { kind: "wood", G: plate, angle: 90 },
      mainThickness: plumb,
      side: { kind: "wood", G: rafter, angle: 90, thickness: wood },
    });
    const { length: held, perInch } = screw.withdrawal;
    return { one: screw.W, perInch: perInch.value, held, toeNailed: false };
  }
  const straight = length - wood;
  const toeNailed = isToeNailed(wood, fasteners);
  const reach = toeNailed ? toeNailReach(length).reach : straight;
  const { reference, perInch, length: held } = nailWithdrawal(plate, diameter, reach);
  return { one: reference, perInch: perInch.value, held, toeNailed };
}

/**
 * Withdrawal from the side grain of the plate, NDS 12.2. Screws stand plumb through the rafter; a head that pulls through
 * is left out, since the file does not size it.
 * @param duration C_D of the combination
 * @returns undefined without a seat or without the woods' values
 */
export function seatHold(joint: Joint, fasteners: SizedFasteners, duration: Factor): SeatHold | undefined {
  const plumb = plumbThrough(joint);
  const [rafter, plate] = [woodOf(joint.of), woodOf(joint.into)];
  if (!plumb || !rafter || !plate) return undefined;
  const wood = plumb.rafter;
  const { one, perInch, held, toeNailed } = withdrawalOf(
    fasteners,
    plate.values.G.value,
    rafter.values.G.value,
    wood,
    plumb.plate,
  );
  // under its roof the plate dries in the end; green wood lets go of nails as it does
  const moisture: FastenerMoisture = { placed: joint.into.class?.seasoning ?? "green", service: "dry" };
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
