/**
 * Exact fractions, so that neither 1/64 in nor 0.1 mm picks up a rounding error on its way to whole nanometres.
 */

export interface Rational {
  readonly num: bigint;
  /** positive */
  readonly den: bigint;
}

export function rational(num: bigint, den = 1n): Rational {
  return { num, den };
}

/** @param text digits, optionally a point and digits: a constant of the code, not user input */
export function decimal(text: string): Rational {
  const point = text.indexOf(".");
  if (point < 0) return rational(BigInt(text));
  const places = text.length - point - 1;
  return rational(BigInt(text.slice(0, point) + text.slice(point + 1)), 10n ** BigInt(places));
}

export function add(a: Rational, b: Rational): Rational {
  return { num: a.num * b.den + b.num * a.den, den: a.den * b.den };
}

export function multiply(a: Rational, b: Rational): Rational {
  return { num: a.num * b.num, den: a.den * b.den };
}

export function divide(a: Rational, b: Rational): Rational {
  return { num: a.num * b.den, den: a.den * b.num };
}

export function negate(a: Rational): Rational {
  return { num: -a.num, den: a.den };
}

/** @returns the nearest whole number, halves away from zero */
export function roundToWhole({ num, den }: Rational): bigint {
  const magnitude = num < 0n ? -num : num;
  const rounded = (2n * magnitude + den) / (2n * den);
  return num < 0n ? -rounded : rounded;
}

/** @returns the value as a double, within two units in its last place */
export function toNumber({ num, den }: Rational): number {
  const divisor = greatestCommonDivisor(num < 0n ? -num : num, den);
  return Number(num / divisor) / Number(den / divisor);
}

function greatestCommonDivisor(a: bigint, b: bigint): bigint {
  let [x, y] = [a, b];
  while (y !== 0n) [x, y] = [y, x % y];
  return x;
}
