/**
 * Shapes of the data tables. Figures are tuples so that the tables read as they are printed.
 */
import type { ValueStatus } from "../../sourced.ts";
import type { DesignValueKey, GradeId } from "../types.ts";
import type { SourceKey } from "./sources.ts";

/** value, status, where the figure was seen */
export type Figure = readonly [value: number, status: ValueStatus, seen?: SourceKey];

/**
 * One line of NDS Supplement Table 4A, 4B or 4D, psi: the status of the row, then of single figures that differ, then
 * where the figures that are not remembered were seen.
 */
export type DesignRow = readonly [
  grade: GradeId,
  Fb: number,
  Ft: number,
  Fv: number,
  FcPerp: number,
  Fc: number,
  E: number,
  Emin: number,
  status: ValueStatus,
  exceptions?: Partial<Record<DesignValueKey, ValueStatus>>,
  seen?: readonly SourceKey[],
];

/** `both` where the table prints one class for all timbers 5x5 and larger */
export interface TimberGroup {
  readonly group: string;
  readonly beams?: readonly DesignRow[];
  readonly posts?: readonly DesignRow[];
  readonly both?: readonly DesignRow[];
}

export interface DimensionGroup {
  readonly group: string;
  readonly rows: readonly DesignRow[];
}

export interface WidthBlock {
  /** nominal width, in, up to which the rows hold */
  readonly nominalWidth: number;
  readonly rows: readonly DesignRow[];
}

export type DecayGroup = "slight-or-none" | "moderately-resistant" | "resistant" | "very-resistant";

export interface SpeciesRow {
  readonly id: string;
  readonly name: string;
  readonly botanical: string;
  /** oven-dry mass over green volume, and over volume at 12 percent moisture */
  readonly gravity: { readonly green: Figure; readonly dry: Figure };
  /** percent of oven-dry weight */
  readonly greenMoisture?: { readonly heartwood?: Figure; readonly sapwood?: Figure };
  /** percent of the green size, green to oven-dry */
  readonly shrinkage: { readonly radial: Figure; readonly tangential: Figure };
  readonly volumetric?: Figure;
  readonly decay: readonly [group: DecayGroup, status: ValueStatus, seen?: SourceKey];
}

export interface GroupRow {
  readonly id: string;
  readonly name: string;
  /** specific gravity assigned by the NDS, oven-dry mass and volume */
  readonly G: Figure;
  /** whose grading rules the values go with */
  readonly agency: string;
}
