/** Marks are made to the finest step that a pencil follows: 1/16 in, or 1 mm. */
const INCH_STEP = 1 / 16;
const MM_STEP = 1 / 25.4;

/** @returns inches, rounded to what is marked; every distance by itself, so that no rounding adds up */
export function toMark(inches: number, metric: boolean): number {
  const step = metric ? MM_STEP : INCH_STEP;
  return Math.round(inches / step) * step || 0;
}
