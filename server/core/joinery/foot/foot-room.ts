/** Whether the bolts of an anchor have their distances in the post's foot. */
import { type BoltDistance, type BoltPlaces, boltDistances } from "../../fasteners/placement.ts";
import type { FootRow, PostFoot } from "./post-foot.ts";

/**
 * Their places as NDS 12.5.1 asks for them. All woods count as softwood, which asks for more to the end.
 * @param load along the grain for uplift, across it for a push in the plane of the straps
 */
export function boltWood(foot: PostFoot, row: FootRow, load: "along-tension" | "across"): BoltPlaces {
  const { diameter, up, spacing, count, kind, length } = row;
  const inWood = kind === "bolts" ? foot.through : (length ?? 0);
  const edge = foot.breadth / 2;
  return {
    diameter,
    load,
    wood: "softwood",
    slenderness: inWood / diameter,
    end: up.value,
    edge,
    ...(load === "across" ? { unloadedEdge: edge } : {}),
    ...(count > 1 ? (load === "across" ? { rowSpacing: spacing.value } : { spacing: spacing.value }) : {}),
  };
}

/** @returns end, spacing and edge distance for uplift; undefined without bolts or screws of a known size */
export function footDistances(foot: PostFoot): readonly BoltDistance[] | undefined {
  return foot.row && boltDistances(boltWood(foot, foot.row, "along-tension")).distances;
}
