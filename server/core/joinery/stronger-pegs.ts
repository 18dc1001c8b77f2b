/** The least change of a joint's pegs that holds a pull: thicker ones, or more of them. */

import type { Frame } from "../frame/frame.ts";
import type { Factor } from "../sourced.ts";
import type { Joint, PegSizes, TenonSizes } from "./joint.ts";
import { pegTension } from "./peg-tension.ts";

export interface StrongerPegs {
  readonly count: number;
  /** in */
  readonly diameter: number;
}

/** Sizes of the trade: in, and mm. */
const DIAMETERS = [0.75, 0.875, 1, 1.25];
const DIAMETERS_METRIC = [19, 22, 25, 30].map((mm) => mm / 25.4);
const MOST_MORE = 2;

/** The same pegs with others in their place: rows evenly over the tenon's width, as the joint lays them out. */
function laidOut(pegs: PegSizes, { width }: TenonSizes, { count, diameter }: StrongerPegs): PegSizes {
  if (count === pegs.count) return { ...pegs, diameter: { value: diameter, from: "default" } };
  const rows = Math.ceil(count / pegs.setbacks.length);
  const alongWidth = Array.from({ length: rows }, (_, i) => ((i + 0.5) / rows - 0.5) * width.value);
  return { ...pegs, count, diameter: { value: diameter, from: "default" }, alongWidth };
}

/** Wood round the holes as practice asks: two diameters from hole to hole, one to the edge, a peg thinner than the tenon. */
function fits(pegs: PegSizes, { width, length, thickness }: TenonSizes, housing: number): boolean {
  const D = pegs.diameter.value;
  const [first = 0, second] = pegs.alongWidth;
  const edge = width.value / 2 - Math.max(...pegs.alongWidth.map(Math.abs));
  const tip = length.value + housing - Math.max(...pegs.setbacks);
  const spacing = second === undefined ? Number.POSITIVE_INFINITY : second - first;
  return D < thickness.value && edge >= D && tip >= D && spacing >= 2 * D;
}

/**
 * @param force lb, along the tenon
 * @param duration C_D of its combination
 * @returns thicker pegs before more of them; undefined where no pegs that fit the tenon hold it
 */
export function strongerPegs(
  joint: Joint,
  frame: Frame,
  force: number,
  duration: Factor,
): StrongerPegs | undefined {
  const { pegs, tenon, housing } = joint.sizes;
  if (!pegs || !tenon) return undefined;
  const sizes = frame.units === "mm" ? DIAMETERS_METRIC : DIAMETERS;
  const thicker = sizes.filter((D) => D > pegs.diameter.value + 1e-3);
  const tries: StrongerPegs[] = [
    ...thicker.map((diameter) => ({ count: pegs.count, diameter })),
    ...Array.from({ length: MOST_MORE }, (_, i) => pegs.count + 1 + i).flatMap((count) =>
      [pegs.diameter.value, ...thicker].map((diameter) => ({ count, diameter })),
    ),
  ];
  return tries.find((each) => {
    const own = laidOut(pegs, tenon, each);
    if (!fits(own, tenon, housing.value)) return false;
    const found = pegTension({ ...joint, sizes: { ...joint.sizes, pegs: own } }, frame, duration);
    return found !== undefined && found.tension.value >= force;
  });
}
