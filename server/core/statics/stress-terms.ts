/** What the worst stress of a timber was reckoned from: the numbers of its formula, for whoever shows them. */
import type { Adjusted } from "../members/adjust.ts";
import type { MemberPlan } from "./member-plan.ts";
import type { BendingValues } from "./member-values.ts";
import type { Worst } from "./worst-stress.ts";

/** Bending about one axis. */
export interface Bent {
  /** lb·in, eccentricity of what is left of the section included, and in³ */
  readonly moment: number;
  readonly modulus: number;
  /** psi */
  readonly stress: number;
  /** F_b* without C_L, and F_b′ with it */
  readonly star: Adjusted;
  readonly value: Adjusted;
  /** F_bE, psi; Infinity where it cannot buckle sideways */
  readonly critical: number;
}

export interface StressTerms {
  /** lb: N along the grain, without sign, else V; and the area it acts on, in² */
  readonly force: number;
  readonly area: number;
  /** about the strong and the weak axis; undefined where nothing bends */
  readonly bent: readonly [Bent, Bent] | undefined;
  /** in: breadth and depth that carry the shear of an end, and the whole depth */
  readonly notch: { readonly breadth: number; readonly left: number; readonly depth: number } | undefined;
  readonly Ft: Adjusted;
  readonly tensionArea: number;
  readonly column: {
    /** on the whole section with C_P, and on what is left without it */
    readonly Fc: Adjusted;
    readonly FcStar: Adjusted;
    readonly netArea: number;
    /** F_cE in the plane of bending about the strong axis and about the weak one, psi */
    readonly FcE1: number;
    readonly FcE2: number;
  };
}

function bentAbout(stress: number, modulus: number, values: BendingValues): Bent {
  const up = stress >= 0;
  return {
    moment: Math.abs(stress) * modulus,
    modulus,
    stress: Math.abs(stress),
    star: values.star,
    value: up ? values.positive : values.negative,
    critical: up ? values.criticalPositive : values.criticalNegative,
  };
}

export function stressTerms({ timber }: MemberPlan, w: Worst): StressTerms {
  const { values: v, station, notch } = w;
  const section = station?.place.section;
  const strongZ = timber.depth >= timber.width;
  const z = section && bentAbout(w.sz, section.Sz, v.z);
  const y = section && bentAbout(w.sy, section.Sy, v.y);
  return {
    force: Math.abs(w.force),
    area: w.area,
    bent: z && y ? (strongZ ? [z, y] : [y, z]) : undefined,
    notch: notch && { breadth: notch.breadth, left: notch.left, depth: timber.depth },
    Ft: v.Ft,
    tensionArea: station?.place.tensionArea ?? w.area,
    column: {
      Fc: v.Fc,
      FcStar: v.FcStar,
      netArea: section?.A ?? w.area,
      FcE1: v.limits.FcE1,
      FcE2: v.limits.FcE2,
    },
  };
}
