/** The load combinations of a frame: each combination of the standard with every case of the loads it names. */
import {
  asdCombinations,
  type Combination,
  type LoadKind,
  ROOF_LOADS,
  withOnly,
} from "../loads/combinations.ts";
import type { Edition } from "../loads/snow-factors.ts";
import { type BasicLoad, isBalancedSnow, isLeastDead } from "./basic-loads.ts";

export interface FrameCase {
  /** `6-S:S/balanced:W/+y/A` */
  readonly id: string;
  readonly combination: Combination;
  readonly parts: readonly { readonly load: BasicLoad; readonly factor: number }[];
  /** all loads act straight down */
  readonly vertical: boolean;
}

/** All ways to take one basic load of each kind; floors act together, all over or one of them in a pattern. */
function choices(kinds: readonly LoadKind[], loads: readonly BasicLoad[]): readonly (readonly BasicLoad[])[] {
  return kinds.reduce<readonly (readonly BasicLoad[])[]>(
    (sets, kind) => {
      const own = loads.filter((l) => l.kind === kind);
      const whole = own.filter((l) => !l.partial);
      if (kind !== "L" && kind !== "D") return sets.flatMap((set) => own.map((l) => [...set, l]));
      const patterns = own.flatMap(({ partial }, i) =>
        partial ? [[...whole.filter((l) => l.id !== partial.of), ...own.slice(i, i + 1)]] : [],
      );
      return [whole, ...patterns].flatMap((floors) => sets.map((set) => [...set, ...floors]));
    },
    [[]],
  );
}

/**
 * Partial loads act where nothing else is at its worst by chance: one at a time, not with wind, a floor's not with
 * unbalanced snow.
 */
function meant(set: readonly BasicLoad[]): boolean {
  const partial = set.filter((l) => l.partial);
  if (partial.length === 0) return true;
  if (partial.length > 1 || set.some((l) => l.kind === "W")) return false;
  return partial[0]?.kind !== "L" || set.every((l) => l.kind !== "S" || isBalancedSnow(l));
}

/** 0.6 D + 0.6 W: what weighs holds the frame down, and only the least of it surely does. */
const HOLDS_DOWN = 7;

/** The loads that a combination chooses from: of the dead loads the one that it means. */
function loadsFor({ number }: Combination, loads: readonly BasicLoad[]): readonly BasicLoad[] {
  const least = number === HOLDS_DOWN && loads.some(isLeastDead);
  return loads.filter((l) => l.kind !== "D" || isLeastDead(l) === least);
}

/** Combinations that say nothing new: a floor load where there is no floor, three quarters of a roof load alone. */
function says(c: Combination, present: ReadonlySet<LoadKind>): boolean {
  const kinds = Object.keys(c.factors) as LoadKind[];
  const optional = kinds.filter((k) => k !== "L");
  if (!optional.every((k) => present.has(k))) return false;
  // without what it adds to dead load and wind, 6 is less than 5
  if (c.number === 6 && kinds.every((k) => k === "D" || k === "W" || !present.has(k))) return false;
  return present.has("L") || (c.number !== 2 && c.number !== 4);
}

/**
 * @param edition of ASCE 7; undefined = only what needs no edition: dead load and floors
 * @returns every combination with every choice of snow, roof live and wind case
 */
export function frameCases(edition: Edition | undefined, loads: readonly BasicLoad[]): FrameCase[] {
  const present = new Set(loads.map((l) => l.kind));
  const roofed = ROOF_LOADS.some((kind) => present.has(kind));
  const table = asdCombinations(edition ?? "asce-7-16", roofed).filter(
    (c) => edition !== undefined || c.number <= 2,
  );
  return table
    .filter((c) => says(c, present))
    .flatMap((combination) => {
      const kinds = (Object.keys(combination.factors) as LoadKind[]).filter((k) => present.has(k));
      const named = withOnly(combination, present);
      const tells = (l: BasicLoad): boolean => l.kind !== "D" && (l.kind !== "L" || l.partial !== undefined);
      const sets = choices(kinds, loadsFor(combination, loads)).filter(meant);
      return sets.map((set) => ({
        id: [combination.id, ...set.filter(tells).map((l) => l.id)].join(":"),
        combination: named,
        parts: set.map((load) => ({ load, factor: combination.factors[load.kind] ?? 0 })),
        vertical: set.every((l) => l.vertical),
      }));
    });
}
