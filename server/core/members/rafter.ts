/**
 * A rafter over a plate, bearing on it at a bird's mouth and on the ridge at its head, under dead load, every snow case
 * of its roof plane, and roof live load.
 *
 * Statics. Loads are vertical, and both supports hold it up vertically: the plate's seat slides level, the ridge carries
 * its simple-beam share. A vertical load of w per level inch is w cos θ per inch along the slope, of which w cos² θ acts
 * square to the rafter. So the check runs along the slope (span L/cos θ) under w cos² θ:
 *   moment = w L²/8, the same as that of the level projection; shear = (w L/2) cos θ; deflection is square to the slope
 *   and is held against the sloped span.
 * The part along the slope (w cos θ sin θ, compression below, tension above mid-span) is small beside bending and left
 * to the frame analysis. The thrust of a frame whose ridge gives way is not part of this model either.
 *
 * Over the seat the depth is what the bird's mouth leaves. The overhang hangs on that section: its moment (tension on top,
 * net section modulus) and its whole shear are checked there. Between plate and ridge the rafter bears on its lower edge,
 * so that load within its depth of a support is left out of the shear (NDS 3.4.3.1(a)); the notch ends over the plate.
 */
import { asdCombinations, type Combination } from "../loads/combinations.ts";
import type { Snow, SnowCaseId } from "../loads/snow.ts";
import type { Edition, Pitch } from "../loads/snow-factors.ts";
import type { Factor } from "../sourced.ts";
import type { NoValues } from "../wood/design-values.ts";
import { type TimberValues, timberValues } from "../wood/stated-values.ts";
import type { DesignValueKey } from "../wood/types.ts";
import { type Adjusted, type AdjustedValues, adjustValues } from "./adjust.ts";
import { type BeamLoads, beam, loadsForShear, spanDeflection } from "./beam.ts";
import { bendingStress, lateralStability } from "./bending.ts";
import { creepFactor, type DeflectionLimits, totalDeflection } from "./deflection.ts";
import { repetitiveFactor } from "./factors.ts";
import { loadCases, onSlope, type PlanLoad, type RafterLoadCase } from "./rafter-loads.ts";
import { momentOfInertia, sectionModulus } from "./section.ts";
import { type EndNotch, endNotch, shearStress } from "./shear.ts";
import { withLateralStability } from "./stability.ts";
import {
  type CheckKind,
  deflectionUse,
  longestPassing,
  stressUse,
  type Utilisation,
  worst,
} from "./utilisation.ts";

export interface RafterInput {
  /** in, actual; depth square to the slope */
  readonly width: number;
  readonly depth: number;
  readonly species: string;
  /** undefined = No.2 */
  readonly grade: string | undefined;
  /** green: wet-service factors and creep 2.0, since it is loaded before it has dried */
  readonly seasoning: "green" | "dry";
  /** psi that the file states itself */
  readonly own: ReadonlyMap<DesignValueKey, number>;
  readonly because: string | undefined;
  /** in, level, from the seat's bearing to the head's */
  readonly span: number;
  /** in, level, from the seat to the tip; 0 = none */
  readonly overhang: number;
  readonly pitch: Pitch;
  /** in, center to center */
  readonly spacing: number;
  /** in, width of roof that it carries; undefined = the spacing */
  readonly tributary?: number;
  /** rafters in the row */
  readonly count: number;
  /** boards or panels fastened to every rafter */
  readonly loadSharingDeck: boolean;
  /** the top edge is held sideways by the deck */
  readonly topHeld: boolean;
  /** psf of the sloped surface, without the rafter itself */
  readonly deadPsf: number;
  /** lb/ft³ of the rafter */
  readonly density: number;
  readonly edition: Edition;
  /** undefined = no snow at the site */
  readonly snow: Snow | undefined;
  /** L_r, psf of level projection */
  readonly roofLivePsf: number;
  /** in, square to the slope: what the bird's mouth takes from the depth */
  readonly notch: number;
  readonly limits: DeflectionLimits;
}

