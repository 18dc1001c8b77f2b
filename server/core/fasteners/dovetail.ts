/** Wedged dovetail tenons: how far one draws out as it shrinks, and what its slopes carry. */
import { hankinson } from "../members/compression.ts";
import type { Sourced } from "../sourced.ts";

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

export interface DovetailPull {
  /** lb, along the tenon */
  readonly tension: Sourced;
  readonly governs: "bearing" | "tail-shear" | "neck-tension";
  /** lb of each */
  readonly bearing: number;
  readonly tailShear: number;
  readonly neckTension: number;
}

/**
 * Pull on a tight dovetail tenon by statics, without friction: its slopes bear on the mortise, the shoulders of the tail
 * shear off along the grain, the neck tears. Bearing acts on the mortised timber nearly square to the tenon, so on both
 * timbers the weaker of F_c⊥ and Hankinson’s value counts.
 * @param thickness in; others psi with their factors: of the tenon F_v′, F_t′, F_c*′, F_c⊥′; F_c* of the mortised timber
 */
export function dovetailPull(
  shape: Dovetail,
  thickness: number,
  tenon: { readonly Fv: number; readonly Ft: number; readonly Fc: number; readonly FcPerp: number },
  mortised: { readonly Fc: number; readonly FcPerp: number },
): DovetailPull {
  const { neck, angle } = dovetailFit(shape);
  const t = Math.max(0, thickness);
  const n = shape.slopedSides;
  // the normal of a slope stands at 90° − a to the tenon's grain and at a to the mortised timber's
  const stress = Math.min(
    strength(tenon.Fc, tenon.FcPerp, 90 - angle),
    strength(mortised.Fc, mortised.FcPerp, angle),
  );
  const face = Math.max(0, shape.length) * t * stress;
  const bearing = n * face * Math.max(0, shape.slope);
  // shear runs along the tail from where its slope starts, an area that narrows to the tip: half the strength, as NDS E
  const tailShear = (n * Math.max(0, shape.length) * t * tenon.Fv) / 2;
  const neckTension = Math.max(0, neck) * t * tenon.Ft;
  const value = Math.min(bearing, tailShear, neckTension);
  return {
    tension: {
      value,
      status: "derived",
      source: "statics of the slopes, NDS 3.10.3 on their faces",
    },
    governs: value === bearing ? "bearing" : value === tailShear ? "tail-shear" : "neck-tension",
    bearing,
    tailShear,
    neckTension,
  };
}

function strength(Fc: number, FcPerp: number, angle: number): number {
  return Fc > 0 && FcPerp > 0 ? hankinson(Fc, FcPerp, angle) : 0;
}
