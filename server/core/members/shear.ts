/**
 * Shear of a rectangular section, whole and notched at its end: NDS 3.4, notch limits 4.4.3.
 *
 * Of the other rules of 3.4.3, a pull of pegs across the grain (3.4-6, 3.4-7) stands with the cheeks that it splits, in
 * `fasteners/tear-out.ts`. A notch on the compression side (3.4-5) is cut by no joint past the face of its support: the
 * cut above a flat tenon ends at its shoulder, and where something else is cut out of the upper edge the section that is
 * left carries all shear.
 */

/** f_v = 3V/(2 b d) (NDS 3.4-2). @param shear lb; @returns psi */
export function shearStress(shear: number, breadth: number, depth: number): number {
  return (1.5 * Math.abs(shear)) / (breadth * depth);
}

/** V_r′ = ⅔ F_v′ b d, lb. @param Fv adjusted, psi */
export function shearCapacity(Fv: number, breadth: number, depth: number): number {
  return (2 / 3) * Fv * breadth * depth;
}

/** End notched on the tension side, NDS 3.4-3. @param left d_n, depth left over the support, in; @returns lb */
export function notchedTensionSide(Fv: number, breadth: number, depth: number, left: number): number {
  return shearCapacity(Fv, breadth, left) * (left / depth) ** 2;
}

export interface EndNotch {
  /** in */
  readonly depth: number;
  /** in: a quarter of the depth */
  readonly limit: number;
  readonly allowed: boolean;
}

/** Limits of a notch at a bearing end, NDS 4.4.3 (memory). @param left d_n, in */
export function endNotch(depth: number, left: number): EndNotch {
  const cut = depth - left;
  return { depth: cut, limit: depth / 4, allowed: cut <= depth / 4 + 1e-6 };
}
