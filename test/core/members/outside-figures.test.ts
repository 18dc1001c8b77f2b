/**
 * Member checks against outside figures: adjusted values, stability, shear, notches, bearing, columns, combined stress,
 * deflection, weights. Arithmetic that a case adds (a coefficient of a continuous beam, a unit) stands here.
 */
import { describe, expect, it } from "vitest";
import { durationFactor, type LoadKind } from "../../../server/core/loads/combinations.ts";
import { onLevel } from "../../../server/core/loads/dead.ts";
import { type AdjustedValues, adjustValues, withFactor } from "../../../server/core/members/adjust.ts";
import { beam, loadsForShear, spanDeflection, uniform } from "../../../server/core/members/beam.ts";
import { bearingAreaFactor } from "../../../server/core/members/bearing.ts";
import {
  bendingStress,
  effectiveLength,
  type Loading,
  lateralStability,
} from "../../../server/core/members/bending.ts";
import { compressionAndBending, tensionAndBending } from "../../../server/core/members/combined.ts";
import {
  columnSlenderness,
  columnStability,
  eulerStress,
  hankinson,
  longestColumn,
  MOST_COLUMN_SLENDERNESS,
} from "../../../server/core/members/compression.ts";
import { creepFactor, totalDeflection } from "../../../server/core/members/deflection.ts";
import { repetitiveFactor } from "../../../server/core/members/factors.ts";
import { area, momentOfInertia, sectionModulus } from "../../../server/core/members/section.ts";
import {
  connectionShear,
  endNotch,
  notchedCompressionSide,
  notchedTensionSide,
  shearCapacity,
  shearStress,
} from "../../../server/core/members/shear.ts";
import { given } from "../../../server/core/sourced.ts";
import { minimumModulus } from "../../../server/core/wood/design-values.ts";
import { densityFromAssignedGravity } from "../../../server/core/wood/moisture.ts";
import { sizeClass } from "../../../server/core/wood/size-class.ts";
import type { GradeId, SizeClass } from "../../../server/core/wood/types.ts";
import { type Case, casesOf, check, readReference, tableOf, titleOf } from "../../reference/cases.ts";

const FILE = "members";
type Numbers = Record<string, unknown>;

/** Values of a case with every factor that our own rules give; where the case gives a factor, both must agree. */
function adjusted(c: Case, duration?: number): AdjustedValues {
  const g = c.given;
  const [b, d] = [g.b ?? 3.5, g.d ?? 5.5];
  const size = sizeClass(b, d) as SizeClass;
  const kinds: Record<number, LoadKind> = { 0.9: "D", 1: "L", 1.15: "S", 1.25: "Lr", 1.6: "W" };
  const stated = (key: string) => given(g[key] ?? 1000);
  const values = adjustValues(
    {
      Fb: stated("Fb"),
      Ft: stated("Ft"),
      Fv: stated("Fv"),
      "Fc-perp": stated("Fc_perp"),
      Fc: stated("Fc"),
      E: stated("E"),
      "E-min": stated("Emin"),
      G: given(0.5),
    },
    {
      section: {
        sizeClass: size,
        group: (g.species ?? "douglas_fir_larch").replaceAll("_", "-"),
        breadth: b,
        depth: d,
      },
      grade: (g.grade ?? "No.1").toLowerCase().replace(".", "-") as GradeId,
      duration: durationFactor(kinds[duration ?? g.CD ?? 1]!),
      wet: g.moisture === "wet" || g.CM_E !== undefined || g.CM_Fc !== undefined,
      incised: g.incised ?? false,
      ...(g.Cr === 1.15
        ? { repetitive: repetitiveFactor({ sizeClass: size, count: 3, spacing: 16, loadSharingDeck: true }) }
        : {}),
    },
  );
  for (const [key, symbol, of] of [
    ["CF_Fb", "C_F", "Fb"],
    ["CF_Ft", "C_F", "Ft"],
    ["CF_Fc", "C_F", "Fc"],
    ["CM_Fb", "C_M", "Fb"],
    ["CM_Fv", "C_M", "Fv"],
    ["CM_Fc", "C_M", "Fc"],
    ["CM_E", "C_M", "E"],
    ["CM_Fc_perp", "C_M", "Fc-perp"],
    ["Cfu_Fb", "C_fu", "Fb"],
    ["Cfu_E", "C_fu", "E"],
    ["Cfu", "C_fu", "Fb"],
    ["Ci_F", "C_i", "Fb"],
  ] as const) {
    if (g[key] === undefined) continue;
    expect(factor(values, of, symbol), `${c.id} ${key}`).toBeCloseTo(g[key], 9);
  }
  return values;
}

function factor(values: AdjustedValues, of: keyof AdjustedValues, symbol: string): number | undefined {
  return values[of].factors.find((f) => f.symbol === symbol)?.value;
}

