/** Adjusted values of the cases of members.yaml, and their figures: factors, weights. */
import { expect } from "vitest";
import { durationFactor, type LoadKind } from "../../../server/core/loads/combinations.ts";
import { type AdjustedValues, adjustValues } from "../../../server/core/members/adjust.ts";
import { repetitiveFactor } from "../../../server/core/members/factors.ts";
import { area, sectionModulus } from "../../../server/core/members/section.ts";
import { given } from "../../../server/core/sourced.ts";
import { densityFromAssignedGravity } from "../../../server/core/wood/moisture.ts";
import { sizeClass } from "../../../server/core/wood/size-class.ts";
import type { GradeId, SizeClass } from "../../../server/core/wood/types.ts";
import type { Case } from "../../reference/cases.ts";

export type Numbers = Record<string, unknown>;

/** Values of a case with every factor that our own rules give; where the case gives a factor, both must agree. */
export function adjusted(c: Case, duration?: number): AdjustedValues {
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

export function only(c: Case, got: Numbers): Numbers {
  return Object.fromEntries(Object.entries(got).filter(([key]) => key in c.expect));
}

export function adjustCase(c: Case): Numbers {
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

export function weightCase(c: Case): Numbers {
  const density = densityFromAssignedGravity(c.given.G, c.given.moisture_pct);
  return only(c, { density, plf: (density * area(c.given.b ?? 0, c.given.d ?? 0)) / 144 });
}
