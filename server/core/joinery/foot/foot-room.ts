/** Whether the bolts of an anchor have their distances in the post's foot. */
import { type BoltDistance, type BoltPlaces, boltDistances } from "../../fasteners/placement.ts";
import { type FootRow, type PostFoot, screwRoom, woodLeft } from "./post-foot.ts";

/**
 * Their places as NDS 12.5.1 asks for them. All woods count as softwood, which asks for more to the end.
 * @param load along the grain for uplift and for a post that its bolts carry, across it for a push in the plane of the straps
 */
export function boltWood(foot: PostFoot, row: FootRow, load: BoltPlaces["load"]): BoltPlaces {
  const { diameter, up, spacing, count, kind, length } = row;
  const inWood =
    kind === "bolts"
      ? woodLeft(foot)
      : Math.max(0, Math.min(screwRoom(foot), (length ?? 0) - (foot.strap?.thickness ?? 0)));
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

/** Where a push across the grain asks for the same wood under another name. */
const SAME: Readonly<Record<string, string>> = { "row spacing": "spacing", "unloaded edge": "edge" };

/**
 * @returns end, spacing and edge distance, each as the way asks that asks for more: uplift, and a push square to the bolts
 * where the file does not state what is held sideways; undefined without bolts or screws of a known size
 */
export function footDistances(foot: PostFoot): readonly BoltDistance[] | undefined {
  const { row, anchor } = foot;
  if (!row) return undefined;
  const stated = anchor.capacity === "unread" ? undefined : anchor.capacity?.sideways;
  const ways: BoltPlaces["load"][] = ["along-tension", ...(stated === undefined ? ["across" as const] : [])];
  const all = ways.flatMap((load) => boltDistances(boltWood(foot, row, load)).distances);
  const most = new Map<string, BoltDistance>();
  for (const one of all) {
    const what = SAME[one.what] ?? one.what;
    const before = most.get(what);
    most.set(what, {
      ...(before && before.need > one.need ? before : one),
      what,
      full: Math.max(one.full, before?.full ?? 0),
    });
  }
  return [...most.values()];
}
