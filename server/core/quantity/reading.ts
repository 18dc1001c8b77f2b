/**
 * What reading a quantity gives: a value, or the reason why there is none and where it stopped.
 * Reading never throws and takes time in proportion to the text.
 */
import type { Length } from "./length.ts";

/** The unit that a bare length takes: the `units` of a frame file. */
export type UnitSystem = "inch" | "mm";

/** Why a text is not the quantity it should be. A closed set: the wording of findings covers each one. */
export type Reason =
  /** nothing but blanks */
  | "empty"
  /** a number was expected here */
  | "not-a-number"
  /** infinity or not-a-number, spelled out */
  | "not-finite"
  /** a number alone, where only a unit makes it a quantity */
  | "no-unit"
  | "unknown-unit"
  /** a unit, but of something else: `45 psf` for a length */
  | "wrong-dimension"
  /** feet and millimetres in one value */
  | "mixed-systems"
  /** a second number where none belongs: `8 6 1/2`, `6 in 8 ft` */
  | "two-numbers"
  /** half of a pair is missing: `8` or `8x` for a section, `7` or `7:` for a pitch */
  | "missing-part"
  /** something readable, then something else */
  | "trailing-text"
  /** `1,000` */
  | "thousands-separator"
  /** `3,5` */
  | "decimal-comma"
  /** no or zero denominator, a fraction of a decimal number, or 1 and more after a whole number (`5 9/8`) */
  | "bad-fraction"
  /** `5 - 1/2`: five and a half or four and a half; `10' - 1/2"` likewise */
  | "ambiguous-dash"
  | "negative-not-allowed"
  | "too-large"
  /** more than 40 digits in a row */
  | "too-many-digits"
  /** `nominal` beside a size that is not in the lumber standard */
  | "bad-nominal";

export interface Read<T> {
  readonly ok: true;
  readonly value: T;
  /** the unit as it was written, in its usual spelling: `ft` also for feet and inches, `ratio` for 7:12 */
  readonly unit: string;
  /** the system that unit belongs to */
  readonly system: UnitSystem | "either";
  /** no unit was written and the file's own was taken */
  readonly assumed: boolean;
}

export interface Unreadable {
  readonly ok: false;
  readonly reason: Reason;
  /** UTF-16 offsets of what could not be read; `at` is where reading stopped, `end` may equal it */
  readonly at: number;
  readonly end: number;
}

export type Reading<T> = Read<T> | Unreadable;

/** A cross-section, width × depth in the order written. */
export interface SectionSize {
  readonly width: Length;
  readonly depth: Length;
  /** written as `2x8 nominal`: width and depth are already the dressed sizes */
  readonly nominal: boolean;
}

/** A slope as rise over run, the numbers as written; degrees become tangent over 1. */
export interface Pitch {
  readonly rise: number;
  readonly run: number;
}

export function unreadable(reason: Reason, at: number, end: number = at): Unreadable {
  return { ok: false, reason, at, end };
}
