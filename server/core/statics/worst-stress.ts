/** The kinds of stress that a timber is held against, and what is kept of the worst of one. */
import type { DurationValues } from "./member-values.ts";
import type { NotchedEnd } from "./notched-ends.ts";
import type { Station } from "./station-table.ts";

/** Kinds of stress check, in the order in which equal ones are named. */
export const STRESSES = [
  "bending",
  "shear",
  "notched-shear",
  "tension",
  "compression",
  "tension-and-bending",
  "compression-and-bending",
] as const;
export type Stress = (typeof STRESSES)[number];
/** The worst found so far of one kind. */
export interface Worst {
  readonly ratio: number;
  /** psi, or the ratio itself where several stresses act */
  readonly value: number;
  readonly limit: number;
  readonly mixed: boolean;
  /** index of the case */
  readonly solved: number;
  /** axial position from the foot, in */
  readonly x: number;
  readonly station: Station | undefined;
  readonly values: DurationValues;
  /** joint or support it belongs to, where that is not the station's */
  readonly place: string | undefined;
  /** bending about which axis, in which sense, is the greater part */
  readonly axis: "z" | "y";
  readonly positive: boolean;
  /** lb: N where the grain is pulled or pressed along, else V; and the area it acts on, in² */
  readonly force: number;
  readonly area: number;
  /** bending about z and y, psi, of what is left there */
  readonly sz: number;
  readonly sy: number;
  /** the end that carries its shear on less than its section */
  readonly notch: NotchedEnd | undefined;
}
