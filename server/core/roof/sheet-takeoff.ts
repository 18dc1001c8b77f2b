/**
 * Area of a roof, the sheets that cover it and the screws that hold them. Lengths in in unless a name says ft.
 */
import type { Pitch } from "../loads/snow-factors.ts";
import type { Sourced } from "../sourced.ts";

export interface SheetCount {
  readonly sheets: number;
  /** what the sheets cover beyond the edge */
  readonly over: number;
  /** what is left of the last one: all of it when nothing is cut */
  readonly last: number;
}

/** Slack within which an edge still takes whole sheets, in. */
const HAIR = 1 / 16;

/**
 * Sheets side by side along an edge, the last one cut to what is left.
 * @param edge above 0; @param cover what one sheet covers after its lap, above 0
 */
export function sheetsAlong(edge: number, cover: number): SheetCount {
  const sheets = Math.max(1, Math.ceil((edge - HAIR) / cover));
  const over = Math.max(0, sheets * cover - edge);
  return { sheets, over, last: cover - over };
}

/**
 * Rows of purlins or screws up a slope: one at the eave, one at every step, and one at the ridge where the last step is
 * short.
 */
export function screwRows(slopeLength: number, spacing: number): number {
  const steps = Math.floor(slopeLength / spacing + 1e-9);
  return steps + 1 + (slopeLength - steps * spacing > 1e-6 * spacing ? 1 : 0);
}

/** Screws in the field of the sheets: in every row so many for each sheet. */
export function fieldScrews(rows: number, sheets: number, perSheet: number): number {
  return rows * sheets * perSheet;
}

/** How exposed-fastener sheets are screwed to wood; the maker's schedule, set by tested wind load, goes before it. */
export const SHEET_SCREWS = {
  /** in between rows, up the slope */
  rows: practice(24, "memory"),
  /** in along a row, beside every major rib */
  across: practice(9, "memory"),
  /** in into the wood */
  penetration: practice(1, "published"),
  /** in along a side lap, and where it is windy */
  sideLap: practice(24, "memory"),
  sideLapWindy: practice(12, "memory"),
} as const satisfies Record<string, Sourced>;

function practice(value: number, status: "memory" | "published"): Sourced {
  return { value, status, source: "fastening guides for ribbed and corrugated steel on wood" };
}

export interface RoofArea {
  /** sloped length per level length: √(1 + (rise/run)²) */
  readonly factor: number;
  /** ft², both slopes */
  readonly area: number;
  /** of 100 ft² */
  readonly squares: number;
  /** of 4 by 8 ft, without waste */
  readonly panels: number;
}

/** ft² of a sheet of 4 by 8 ft */
const PANEL = 32;

/** Both slopes of a gable. @param run ft, level, one slope with its overhang; @param length ft along the ridge */
export function gableArea(pitch: Pitch, run: number, length: number): RoofArea {
  const factor = Math.hypot(pitch.rise, pitch.run) / pitch.run;
  const area = 2 * run * length * factor;
  return { factor, area, squares: area / 100, panels: Math.ceil(area / PANEL - 1e-9) };
}
