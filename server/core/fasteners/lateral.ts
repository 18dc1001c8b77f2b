/**
 * What the lateral values of all steel fasteners share: two or three members, a dowel, its bearing strengths, the yield
 * modes, the penetration.
 */
import { leastCertain, type Sourced } from "../sourced.ts";
import { type DowelBearing, dowelBearing } from "./dowel-bearing.ts";
import { doubleShear, type Reduction, reductionTerm, singleShear, type Yield } from "./yield.ts";

export interface WoodPart {
  readonly kind: "wood";
  /** assigned specific gravity */
  readonly G: number;
  /** degrees between load and grain */
  readonly angle: number;
}

export interface WoodSide extends WoodPart {
  /** in, along the fastener */
  readonly thickness: number;
}

interface PlateSide {
  readonly kind: "plate";
  /** in */
  readonly thickness: number;
  /** F_e, psi: `steelBearing` */
  readonly bearing: Sourced;
}

export type SidePart = WoodSide | PlateSide;

export interface Lateral {
  /** Z of one fastener, lb, before any factor */
  readonly reference: Sourced;
  readonly yields: Yield;
  readonly bearing: { readonly main: Sourced | DowelBearing; readonly side: Sourced | DowelBearing };
  readonly bendingYield: Sourced;
  readonly reduction: Reduction;
  /** in, that bears and bends */
  readonly diameter: number;
  /** in, of the fastener in the main member; undefined where it passes through */
  readonly penetration: Penetration | undefined;
}

export interface Penetration {
  /** in */
  readonly have: number;
  /** in; below it the fastener counts for nothing */
  readonly least: number;
  /** in; from it on the tables of the standard hold in full */
  readonly full: number;
  /** p / full, at most 1: what a tabulated Z is multiplied by */
  readonly tableFactor: number;
  readonly ok: boolean;
}

/**
 * Penetration rules: lag screws 4 D at least and 8 D for the full tabulated value (NDS Table 12J notes), wood screws and
 * nails 6 D and 10 D (NDS 12.1.5.6, 12.1.6.5; notes to the tables).
 * @param length in the main member, in; @param diameter nominal, in
 */
export function penetration(length: number, diameter: number, kind: "lag" | "screw-or-nail"): Penetration {
  const [least, full] = kind === "lag" ? [4 * diameter, 8 * diameter] : [6 * diameter, 10 * diameter];
  return {
    have: length,
    least,
    full,
    tableFactor: Math.max(0, Math.min(1, length / full)),
    ok: length >= least - 1e-9,
  };
}

export interface LateralInput {
  /** in, as sold: decides the bearing strength across the grain */
  readonly nominal: number;
  /** in, that bears and bends: the root of a threaded fastener */
  readonly diameter: number;
  readonly bendingYield: Sourced;
  readonly main: WoodPart;
  /** bearing length in the main member, in */
  readonly mainLength: number;
  readonly side: SidePart;
  /** in, of the side member, or of the thinner of two */
  readonly sideLength: number;
  readonly shear: "single" | "double";
  readonly penetration: Penetration | undefined;
  /** F_e rounded to 50 psi as in the tables of the standard; true where nothing is said */
  readonly rounded?: boolean;
}

/** Z of one fastener by the yield limit equations; 0 where it does not reach deep enough. */
export function lateral(input: LateralInput): Lateral {
  const { main, side, bendingYield, penetration: reach } = input;
  const strength = (wood: WoodPart) => dowelBearing(wood.G, input.nominal, wood.angle, input.rounded ?? true);
  const bearing = { main: strength(main), side: side.kind === "wood" ? strength(side) : side.bearing };
  const angle = Math.max(main.angle, side.kind === "wood" ? side.angle : 0);
  const reduction = reductionTerm(input.diameter, input.nominal, angle);
  const shear = {
    diameter: input.diameter,
    main: { length: input.mainLength, bearing: bearing.main.value },
    side: { length: input.sideLength, bearing: bearing.side.value },
    bendingYield: bendingYield.value,
    reduction,
  };
  const yields = input.shear === "double" ? doubleShear(shear) : singleShear(shear);
  const enough = reach === undefined || reach.ok;
  return {
    reference: {
      value: enough ? yields.governs.Z : 0,
      status: leastCertain(["published", bearing.main.status, bearing.side.status, bendingYield.status]),
      source: enough
        ? `NDS 12.3.1, mode ${yields.governs.mode}`
        : "NDS 12.1: the fastener does not reach the least penetration",
    },
    yields,
    bearing,
    bendingYield,
    reduction,
    diameter: input.diameter,
    penetration: reach,
  };
}

/** Linear between the rows of a table of sizes; the end rows beyond it. */
export function between(rows: readonly (readonly [number, number])[], at: number): number {
  const above = rows.findIndex(([x]) => x >= at - 1e-9);
  if (above < 0) return rows.at(-1)?.[1] ?? 0;
  const [x1, y1] = rows[above] ?? [0, 0];
  const [x0, y0] = rows[above - 1] ?? [x1, y1];
  return x1 === x0 ? y1 : y0 + ((y1 - y0) * (Math.min(at, x1) - x0)) / (x1 - x0);
}
