/**
 * For which meetings of two timbers a joint can be cut: rules that several kinds share. They are the trade's (common
 * practice, no source for any of the angles), and ask for no more than that the cuts are those the kind is known by.
 */
import { halfExtent } from "../model/box.ts";
import type { Timber } from "../model/model.ts";
import { isUpright } from "../model/upright.ts";
import { dot } from "../model/vec.ts";
import type { Meet, Unfit, UnfitWhy } from "./joint.ts";

/** Least angle at which an end enters a side, and two lengths of one timber stand at less to each other, degrees. */
const ALONG = 10;
/** How far from square a joint that is cut square may stand, degrees: no raking post leans as much. */
const OFF_SQUARE = 25;
/** What slopes less lies level, degrees; what slopes as much less than plumb stands. */
const LEVEL = 5;

const degrees = (sine: number): number => (Math.asin(Math.min(1, Math.abs(sine))) * 180) / Math.PI;

/** Degrees between the grains of two timbers: 0 in line, 90 square. */
function between({ of, into }: Meet): number {
  return 90 - degrees(dot(of.axis, into.axis));
}

/** Degrees of a timber's grain over the level. */
function slopeOf({ axis }: Timber): number {
  return degrees(axis[2]);
}

const unless = (holds: boolean, why: UnfitWhy, angle?: number): Unfit | undefined =>
  holds ? undefined : { why, ...(angle === undefined ? {} : { angle }) };

/** An end goes into a side: tenons, housings, laps. */
export function endInSide(meet: Meet): Unfit | undefined {
  const angle = between(meet);
  return unless(angle >= ALONG, "in-line", angle);
}

/** As `endInSide`, and near square to it. */
export function squareInSide(meet: Meet): Unfit | undefined {
  const angle = between(meet);
  return endInSide(meet) ?? unless(angle >= 90 - OFF_SQUARE, "not-square", angle);
}

/** An end let down into a side that is open on top. */
export function droppedIn(meet: Meet): Unfit | undefined {
  return (
    unless(!isUpright(meet.into), "into-upright") ??
    unless(!isUpright(meet.of), "of-upright") ??
    endInSide(meet)
  );
}

/** Whether a timber lies level, told of the one that does not. */
function lies(timber: Timber, why: UnfitWhy): Unfit | undefined {
  const slope = slopeOf(timber);
  return unless(slope <= LEVEL, why, slope);
}

/** As `droppedIn`, by a timber that lies level and square to the other. */
export function levelDroppedIn(meet: Meet): Unfit | undefined {
  return droppedIn(meet) ?? lies(meet.of, "of-not-level") ?? squareInSide(meet);
}

/** Both timbers end here. */
export function endsMeet({ end, intoEnd }: Meet): Unfit | undefined {
  return unless(end !== "side" && intoEnd !== "side", "one-end");
}

/** Two lengths in one line. */
export function inLine(meet: Meet): Unfit | undefined {
  const angle = between(meet);
  return endsMeet(meet) ?? unless(angle <= ALONG, "not-in-line", angle);
}

/** Two level timbers at one height, each cut away by its half. */
export function halvedLevel(meet: Meet): Unfit | undefined {
  const { of, into } = meet;
  const apart = Math.abs(of.origin[2] - into.origin[2]);
  const reach = halfExtent(of, [0, 0, 1]) + halfExtent(into, [0, 0, 1]);
  return (
    lies(of, "of-not-level") ??
    lies(into, "into-not-level") ??
    endInSide(meet) ??
    unless(apart < reach, "no-common-height")
  );
}

/** A sloping timber on a level one that it crosses. */
export function seatedOn(meet: Meet): Unfit | undefined {
  const { of, into } = meet;
  const slope = slopeOf(of);
  return (
    unless(!isUpright(of) && slope < 90 - LEVEL && Math.abs(of.axis[2]) > 1e-6, "of-not-sloping", slope) ??
    lies(into, "into-not-level") ??
    unless(Math.abs(dot(of.axis, into.axis)) <= 0.5, "alongside")
  );
}

/** The lower end of a sloping timber in a level one under it, in one plumb plane. */
export function footOnTie(meet: Meet): Unfit | undefined {
  const { of, end, into } = meet;
  const slope = slopeOf(of);
  const lower = of.axis[2] >= 0 ? "foot" : "head";
  return (
    unless(!isUpright(of) && slope > LEVEL && slope < 90 - LEVEL, "of-not-sloping", slope) ??
    lies(into, "into-not-level") ??
    unless(end === lower, "upper-end") ??
    unless(Math.abs(dot(of.axis, into.axis)) > 0.9 * Math.cos(Math.asin(of.axis[2])), "across") ??
    endInSide(meet)
  );
}

/** Two sloping timbers that rise toward each other and meet at their upper ends. */
export function peak(meet: Meet): Unfit | undefined {
  const { of, into } = meet;
  const toward = of.axis[0] * into.axis[0] + of.axis[1] * into.axis[1];
  const rise = Math.sign(of.axis[2]) * Math.sign(into.axis[2]);
  const sloping = [of, into].every((t) => !isUpright(t) && slopeOf(t) > LEVEL && slopeOf(t) < 90 - LEVEL);
  const upper = (t: Timber, end: Meet["end"]): boolean => (t.axis[2] >= 0 ? "head" : "foot") === end;
  return (
    endsMeet(meet) ??
    unless(sloping && toward * rise < 0 && upper(of, meet.end) && upper(into, meet.intoEnd), "no-peak")
  );
}

/** The slant of a brace: what is no brace may not stand square. @param bracing the joined timber is a brace or a strut */
export function aslant(meet: Meet, bracing: boolean): Unfit | undefined {
  return endInSide(meet) ?? unless(bracing || between(meet) <= 90 - ALONG, "square");
}

/**
 * A through tenon that a wedge presses against the end of its mortise: its depth lies along the grain of the timber it
 * goes through, and what stands hangs by its foot.
 */
export function wedgedThrough(meet: Meet): Unfit | undefined {
  const { of, end, into } = meet;
  return (
    squareInSide(meet) ??
    unless(!(isUpright(of) && (of.axis[2] >= 0 ? "head" : "foot") === end), "under") ??
    unless(Math.abs(dot(of.depthDir, into.axis)) > Math.SQRT1_2, "depth-across")
  );
}
