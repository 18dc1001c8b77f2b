/**
 * A number with how well it is known and where it is from. Reference values and factors carry this from the table
 * where they stand to the hover that shows them.
 */
import type { SourceStatus } from "./checks/check.ts";
import type { Note } from "./note.ts";

/**
 * published: the figure was seen in the named source; derived: worked from published figures by the named rule;
 * memory: remembered from the named publication; uncertain: remembered, and not to be defended without the print;
 * common-practice: a habit of the trade; given: the file states it.
 */
export type ValueStatus = Exclude<SourceStatus, "file-format"> | "uncertain" | "given";

export interface Sourced {
  readonly value: number;
  readonly status: ValueStatus;
  /** publication and table, section or equation */
  readonly source: string;
}

/** A multiplier of a reference value or of a load, with its symbol as the standard prints it. */
export interface Factor extends Sourced {
  readonly symbol: string;
  /** what it stands for here, where the symbol alone does not say it */
  readonly note?: Note;
  /** another value that it is worked from, which is no factor of the product itself: E_min′ of a stability factor */
  readonly from?: Made;
}

/** A reference value and the factors on it. */
export interface Made {
  /** of the reference value, as the standard prints it */
  readonly symbol: string;
  readonly reference: Sourced;
  readonly factors: readonly Factor[];
  readonly value: number;
}

/** Best first. A result is known no better than the worst of what it is made from. */
const ORDER: readonly ValueStatus[] = [
  "given",
  "published",
  "derived",
  "common-practice",
  "memory",
  "uncertain",
];

/** @returns the least certain of the statuses; `published` for none */
export function leastCertain(statuses: readonly ValueStatus[]): ValueStatus {
  return statuses.reduce<ValueStatus>(lessCertain, statuses[0] ?? "published");
}

/** @returns the less certain of two statuses */
export function lessCertain(one: ValueStatus, other: ValueStatus): ValueStatus {
  return ORDER.indexOf(other) > ORDER.indexOf(one) ? other : one;
}

/** @returns the value a file states itself, with the reason it gives */
export function given(value: number, because = "stated in the file"): Sourced {
  return { value, status: "given", source: because };
}
