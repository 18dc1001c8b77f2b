/**
 * Bending with axial force, NDS 3.9, written apart from the program as the standard prints it, for comparison at places of
 * whole frames. Stresses and values in psi; index 1 is bending about the strong axis, 2 about the weak one.
 */

/** NDS 3.9-1 (tension face) and 3.9-2 (compression face). */
export function tensionAndBending(input: {
  readonly ft: number;
  readonly fb: number;
  readonly Ft: number;
  /** F_b* without C_L */
  readonly FbWithoutCL: number;
  /** F_b** without C_V: with C_L */
  readonly FbWithCL: number;
}): { readonly tension: number; readonly compression: number } {
  const { ft, fb, Ft, FbWithoutCL, FbWithCL } = input;
  return { tension: ft / Ft + fb / FbWithoutCL, compression: (fb - ft) / FbWithCL };
}

interface CompressionAndBending {
  readonly fc: number;
  readonly fb1: number;
  readonly fb2: number;
  /** F_c′ with C_P */
  readonly Fc: number;
  readonly Fb1: number;
  readonly Fb2: number;
  /** F_cE for buckling in the plane of bending 1 and of bending 2 */
  readonly FcE1: number;
  readonly FcE2: number;
  /** F_bE of lateral buckling; Infinity where it cannot */
  readonly FbE: number;
}

/**
 * @returns ratio: NDS 3.9-3; flat: NDS 3.9-4. Infinity where a stress reaches its critical one (F_cE1, F_cE2, F_bE):
 * such a member has buckled, whatever the formula would give.
 */
export function compressionAndBending(input: CompressionAndBending): {
  readonly ratio: number;
  readonly flat: number;
} {
  const { fc, fb1, fb2, Fc, Fb1, Fb2, FcE1, FcE2, FbE } = input;
  const lateral = (fb1 / FbE) ** 2;
  const flat = fc / FcE2 + lateral;
  if (fc >= FcE1 || fc >= FcE2 || fb1 >= FbE || flat >= 1) return { ratio: Number.POSITIVE_INFINITY, flat };
  const ratio = (fc / Fc) ** 2 + fb1 / (Fb1 * (1 - fc / FcE1)) + fb2 / (Fb2 * (1 - fc / FcE2 - lateral));
  return { ratio, flat };
}
