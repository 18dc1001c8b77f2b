/** Whether the screws at the end of a brace have their distances in both timbers. */
import { SCREW_APART, SCREW_EDGE, SCREW_END } from "../fasteners/screw-room.ts";
import type { Joint } from "./joint.ts";
import { middleOfBearing, placesOfScrews } from "./kinds/screwed-brace.ts";

export interface ScrewDistance {
  readonly what: "spacing" | "brace-edge" | "timber-edge" | "timber-end";
  /** in, between centers or from a center to the edge or end */
  readonly have: number;
  readonly need: number;
}

/**
 * The distances of so many screws, each kind once with its least, in. The screws are square to the face, so that their
 * distance from one another on the face is the distance of their shanks in both woods.
 */
export function screwDistances(joint: Joint, count: number, diameter: number): ScrewDistance[] {
  const { face, of } = joint;
  const set = placesOfScrews(joint, count);
  const own = (joint.sizes.screws?.breadth ?? of.width) / 2;
  // their places are counted from there
  const middle = middleOfBearing(joint);
  const between = set.flatMap((a, i) =>
    set.slice(i + 1).map((b) => Math.hypot(a.at[0] - b.at[0], a.at[1] - b.at[1])),
  );
  const nearest = ([low, high]: readonly [number, number], at: number): number =>
    Math.min(at - low, high - at);
  const found = [
    ["spacing", between, SCREW_APART],
    ["brace-edge", set.map(({ at }) => own - Math.abs(at[1])), SCREW_EDGE],
    ["timber-edge", set.map(({ at }) => nearest(face.edges, at[1])), SCREW_EDGE],
    ["timber-end", set.map(({ at }) => nearest(face.ends, middle + at[0])), SCREW_END],
  ] as const;
  return found.flatMap(([what, all, least]) =>
    all.length === 0 ? [] : [{ what, have: Math.min(...all), need: least * diameter }],
  );
}
