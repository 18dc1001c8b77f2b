/**
 * A joist, beam or purlin on two supports under uniform load: bending, shear, deflection, and how far it could span.
 */
import type { DesignValues } from "../wood/types.ts";
import { type Adjusted, adjustValues, type Conditions, withFactor } from "./adjust.ts";
import { beam, loadsForShear, spanDeflection, uniform } from "./beam.ts";
import { bendingStress, lateralStability } from "./bending.ts";
import { creepFactor, type DeflectionLimits, totalDeflection } from "./deflection.ts";
import { momentOfInertia } from "./section.ts";
import { shearStress } from "./shear.ts";
import { deflectionUse, longestPassing, stressUse, type Utilisation, worst } from "./utilisation.ts";

export interface SimpleSpanInput {
  /** reference values, psi */
  readonly values: DesignValues;
  /** section (in), size, moisture, duration and repetition; `section.depth` is in the direction of bending */
  readonly conditions: Conditions;
  /** lb per ft of span */
  readonly deadPlf: number;
  readonly livePlf: number;
  /** in, between the faces of the supports plus half the bearing needed at each end (NDS 3.2.1) */
  readonly span: number;
  /** in, along the edge in compression; 0 = held throughout by a deck */
  readonly unbraced: number;
  readonly seasoning: "green" | "dry";
  readonly limits: DeflectionLimits;
}

interface SimpleSpanCheck {
  readonly uses: readonly Utilisation[];
  readonly governing: Utilisation;
}

/** Loads within the depth of a support are left out of the shear (NDS 3.4.3.1(a)). */
export function checkSimpleSpan(input: SimpleSpanInput): SimpleSpanCheck {
  const { values, conditions, deadPlf, livePlf, span, unbraced, limits } = input;
  const { breadth, depth } = conditions.section;
  const adjusted = adjustValues(values, conditions);
  const under = (plf: number) => ({ span, overhang: 0, blocks: [uniform(0, span, plf)], points: [] });
  const all = under(deadPlf + livePlf);
  const bending = withStability(adjusted.Fb, adjusted["E-min"].value, breadth, depth, unbraced);
  const uses: Utilisation[] = [
    stressUse("bending", bendingStress(beam(all).sagging.moment, breadth, depth), bending),
    stressUse("shear", shearStress(beam(loadsForShear(all, depth)).shear, breadth, depth), adjusted.Fv),
  ];
  const EI = adjusted.E.value * momentOfInertia(breadth, depth);
  const live = spanDeflection(beam(under(livePlf)), span, EI);
  if (limits.live !== undefined) {
    uses.push(deflectionUse("live-deflection", live, span, limits.live, adjusted.E.factors));
  }
  if (limits.total !== undefined) {
    const creep = creepFactor(input.seasoning);
    const total = totalDeflection(creep.value, spanDeflection(beam(under(deadPlf)), span, EI), live);
    uses.push(deflectionUse("total-deflection", total, span, limits.total, [...adjusted.E.factors, creep]));
  }
  const [first = stressUse("bending", 0, bending)] = uses;
  return { uses, governing: worst(uses) ?? first };
}

/** in; no timber of a small frame goes further */
const FURTHEST = 1200;

/** @returns in, the longest span that passes every check, at most 100 ft; undefined where even 1 ft fails */
export function longestSpan(input: Omit<SimpleSpanInput, "span">): number | undefined {
  return longestPassing((span) => checkSimpleSpan({ ...input, span }).governing.ratio, 12, FURTHEST);
}

/**
 * F_b′ with C_L. Where the beam is too slender (R_B over 50) nothing is allowed.
 */
function withStability(
  Fb: Adjusted,
  Emin: number,
  breadth: number,
  depth: number,
  unbraced: number,
): Adjusted {
  const stability = lateralStability(Fb.value, Emin, breadth, depth, unbraced, "uniform");
  return withFactor(
    Fb,
    stability.allowed ? stability.factor : { ...stability.factor, value: 0, note: "R_B over 50" },
  );
}
