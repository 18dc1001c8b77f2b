/**
 * Full-edged timbers from a round log: a section fits the circle of the small end when its diagonal does. Plane geometry
 * and calculus (derived); any one unit of length. Kerf, bark, crook and taper are left out.
 */
export interface SawnSection {
  readonly width: number;
  readonly depth: number;
}

/** Diameter of the smallest log that holds a section with full edges: √(b² + d²). */
export function smallestLog(width: number, depth: number): number {
  return Math.hypot(width, depth);
}

/** The largest square: side D / √2. */
export function largestSquare(diameter: number): SawnSection {
  return { width: diameter / Math.SQRT2, depth: diameter / Math.SQRT2 };
}

/** The section strongest in bending, which makes b d² greatest: b = D / √3, d = D √(2/3). */
export function strongestSection(diameter: number): SawnSection {
  return { width: diameter / Math.sqrt(3), depth: diameter * Math.sqrt(2 / 3) };
}

/** The section stiffest in bending, which makes b d³ greatest: b = D / 2, d = D √3 / 2. */
export function stiffestSection(diameter: number): SawnSection {
  return { width: diameter / 2, depth: (diameter * Math.sqrt(3)) / 2 };
}
