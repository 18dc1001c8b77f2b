/**
 * Which share of a load a timber carries: by area (half the distance to the next support) and by statics. Lengths in ft.
 */

/**
 * Width that each of a row of supports carries: half of each bay beside it, and the whole overhang at the ends.
 * @param supports in order, at least one
 */
export function tributaryWidths(
  supports: readonly number[],
  overhang: { readonly first: number; readonly last: number } = { first: 0, last: 0 },
): readonly number[] {
  return supports.map((at, i) => {
    const before = supports[i - 1];
    const after = supports[i + 1];
    return (
      (before === undefined ? overhang.first : (at - before) / 2) +
      (after === undefined ? overhang.last : (after - at) / 2)
    );
  });
}

/**
 * Plan area of roof that each post of a grid carries, ft².
 * @returns by wall, then by bent
 */
export function postAreas(
  walls: readonly number[],
  bents: readonly number[],
  overhang: { readonly eaves: number; readonly gables: number },
): readonly (readonly number[])[] {
  const along = tributaryWidths(bents, { first: overhang.gables, last: overhang.gables });
  return tributaryWidths(walls, { first: overhang.eaves, last: overhang.eaves }).map((width) =>
    along.map((length) => width * length),
  );
}

export interface RafterShares {
  /** ft of level run that the plate and the ridge carry by area: half the span each, the plate the overhang too */
  readonly byArea: { readonly plate: number; readonly ridge: number };
  /** the same by statics: the overhang hangs on the plate and relieves the ridge */
  readonly byStatics: { readonly plate: number; readonly ridge: number };
}

/**
 * Level run of rafter, under an even load of the level projection, that ends on the plate and on the ridge:
 * (L + o)²/2L and (L² − o²)/2L by statics. Where the overhang is not small, statics give the plate more.
 * @param span L, ft, level, plate to ridge, above 0; @param overhang o, ft, beyond the plate
 */
export function rafterShares(span: number, overhang: number): RafterShares {
  return {
    byArea: { plate: span / 2 + overhang, ridge: span / 2 },
    byStatics: {
      plate: (span + overhang) ** 2 / (2 * span),
      ridge: (span ** 2 - overhang ** 2) / (2 * span),
    },
  };
}

/**
 * Reactions of a beam that runs unbroken over its supports, under an even load, by the theorem of three moments (even
 * section, supports that do not settle): M₍ᵢ₋₁₎ l₁ + 2 Mᵢ (l₁ + l₂) + M₍ᵢ₊₁₎ l₂ = −w (l₁³ + l₂³)/4.
 * @param spans ft, one or more, above 0; @param plf w, lb/ft
 * @returns lb at each support, one more than spans
 */
export function continuousReactions(
  spans: readonly number[],
  plf: number,
  overhang: { readonly first: number; readonly last: number } = { first: 0, last: 0 },
): readonly number[] {
  const moments = supportMoments(spans, plf, overhang);
  return [...spans, 0].map((_, i) => {
    const [before, after] = [spans[i - 1], spans[i]];
    const here = moments[i] ?? 0;
    const left =
      before === undefined
        ? plf * overhang.first
        : (plf * before) / 2 + ((moments[i - 1] ?? 0) - here) / before;
    const right =
      after === undefined ? plf * overhang.last : (plf * after) / 2 + ((moments[i + 1] ?? 0) - here) / after;
    return left + right;
  });
}

/** Moments at the supports, ft-lb, sagging positive. */
function supportMoments(
  spans: readonly number[],
  plf: number,
  overhang: { readonly first: number; readonly last: number },
): readonly number[] {
  const first = (-plf * overhang.first ** 2) / 2;
  const last = (-plf * overhang.last ** 2) / 2;
  const inner = spans.slice(1).map((right, i) => {
    const left = spans[i] ?? 0;
    return { left, right, load: (-plf * (left ** 3 + right ** 3)) / 4 };
  });
  // Forward elimination of the three-banded equations, then back substitution.
  const steps: { readonly ratio: number; readonly load: number }[] = [];
  inner.forEach(({ left, right, load }, i) => {
    const known = load - (i === inner.length - 1 ? right * last : 0);
    const previous = steps[i - 1] ?? { ratio: 0, load: first };
    const pivot = 2 * (left + right) - left * previous.ratio;
    steps.push({ ratio: right / pivot, load: (known - left * previous.load) / pivot });
  });
  const moments = [last];
  for (const [i, step] of [...steps.entries()].reverse()) {
    const next = i === steps.length - 1 ? 0 : (moments[0] ?? 0);
    moments.unshift(step.load - step.ratio * next);
  }
  return [first, ...moments];
}
