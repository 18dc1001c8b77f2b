/** Which frames are not judged without wind. */
import type { Model } from "../model/model.ts";
import { topOf } from "./wall-faces.ts";

/**
 * A frame without roof and siding asks for wind from here on, inches above the ground: a gate or an arch that one walks
 * through stays below (common practice; the standard has no such limit). Where the file gives wind, it acts on lower
 * frames too.
 */
const NEEDS_WIND = 96;

/** Inches from the lowest ground under a frame to its top. */
function heightAboveGround(model: Model): number {
  const grounds = model.piers.map((pier) => pier.groundLow);
  const base = grounds.length > 0 ? Math.min(...grounds) : 0;
  return Math.max(0, ...model.timbers.map((t) => topOf(t) - base));
}

/** Whether silence about wind would be no pass. */
export function needsWind(model: Model): boolean {
  const { roof, siding } = model.frame;
  return roof !== undefined || siding.length > 0 || heightAboveGround(model) > NEEDS_WIND + 1e-6;
}
