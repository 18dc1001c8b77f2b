/**
 * A board, purlin or joist under uniform load, and under one that lies on its middle: bending, shear, deflection, and how far
 * it could span. Moment and deflection are those of a simple span, which are on the safe side where it runs on: over two
 * equal spans uniform load bends it as much over the inner support as here in the span (w L²/8), over more of them less, and
 * a load on the middle bends it less everywhere. The shear beside an inner support is more than that of a simple span, so
 * what runs on is judged there: `innerShear`.
 */
import type { DesignValues } from "../wood/types.ts";
import { adjustValues, type Conditions } from "./adjust.ts";
import { type BeamLoads, beam, loadsForShear, spanDeflection, uniform } from "./beam.ts";
import { bendingStress, lateralStability } from "./bending.ts";
import { creepFactor, type DeflectionLimits, totalDeflection } from "./deflection.ts";
import { momentOfInertia, sectionModulus } from "./section.ts";
import { shearStress } from "./shear.ts";
import { withLateralStability } from "./stability.ts";
import { deflectionUse, longestPassing, stressUse, type Utilisation, worst } from "./utilisation.ts";

export interface SimpleSpanInput {
  /** reference values, psi */
  readonly values: DesignValues;
  /** section (in), size, moisture, duration and repetition; `section.depth` is in the direction of bending */
  readonly conditions: Conditions;
  /** lb per ft of span */
  readonly deadPlf: number;
  readonly livePlf: number;
  /** on the middle of the span as far as it reaches: lb in all, over so many in */
  readonly patch?: { readonly load: number; readonly length: number };
  /** in, between the faces of the supports plus half the bearing needed at each end (NDS 3.2.1) */
  readonly span: number;
  /** in, along the edge in compression; 0 = held throughout by a deck */
  readonly unbraced: number;
  /** it goes on over a further support, as far again; undefined = it ends on both */
  readonly runsOn?: true;
  readonly seasoning: "green" | "dry";
  readonly limits: DeflectionLimits;
}

interface SimpleSpanCheck {
  readonly uses: readonly Utilisation[];
  readonly governing: Utilisation;
}

/** What of a load on the middle lies between the supports, as a block. */
function patchOn(span: number, patch: SimpleSpanInput["patch"]): BeamLoads["blocks"] {
  if (!patch || !(patch.length > 0)) return [];
  const half = Math.min(patch.length, span) / 2;
  return [{ from: span / 2 - half, to: span / 2 + half, w: patch.load / patch.length }];
}

/**
 * What a second span of the same length adds to the shear of a simple span, beside the support between them: the moment over
 * that support ÷ the span. Of uniform load on both spans M = w L²/8, so that V = 5/8 w L (beam diagrams of AISC Manual Table
 * 3-23 and AWC DA6, two equal spans; memory); three spans and more, and load on one of the two, give less. Of a load on the
 * middle of one span M = 3 A/(4 L), with A the area of its moments on a simple span, P/2 × (L²/4 − c²/12) over a length c (three
 * moments, derived): 3 P L/32 of a single load, as in the diagrams.
 * @returns lb
 */
function innerShear(plf: number, span: number, patch: SimpleSpanInput["patch"]): number {
  const uniformly = ((plf / 12) * span) / 8;
  const [block] = patchOn(span, patch);
  if (!block) return uniformly;
  const long = block.to - block.from;
  const area = ((block.w * long) / 2) * (span ** 2 / 4 - long ** 2 / 12);
  return uniformly + (3 * area) / (4 * span ** 2);
}

/** Loads within the depth of a support are left out of the shear (NDS 3.4.3.1(a)). */
export function checkSimpleSpan(input: SimpleSpanInput): SimpleSpanCheck {
  const { values, conditions, deadPlf, livePlf, span, unbraced, limits } = input;
  const { breadth, depth } = conditions.section;
  const adjusted = adjustValues(values, conditions);
  const under = (plf: number, patch?: SimpleSpanInput["patch"]): BeamLoads => ({
    span,
    overhang: 0,
    blocks: [uniform(0, span, plf), ...patchOn(span, patch)],
    points: [],
  });
  const all = under(deadPlf + livePlf, input.patch);
  const bending = withLateralStability(
    adjusted.Fb,
    lateralStability(adjusted.Fb.value, adjusted["E-min"].value, breadth, depth, unbraced, "uniform"),
    adjusted["E-min"],
  );
  const { moment } = beam(all).sagging;
  const inner = input.runsOn ? innerShear(deadPlf + livePlf, span, input.patch) : 0;
  const shear = beam(loadsForShear(all, depth)).shear + inner;
  const uses: Utilisation[] = [
    stressUse("bending", bendingStress(moment, breadth, depth), bending, {
      kind: "bending",
      moment,
      modulus: sectionModulus(breadth, depth),
    }),
    stressUse("shear", shearStress(shear, breadth, depth), adjusted.Fv, {
      kind: "shear",
      shear,
      inner,
      breadth,
      depth,
    }),
  ];
  const EI = adjusted.E.value * momentOfInertia(breadth, depth);
  const variable = spanDeflection(beam(under(livePlf, input.patch)), span, EI);
  const bends = (permanent: number, divisor: number) =>
    ({ kind: "deflection", permanent, variable, length: span, divisor }) as const;
  if (limits.live !== undefined) {
    const use = deflectionUse("live-deflection", variable, span, limits.live, adjusted.E.factors);
    uses.push({ ...use, terms: bends(0, limits.live) });
  }
  if (limits.total !== undefined) {
    const creep = creepFactor(input.seasoning);
    const permanent = spanDeflection(beam(under(deadPlf)), span, EI);
    const total = totalDeflection(creep.value, permanent, variable);
    const factors = [...adjusted.E.factors, creep];
    const use = deflectionUse("total-deflection", total, span, limits.total, factors);
    uses.push({ ...use, terms: bends(permanent, limits.total) });
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