function only(c: Case, got: Numbers): Numbers {
  return Object.fromEntries(Object.entries(got).filter(([key]) => key in c.expect));
}

function adjustCase(c: Case): Numbers {
  const g = c.given;
  if (c.id === "mem-adj-018") {
    const ratio = (psf: number, kind: LoadKind) => psf / durationFactor(kind).value;
    const [D, DS] = [ratio(g.D_psf, "D"), ratio(g.D_psf + g.S_psf, "S")];
    return { D_over_CD: D, DS_over_CD: DS, governs: D > DS ? "D" : "D+S" };
  }
  // 2x8 and the like of mem-adj-005: the case names the size and gives the factors.
  const sized: Case = c.id === "mem-adj-005" ? { ...c, given: { ...g, b: 1.5, d: 7.25 } } : c;
  const two: Case = c.id === "mem-adj-013" ? { ...c, given: { ...g, b: 1.5, d: 5.5 } } : sized;
  const values = adjusted(two);
  return only(c, {
    CF_Fb: factor(values, "Fb", "C_F"),
    CM_Fb: factor(values, "Fb", "C_M"),
    CM_Fc: factor(values, "Fc", "C_M"),
    Fb_adj: values.Fb.value,
    Ft_adj: values.Ft.value,
    Fv_adj: values.Fv.value,
    Fc_adj: values.Fc.value,
    Fc_star: values.Fc.value,
    Fc_perp_adj: values["Fc-perp"].value,
    E_adj: values.E.value,
    Emin_adj: values["E-min"].value,
    S: sectionModulus(g.b, g.d),
  });
}

const LOADING: Record<string, Loading> = {
  uniform: "uniform",
  other: "other",
  "point at midspan": "point-at-midspan",
};

