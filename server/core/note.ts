/**
 * Short words beside a number that say what it stands for, with amounts that are told in the reader's units: the words
 * hold no figures with units themselves.
 */

/** Units in which the engineering computes. */
export type AmountUnit =
  | "in"
  | "ft"
  | "in2"
  | "ft2"
  | "psi"
  | "psf"
  | "lb"
  | "mph"
  | "lb/ft3"
  | "degree"
  | "degF"
  | "ratio";

export interface Amount {
  readonly value: number;
  readonly unit: AmountUnit;
}

/** Words that are a pattern of their own. */
export interface Words {
  readonly words: string;
}

/** A sentence's pattern alone, or one with holes (`unbraced over {length}`) and what fills them. */
export type Note =
  | string
  | { readonly text: string; readonly parts: Readonly<Record<string, Amount | Words>> };

/** @returns a note with one length in it. @param text its pattern, with the hole `{length}`; @param inches in */
export function lengthNote(text: string, inches: number): Note {
  return { text, parts: { length: { value: inches, unit: "in" } } };
}
