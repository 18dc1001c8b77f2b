/** Polynomials as lists of coefficients, lowest power first. */
export type Polynomial = readonly number[];

export function evaluate(p: Polynomial, t: number): number {
  let sum = 0;
  for (let k = p.length - 1; k >= 0; k--) sum = sum * t + (p[k] ?? 0);
  return sum;
}

export const derivative = (p: Polynomial): Polynomial => p.slice(1).map((c, k) => c * (k + 1));

/** @param start value at 0 */
export const integral = (p: Polynomial, start: number): Polynomial => [
  start,
  ...p.map((c, k) => c / (k + 1)),
];

export function combine(...terms: readonly (readonly [number, Polynomial])[]): Polynomial {
  const degree = Math.max(1, ...terms.map(([, p]) => p.length));
  return Array.from({ length: degree }, (_, k) => terms.reduce((sum, [f, p]) => sum + f * (p[k] ?? 0), 0));
}

/**
 * Places in (0, h) where p is nought and changes sign or touches. Between two neighboring stationary points a polynomial
 * is monotone, so each sign change there is one root, found by halving to the last figure.
 */
export function rootsWithin(p: Polynomial, h: number): number[] {
  const top = p.findLastIndex((c) => c !== 0);
  if (top < 1) return [];
  const trimmed = p.slice(0, top + 1);
  if (top === 1) {
    const t = -(trimmed[0] ?? 0) / (trimmed[1] ?? 1);
    return t > 0 && t < h ? [t] : [];
  }
  const knots = [0, ...rootsWithin(derivative(trimmed), h), h];
  const found: number[] = [];
  for (let k = 1; k < knots.length; k++) {
    const [a, b] = [knots[k - 1] ?? 0, knots[k] ?? h];
    const [fa, fb] = [evaluate(trimmed, a), evaluate(trimmed, b)];
    if (fb === 0 && b < h) found.push(b);
    else if (fa * fb < 0) found.push(halve(trimmed, a, b, fa));
  }
  return found;
}

function halve(p: Polynomial, from: number, to: number, atFrom: number): number {
  let [a, b] = [from, to];
  // Doubles have 52 bits behind the point: more halvings than that change nothing.
  for (let n = 0; n < 60; n++) {
    const mid = (a + b) / 2;
    if (mid <= a || mid >= b) break;
    if (evaluate(p, mid) * atFrom > 0) a = mid;
    else b = mid;
  }
  return (a + b) / 2;
}
