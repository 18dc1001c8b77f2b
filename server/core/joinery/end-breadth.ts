/** How much wood the end of a timber has where it meets the face it enters. */
import { halfExtent } from "../model/box.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Joint } from "./joint.ts";

/**
 * The section at the shoulder, measured along one of the face's axes: a raking timber is cut on the slant, so that its
 * depth counts divided by the sine of its angle to that face (plane trigonometry).
 * @param direction unit vector in the receiving face; @returns inches
 */
export function endBreadth({ of, face }: Joint, direction: Vec3): number {
  const square = 2 * halfExtent(of, direction);
  // the section's own extent along the face is depth × sine; the slanted cut's is depth ÷ sine
  const lean = dot(of.axis, direction);
  const sine2 = 1 - lean * lean;
  return Math.abs(dot(of.axis, face.inward)) < 1e-6 || sine2 < 1e-6 ? square : square / sine2;
}
