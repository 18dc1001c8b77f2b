/** What the screws at the end of a brace hold: along its timber's face, and out of it. */
import { type CombinedUse, combinedUse } from "../fasteners/combined.ts";
import { adjust, type FastenerMoisture, wetLateral, wetWithdrawal } from "../fasteners/connection-factors.ts";
import { structuralScrew } from "../fasteners/structural-screw.ts";
import type { Adjusted } from "../members/adjust.ts";
import type { Factor, Sourced } from "../sourced.ts";
import { woodOf } from "../statics/timber-wood.ts";
import type { Joint } from "./joint.ts";

export interface ScrewHold {
  /** all of them, lb, with C_D and C_M: along the grain of the receiving timber, and square out of its face */
  readonly lateral: Adjusted;
  readonly withdrawal: Adjusted;
  /** in, of thread that holds in the receiving timber, of the one that has the least */
  readonly held: number;
  /** of one: lb for each inch of thread, and the inches of each */
  readonly perInch: number;
  readonly threads: readonly number[];
  /** Z of each before any factor, lb */
  readonly each: readonly number[];
}

/** What only screws carry at the end of a brace, lb; each 0 where wood bears instead. */
export interface ScrewForce {
  readonly pull: number;
  readonly along: number;
}

/** Load/slip modulus of one, lb/in: 180,000 D^1.5, wood to wood (NDS 11.3.6; memory). */
const slipModulus = (diameter: number): number => 180_000 * diameter ** 1.5;

/** The sum of what each holds: they differ by the wood under their heads. */
function sum(all: readonly Sourced[]): Sourced {
  const [first] = all;
  return {
    value: all.reduce((total, one) => total + one.value, 0),
    status: first?.status ?? "uncertain",
    source: `${all.length} × ${first?.source ?? ""}`,
  };
}

/**
 * NDS 12.2 and 12.3 of each screw, square into side grain: the load along the face acts along the grain of the receiving
 * timber, and at the brace's angle in the brace. A head that pulls through is left out, since the file does not size it;
 * end and edge distances are not judged.
 * @param duration C_D of the combination
 * @returns undefined without screws or without the woods' values
 */
export function screwHold(joint: Joint, duration: Factor): ScrewHold | undefined {
  const { screws } = joint.sizes;
  const [own, other] = [woodOf(joint.of), woodOf(joint.into)];
  if (!screws || !own || !other) return undefined;
  const { diameter, length, wood, columns, angle, count } = screws;
  const each = wood.map((thickness) =>
    structuralScrew({
      diameter: diameter.value,
      length: length.value,
      main: { kind: "wood", G: other.values.G.value, angle: 0 },
      side: { kind: "wood", G: own.values.G.value, angle, thickness },
    }),
  );
  const moisture = (timber: Joint["of"]): FastenerMoisture => ({
    placed: timber.class?.seasoning ?? "green",
    service: "dry",
  });
  // in the brace, which they pass at a slant, no two stand in one row along the grain
  const wet = [
    wetLateral(moisture(joint.of), diameter.value, count),
    wetLateral(moisture(joint.into), diameter.value, columns),
  ];
  const worst = wet.reduce((least, factor) => (factor.value < least.value ? factor : least));
  return {
    lateral: adjust(sum(each.map(({ Z }) => Z)), [duration, worst]),
    withdrawal: adjust(sum(each.map(({ W }) => W)), [duration, wetWithdrawal(moisture(joint.into), "screw")]),
    held: Math.min(...each.map(({ withdrawal }) => withdrawal.length)),
    perInch: each[0]?.withdrawal.perInch.value ?? 0,
    threads: each.map(({ withdrawal }) => withdrawal.length),
    each: each.map(({ Z }) => Z.value),
  };
}

/** Pull and push along the face together, NDS 12.4-1. */
export function screwUse({ lateral, withdrawal }: ScrewHold, { pull, along }: ScrewForce): CombinedUse {
  return combinedUse("screw", lateral.value, withdrawal.value, along, pull);
}

/**
 * How stiffly the screws hold the brace along its length, lb/in: they slip along the face by F cos θ ÷ n γ, of which the
 * brace sees cos θ (statics, derived); square to the face wood bears or threads hold, both taken as stiff.
 */
export function screwStiffness({ sizes: { screws } }: Joint): number | undefined {
  if (!screws) return undefined;
  const cos = Math.cos((screws.angle * Math.PI) / 180);
  return cos < 0.1 ? undefined : (screws.count * slipModulus(screws.diameter.value)) / cos ** 2;
}
