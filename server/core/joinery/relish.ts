/**
 * Wood that keeps a leaning foot from pushing the end of its tie off: the relish between its toe and the tie's end, sheared
 * along the grain. Under a stepped heel one plane at the bottom of the step carries it, as wide as the rafter; before a
 * tenon alone the block in front of it is held by its bottom and both its sides (plane geometry; derived).
 */
import { leanOf } from "./end-breadth.ts";
import type { Joint } from "./joint.ts";

/** Relish counts up to this many times the depth of the step: farther out it is hardly sheared (German practice; memory). */
export const FAR = 8;

export interface Relish {
  /** in, from the toe to the tie's end */
  readonly length: number;
  /** in, as much of it as counts, and the most that could */
  readonly counted: number;
  readonly most: number;
  /** in² sheared for each inch of length */
  readonly breadth: number;
}

/** @returns undefined for a foot that pushes nothing along the grain: square, or no rafter's */
export function relishOf(joint: Joint): Relish | undefined {
  const { of, into, end, face, sizes, kind } = joint;
  const lying = Math.abs(into.axis[2]) < 0.5;
  if (of.kind !== "rafter" || end === "side" || !lying) return undefined;
  const { heel, tenon, housing } = sizes;
  if (kind === "rafter-heel" && heel) {
    return { ...counts(heel.relish, housing.value), breadth: heel.width };
  }
  const lean = leanOf(joint);
  if (kind !== "mortise-and-tenon" || !tenon || lean.rate === 0) return undefined;
  const toe = lean.toe * tenon.center[0] + tenon.width.value / 2;
  const length = (lean.toe > 0 ? face.ends[1] : -face.ends[0]) - toe;
  const deep = Math.min(tenon.length.value, face.thickness - housing.value);
  return { ...counts(length, deep), breadth: tenon.thickness.value + 2 * deep };
}

/** @param deep the step or tenon that pushes, in */
function counts(length: number, deep: number): Omit<Relish, "breadth"> {
  const most = FAR * deep;
  return { length, counted: Math.max(0, Math.min(length, most)), most };
}
