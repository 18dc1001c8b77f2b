/**
 * Shear of a rectangular section, whole, notched and at connections: NDS 3.4, notch limits 4.4.3.
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

/**
 * End notched on the compression side, NDS 3.4-5.
 * @param left d_n, in; @param reach e, in: how far the notch reaches inside the face of the support; more than d_n counts
 * as a beam of depth d_n
 * @returns lb
 */
export function notchedCompressionSide(
  Fv: number,
  breadth: number,
  depth: number,
  left: number,
  reach: number,
): number {
  if (reach > left) return shearCapacity(Fv, breadth, left);
  return shearCapacity(Fv, breadth, depth - ((depth - left) / left) * reach);
}

/**
 * Beam held by fasteners, NDS 3.4-6 and 3.4-7 (written for bolts, not for wood pegs).
 * @param effective d_e, in: depth less the distance from the unloaded edge to the nearest fastener
 * @param fromEnd in, from the member's end to the connection
 * @returns lb
 */
export function connectionShear(
  Fv: number,
  breadth: number,
  depth: number,
  effective: number,
  fromEnd: number,
): number {
  const plain = shearCapacity(Fv, breadth, effective);
  return fromEnd < 5 * depth ? plain * (effective / depth) ** 2 : plain;
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
