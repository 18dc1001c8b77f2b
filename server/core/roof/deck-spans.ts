/**
 * How far boards and panels of a roof deck reach between their supports. Lengths in in.
 */
import type { Sourced } from "../sourced.ts";

const BOARDS = "IRC R803.1";
const PANELS = "IRC Table R503.2.1.1(1)";

export interface BoardRule extends Sourced {
  /** in, least thickness */
  readonly thickness: number;
  /** in, widest spacing of supports */
  readonly spacing: number;
  readonly tongueAndGroove: boolean;
  /** psi that the wood needs at least (published with the table) */
  readonly wood?: { readonly Fb: number; readonly E: number };
}

/** IRC Table R803.1: `value` is the thickness. */
const BOARD_RULES: readonly BoardRule[] = [
  board(24, 0.625, "published"),
  board(48, 1.5, "memory", { Fb: 270, E: 340_000 }),
  board(60, 1.5, "memory", { Fb: 420, E: 660_000 }),
  board(72, 1.5, "memory", { Fb: 600, E: 1_150_000 }),
];

function board(
  spacing: number,
  thickness: number,
  status: "published" | "memory",
  wood?: { readonly Fb: number; readonly E: number },
): BoardRule {
  const rule = { value: thickness, thickness, spacing, status, source: BOARDS };
  return wood ? { ...rule, tongueAndGroove: true, wood } : { ...rule, tongueAndGroove: false };
}

/** The boards that a spacing of supports asks for. @returns undefined beyond 72 in */
export function boardsFor(spacing: number): BoardRule | undefined {
  return BOARD_RULES.find((rule) => spacing <= rule.spacing + 1e-9);
}

/** Widest spacing for each inch of thickness: 24 in for 5/8 in. */
export const BOARD_RATE = 24 / 0.625;

export interface BoardSpan extends Sourced {
  /** in: up to here plain boards do, beyond only tongue and groove of the wood that the rule asks for */
  readonly plain: number;
}

/**
 * The widest spacing of supports for boards of a thickness. Between the table's 5/8 in and 1 1/2 in it goes with the
 * thickness: under one load, equal stress (L²/t²) and equal deflection ratio (L³/t³) both mean an equal L/t, that of
 * 5/8 in at 24 in.
 * @returns undefined for boards thinner than the table knows
 */
export function boardSpan(thickness: number): BoardSpan | undefined {
  const [thinnest, , , widest] = BOARD_RULES;
  const thick = BOARD_RULES[1];
  if (!thinnest || !thick || !widest || thickness < thinnest.thickness - 1e-6) return undefined;
  if (thickness >= thick.thickness - 1e-6) {
    return { value: widest.spacing, plain: thick.spacing, status: widest.status, source: BOARDS };
  }
  const exact = Math.abs(thickness - thinnest.thickness) < 1e-6;
  const value = Math.min(BOARD_RATE * thickness, thick.spacing);
  return {
    value,
    plain: value,
    status: exact ? thinnest.status : "derived",
    source: exact ? BOARDS : `${BOARDS}, 5/8 in at 24 in carried on in proportion to the thickness`,
  };
}

export interface PanelRule extends Sourced {
  /** roof and floor span: `24/16` */
  readonly rating: string;
  /** in, least nominal thickness of the rating */
  readonly thickness: number;
  /** in, widest spacing of supports with its long edges held (tongue and groove, blocking or clips): `value` too */
  readonly held: number;
  /** in, with its long edges free */
  readonly free: number;
  /** psf of all load, and of live load alone, that it carries at its widest spacing */
  readonly load: { readonly total: number; readonly live: number };
}

/** Long way across the supports, over two spans or more, 24 in wide or wider. */
const PANEL_RULES: readonly PanelRule[] = [
  panel("16/0", 3 / 8, 16, 16, 40, 30),
  panel("20/0", 3 / 8, 20, 20, 40, 30),
  panel("24/0", 3 / 8, 24, 20, 40, 30),
  panel("24/16", 7 / 16, 24, 24, 50, 40),
  panel("32/16", 15 / 32, 32, 28, 40, 30),
  panel("40/20", 19 / 32, 40, 32, 40, 30),
  panel("48/24", 23 / 32, 48, 36, 45, 35),
];

function panel(
  rating: string,
  thickness: number,
  held: number,
  free: number,
  total: number,
  live: number,
): PanelRule {
  const load = { total, live };
  return { rating, thickness, held, free, load, value: held, status: "memory", source: PANELS };
}

/** What of a panel's load at its widest spacing it carries at a narrower one, as a multiple of it: (widest ÷ spacing)². */
export function panelReserve({ held }: PanelRule, spacing: number): number {
  // under equal stress; its deflection would allow the cube of it (derived)
  return (held / spacing) ** 2;
}

/** @param rating as stamped, `32/16`; @returns undefined for one that the table does not have */
export function panelOf(rating: string): PanelRule | undefined {
  return PANEL_RULES.find((rule) => rule.rating === rating);
}

/** Metric sheets are a little thinner than the inch size they stand for (18 mm for 23/32 in). */
const SHEET_SLACK = 1 / 64;

/**
 * The weakest rating sold in a thickness, where the file states no stamp.
 * @returns undefined for panels thinner than the table knows
 */
export function panelByThickness(thickness: number): PanelRule | undefined {
  const thickest = PANEL_RULES.findLast((rule) => rule.thickness <= thickness + SHEET_SLACK)?.thickness;
  return PANEL_RULES.find((rule) => rule.thickness === thickest);
}

/** Purlins under steel sheets, center to center: usual 24 in; set by the sheet's gauge and the load. */
export const WIDEST_PURLINS: Sourced = {
  value: 36,
  status: "memory",
  source: "common practice for ribbed and corrugated steel; the maker’s load table decides",
};
