/** The least change of a joint's pegs that holds a pull: thicker ones, or more of them. */

import type { Frame } from "../frame/frame.ts";
import type { Factor } from "../sourced.ts";
import type { Joint } from "./joint.ts";
import type { PairSizes, PegSizes, TenonSizes } from "./joint-sizes.ts";
import { lapPegs } from "./lap-tension.ts";
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

/** Length over which the pegs of a joint stand evenly: its tenon's or lap's width, the plumb height of a rafter pair. */
function lineOf(joint: Joint): number | undefined {
  const { tenon, pair } = joint.sizes;
  return pair?.plumb ?? tenon?.width.value ?? lapPegs(joint)?.width;
}

/** The same pegs with others in their place: rows evenly over that length, as the joint lays them out. */
function laidOut(pegs: PegSizes, line: number, { count, diameter }: StrongerPegs): PegSizes {
  if (count === pegs.count) return { ...pegs, diameter: { value: diameter, from: "default" } };
  const rows = Math.ceil(count / pegs.setbacks.length);
  const middle = pegs.alongWidth.reduce((sum, a) => sum + a, 0) / Math.max(1, pegs.alongWidth.length);
  const alongWidth = Array.from({ length: rows }, (_, i) => middle + ((i + 0.5) / rows - 0.5) * line);
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

/** The same of a rafter pair, whose pegs stand one above the other: edges square to the grain, plumb distances leaned. */
function fitsPair({ diameter, alongWidth }: PegSizes, { plumb, slopes, tongue }: PairSizes): boolean {
  const lean = Math.cos(Math.max(...slopes));
  const apart = plumb / alongWidth.length;
  return (
    diameter.value < tongue && (apart / 2) * lean >= diameter.value && apart * lean >= 2 * diameter.value
  );
}

/** The same of a lap, whose pegs pass through both halves; in a blade they stand one above the other. */
function fitsLap(joint: Joint): boolean {
  const [lap, D] = [lapPegs(joint), joint.sizes.pegs?.diameter.value];
  if (!lap || D === undefined) return false;
  const inBlade = lap.planes === 2;
  const lines = Math.ceil(lap.alongWidth.length / (inBlade ? 2 : 1));
  const apart = (inBlade ? lap.width / 2 : lap.width) / Math.max(1, lines);
  const tip = lap.length - Math.max(...lap.setbacks);
  return (!inBlade || D < lap.thickness) && apart / 2 >= D && apart >= 2 * D && tip >= D;
}

function roomFor(joint: Joint): boolean {
  const { pegs, tenon, pair, housing } = joint.sizes;
  if (!pegs) return false;
  if (pair) return fitsPair(pegs, pair);
  return tenon ? fits(pegs, tenon, housing.value) : fitsLap(joint);
}

/**
 * @param force lb, along the tenon
 * @param duration C_D of its combination
 * @returns thicker pegs before more of them; undefined where no pegs that fit the joint hold it
 */
export function strongerPegs(
  joint: Joint,
  frame: Frame,
  force: number,
  duration: Factor,
): StrongerPegs | undefined {
  const { pegs } = joint.sizes;
  const line = lineOf(joint);
  if (!pegs || line === undefined) return undefined;
  const sizes = frame.units === "mm" ? DIAMETERS_METRIC : DIAMETERS;
  const thicker = sizes.filter((D) => D > pegs.diameter.value + 1e-3);
  const tries: StrongerPegs[] = [
    ...thicker.map((diameter) => ({ count: pegs.count, diameter })),
    ...Array.from({ length: MOST_MORE }, (_, i) => pegs.count + 1 + i).flatMap((count) =>
      [pegs.diameter.value, ...thicker].map((diameter) => ({ count, diameter })),
    ),
  ];
  return tries.find((each) => {
    const other = { ...joint, sizes: { ...joint.sizes, pegs: laidOut(pegs, line, each) } };
    if (!roomFor(other)) return false;
    const found = pegTension(other, frame, duration);
    return found !== undefined && found.tension.value >= force;
  });
}
