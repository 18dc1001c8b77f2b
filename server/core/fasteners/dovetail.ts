/** Wedged dovetail tenons: how far one draws out as it shrinks. */

export interface Dovetail {
  /** in, across the grain at the tip */
  readonly tail: number;
  /** in, along the grain */
  readonly length: number;
  /** in per in, of each sloped edge */
  readonly slope: number;
  readonly slopedSides: 1 | 2;
  /** shrinkage across the tail, a fraction of its width */
  readonly shrinkage: number;
}

export interface DovetailFit {
  /** in, at the shoulder */
  readonly neck: number;
  /** degrees, of a sloped edge to the grain */
  readonly angle: number;
  /** in: how far the dried tail draws out before it is tight again */
  readonly drawOut: number;
  /** in: what the wedge must be driven on to keep the joint closed */
  readonly wedgeTakesUp: number;
}

/**
 * Neck = tail − n L tan a; a tail that shrinks by p draws out p × tail/(n tan a) until its slopes bear again (plane
 * geometry; n sloped edges). Flat slopes loosen most; a straight tail never tightens.
 */
export function dovetailFit({ tail, length, slope, slopedSides, shrinkage }: Dovetail): DovetailFit {
  const lost = Math.max(0, shrinkage) * tail;
  return {
    neck: tail - slopedSides * length * slope,
    angle: (Math.atan(slope) * 180) / Math.PI,
    drawOut: lost === 0 ? 0 : slope > 0 ? lost / (slopedSides * slope) : Number.POSITIVE_INFINITY,
    wedgeTakesUp: lost,
  };
}
