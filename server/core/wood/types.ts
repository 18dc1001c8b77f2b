/**
 * Words of the wood tables: the design values, the grades and the size classes.
 */
import type { Sourced } from "../sourced.ts";

/** Reference design values: psi, `G` without unit. */
export type DesignValueKey = "Fb" | "Ft" | "Fv" | "Fc-perp" | "Fc" | "E" | "E-min" | "G";

export type DesignValues = Readonly<Record<DesignValueKey, Sourced>>;

export type GradeId =
  | "clear-structural"
  | "dense-select-structural"
  | "select-structural"
  | "select-structural-open-grain"
  | "dense-no-1"
  | "no-1-and-better"
  | "no-1"
  | "no-1-open-grain"
  | "dense-no-2"
  | "no-2"
  | "no-2-open-grain"
  | "no-3";

/** The class of the grading rules that a section belongs to by its dimensions, whatever it is used for. */
export type SizeClass = "dimension-lumber" | "beams-and-stringers" | "posts-and-timbers";
