/**
 * Reads and writes in typed arrays at places that the caller knows to exist. An array read may be undefined to the type
 * checker; in the inner loops of the solver a check of every read would say nothing and cost time.
 */

export const at = (a: Float64Array, k: number): number => a[k] as number;
export const int = (a: Int32Array, k: number): number => a[k] as number;
export const bump = (a: Float64Array, k: number, by: number): void => {
  a[k] = (a[k] as number) + by;
};

export function dotOf(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let k = 0; k < a.length; k++) sum += at(a, k) * at(b, k);
  return sum;
}

export function largest(a: ArrayLike<number>): number {
  let most = 0;
  for (let k = 0; k < a.length; k++) most = Math.max(most, Math.abs(a[k] ?? 0));
  return most;
}
