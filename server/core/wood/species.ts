/**
 * Names of woods. A timber class may name a design value group (`eastern-hemlock-tamarack`) or a botanical species
 * (`white-oak`); many names are both.
 */
import { DESIGN_GROUP, GROUP_MEMBERS, GROUPS } from "./data/groups.ts";
import { HARDWOODS } from "./data/hardwoods.ts";
import { SOFTWOODS } from "./data/softwoods.ts";
import { TABLE_4A } from "./data/table-4a.ts";
import { TABLE_4D } from "./data/table-4d.ts";
import type { GroupRow, SpeciesRow } from "./data/table-types.ts";

export interface Wood {
  readonly id: string;
  /** as the trade writes it: `Eastern White Pine` */
  readonly name: string;
  readonly botanical: string | undefined;
  /** group whose design values count for timbers 5 in and thicker; undefined = none recorded */
  readonly timberGroup: string | undefined;
  /** group whose design values count for dimension lumber; undefined = none recorded */
  readonly dimensionGroup: string | undefined;
  /** rows of the species tables it stands for: itself, or the species of the group */
  readonly species: readonly SpeciesRow[];
  /** the group of its own name, with its assigned specific gravity */
  readonly group: GroupRow | undefined;
}

const SPECIES = new Map([...SOFTWOODS, ...HARDWOODS].map((row) => [row.id, row]));
const GROUP = new Map(GROUPS.map((row) => [row.id, row]));
const TIMBERS = new Set(TABLE_4D.map((g) => g.group));
const DIMENSION = new Set([...TABLE_4A.map((g) => g.group), "southern-pine"]);

/** @returns every name a timber class may use, sorted */
export function speciesIds(): readonly string[] {
  return [...new Set([...GROUP.keys(), ...SPECIES.keys()])].sort();
}

/** @param id kebab-case name of a species or a group; @returns undefined when there is no such name */
export function findSpecies(id: string): Wood | undefined {
  const row = SPECIES.get(id);
  const group = GROUP.get(id);
  if (row === undefined && group === undefined) return undefined;
  const mapped = Object.hasOwn(DESIGN_GROUP, id) ? DESIGN_GROUP[id] : undefined;
  const members = Object.hasOwn(GROUP_MEMBERS, id) ? (GROUP_MEMBERS[id] ?? []) : [];
  return {
    id,
    name: group?.name ?? row?.name ?? id,
    botanical: row?.botanical,
    timberGroup: mapped?.timbers ?? (TIMBERS.has(id) ? id : undefined),
    dimensionGroup: mapped?.dimension ?? (DIMENSION.has(id) ? id : undefined),
    species: row !== undefined ? [row] : members.flatMap((member) => SPECIES.get(member) ?? []),
    group,
  };
}

/** @returns the group of that id, with its assigned specific gravity */
export function findGroup(id: string): GroupRow | undefined {
  return GROUP.get(id);
}
