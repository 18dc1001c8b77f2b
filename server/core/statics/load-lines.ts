/** What a derivation of loads is told in: sections of lines, and the pressures of each load case. */
import type { Pointer } from "../frame/frame.ts";
import type { AmountUnit, Note } from "../note.ts";
import type { Factor, Sourced } from "../sourced.ts";

/** What a section is about. */
export type LoadPart =
  | "weight"
  | "least-weight"
  | "roof"
  | "siding"
  | "roof-live"
  | "snow"
  | "wind"
  | "floor";

/** One value of a derivation. */
export interface LoadLine extends Sourced {
  /** stable name: the symbol, or what it is: `standing-seam` */
  readonly id: string;
  /** as the standards print it, where they do: `C_e`, `p_f` */
  readonly symbol?: string;
  readonly what: Note;
  readonly unit: AmountUnit;
  /** what stands behind it here */
  readonly note?: Note;
}

/** A pressure on a part of the frame in one load case, psf; from and to in ft, where it does not cover all of it. */
export interface LoadPressure {
  readonly on: Note;
  /** C_N, C_p or none */
  readonly coefficient?: number;
  readonly psf: number;
  readonly from?: number;
  readonly to?: number;
}

export interface LoadPattern {
  readonly id: string;
  /** what the reader reads in place of its id */
  readonly words?: Note;
  readonly pressures: readonly LoadPressure[];
  readonly status: Sourced["status"];
  readonly source: string;
}

export interface LoadSection {
  readonly part: LoadPart;
  /** of a floor its name, of snow its slopes where they differ, of wind how closed the building is */
  readonly name?: string;
  /** what of the file it follows from */
  readonly path: Pointer;
  readonly lines: readonly LoadLine[];
  readonly patterns: readonly LoadPattern[];
}

/** A factor of a standard as a line. */
export function factorLine(factor: Factor, what: Note): LoadLine {
  const { symbol, value, status, source, note } = factor;
  const known = { value, unit: "ratio" as const, status, source };
  return { id: symbol, symbol, what, ...known, ...(note === undefined ? {} : { note }) };
}

/** What the file itself states. */
export function statedLine(symbol: string, what: Note, value: number, unit: AmountUnit): LoadLine {
  return { id: symbol, symbol, what, value, unit, status: "given", source: "stated in the file" };
}

/** What lies in the frame's own shape. */
export function shapeLine(symbol: string, what: Note, value: number, unit: AmountUnit): LoadLine {
  return { id: symbol, symbol, what, value, unit, status: "derived", source: "geometry of the frame" };
}

/** What follows from the lines above it. @param known its status and source */
export function resultLine(
  symbol: string,
  what: Note,
  value: number,
  unit: AmountUnit,
  known: Pick<Sourced, "status" | "source">,
): LoadLine {
  return { id: symbol, symbol, what, value, unit, status: known.status, source: known.source };
}

/** What the combinations take of a load that its standard gives at another level. */
export function shareLine({ value, status, source }: Sourced): LoadLine {
  const what = "share of it that the allowable stress combinations take";
  return { id: "share", what, value, unit: "ratio", status, source };
}
