/** Nails and spikes: lateral values, withdrawal, toe-nails, NDS 12.1.6, 12.2.3, 12.3 and 12.5.4. */
import type { Sourced } from "../sourced.ts";
import { type Withdrawal, withdrawalOf } from "./lag-screw.ts";
import { type Lateral, lateral, penetration, type SidePart, type WoodPart } from "./lateral.ts";

/** pennyweight → length and diameter of common nails, in (NDS Table L4; 50d from memory) */
export const COMMON_NAILS: Readonly<
  Record<string, { readonly length: number; readonly diameter: number; readonly status: Sourced["status"] }>
> = {
  "6d": { length: 2, diameter: 0.113, status: "published" },
  "8d": { length: 2.5, diameter: 0.131, status: "published" },
  "10d": { length: 3, diameter: 0.148, status: "published" },
  "12d": { length: 3.25, diameter: 0.148, status: "published" },
  "16d": { length: 3.5, diameter: 0.162, status: "published" },
  "20d": { length: 4, diameter: 0.192, status: "published" },
  "30d": { length: 4.5, diameter: 0.207, status: "published" },
  "40d": { length: 5, diameter: 0.225, status: "published" },
  "50d": { length: 5.5, diameter: 0.244, status: "memory" },
  "60d": { length: 6, diameter: 0.263, status: "published" },
};

/** in up to, psi */
const BENDING_YIELD: readonly (readonly [number, number])[] = [
  [0.142, 100000],
  [0.177, 90000],
  [0.236, 80000],
  [0.273, 70000],
  [0.344, 60000],
  [0.375, 45000],
];

/** F_yb of nails and wood screws by steps of the diameter, NDS Table I1. */
export function nailBendingYield(diameter: number): Sourced {
  const row = BENDING_YIELD.find(([most]) => diameter <= most + 1e-9);
  return { value: row?.[1] ?? 45000, status: "memory", source: "NDS Table I1, nails and wood screws" };
}

/** F_yb of low carbon steel nails by the rule behind the table: 130.4 − 213.9 D, ksi (NDS Appendix I). */
export function nailBendingYieldByRule(diameter: number): Sourced {
  return { value: 1000 * (130.4 - 213.9 * diameter), status: "published", source: "130.4 − 213.9 D ksi" };
}

export interface NailLateral {
  /** in */
  readonly diameter: number;
  /** in */
  readonly length: number;
  readonly main: WoodPart;
  readonly side: SidePart;
  /** in, along the nail in the main member; undefined = length less the side member’s thickness */
  readonly reach?: number;
  readonly rounded?: boolean;
}

/**
 * Z of one nail in single shear. Its bearing length in the main member is the penetration from 10 D on; below, the point
 * of 2 D is taken off (NDS 12.3.5.3); below 6 D it counts for nothing. The side member of a nail that is too short to
 * pass it counts with what the nail fills.
 */
export function nailLateral(input: NailLateral): Lateral {
  const { diameter, length, side } = input;
  const reach = Math.max(0, input.reach ?? length - side.thickness);
  return lateral({
    nominal: diameter,
    diameter,
    bendingYield: nailBendingYield(diameter),
    main: input.main,
    mainLength: nailBearingLength(reach, diameter),
    side,
    sideLength: Math.min(side.thickness, length),
    shear: "single",
    penetration: penetration(reach, diameter, "screw-or-nail"),
    ...(input.rounded === undefined ? {} : { rounded: input.rounded }),
  });
}

/** Bearing length in the main member, in: the point (2 D) counts only from 10 D of penetration on. */
export function nailBearingLength(reach: number, diameter: number): number {
  return reach >= 10 * diameter - 1e-9 ? reach : Math.max(0, reach - 2 * diameter);
}

export interface ToeNail {
  /** in, of the side member along the nail’s line of shear: a third of its length */
  readonly side: number;
  /** in, in the main member */
  readonly reach: number;
}

/** Toe-nail driven at 30° a third of its length from the end: side L/3, main L cos 30° − L/3 (NDS 12.1.6.3, memory). */
export function toeNailReach(length: number): ToeNail {
  return { side: length / 3, reach: length * Math.cos(Math.PI / 6) - length / 3 };
}

/**
 * Withdrawal from side grain, lb: plain shank 1,380 G^2.5 D, ring or screw shank 1,800 G² D, per inch of penetration
 * (NDS 12.2-3, 12.2-4). Nothing from end grain (NDS 12.2.3.4).
 * @param G assigned specific gravity; @param diameter in; @param reach in the main member, in
 */
export function nailWithdrawal(
  G: number,
  diameter: number,
  reach: number,
  shank: "plain" | "ring" = "plain",
): Withdrawal {
  return shank === "plain"
    ? withdrawalOf(1380 * G ** 2.5 * diameter, reach, {
        status: "published",
        source: "1,380 G^2.5 D, NDS 12.2-3",
      })
    : withdrawalOf(1800 * G ** 2 * diameter, reach, { status: "memory", source: "1,800 G² D, NDS 12.2-4" });
}

/**
 * Head pulled through the side member, lb: 690 π D_H G² t up to t = 2.5 D_H, from there 1,725 π D_H² G² (NDS 2018
 * 12.2.5, memory).
 * @param head diameter of the head, in; @param G of the side member; @param thickness of the side member, in
 */
export function headPullThrough(head: number, G: number, thickness: number): Sourced {
  const t = Math.min(Math.max(0, thickness), 2.5 * head);
  return { value: 690 * Math.PI * head * G ** 2 * t, status: "memory", source: "690 π D_H G² t, NDS 12.2-6" };
}