export interface RafterUse extends Utilisation {
  /** id of the combination below that it belongs to */
  readonly combination: string;
}

export interface RafterCombination {
  /** `3-S/balanced`, `3-Lr/span-only` */
  readonly id: string;
  /** `D + S` */
  readonly combination: Combination;
  readonly snowCase: SnowCaseId | undefined;
  /** lb, vertical, at the seat and at the head */
  readonly reactions: readonly [number, number];
  readonly uses: readonly RafterUse[];
}

export interface RafterCheck {
  readonly kind: "checked";
  readonly wood: TimberValues;
  readonly repetitive: Factor;
  readonly creep: Factor;
  readonly notch: EndNotch;
  /** lb per ft of level run */
  readonly deadPlf: number;
  readonly combinations: readonly RafterCombination[];
  /** the worst of each kind of check */
  readonly worst: readonly RafterUse[];
  readonly governing: RafterUse;
}

/** @returns every combination checked, or why there are no design values. A span under 1 in counts as 1 in. */
export function checkRafter(input: RafterInput): RafterCheck | NoValues {
  const wood = timberValues(input);
  if (wood.kind === "none") return wood;
  return check({ ...input, span: Math.max(input.span || 1, 1) }, wood);
}

/** in */
const SHORTEST = 12;
const FURTHEST = 600;

/**
 * How far this section could go: the longest level span that passes every check with the same overhang and loads. The
 * snow is kept as it is, although a wider roof changes its drift.
 * @returns in, at most 50 ft; undefined where no span passes or there are no values
 */
export function longestRafterSpan(input: RafterInput): number | undefined {
  const wood = timberValues(input);
  if (wood.kind === "none") return undefined;
  const shortest = Math.max(SHORTEST, 2 * input.overhang);
  return longestPassing((span) => check({ ...input, span }, wood).governing.ratio, shortest, FURTHEST);
}

function check(input: RafterInput, wood: TimberValues): RafterCheck {
  const creep = creepFactor(input.seasoning);
  const repetitive = repetitiveFactor({
    sizeClass: wood.sizeClass,
    count: input.count,
    spacing: input.spacing,
    loadSharingDeck: input.loadSharingDeck,
  });
  const table = new Map(asdCombinations(input.edition).map((c) => [c.id, c]));
  const { cases, deadPlf } = loadCases(input);
  const combinations = cases.flatMap((loadCase) => {
    const combination = table.get(loadCase.combination);
    return combination ? [one(input, wood, loadCase, combination, repetitive, creep)] : [];
  });
  const all = combinations.flatMap((c) => c.uses);
  const kinds = [...new Set(all.map((use) => use.what))];
  const worstOf = kinds.flatMap((what) => worst(all.filter((use) => use.what === what)) ?? []);
  return {
    kind: "checked",
    wood,
    repetitive,
    creep,
    notch: endNotch(input.depth, input.depth - input.notch),
    deadPlf,
    combinations,
    worst: worstOf,
    governing: worst(worstOf) ?? NOTHING,
  };
}

/** Never met: dead load is always a combination. */
const NOTHING: RafterUse = {
  what: "bending",
  value: 0,
  limit: 1,
  unit: "psi",
  ratio: 0,
  factors: [],
  combination: "1",
};

function one(
  input: RafterInput,
  wood: TimberValues,
  loadCase: RafterLoadCase,
  combination: Combination,
  repetitive: Factor,
  creep: Factor,
): RafterCombination {
  const values = adjustValues(wood.values, {
    section: { sizeClass: wood.sizeClass, group: wood.group, breadth: input.width, depth: input.depth },
    grade: wood.grade,
    duration: combination.duration,
    wet: input.seasoning === "green",
    repetitive,
  });
  const slope = Math.hypot(input.pitch.rise, input.pitch.run) / input.pitch.run;
  const dead = slopeBeam(input, loadCase.dead, slope);
  const live = slopeBeam(input, loadCase.live, slope);
  const both: BeamLoads = { ...dead, blocks: [...dead.blocks, ...live.blocks] };
  const [seat, head] = beam(both).reactions;
  const uses = [...stresses(input, values, both), ...deflections(input, values, dead, live, creep)];
  return {
    id: loadCase.id,
    combination,
    snowCase: loadCase.snowCase,
    reactions: [seat * slope, head * slope],
    uses: uses.map((use) => ({ ...use, combination: loadCase.id })),
  };
}

