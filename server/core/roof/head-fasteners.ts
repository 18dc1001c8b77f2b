/** What the screws or nails of a rafter's head hold in the ridge, against wind that draws it out of its housing or lifts it. */
import { type CombinedUse, combinedUse } from "../fasteners/combined.ts";
import {
  adjust,
  type FastenerMoisture,
  toeNail,
  wetLateral,
  wetWithdrawal,
} from "../fasteners/connection-factors.ts";
import type { WoodSide } from "../fasteners/lateral.ts";
import { nailLateral, nailWithdrawal, toeNailReach } from "../fasteners/nail.ts";
import { structuralScrew } from "../fasteners/structural-screw.ts";
import type { Joint } from "../joinery/joint.ts";
import type { Adjusted } from "../members/adjust.ts";
import { halfExtent } from "../model/box.ts";
import type { Factor, Sourced } from "../sourced.ts";
import { woodOf } from "../statics/timber-wood.ts";
import type { SizedFasteners } from "./sized-fasteners.ts";

export interface HeadHold {
  readonly fasteners: SizedFasteners;
  /** in, of the rafter along each, before it enters the ridge */
  readonly wood: number;
  /** in, of thread, or of the nail, in the ridge */
  readonly held: number;
  /** of one, lb for each inch that holds */
  readonly perInch: number;
  /** all of them, lb, with C_D, C_M and C_tn: along the fastener and across it */
  readonly withdrawal: Adjusted;
  readonly lateral: Adjusted;
}

/** Force that nothing but fasteners takes, lb: square out of the ridge's face, and plumb up; each 0 where the wood bears. */
export interface HeadForce {
  readonly pull: number;
  readonly lift: number;
}

/**
 * Wood that a screw passes in the rafter, in: it slants down at 45° from the rafter's top edge and crosses the ridge's face
 * at half the rafter's plumb depth, h. Going back along it the top edge has fallen by x tan θ where the screw has risen by
 * x: x = h ÷ (2 (1 + tan θ)), along the screw √2 x (plane geometry).
 */
export function woodBefore({ of }: Joint): number {
  const rise = Math.min(0.999, Math.abs(of.axis[2]));
  const cos = Math.sqrt(1 - rise ** 2);
  return (Math.SQRT2 * (of.depth / cos)) / 2 / (1 + rise / cos);
}

/** Wood of the ridge along such a screw, and where it would come out of it. */
export interface RidgeWood {
  /** in */
  readonly length: number;
  readonly exit: "face" | "underside";
}

/**
 * What a screw at 45° has in the ridge, in: to its far face, √2 × thickness, or to its underside, √2 × the height from where
 * it enters, whichever it reaches first. It enters at half the rafter's plumb depth, which is on the rafter's center line
 * (plane geometry). A ridge that ends above that point has none of it.
 */
export function ridgeWood({ face, into }: Joint): RidgeWood {
  const under = Math.max(0, face.origin[2] - (into.origin[2] - halfExtent(into, [0, 0, 1])));
  return under < face.thickness
    ? { length: Math.SQRT2 * under, exit: "underside" }
    : { length: Math.SQRT2 * face.thickness, exit: "face" };
}

/** Reference values of one, lb, and how much of it holds. @param across in, the ridge along a slanted screw */
function valuesOfOne(
  { kind, diameter, length }: SizedFasteners,
  ridge: number,
  rafter: number,
  wood: number,
  across: number,
): { readonly W: Sourced; readonly Z: Sourced; readonly perInch: number; readonly held: number } {
  const main = { kind: "wood", G: ridge, angle: 90 } as const;
  if (kind === "screws") {
    const side: WoodSide = { kind: "wood", G: rafter, angle: 90, thickness: wood };
    const { W, Z, withdrawal } = structuralScrew({ diameter, length, main, mainThickness: across, side });
    return { W, Z, perInch: withdrawal.perInch.value, held: withdrawal.length };
  }
  const toe = toeNailReach(length);
  const side: WoodSide = { kind: "wood", G: rafter, angle: 90, thickness: toe.side };
  const { reference, perInch, length: held } = nailWithdrawal(ridge, diameter, toe.reach);
  return {
    W: reference,
    perInch: perInch.value,
    Z: nailLateral({ diameter, length, main, side, reach: toe.reach }).reference,
    held,
  };
}

/**
 * Withdrawal and lateral values in the side grain of the ridge, NDS 12.2 and 12.3; every direction counts as across the
 * grain, the weaker one. Heads that pull through are left out, since the file does not size them.
 * @param duration C_D of the combination
 * @returns undefined without the woods' values
 */
export function headHold(joint: Joint, fasteners: SizedFasteners, duration: Factor): HeadHold | undefined {
  const [rafter, ridge] = [woodOf(joint.of), woodOf(joint.into)];
  if (!rafter || !ridge) return undefined;
  const { kind, count, diameter, length } = fasteners;
  const screws = kind === "screws";
  const wood = screws ? woodBefore(joint) : toeNailReach(length).side;
  const { W, Z, perInch, held } = valuesOfOne(
    fasteners,
    ridge.values.G.value,
    rafter.values.G.value,
    wood,
    ridgeWood(joint).length,
  );
  const moisture = (timber: Joint["of"]): FastenerMoisture => ({
    placed: timber.class?.seasoning ?? "green",
    service: "dry",
  });
  // they stand in one row along the ridge's grain, but side by side across the rafter's, which shrinks between them
  const wet = [
    wetLateral(moisture(joint.of), diameter, count),
    wetLateral(moisture(joint.into), diameter, 1),
  ];
  const worst = wet.reduce((least, factor) => (factor.value < least.value ? factor : least));
  const all = (one: Sourced): Sourced => ({
    ...one,
    value: count * one.value,
    source: `${count} × ${one.source}`,
  });
  const slanted = (of: "lateral" | "withdrawal"): Factor[] => (screws ? [] : [toeNail(of)]);
  return {
    fasteners,
    wood,
    held,
    perInch,
    withdrawal: adjust(all(W), [
      duration,
      wetWithdrawal(moisture(joint.into), screws ? "screw" : "nail"),
      ...slanted("withdrawal"),
    ]),
    lateral: adjust(all(Z), [duration, worst, ...slanted("lateral")]),
  };
}

/** What acts along and across the fasteners, lb: screws slant at 45°, toe-nails stand square. */
export function onFasteners(
  kind: SizedFasteners["kind"],
  { pull, lift }: HeadForce,
): { readonly outward: number; readonly sideways: number } {
  return kind === "screws"
    ? { outward: (pull + lift) / Math.SQRT2, sideways: (pull - lift) / Math.SQRT2 }
    : { outward: pull, sideways: lift };
}

/**
 * Both parts of the force together, NDS 12.4: screws at 45° take (pull + lift) ÷ √2 along themselves and
 * (pull − lift) ÷ √2 across; toe-nails take the pull in withdrawal and the lift across.
 */
export function headUse({ fasteners, withdrawal, lateral }: HeadHold, force: HeadForce): CombinedUse {
  const { outward, sideways } = onFasteners(fasteners.kind, force);
  const kind = fasteners.kind === "screws" ? "screw" : "nail";
  return combinedUse(kind, lateral.value, withdrawal.value, sideways, outward);
}
