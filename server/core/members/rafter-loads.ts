/**
 * The load cases of a rafter, as line loads of the level projection: dead load alone, dead load with every snow case of
 * the roof plane, and with roof live load.
 */
import { onLevel } from "../loads/dead.ts";
import type { Snow, SnowCase, SnowCaseId } from "../loads/snow.ts";
import { type Pitch, unbalancedPitch } from "../loads/snow-factors.ts";
import type { Block } from "./beam.ts";

/** in from the seat, level, negative in the overhang; lb per ft of level run */
export interface PlanLoad {
  readonly from: number;
  readonly to: number;
  readonly plf: number;
}

export interface RafterLoadCase {
  readonly id: string;
  /** id in `asdCombinations` */
  readonly combination: "1" | "3-S" | "3-Lr";
  readonly snowCase: SnowCaseId | undefined;
  readonly dead: readonly PlanLoad[];
  /** snow or roof live load, already at the level that allowable stress takes (0.7 of a 7-22 snow) */
  readonly live: readonly PlanLoad[];
}

export interface LoadedRafter {
  readonly width: number;
  readonly depth: number;
  readonly span: number;
  readonly overhang: number;
  readonly pitch: Pitch;
  readonly spacing: number;
  readonly tributary?: number;
  readonly deadPsf: number;
  readonly density: number;
  readonly snow: Snow | undefined;
  readonly roofLivePsf: number;
}

/**
 * Snow covers span and overhang together: on gables between 1/2 and 7 on 12 ASCE 7 section 7.5 asks for no partial
 * loading; steeper, flatter, and for roof live load (section 4.3.3), the span alone is a case too, since an unloaded
 * overhang relieves nothing.
 */
export function loadCases(rafter: LoadedRafter): {
  readonly cases: readonly RafterLoadCase[];
  /** lb per ft of level run */
  readonly deadPlf: number;
} {
  const feet = (rafter.tributary ?? rafter.spacing) / 12;
  const own = (rafter.density * rafter.width * rafter.depth) / 144;
  const deadPlf = onLevel(rafter.deadPsf * feet + own, rafter.pitch);
  const dead = [{ from: -rafter.overhang, to: rafter.span, plf: deadPlf }];
  const partial = rafter.overhang > 0;
  const make = (
    id: string,
    combination: RafterLoadCase["combination"],
    snowCase: SnowCaseId | undefined,
    live: readonly PlanLoad[],
  ): RafterLoadCase => ({ id, combination, snowCase, dead, live: live.filter((load) => load.plf > 0) });
  const on = (from: number, to: number, psf: number): PlanLoad => ({ from, to, plf: psf * feet });
  const cases: RafterLoadCase[] = [make("1", "1", undefined, [])];
  const share = rafter.snow?.asdFactor.value ?? 1;
  for (const snow of rafter.snow?.cases ?? []) {
    const span = spanSnow(rafter, snow, share, on);
    const overhang = on(-rafter.overhang, 0, snow.overhang * share);
    cases.push(make(`3-S/${snow.id}`, "3-S", snow.id, [...span, overhang]));
    const alone = snow.id === "balanced" && partial && !unbalancedPitch(rafter.pitch);
    if (alone) cases.push(make(`3-S/${snow.id}/span-only`, "3-S", snow.id, span));
  }
  const live = on(0, rafter.span, rafter.roofLivePsf);
  if (rafter.roofLivePsf > 0) {
    cases.push(make("3-Lr", "3-Lr", undefined, [live, on(-rafter.overhang, 0, rafter.roofLivePsf)]));
    if (partial) cases.push(make("3-Lr/span-only", "3-Lr", undefined, [live]));
  }
  return { cases, deadPlf };
}

/**
 * A load of the level projection as a block square to the slope: w per level length is w cos² θ per sloped length, square
 * to it. @param slope sloped length per level length, 1/cos θ
 */
export function onSlope(load: PlanLoad, slope: number): Block {
  return { from: load.from * slope, to: load.to * slope, w: load.plf / 12 / slope ** 2 };
}

function spanSnow(
  rafter: LoadedRafter,
  snow: SnowCase,
  share: number,
  on: (from: number, to: number, psf: number) => PlanLoad,
): readonly PlanLoad[] {
  const base = on(0, rafter.span, snow.span * share);
  if (snow.drift === undefined) return [base];
  // The drift lies against the ridge, where the rafter's head is; past the plate it is cut off with the span.
  const from = Math.max(0, rafter.span - snow.drift.width * 12);
  return [base, on(from, rafter.span, snow.drift.psf * share)];
}
