/**
 * Properties of a rectangular section: breadth across, depth in the direction of bending, both in inches.
 */

/** in² */
export function area(breadth: number, depth: number): number {
  return breadth * depth;
}

/** S = b d²/6, in³ */
export function sectionModulus(breadth: number, depth: number): number {
  return (breadth * depth ** 2) / 6;
}

/** I = b d³/12, in⁴ */
export function momentOfInertia(breadth: number, depth: number): number {
  return (breadth * depth ** 3) / 12;
}
