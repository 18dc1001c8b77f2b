/**
 * Lengths, exact inside: a whole number of nanometres, so that 1/64 in (396 875 nm) and 1 mm (1 000 000 nm)
 * are both whole numbers and parse → print → parse never drifts. The model computes in inches (doubles).
 */
declare const lengthBrand: unique symbol;

/** A length in whole nanometres. */
export type Length = number & { readonly [lengthBrand]: "nm" };

export const NM_PER_INCH = 25_400_000;
export const NM_PER_MM = 1_000_000;

export const NO_LENGTH = 0 as Length;

/** @param inches a length in inches, rounded to the nearest nanometre */
export function fromInches(inches: number): Length {
  return Math.round(inches * NM_PER_INCH) as Length;
}

/** @param mm a length in millimetres, rounded to the nearest nanometre */
export function fromMillimetres(mm: number): Length {
  return Math.round(mm * NM_PER_MM) as Length;
}

/** @returns the length in inches */
export function inches(length: Length): number {
  return length / NM_PER_INCH;
}

/** @returns the length in millimetres */
export function millimetres(length: Length): number {
  return length / NM_PER_MM;
}