function slopeBeam(input: RafterInput, loads: readonly PlanLoad[], slope: number): BeamLoads {
  return {
    span: input.span * slope,
    overhang: input.overhang * slope,
    blocks: loads.map((load) => onSlope(load, slope)),
    points: [],
  };
}

function stresses(input: RafterInput, values: AdjustedValues, loads: BeamLoads): readonly Utilisation[] {
  const { width, depth } = input;
  const left = Math.max(depth - input.notch, 0);
  const whole = beam(loads);
  const stable = (length: number, deep: number, loading: "uniform" | "cantilever-uniform") => {
    const L = lateralStability(values.Fb.value, values["E-min"].value, width, deep, length, loading);
    return withLateralStability(values.Fb, L, values["E-min"]);
  };
  const bent = (what: CheckKind, moment: number, deep: number, allowed: Adjusted): Utilisation =>
    stressUse(what, bendingStress(moment, width, deep), allowed, {
      kind: "bending",
      moment: Math.abs(moment),
      modulus: sectionModulus(width, deep),
    });
  const sheared = (what: CheckKind, shear: number, deep: number): Utilisation =>
    stressUse(what, shearStress(shear, width, deep), values.Fv, {
      kind: "shear",
      shear: Math.abs(shear),
      breadth: width,
      depth: deep,
    });
  const span: readonly Utilisation[] = [
    bent("bending", whole.sagging.moment, depth, stable(input.topHeld ? 0 : loads.span, depth, "uniform")),
    sheared("shear", beam(loadsForShear(loads, depth)).shear, depth),
  ];
  if (loads.overhang <= 0) return span;
  const atSeat = 0 - whole.momentAt(0);
  return [
    ...span,
    bent("bending-at-seat", atSeat, left, stable(loads.overhang, left, "cantilever-uniform")),
    sheared("shear-at-seat", whole.overhangShear, left),
  ];
}

/** The overhang may move twice its length over the divisor (IBC Table 1604.3 note for cantilevers, memory). */
function deflections(
  input: RafterInput,
  values: AdjustedValues,
  dead: BeamLoads,
  live: BeamLoads,
  creep: Factor,
): readonly Utilisation[] {
  const EI = values.E.value * momentOfInertia(input.width, input.depth);
  const lines = { dead: beam(dead), live: beam(live) };
  const { factors } = values.E;
  const uses: Utilisation[] = [];
  const add = (part: "" | "tip-", length: number, permanent: number, variable: number) => {
    const total = totalDeflection(creep.value, permanent, variable);
    const { live: liveLimit, total: totalLimit } = input.limits;
    if (liveLimit !== undefined && live.blocks.length > 0) {
      uses.push({
        ...deflectionUse(`${part}live-deflection`, Math.max(0, variable), length, liveLimit, factors),
        terms: { kind: "deflection", permanent: 0, variable, length, divisor: liveLimit },
      });
    }
    if (totalLimit !== undefined) {
      const made = [...factors, creep];
      uses.push({
        ...deflectionUse(`${part}total-deflection`, Math.max(0, total), length, totalLimit, made),
        terms: { kind: "deflection", permanent, variable, length, divisor: totalLimit },
      });
    }
  };
  add("", dead.span, spanDeflection(lines.dead, dead.span, EI), spanDeflection(lines.live, live.span, EI));
  if (dead.overhang > 0) {
    const tip = -dead.overhang;
    add("tip-", 2 * dead.overhang, lines.dead.deflectionAt(tip, EI), lines.live.deflectionAt(tip, EI));
  }
  return uses;
}
