/**
 * Circular arcs over a chord: the hollow of a curved brace and its pattern. Plane geometry (derived); any one unit of length.
 */

/**
 * Radius from chord and rise: R = (c²/4 + h²) / (2 h).
 * @param rise greater than 0, at most half the chord
 */
export function arcRadius(chord: number, rise: number): number {
  return ((chord * chord) / 4 + rise * rise) / (2 * rise);
}

/** Rise from chord and radius: h = R - √(R² - c²/4); a radius less than half the chord counts as half of it. */
export function arcRise(chord: number, radius: number): number {
  const r = Math.max(radius, chord / 2);
  return r - Math.sqrt(Math.max(0, r * r - (chord * chord) / 4));
}

/**
 * Height of the arc over its chord at a distance from the middle: √(R² - x²) - (R - h).
 * @param fromMiddle along the chord, at most half of it either way
 */
export function arcOrdinate(radius: number, rise: number, fromMiddle: number): number {
  return Math.sqrt(Math.max(0, radius * radius - fromMiddle * fromMiddle)) - (radius - rise);
}

/** Length along the arc: 2 R asin(c / 2R), for arcs up to the half circle. */
export function arcLength(chord: number, radius: number): number {
  return 2 * radius * Math.asin(Math.min(1, chord / (2 * radius)));
}
