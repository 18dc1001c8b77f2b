/**
 * How numbers and sentences are said: in the file's units, translatable. Checks and hovers receive one.
 * Sentences are patterns with named holes (`The tenon is {thickness} thick.`), so that a translation can be put in
 * their place without touching a check.
 */
export interface Say {
  readonly metric: boolean;
  /** inches → the trade's form, to the nearest 1/16 in unless it is a whole 64th: `8'-6 1/2"`, `1 1/2 in`; or mm */
  length(inches: number): string;
  /** both unit systems: `8'-6 1/2" (2604 mm)` */
  lengthBoth(inches: number): string;
  /** psf or kPa */
  pressure(psf: number): string;
  /** psi or MPa */
  stress(psi: number): string;
  /** lb or kN */
  force(pounds: number): string;
  /** pound-inches → lb·ft, or kN·m (N·m below 100 N·m) */
  moment(poundInches: number): string;
  /** lb or kg: what a stick weighs */
  weight(pounds: number): string;
  /** degrees */
  angle(degrees: number): string;
  /** 0.83 → `83 %` */
  percent(ratio: number): string;
  number(value: number, digits?: number): string;
  /** `a, b and c` */
  list(items: readonly string[]): string;
  /** `a, b or c` */
  either(items: readonly string[]): string;
  /** fills the holes of a pattern; the pattern itself is what a translation replaces */
  text(pattern: string, values?: Readonly<Record<string, string | number>>): string;
}
