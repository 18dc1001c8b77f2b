/** Adjusted design values of a timber in its frame, by load duration: with the stability factors of its lengths. */
import { type Adjusted, type AdjustedValues, adjustValues } from "../members/adjust.ts";
import { lateralStability } from "../members/bending.ts";
import { columnSlenderness, columnStability, eulerStress } from "../members/compression.ts";
import { repetitiveFactor } from "../members/factors.ts";
import { withColumnStability, withLateralStability } from "../members/stability.ts";
import type { Interval } from "../model/box.ts";
import { common } from "../model/box.ts";
import type { Model, Timber } from "../model/model.ts";
import { dot, type Vec3 } from "../model/vec.ts";
import type { Factor } from "../sourced.ts";
import type { TimberValues } from "../wood/stated-values.ts";
import type { TimberLengths } from "./effective-length.ts";
import { isWet } from "./timber-wood.ts";

/** Bending about one axis, by the sign of the moment: positive bends the side of +depth (or +z) into compression. */
export interface BendingValues {
  /** F_b* without C_L */
  readonly star: Adjusted;
  /** with C_L */
  readonly positive: Adjusted;
  readonly negative: Adjusted;
  /** F_bE; Infinity where it cannot buckle sideways */
  readonly criticalPositive: number;
  readonly criticalNegative: number;
}

/** The values alone, psi: axis 1 is the strong one. `plus` bends the side of +depth or +z into compression. */
export interface Limits {
  readonly Fb1: number;
  readonly plus1: number;
  readonly minus1: number;
  readonly criticalPlus: number;
  readonly criticalMinus: number;
  readonly Fb2: number;
  readonly plus2: number;
  readonly minus2: number;
  readonly Ft: number;
  readonly Fv: number;
  readonly Fc: number;
  readonly FcStar: number;
  readonly FcE1: number;
  readonly FcE2: number;
}

export interface DurationValues {
  readonly limits: Limits;
  readonly duration: Factor;
  /** about the axis square to the depth, and about the one square to the width */
  readonly z: BendingValues;
  readonly y: BendingValues;
  readonly Ft: Adjusted;
  readonly Fv: Adjusted;
  readonly FcPerp: Adjusted;
  /** F_c* without C_P, and F_c′ with it */
  readonly FcStar: Adjusted;
  readonly Fc: Adjusted;
  readonly E: Adjusted;
}

export interface Slenderness {
  /** l_e/d in the plane of the depth, and of the width */
  readonly z: number;
  readonly y: number;
}

/** A curved brace buckles with what is left at its middle. */
export function slendernessOf(timber: Timber, lengths: TimberLengths): Slenderness {
  const deep = Math.max(timber.depth - (timber.curve?.rise ?? 0), 1e-3);
  return {
    z: columnSlenderness(lengths.depth.effective, deep),
    y: columnSlenderness(lengths.width.effective, timber.width),
  };
}

/** Tops within this lie under the same boards, in (common practice). */
const LEVEL = 1 / 4;

/** Where a timber begins and ends along an axis, in. */
function reachAlong(timber: Timber, axis: Vec3): Interval {
  const a = dot(timber.origin, axis);
  const b = a + timber.span * dot(timber.axis, axis);
  return [Math.min(a, b), Math.max(a, b)];
}

/**
 * Timbers of a row that lie side by side with one of them under the same deck, itself among them: those of the next bay or
 * of another level share no load with it. Beside it for more than half of its length is side by side.
 */
function abreast(timber: Timber, row: readonly Timber[]): readonly Timber[] {
  const { axis, depthDir, origin, depth, span } = timber;
  const own = reachAlong(timber, axis);
  const top = dot(origin, depthDir) + depth / 2;
  return row.filter(
    (t) =>
      Math.abs(dot(t.axis, axis)) > 0.98 &&
      dot(t.depthDir, depthDir) > 0.98 &&
      Math.abs(dot(t.origin, depthDir) + t.depth / 2 - top) <= LEVEL &&
      common(reachAlong(t, axis), own) > span / 2,
  );
}

/** Largest distance between neighbors of a row of parallel sticks, in. */
function spacingOf(row: readonly Timber[]): number {
  const [first] = row;
  if (!first) return Number.POSITIVE_INFINITY;
  const at = row.map((t) => dot(t.origin, first.widthDir)).sort((a, b) => a - b);
  return Math.max(0, ...at.slice(1).map((v, i) => v - (at[i] ?? v)));
}

