/** Stiffness figures of a rectangular section. */

export interface RectangleSection {
  /** in² */
  readonly A: number;
  /** bending in the plane of the depth, in⁴: b d³/12 */
  readonly Iz: number;
  /** bending in the plane of the width, in⁴: d b³/12 */
  readonly Iy: number;
  /** torsion, in⁴ */
  readonly J: number;
}

/**
 * @param width b and @param depth d, inches, both positive
 * Torsion: J = a c³ (1/3 − 0.21 (c/a)(1 − c⁴/(12 a⁴))), a the longer side (Young and Budynas, Roark's Formulas for
 * Stress and Strain, Table 10.1, case 4; from memory).
 */
export function rectangleSection(width: number, depth: number): RectangleSection {
  const a = Math.max(width, depth);
  const c = Math.min(width, depth);
  const r = c / a;
  return {
    A: width * depth,
    Iz: (width * depth ** 3) / 12,
    Iy: (depth * width ** 3) / 12,
    J: a * c ** 3 * (1 / 3 - 0.21 * r * (1 - r ** 4 / 12)),
  };
}
