/** Whether the screws at the end of a brace have their distances in both timbers. */
import { SCREW_APART, SCREW_EDGE, SCREW_END } from "../fasteners/screw-room.ts";
import type { Joint } from "./joint.ts";
import { middleOfBearing, placesOfScrews } from "./kinds/screwed-brace.ts";

export interface ScrewDistance {
  readonly what: "spacing" | "brace-edge" | "brace-end" | "timber-edge" | "timber-end";
  /** in, between centers or from a center to the edge or end */
  readonly have: number;
  readonly need: number;
}

/**
 * The distances of so many screws, each kind once with its least, in. The screws are square to the face, so that their
 * distance from one another on the face is the distance of their shanks in both woods. The brace's end is its slanting cut:
 * along the grain it lies `wood ÷ (2 sin α)` from the middle of the wood that a screw passes, and square to the grain the
 * short edge is nearest at the cut (plane geometry; that the middle counts is common practice, no source).
 */
export function screwDistances(joint: Joint, count: number, diameter: number): ScrewDistance[] {
  const { face, of } = joint;
  const set = placesOfScrews(joint, count);
  const own = (joint.sizes.screws?.breadth ?? of.width) / 2;
  const slant = Math.sin(((joint.sizes.screws?.angle ?? 90) * Math.PI) / 180);
  // their places are counted from there
  const middle = middleOfBearing(joint);
  const between = set.flatMap((a, i) =>
    set.slice(i + 1).map((b) => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])),
  );
  const nearest = ([low, high]: readonly [number, number], at: number): number =>
    Math.min(at - low, high - at);
  const found = [
    ["spacing", between, SCREW_APART],
    ["brace-edge", set.map(({ at, toHeel }) => Math.min(own - Math.abs(at[1]), toHeel * slant)), SCREW_EDGE],
    ["brace-end", set.map(({ wood }) => wood / (2 * Math.max(1e-3, slant))), SCREW_END],
    ["timber-edge", set.map(({ at }) => nearest(face.edges, at[1])), SCREW_EDGE],
    ["timber-end", set.map(({ at }) => nearest(face.ends, middle + at[0])), SCREW_END],
  ] as const;
  return found.flatMap(([what, all, least]) =>
    all.length === 0 ? [] : [{ what, have: Math.min(...all), need: least * diameter }],
  );
}