/**
 * C_r of rafters under a deck, of decked purlins, and of joists under a floor; undefined for all others. A floor without
 * a named deck gives none: nobody knows that its boards share the load.
 */
export function repetitiveOf(
  model: Model,
  timber: Timber,
  wood: TimberValues,
  decked: boolean,
): Factor | undefined {
  const { sizeClass } = wood;
  const slope = model.roof?.slopes.find((s) => s.rafters.includes(timber));
  if (slope)
    return repetitiveFactor({
      sizeClass,
      count: slope.rafters.length,
      spacing: slope.spacing,
      loadSharingDeck: decked,
    });
  const floored = model.frame.floors.some((f) => f.on?.text === timber.member);
  if (!floored && !decked) return undefined;
  const row = abreast(timber, model.sticks.get(timber.member) ?? []);
  return repetitiveFactor({
    sizeClass,
    count: row.length,
    spacing: spacingOf(row),
    loadSharingDeck: decked,
  });
}

/** Bending about the strong axis may buckle sideways; about the weak one it cannot (NDS 3.3.3.1). */
function bendingValues(
  values: AdjustedValues,
  breadth: number,
  depth: number,
  unbraced: readonly [number, number],
): BendingValues {
  const [positive, negative] = unbraced.map((length) =>
    lateralStability(values.Fb.value, values["E-min"].value, breadth, depth, length, "other"),
  );
  return {
    star: values.Fb,
    positive: positive ? withLateralStability(values.Fb, positive, values["E-min"]) : values.Fb,
    negative: negative ? withLateralStability(values.Fb, negative, values["E-min"]) : values.Fb,
    criticalPositive: positive?.criticalStress ?? Number.POSITIVE_INFINITY,
    criticalNegative: negative?.criticalStress ?? Number.POSITIVE_INFINITY,
  };
}

/** @returns values of a timber under one load duration; both bendings with the size and flat use of their own direction */
export function durationValues(
  timber: Timber,
  wood: TimberValues,
  lengths: TimberLengths,
  duration: Factor,
  repetitive: Factor | undefined,
): DurationValues {
  const { width, depth } = timber;
  const conditions = { grade: wood.grade, duration, wet: isWet(timber) };
  const section = { sizeClass: wood.sizeClass, group: wood.group };
  const upright = adjustValues(wood.values, {
    ...conditions,
    section: { ...section, breadth: width, depth },
    ...(repetitive && depth >= width ? { repetitive } : {}),
  });
  const flat = adjustValues(wood.values, {
    ...conditions,
    section: { ...section, breadth: depth, depth: width },
    ...(repetitive && width > depth ? { repetitive } : {}),
  });
  const { unbraced, decked } = lengths;
  const upper = decked ? 0 : unbraced;
  const upwards = timber.depthDir[2] >= 0;
  const slender = slendernessOf(timber, lengths);
  const FcEz = eulerStress(upright["E-min"].value, slender.z);
  const FcEy = eulerStress(flat["E-min"].value, slender.y);
  // the plane in which it buckles first; sideways a beam or stringer bends flat, with the lesser modulus of that
  const [Emin, slenderest] = FcEz < FcEy ? [upright["E-min"], slender.z] : [flat["E-min"], slender.y];
  const column = columnStability(upright.Fc.value, Emin.value, slenderest);
  const z = bendingValues(upright, width, depth, upwards ? [upper, unbraced] : [unbraced, upper]);
  const y = bendingValues(flat, depth, width, [unbraced, unbraced]);
  const Fc = withColumnStability(upright.Fc, column, Emin);
  const strongZ = depth >= width;
  const [one, two] = strongZ ? [z, y] : [y, z];
  return {
    limits: {
      Fb1: one.star.value,
      plus1: one.positive.value,
      minus1: one.negative.value,
      criticalPlus: one.criticalPositive,
      criticalMinus: one.criticalNegative,
      Fb2: two.star.value,
      plus2: two.positive.value,
      minus2: two.negative.value,
      Ft: upright.Ft.value,
      Fv: upright.Fv.value,
      Fc: Fc.value,
      FcStar: upright.Fc.value,
      FcE1: strongZ ? FcEz : FcEy,
      FcE2: strongZ ? FcEy : FcEz,
    },
    duration,
    z,
    y,
    Ft: upright.Ft,
    Fv: upright.Fv,
    FcPerp: upright["Fc-perp"],
    FcStar: upright.Fc,
    Fc,
    E: upright.E,
  };
}
