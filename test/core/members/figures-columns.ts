/** Figures of columns, bearing, combined stress and net sections. */
import { expect } from "vitest";
import { withFactor } from "../../../server/core/members/adjust.ts";
import { bearingAreaFactor } from "../../../server/core/members/bearing.ts";
import { bendingStress, type Loading, lateralStability } from "../../../server/core/members/bending.ts";
import {
  columnSlenderness,
  columnStability,
  eulerStress,
  hankinson,
  MOST_COLUMN_SLENDERNESS,
} from "../../../server/core/members/compression.ts";
import { area } from "../../../server/core/members/section.ts";
import type { Case } from "../../reference/cases.ts";
import { adjusted, type Numbers, only } from "./figures-adjusted.ts";
import { type JudgedSection, ratios } from "./judged-section.ts";

export function bearingCase(c: Case): Numbers {
  const g = c.given;
  if (c.id === "mem-bear-001") {
    const A = area(g.b_bearing, g.lb);
    return { area: A, P_allow: A * g.Fc_perp_adj };
  }
  const Cb = bearingAreaFactor(g.lb, g.distance_to_end ?? 12);
  const allowed = withFactor(adjusted(c)["Fc-perp"], Cb).value;
  if (g.washer_diameter === undefined) return { Cb: Cb.value, Fc_perp_adj: allowed };
  const A = (Math.PI * g.washer_diameter ** 2) / 4 - g.gap * g.washer_diameter;
  return { area: A, fc_perp: g.load / A, Fc_perp_adj: allowed };
}

/** The slenderness at which a column is just used up, by halving: C_P only falls as it grows. */
function longestColumn(stress: number, Fc: number, Emin: number): number {
  let [low, high] = [0, 1000];
  for (let i = 0; i < 60; i++) {
    const middle = (low + high) / 2;
    if (columnStability(Fc, Emin, middle).factor.value * Fc > stress) low = middle;
    else high = middle;
  }
  return low;
}

export function columnCase(c: Case): Numbers {
  const g = c.given;
  if (c.id === "mem-col-020") {
    const slenderness = columnSlenderness(g.le, g.b);
    return { slenderness, allowed: slenderness <= MOST_COLUMN_SLENDERNESS };
  }
  if (g.lu_b !== undefined) {
    const values = adjusted(c);
    const slenderness = Math.max(
      columnSlenderness(g.Ke * g.lu_b, g.b),
      columnSlenderness(g.Ke * g.lu_d, g.d),
    );
    const found = columnStability(values.Fc.value, values["E-min"].value, slenderness);
    const Fc = withFactor(values.Fc, found.factor).value;
    return {
      slenderness,
      FcE: found.criticalStress,
      Fc_star: values.Fc.value,
      CP: found.factor.value,
      Fc_adj: Fc,
      P_allow: Fc * area(g.b, g.d),
    };
  }
  // Textbook columns; SI ones in N and mm, which the formulas do not mind.
  const E = g.E ?? g.E_MPa;
  const Emin = g.Emin ?? (g.KcE * E) / 0.822;
  const Fc = g.Fc_star ?? g.Fc_star_MPa;
  const P = g.P ?? g.P_N;
  const CP = (le: number, side: number) => columnStability(Fc, Emin, le / side).factor.value;
  const trials = g.trial_b ?? g.trial_b_mm;
  if (trials !== undefined) {
    const le = g.le ?? g.le_mm;
    const carries = (side: number) => CP(le, side) * Fc * side ** 2;
    let side = 1;
    const step = g.le === undefined ? 1 : 0.01;
    while (carries(side) < P) side += step;
    const found = Object.fromEntries(trials.map((b: number, i: number) => [`CP_${i + 1}`, CP(le, b)]));
    return { ...found, [g.le === undefined ? "b_min_mm" : "b_min"]: side };
  }
  if (P !== undefined) {
    const side = g.b ?? g.b_mm;
    const ratio = longestColumn(P / side ** 2, Fc, Emin);
    const length = ratio * side;
    return only(c, { CP: P / side ** 2 / Fc, le_over_d: ratio, L_max: length, L_max_m: length / 1000 });
  }
  if (g.le_m !== undefined) {
    const ratio = (g.le_m * 1000) / g.b_mm;
    return {
      le_over_d: ratio,
      FcE_over_Fc_star: eulerStress(Emin, ratio) / Fc,
      Fc_adj_MPa: CP(g.le_m * 1000, g.b_mm) * Fc,
    };
  }
  const side = g.d_buckling ?? g.b;
  const factor = CP(g.le ?? g.lu, side);
  return only(c, {
    FcE_over_Fc_star: eulerStress(Emin, (g.le ?? g.lu) / side) / Fc,
    CP: factor,
    Fc_adj: factor * Fc,
    P_allow: factor * Fc * area(g.b, g.d_column ?? g.d),
  });
}

