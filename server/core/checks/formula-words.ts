/**
 * Pieces of the formula lines that pages show with a case's numbers. Amounts have enough digits to be reckoned with again,
 * which are more than those of a message.
 */

import type { Factor, Sourced } from "../sourced.ts";
import type { Say } from "./say.ts";
import { NEWTON_METRES_PER_POUND_INCH } from "./speak.ts";

/** 1 in = 25.4 mm, exact */
const MM = 25.4;
/** 1 lb/in = 0.1751268 N/mm: 4.4482216 N over 25.4 mm */
const NEWTONS_PER_MM = 4.4482216152605 / MM;

/** 1 psf/ft = 0.1570875 kPa/m: 4.4482216 N over (0.3048 m)³ */
const KILOPASCALS_PER_METRE = 4.4482216152605 / 0.3048 ** 3 / 1000;

const BETWEEN = "; ";

/** Steps of one formula, as one text; what is not needed is left out. */
export const steps = (...all: readonly (string | undefined)[]): string =>
  all.filter((step) => step !== undefined).join(BETWEEN);

/** The steps of such a text again. */
export const stepsOf = (text: string): readonly string[] => text.split(BETWEEN);

/** @param inches what no rule marks out, as a deflection; @returns in decimals: `0.437 in` or `11.1 mm` */
export const fineLength = (inches: number, say: Say): string =>
  say.metric
    ? `${say.number(inches * MM, Math.abs(inches * MM) < 100 ? 2 : 1)} mm`
    : `${say.number(inches, Math.abs(inches) < 10 ? 3 : 2)} in`;

/** @param inches², @returns in² or mm² */
export const square = (inches2: number, say: Say): string =>
  say.metric ? `${say.number(inches2 * MM ** 2, 0)} mm²` : `${say.number(inches2)} in²`;

/** @param inches³ section modulus; @returns in³ or mm³ */
export const cube = (inches3: number, say: Say): string =>
  say.metric ? `${say.number(inches3 * MM ** 3, 0)} mm³` : `${say.number(inches3)} in³`;

/** @param poundInches a moment; @returns lb·in or kN·m, as a stress is reckoned from it */
export const moment = (poundInches: number, say: Say): string =>
  say.metric
    ? `${say.number((poundInches * NEWTON_METRES_PER_POUND_INCH) / 1000, 3)} kN·m`
    : `${say.number(poundInches, 0)} lb·in`;

/** @param poundsPerInch what a fastener holds along its length; @returns lb/in or N/mm */
export const perLength = (poundsPerInch: number, say: Say): string =>
  say.metric ? `${say.number(poundsPerInch * NEWTONS_PER_MM)} N/mm` : `${say.number(poundsPerInch)} lb/in`;

/** @param psfPerFoot lateral bearing of soil for each foot of depth; @returns psf/ft or kPa/m */
export const perDepth = (psfPerFoot: number, say: Say): string =>
  say.metric ? `${say.number(psfPerFoot * KILOPASCALS_PER_METRE)} kPa/m` : `${say.number(psfPerFoot)} psf/ft`;

/** `a − b`; what is negative is added. */
export const less = (a: number, b: number, say: Say): string =>
  b < 0 ? `${say.length(a)} + ${say.length(-b)}` : `${say.length(a)} − ${say.length(b)}`;

/** `K_cr 2 × 0.21 in + 0.34 in`: NDS 3.5-1. @param long in, of what is permanent; @param short in, of the rest */
export function creepSum(creep: Factor, long: number, short: number, say: Say): string {
  const sign = short < 0 ? "−" : "+";
  const start = `${creep.symbol} ${say.number(creep.value)} × ${fineLength(long, say)}`;
  return `${start} ${sign} ${fineLength(Math.abs(short), say)}`;
}

/** ` × C_D 1.15 × C_M 0.67`: factors of one are left out. */
export const times = (factors: readonly Factor[], say: Say): string =>
  factors
    .filter((f) => Math.abs(f.value - 1) > 5e-4)
    .map((f) => ` × ${f.symbol} ${say.number(f.value, 3)}`)
    .join("");

/** A design value made of its reference value and factors. */
interface Made {
  readonly reference: Sourced;
  readonly factors: readonly Factor[];
  readonly value: number;
}

/** `F_v 140 psi × C_D 1.15 = 161 psi`; the value alone where no factor changes it. @param symbol as the standard prints it */
export function madeStress(symbol: string, made: Made, say: Say): string {
  const factors = times(made.factors, say);
  const start = `${symbol} ${say.stress(made.reference.value)}`;
  return factors === "" ? start : `${start}${factors} = ${say.stress(made.value)}`;
}