function stabilityCase(c: Case): Numbers {
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

function bendingCase(c: Case): Numbers {
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

function continuousCase(c: Case): Numbers {
  const { b, d, Fb_adj, Fv_adj, w_plf } = c.given;
  const w = w_plf / 12;
  return {
    L_bending: Math.sqrt((10 * Fb_adj * sectionModulus(b, d)) / w),
    // The source's closed form, 192 F_v b d/(15 w) + 2d, has 0.625 w of the two-span beam in it, not 0.6.
    L_shear: shearCapacity(Fv_adj, b, d) / (0.625 * w) + 2 * d,
  };
}

function shearCase(c: Case): Numbers {
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

function notchCase(c: Case): Numbers {
  const g = c.given;
  const Fv = adjusted(c).Fv.value;
  if (c.id === "mem-notch-003") {
    const found = endNotch(g.d, g.dn);
    return { notch_depth: found.depth, limit: found.limit, allowed: found.allowed };
  }
  if (g.de !== undefined) {
    const at = (fromEnd: number) => connectionShear(Fv, g.b, g.d, g.de, fromEnd);
    return { Vr: at(g.distance_to_end), Vr_beyond_5d: at(5 * g.d) };
  }
  if (g.side === "compression") return { Vr: notchedCompressionSide(Fv, g.b, g.d, g.dn, g.e) };
  const Vr = notchedTensionSide(Fv, g.b, g.d, g.dn);
  const whole = shearCapacity(Fv, g.b, g.d);
  return { Vr, Vr_unnotched: whole, ratio: Vr / whole };
}

function deflectionCase(c: Case): Numbers {
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

function bearingCase(c: Case): Numbers {
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

function columnCase(c: Case): Numbers {
  const g = c.given;
  if (c.id === "mem-col-020") {
    const slenderness = columnSlenderness([{ side: g.b, length: g.le, effective: 1 }]);
    return { slenderness, allowed: slenderness <= MOST_COLUMN_SLENDERNESS };
  }
  if (g.lu_b !== undefined) {
    const values = adjusted(c);
    const slenderness = columnSlenderness([
      { side: g.b, length: g.lu_b, effective: g.Ke },
      { side: g.d, length: g.lu_d, effective: g.Ke },
    ]);
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

function combinedCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted(c);
  const A = area(g.b, g.d);
  const lateral = (lu: number, loading: Loading) =>
    lateralStability(values.Fb.value, values["E-min"].value, g.b, g.d, lu, loading);
  if (g.T !== undefined) {
    const Fb = withFactor(values.Fb, lateral(g.lu, "uniform").factor).value;
    const [ft, fb] = [g.T / A, bendingStress(g.M, g.b, g.d)];
    const found = tensionAndBending({
      ft,
      fb,
      Ft: values.Ft.value,
      FbWithoutCL: values.Fb.value,
      FbWithCL: Fb,
    });
    return {
      ft,
      fb,
      Ft_adj: values.Ft.value,
      Fb_star: values.Fb.value,
      Fb_dstar: Fb,
      ratio_tension: found.tension,
      ratio_compression: found.compression,
    };
  }
  const sideways = g.lu ?? g.lu_b;
  const stable = lateral(sideways, "other");
  const Fb1 = withFactor(values.Fb, stable.factor).value;
  const axes = [
    { side: g.d, length: g.lu ?? g.lu_d, effective: 1 },
    { side: g.b, length: sideways, effective: 1 },
  ] as const;
  const slenderness = columnSlenderness(axes);
  const column = columnStability(values.Fc.value, values["E-min"].value, slenderness);
  const euler = axes.map((axis) => eulerStress(values["E-min"].value, axis.length / axis.side));
  const input = {
    fc: (g.P ?? 0) / A,
    fb1: bendingStress(g.M1 ?? g.M, g.b, g.d),
    fb2: bendingStress(g.M2 ?? 0, g.d, g.b),
    Fc: withFactor(values.Fc, column.factor).value,
    Fb1,
    Fb2: values.Fb.value,
    FcE1: euler[0]!,
    FcE2: euler[1]!,
    FbE: stable.criticalStress,
  };
  const found = compressionAndBending(input);
  return only(c, {
    ...input,
    Fc_adj: input.Fc,
    Fb_adj: Fb1,
    Fb1_adj: Fb1,
    Fb2_adj: input.Fb2,
    ratio: found.ratio,
    ratio_394: found.flat,
  });
}

function hankinsonCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted({ ...c, given: { ...g, b: 7.5, d: 7.5 } });
  const at = (angle: number) => hankinson(values.Fc.value, values["Fc-perp"].value, angle);
  if (Array.isArray(g.theta)) return { F_0: at(g.theta[0]), F_90: at(g.theta[1]) };
  if (g.slope === undefined) return { F_theta: at(g.theta) };
  const [rise, run] = g.slope.split(":").map(Number);
  const theta = 90 - (Math.atan2(rise, run) * 180) / Math.PI;
  return { theta, F_theta: at(theta), P_allow: at(theta) * area(g.b, g.lb) };
}

function netCase(c: Case): Numbers {
  const g = c.given;
  const values = adjusted(c);
  if (c.id === "mem-ten-002") {
    const net = area(g.b, g.d - g.cut - g.hole);
    return { area_net: net, Ft_adj: values.Ft.value, T_allow: net * values.Ft.value };
  }
  const net = area(g.b - g.mortise_width, g.d);
  return { area_net: net, fc_net: g.P / net, Fc_star: values.Fc.value, passes: g.P / net <= values.Fc.value };
}

function weightCase(c: Case): Numbers {
  const density = densityFromAssignedGravity(c.given.G, c.given.moisture_pct);
  return only(c, { density, plf: (density * area(c.given.b ?? 0, c.given.d ?? 0)) / 144 });
}

function rafterCase(c: Case): Numbers {
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

const RUN: Record<string, (c: Case) => Numbers> = {
  "mem-adj-": adjustCase,
  "mem-span-": continuousCase,
  "mem-bend-": bendingCase,
  "mem-shear-": shearCase,
  "mem-notch-": notchCase,
  "mem-cl-": stabilityCase,
  "mem-defl-": deflectionCase,
  "mem-bear-": bearingCase,
  "mem-col-": columnCase,
  "mem-comb-": combinedCase,
  "mem-hank-": hankinsonCase,
  "mem-net-": netCase,
  "mem-ten-": netCase,
  "mem-weight-": weightCase,
  "mem-emin-": (c) => ({ Emin: minimumModulus(c.given.E, c.given.COV) }),
  "mem-raft-": rafterCase,
};

describe("outside figures", () => {
  const cases = Object.entries(RUN).flatMap(([prefix, run]) =>
    casesOf(FILE, prefix).map((c) => [titleOf(c), c, run] as const),
  );
  it.each(cases)("%s", (_title, c, run) => check(c, run(c)));
  it("are all covered", () => {
    const all: Case[] = readReference(FILE).cases;
    expect(all.filter((c) => c.agrees).length).toBe(cases.length);
  });
});

describe("table of allowable column loads (published, half a percent)", () => {
  const rows = tableOf(FILE, "mem-p55").records;
  it.each(rows.map((r) => [r.row, r.size, r.le_ft, r] as const))(
    "row %s: %s, %s ft",
    (_row, _size, _feet, r) => {
      const found = columnStability(r.Fc_star, r.Emin, (r.le_ft * 12) / 3.5);
      const load = found.factor.value * r.Fc_star * area(3.5, r.size === "4x4" ? 3.5 : 5.5);
      expect(Math.abs(load - r.P_printed) / r.P_printed).toBeLessThanOrEqual(0.005);
      expect(Math.abs(load - r.P_calc)).toBeLessThanOrEqual(0.6);
    },
  );
});
