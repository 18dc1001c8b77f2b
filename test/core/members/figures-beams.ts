/**
 * Figures of beams: bending, stability, shear, notches, deflection, rafters. Arithmetic that a case adds (a coefficient of
 * a continuous beam, a unit) stands here.
 */
import { expect } from "vitest";
import { cheekSplit } from "../../../server/core/fasteners/tear-out.ts";
import { onLevel } from "../../../server/core/loads/dead.ts";
import { withFactor } from "../../../server/core/members/adjust.ts";
import { beam, loadsForShear, spanDeflection, uniform } from "../../../server/core/members/beam.ts";
import { effectiveLength, type Loading, lateralStability } from "../../../server/core/members/bending.ts";
import { creepFactor, totalDeflection } from "../../../server/core/members/deflection.ts";
import { momentOfInertia, sectionModulus } from "../../../server/core/members/section.ts";
import {
  endNotch,
  notchedTensionSide,
  shearCapacity,
  shearStress,
} from "../../../server/core/members/shear.ts";
import type { Case } from "../../reference/cases.ts";
import { adjusted, type Numbers, only } from "./figures-adjusted.ts";

const LOADING: Record<string, Loading> = {
  uniform: "uniform",
  other: "other",
  "point at midspan": "point-at-midspan",
};

export function stabilityCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted(c);
  const loading = LOADING[g.load] ?? "other";
  const found = lateralStability(values.Fb.value, values["E-min"].value, g.b, g.d, g.lu, loading);
  return only(c, {
    lu_over_d: g.lu / g.d,
    le: effectiveLength(loading, g.lu, g.d),
    RB: found.slenderness,
    FbE: found.criticalStress,
    CL: found.factor.value,
    Fb_adj: withFactor(values.Fb, found.factor).value,
  });
}

const simple = (span: number, plf: number, points: readonly { at: number; load: number }[] = []) => ({
  span,
  overhang: 0,
  blocks: plf > 0 ? [uniform(0, span, plf)] : [],
  points,
});

export function bendingCase(c: Case): Numbers {
  const g = c.given;
  if (c.id === "mem-bend-001") {
    const points = g.positions.map((at: number) => ({ at, load: g.P }));
    const M = beam(simple(g.L, 0, points)).sagging.moment;
    return { M, S_required: M / g.Fb_adj, S: sectionModulus(g.b, g.d) };
  }
  if (c.id === "mem-bend-003") return { M: ((g.w_plf / 12) * g.L ** 2) / 10, S: sectionModulus(g.b, g.d) };
  if (c.id === "mem-bend-004") {
    const w = (g.load_psf * g.spacing) / 144;
    const M = beam(simple(g.L, w * 12)).sagging.moment;
    return { w, M, S_required: M / g.Fb_adj };
  }
  // mem-bend-005, SI: N and mm
  const M = beam(simple(g.L_m * 1000, 12)).sagging.moment;
  const w = (g.Fb_adj_MPa * sectionModulus(g.b_mm, g.d_mm)) / M;
  return { spacing_m: w / g.load_kPa };
}

export function continuousCase(c: Case): Numbers {
  const { b, d, Fb_adj, Fv_adj, w_plf } = c.given;
  const w = w_plf / 12;
  return {
    L_bending: Math.sqrt((10 * Fb_adj * sectionModulus(b, d)) / w),
    // The source's closed form, 192 F_v b d/(15 w) + 2d, has 0.625 w of the two-span beam in it, not 0.6.
    L_shear: shearCapacity(Fv_adj, b, d) / (0.625 * w) + 2 * d,
  };
}

export function shearCase(c: Case): Numbers {
  const g = c.given;
  const points = g.P === undefined ? [] : [{ at: g.x, load: g.P }];
  const loads = simple(g.L, g.w_plf ?? 0, points);
  const [full, reduced] = [beam(loads).shear, beam(loadsForShear(loads, g.d)).shear];
  const fv = (V: number) => shearStress(V, g.b, g.d);
  return only(c, {
    V: reduced,
    fv: fv(reduced),
    V_reduced: reduced,
    fv_reduced: fv(reduced),
    V_full: full,
    fv_full: fv(full),
    Fv_adj: adjusted(c).Fv.value,
  });
}

export function notchCase(c: Case): Numbers {
  const g = c.given;
  const Fv = adjusted(c).Fv.value;
  if (c.id === "mem-notch-003") {
    const found = endNotch(g.d, g.dn);
    return { notch_depth: found.depth, limit: found.limit, allowed: found.allowed };
  }
  if (g.de !== undefined) {
    // as the cheeks of a mortise that pegs pull across the grain: one row, all of the breadth
    const at = (fromEnd: number) => cheekSplit(g.de, 0, g.d, [g.b, 0], Fv, fromEnd).shear.value;
    return { Vr: at(g.distance_to_end), Vr_beyond_5d: at(5 * g.d) };
  }
  const Vr = notchedTensionSide(Fv, g.b, g.d, g.dn);
  const whole = shearCapacity(Fv, g.b, g.d);
  return { Vr, Vr_unnotched: whole, ratio: Vr / whole };
}

export function deflectionCase(c: Case): Numbers {
  const g = c.given;
  const I = g.I ?? momentOfInertia(g.b, g.d);
  const of = (plf: number, points: readonly { at: number; load: number }[] = []) =>
    spanDeflection(beam(simple(g.L, plf, points)), g.L, g.E * I);
  if (g.P !== undefined) {
    const both =
      g.a === g.L / 2 ? [{ at: g.a, load: g.P }] : [g.a, g.L - g.a].map((at) => ({ at, load: g.P }));
    const P = of(0, both);
    if (g.w_plf === undefined) return { deflection: P };
    return { deflection_P: P, deflection_w: of(g.w_plf), deflection: of(g.w_plf, both) };
  }
  const [dead, snow] = [of(g.wD_plf), of(g.wS_plf)];
  const creep = creepFactor(g.Kcr === 2 ? "green" : "dry").value;
  expect(creep).toBe(g.Kcr);
  const total = totalDeflection(creep, dead, snow);
  return only(c, {
    I,
    deflection_D: dead,
    deflection_S: snow,
    deflection_total: total,
    L_over_S: g.L / snow,
    L_over_total: g.L / total,
  });
}

export function rafterCase(c: Case): Numbers {
  const g = c.given;
  const [rise, run] = g.slope.split(":").map(Number);
  const dead = onLevel((g.dead_psf_on_slope * g.spacing) / 12, { rise, run });
  const snow = (g.snow_psf_on_plan * g.spacing) / 12;
  const found = beam(simple(g.run, dead + snow));
  const cosine = run / Math.hypot(rise, run);
  return {
    dead_plf_plan: dead,
    snow_plf_plan: snow,
    M: found.sagging.moment,
    V_normal: found.shear * cosine,
  };
}
