/**
 * What each roof covering asks of the roof below it: least slope, closed deck. Residential and building code chapters on
 * roof assemblies; the maker of a covering may ask for more, and his guide is part of the code.
 */
import type { CoveringKind } from "../frame/roof.ts";
import type { Pitch } from "../loads/snow-factors.ts";
import type { Sourced, ValueStatus } from "../sourced.ts";

/** Coverings of the frame file, and two that it does not name. */
export type Covering = CoveringKind | "metal-shingles" | "built-up";

/** What lets a covering lie flatter than it otherwise may. */
export type FlatterWith = "double-underlayment" | "lap-sealant";

export interface CoveringRules {
  /** in of rise per 12 in of run */
  readonly leastSlope: Sourced;
  /** below this slope only with what is named */
  readonly plainFrom?: Sourced & { readonly flatterWith: FlatterWith };
  /** laid on a closed deck of boards or panels, not on spaced purlins */
  readonly closedDeck?: Pick<Sourced, "status" | "source">;
}

const sourced = (value: number, status: ValueStatus, source: string): Sourced => ({ value, status, source });

const METAL = "IRC R905.10.2, IBC 1507.4.2";
const LAPPED: CoveringRules = {
  leastSlope: sourced(0.5, "published", METAL),
  plainFrom: { ...sourced(3, "published", METAL), flatterWith: "lap-sealant" },
};
const closed = (source: string) => ({ status: "memory", source }) as const;

export const COVERINGS: Readonly<Record<Covering, CoveringRules>> = {
  // Summaries of newer editions give 1:12 for structural seams; the code's own text has 1/4:12.
  "standing-seam": { leastSlope: sourced(0.25, "published", METAL) },
  "ribbed-steel": LAPPED,
  "corrugated-steel": LAPPED,
  "metal-shingles": { leastSlope: sourced(3, "published", "IRC R905.4.2") },
  "asphalt-shingles": {
    leastSlope: sourced(2, "published", "IRC R905.2.2"),
    plainFrom: { ...sourced(4, "published", "IRC R905.2.2"), flatterWith: "double-underlayment" },
    closedDeck: closed("IRC R905.2.1"),
  },
  "wood-shingles": { leastSlope: sourced(3, "published", "IRC R905.7.2 and Table R905.7.5") },
  "wood-shakes": { leastSlope: sourced(3, "memory", "IRC R905.8.2") },
  slate: { leastSlope: sourced(4, "memory", "IRC R905.6.2") },
  "clay-tile": {
    leastSlope: sourced(2.5, "published", "IRC R905.3.2"),
    plainFrom: { ...sourced(4, "memory", "IRC R905.3.2"), flatterWith: "double-underlayment" },
  },
  "roll-roofing": {
    leastSlope: sourced(1, "memory", "IRC R905.5.2"),
    closedDeck: closed("IRC R905.5.1"),
  },
  "built-up": { leastSlope: sourced(0.25, "published", "IRC R905.9.1"), closedDeck: closed("IRC R905.9") },
};

const SLIPPERY: ReadonlySet<CoveringKind> = new Set([
  "standing-seam",
  "ribbed-steel",
  "corrugated-steel",
  "slate",
]);

/**
 * Whether snow slides on it: metal and slate, not wood, tile or what is strewn with granules (ASCE 7 section 7.4: granules
 * and shakes are published, metal and slate from memory).
 */
export function isSlippery(covering: CoveringKind): boolean {
  return SLIPPERY.has(covering);
}

/** Compared as pitches, so that 3:12 written as 1:4 is not a hair flatter. @param limit in of rise per 12 in */
export function flatterThan(pitch: Pitch, limit: number): boolean {
  return pitch.rise * 12 < limit * pitch.run * (1 - 1e-9);
}
