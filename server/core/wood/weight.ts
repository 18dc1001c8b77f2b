/**
 * Weight, shrinkage and decay of a wood, from the species tables.
 */
import { leastCertain, type Sourced } from "../sourced.ts";
import { GREEN_WEIGHT } from "./data/green-weight.ts";
import { type SourceKey, sourceText } from "./data/sources.ts";
import type { DecayGroup, Figure, SpeciesRow } from "./data/table-types.ts";
import { density, densityFromAssignedGravity } from "./moisture.ts";
import { findSpecies } from "./species.ts";

export interface Weight extends Sourced {
  /** percent moisture it holds at; undefined where a list gives the weight alone */
  readonly moisture: number | undefined;
  /** the species that governs, where the name is a group */
  readonly of: string;
}

/** percent; the moisture that the list of weights for assigned gravities is printed at */
const LISTED_MOISTURE = 15;

/**
 * Weight of timber. Green: 62.4 G (1 + M/100) with the moisture of the heartwood, because a large timber is mostly
 * heartwood (sapwood of the same tree weighs up to twice as much); where the Wood Handbook lists no moisture, an older
 * printed weight from memory. Dry: at 12 percent for a species, at 15 percent and the assigned gravity for a group.
 * Of the species of a group the heaviest counts.
 * @returns lb/ft³, or undefined when the wood is unknown or nothing is recorded
 */
export function weight(species: string, seasoning: "green" | "dry"): Weight | undefined {
  const wood = findSpecies(species);
  if (wood === undefined) return undefined;
  if (seasoning === "green") {
    const own = listedGreen(wood.id, wood.name);
    if (own) return own;
    return heaviest(wood.species.flatMap((row) => greenWeight(row) ?? []));
  }
  const [only] = wood.species;
  if (only && only.id === wood.id) return dryWeight(only);
  return dryGroupWeight(wood.group) ?? heaviest(wood.species.map(dryWeight));
}

/**
 * What the wood weighs at least once it has dried: all that may hold a frame down against the wind for good. Of the species
 * of a group, and the group's own assigned gravity, the lightest counts.
 * @returns lb/ft³ at 12 percent moisture, or 15 for a group's own, or undefined when the wood is unknown
 */
export function leastWeight(species: string): Weight | undefined {
  const wood = findSpecies(species);
  if (wood === undefined) return undefined;
  const group = dryGroupWeight(wood.group);
  return outermost([...wood.species.map(dryWeight), ...(group ? [group] : [])], (a, b) => a < b);
}

export interface Shrinkage {
  /** percent of the green size, green to oven-dry */
  readonly radial: Sourced;
  readonly tangential: Sourced;
  /** the species that governs, where the name is a group */
  readonly of: string;
}

/** @returns the shrinkage of a species; of a group, of its member that moves most tangentially */
export function shrinkage(species: string): Shrinkage | undefined {
  const rows = findSpecies(species)?.species ?? [];
  const row = rows.reduce<SpeciesRow | undefined>(
    (most, r) => (most === undefined || r.shrinkage.tangential[0] > most.shrinkage.tangential[0] ? r : most),
    undefined,
  );
  if (row === undefined) return undefined;
  return {
    radial: sourced(row.shrinkage.radial),
    tangential: sourced(row.shrinkage.tangential),
    of: row.name,
  };
}

/** @returns resistance of average heartwood to decay, worst of a group; sapwood of every species has none */
export function decayResistance(
  species: string,
): { readonly group: DecayGroup; readonly status: Sourced["status"]; readonly source: string } | undefined {
  const order: readonly DecayGroup[] = [
    "slight-or-none",
    "moderately-resistant",
    "resistant",
    "very-resistant",
  ];
  const rows = findSpecies(species)?.species ?? [];
  const worst = [...rows].sort((a, b) => order.indexOf(a.decay[0]) - order.indexOf(b.decay[0]))[0];
  if (worst === undefined) return undefined;
  return { group: worst.decay[0], status: worst.decay[1], source: seenText(worst.decay[2]) };
}

/** @returns in words where the figures of a species were seen, each once */
export function sourcesOf(species: string): readonly string[] {
  const rows = findSpecies(species)?.species ?? [];
  const keys = rows.flatMap((row) => [
    row.gravity.green[2],
    row.gravity.dry[2],
    row.greenMoisture?.heartwood?.[2],
    row.shrinkage.radial[2],
    row.shrinkage.tangential[2],
    row.volumetric?.[2],
    row.decay[2],
  ]);
  const assigned = findSpecies(species)?.group?.G[2];
  return [...new Set([...keys, assigned].filter((key) => key !== undefined))].map(sourceText);
}

function greenWeight(row: SpeciesRow): Weight | undefined {
  const moisture = row.greenMoisture?.heartwood;
  if (moisture === undefined) return listedGreen(row.id, row.name);
  const status = leastCertain(["derived", row.gravity.green[1], moisture[1]]);
  return {
    value: density(row.gravity.green[0], moisture[0]),
    status,
    source: `62.4 G (1 + M), G and heartwood moisture M of the Wood Handbook (${seenText(moisture[2])})`,
    moisture: moisture[0],
    of: row.name,
  };
}

function listedGreen(id: string, name: string): Weight | undefined {
  const listed = Object.hasOwn(GREEN_WEIGHT, id) ? GREEN_WEIGHT[id] : undefined;
  if (listed === undefined) return undefined;
  const source = "older lists of the Forest Products Laboratory (the Wood Handbook gives no green moisture)";
  return { value: listed[0], status: listed[1], source, moisture: undefined, of: name };
}

function dryWeight(row: SpeciesRow): Weight {
  return {
    value: density(row.gravity.dry[0], 12),
    status: leastCertain(["derived", row.gravity.dry[1]]),
    source: `62.4 G (1 + M) at 12 percent, G of the Wood Handbook (${seenText(row.gravity.dry[2])})`,
    moisture: 12,
    of: row.name,
  };
}

function dryGroupWeight(
  group: { readonly name: string; readonly G: Figure } | undefined,
): Weight | undefined {
  if (group === undefined) return undefined;
  return {
    value: densityFromAssignedGravity(group.G[0], LISTED_MOISTURE),
    status: leastCertain(["derived", group.G[1]]),
    source: `NDS Supplement 3.1.3 at 15 percent, assigned G (${seenText(group.G[2])})`,
    moisture: LISTED_MOISTURE,
    of: group.name,
  };
}

function heaviest(weights: readonly Weight[]): Weight | undefined {
  return outermost(weights, (a, b) => a > b);
}

function outermost(
  weights: readonly Weight[],
  beyond: (a: number, b: number) => boolean,
): Weight | undefined {
  return weights.reduce<Weight | undefined>(
    (most, w) => (most === undefined || beyond(w.value, most.value) ? w : most),
    undefined,
  );
}

function sourced([value, status, seen]: Figure): Sourced {
  return { value, status, source: seenText(seen) };
}

function seenText(seen: SourceKey | undefined): string {
  return seen === undefined ? "USDA Wood Handbook, remembered" : sourceText(seen);
}
