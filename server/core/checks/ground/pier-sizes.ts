/** Sizes that piers are made in, from which fixes take the smallest that does. Common practice, no source. */
import type { Pier } from "../../model/model.ts";
import type { Fix } from "../check.ts";
import { replaceFix } from "../replace-fix.ts";
import type { Say } from "../say.ts";

/** No pier of a small frame is dug deeper, inches. */
export const DEEPEST_PIER = 84;
/** Tubes are on sale up to this size, inches. */
export const WIDEST_TUBE = 24;
/** No footing under a post of a small frame is cast wider, inches. */
export const WIDEST_FOOTING = 60;

/** Tubes, footings and depths come in steps of 2 in or 50 mm; inches. */
export const pierStep = (say: Say): number => (say.metric ? 50 / 25.4 : 2);

/**
 * @param from the size that does not do, inches
 * @returns the next size of the series that does; undefined where the series ends first
 */
export function nextSize(
  from: number,
  most: number,
  say: Say,
  does: (size: number) => boolean,
): number | undefined {
  const step = pierStep(say);
  for (let size = step * (Math.floor(from / step + 1e-6) + 1); size <= most + 1e-6; size += step)
    if (does(size)) return size;
  return undefined;
}

/** @param size inches; undefined = none does */
const pierFix = (
  { entry }: Pier,
  key: string,
  size: number | undefined,
  say: Say,
  title: (text: string) => string,
): Fix[] => replaceFix(`${entry.path}/${key}`, size === undefined ? undefined : say.length(size), title);

export const tubeFix = (pier: Pier, tube: number | undefined, say: Say): Fix[] =>
  pierFix(pier, "diameter", tube, say, (text) => say.text("Take a tube of {tube}", { tube: text }));

export const depthFix = (pier: Pier, depth: number | undefined, say: Say): Fix[] =>
  pierFix(pier, "depth", depth, say, (text) => say.text("Make the pier {depth} deep", { depth: text }));

export const padFix = (pier: Pier, side: number | undefined, say: Say): Fix[] =>
  pierFix(pier, "width", side, say, (text) => say.text("Make the pad {side} wide", { side: text }));
