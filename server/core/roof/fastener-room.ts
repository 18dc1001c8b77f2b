/** Whether the screws at a rafter's end have room in its wood, and end inside the timber that they hold in. */
import { mostInRow } from "../fasteners/screw-room.ts";
import type { Joint } from "../joinery/joint.ts";
import { plumbThrough, seatRun } from "../joinery/seat.ts";
import { ridgeWood, woodBefore } from "./head-fasteners.ts";
import type { PurlinCrossing } from "./purlin-crossings.ts";
import type { SizedFasteners } from "./sized-fasteners.ts";

/**
 * The most screws of a diameter, in, that stand in rows at a rafter's end: at a seat, plumb, side by side across the
 * rafter and one behind the other along the seat; at a head, slanting, in one row across the rafter.
 */
export function mostScrews({ of, sizes }: Joint, diameter: number): number {
  const across = mostInRow(of.width, diameter);
  return sizes.seat ? across * mostInRow(seatRun(sizes), diameter) : across;
}

/** The most of them that hold a purlin down: side by side across it, and one behind the other over its carrier's wood. */
export const mostScrewsOver = (
  { upper, run }: Pick<PurlinCrossing, "upper" | "run">,
  diameter: number,
): number => mostInRow(upper.width, diameter) * mostInRow(run, diameter);

/** Wood from under a screw's head to where it comes out of the plate or ridge, along the screw, in: at a head it slants at 45°. */
export function woodThrough(joint: Joint): number {
  const plumb = plumbThrough(joint);
  return plumb ? plumb.rafter + plumb.plate : woodBefore(joint) + ridgeWood(joint).length;
}

/** @returns whether screws stand with their distances and end in the wood */
export const hasRoom = ({ count, diameter, length }: SizedFasteners, joint: Joint): boolean =>
  count <= mostScrews(joint, diameter) && length <= woodThrough(joint);
