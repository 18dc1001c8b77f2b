/**
 * Concrete beside an anchor strap that is cast into a round pier. Plane geometry; how much is enough is a habit of
 * connector makers (common practice, figures uncertain), and the maker's own sheet governs.
 */

/** Concrete beside a cast-in strap, inches: the upper and the lower of the figures in use. */
export const USUAL_SIDE_COVER = 3;
export const LEAST_SIDE_COVER = 2;

/**
 * Cover of a strap on the center line of a timber's face: tube/2 − timber/2 (derived: plane geometry).
 * @param tube diameter of the round pier, inches
 * @param timber true width of the timber that the strap lies against, inches
 * @returns inches; negative where the timber is wider than the tube
 */
export function faceCover(tube: number, timber: number): number {
  return tube / 2 - timber / 2;
}

/**
 * Concrete outside the corner of a square timber that stands in the middle of a round pier:
 * tube/2 − timber × √2/2 (derived: plane geometry).
 * @param tube inches
 * @param timber side of the square, inches
 * @returns inches; negative where the corner stands over the edge
 */
export function cornerCover(tube: number, timber: number): number {
  return tube / 2 - (timber * Math.SQRT2) / 2;
}

/**
 * The smallest tube on sale that leaves the usual cover beside a timber's strap. Tubes come in steps of 2 in or 50 mm
 * (common practice, no source).
 * @param timber true width of the timber, inches
 * @returns inches
 */
export function tubeFor(timber: number, metric: boolean): number {
  const step = metric ? 50 / 25.4 : 2;
  return Math.ceil((timber + 2 * USUAL_SIDE_COVER) / step - 1e-9) * step;
}
