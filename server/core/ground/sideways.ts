/**
 * What holds a pier of the frame when its post pushes it sideways: a tube the soil beside it, as a pole that nothing holds at
 * the ground (IBC 1807.3.2.1; figures remembered); a pad, which hardly stands in the ground, only what rubs under it
 * (IBC 1806.3 and Table 1806.2; the limit for clay remembered).
 */
import type { Pier } from "../model/model.ts";
import type { PierCase } from "../statics/frame-results.ts";
import { freeCapacity, freeDepth, type SidewaysLoad } from "./embedded-pole.ts";
import { baseArea, shaftWeight, tiesFooting } from "./pier-concrete.ts";
import { SOILS, type SoilValues } from "./soil.ts";

interface Pushed {
  readonly pier: Pier;
  readonly soil: SoilValues;
  /** lb, at the pier's top */
  readonly push: number;
  readonly caseId: string;
  /** what the tabled values hold, lb */
  readonly single: number;
  /** what counts for this pier and this load, lb */
  readonly holds: number;
  /** push ÷ holds */
  readonly ratio: number;
}

export interface PoleUse extends Pushed {
  readonly kind: "pole";
  /** wind takes part: only what pushes for moments may count on the doubled value */
  readonly short: boolean;
  /** inches */
  readonly height: number;
  readonly depth: number;
}

export interface PadUse extends Pushed {
  readonly kind: "pad";
  /** what presses the pad on the soil, lb: dead load and the pad, less what wind lifts */
  readonly load: number;
  /** ft² */
  readonly area: number;
}

export type SidewaysUse = PoleUse | PadUse;

/** Of the pier's top above the lowest ground beside it, inches. */
const heightOf = ({ top, groundLow }: Pier): number => Math.max(0, top[2] - groundLow);

/** Down to the tube's bottom, or to that of a footing that bars tie on, which counts as no wider than the tube; inches. */
function poleDepth(pier: Pier): number {
  return Math.max(0, pier.groundLow - (tiesFooting(pier) ? pier.bottom : pier.tubeBottom));
}

function poleOf(pier: Pier, soil: SoilValues, factor: 1 | 2): Omit<SidewaysLoad, "load"> {
  return { height: heightOf(pier) / 12, breadth: pier.diameter / 12, lateral: soil.lateral.value, factor };
}

function poleUse(pier: Pier, soil: SoilValues, { caseId, force, wind }: PierCase): PoleUse {
  const push = Math.hypot(force[0], force[1]);
  const depth = poleDepth(pier);
  const factor = wind && pier.entry.lateral === "doubled" ? 2 : 1;
  const pole = poleOf(pier, soil, factor);
  const single = freeCapacity({ ...pole, factor: 1 }, depth / 12);
  const holds = single * factor;
  return {
    kind: "pole",
    pier,
    soil,
    push,
    caseId,
    single,
    holds,
    ratio: push > 0 ? push / holds : 0,
    short: wind,
    height: heightOf(pier),
    depth,
  };
}

/** Depth that holds the push by what counts, inches (IBC 1807.3.2.1, equation 18-1). */
export function depthNeeded({ pier, soil, push, holds, single }: PoleUse): number {
  return 12 * freeDepth({ ...poleOf(pier, soil, holds > single ? 2 : 1), load: push });
}

/** In no case more than half of the dead load (IBC 1806.3.2; memory). */
const COHESION_LIMIT = 0.5;

function padUse(pier: Pier, soil: SoilValues, each: PierCase, deadLoad: number): PadUse {
  const { caseId, force, dead } = each;
  const push = Math.hypot(force[0], force[1]);
  const load = Math.max(0, Math.min(force[2], deadLoad * dead) + shaftWeight(pier) * dead);
  const area = baseArea(pier);
  const { sliding } = soil;
  const holds =
    sliding.kind === "friction"
      ? sliding.coefficient.value * load
      : Math.min(sliding.psf.value * area, COHESION_LIMIT * load);
  return {
    kind: "pad",
    pier,
    soil,
    push,
    caseId,
    single: holds,
    holds,
    ratio: push > 0 ? push / holds : 0,
    load,
    area,
  };
}

/**
 * A pier against what pushes it sideways, under the combination that uses it most.
 * @param pier as it is, or as it might be
 * @returns undefined where the file does not say the soil, or nothing has an answer
 */
export function sidewaysUse(
  pier: Pier,
  cases: readonly PierCase[],
  soil: keyof typeof SOILS | undefined,
): SidewaysUse | undefined {
  if (soil === undefined) return undefined;
  const values = SOILS[soil];
  const deadLoad = cases.find(({ onlyDead }) => onlyDead)?.force[2] ?? 0;
  return cases
    .map((each) =>
      pier.entry.kind === "pad" ? padUse(pier, values, each, deadLoad) : poleUse(pier, values, each),
    )
    .reduce<SidewaysUse | undefined>((worst, use) => (worst && !worse(use, worst) ? worst : use), undefined);
}

/** Beyond what even the doubled values hold. A pad has none. */
export const isUnsafe = ({ kind, push, holds, single }: SidewaysUse): boolean =>
  push > (kind === "pole" ? 2 * single : holds);

/** What even the doubled values do not hold goes first. */
function worse(one: SidewaysUse, other: SidewaysUse): boolean {
  const [a, b] = [isUnsafe(one), isUnsafe(other)];
  return a === b ? one.ratio > other.ratio : a;
}
