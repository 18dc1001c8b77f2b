/** Where the nails of a rafter's seat or head, or of a purlin on what carries it, stand, and how far they reach. */

import { toeNailReach } from "../fasteners/nail.ts";
import { mostNails, NAIL_LEAST, type NailRoom } from "../fasteners/nail-room.ts";
import type { Joint } from "../joinery/joint.ts";
import { plumbThrough, seatRun } from "../joinery/seat.ts";
import type { Timber } from "../model/model.ts";
import type { PurlinCrossing } from "./purlin-crossings.ts";
import { isToeNailed } from "./seat-fasteners.ts";
import type { SizedFasteners } from "./sized-fasteners.ts";

export interface NailPlaces {
  /** driven on the slant from both sides of the rafter, half on each */
  readonly toeNailed: boolean;
  /** their rows run along the grain of the rafter or purlin, else across it */
  readonly alongGrain: boolean;
  /** in, of wood along the rafter's grain at a seat and the purlin's over its carrier, across it at a head, in which each row stands */
  readonly room: number;
  /** in, in the timber that they hold in: what they reach, what they must, and its thickness there */
  readonly reach: number;
  readonly least: number;
  readonly thickness: number;
}

/** @returns places of the nails of one seat or housed head; undefined for screws */
export function nailPlaces(joint: Joint, fasteners: SizedFasteners): NailPlaces | undefined {
  const { kind, diameter, length } = fasteners;
  if (kind !== "nails") return undefined;
  const { of, sizes, face } = joint;
  const plumb = plumbThrough(joint);
  const toeNailed = !plumb || isToeNailed(plumb.rafter, fasteners);
  const cos = Math.sqrt(Math.max(0.001, 1 - of.axis[2] ** 2));
  return {
    toeNailed,
    alongGrain: plumb !== undefined,
    room: plumb ? seatRun(sizes) : of.depth / cos,
    reach: toeNailed ? toeNailReach(length).reach : length - (plumb?.rafter ?? 0),
    least: NAIL_LEAST * diameter,
    thickness: plumb?.plate ?? face.thickness - sizes.housing.value,
  };
}

/** @returns places of the nails of a purlin on what carries it; undefined for screws */
export function purlinNailPlaces(
  { wood, under, run }: PurlinCrossing,
  fasteners: SizedFasteners,
): NailPlaces | undefined {
  const { kind, diameter, length } = fasteners;
  if (kind !== "nails") return undefined;
  const toeNailed = isToeNailed(wood, fasteners);
  return {
    toeNailed,
    alongGrain: true,
    room: run,
    reach: toeNailed ? toeNailReach(length).reach : length - wood,
    least: NAIL_LEAST * diameter,
    thickness: under,
  };
}

/**
 * The most nails that stand there with their distances: toe-nails in a row on each side of the rafter or purlin, along its
 * seat or up its plumb cut; nails from above in rows along and across the rafter.
 */
export function mostNailsAt(
  of: Timber,
  { diameter }: SizedFasteners,
  places: NailPlaces,
  room: NailRoom,
): number {
  const row = mostNails(places.room, places.alongGrain ? room.along : room.across, room.edge, diameter);
  return row * (places.toeNailed ? 2 : mostNails(of.width, room.across, room.edge, diameter));
}