export function combinedCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted(c);
  const A = area(g.b, g.d);
  const lateral = (lu: number, loading: Loading) =>
    lateralStability(values.Fb.value, values["E-min"].value, g.b, g.d, lu, loading);
  if (g.T !== undefined) {
    const Fb = withFactor(values.Fb, lateral(g.lu, "uniform").factor).value;
    const [ft, fb] = [g.T / A, bendingStress(g.M, g.b, g.d)];
    const section: JudgedSection = {
      breadth: g.b,
      depth: g.d,
      N: g.T,
      M1: g.M,
      M2: 0,
      limits: { Ft: values.Ft.value, Fb1: values.Fb.value, plus1: Fb, minus1: Fb },
    };
    const none = Number.POSITIVE_INFINITY;
    // of the two faces the check keeps the worse: each alone where nothing limits the other
    const tension = ratios({ ...section, limits: { ...section.limits, plus1: none, minus1: none } });
    const compression = ratios({ ...section, limits: { ...section.limits, Ft: none, Fb1: none } });
    expect(ratios(section)["tension-and-bending"]).toBe(tension["tension-and-bending"]);
    return {
      ft,
      fb,
      Ft_adj: values.Ft.value,
      Fb_star: values.Fb.value,
      Fb_dstar: Fb,
      ratio_tension: tension["tension-and-bending"],
      ratio_compression: compression["tension-and-bending"],
    };
  }
  const sideways = g.lu ?? g.lu_b;
  const stable = lateral(sideways, "other");
  const Fb1 = withFactor(values.Fb, stable.factor).value;
  const slender = [columnSlenderness(g.lu ?? g.lu_d, g.d), columnSlenderness(sideways, g.b)] as const;
  const column = columnStability(values.Fc.value, values["E-min"].value, Math.max(...slender));
  const [FcE1, FcE2] = slender.map((ratio) => eulerStress(values["E-min"].value, ratio));
  const input = {
    fc: (g.P ?? 0) / A,
    fb1: bendingStress(g.M1 ?? g.M, g.b, g.d),
    fb2: bendingStress(g.M2 ?? 0, g.d, g.b),
    Fc: withFactor(values.Fc, column.factor).value,
    Fb1,
    Fb2: values.Fb.value,
    FcE1: FcE1!,
    FcE2: FcE2!,
    FbE: stable.criticalStress,
  };
  const section: JudgedSection = {
    breadth: g.b,
    depth: g.d,
    N: -(g.P ?? 0),
    M1: g.M1 ?? g.M,
    M2: g.M2 ?? 0,
    limits: {
      Fb1: values.Fb.value,
      plus1: Fb1,
      minus1: Fb1,
      criticalPlus: input.FbE,
      criticalMinus: input.FbE,
      Fb2: input.Fb2,
      plus2: input.Fb2,
      minus2: input.Fb2,
      Fc: input.Fc,
      FcStar: values.Fc.value,
      FcE1: input.FcE1,
      FcE2: input.FcE2,
    },
  };
  const found = ratios(section);
  return only(c, {
    ...input,
    Fc_adj: input.Fc,
    Fb_adj: Fb1,
    Fb1_adj: Fb1,
    Fb2_adj: input.Fb2,
    ratio: found[section.N === 0 ? "bending" : "compression-and-bending"],
    ...("ratio_394" in c.expect ? { ratio_394: flat(section, input.fb2) } : {}),
  });
}

/** NDS 3.9-4 as it stands in the last term of 3.9-3: alone where nothing else uses the timber up. */
function flat(section: JudgedSection, fb2: number): number {
  const none = Number.POSITIVE_INFINITY;
  const limits = { ...section.limits, Fc: none, FcStar: none, plus1: none, minus1: none };
  return (
    1 - fb2 / ((limits.plus2 ?? none) * (ratios({ ...section, limits })["compression-and-bending"] ?? 0))
  );
}

export function hankinsonCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted({ ...c, given: { ...g, b: 7.5, d: 7.5 } });
  const at = (angle: number) => hankinson(values.Fc.value, values["Fc-perp"].value, angle);
  if (Array.isArray(g.theta)) return { F_0: at(g.theta[0]), F_90: at(g.theta[1]) };
  if (g.slope === undefined) return { F_theta: at(g.theta) };
  const [rise, run] = g.slope.split(":").map(Number);
  const theta = 90 - (Math.atan2(rise, run) * 180) / Math.PI;
  return { theta, F_theta: at(theta), P_allow: at(theta) * area(g.b, g.lb) };
}

export function netCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted(c);
  if (c.id === "mem-ten-002") {
    const net = area(g.b, g.d - g.cut - g.hole);
    return { area_net: net, Ft_adj: values.Ft.value, T_allow: net * values.Ft.value };
  }
  const net = area(g.b - g.mortise_width, g.d);
  return { area_net: net, fc_net: g.P / net, Fc_star: values.Fc.value, passes: g.P / net <= values.Fc.value };
}
