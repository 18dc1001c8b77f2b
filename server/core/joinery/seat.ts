/** What the seats of rafters on plates have in common, whichever way they are cut. */
import type { JointKindName } from "../frame/frame.ts";
import type { Timber } from "../model/model.ts";
import type { Vec3 } from "../model/vec.ts";
import type { Joint } from "./joint.ts";

/** Whether a kind of joint is the seat of a rafter on what carries it. */
export function isSeatKind(kind: JointKindName): boolean {
  return kind === "birds-mouth" || kind === "step-lap";
}

/** Level direction in which a rafter rises, and its slope in radians. */
export function rise(of: Timber): { readonly uphill: Vec3; readonly angle: number } {
  const flat = Math.hypot(of.axis[0], of.axis[1]);
  const sign = of.axis[2] >= 0 ? 1 : -1;
  return {
    uphill: flat > 1e-9 ? [(sign * of.axis[0]) / flat, (sign * of.axis[1]) / flat, 0] : [0, 1, 0],
    angle: Math.asin(Math.min(1, Math.abs(of.axis[2]))),
  };
}

/** Level run over which the rafter stands on its plate with what is fastened there, in: the seat, or the housing of a step. */
export function seatRun({ seat, step }: Joint["sizes"]): number {
  return step ? step.housed : (seat?.level.value ?? 0);
}

/**
 * A screw that stands plumb through the middle of that run: what it passes of the rafter, and of the plate below, in.
 * Plane geometry: the rafter's upper edge lies d / cos θ above its underside; over a bird's mouth the level seat, over a
 * step the deeper of the underside and the sole carries it.
 * @returns undefined where there is no seat
 */
export function plumbThrough({
  of,
  face,
  sizes,
}: Joint): { readonly rafter: number; readonly plate: number } | undefined {
  const { seat, step, housing } = sizes;
  if (!seat) return undefined;
  if (!step) return { rafter: seat.heightAbovePlate + seat.plumb / 2, plate: face.thickness };
  const angle = (seat.angle * Math.PI) / 180;
  const below = Math.min((step.housed / 2) * Math.tan(angle), housing.value);
  const above = of.depth / Math.cos(angle) - (step.housed / 2) * Math.tan(angle);
  return { rafter: above + below, plate: face.thickness - below };
}
